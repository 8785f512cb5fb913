package lesson

import (
	"finwright/core/message"
	"finwright/core/numeric"
	"finwright/core/units"
)

// metal is how high a fin of another metal may be.
var metal = Exercise{
	ID: "metal", Section: "surface",
	Args:  []any{"film", amount(units.Film, 50)},
	Start: append(heldFilm, Entry{"fin_type", "embedded"}, Entry{"tube_wall", "12 BWG"}, Entry{"fin_height", "18 mm"}),
	Free:  []string{"fin_metal", "fin_height"},
	Guess: Guess{Kind: units.Percent, Bands: []float64{0.3, 0.5, 0.7, 0.9}, Truth: func(start *Reading) (float64, []any) {
		steel, aluminium := allowed(start, steelStrip), allowed(start, start.Document.Text("fin_metal"))
		return steel / aluminium, []any{
			"share", percent(steel / aluminium), "steel", height(steel), "aluminium", height(aluminium), "copper", height(allowed(start, "c11000")),
		}
	}},
	Tests: []Test{
		{
			ID:    "steel",
			Holds: func(c *Case) bool { return c.Now.In.FinMetal.ID == steelStrip },
		}, {
			ID:    "efficiency",
			Holds: func(c *Case) bool { return about(c.Now.number("fin_efficiency"), wellUsed, 0.005) },
			Found: func(c *Case) message.Message { return found(units.Factor, c.Now.number("fin_efficiency")) },
		},
	},
	Solution: []Entry{{"fin_metal", steelStrip}, {"fin_height", "10.65 mm"}},
	Workings: []string{"fin_efficiency", "fin_parameter", "conductivity"},
}

const (
	steelStrip = "cs1010"
	wellUsed   = 0.80 // efficiency [-] that this exercise holds
)

// allowed returns the height [m] at which a fin of a metal is as well used as the exercise asks for.
func allowed(r *Reading, metal string) float64 {
	h, err := numeric.Root(func(h float64) float64 {
		at := r.With(Entry{"fin_metal", metal}, Entry{"fin_height", metres(h)})
		return at.number("fin_efficiency") - wellUsed
	}, 0.004, 0.040)
	if err != nil {
		return 0
	}
	return h
}
