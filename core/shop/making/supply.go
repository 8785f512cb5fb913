package making

import (
	"finwright/core/shop"
	"finwright/core/units"
)

// Supply is how the tubes of an order are bought, and where what is bought goes [m]:
//
//	bought + drawn from stock less what goes back there = used + trim + offcut + spoilt
type Supply struct {
	Way shop.TubeWay
	Sawing
	Allowed   units.Length // by which one tube is ordered longer, so that the shortest that may come is long enough
	Used      units.Length // in the tubes that ship
	Trim      units.Length // their ends, kerf, and what all tubes were ordered longer
	Spoilt    units.Length // first-off and rejected tubes, as cut
	Price     TubePrice
	Priced    bool
	Paid      units.Money
	Surcharge units.Money // for the metal, besides
	Credit    units.Money // for offcuts
	Work      units.Money // one person at the saw before finning
}

// Cost returns what this way costs [currency], the sawing before finning with it.
//
// Valid: Priced.
// Source: addition.
func (s *Supply) Cost() units.Money { return s.Paid + s.Surcharge - s.Credit + s.Work }

// supplies plans both ways to buy the tubes of an order; other is nil where the order cannot be bought so, and so is used, with
// the shop's own way first.
func (p *Plan) supplies(c *shop.Capability) (used, other *Supply) {
	cut, stock := p.cutToLength(c), p.fromStock(c)
	if c.Buying.Tubes == shop.StockLengths {
		return stock, cut
	}
	return cut, stock
}

// cutToLength buys each tube as long as it is to be cut, and longer by the tolerance: nothing is sawn before it is finned.
func (p *Plan) cutToLength(c *shop.Capability) *Supply {
	pieces, cut := p.Winding.Made()-p.DrawnSums().Pieces, p.Programme.CutLength
	s := Supply{Way: shop.CutToLength, Allowed: c.Buying.Tolerance, Sawing: Sawing{
		Stock: cut + c.Buying.Tolerance, Tubes: pieces, PerTube: 1, Pieces: pieces, Cut: cut, OnTubes: units.Length(pieces) * cut,
	}}
	p.account(c, &s)
	return &s
}

// fromStock saws the tubes from the stock length that comes cheapest, or without a price from the one of which the least is
// bought; nil if none is long enough.
func (p *Plan) fromStock(c *shop.Capability) (best *Supply) {
	for _, stock := range c.Cutting.Stock {
		sawing, ok := Saw(stock, c.Cutting.Kerf, p.Programme.CutLength, p.Winding.Made()-p.DrawnSums().Pieces)
		if !ok {
			continue
		}
		s := Supply{Way: shop.StockLengths, Sawing: sawing}
		p.account(c, &s)
		if best == nil || s.cheaper(best) {
			found := s // the others stay where they are
			best = &found
		}
	}
	return best
}

// cheaper reports whether a stock length is to be preferred to the one found so far. A rounding decides nothing.
func (s *Supply) cheaper(than *Supply) bool {
	if s.Priced && than.Priced {
		return s.Cost() < than.Cost()*(1-roundOff)
	}
	return s.Priced || !than.Priced && s.Bought() < than.Bought()
}

// account says where the tube that is bought goes, and what it costs.
func (p *Plan) account(c *shop.Capability, s *Supply) {
	w, g := p.Winding, p.Programme
	good := units.Length(w.Good)
	s.Spoilt = units.Length(w.FirstOff+w.Rejected) * s.Cut
	s.Used = good * (s.Cut - g.TrimA - g.TrimB)
	s.Trim = good*(g.TrimA+g.TrimB) + s.Kerf + p.DrawnSums().Kerf + units.Length(s.Pieces)*s.Allowed
	if s.Way == shop.StockLengths {
		s.Work = oneWorks(c, units.Duration(s.Pieces)*c.Cutting.Time)
	}
	if s.Price, s.Priced = PriceOfTube(c, p.Order, s.Way, s.Stock); !s.Priced {
		return
	}
	mass := p.Order.Tube.TubeMass()
	s.Paid, s.Surcharge = s.Price.Of(s.Bought(), s.Tubes, mass), s.Price.Over(s.Bought(), mass)
	if s.Offcut > 0 {
		s.Credit = units.Money(float64(s.Paid) * float64(s.Offcut/s.Bought()) * c.Buying.Offcuts)
	}
}

// TubePrice is what tube is bought at.
type TubePrice struct {
	Price     float64            // in SI; of what, Per says
	Per       units.Kind         // CostPerWeight, CostPerRun or CostEach
	Extra     float64            // share of the price besides, for cutting to length
	Quoted    bool               // for this size
	Surcharge units.MoneyPerMass // for the metal; a quote holds it already
	Dated     string
}

// Over returns the surcharge [currency] on so much tube [m] of a mass [kg/m].
//
// Valid: a price of PriceOfTube.
// Source: multiplication.
func (t TubePrice) Over(length units.Length, mass units.MassPerLength) units.Money {
	return units.Money(float64(length) * float64(mass) * float64(t.Surcharge))
}

// Of returns what so much tube [m], so many tubes [-] of a mass [kg/m], costs [currency].
//
// Valid: a price of PriceOfTube.
// Source: multiplication.
func (t TubePrice) Of(length units.Length, tubes int, mass units.MassPerLength) units.Money {
	switch t.Per {
	case units.CostPerRun:
		return units.Money(float64(length) * t.Price)
	case units.CostEach:
		return units.Money(float64(tubes) * t.Price)
	}
	return units.Money(float64(length) * float64(mass) * t.Price * (1 + t.Extra))
}

// PriceOfTube returns the price of an order's tube that is bought one way in one length [m]: the lowest quote for its size, else
// that of its metal by mass; ok is false if there is neither. A quote for stock holds for its own length, one for tubes cut to
// length up to it.
//
// Valid: any order.
// Source: the shop's prices.
func PriceOfTube(c *shop.Capability, o *Order, way shop.TubeWay, length units.Length) (best TubePrice, ok bool) {
	t := &o.Tube
	for _, q := range c.Buying.Quotes {
		fits := length <= q.Length*(1+shop.Slack) && (way == shop.CutToLength || same(length, q.Length))
		if q.Metal != o.TubeMetal.ID || q.Way != way || !same(q.OD, t.OD) || !same(q.Wall, t.Wall) || !fits {
			continue
		}
		one := TubePrice{Price: q.Price, Per: q.Per, Quoted: true, Dated: q.Dated}
		if !ok || one.Of(length, 1, t.TubeMass()) < best.Of(length, 1, t.TubeMass()) {
			best, ok = one, true
		}
	}
	if ok {
		return best, true
	}
	byMass, ok := price(c.Rates.TubeMetals, o.TubeMetal.ID)
	best = TubePrice{Price: float64(byMass.Price), Per: units.CostPerWeight, Surcharge: byMass.Surcharge, Dated: byMass.Dated}
	if way == shop.CutToLength {
		best.Extra = c.Buying.Extra
	}
	return best, ok
}

// sizeSlack is by how much the sizes of an order and of a quote may differ: a wall by gauge and in millimetres is the same.
//
// Source: engineering judgement.
const sizeSlack = 0.02 * units.Millimetre

func same(a, b units.Length) bool { return max(a-b, b-a) <= sizeSlack }
