package lesson

import (
	"strconv"
	"strings"

	"finwright/core/fin"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/report"
	"finwright/core/units"
)

// efficiencyStory is how well a fin is used, and why not all of it.
var efficiencyStory = Story{
	ID: "efficiency", Section: "heat",
	Tells: func(r *Reading) []Sentence {
		wind := Sentence{Key: "lesson.story.efficiency.film", Pulls: []string{"strip_thickness", "face_velocity"}, Args: []any{"film", of(r, "film"), "ml", of(r, "fin_parameter")}}
		if r.In.Air.FilmGiven {
			wind = Sentence{Key: "lesson.story.efficiency.held", Pulls: []string{"strip_thickness", "film_coefficient"}, Args: []any{"ml", of(r, "fin_parameter")}}
		}
		gas := r.Heat.Thermal.Duty.HottestRoot.Air
		return []Sentence{
			{Key: "lesson.story.efficiency.stands", Pulls: []string{"fin_height"}, Args: []any{"root", of(r, "hottest_root"), "tip", of(r, "hottest_tip"), "gas", amount(units.Temp, gas)}},
			{Key: "lesson.story.efficiency.share", Args: []any{"eta", percent(r.number("fin_efficiency"))}},
			wind,
			{Key: "lesson.story.efficiency.used", Args: []any{"used", of(r, "used_area"), "area", of(r, "total_area")}},
		}
	},
	Curve: func(w report.Writer, r *Reading) *FinCurve {
		path, tip := alongFin(r)
		c := FinCurve{
			Path: path, Tip: tip, Root: celsius(w, r.number("hottest_root")), Edge: celsius(w, r.number("hottest_tip")), Gas: celsius(w, r.Heat.Thermal.Duty.HottestRoot.Air),
		}
		c.Said = w.Texts.Render(message.New("lesson.story.curve", "root", c.Root, "tip", c.Edge, "gas", c.Gas), w.System)
		return &c
	},
}

// Box of the curve, and how many stretches it has.
const (
	boxWidth  = 100.0
	boxHeight = 60.0
	stretches = 24
)

// alongFin is how the temperature falls from root to tip, as a path in the box, and where it ends. The part of a fin from a radius
// outwards is a fin with its root there: what its tip has of its root, against what the whole fin's tip has, is what that radius has.
func alongFin(r *Reading) (path string, tip float64) {
	whole := rating.Disc(&r.In.Tube, float64(r.Result.Surface.Conductivity))
	h := float64(r.Result.Surface.Film)
	last := fin.Solve(whole, h).TipRatio
	var out strings.Builder
	for i := range stretches + 1 {
		x := float64(i) / stretches
		share := last
		if i < stretches {
			part := whole
			part.RootRadius += x * whole.Height()
			part.RootThickness = whole.ThicknessAt(part.RootRadius)
			share = last / fin.Solve(part, h).TipRatio
		}
		mark := " L"
		if i == 0 {
			mark = "M"
		}
		tip = boxHeight * (1 - share)
		out.WriteString(mark + digits(x*boxWidth) + " " + digits(tip))
	}
	return out.String(), tip
}

func digits(x float64) string { return strconv.FormatFloat(x, 'f', 2, 64) }
