package enquiry

import "slices"

// lengthUnit returns a unit's length in metres; 0 of what is none.
func lengthUnit(unit string) float64 {
	switch unit {
	case "mm":
		return 1e-3
	case "cm":
		return 1e-2
	case "m":
		return 1
	case "in":
		return 0.0254
	case "ft":
		return 0.3048
	}
	return 0
}

// takes lists the kinds of units that a name takes a number in, beside a number alone.
var takes = map[string][]string{
	"quantity":    {"off"},
	"tube_wall":   {"mm", "in", "BWG", "SWG", "ga"},
	"fin_pitch":   {"fpi", "fins/m", "mm", "in", "cm"},
	"fins_word":   {"fpi", "fins/m"},
	"duty_wanted": {"kW", "MW", "W", "MMBtu/h", "Btu/h", "kcal/h", "Gcal/h"},
	"inside_in":   {"°C", "°F", "deg"}, "inside_out": {"°C", "°F", "deg"}, "air_in": {"°C", "°F", "deg"},
	"inside_flow":     {"kg/s", "kg/h", "lb/h", "t/h", "m3/h", "gpm", "l/s"},
	GasFlow:           {"m3/h", "Nm3/h"},
	"inside_pressure": {"bar", "bar(g)", "bar(a)", "kPa", "kPa(g)", "psi", "psig", "psia", "MPa"},
	"face_velocity":   {"m/s", "ft/min", "fpm"},
	"rows_label":      {"rows"},
}

// accepts reports whether a number may be what a name says.
func (r *reader) accepts(field string, i int) bool {
	t := &r.list[i]
	if !r.isFree(i) {
		return false
	}
	switch field {
	case "fins_word":
		return !r.refuses("longitudinal") && (t.unit == "" && t.n.whole || t.unit == "fpi" || t.unit == "fins/m")
	case "fin_type", "metal", "tube_metal", "fin_metal", "ends", Mark:
		return false
	case "quantity":
		return t.unit == "" && !t.n.inch || t.unit == "off"
	}
	if t.unit == "" {
		return true
	}
	if list, ok := takes[field]; ok {
		return slices.Contains(list, t.unit)
	}
	return lengthUnit(t.unit) != 0
}

// nameOf is what a token names; empty: nothing.
func (r *reader) nameOf(i int) string {
	t := &r.list[i]
	if t.sort != aWord || r.used[i] {
		return ""
	}
	next := r.over(i + 1)
	switch {
	case t.says.kind == "field" && t.says.a == "thickness":
		return r.thickness(i)
	case t.says.kind == "field":
		return t.says.a
	case t.says.kind == "is" && t.says.a == "wall_basis":
		return "tube_wall"
	case t.says.kind == "is" && t.says.b == "footed" && t.To-t.From == 1 && next < len(r.list) && r.list[next].sort == aNumber && lengthUnit(r.list[next].unit) > 0 && (i+1 < next || r.list[next].From-t.To < 2) && r.isLong(next):
		return "tube_length" // L = 6000 mm
	case t.says.kind == "unit" && t.says.a == "in" && i > 0 && r.list[i-1].sort == aNumber && slices.Contains(takes["inside_in"], r.list[i-1].unit):
		return "inside_in" // 95 °C in
	}
	return ""
}

// thickness tells whose it is.
func (r *reader) thickness(i int) string {
	for j := range r.list {
		if r.piece[j] == r.piece[i] && r.says(j, "is", "wall_basis") {
			return "tube_wall"
		}
	}
	if r.side[i] == "tube" {
		return "tube_wall"
	}
	return "strip_thickness"
}

// otherThickness weighs a thickness by whose words nothing tells: the strip's where the wall is told elsewhere, else by its size, with the other
// as its second reading.
func (r *reader) otherThickness(i, number int, name *string) (other string) {
	if !r.says(i, "field", "thickness") || *name == "tube_wall" || r.nearest(i, r.piece) != "" || r.nearest(i, r.part) != "" {
		return ""
	}
	for j := range r.list {
		if j != i && (r.says(j, "field", "tube_wall") || r.says(j, "is", "wall_basis") || r.list[j].unit == "BWG" || r.list[j].unit == "ga") {
			return ""
		}
	}
	if _, ok := r.out.Find("tube_wall"); ok {
		return ""
	}
	t := &r.list[number]
	if size := t.n.value * lengthUnit(t.unit); size > 0.0009 || size == 0 && t.n.value > 0.9 {
		*name = "tube_wall"
		return "strip_thickness"
	}
	return "tube_wall"
}

// isLong reports whether a number is no shorter than a tube.
func (r *reader) isLong(i int) bool {
	u := lengthUnit(r.list[i].unit)
	return u >= 0.3 || r.list[i].n.value*u >= 0.3
}

// labels gives numbers to the names beside them: in each piece to those before or behind, as its first name or number tells.
func (r *reader) labels() {
	for from := 0; from < len(r.list); {
		to := from
		for to < len(r.list) && r.piece[to] == r.piece[from] {
			to++
		}
		r.pieceLabels(from, to)
		from = to
	}
}

