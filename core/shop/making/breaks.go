package making

import (
	"slices"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// Break is an order of another quantity: planned anew, never scaled.
type Break struct {
	Quantity int
	Ordered  bool // it is the order's own
	Cost     *Cost
	Why      message.Message // why there is no cost, or why a tube costs more than in the next smaller quantity
}

// Breaks plans an order in the quantities that its shop prices besides, and in its own, the smallest first. A price of a tube that
// rises with the quantity names its reason.
//
// Valid: any order; a plan each, of which a shop has at most ten.
// Source: PlanOf.
func Breaks(c *shop.Capability, l *shop.Line, o *Order, now *Setup) []Break {
	quantities := append(slices.Clone(c.Rates.Breaks), o.Quantity)
	slices.Sort(quantities)
	quantities = slices.Compact(quantities)
	list := make([]Break, len(quantities))
	var before *Plan
	for i, n := range quantities {
		other := *o
		other.Quantity = n
		p := PlanOf(c, l, &other, now)
		list[i] = Break{Quantity: n, Ordered: n == o.Quantity, Cost: p.Cost}
		if p.Cost == nil {
			list[i].Why = p.WhyNoCost()
			continue
		}
		if before != nil {
			list[i].Why = p.rise(before)
		}
		before = &p
	}
	return list
}

// WhyNoCost returns why a plan has no cost: by its own reason, or by that of the part it waits for.
func (p *Plan) WhyNoCost() message.Message {
	for _, part := range []Part{TheCost, TheProgramme, TheStrip} {
		if why, ok := p.Absent[part]; ok {
			return why
		}
	}
	return message.Message{}
}

// rise says why a tube costs more than in a plan of fewer: by the part of the cost that has risen the most. None where it does not.
func (p *Plan) rise(fewer *Plan) message.Message {
	if p.Cost.PerTube <= fewer.Cost.PerTube*(1+shop.Slack) {
		return message.Message{}
	}
	most, part := units.Money(0), ""
	for _, item := range p.Cost.Items {
		if by := item.Amount/units.Money(p.Order.Quantity) - fewer.Cost.item(item.ID)/units.Money(fewer.Order.Quantity); by > most {
			most, part = by, item.ID
		}
	}
	from := fewer.Order.Quantity
	switch {
	case p.BoughtIn != nil && part == "packing":
		return message.New("making.rise.crate", "from", from, "crates", p.Packing.Crates)
	case p.BoughtIn != nil:
		return message.New("making.rise.other", "from", from, "part", message.Key("shop.cost."+part))
	case p.Winding.Coil.Form != fewer.Winding.Coil.Form && part != "tube" && part != "packing":
		return message.New("making.rise.coil", "from", from, "form", message.Key("shop.coil."+string(p.Winding.Coil.Form)))
	case part == "tube" && p.DrawnSums().Pieces < p.Winding.Made() && len(p.Drawn) > 0:
		return message.New("making.rise.on_hand", "from", from)
	case part == "tube" && p.Supply.Stock != fewer.Supply.Stock:
		return message.New("making.rise.stock", "from", from, "length", along(p.Supply.Stock))
	case part == "strip" && fewer.Ledger.Hand > 0:
		return message.New("making.rise.strip_on_hand", "from", from)
	case part == "strip", part == "scrap":
		return message.New("making.rise.strip", "from", from)
	case part == "tube" && p.Supply.Way == shop.StockLengths:
		return message.New("making.rise.offcut", "from", from)
	case part == "packing":
		return message.New("making.rise.crate", "from", from, "crates", p.Packing.Crates)
	}
	return message.New("making.rise.other", "from", from, "part", message.Key("shop.cost."+part))
}

// item returns the amount of one part, zero where there is none.
func (k *Cost) item(id string) units.Money {
	for _, i := range k.Items {
		if i.ID == id {
			return i.Amount
		}
	}
	return 0
}
