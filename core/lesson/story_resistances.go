package lesson

import (
	"finwright/core/message"
	"finwright/core/report"
)

// resistanceStory is which resistance rules, and what it is worth to change another.
var resistanceStory = Story{
	ID: "resistances", Section: "heat",
	Tells: func(r *Reading) []Sentence {
		place, part := ruling(r)
		inside := Sentence{Key: "lesson.story.resistances.inside", Pulls: []string{"inside_flow"}, Args: []any{"inside", of(r, share+"inside_film")}}
		if !asks(r, "inside_flow") {
			inside = Sentence{Key: "lesson.story.resistances.steam", Args: []any{"inside", of(r, share+"inside_film")}}
		}
		return []Sentence{
			{Key: "lesson.story.resistances.rules", Args: []any{"layer", message.Key("figure." + share + layers[int(place)]), "share", percent(part), "u", of(r, "u_bare"), "duty", of(r, "duty")}},
			{Key: "lesson.story.resistances.fins", Pulls: []string{"fin_pitch"}, Args: []any{"outside", of(r, share+"outside_film")}},
			{Key: "lesson.story.resistances.air", Pulls: []string{"face_velocity"}, Args: []any{"film", of(r, "film")}},
			inside,
		}
	},
	Bars: func(w report.Writer, r *Reading) []ShareBar {
		out := []ShareBar{}
		for _, l := range append(layers[:len(layers)-1:len(layers)-1], "outside_fouling", layers[len(layers)-1]) {
			f, found := r.Result.Find(share + l)
			if absent(f, found) {
				continue
			}
			out = append(out, ShareBar{w.Texts.Text("figure." + f.ID), f.SI, w.Texts.Numbers.Figure(f.Kind, f.SI, w.System).String()})
		}
		return out
	},
}
