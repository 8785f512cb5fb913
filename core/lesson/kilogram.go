package lesson

import (
	"finwright/core/message"
	"finwright/core/units"
)

// kilogram is where taller stops paying per mass of fin metal, with a film that is held.
var kilogram = Exercise{
	ID: "kilogram", Section: "heat",
	Args:  []any{"film", amount(units.Film, 50)},
	Start: append(heldFilm, Entry{"rows", "1"}, Entry{"passes", "1"}, Entry{"face_velocity", "4 m/s"}),
	Free:  []string{"fin_height"},
	Guess: Guess{Kind: units.Height, Bands: []float64{0.004, 0.006, 0.011, 0.014, 0.018}, Truth: func(start *Reading) (float64, []any) {
		best := tallest(start, "duty_per_weight")
		at := start.With(Entry{"fin_height", metres(best)})
		return best, []any{
			"best", height(best), "was", height(float64(start.In.Tube.Fin.Height)),
			"per_best", amount(units.DutyPerWeight, at.number("duty_per_weight")), "per_was", amount(units.DutyPerWeight, start.number("duty_per_weight")),
		}
	}},
	Tests: []Test{heldTest, {
		ID:    "best",
		Holds: func(c *Case) bool { return atBest(c.Now, "duty_per_weight") },
		Found: func(c *Case) message.Message { return found(units.DutyPerWeight, c.Now.number("duty_per_weight")) },
	}},
	Asked: Asked{units.Percent, func(c *Case) (float64, bool) {
		was, ok := c.Start.Figure("duty_per_weight")
		now, known := c.Now.Figure("duty_per_weight")
		return now/was - 1, ok && known
	}},
	Solution: []Entry{{"fin_height", "8.3 mm"}},
	Workings: []string{"duty_per_weight", "fin_efficiency", "fin_mass"},
}
