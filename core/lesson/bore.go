package lesson

import (
	"finwright/core/message"
	"finwright/core/units"
)

// bore is which resistance rules with water in the tubes.
var bore = Exercise{
	ID: "bore", Section: "heat",
	Free: []string{"fouling_inside"},
	Guess: Guess{Words: layers, Truth: func(start *Reading) (float64, []any) {
		place, part := ruling(start)
		return place, []any{"layer", message.Key("figure." + share + layers[int(place)]), "share", percent(part), "second", percent(start.number(share + "inside_film"))}
	}},
	Tests: []Test{{
		ID:    "clean",
		Holds: func(c *Case) bool { return c.Now.In.Process.Fouling == 0 },
		Found: func(c *Case) message.Message { return found(units.Resist, c.Now.In.Process.Fouling) },
	}},
	Asked:    Asked{units.Percent, figureOf("share_outside_film")},
	Solution: []Entry{{"fouling_inside", "0 m²K/W"}},
	Workings: []string{"share_outside_film", "u_bare", "inside_film"},
}

// layers are the resistances that a guess chooses among.
var layers = []string{"inside_film", "inside_fouling", "wall", "bond", "outside_film"}

// share begins the figures of their shares.
const share = "share_"

// ruling returns the place of the largest resistance among them, and its share [-].
func ruling(r *Reading) (place, part float64) {
	for i, l := range layers {
		if s := r.number(share + l); s > part {
			place, part = float64(i), s
		}
	}
	return place, part
}
