package lesson

import (
	"math"

	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/tube"
	"finwright/core/units"
)

// windingStory is how the fin gets onto the tube, at its real kinematics but slow.
var windingStory = Story{ID: "winding", Section: "making", Tells: tellWinding, Wound: woundOf}

// turnShown is how long a turn of the spindle is shown [s].
const turnShown = 6.0

// Winding is what turns and moves, in a box of 300 by 170: the tube from its end with strip coming to it, and from its side. What is
// drawn is to scale but for the coil and the rolls; what turns does so at the real ratios.
type Winding struct {
	Bore   float64 `json:"bore"` // radii
	Tube   float64 `json:"tube"`
	Tip    float64 `json:"tip"`
	Pitch  float64 `json:"pitch"`
	Root   float64 `json:"root"` // thicknesses of the fin
	Edge   float64 `json:"edge"`
	Foot   float64 `json:"foot"`   // how far it lies along the tube; zero: there is none
	Groove float64 `json:"groove"` // how deep the fin stands in the tube
	Strip  float64 `json:"strip"`  // that runs on with a turn
	Coil   float64 `json:"coil"`   // turns of a full coil to one of the tube
	Turn   float64 `json:"turn"`   // how long one is shown [s]
	Said   string  `json:"said"`   // the picture in words

	Grows *TubeGrows `json:"grows"`
}

// tipInBox is the radius of the fin in the box.
const tipInBox = 58.0

// wound reports whether a line winds the tube, and so whether there is something to show.
func wound(r *Reading) bool {
	return r.In.Tube.Fin.Type.Wound() && r.Made.Plan.Speeds != nil && r.Made.Plan.Winding != nil && r.Made.Plan.Programme != nil
}

func tellWinding(r *Reading) []Sentence {
	if !wound(r) {
		return []Sentence{{Key: "lesson.story.winding.not_wound"}}
	}
	t, p := &r.In.Tube, &r.Made.Plan
	spindle := float64(p.Speeds.Spindle)
	rolls := Sentence{
		Key: "lesson.story.winding.rolls", Pulls: []string{"strip_thickness", "fin_height"},
		Args: []any{"tip", of(r, "tip_thickness"), "over", of(r, "fin_od"), "od", message.Of(units.Diameter, t.OD)},
	}
	if !t.Fin.Type.Tapers() {
		rolls.Key, rolls.Args = "lesson.story.winding.bent", nil
	}
	feed := Sentence{Key: "lesson.story.winding.feed", Pulls: []string{"fin_pitch"}, Args: []any{"pitch", of(r, "pitch"), "turns", int(math.Round(p.Programme.Turns()))}}
	growth := Sentence{Key: "lesson.story.winding.no_growth"}
	if p.Programme.Growth.Share > 0 {
		growth = Sentence{Key: "lesson.story.winding.growth", Args: []any{
			"growth", percent(p.Programme.Growth.Share), "grown", message.Of(units.Gap, p.Programme.Grown), "cut", message.Of(units.Distance, p.Programme.CutLength),
		}}
	}
	return []Sentence{
		{Key: "lesson.story.winding.coil", Args: []any{"spindle", amount(units.Spin, spindle), "factor", int(math.Round(spindle * turnShown)), "run", amount(units.Distance, math.Pi*float64(t.TurnOD()))}},
		rolls, held(t), feed, growth,
	}
}

// held tells how the fin stands on the tube.
func held(t *tube.Tube) Sentence {
	switch t.Fin.Type.Fixing().Section {
	case tube.FootSection:
		return Sentence{Key: "lesson.story.winding.foot", Args: []any{"reach", message.Of(units.Gap, t.FootReach())}}
	case tube.GrooveSection:
		return Sentence{Key: "lesson.story.winding.groove", Args: []any{"depth", message.Of(units.Height, t.Fin.Groove)}}
	case tube.WeldSection:
		return Sentence{Key: "lesson.story.winding.weld"}
	}
	return Sentence{Key: "lesson.story.winding.edge"}
}

func woundOf(w report.Writer, r *Reading) *Winding {
	if !wound(r) {
		return nil
	}
	t := &r.In.Tube
	scale := tipInBox / float64(t.FinOD()/2)
	v := Winding{
		Bore: scale * float64(t.InsideOD()/2), Tube: scale * float64(t.OD/2), Tip: tipInBox, Pitch: scale * float64(t.Pitch()),
		Root: scale * float64(t.Fin.Strip), Edge: scale * float64(t.TipThickness()), Strip: scale * math.Pi * float64(t.TurnOD()), Turn: turnShown,
		Said: w.Texts.Text("lesson.story.winding.picture"), Grows: growsOf(w, r.Made.Plan.Programme),
	}
	if coil := r.Made.Plan.Winding.Coil.OD; coil > 0 {
		v.Coil = float64(t.TurnOD() / coil)
	}
	switch t.Fin.Type.Fixing().Section {
	case tube.FootSection:
		v.Foot = scale * float64(t.FootReach())
	case tube.GrooveSection:
		v.Groove = scale * float64(t.Fin.Groove)
	}
	return &v
}
