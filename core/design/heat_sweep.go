package design

import (
	"math"

	"finwright/core/airside"
	"finwright/core/units"
)

// Quantities of the bank at work.
const (
	Film      Quantity = "film"
	AirDrop   Quantity = "air_drop"
	UBare     Quantity = "u_bare"
	Duty      Quantity = "duty"
	PerWeight Quantity = "duty_per_weight"
	PerFace   Quantity = "duty_per_face"
)

// Spread reports whether several correlations answer for the quantity.
func (q Quantity) Spread() bool { return q == Film || q == AirDrop }

// Answer is a quantity with the lowest and highest of the correlations in range; NaN where fewer than two are.
type Answer struct {
	Value, Low, High float64
	InRange          bool // whether the correlation it rests on is
}

// Answers returns the quantities of a rated bank in SI.
func Answers(in *Input, t *Thermal) map[Quantity]Answer {
	perWeight, perFace := t.yield(&in.Tube)
	inRange := in.Air.FilmGiven || t.Films[t.Film].InRange
	only := func(x float64) Answer { return Answer{x, math.NaN(), math.NaN(), inRange} }
	film := band(t.Films, t.Film)
	if in.Air.FilmGiven {
		film = only(float64(in.Air.Film))
	}
	return map[Quantity]Answer{
		Film: film, AirDrop: band(t.Drops, t.Drop),
		UBare: only(t.Overall.OnBare), Duty: only(math.Abs(t.Duty.Heat)), PerWeight: only(perWeight), PerFace: only(perFace),
	}
}

func band[A airside.Answer](verdicts []airside.Verdict[A], used int) Answer {
	low, high, n := airside.Spread(verdicts)
	if n < 2 {
		low, high = math.NaN(), math.NaN()
	}
	return Answer{verdicts[used].Answer.Measure(), low, high, verdicts[used].InRange}
}

// replaceHeat is replace for the fields of the bank at work.
func replaceHeat(in *Input, field string, x float64) (ok bool) {
	switch field {
	case "air_in":
		in.Air.In = units.Temperature(x)
	case "face_velocity":
		in.Air.Velocity = x
	case "fouling_outside":
		in.Air.Fouling = x
	case "tube_pitch":
		in.Bank.TubePitch = units.Length(x)
	case "row_pitch":
		in.Bank.RowPitch = units.Length(x)
	case "tip_clearance":
		in.Bank.Clearance = units.Length(x)
	case "inside_in":
		in.Process.In = units.Temperature(x)
	case "inside_flow":
		in.Process.Flow = x
	case "fouling_inside":
		in.Process.Fouling = x
	case "bond_resistance":
		in.Process.Bond = x
	default:
		return false
	}
	return true
}

// SweepHeat rates the bank at each value of one field [SI], starting from the
// temperatures of near, a design close by, and with its correlations throughout: a
// curve on which they changed would step where nothing happens to the tube. Where a
// design is impossible the answers are nil.
func SweepHeat(in Input, near *Thermal, field string, values []float64, visit func(i int, answers map[Quantity]Answer)) {
	var errs FieldErrors
	start := near.state
	for i, x := range values {
		mustReplace(&in, field, x)
		errs = errs[:0]
		if checkTogether(&in, &errs); len(errs) > 0 || len(pitchFindings(&in)) > 0 {
			visit(i, nil)
			continue
		}
		t, errs := settle(&in, start, &near.Pair, coarse)
		if errs != nil {
			visit(i, nil)
			continue
		}
		start = t.state
		visit(i, Answers(&in, &t))
	}
}
