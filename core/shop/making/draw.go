package making

import (
	"finwright/core/shop"
	"finwright/core/units"
)

// Drawn are tubes that an order takes out of those on hand.
type Drawn struct {
	From *shop.TubesOnHand
	Sawing
}

// DrawnSums are the tubes that an order takes out of those on hand, together.
type DrawnSums struct {
	Tubes  int
	Pieces int
	Length units.Length
	Kerf   units.Length
	Left   units.Length // back to stock
	Worth  units.Money
}

// draw takes the tubes of an order's size that are on hand and long enough, in the order of the list, as far as they are needed.
func (p *Plan) draw(c *shop.Capability, needed int) (out []Drawn) {
	t := &p.Order.Tube
	for i := range c.Buying.OnHand {
		h := &c.Buying.OnHand[i]
		if needed == 0 || p.Order.FreeIssue || h.Metal != p.Order.TubeMetal.ID || !same(h.OD, t.OD) || !same(h.Wall, t.Wall) {
			continue
		}
		s, ok := Saw(h.Length, c.Cutting.Kerf, p.Programme.CutLength, needed)
		if !ok {
			continue
		}
		if s.Tubes > h.Pieces {
			s, _ = Saw(h.Length, c.Cutting.Kerf, p.Programme.CutLength, h.Pieces*s.PerTube)
		}
		out, needed = append(out, Drawn{h, s}), needed-s.Pieces
	}
	return out
}

// DrawnSums adds up what is drawn: lengths [m], worth [currency].
//
// Valid: any plan.
// Source: addition.
func (p *Plan) DrawnSums() (sum DrawnSums) {
	for i := range p.Drawn {
		d := &p.Drawn[i]
		sum.Tubes += d.Tubes
		sum.Pieces += d.Pieces
		sum.Length += d.Bought()
		sum.Kerf += d.Kerf
		sum.Left += d.Offcut
		sum.Worth += units.Money(d.Tubes) * d.From.Worth
	}
	return sum
}
