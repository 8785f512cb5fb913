package verdict

import (
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop/making"
	"finwright/core/units"
)

var coilRule = &Rule{ID: "coil", Field: "joints_allowed", Figure: "coil_length", Changes: []string{"tube_length"}, Judge: judgeCoil}

// judgeCoil asks whether some coil of the line serves a tube within the joint
// rule. The change shortens the tube; it is checked, for a shorter tube may carry
// fewer joints.
//
// Source: Joints.Allowed.
func judgeCoil(p *Pair) Verdict {
	if _, ok := p.Programme(); !ok {
		return unknown("shop.why.zones")
	}
	w := p.Longest()
	if w.Fresh() <= 0 {
		return Verdict{State: figure.No, Why: w.TooLittle()}
	}
	need, capacity := w.Strip.PerTube(), w.Capacity()
	v := atMost(units.Run, need, capacity)
	if v.State == figure.Good {
		return v
	}
	v.Why = w.TooLittle()
	perMetre := w.Strip.Kept / p.Order.Tube.FinnedLength()
	change := Setting{Field: "tube_length", Kind: units.Distance, SI: float64(roundDown(p.Order.Tube.Length - (need-capacity)/perMetre))}
	shorter := p.with(change)
	if _, ok := shorter.Programme(); ok && shorter.Longest().Possible() {
		v.Change = []Setting{change}
	}
	return v
}

var sparesRule = &Rule{ID: "spares", Field: "spares", Changes: []string{"spares"}, Judge: judgeSpares}

// judgeSpares asks that the customer supplies enough tubes for first-off and rejects:
// an embedded tube that fails cannot be used again.
//
// Source: common practice, no source.
func judgeSpares(p *Pair) Verdict {
	if !p.Order.FreeIssue {
		return moot("shop.why.our_tubes")
	}
	firstOff, rejected := making.Expected(p.Shop, p.Line, p.Order.Quantity)
	need := float64(firstOff + rejected)
	if need == 0 {
		return moot("shop.why.no_spares")
	}
	v := atLeast(units.Count, float64(p.Order.Spares), need)
	if v.State == figure.No {
		v.State = figure.Watch
		v.Why = message.New("shop.why.spares", "spares", p.Order.Spares, "need", int(need))
		v.Change = []Setting{{Field: "spares", Kind: units.Count, SI: need}}
	}
	return v
}

var crateRule = &Rule{ID: "crate", Field: "tube_length", Figure: "crate_mass", Judge: judgeCrate}

// judgeCrate asks whether a crate takes the tubes at all. Nothing short of
// another tube or another crate helps, so there is no change.
func judgeCrate(p *Pair) Verdict {
	if making.ShortestFinned(p.Order) <= 0 {
		return unknown("shop.why.zones")
	}
	packing, why := p.Packing()
	if packing == nil {
		return Verdict{State: figure.Watch, Why: why}
	}
	return atMost(units.Weight, packing.Gross, p.Shop.Crate.Heaviest())
}
