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

// DrawnCoil is a coil on hand that serves an order.
type DrawnCoil struct {
	From   *shop.StripOnHand
	Length units.Length // of the order's strip
}

// stripSlack is by how much strip on hand may be thicker or thinner than the order's.
//
// Source: engineering judgement.
const stripSlack = 0.005 * units.Millimetre

// coilsOnHand lists the coils on hand of an order's strip, as the line takes them in a form: of its metal, its thickness and, as far as
// strip is slit true, its width; no heavier than the line takes; long enough for a tube, so that none has two joints for them. Their
// lengths are those of the order's strip at their mass.
//
// Source: SlitStep; engineering judgement.
func (g *Groundwork) coilsOnHand(k *shop.Coil, s *Strip) (out []DrawnCoil) {
	c := g.Shop
	for i := range c.Buying.StripOnHand {
		h := &c.Buying.StripOnHand[i]
		off := max(h.Width-s.Slit, s.Slit-h.Width) > SlitStep*(1+shop.Slack) || max(h.Thickness-s.Thickness, s.Thickness-h.Thickness) > stripSlack
		if off || h.Metal != g.Order.FinMetal.ID || h.Mass > k.Mass*(1+shop.Slack) {
			continue
		}
		d := DrawnCoil{h, MassLength(h.Mass, s.Slit, s.Thickness, s.Density)}
		if d.Length-c.Losses.CoilStart-c.Losses.CoilEnd-c.Losses.Joint >= s.PerTube() {
			out = append(out, d)
		}
	}
	return out
}

// takeHand takes of the coils on hand, in the order of the list, as many as lessen the strip that is bought, and accounts for it: strip is
// bought by the coil, so that one more of them may save nothing.
func (w *Winding) takeHand() (best Ledger) {
	hand, taken := w.Hand, 0
	for n := range len(hand) + 1 {
		w.Hand = hand[:n]
		if l := w.Account(); n == 0 || l.Paid() < best.Paid()*(1-shop.Slack) {
			best, taken = l, n
		}
		if best.ToBuy() == 0 {
			break
		}
	}
	w.Hand, w.Stay = hand[:taken], len(hand)-taken
	return best
}

// HandWorth returns what the strip on hand is worth [currency] that an order takes, what goes back less.
//
// Valid: a ledger of the winding.
// Source: addition; what a kilogram is worth is the shop's.
func (w *Winding) HandWorth(l *Ledger) (worth units.Money) {
	for i := range l.Hand {
		d := &w.Hand[i]
		length := d.Length
		if i == l.Hand-1 {
			length -= l.Returned
		}
		worth += units.Money(float64(w.Strip.Mass(length)) * float64(d.From.Worth))
	}
	return worth
}
