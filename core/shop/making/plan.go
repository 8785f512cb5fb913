package making

import (
	"cmp"
	"math"
	"slices"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// Plan is how an order is made on one line. A part that cannot be computed is
// nil, and Absent says why.
type Plan struct {
	Order     *Order
	Line      *shop.Line
	Practice  *shop.Practice
	Speeds    *Speeds
	Programme *Programme
	Winding   *Winding // with the coil in use
	Ledger    *Ledger
	Coils     []CoilOption // every coil that the line takes, in its order
	Drawn     []Drawn      // tubes on hand that are taken first
	Supply    *Supply      // the shop's own way to buy the tubes
	Other     *Supply      // the other way; nil where it cannot be
	SetUp     units.Duration
	ToBuy     ToBuy          // tooling that the line lacks
	BoughtIn  *shop.BoughtIn // where it is bought in finned; then no line winds it
	Steps     []StepWork     // beside finning, sawing and packing
	Time      *OrderTime
	Bundle    *HexBundle // of the plain tubes as they come
	Packing   *Packing
	Cost      *Cost
	Absent    map[Part]message.Message
}

// Part is a part of a plan that may be absent.
type Part string

// Parts.
const (
	TheProgramme Part = "programme"
	TheStrip     Part = "strip"
	TheSupply    Part = "supply"
	ThePacking   Part = "packing"
	TheBundle    Part = "bundle"
	TheCost      Part = "cost"
)

// PlanOf plans an order on a line: lengths [m], masses [kg], times [s], costs [currency]. now is the setup on the line, nil if nothing is
// known: then a change of diameter is charged.
//
// Valid: a checked order on a line that makes the type; what cannot be planned is absent with its reason.
// Source: the functions of this package.
func PlanOf(c *shop.Capability, l *shop.Line, o *Order, now *Setup) Plan {
	p := Plan{Order: o, Line: l, Absent: map[Part]message.Message{}}
	if bought, ok := c.BoughtInFor(&o.Tube); ok {
		p.buyIn(c, bought)
		return p
	}
	p.bundle(c, o.Quantity)
	m, ok := l.Practice(o.Tube.Fin.Type)
	if !ok {
		p.Absent[TheProgramme] = message.New("shop.why.type", "line", l.Name, "type", message.Key("choice.fin_type."+string(o.Tube.Fin.Type)))
		return p
	}
	p.Practice = m
	s := SpeedsOf(c, l, m, o)
	p.Speeds = &s
	programme, ok := ProgrammeOf(c, m, &s, o)
	if !ok {
		p.Absent[TheProgramme] = message.New("shop.why.zones")
		return p
	}
	p.Programme = &programme
	p.SetUp = l.ChangeOver.OD
	if now != nil {
		p.SetUp = ChangeTime(&l.ChangeOver, *now, SetupOf(o))
	}
	p.pack(c)
	firstOff, rejected := p.spoilt(c)
	p.ToBuy = toolingOf(c, l, m, o)
	p.Steps = stepsOf(c, o, o.Quantity+firstOff+rejected)
	p.Drawn = p.draw(c, o.Quantity+firstOff+rejected)
	if p.wind(c); p.Ledger == nil {
		return p
	}
	p.supply(c)
	p.cost(c)
	return p
}

// bundle is of at most the tubes that are bought.
func (p *Plan) bundle(c *shop.Capability, tubes int) {
	if b, ok := LargestHexagon(p.Order.Tube.OD, c.Bundle, tubes); ok {
		p.Bundle = &b
	} else {
		p.Absent[TheBundle] = message.New("shop.why.bundle", "od", message.Of(units.Diameter, p.Order.Tube.OD))
	}
}

func (p *Plan) pack(c *shop.Capability) {
	packing, why := Pack(&c.Crate, &p.Order.Tube, p.Order.Quantity)
	if !why.None() {
		p.Absent[ThePacking] = why
		return
	}
	p.Packing = &packing
}

// Expected returns the first-off tubes and the rejects to be expected in an order.
//
// Source: 1 to 2 tubes each set-up and 1 to 3 % of scrap: engineering judgement, editable.
func Expected(c *shop.Capability, l *shop.Line, quantity int) (firstOff, rejected int) {
	return l.FirstOff, int(math.Ceil(c.Losses.Rejects*float64(quantity) - shop.Slack))
}

// spoilt returns the tubes of the order that do not ship: first-off ones only where the line is set anew.
func (p *Plan) spoilt(c *shop.Capability) (firstOff, rejected int) {
	firstOff, rejected = Expected(c, p.Line, p.Order.Quantity)
	if p.SetUp == 0 {
		firstOff = 0
	}
	return firstOff, rejected
}

// winding returns the order's winding from one form of coil.
func (p *Plan) winding(c *shop.Capability, k *shop.Coil) Winding {
	t := &p.Order.Tube
	strip := StripOf(t, p.Practice, p.Programme)
	turns := units.Length(float64(strip.Kept) / float64(p.Programme.Finned()))
	firstOff, rejected := p.spoilt(c)
	w := Winding{
		Strip: strip, Coil: FillCoil(k, strip.Slit, strip.Thickness, strip.Density), Losses: c.Losses,
		Joints: JointsAllowed(&p.Practice.Joints, t.Length), Apart: p.Practice.Joints.Apart * turns,
		Good: p.Order.Quantity, FirstOff: firstOff, Rejected: rejected, Spent: c.Buying.StripLeft == shop.StripIsScrap,
		Hand: p.coilsOnHand(c, k, &strip), Restart: p.Practice.Weld.Restart,
	}
	if clear := p.Practice.Joints.Clear; clear > 0 {
		w.Places, w.Placed = p.Programme.JointPlaces(strip.PerTube(), t.Pitch(), clear), true
		w.Placed = w.Possible() // else its strip does not last, and joints stand as they come
	}
	return w
}

// LongestWinding returns the order's winding from the coil that gives one tube the most
// strip [m].
//
// Valid: a line that makes the type and has a coil.
// Source: Winding.Capacity of each coil.
func LongestWinding(c *shop.Capability, l *shop.Line, m *shop.Practice, o *Order, programme *Programme) (best Winding) {
	p := Plan{Order: o, Line: l, Practice: m, Programme: programme}
	for i := range l.Coils {
		if w := p.winding(c, &l.Coils[i]); i == 0 || w.Capacity() > best.Capacity() {
			best = w
		}
	}
	return best
}

func (p *Plan) wind(c *shop.Capability) {
	p.Coils = make([]CoilOption, len(p.Line.Coils))
	var used *CoilOption
	for i := range p.Coils {
		option := &p.Coils[i]
		option.Winding = p.winding(c, &p.Line.Coils[i])
		if option.Possible = option.Winding.Possible(); option.Possible {
			option.Ledger = option.Winding.takeHand()
			option.Time = p.time(c, &option.Winding, &option.Ledger)
			if used == nil || c.Buying.Coils == shop.CheaperCoil && p.coilCost(c, option) < p.coilCost(c, used)*(1-roundOff) {
				used = option
			}
		}
	}
	if used != nil {
		p.Winding, p.Ledger, p.Time = &used.Winding, &used.Ledger, &used.Time
	} else {
		best := slices.MaxFunc(p.Coils, func(a, b CoilOption) int { return cmp.Compare(a.Winding.Capacity(), b.Winding.Capacity()) })
		p.Absent[TheStrip] = best.Winding.TooLittle()
	}
}

// coilCost is what an order costs that hangs on its coil: strip less what its scrap fetches, and the line's time. Without a price
// of the strip, time decides.
func (p *Plan) coilCost(c *shop.Capability, k *CoilOption) units.Money {
	price, _ := stripPrice(c.Rates.FinMetals, p.Order.FinMetal.ID)
	s := &k.Winding.Strip
	paid := float64(s.Mass(k.Ledger.Paid()))
	return k.Winding.HandWorth(&k.Ledger) + units.Money((paid-float64(s.Mass(k.Ledger.Scrap()))*price.Scrap)*float64(price.Price)+paid*float64(price.Surcharge)) +
		units.Money(float64(k.Time.Productive())*crewed(c))
}

func (p *Plan) time(c *shop.Capability, w *Winding, k *Ledger) OrderTime {
	crates := 0
	if p.Packing != nil {
		crates = p.Packing.Crates
	}
	cuts := 2 * w.Good // both trims of what ships
	drawn := p.DrawnSums().Pieces
	if cuts += drawn; c.Buying.Tubes == shop.StockLengths {
		cuts += w.Made() - drawn
	}
	one := TimeTube(p.Line, p.Programme, shop.SecuringWay(p.Order.Asked.Security))
	one.Preheat = p.preheat().Time
	o := TimeOrder(c, p.Line, w, one, p.SetUp, k, cuts, crates)
	o.Steps = p.StepSums().Time
	o.Person += o.Steps / units.Duration(c.Crew.Efficiency)
	return o
}

// preheat is how the order's tubes are heated before fins are welded on.
func (p *Plan) preheat() shop.Preheat { return p.Practice.Weld.PreheatOf(p.Order.TubeMetal.ID) }

func (p *Plan) supply(c *shop.Capability) {
	if p.Order.FreeIssue {
		p.Absent[TheSupply] = message.New("shop.why.free_issue")
		return
	}
	if p.Supply, p.Other = p.supplies(c); p.Supply == nil {
		p.Absent[TheSupply] = message.New("shop.why.no_stock", "cut", message.Of(units.Distance, p.Programme.CutLength))
		return
	}
	if p.Supply.Tubes == 0 {
		p.Bundle, p.Absent[TheBundle] = nil, message.New("shop.why.all_on_hand")
		return
	}
	p.bundle(c, p.Supply.Tubes)
}

// Schedule lays the plan over at most so many shifts; ok is false without strip.
func (p *Plan) Schedule(c *shop.Capability, shifts int) (s Schedule, ok bool) {
	if p.Winding == nil {
		return s, false
	}
	return ScheduleOf(c, p.Line, p.Winding, p.Time.Tube, p.SetUp, shifts), true
}

// CoilOption is an order wound from one form of coil. Without Possible, ledger
// and time mean nothing.
type CoilOption struct {
	Winding  Winding
	Possible bool
	Ledger   Ledger
	Time     OrderTime
}

// Saved returns the coil changes and the line's time [s] by the clock that this
// option saves over another.
//
// Valid: both possible.
// Source: subtraction.
func (k *CoilOption) Saved(over *CoilOption) (changes int, time units.Duration) {
	return over.Ledger.Changes - k.Ledger.Changes, over.Time.Clock - k.Time.Clock
}

// Strip returns the strip ordered, nil where there is no winding.
func (p *Plan) Strip() *Strip {
	if p.Winding == nil {
		return nil
	}
	return &p.Winding.Strip
}
