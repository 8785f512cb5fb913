package verdict

import (
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/units"
)

var grooveEndRule = &Rule{ID: "groove_end", Field: "plain_end_b", Changes: []string{"plain_end_b"}, Judge: judgeGrooveEnd}

// judgeGrooveEnd keeps groove and knurl out of what is rolled or expanded into a tubesheet: they stay when the turns are stripped,
// and are a way out for the stream. A tool that lifts goes on over its run-out behind the last fin, towards end B; one that
// does not lift goes through both ends. An end that is only cleaned bears a groove. How much is rolled is the customer's to say,
// else the shop's.
//
// Source: common practice, no source.
func judgeGrooveEnd(p *Pair) Verdict {
	t := &p.Order.Tube
	if !t.Fin.Type.CutInto() {
		return moot("shop.why.no_groove")
	}
	rolled := p.Order.Asked.Rolled
	switch {
	case rolled.Stated && rolled.SI == 0 && !p.Line.Groover.Lifts:
		return Verdict{State: figure.Good, Why: message.New("shop.why.groove_cleaned")}
	case rolled.Stated && rolled.SI == 0:
		return moot("shop.why.no_rolling")
	case !p.Line.Groover.Lifts:
		return Verdict{State: figure.No, Why: message.New("shop.why.groove_through", "line", p.Line.Name)}
	}
	out, need := p.Line.Groover.RunOut, p.Shop.Placing.RolledEnd
	if rolled.Stated {
		need = units.Length(rolled.SI)
	}
	if need <= 0 {
		return unknown("shop.why.no_rolled")
	}
	v := atLeast(units.Distance, max(0, t.PlainB-out), need)
	if v.State == figure.No {
		v.Why = message.New("shop.why.groove_end", "end", message.Of(units.Distance, t.PlainB), "out", message.Of(units.Distance, out), "need", message.Least(message.Of(units.Distance, need)))
		v.Change = []Setting{{Field: "plain_end_b", Kind: units.Distance, SI: float64(roundUp(need + out))}}
	}
	return v
}

var grooveSpanRule = &Rule{ID: "groove_span", Field: "tube_length", Changes: []string{"span_width"}, Judge: judgeGrooveSpan}

// judgeGrooveSpan asks that a bare span is as wide as the house needs beside the run-out of the tool; a groove under a support
// thins the wall where it is held.
//
// Source: common practice, no source.
func judgeGrooveSpan(p *Pair) Verdict {
	t := &p.Order.Tube
	switch {
	case !t.Fin.Type.CutInto():
		return moot("shop.why.no_groove")
	case len(t.Spans) == 0:
		return moot("shop.why.no_spans")
	case !p.Line.Groover.Lifts:
		return Verdict{State: figure.Watch, Why: message.New("shop.why.groove_under", "line", p.Line.Name)}
	case p.Line.Groover.RunOut <= 0:
		return unknown("shop.why.no_run_out")
	}
	out, need := p.Line.Groover.RunOut, p.Shop.Placing.LeastBare
	v := Verdict{State: figure.Good}
	for i, s := range t.Spans {
		w := atLeast(units.Distance, max(0, s.Width-out), need)
		if v.Measure == nil || w.Measure.Margin < v.Measure.Margin {
			v.Measure = w.Measure
			if w.State == figure.No {
				v.Why = message.New("shop.why.groove_span", "number", i+1, "width", message.Of(units.Distance, s.Width), "out", message.Of(units.Distance, out), "need", message.Least(message.Of(units.Distance, need)))
			}
		}
		if w.State == figure.No {
			v.State = figure.Watch
			v.Change = append(v.Change, Setting{"span_width", i, units.Distance, float64(roundUp(need + out)), ""})
		}
	}
	return v
}
