package enquiry

import (
	"strconv"
	"strings"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/units"
)

// Design lays what an item says over a base.
func (x *Entry) Design(base document.Document) document.Document {
	return base.With(x.Differences(base))
}

// Differences are what an item says otherwise than a base: each entry as the customer wrote it, what follows from them as assumed. All else is
// as the base has it.
func (x *Entry) Differences(base document.Document) document.Differences {
	fields := map[string]document.Entry{}
	for _, r := range x.Whole {
		if f, ok := field.Find(r.Field); ok {
			fields[f.ID] = document.Entry{Text: r.Text, Origin: document.Customer}
		}
	}
	x.derive(fields, base.Fields)
	for id, entry := range fields {
		if entry == base.Fields[id] {
			delete(fields, id)
		}
	}
	out := document.Differences{Fields: fields}
	if x.Mark != base.Mark {
		out.Mark = &x.Mark
	}
	if title := x.title(); base.Title == "" && title != "" {
		out.Title = &title
	}
	return out
}

// title is what a line of text says, shortened; a table has none.
func (x *Entry) title() string {
	if len(x.Parts) == 0 || x.Parts[0].Column > 0 {
		return ""
	}
	return firstLetters(strings.TrimSpace(x.Parts[0].Text), 70)
}

// derive enters what follows from sizes that a design does not hold.
func (x *Entry) derive(fields, base map[string]document.Entry) {
	text := func(name string) string {
		if entry, ok := fields[name]; ok {
			return entry.Text
		}
		return base[name].Text
	}
	size := func(name string) (float64, bool) {
		r, ok := x.Find(name)
		if !ok {
			return 0, false
		}
		v, possible, _ := si(name, r.Text)
		return v, possible
	}
	put := func(name string, si float64) {
		fields[name] = document.Entry{Text: millimetres(si), Origin: document.Assumed}
	}
	od, hasOD := size("tube_od")
	if over, ok := size(FinOD); ok && hasOD && over > od {
		if _, told := x.Find("fin_height"); !told {
			put("fin_height", (over-od)/2)
		}
	}
	if gap, ok := size(FinGap); ok {
		if p, err := units.Parse(units.Thickness, text("strip_thickness"), units.SI); err == nil {
			put("fin_pitch", gap+p.SI)
		}
	}
	length, hasLength := size("tube_length")
	if faces, ok := size(BetweenFaces); ok && !hasLength {
		length, hasLength = faces, true
		put("tube_length", faces)
	}
	if finned, ok := size(FinnedLength); ok {
		a, hasA := size("plain_end_a")
		b, hasB := size("plain_end_b")
		switch {
		case hasLength && !hasA && !hasB && length >= finned:
			put("plain_end_a", (length-finned)/2)
			put("plain_end_b", (length-finned)/2)
		case !hasLength:
			if !hasA {
				a = sizeOf(text("plain_end_a"))
			}
			if !hasB {
				b = sizeOf(text("plain_end_b"))
			}
			put("tube_length", finned+a+b)
		}
	}
	if spare, ok := x.Find(Spare); ok {
		fields["quantity"] = document.Entry{Text: strconv.Itoa(whole(text("quantity")) + whole(spare.Text)), Origin: document.Assumed}
	}
	if fluid, ok := x.Find("inside_fluid"); ok && fluid.Text == "steam" {
		_, pressed := x.Find("inside_pressure")
		if _, hot := x.Find("inside_in"); pressed && !hot {
			fields["steam_by"] = document.Entry{Text: "pressure", Origin: document.Assumed}
		}
	}
}

func whole(text string) int { n, _ := strconv.Atoi(text); return n }

func sizeOf(text string) float64 {
	p, _ := units.Parse(units.Distance, text, units.SI)
	return p.SI
}

// millimetres writes a length [m], to a thousandth of a millimetre.
func millimetres(si float64) string {
	return strings.TrimSuffix(strings.TrimRight(strconv.FormatFloat(si*1000, 'f', 3, 64), "0"), ".") + " mm"
}
