package lesson

import (
	"finwright/core/message"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// growth is a bare span that misses its support, since a tube grows under embedded fins.
var growth = Exercise{
	ID: "growth", Section: "making",
	Args:      []any{"length", amount(units.Distance, 6), "centre", amount(units.Distance, 4.2), "width", amount(units.Distance, 0.08)},
	Start:     []Entry{{"fin_type", "embedded"}, {"tube_wall", "12 BWG"}, {"least_wall", "0.083 in"}, {"tube_length", "6 m"}},
	FreeSpans: true,
	Guess: Guess{Kind: units.Gap, Bands: []float64{0.0005, 0.002, 0.008, 0.02}, Truth: func(start *Reading) (float64, []any) {
		with := start.With(supportAt...)
		off, _ := missed(with)
		var grows making.Growth // none where no line of the shop winds it
		if p := with.Made.Plan.Programme; p != nil {
			grows = p.Growth
		}
		return off, []any{"off", amount(units.Gap, off), "growth", percent(grows.Share), "scatter", message.Of(units.Gap, making.EdgeOff(grows.Scatter, 4.2))}
	}},
	Tests: []Test{{
		ID: "place",
		Holds: func(c *Case) bool {
			spans := c.Now.In.Tube.Spans
			return len(spans) == 1 && near(float64(spans[0].Centre), 4.2) && near(float64(spans[0].Width), 0.08)
		},
	}},
	Asked:    Asked{units.Gap, func(c *Case) (float64, bool) { return missed(c.Now) }},
	Solution: supportAt,
	Workings: []string{"growth", "grown", "cut_length"},
}

// supportAt is the bare span that the exercise asks for.
var supportAt = []Entry{{SpanEntry("centre", 0), "4.2 m"}, {SpanEntry("width", 0), "80 mm"}}

// missed returns by how much the middle of the last bare span would miss its place [m], were the head run by the drawing and the
// tube grew all the same.
func missed(r *Reading) (off float64, ok bool) {
	p := r.Made.Plan.Programme
	if r.Err != nil || p == nil {
		return 0, false
	}
	for _, z := range p.Zones {
		if z.Kind == making.BareSpan {
			middle := func(i making.Interval) float64 { return float64(i.From+i.To) / 2 }
			off, ok = middle(z.Finished)-(middle(z.Cut)-float64(p.TrimA)), true
		}
	}
	return off, ok
}
