package lesson

import (
	"strconv"

	"finwright/core/message"
	"finwright/core/units"
)

// drop is the count of fins that meets a pressure drop.
var drop = Exercise{
	ID: "drop", Section: "heat",
	Args:  []any{"allowed", amount(units.Drop, 125), "count", message.Fins(11 / 0.0254)},
	Start: []Entry{{"fin_pitch", "11 fpi"}, {"face_velocity", "3.5 m/s"}, {"drop_allowed", "125 Pa"}},
	Free:  []string{"fin_pitch"},
	Guess: Guess{Kind: units.Percent, Bands: []float64{0.04, 0.12, 0.20}, Truth: func(start *Reading) (float64, []any) {
		fewer := start.With(fins(fitting(start)))
		loss := 1 - fewer.number("duty")/start.number("duty")
		return loss, []any{"loss", percent(loss), "drop", percent(1 - fewer.number("air_drop")/start.number("air_drop"))}
	}},
	Tests: []Test{
		{
			ID: "kept",
			Holds: func(c *Case) bool {
				return c.Now.number("air_drop") > 0 && c.Now.number("air_drop") <= c.Now.In.Bank.DropAllowed
			},
			Found: func(c *Case) message.Message { return found(units.Drop, c.Now.number("air_drop")) },
		}, {
			ID:    "most",
			Holds: func(c *Case) bool { return near(float64(c.Now.In.Tube.Fin.Count), perMetre(fitting(c.Start))) },
			Found: func(c *Case) message.Message { return found(units.FinCount, float64(c.Now.In.Tube.Fin.Count)) },
		},
	},
	Asked:    Asked{units.Duty, figureOf("duty")},
	Solution: []Entry{{"fin_pitch", "8 fpi"}},
	Workings: []string{"air_drop", "duty", "free_ratio"},
}

// fitting is the most fins to the inch, in whole ones, whose drop is allowed.
func fitting(r *Reading) int {
	for n := 12; n > 1; n-- {
		if at := r.With(fins(n)); at.number("air_drop") <= at.In.Bank.DropAllowed {
			return n
		}
	}
	return 0
}

func fins(n int) Entry            { return Entry{"fin_pitch", strconv.Itoa(n) + " fpi"} }
func perMetre(n int) (n1 float64) { return float64(n) / 0.0254 }
