package enquiry

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"finwright/core/field"
	"finwright/core/units"
)

// besides are what is read beside the entries of a design, and the entry of one whose size theirs is like.
var besides = map[string]string{
	FinOD: "fin_od_most", FinGap: "strip_thickness", FinnedLength: "tube_length", BetweenFaces: "tube_length", Spare: "quantity", SpareBare: "quantity",
}

// row returns the row of the table of fields that a reading is held to; ok is false where there is none.
func row(name string) (f *field.Field, ok bool) {
	if like, is := besides[name]; is {
		name = like
	}
	return field.Find(name)
}

// KindOf is the kind of number that a reading's field holds; ok is false of what is no number.
func KindOf(name string) (kind units.Kind, ok bool) {
	f, ok := row(name)
	if !ok || !f.IsNumber() {
		return kind, false
	}
	return f.Kind, true
}

// Size is the number of a reading [SI]; ok is false of what is no number.
func Size(name, text string) (x float64, ok bool) {
	if _, number := KindOf(name); !number {
		return 0, false
	}
	x, ok, _ = si(name, text)
	return x, ok
}

// si reads a text of a field. possible: it lies within the field's limits; usual: it is usual.
func si(name, text string) (x float64, possible, usual bool) {
	f, ok := row(name)
	if !ok || !f.IsNumber() {
		return 0, true, true
	}
	p, err := units.Parse(f.KindOf(text), text, units.SI)
	if err != nil {
		return 0, false, false
	}
	possible = f.KindOf(text) != f.Kind || f.Within(p.SI) || name == FinGap
	usual = possible && (f.Usual == (field.Range{}) || f.Usual.Low <= p.SI && p.SI <= f.Usual.High || name == FinGap)
	return p.SI, possible, usual
}

// sameText reports whether two texts of a field say the same.
func sameText(name, a, b string) bool {
	x, _, _ := si(name, a)
	y, _, _ := si(name, b)
	return a == b || x != 0 && math.Abs(x-y) <= 1e-6*math.Abs(x)
}

// likely lists the units that a number alone may be meant in, the likelier first.
func (r *reader) likely(name string, n number) []string {
	v := n.value
	switch name {
	case "tube_wall":
		if n.whole && v >= 8 && v <= 24 {
			return []string{"BWG", "mm"}
		}
	case "tube_length", FinnedLength, BetweenFaces:
		switch us := r.inInches(); {
		case v >= 100:
			return []string{"mm", "in"}
		case us || v > 15:
			return []string{"ft", "m"}
		}
		return []string{"m", "ft"}
	case "fin_pitch":
		switch {
		case v >= 60:
			return []string{"fins/m", "fpi"}
		case n.whole || v >= 7:
			return []string{"fpi", "fins/m"}
		}
	case "inside_in", "inside_out", "air_in":
		return []string{"°C", "°F"}
	case "duty_wanted":
		return []string{"kW", "MMBtu/h"}
	case "inside_flow":
		return []string{"kg/s", "lb/h"}
	case "inside_pressure":
		return []string{"bar(g)", "psig"}
	case "face_velocity":
		return []string{"m/s", "ft/min"}
	case GasFlow:
		return []string{"m3/h", "Nm3/h"}
	case "quantity", Spare, "rows", "passes", "bundles", "tubes_per_row":
		return []string{""}
	}
	return []string{"mm", "in"}
}

// inInches reports whether some number of the text has a unit of feet and inches.
func (r *reader) inInches() bool {
	for i := range r.list {
		if t := &r.list[i]; t.unit == "in" || t.unit == "ft" || t.unit == "BWG" || t.n.inch {
			return true
		}
	}
	return false
}

// numberText writes a number behind which a unit is to stand.
func numberText(text, unit string) string { return strings.TrimSpace(text + " " + unit) }

// carried is the unit of the sizes that a number alone stands before or among, as in 25.4 x 2.11 mm; empty: none.
func (r *reader) carried(i int) string {
	for j := i + 1; j < len(r.list) && r.part[j] == r.part[i]; j++ {
		if r.list[j].sort == slash {
			break
		}
		if u := r.list[j].unit; r.list[j].sort == aNumber && (u == "mm" || u == "in" || u == "cm") && r.hasTimes(i, j) {
			return u
		}
		if r.says(j, "unit", "") && lengthUnit(r.list[j].says.a) > 0 && !(r.says(j, "unit", "in") && j+1 < len(r.list) && r.part[j+1] == r.part[i]) {
			return r.list[j].says.a
		}
	}
	return ""
}

// quantity makes a reading of a number, of which a name was found; nil where it cannot be that.
func (r *reader) quantity(i int, name string, from ...Span) *Reading {
	t := &r.list[i]
	from = append([]Span{t.Span}, from...)
	length := name
	switch name {
	case "overall":
		name = "tube_length"
	case "fins_word", "fin_spacing":
		name = "fin_pitch"
	case "tube_size":
		name = "tube_od"
	case "rows_label":
		name = "rows"
	}
	if name == "tube_od" && len(from) > 1 && length == "tube_od" && r.sideAt(from[1]) == "fin" {
		name = FinOD
		length = "over"
	}
	if name == "fin_pitch" && t.n.value*lengthUnit(t.unit) >= 0.02 {
		name = "tube_pitch"
	}
	if name == "other" {
		return nil // and it is kept with its number as not understood
	}
	if name == "tube_length" && length == "tube_length" {
		length = r.whichLength(i)
		if length == FinnedLength {
			name = FinnedLength
		}
	}
	text, doubts := r.readingOf(t, i, name)
	if _, possible, _ := si(name, text); !possible || text == "" {
		r.used[i], r.field[i] = false, ""
		return nil
	}
	x := r.add(name, text, from...)
	for _, d := range doubts {
		x.doubt(d.Kind, d.Field, d.Text)
	}
	switch length {
	case "tube_length":
		x.doubt("length", FinnedLength, text)
	case "over":
		x.doubt("whose", "tube_od", text)
	case BetweenFaces:
		x.doubt("length", "tube_length", text)
	case "fin_spacing":
		x.doubt("gap", FinGap, text)
	case FinGap:
		x.doubt("gap", "fin_pitch", text)
	case "tube_size":
		if p, ok := pipeOf(t.n.value); ok && t.unit == "in" && !r.hasGauge() {
			x.doubt("pipe", "tube_od", inches(p.od))
		}
	}
	return x
}

