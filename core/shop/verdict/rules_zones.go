package verdict

import (
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/units"
)

var placeRule = &Rule{ID: "span_place", Field: "tube_length", Changes: []string{"span_centre", "tube_length"}, Judge: judgePlace}

// judgePlace asks that bare spans neither meet nor leave less finned length
// between them than can be wound. The change moves the spans that are in the way,
// towards the end where the moves add up to less.
//
// Source: engineering judgement, editable.
func judgePlace(p *Pair) Verdict {
	t := &p.Order.Tube
	least := p.Shop.Placing.LeastFinned
	shortest := making.ShortestFinned(p.Order)
	v := atLeast(units.Distance, shortest, least)
	switch {
	case v.State == figure.Good && len(t.Spans) == 0:
		return moot("shop.why.no_spans")
	case v.State == figure.Good:
		return v
	}
	v.Why = message.New("shop.why.place", "shortest", message.Of(units.Distance, shortest), "least", message.Least(message.Of(units.Distance, least)))
	right, movedRight, okRight := push(p, 1)
	left, movedLeft, okLeft := push(p, -1)
	switch {
	case okRight && (!okLeft || movedRight <= movedLeft):
		v.Change = right
	case okLeft:
		v.Change = left
	case len(t.Spans) == 0:
		// The ends leave too little: lengthen the tube by what is missing.
		v.Change = []Setting{{Field: "tube_length", Kind: units.Distance, SI: float64(roundUp(t.Length + least - shortest))}}
	}
	return v
}

// push moves spans one after the other in a direction, no farther than needed,
// and says whether the last of them still leaves enough to fin.
func push(p *Pair, direction units.Length) (moves []Setting, moved units.Length, ok bool) {
	t := &p.Order.Tube
	least := p.Shop.Placing.LeastFinned
	n := len(t.Spans)
	if n == 0 {
		return nil, 0, false
	}
	// In the mirrored tube, pushing to the left is pushing to the right.
	place := func(x units.Length) units.Length {
		if direction < 0 {
			return t.Length - x
		}
		return x
	}
	reach, end := t.PlainA, t.Length-t.PlainB
	if direction < 0 {
		reach, end = t.PlainB, t.Length-t.PlainA
	}
	for k := range n {
		i := k
		if direction < 0 {
			i = n - 1 - k
		}
		s := t.Spans[i]
		centre := place(s.Centre)
		if lowest := reach + least + s.Width/2; centre < lowest*(1-shop.Slack) {
			to := roundUp(lowest)
			moved += to - centre
			centre = to
			moves = append(moves, Setting{"span_centre", i, units.Distance, float64(place(centre)), ""})
		}
		reach = centre + s.Width/2
	}
	return moves, moved, end-reach >= least*(1-shop.Slack)
}

var spansRule = &Rule{ID: "span_width", Field: "tube_length", Changes: []string{"span_width"}, Judge: judgeSpans}

// judgeSpans asks that every bare span is as wide as the house needs and holds
// the turns of the run-down before it.
//
// Source: engineering judgement, editable; run-down by uniform deceleration.
func judgeSpans(p *Pair) Verdict {
	t := &p.Order.Tube
	if len(t.Spans) == 0 {
		return moot("shop.why.no_spans")
	}
	v := Verdict{State: figure.Good}
	for i, s := range t.Spans {
		need := max(p.Shop.Placing.LeastBare, p.runDown())
		w := atLeast(units.Distance, s.Width, need)
		if v.Measure == nil || w.Measure.Margin < v.Measure.Margin {
			v.Measure = w.Measure
			v.Why = message.New("shop.why.span", "number", i+1, "width", message.Of(units.Distance, s.Width), "need", message.Least(message.Of(units.Distance, need)))
		}
		if w.State == figure.No {
			v.State = figure.No
			v.Change = append(v.Change, Setting{"span_width", i, units.Distance, float64(roundUp(need)), ""})
		}
	}
	if v.State == figure.Good {
		v.Why = message.Message{}
	}
	return v
}

