package lesson

import (
	"finwright/core/message"
	"finwright/core/units"
)

// face is where taller stops paying for a face of the bank, with a film that is computed.
var face = Exercise{
	ID: "face", Section: "heat",
	Start: heldFilm,
	Free:  []string{"film_source", "fin_height"},
	Guess: Guess{Kind: units.Height, Bands: []float64{0.005, 0.010, 0.014, 0.020}, Truth: func(start *Reading) (float64, []any) {
		computed := start.With(Entry{"film_source", "computed"})
		best := tallest(computed, "duty_per_face")
		return best, []any{"computed", height(best), "held", height(tallest(start, "duty_per_face"))}
	}},
	Tests: []Test{
		{
			ID:    "computed",
			Holds: func(c *Case) bool { return !c.Now.In.Air.FilmGiven },
		}, {
			ID:    "best",
			Holds: func(c *Case) bool { return atBest(c.Now, "duty_per_face") },
			Found: func(c *Case) message.Message { return found(units.DutyPerArea, c.Now.number("duty_per_face")) },
		},
	},
	Asked:    Asked{units.DutyPerArea, figureOf("duty_per_face")},
	Solution: []Entry{{"film_source", "computed"}, {"fin_height", "7 mm"}},
	Workings: []string{"duty_per_face", "film", "face_area"},
}
