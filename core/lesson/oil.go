package lesson

import (
	"finwright/core/message"
	"finwright/core/units"
)

// oil is why fins rarely help a viscous stream.
var oil = Exercise{
	ID: "oil", Section: "heat",
	Args: []any{"count", message.Fins(10 / 0.0254)},
	Start: []Entry{
		{"own_fluid_density", "870 kg/m³"}, {"own_fluid_heat", "2000 J/kg·K"}, {"own_fluid_viscosity", "40 mPa·s"}, {"own_fluid_conductivity", "0.13 W/m·K"},
	},
	Free: []string{"inside_fluid", "fin_pitch"},
	Guess: Guess{Kind: units.Percent, Bands: []float64{0.02, 0.10, 0.20, 0.35}, Truth: func(start *Reading) (float64, []any) {
		own := start.With(ownOil)
		half := own.With(halfTheFins)
		loss := 1 - half.number("duty")/own.number("duty")
		return loss, []any{"loss", percent(loss), "inside", percent(own.number("share_inside_film")), "water", percent(1 - start.With(halfTheFins).number("duty")/start.number("duty"))}
	}},
	Tests: []Test{
		{
			ID:    "own",
			Holds: func(c *Case) bool { return c.Now.In.Process.Fluid == "own" },
		}, {
			ID: "half",
			Holds: func(c *Case) bool {
				return near(float64(c.Now.In.Tube.Fin.Count), float64(c.Start.In.Tube.Fin.Count)/2)
			},
			Found: func(c *Case) message.Message { return found(units.FinCount, float64(c.Now.In.Tube.Fin.Count)) },
		},
	},
	Asked: Asked{units.Percent, func(c *Case) (float64, bool) {
		with, ok := c.Start.With(ownOil).Figure("duty")
		now, known := c.Now.Figure("duty")
		return 1 - now/with, ok && known
	}},
	Solution: []Entry{ownOil, halfTheFins},
	Workings: []string{"duty", "share_inside_film", "inside_film", "u_bare"},
}

var (
	ownOil      = Entry{"inside_fluid", "own"}
	halfTheFins = Entry{"fin_pitch", "5 fpi"}
)