// runDown returns the length that is wound while the spindle stops from full speed.
func (p *Pair) runDown() units.Length {
	s := p.Speeds()
	turns := float64(s.Spindle*s.Spindle) / (2 * s.RunDown)
	return p.Order.Tube.Pitch() * units.Length(turns)
}

var endRule = &Rule{ID: "plain_end_b", Field: "plain_end_b", Changes: []string{"plain_end_b"}, Judge: judgeEnd}

// judgeEnd asks that plain end B and its trim hold the turns of the last run-down.
func judgeEnd(p *Pair) Verdict {
	t := &p.Order.Tube
	need, trim := p.runDown(), p.Shop.Cutting.TrimB
	v := atLeast(units.Distance, t.PlainB+trim, need)
	if v.State == figure.No {
		v.Why = message.New("shop.why.end", "end", message.Of(units.Distance, t.PlainB+trim), "need", message.Least(message.Of(units.Distance, need)))
		v.Change = []Setting{{Field: "plain_end_b", Kind: units.Distance, SI: float64(roundUp(need - trim))}}
	}
	return v
}

var positionRule = &Rule{ID: "position", Field: "position_tolerance", Figure: "growth_scatter", Judge: judgePosition}

// judgePosition holds how far the scatter of growth may put the farthest edge out to the position tolerance.
//
// Source: EdgeOff.
func judgePosition(p *Pair) Verdict {
	t := &p.Order.Tube
	g := making.LearnGrowth(p.Shop, p.Practice)
	if g.Share == 0 && g.Scatter == 0 {
		return moot("shop.why.no_growth")
	}
	reach := t.Length - t.PlainB
	v := atMost(units.Gap, making.EdgeOff(g.Scatter, reach), p.Shop.Placing.Tolerance)
	if v.State == figure.No {
		v.State = figure.Watch
		v.Why = making.TrialFirst(g.Scatter, reach, p.Shop.Placing.Tolerance)
	}
	return v
}

var growthRule = &Rule{ID: "growth", Field: "fin_type", Judge: judgeGrowth}

// judgeGrowth holds the growth of an embedded tube to the most that the
// displaced metal allows; above it a measured tube was misread.
//
// Source: GrowthBound.
func judgeGrowth(p *Pair) Verdict {
	if !p.Order.Tube.Fin.Type.Grooved() {
		return moot("shop.why.no_bound")
	}
	g, bound := making.LearnGrowth(p.Shop, p.Practice), making.GrowthBound(&p.Order.Tube)
	v := atMost(units.Percent, g.Share, bound)
	if v.State == figure.No {
		v.State = figure.Watch
		v.Why = message.New("shop.why.bound", "growth", message.Of(units.Percent, g.Share), "bound", message.Of(units.Percent, bound))
	}
	return v
}

var stockRule = &Rule{ID: "stock", Field: "tube_length", Changes: []string{"tube_length"}, Judge: judgeStock}

// judgeStock asks for a tube from the mill that is long enough to cut from.
func judgeStock(p *Pair) Verdict {
	if p.Order.FreeIssue {
		return moot("shop.why.free_issue")
	}
	if p.Shop.Buying.Tubes == shop.CutToLength {
		return moot("shop.why.cut_to_length")
	}
	programme, ok := p.Programme()
	if !ok || len(p.Shop.Cutting.Stock) == 0 {
		return unknown("shop.why.no_cut")
	}
	longest := p.Shop.Cutting.Stock[0]
	for _, s := range p.Shop.Cutting.Stock {
		longest = max(longest, s)
	}
	v := atMost(units.Distance, programme.CutLength, longest)
	if v.State == figure.No {
		v.Why = message.New("shop.why.stock", "cut", message.Of(units.Distance, programme.CutLength), "longest", message.Most(message.Of(units.Distance, longest)))
		over := (programme.CutLength - longest) * units.Length(1+programme.Growth.Share)
		length := roundDown(p.Order.Tube.Length - over - p.Shop.Cutting.Step)
		change := Setting{Field: "tube_length", Kind: units.Distance, SI: float64(length)}
		if _, fits := p.with(change).Programme(); fits { // with its bare spans
			v.Change = []Setting{change}
		}
	}
	return v
}
