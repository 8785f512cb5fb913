package making

import (
	"math"

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
	g := GroundworkOf(c, l, o)
	g.Now = now
	return g.Plan()
}

// Plan is PlanOf on the groundwork: lengths [m], masses [kg], times [s], costs [currency].
//
// Valid: as PlanOf.
// Source: as PlanOf.
func (g *Groundwork) Plan() Plan {
	c, l, o := g.Shop, g.Line, g.Order
	p := Plan{Order: o, Line: l, Absent: map[Part]message.Message{}}
	if bought, ok := c.BoughtInFor(&o.Tube); ok {
		p.buyIn(g, bought)
		return p
	}
	p.bundle(c, o.Quantity)
	if g.Practice == nil {
		p.Absent[TheProgramme] = message.New("shop.why.type", "line", l.Name, "type", message.Key("choice.fin_type."+string(o.Tube.Fin.Type)))
		return p
	}
	p.Practice, p.Speeds = g.Practice, g.Speeds()
	programme, ok := g.Programme()
	if !ok {
		p.Absent[TheProgramme] = message.New("shop.why.zones")
		return p
	}
	p.Programme, p.SetUp = programme, g.SetUp()
	p.pack(g)
	firstOff, rejected := g.spoilt(p.SetUp)
	p.ToBuy = toolingOf(c, l, g.Practice, o)
	p.Steps = stepsOf(c, o, o.Quantity+firstOff+rejected)
	p.Drawn = p.draw(c, o.Quantity+firstOff+rejected)
	if p.wind(g); p.Ledger == nil {
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

func (p *Plan) pack(g *Groundwork) {
	var why message.Message
	if p.Packing, why = g.Packing(); p.Packing == nil {
		p.Absent[ThePacking] = why
	}
}

// Expected returns the first-off tubes and the rejects to be expected in an order.
//
// Source: 1 to 2 tubes each set-up and 1 to 3 % of scrap: engineering judgement, editable.
func Expected(c *shop.Capability, l *shop.Line, quantity int) (firstOff, rejected int) {
	return l.FirstOff, int(math.Ceil(c.Losses.Rejects*float64(quantity) - shop.Slack))
}

// wind takes the strip from the coil in use, and adds to the time with each coil what is done beside the line.
func (p *Plan) wind(g *Groundwork) {
	var used *CoilOption
	if p.Coils, used = g.Coils(); used == nil {
		p.Absent[TheStrip] = g.Longest().TooLittle()
		return
	}
	p.Winding, p.Ledger, p.Time = &used.Winding, &used.Ledger, &used.Time
	crates := 0
	if p.Packing != nil {
		crates = p.Packing.Crates
	}
	steps, drawn := p.StepSums().Time, p.DrawnSums().Pieces
	for i := range p.Coils {
		if !p.Coils[i].Possible {
			continue
		}
		w := &p.Coils[i].Winding
		cuts := 2*w.Good + drawn // both trims of what ships
		if g.Shop.Buying.Tubes == shop.StockLengths {
			cuts += w.Made() - drawn
		}
		p.Coils[i].Time.beside(g.Shop, cuts, crates, steps)
	}
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
