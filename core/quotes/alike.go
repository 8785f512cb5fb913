package quotes

import (
	"math"
	"slices"

	"finwright/core/field"
	"finwright/core/units"
)

// Two texts of one tube are held to be alike within this: 14 BWG and 2.11 mm, 20 ft and 6.096 m. A length is never further off than
// half a millimetre.
//
// Source: house practice: what is lost in writing one size in another unit.
const (
	alikeShare = 1e-3
	alikeLeast = 1e-6 // [m]
	alikeMost  = 5e-4 // [m]
)

// lengths are the kinds of sizes [m].
var lengths = []units.Kind{units.Diameter, units.Wall, units.Height, units.Thickness, units.Gap, units.Distance}

// said is what a text of a field says: a number [SI], or else the text.
func said(f *field.Field, text string, s units.System) (si float64, number bool) {
	if !f.IsNumber() || text == "" {
		return 0, false
	}
	p, err := units.Parse(f.KindOf(text), text, s)
	return p.SI, err == nil
}

// alike reports whether two texts of a field say one tube.
func alike(f *field.Field, a, b string, as, bs units.System) bool {
	x, xn := said(f, a, as)
	y, yn := said(f, b, bs)
	if !xn || !yn || f.KindOf(a) != f.KindOf(b) {
		return a == b
	}
	within := alikeShare * max(math.Abs(x), math.Abs(y))
	if slices.Contains(lengths, f.KindOf(a)) {
		within = min(within+alikeLeast, alikeMost)
	}
	return math.Abs(x-y) <= within
}

// theSame reports whether two texts of a field say the same to what a change of units loses.
func theSame(f *field.Field, a, b string, as, bs units.System) bool {
	x, xn := said(f, a, as)
	y, yn := said(f, b, bs)
	if !xn || !yn || f.KindOf(a) != f.KindOf(b) {
		return a == b
	}
	return math.Abs(x-y) <= 1e-9*max(math.Abs(x), math.Abs(y))
}

// Difference is a field of which two items say otherwise. The field is empty where they are bare in other places.
type Difference struct{ Field, Before, After string }

// item is a quote among those that it was quoted with.
type item struct {
	of    *Quoted
	units units.System
	*Quote
}

func (x item) text(id string) string { return x.of.Text(x.Quote, id) }

// tubeDiffers lists what two items say otherwise of their tubes, of what counts in either; no more than most.
func tubeDiffers(a, b item, most int) (out []Difference) {
	for i := range field.Fields {
		f := &field.Fields[i]
		if !OfTube(f) || !f.Used(a.text) && !f.Used(b.text) {
			continue
		}
		if one, other := a.text(f.ID), b.text(f.ID); one != other && !alike(f, one, other, a.units, b.units) {
			if out = append(out, Difference{f.ID, one, other}); len(out) > most {
				return out
			}
		}
	}
	if !slices.Equal(a.Bare, b.Bare) {
		out = append(out, Difference{})
	}
	return out
}
