package making

import (
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
	MarkUp    units.Money
	Raised    units.Money // to the least that is charged for an order
	Price     units.Money // of the order
	Margin    float64     // of the price
	PerTube   units.Money // price
	PerMetre  units.MoneyPerLength
	SubLet    units.Money // suppliers' prices, which have a mark-up of their own
	Once      units.Money // beside set-up and check, the same for any quantity
	Fixed     units.Money // set-up, check, what is done once and first-off tubes: the same for any quantity
	Variable  units.Money // of each further tube
	BreakEven int         // tubes from which this price per tube covers the cost; 0 if it never does
}

// cost adds up the plan at the shop's rates.
//
//	total    = tubes less credit + tubes on hand + strip + strip on hand less scrap's worth + set-up + surcharge + finning + preheat + saw + steps + sub-let steps + tooling + packing + overhead + freight
//	price    = (total - sub-let) (1 + mark-up) + sub-let with its own mark-up, at least the least charge
//	variable = (total - fixed)/good, fixed = set-up + once + first-off x variable
//	break-even = fixed/(price per tube - variable per good tube)
//
// Valid: quantity > 0.
// Source: addition; rates are the shop's.
func (p *Plan) cost(c *shop.Capability) {
	r := &c.Rates
	strip, ok := stripPrice(r.FinMetals, p.Order.FinMetal.ID)
	if !ok {
		p.Absent[TheCost] = message.New("shop.why.no_price", "metal", p.Order.FinMetal.Name())
		return
	}
	cost := Cost{Items: make([]CostItem, 0, 16)}
	add := func(id string, amount float64) {
		cost.Items = append(cost.Items, CostItem{id, units.Money(amount)})
		cost.Total += units.Money(amount)
	}
	if !p.addTubes(c, add) {
		return
	}
	if p.Packing == nil {
		p.Absent[TheCost] = p.Absent[ThePacking]
		return
	}
	l, s := p.Ledger, &p.Winding.Strip
	paid := float64(s.Mass(l.Paid()))
	add("strip", paid*float64(strip.Price))
	if worth := p.Winding.HandWorth(l); worth > 0 {
		add("strip_on_hand", float64(worth))
	}
	add("scrap", -float64(s.Mass(l.Scrap()))*float64(strip.Price)*strip.Scrap)
	surcharge := paid * float64(strip.Surcharge)
	if p.Supply != nil {
		surcharge += float64(p.Supply.Surcharge)
	}
	if surcharge > 0 {
		add("surcharge", surcharge)
	}
	alone := float64(r.Person) / c.Crew.Efficiency
	setUp := float64(p.Time.OnLine.Of(SettingUp)+p.Time.OnLine.Of(Checking)) * crewed(c)
	finning, sawing, packed := float64(p.Time.Productive())*crewed(c)-setUp, float64(p.Time.Saw)*alone, float64(p.Time.Pack)*alone
	add("set_up", setUp)
	add("finning", finning)
	if heated := float64(p.Winding.Made()) * float64(p.preheat().Cost); heated > 0 {
		add("preheat", heated)
	}
	add("saw", sawing)
	steps := p.StepSums()
	if steps.Own > 0 {
		add("steps", float64(steps.Own))
	}
	if cost.SubLet, cost.Once = steps.SubLet, steps.Once; steps.SubLet > 0 {
		add("sub_let", float64(steps.SubLet))
	}
	if tools := p.ToBuy.Cost(); tools > 0 {
		add("tooling", float64(tools))
		cost.Once += tools
	}
	add("packing", packed+float64(p.Packing.Crates)*(float64(c.Crate.Cost)+float64(p.Packing.Length)*float64(c.Crate.PerMetre)))
	if r.Overhead > 0 {
		add("overhead", (setUp+finning+sawing+packed+float64(steps.Time)*alone)*r.Overhead)
	}
	if r.Freight > 0 {
		add("freight", float64(p.Packing.Order)*float64(r.Freight))
	}
	cost.MarkUp = (cost.Total-steps.SubLet)*units.Money(r.MarkUp) + steps.MarkUp
	cost.finish(p, units.Money(setUp), r)
	p.Cost = &cost
}

// crewed is what the line and its crew cost by the time that they work.
func crewed(c *shop.Capability) float64 {
	return (float64(c.Rates.Line) + float64(c.Rates.Person)*float64(c.Crew.People)) / c.Crew.Efficiency
}

// addTubes adds what the tubes cost; without a price it says so and returns false. Of the customer's tubes the shop pays the
// spoilt ones, if it bears them.
func (p *Plan) addTubes(c *shop.Capability, add func(id string, amount float64)) bool {
	unpriced := message.New("shop.why.no_price", "metal", p.Order.TubeMetal.Name())
	if p.Order.FreeIssue {
		if c.Buying.Spoilt == shop.CustomerBears {
			return true
		}
		one, ok := PriceOfTube(c, p.Order, shop.CutToLength, p.Programme.CutLength)
		if !ok {
			p.Absent[TheCost] = unpriced
			return false
		}
		spoilt := p.Winding.FirstOff + p.Winding.Rejected
		length, mass := units.Length(spoilt)*p.Programme.CutLength, p.Order.Tube.TubeMass()
		add("spoilt", float64(one.Of(length, spoilt, mass)+one.Over(length, mass)))
		return true
	}
	s := p.Supply
	switch {
	case s == nil:
		p.Absent[TheCost] = p.Absent[TheSupply]
		return false
	case !s.Priced:
		p.Absent[TheCost] = unpriced
		return false
	}
	add("tube", float64(s.Paid))
	if worth := p.DrawnSums().Worth; worth > 0 {
		add("on_hand", float64(worth))
	}
	if s.Credit > 0 {
		add("offcut", -float64(s.Credit))
	}
	return true
}

// finish derives prices and the break-even quantity from the total.
func (k *Cost) finish(p *Plan, setUp units.Money, r *shop.Rates) {
	k.sell(p.Order, r)
	once := setUp + k.Once
	k.Fixed = once + units.Money(p.Winding.FirstOff)*(k.Total-once)/units.Money(p.Winding.Made())
	k.even(p.Order)
}

// stripPrice returns the price of a metal's strip.
func stripPrice(list []shop.StripPrice, metal string) (shop.StripPrice, bool) {
	for _, p := range list {
		if p.Metal == metal {
			return p, true
		}
	}
	return shop.StripPrice{}, false
}

func price(list []shop.Price, metal string) (shop.Price, bool) {
	for _, p := range list {
		if p.Metal == metal {
			return p, true
		}
	}
	return shop.Price{}, false
}
