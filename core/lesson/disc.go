package lesson

import (
	"math"

	"finwright/core/message"
	"finwright/core/units"
)

// disc is that strip is weighed as strip.
var disc = Exercise{
	ID: "disc", Section: "surface",
	Args:  []any{"height", height(0.0127)},
	Start: []Entry{{"fin_type", "embedded"}, {"tube_wall", "12 BWG"}},
	Free:  []string{"fin_height"},
	Guess: Guess{Kind: units.Percent, Bands: []float64{0.05, 0.25, 0.50, 0.75}, Truth: func(start *Reading) (float64, []any) {
		strip, discs := start.number("fin_mass"), discMass(start)
		return discs/strip - 1, []any{"strip", amount(units.WeightPerMetre, strip), "discs", amount(units.WeightPerMetre, discs), "over", percent(discs/strip - 1)}
	}},
	Tests: []Test{{
		ID:    "half",
		Holds: func(c *Case) bool { return near(float64(c.Now.In.Tube.Fin.Height), 0.0127) },
		Found: func(c *Case) message.Message { return found(units.Height, float64(c.Now.In.Tube.Fin.Height)) },
	}},
	Asked:    Asked{units.WeightPerMetre, figureOf("fin_mass")},
	Solution: []Entry{{"fin_height", "1/2 in"}},
	Workings: []string{"fin_mass", "strip_per_metre", "strip_width"},
}

// discMass returns what the fins would weigh [kg/m] if each were a disc as thick as the strip: what a buyer takes them for.
//
//	n pi/4 (Df^2 - d^2) t rho
func discMass(r *Reading) float64 {
	t := &r.In.Tube
	d, df := float64(t.OD), float64(t.FinOD())
	return t.Fin.Count.PerMetre() * math.Pi / 4 * (df*df - d*d) * float64(t.Fin.Strip) * float64(r.In.FinMetal.Density.SI)
}
