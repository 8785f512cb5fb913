package lesson

import (
	"finwright/core/message"
	"finwright/core/units"
)

// slip is a tube that was typed off an order with three slips.
var slip = Exercise{
	ID: "slip", Section: "heat",
	Args:  []any{"over", amount(units.Diameter, 0.05715)},
	Start: append(slipsOrder, Entry{"fin_height", "57.15 mm"}, Entry{"fin_pitch", "11 fins/m"}, Entry{"inside_pressure", "3 bar"}),
	Free:  []string{"fin_height", "fin_pitch", "inside_pressure"},
	Guess: Guess{Kind: units.Percent, Bands: []float64{0.02, 0.05, 0.12}, Truth: func(start *Reading) (float64, []any) {
		right := start.With(mended...)
		wrong := right.With(Entry{"inside_pressure", "3 bar"})
		less := 1 - wrong.number("duty")/right.number("duty")
		return less, []any{"right", amount(units.Temp, float64(right.In.Process.In)), "wrong", amount(units.Temp, float64(wrong.In.Process.In)), "duty", percent(less)}
	}},
	Tests: []Test{
		{
			ID:    "height",
			Holds: func(c *Case) bool { return near(float64(c.Now.In.Tube.FinOD()), 0.05715) },
			Found: func(c *Case) message.Message { return found(units.Diameter, float64(c.Now.In.Tube.FinOD())) },
		}, {
			ID:    "count",
			Holds: func(c *Case) bool { return near(float64(c.Now.In.Tube.Fin.Count), 11/0.0254) },
			Found: func(c *Case) message.Message { return found(units.FinCount, float64(c.Now.In.Tube.Fin.Count)) },
		}, {
			ID: "pressure",
			Holds: func(c *Case) bool {
				return near(float64(c.Now.In.Process.In), float64(c.Start.With(mended...).In.Process.In))
			},
			Found: func(c *Case) message.Message { return found(units.Temp, float64(c.Now.In.Process.In)) },
		},
	},
	Asked:    Asked{units.Duty, figureOf("duty")},
	Solution: mended,
	Workings: []string{"fin_od", "duty", "air_out"},
}

var (
	slipsOrder = []Entry{{"fin_type", "embedded"}, {"tube_wall", "12 BWG"}, {"inside_fluid", "steam"}, {"steam_by", "pressure"}, {"rows", "3"}, {"passes", "1"}, {"air_in", "10 °C"}}
	mended     = []Entry{{"fin_height", "5/8 in"}, {"fin_pitch", "11 fpi"}, {"inside_pressure", "3 barg"}}
)