func (r *reader) pieceLabels(from, to int) {
	var row []int // names and numbers, in their order
	for i := from; i < to; i++ {
		if r.isFree(i) || r.nameOf(i) != "" {
			row = append(row, i)
		}
	}
	if len(row) == 0 {
		return
	}
	before := false
	for _, i := range row {
		if name := r.nameOf(i); name != "fins_word" {
			before = name != ""
			break
		}
	}
	for k, i := range row {
		name := r.nameOf(i)
		if r.list[i].sort != aWord || name == "" {
			continue
		}
		sides := []int{k + 1, k - 1}
		if !r.isColon(i+1) && (!before || r.isAdjective(i)) {
			sides = []int{k - 1, k + 1}
		}
		if r.says(i, "unit", "in") {
			sides = []int{k - 1}
		}
		for _, s := range sides {
			if s >= 0 && s < len(row) && r.accepts(name, row[s]) {
				r.take(row[s], name)
				other := r.otherThickness(i, row[s], &name)
				r.used[i] = r.used[i] || r.list[i].says.kind == "field" || r.list[i].says.a == "fin_type"
				x := r.quantity(row[s], name, r.list[i].Span)
				if other != "" && x != nil {
					x.doubt("whose", other, x.Text)
				}
				if name == "other" {
					r.field[i] = name
				}
				break
			}
		}
	}
}

// isAdjective reports whether a name stands behind its number.
func (r *reader) isAdjective(i int) bool {
	return slices.Contains([]string{"high", "thick", "long", "hoch", "dick", "lang"}, folds(r.text[r.list[i].From:r.list[i].To]))
}

func (r *reader) isColon(i int) bool { return i < len(r.list) && r.list[i].sort == colon }

// ends reads the bare ends.
func (r *reader) ends() {
	for i := range r.list {
		if !r.says(i, "field", "ends") || r.used[i] {
			continue
		}
		var found []int
		one := ""
		for j := range r.list {
			if r.part[j] != r.part[i] || r.isTaken(j, i) {
				continue
			}
			if r.says(j, "end", "") && one != "both" {
				one = r.list[j].says.a
			}
			if r.isFree(j) && (lengthUnit(r.list[j].unit) > 0 || r.list[j].unit == "") {
				found = append(found, j)
			}
		}
		r.used[i] = true
		switch {
		case len(found) == 0:
			r.used[i] = false
		case len(found) >= 2 && one != "both" && (one != "" || r.together(found[0], found[1])):
			r.end("plain_end_a", found[0], i)
			r.end("plain_end_b", found[1], i)
		case one == "other":
			r.end("plain_end_b", r.nearestOf(found, i), i)
		case one == "one":
			at := r.nearestOf(found, i)
			r.end("plain_end_a", at, i).doubt("one_end", "plain_end_b", r.out.Readings[len(r.out.Readings)-1].Text)
		default:
			at := r.nearestOf(found, i)
			r.end("plain_end_a", at, i)
			r.used[at] = false
			r.end("plain_end_b", at, i)
		}
	}
	for i := range r.list { // "one end 2 in, other end 4 in"
		if !r.says(i, "end", "one") && !r.says(i, "end", "other") {
			continue
		}
		if j := r.over(i + 1); r.isFree(j) && r.part[j] == r.part[i] && r.hasEnds() {
			name := map[string]string{"one": "plain_end_a", "other": "plain_end_b"}[r.list[i].says.a]
			r.end(name, j, i)
		}
	}
}

func (r *reader) hasEnds() bool {
	return slices.ContainsFunc(r.list, func(t token) bool { return t.sort == aWord && t.says.kind == "field" && t.says.a == "ends" })
}

// isTaken reports whether another name stands nearer to a number than the one at i.
func (r *reader) isTaken(j, i int) bool {
	if r.list[j].sort != aNumber {
		return false
	}
	step := 1
	if j > i {
		step = -1
	}
	for k := j + step; k != i; k += step {
		if name := r.nameOf(k); name != "" && name != "ends" {
			return true
		}
	}
	return r.piece[j] != r.piece[i] && r.hasTimes(j, i)
}

func (r *reader) hasTimes(a, b int) bool {
	for k := min(a, b); k < max(a, b); k++ {
		if r.list[k].sort == times {
			return true
		}
	}
	return false
}

// together reports whether two numbers stand side by side, but for "and", a slash or which end the first is of.
func (r *reader) together(a, b int) bool {
	for k := a + 1; k < b; k++ {
		if !r.says(k, "skip", "") && !r.says(k, "end", "") && r.list[k].sort != slash {
			return false
		}
	}
	return true
}

func (r *reader) nearestOf(list []int, i int) int {
	best := list[0]
	for _, j := range list {
		if max(j-i, i-j) < max(best-i, i-best) {
			best = j
		}
	}
	return best
}

func (r *reader) end(name string, number, label int) *Reading {
	r.take(number, name)
	return r.quantity(number, name, r.list[label].Span)
}

// doubt notes a second reading.
func (x *Reading) doubt(kind, field, text string) {
	if x == nil {
		return
	}
	for _, d := range x.Doubts {
		if d.Field == field && d.Text == text {
			return
		}
	}
	x.Doubts = append(x.Doubts, Doubt{kind, field, text})
}
