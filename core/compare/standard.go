package compare

import (
	"cmp"
	"math"
	"slices"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/numeric"
	"finwright/core/shop"
	"finwright/core/units"
)

// Usual heights of fins [in], and that of a tube from so many inches on.
//
// Source: common practice, no source.
var (
	usualHeights = []float64{1. / 4, 3. / 8, 1. / 2, 5. / 8}
	highOnWide   = 3. / 4
	wideFrom     = 1.5
)

// Standard are the texts of an entry at each standard value, that of the design among them where it has one of its own: numbers in the
// order of their size, choices as the form has them. at is the place of the design's. Where there is no shop that has tools, as with a
// customer, heights are those usual in the trade. Errors: none; of an entry that cannot be read there are none and at is -1.
func Standard(d document.Document, id string, c *shop.Capability) (texts []string, at int) {
	f := field.Must(id)
	own, there := d.Text(id), false
	list := steps(d, f, c)
	if c == nil && id == "fin_height" {
		list = usual(d, f)
	}
	for _, text := range list {
		if !there && oneSize(f, text, own, d.Units) {
			text, there = own, true
		}
		texts = append(texts, text)
	}
	if !there {
		texts = append(texts, own)
	}
	if f.IsNumber() {
		if _, ok := size(f, own, d.Units); !ok {
			return nil, -1
		}
		texts = numeric.Sorted(texts, func(a, b *string) int {
			x, _ := size(f, *a, d.Units)
			y, _ := size(f, *b, d.Units)
			return cmp.Compare(x, y)
		})
	}
	for i, text := range texts {
		if text == own {
			at = i
		}
	}
	return texts, at
}

// usual are the usual heights for a tube.
func usual(d document.Document, f *field.Field) (texts []string) {
	heights := usualHeights
	if od, ok := size(field.Must("tube_od"), d.Text("tube_od"), d.Units); ok && od >= (1-printed)*wideFrom*float64(units.Inch) {
		heights = append(slices.Clone(heights), highOnWide)
	}
	for _, h := range heights {
		texts = append(texts, units.Echo(f.Kind, h*float64(units.Inch), d.Units))
	}
	return texts
}

// printed [-] is how far apart two texts of one size may be, as a share: a table prints a wall to a hundredth of a millimetre.
//
// Source: engineering judgement.
const printed = 1e-3

// oneSize reports whether two texts are of the same choice or size.
func oneSize(f *field.Field, a, b string, s units.System) bool {
	x, ok := size(f, a, s)
	y, also := size(f, b, s)
	return a == b || f.IsNumber() && ok && also && math.Abs(x-y) <= printed*math.Abs(y)
}

// size is a number as it was typed [SI].
func size(f *field.Field, text string, s units.System) (float64, bool) {
	p, err := units.Parse(f.KindOf(text), text, s)
	return p.SI, err == nil
}
