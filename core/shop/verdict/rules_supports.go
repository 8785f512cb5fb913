package verdict

import (
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

var supportsRule = &Rule{ID: "support_spacing", Field: "support_spacing", Changes: []string{"span_centre"}, Judge: judgeSupports}

// judgeSupports holds the longest length between two supports to what the customer asks, else to the shop's own figure, which can
// only be a watch. Tubes are held at both ends and at each bare span. Where there is none the fins themselves may be held, so a
// tube that would need supports is a question. The change moves the supports as little as it takes.
//
// Source: supports not more than about 1.83 m apart, from memory; the limit is the customer's or the shop's.
func judgeSupports(p *Pair) Verdict {
	t, asked := &p.Order.Tube, p.Order.Asked.Supports
	limit := p.Shop.Placing.Supports
	if asked.Stated {
		limit = units.Length(asked.SI)
	}
	switch {
	case limit <= 0:
		return unknown("shop.why.no_spacing")
	case len(t.Spans) == 0 && !asked.Stated:
		return moot("shop.why.no_spans")
	case len(t.Spans) == 0 && t.Length > limit*(1+shop.Slack):
		return ask("shop.why.ask_supports", "apart", message.Of(units.Distance, limit))
	}
	v := atMost(units.Distance, longestBetween(t), limit)
	if v.State == figure.Good {
		return v
	}
	longest, most := message.Of(units.Distance, longestBetween(t)), message.Most(message.Of(units.Distance, limit))
	v.Why = message.New("shop.why.spacing_customer", "longest", longest, "limit", most)
	if !asked.Stated {
		v.State, v.Why = figure.Watch, message.New("shop.why.spacing_house", "longest", longest, "limit", most)
	}
	v.Change = nearerSupports(t, limit)
	return v
}

// longestBetween returns the longest length between two supports, the tube's ends among them.
func longestBetween(t *tube.Tube) units.Length {
	var longest, from units.Length
	for _, s := range t.Spans {
		longest = max(longest, s.Centre-from)
		from = s.Centre
	}
	return max(longest, t.Length-from)
}

// nearerSupports moves supports towards end A where they are too far from the one before, then towards end B; nil where there are
// too few.
func nearerSupports(t *tube.Tube, limit units.Length) (moves []Setting) {
	centres := make([]units.Length, len(t.Spans))
	var before units.Length
	for i, s := range t.Spans {
		if centres[i] = s.Centre; s.Centre > (before+limit)*(1+shop.Slack) {
			centres[i] = roundDown(before + limit)
		}
		before = centres[i]
	}
	behind := t.Length
	for i := len(centres) - 1; i >= 0; i-- {
		if centres[i] < (behind-limit)*(1-shop.Slack) {
			centres[i] = roundUp(behind - limit)
		}
		behind = centres[i]
	}
	moved := *t
	moved.Spans = make([]tube.Span, len(centres))
	for i, c := range centres {
		moved.Spans[i] = tube.Span{Centre: c, Width: t.Spans[i].Width}
		if c != t.Spans[i].Centre {
			moves = append(moves, Setting{"span_centre", i, units.Distance, float64(c), ""})
		}
	}
	if longestBetween(&moved) > limit*(1+shop.Slack) {
		return nil
	}
	return moves
}
