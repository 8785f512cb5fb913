package lesson

import (
	"finwright/core/message"
	"finwright/core/units"
)

// steam is a deep slow heater whose air already leaves hot: more fin adds little, more air much.
var steam = Exercise{
	ID: "steam", Section: "heat",
	Args: []any{"more", message.Fins(11 / 0.0254), "count", message.Fins(8 / 0.0254)},
	Start: []Entry{
		{"fin_type", "embedded"},
		{"tube_wall", "12 BWG"},
		{"fin_pitch", "8 fpi"},
		{"inside_fluid", "steam"},
		{"inside_in", "150 °C"},
		{"rows", "8"},
		{"passes", "1"},
		{"face_velocity", "1 m/s"},
		{"air_in", "20 °C"},
	},
	Free: []string{"fin_pitch", "fin_height", "face_velocity"},
	Guess: Guess{Kind: units.Percent, Bands: []float64{0.05, 0.15, 0.25}, Truth: func(start *Reading) (float64, []any) {
		more := func(e Entry) float64 { return start.With(e).number("duty")/start.number("duty") - 1 }
		fins := more(Entry{"fin_pitch", "11 fpi"})
		return fins, []any{"fins", percent(fins), "air", percent(more(Entry{"face_velocity", "1.375 m/s"})), "out", amount(units.Temp, start.number("air_out"))}
	}},
	Tests: []Test{{
		ID:    "quarter",
		Holds: func(c *Case) bool { return about(c.Now.number("duty"), 1.25*c.Start.number("duty"), 0.02) },
		Found: func(c *Case) message.Message { return found(units.Duty, c.Now.number("duty")) },
	}},
	Asked:    Asked{units.Temp, figureOf("air_out")},
	Solution: []Entry{{"face_velocity", "1.26 m/s"}},
	Workings: []string{"duty", "effectiveness", "air_out"},
}
