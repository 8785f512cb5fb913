package lesson

import (
	"finwright/core/message"
	"finwright/core/units"
)

// double is what a fin of twice the height does.
var double = Exercise{
	ID: "double", Section: "surface",
	Args:  []any{"from", height(0.0079375), "to", height(0.015875), "film", amount(units.Film, 50)},
	Start: append(heldFilm, Entry{"fin_height", "5/16 in"}),
	Free:  []string{"fin_height"},
	Guess: Guess{Kind: units.Factor, Bands: []float64{1.25, 1.75, 2.25, 2.75}, Truth: func(start *Reading) (float64, []any) {
		twice := start.With(Entry{"fin_height", "5/8 in"})
		times := func(id string) message.Amount { return ratio(twice.number(id) / start.number(id)) }
		used := twice.number("used_area") / start.number("used_area")
		return used, []any{"used", ratio(used), "area", times("total_area"), "was", ratio(start.number("fin_efficiency")), "now", ratio(twice.number("fin_efficiency")), "duty", times("duty")}
	}},
	Tests: []Test{{
		ID: "twice",
		Holds: func(c *Case) bool {
			return near(float64(c.Now.In.Tube.Fin.Height), 2*float64(c.Start.In.Tube.Fin.Height))
		},
		Found: func(c *Case) message.Message { return found(units.Height, float64(c.Now.In.Tube.Fin.Height)) },
	}},
	Asked:    Asked{units.SurfacePerMetre, figureOf("used_area")},
	Solution: []Entry{{"fin_height", "5/8 in"}},
	Workings: []string{"used_area", "surface_efficiency", "fin_efficiency"},
}
