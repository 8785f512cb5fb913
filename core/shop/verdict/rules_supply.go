package verdict

import (
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// judgeCoil asks whether some coil of the line serves a tube within the joint
// rule. The change shortens the tube; it is checked, for a shorter tube may carry
// fewer joints.
//
// Source: Joints.Allowed.
func judgeCoil(p *pair) Verdict {
	w, ok := making.LongestWinding(p.c, p.l, p.m, p.o)
	if !ok {
		return unknown("shop.why.zones")
	}
	if w.Fresh() <= 0 {
		return Verdict{State: figure.No, Why: w.TooLittle()}
	}
	need, capacity := w.Strip.PerTube(), w.Capacity()
	v := atMost(units.Run, need, capacity)
	if v.State == figure.Good {
		return v
	}
	v.Why = w.TooLittle()
	perMetre := w.Strip.Kept / p.o.Tube.FinnedLength()
	change := Setting{Field: "tube_length", Kind: units.Distance, SI: float64(roundDown(p.o.Tube.Length - (need-capacity)/perMetre))}
	shorter := With(*p.o, change)
	if w, ok := making.LongestWinding(p.c, p.l, p.m, &shorter); ok && w.Possible() {
		v.Change = []Setting{change}
	}
	return v
}

// judgeSpares asks that the customer supplies enough tubes for first-off and rejects:
// an embedded tube that fails cannot be used again.
//
// Source: common practice, no source.
func judgeSpares(p *pair) Verdict {
	if !p.o.FreeIssue {
		return unknown("shop.why.our_tubes")
	}
	firstOff, rejected := making.Expected(p.c, p.l, p.o.Quantity)
	need := float64(firstOff + rejected)
	v := Verdict{State: figure.Good}
	if need == 0 {
		return v
	}
	v = atLeast(units.Count, float64(p.o.Spares), need)
	if v.State == figure.No {
		v.State = figure.Watch
		v.Why = message.New("shop.why.spares", "spares", p.o.Spares, "need", int(need))
		v.Change = []Setting{{Field: "spares", Kind: units.Count, SI: need}}
	}
	return v
}

// judgeCrate asks whether a crate takes the tubes at all. Nothing short of
// another tube or another crate helps, so there is no change.
func judgeCrate(p *pair) Verdict {
	if making.ShortestFinned(p.c, p.o) <= 0 {
		return unknown("shop.why.zones")
	}
	packing, why := making.Pack(&p.c.Crate, &p.o.Tube, max(1, p.o.Quantity))
	if !why.None() {
		return Verdict{State: figure.Watch, Why: why}
	}
	limit := min(p.c.Crate.Mass, p.c.Crate.Crane, p.c.Crate.Payload)
	return atMost(units.Weight, packing.Gross, limit)
}
