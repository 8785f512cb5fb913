package making

import (
	"slices"

	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// ToBuy is the tooling that an order needs and its line does not have, as far as the shop says what it costs or takes.
type ToBuy struct {
	Rolls units.Money // for the fin
	Size  units.Money // for the tube's diameter
	Days  int         // until all of it is there; 0 where none is needed
}

// Cost returns the sum [currency].
//
// Valid: any.
// Source: addition.
func (t ToBuy) Cost() units.Money { return t.Rolls + t.Size }

// toolingOf returns what an order needs that its line lacks.
//
// Source: each height, thickness and pitch has its own rolls: common practice, no source.
func toolingOf(c *shop.Capability, l *shop.Line, m *shop.Practice, o *Order) (out ToBuy) {
	f := &o.Tube.Fin
	if f.Type.Tapers() && !slices.ContainsFunc(m.Tools, func(t shop.Tool) bool { return fits(&c.Placing, &t, f) }) {
		out.Rolls, out.Days = l.Tooling.Rolls, l.Tooling.RollsDays
	}
	od := o.Tube.OD
	if len(l.Sizes) > 0 && !slices.ContainsFunc(l.Sizes, func(s units.Length) bool { return max(s-od, od-s) <= od*shop.Slack }) {
		out.Size, out.Days = l.Tooling.Size, max(out.Days, l.Tooling.SizeDays)
	}
	return out
}

// fits reports whether a set of rolls is for a fin, within the shop's tolerances.
func fits(p *shop.Placing, t *shop.Tool, f *tube.Fin) bool {
	out := func(a, b, by units.Length) bool { return max(a-b, b-a) > by*(1+shop.Slack) }
	return !out(f.Height, t.Height, p.ToolHeight) && !out(f.Strip, t.Strip, p.ToolStrip) && f.Count >= t.Count.Low*(1-shop.Slack) && f.Count <= t.Count.High*(1+shop.Slack)
}
