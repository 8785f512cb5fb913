package verdict

import (
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// The rules of this file hold what is said of the bare tubes against what the line takes. Where nothing is said, tubes that the
// shop buys are ordered so, and of the customer's it is asked.

var straightRule = &Rule{ID: "straightness", Field: "tube_bow", Changes: []string{"tube_bow"}, Judge: judgeStraight}

// judgeStraight compares bows over one length: an even bow goes with the length squared.
//
// Source: 3 mm in any 3 m, agreed industry standard for HF-welded fins, 1990; the limit is the shop's. The sagitta of a flat arc.
func judgeStraight(p *Pair) Verdict {
	s, asked := p.Line.Straight, p.Order.Asked
	limit := message.Most(message.Of(units.Gap, s.Bow))
	over := message.Of(units.Distance, s.Over)
	switch {
	case s.Bow <= 0:
		return unknown("shop.why.no_limit")
	case !asked.Bow.Stated && p.Order.FreeIssue:
		return ask("shop.why.ask_bow", "limit", limit, "over", over)
	case !asked.Bow.Stated:
		return unknown("shop.why.order_bow", "limit", limit, "over", over)
	}
	share := 1.0
	if asked.BowOver.Stated {
		share = asked.BowOver.SI / float64(s.Over)
	}
	allowed := s.Bow * units.Length(share*share)
	v := atMost(units.Gap, units.Length(asked.Bow.SI), allowed)
	if v.State == figure.No {
		v.Why = message.New("shop.why.bow", "bow", message.Of(units.Gap, asked.Bow.SI), "limit", message.Most(message.Of(units.Gap, s.Bow)), "over", over)
		v.Change = []Setting{{Field: "tube_bow", Kind: units.Gap, SI: float64(roundDown(allowed))}}
	}
	return v
}

var roundRule = &Rule{ID: "od_tolerance", Field: "od_tolerance", Changes: []string{"od_tolerance"}, Judge: judgeRound}

// judgeRound holds the tolerance of the tube's outside diameter to what the line's rolls take.
//
// Source: common practice, no source; the limit is the shop's.
func judgeRound(p *Pair) Verdict {
	return p.said("od_tolerance", units.Gap, p.Order.Asked.ODOut, float64(p.Line.ODOut))
}

var hardRule = &Rule{ID: "tube_hardness", Field: "tube_hardness", Changes: []string{"tube_hardness"}, Judge: judgeHard}

// judgeHard holds the tube's hardness to what groove or knurl can be rolled into.
//
// Source: the depth of a knurl hangs on the tube's hardness: common practice, no source; the limit is the shop's.
func judgeHard(p *Pair) Verdict {
	return p.cut("tube_hardness", units.Hardness, p.Order.Asked.Hardness, p.Practice.Hardest)
}

var beadOutRule = &Rule{ID: "bead_outside", Field: "bead_outside", Changes: []string{"bead_outside"}, Judge: judgeBeadOut}

// judgeBeadOut holds the weld bead outside, on which the tool jumps, to what it takes.
//
// Source: common practice, no source; the limit is the shop's.
func judgeBeadOut(p *Pair) Verdict {
	return p.cut("bead_outside", units.Gap, p.Order.Asked.BeadOut, float64(p.Practice.BeadOut))
}

var beadInRule = &Rule{ID: "bead_inside", Field: "bead_inside", Changes: []string{"bead_inside"}, Judge: judgeBeadIn}

// judgeBeadIn holds the weld bead inside, which a mandrel must pass, to what the line takes.
//
// Source: common practice, no source; the limit is the shop's.
func judgeBeadIn(p *Pair) Verdict {
	return p.cut("bead_inside", units.Gap, p.Order.Asked.BeadIn, float64(p.Practice.BeadIn))
}

// cut is said for tubes into which groove or knurl is rolled; the others bear any.
func (p *Pair) cut(field string, k units.Kind, told rating.Optional, limit float64) Verdict {
	if !p.Order.Tube.Fin.Type.CutInto() {
		return moot("shop.why.no_groove")
	}
	return p.said(field, k, told, limit)
}

// said holds what is said of the tubes to a high limit; nought is none.
func (p *Pair) said(field string, k units.Kind, told rating.Optional, limit float64) Verdict {
	most := message.Most(message.Of(k, limit))
	switch {
	case limit <= 0:
		return unknown("shop.why.no_limit")
	case !told.Stated && p.Order.FreeIssue:
		return ask("shop.why.ask_tubes", "limit", most)
	case !told.Stated:
		return unknown("shop.why.order_tubes", "limit", most)
	}
	v := atMost(k, told.SI, limit)
	if v.State == figure.No {
		v.Why = message.New("shop.why.tubes_out", "value", message.Of(k, told.SI), "limit", most)
		v.Change = []Setting{{Field: field, Kind: k, SI: limit}}
	}
	return v
}
