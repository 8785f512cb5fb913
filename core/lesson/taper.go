package lesson

import (
	"finwright/core/message"
	"finwright/core/units"
)

// taper is what winding does to the strip's outer edge.
var taper = Exercise{
	ID: "taper", Section: "surface",
	Args:  []any{"tip", amount(units.Thickness, tipKept), "strip", amount(units.Thickness, 0.0004)},
	Start: heldFilm,
	Free:  []string{"fin_height"},
	Guess: Guess{Kind: units.Thickness, Bands: []float64{0.10e-3, 0.15e-3, 0.20e-3, 0.30e-3, 0.38e-3}, Truth: func(start *Reading) (float64, []any) {
		tip := start.number("tip_thickness")
		return tip, []any{"tip", amount(units.Thickness, tip), "strip", amount(units.Thickness, float64(start.In.Tube.Fin.Strip)), "cost", percent(start.number("taper_cost"))}
	}},
	Tests: []Test{{
		ID:    "tip",
		Holds: func(c *Case) bool { return about(c.Now.number("tip_thickness"), tipKept, 0.01) },
		Found: func(c *Case) message.Message { return found(units.Thickness, c.Now.number("tip_thickness")) },
	}},
	Asked:    Asked{units.Percent, figureOf("taper_cost")},
	Solution: []Entry{{"fin_height", "12.7 mm"}},
	Workings: []string{"tip_thickness", "taper_cost", "fin_efficiency"},
}

// tipKept is the thickness of the tip [m] that the exercise asks for.
const tipKept = 0.2e-3
