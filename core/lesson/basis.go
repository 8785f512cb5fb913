package lesson

import (
	"finwright/core/message"
	"finwright/core/units"
)

// basis is a sheet whose coefficient stands on another area than its reader takes.
var basis = Exercise{
	ID: "basis", Section: "heat",
	Args: []any{"count", message.Fins(8 / 0.0254)},
	Free: []string{"fin_pitch"},
	Guess: Guess{Kind: units.Factor, Bands: []float64{2, 5, 15, 30}, Truth: func(start *Reading) (float64, []any) {
		return start.number("area_ratio"), []any{
			"factor", ratio(start.number("area_ratio")), "bare", amount(units.Film, start.number("u_bare")), "total", amount(units.Film, start.number("u_total")),
		}
	}},
	Tests: []Test{{
		ID:    "eight",
		Holds: func(c *Case) bool { return near(float64(c.Now.In.Tube.Fin.Count), 8/0.0254) },
		Found: func(c *Case) message.Message { return found(units.FinCount, float64(c.Now.In.Tube.Fin.Count)) },
	}},
	Asked:    Asked{units.Factor, figureOf("area_ratio")},
	Solution: []Entry{{"fin_pitch", "8 fpi"}},
	Workings: []string{"area_ratio", "u_total", "u_bare"},
}