// sideAt is what is spoken of where a name stands that does not say so itself, such as OD.
func (r *reader) sideAt(at Span) string {
	for i := range r.list {
		if r.list[i].Span != at {
			continue
		}
		if word := folds(r.text[at.From:at.To]); strings.Contains(word, "tube") || strings.Contains(word, "rohr") || strings.Contains(word, "tubo") || strings.Contains(word, "管") || r.list[i].sort != aWord {
			return "tube"
		}
		return r.beside(i)
	}
	return "tube"
}

// whichLength says which length one is that is called no more than that: the overall one if the words say so, the finned one, or
// "tube_length" where they do not.
func (r *reader) whichLength(i int) string {
	for j := range r.list {
		if r.part[j] != r.part[i] {
			continue
		}
		if r.says(j, "field", "overall") {
			return "overall"
		}
		if r.says(j, "word", "finned") && j > i && j-i <= 2 {
			return FinnedLength
		}
	}
	return "tube_length"
}

// readingOf is the text of a number as a field, and its second readings.
func (r *reader) readingOf(t *token, i int, name string) (text string, doubts []Doubt) {
	unit := t.unit
	if unit == "" && !t.n.inch {
		unit = r.prior.unit
	}
	if unit == "" && !t.n.inch {
		if carried := r.carried(i); carried != "" {
			if _, _, usual := si(name, numberText(t.n.text, carried)); usual {
				unit = carried
			}
		}
	}
	f, isField := row(name)
	count := isField && f.Kind == units.Count
	switch {
	case count && t.n.grouped != "":
		if !t.n.comma {
			whole, _, _ := strings.Cut(t.n.text, ".")
			doubts = append(doubts, Doubt{"thousands", name, whole})
		}
		return t.n.grouped, doubts
	case count:
		if t.n.value != math.Trunc(t.n.value) || t.n.value == 0 {
			return "", nil
		}
		return strconv.FormatFloat(t.n.value, 'f', -1, 64), nil
	case unit == "" && t.n.inch:
		unit = "in"
	case unit == "":
		return r.guess(name, t.n)
	}
	return r.inUnit(name, t.n, unit)
}

// guess reads a number alone.
func (r *reader) guess(name string, n number) (text string, doubts []Doubt) {
	list := r.likely(name, n)
	best, fallback := -1, -1
	for k, unit := range list {
		_, possible, usual := si(name, numberText(n.text, unit))
		if usual && best < 0 {
			best = k
		}
		if possible && fallback < 0 {
			fallback = k
		}
	}
	if best < 0 {
		best = max(fallback, 0)
	}
	text, doubts = r.inUnit(name, n, list[best])
	for k, unit := range list {
		if k != best {
			doubts = append(doubts, Doubt{"no_unit", name, numberText(n.text, unit)})
		}
	}
	return text, doubts
}

// inUnit writes a number with its unit as a design holds it.
func (r *reader) inUnit(name string, n number, unit string) (text string, doubts []Doubt) {
	both := func(kind, one, other string) (string, []Doubt) {
		return numberText(n.text, one), []Doubt{{kind, name, numberText(n.text, other)}}
	}
	switch unit {
	case "SWG":
		if wall, ok := standardGauge[int(n.value)]; ok {
			return inches(wall), nil
		}
		return "", nil
	case "ga":
		if wall, ok := standardGauge[int(n.value)]; ok {
			return numberText(n.text, "BWG"), []Doubt{{"gauge", name, inches(wall)}}
		}
		unit = "BWG"
	case "deg":
		return both("degrees", "°C", "°F")
	case "bar":
		return both("gauge_pressure", "bar(g)", "bar")
	case "kPa":
		return both("gauge_pressure", "kPa(g)", "kPa")
	case "MPa":
		return both("gauge_pressure", "MPa(g)", "MPa")
	case "psi":
		return both("gauge_pressure", "psig", "psia")
	case "bar(a)":
		unit = "bar"
	case "fpm":
		unit = "fins/m"
		if name == "face_velocity" {
			unit = "ft/min"
		}
	case "m3/h":
		if name == GasFlow {
			return both("normal", "m3/h", "Nm3/h")
		}
	}
	text = numberText(n.text, unit)
	if n.grouped == "" {
		return text, nil
	}
	other := numberText(n.grouped, unit)
	_, _, decimal := si(name, text)
	_, possible, thousands := si(name, other)
	switch {
	case name == GasFlow:
		return other, []Doubt{{"thousands", name, text}}
	case !possible:
		return text, nil
	case thousands && !decimal:
		return other, []Doubt{{"thousands", name, text}}
	}
	return text, []Doubt{{"thousands", name, other}}
}

// inches writes a size of a table in inches.
func inches(x float64) string { return strconv.FormatFloat(x, 'f', 3, 64) + " in" }

// hasGauge reports whether some wall is told by gauge: of a tube and no pipe.
func (r *reader) hasGauge() bool {
	return slices.ContainsFunc(r.list, func(t token) bool { return t.unit == "BWG" })
}

// trimmed writes a number with as few digits as it has.
func trimmed(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
