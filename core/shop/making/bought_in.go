package making

import (
	"math"
	"slices"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// buyIn plans an order of tubes that come finned: there is nothing to wind. They are taken through the shop's steps and packed.
//
//	total = quantity x length x price + steps + sub-let steps + packing + overhead + freight
//
// Source: addition; prices and rates are the shop's.
func (p *Plan) buyIn(g *Groundwork, bought *shop.BoughtIn) {
	c, o, r := g.Shop, g.Order, &g.Shop.Rates
	p.BoughtIn = bought
	p.Absent[TheProgramme] = message.New("shop.why.bought_in_row", "type", message.Key("choice.fin_type."+string(o.Tube.Fin.Type)),
		"low", message.Of(units.Diameter, bought.OD.Low), "high", message.Of(units.Diameter, bought.OD.High))
	p.Steps = slices.DeleteFunc(stepsOf(c, o, o.Quantity), func(s StepWork) bool { return s.Step.When == shop.BeforeFinning })
	if p.pack(g); p.Packing == nil {
		p.Absent[TheCost] = p.Absent[ThePacking]
		return
	}
	steps, packed := p.StepSums(), units.Duration(p.Packing.Crates)*c.Crate.Time
	p.Time = &OrderTime{Pack: packed, Steps: steps.Time, Person: (packed + steps.Time) / units.Duration(c.Crew.Efficiency)}
	cost := Cost{SubLet: steps.SubLet, Once: steps.Once}
	add := func(id string, amount units.Money) {
		if amount > 0 {
			cost.Items = append(cost.Items, CostItem{id, amount})
			cost.Total += amount
		}
	}
	add("bought_in", units.Money(float64(o.Quantity)*float64(o.Tube.Length)*float64(bought.PerMetre)))
	add("steps", steps.Own)
	add("sub_let", steps.SubLet)
	packing := oneWorks(c, packed)
	add("packing", packing+units.Money(float64(p.Packing.Crates)*(float64(c.Crate.Cost)+float64(p.Packing.Length)*float64(c.Crate.PerMetre))))
	add("overhead", (packing+oneWorks(c, steps.Time))*units.Money(r.Overhead))
	add("freight", units.Money(float64(p.Packing.Order)*float64(r.Freight)))
	cost.MarkUp = (cost.Total-steps.SubLet)*units.Money(r.MarkUp) + steps.MarkUp
	cost.sell(o, r)
	cost.Fixed = cost.Once
	cost.even(o)
	p.Cost = &cost
}

// sell derives the prices from the total and the mark-up.
func (k *Cost) sell(o *Order, r *shop.Rates) {
	k.Raised = max(0, r.Least-k.Total-k.MarkUp)
	k.Price = k.Total + k.MarkUp + k.Raised
	if k.Price > 0 {
		k.Margin = float64((k.Price - k.Total) / k.Price)
	}
	k.PerTube = k.Price / units.Money(o.Quantity)
	k.PerMetre = units.MoneyPerLength(float64(k.PerTube) / float64(o.Tube.Length))
}

// even finds the quantity from which the price of a tube covers the cost.
func (k *Cost) even(o *Order) {
	k.Variable = (k.Total - k.Fixed) / units.Money(o.Quantity)
	if gain := k.PerTube - k.Variable; gain > 0 {
		k.BreakEven = max(1, int(math.Ceil(float64(k.Fixed/gain)-shop.Slack)))
	}
}
