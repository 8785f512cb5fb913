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
func judgeCoil(j *job) Verdict {
	w, ok := making.LongestWinding(j.c, j.l, j.m, j.o)
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
	perMetre := w.Strip.Kept / j.o.Tube.FinnedLength()
	change := Setting{Field: "tube_length", Kind: units.Distance, SI: float64(roundDown(j.o.Tube.Length - (need-capacity)/perMetre))}
	shorter := With(*j.o, change)
	if w, ok := making.LongestWinding(j.c, j.l, j.m, &shorter); ok && w.Possible() {
		v.Change = []Setting{change}
	}
	return v
}

// judgeSpares asks that the customer supplies enough tubes for first-off and rejects:
// an embedded tube that fails cannot be used again.
//
// Source: common practice, no source.
func judgeSpares(j *job) Verdict {
	if !j.o.FreeIssue {
		return unknown("shop.why.our_tubes")
	}
	firstOff, rejected := making.Expected(j.c, j.l, j.o.Quantity)
	need := float64(firstOff + rejected)
	v := Verdict{State: figure.Good}
	if need == 0 {
		return v
	}
	v = atLeast(units.Count, float64(j.o.Spares), need)
	if v.State == figure.No {
		v.State = figure.Watch
		v.Why = message.New("shop.why.spares", "spares", j.o.Spares, "need", int(need))
		v.Change = []Setting{{Field: "spares", Kind: units.Count, SI: need}}
	}
	return v
}

// judgeCrate asks whether a crate takes the tubes at all. Nothing short of
// another tube or another crate helps, so there is no change.
func judgeCrate(j *job) Verdict {
	if making.ShortestFinned(j.c, j.o) <= 0 {
		return unknown("shop.why.zones")
	}
	p, why := making.Pack(&j.c.Crate, &j.o.Tube, max(1, j.o.Quantity))
	if !why.None() {
		return Verdict{State: figure.Watch, Why: why}
	}
	limit := min(j.c.Crate.Mass, j.c.Crate.Crane, j.c.Crate.Payload)
	return atMost(units.Weight, p.Gross, limit)
}
