package design

import (
	"fmt"

	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

// Together is a part of a design whose entries are each possible but may not go together.
type Together int

// Parts that are checked together, each by what it looks at alone.
const (
	OfTube    Together = iota // tube and fin, whatever the length
	OfLengths                 // ends, spans and length
	OfPasses                  // passes and rows
	OfPitch                   // pitches and fins
	OfStreams                 // gas and stream
)

// Check finds, in one part of a design, entries that are each possible but not together.
func Check(in *field.Input, part Together) FieldErrors {
	var errs FieldErrors
	switch part {
	case OfTube:
		checkTube(&in.Tube, &errs)
	case OfLengths:
		checkLengths(&in.Tube, &errs)
	case OfPasses:
		checkPasses(in, &errs)
	case OfPitch:
		checkPitch(in, &errs)
	case OfStreams:
		checkGas(in, &errs)
		checkPoints(in, &errs)
	}
	return errs
}

// checkTogether finds entries that are each possible but not together.
func checkTogether(in *field.Input, errs *FieldErrors) {
	for part := OfTube; part <= OfStreams; part++ {
		*errs = append(*errs, Check(in, part)...)
	}
}

func checkTube(t *tube.Tube, errs *FieldErrors) {
	if 2*t.MeanWall() >= t.OD {
		errs.add("tube_wall", "error.wall_fills_tube", "wall", of(units.Wall, t.MeanWall()), "od", of(units.Diameter, t.OD))
	}
	if t.Gap() <= 0 {
		errs.add("fin_pitch", "error.no_gap", "pitch", of(units.Gap, t.Pitch()), "strip", of(units.Thickness, t.Fin.Strip))
	}
	if t.Fin.Height <= t.FootThickness() { // whatever diameter the fin is counted from
		errs.add("fin_height", "error.fin_in_root", "height", of(units.Height, t.Fin.Height), "foot", of(units.Height, t.FootThickness()))
	}
	switch {
	case t.Fin.Profile == tube.Rolled && !t.Fin.Type.Wound():
		errs.add("fin_profile", "error.not_rolled")
	case t.Profile() == tube.Linear && t.Fin.TipGiven > t.Fin.Strip:
		errs.add("tip_thickness", "error.tip_thicker", "tip", of(units.Thickness, t.Fin.TipGiven), "strip", of(units.Thickness, t.Fin.Strip))
	}
	if t.Fin.Type.Grooved() && t.Fin.Groove >= t.Wall {
		errs.add("groove_depth", "error.groove_through", "groove", of(units.Height, t.Fin.Groove), "wall", of(units.Wall, t.Wall))
	}
	checkWidth(t, errs)
}

func degrees(celsius float64) message.Amount { return message.Amount{Kind: units.Temp, SI: celsius} }

func checkPasses(in *field.Input, errs *FieldErrors) {
	if in.Bank.Passes > in.Bank.Rows {
		errs.add("passes", "error.more_passes", "passes", in.Bank.Passes, "rows", in.Bank.Rows)
	}
}

// checkPitch refuses tubes that stand too close, where the film depends on it.
func checkPitch(in *field.Input, errs *FieldErrors) {
	if in.Air.FilmGiven {
		return
	}
	for _, f := range pitchFindings(in) {
		*errs = append(*errs, FieldError{closestPitch(in), f.Why})
	}
}

func of(k units.Kind, l units.Length) message.Amount {
	return message.Amount{Kind: k, SI: float64(l)}
}

// checkWidth holds the width rules of knurled and lapped feet to fin counts for which they have a meaning.
func checkWidth(t *tube.Tube, errs *FieldErrors) {
	least := 0.0 // half a fin more than those by which the foot is cut for fewer
	if fewer := t.FewerFins(); fewer > 0 {
		least = (float64(fewer) + 0.5) / 0.0254
	}
	if units.Above(least, t.Fin.Count.PerMetre()) {
		key := "error.too_open_for_foot"
		if !t.Fin.Type.Lapped() || t.Fin.Lap > 0 { // a lap does not help
			key = "error.too_open_for_knurl"
		}
		errs.add("fin_pitch", key, "least", message.Least{Kind: units.FinCount, SI: least})
	} else if t.Fin.Type.Wound() && t.StripWidth() <= 0 {
		errs.add("strip_thickness", "error.no_width")
	}
}

func checkLengths(t *tube.Tube, errs *FieldErrors) {
	if t.PlainA+t.PlainB >= t.Length {
		errs.add("tube_length", "error.ends_fill_tube", "ends", of(units.Distance, t.PlainA+t.PlainB), "length", of(units.Distance, t.Length))
		return
	}
	reach := t.PlainA // up to here the tube is spoken for
	for i, s := range t.Spans {
		from, to := s.Centre-s.Width/2, s.Centre+s.Width/2
		at := fmt.Sprintf("%s_%d", field.SpanCentre.ID, i+1)
		switch {
		case from <= reach && i > 0:
			errs.add(at, "error.spans_meet", "number", i, "from", of(units.Distance, reach))
		case from <= reach:
			errs.add(at, "error.span_in_end", "from", of(units.Distance, reach))
		case to >= t.Length-t.PlainB:
			errs.add(at, "error.span_past_end", "to", of(units.Distance, t.Length-t.PlainB))
		}
		reach = to
	}
}
