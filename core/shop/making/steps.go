package making

import (
	"slices"

	"finwright/core/material"
	"finwright/core/shop"
	"finwright/core/units"
)

// StepWork is one step of the shop's list on the tubes of an order.
type StepWork struct {
	Step     *shop.Step
	Asked    bool           // for by the customer
	Tubes    int            // to which it is done, spoilt ones with them where it comes before finning
	Time     units.Duration // of one person, productive; a supplier's is no hour of the shop's
	Cost     units.Money    // time and what is used up, or the supplier's price
	Once     units.Money    // of that, the same for any quantity
	MarkUp   units.Money    // on a supplier's price
	Cautions []string       // their texts are "caution.<ID>"
}

// SubLet reports whether a supplier does it.
func (s *StepWork) SubLet() bool { return s.Step.Who == shop.BySubLet }

// stepsOf lists the steps that the shop takes an order through, in its order, with so many tubes made: times [s], costs [currency].
//
//	time = tubes x time of a tube + time of an order
//	cost = time x person / efficiency + tubes x cost of a tube + cost of an order
//
// Valid: any order.
// Source: addition; times and costs are the shop's.
func stepsOf(c *shop.Capability, o *Order, made int) []StepWork {
	out := make([]StepWork, 0, len(c.Steps))
	for i := range c.Steps {
		s := &c.Steps[i]
		if !doneBy(c, i, o) {
			continue
		}
		w := StepWork{Step: s, Asked: o.Asked.Steps.Has(s.Kind), Tubes: o.Quantity, Cautions: stepCautions(s, o)}
		if s.When == shop.BeforeFinning {
			w.Tubes = made
		}
		w.Once = s.CostOrder
		if !w.SubLet() {
			w.Time = units.Duration(w.Tubes)*s.PerTube + s.PerOrder
			w.Once += oneWorks(c, s.PerOrder)
		}
		w.Cost = oneWorks(c, w.Time) + units.Money(w.Tubes)*s.CostTube + s.CostOrder
		if w.SubLet() {
			w.MarkUp = w.Cost * units.Money(s.MarkUp)
		}
		out = append(out, w)
	}
	return out
}

// doneBy reports whether the shop does its n-th step on an order: by itself, or since the customer asks for the kind, of which it then
// does the first that it has.
func doneBy(c *shop.Capability, n int, o *Order) bool {
	does := func(s *shop.Step) bool { return s.For(o.Tube.Fin.Type, o.TubeMetal.Family, o.FreeIssue) }
	kind := c.Steps[n].Kind
	ofKind := func(s shop.Step) bool { return s.Kind == kind }
	switch {
	case does(&c.Steps[n]):
		return true
	case !o.Asked.Steps.Has(kind) || slices.IndexFunc(c.Steps, ofKind) != n:
		return false
	}
	return !slices.ContainsFunc(c.Steps, func(s shop.Step) bool { return ofKind(s) && does(&s) })
}

// Lacking lists the kinds of step that the customer asks for and the plan does not have.
//
// Valid: any plan.
// Source: the plan.
func (p *Plan) Lacking() (out []shop.StepKind) {
	for _, k := range shop.StepKinds {
		if p.Order.Asked.Steps.Has(k) && !slices.ContainsFunc(p.Steps, func(s StepWork) bool { return s.Step.Kind == k }) {
			out = append(out, k)
		}
	}
	return out
}

// oneWorks is what one person costs who works so long.
func oneWorks(c *shop.Capability, t units.Duration) units.Money {
	return units.Money(float64(t) * float64(c.Rates.Person) / c.Crew.Efficiency)
}

// stepCautions are what must be heeded in a step, of this order's metal and fins.
//
// Source: common practice, no source.
func stepCautions(s *shop.Step, o *Order) (out []string) {
	family := o.TubeMetal.Family
	switch s.Kind {
	case shop.Clean, shop.OilOut:
		switch family {
		case material.Titanium:
			out = append(out, "solvent_titanium")
		case material.Stainless:
			out = append(out, "solvent_stainless")
		}
		if s.When == shop.AfterFinning && o.Tube.Fin.Type.Grooved() {
			out = append(out, "jet")
		}
	case shop.PressureTest:
		if family == material.Stainless {
			out = append(out, "chloride_water")
		}
		out = append(out, "drain", "pneumatic")
	case shop.Identify:
		out = append(out, "bundle")
	}
	return out
}

// StepSums are the steps of an order together: what a tube takes before and after finning, what an order takes, and what is used up.
type StepSums struct {
	Before, After, Order units.Duration // of one person
	UsedUp               units.Money
	PriceBefore          units.Money // a tube, at the supplier
	PriceAfter           units.Money
	PriceOrder           units.Money
	Time                 units.Duration
	Own                  units.Money // what the crew's steps cost
	SubLet               units.Money // what the suppliers ask
	Once                 units.Money // of both, the same for any quantity
	MarkUp               units.Money // on the suppliers' prices
}

// StepSums adds the steps of a plan up: times [s], costs [currency].
//
// Valid: any plan.
// Source: addition.
func (p *Plan) StepSums() (sum StepSums) {
	for i := range p.Steps {
		w := &p.Steps[i]
		s := w.Step
		sum.Once += w.Once
		before := s.When == shop.BeforeFinning
		if w.SubLet() {
			sum.SubLet += w.Cost
			sum.MarkUp += w.MarkUp
			sum.PriceOrder += s.CostOrder
			if before {
				sum.PriceBefore += s.CostTube
			} else {
				sum.PriceAfter += s.CostTube
			}
			continue
		}
		sum.Own += w.Cost
		sum.Time += w.Time
		sum.Order += s.PerOrder
		sum.UsedUp += units.Money(w.Tubes)*s.CostTube + s.CostOrder
		if before {
			sum.Before += s.PerTube
		} else {
			sum.After += s.PerTube
		}
	}
	return sum
}
