package making

import (
	"math"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// CostItem is one part of the cost. Its name is the text "shop.cost.<id>".
type CostItem struct {
	ID     string
	Amount units.Money
}

// Cost is what an order costs and fetches, in the shop's currency.
type Cost struct {
	Items     []CostItem
	Total     units.Money
	Margin    units.Money
	Price     units.Money // of the order
	PerTube   units.Money // price
	PerMetre  units.MoneyPerLength
	Fixed     units.Money // set-up, check and first-off tubes: the same for any quantity
	Variable  units.Money // of each further tube
	BreakEven int         // tubes from which this price per tube covers the cost; 0 if it never does
}

// cost adds up the plan at the shop's rates.
//
//	total    = tube + strip less scrap's worth + set-up + finning + saw + packing + crates
//	price    = total (1 + margin)
//	variable = (total - set-up)/made, fixed = set-up + first-off x variable
//	break-even = fixed/(price per tube - variable per good tube)
//
// Valid: quantity > 0.
// Source: addition; rates are the shop's.
func (p *Plan) cost(c *shop.Capability) {
	r := &c.Rates
	strip, ok := price(r.FinMetals, p.Order.FinMetal.ID)
	if !ok {
		p.Absent[TheCost] = message.New("shop.why.no_price", "metal", p.Order.FinMetal.Name())
		return
	}
	cost := Cost{Items: make([]CostItem, 0, 7)}
	add := func(id string, amount float64) {
		cost.Items = append(cost.Items, CostItem{id, units.Money(amount)})
		cost.Total += units.Money(amount)
	}
	switch bare, ok := price(r.TubeMetals, p.Order.TubeMetal.ID); {
	case p.Order.FreeIssue:
	case !ok:
		p.Absent[TheCost] = message.New("shop.why.no_price", "metal", p.Order.TubeMetal.Name())
		return
	case p.Sawing == nil:
		p.Absent[TheCost] = p.Absent[TheSawing]
		return
	default:
		add("tube", float64(p.Sawing.Bought())*float64(p.Order.Tube.TubeMass())*float64(bare))
	}
	if p.Packing == nil {
		p.Absent[TheCost] = p.Absent[ThePacking]
		return
	}
	l, s := p.Ledger, &p.Winding.Strip
	add("strip", float64(s.Mass(l.Bought-l.Remainder))*float64(strip))
	add("scrap", -float64(s.Mass(l.Scrap()))*float64(strip)*r.ScrapShare)
	crewed := (float64(r.Line) + float64(r.Person)*float64(c.Crew.People)) / c.Crew.Efficiency
	setUp := float64(p.Time.OnLine[SettingUp]+p.Time.OnLine[Checking]) * crewed
	add("set_up", setUp)
	add("finning", float64(p.Time.Productive())*crewed-setUp)
	add("saw", float64(p.Time.Saw)*float64(r.Person)/c.Crew.Efficiency)
	add("packing", float64(p.Time.Pack)*float64(r.Person)/c.Crew.Efficiency+float64(p.Packing.Crates)*float64(c.Crate.Cost))
	cost.finish(p, units.Money(setUp), r.Margin)
	p.Cost = &cost
}

// finish derives prices and the break-even quantity from the total.
func (k *Cost) finish(p *Plan, setUp units.Money, margin float64) {
	good := units.Money(p.Order.Quantity)
	k.Margin = k.Total * units.Money(margin)
	k.Price = k.Total + k.Margin
	k.PerTube = k.Price / good
	k.PerMetre = units.MoneyPerLength(float64(k.PerTube) / float64(p.Order.Tube.Length))
	k.Fixed = setUp + units.Money(p.Winding.FirstOff)*(k.Total-setUp)/units.Money(p.Winding.Made())
	k.Variable = (k.Total - k.Fixed) / good
	if gain := k.PerTube - k.Variable; gain > 0 {
		k.BreakEven = max(1, int(math.Ceil(float64(k.Fixed/gain)-shop.Slack)))
	}
}

func price(list []shop.Price, metal string) (units.MoneyPerMass, bool) {
	for _, p := range list {
		if p.Metal == metal {
			return p.Price, true
		}
	}
	return 0, false
}
