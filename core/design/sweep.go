package design

import (
	"math"

	"finwright/core/rating"
	"finwright/core/units"
)

// replace sets the number of a field that a sweep may vary; ok is false for any other field.
func replace(in *Input, field string, x float64) (ok bool) {
	switch field {
	case "tube_od":
		in.Tube.OD = units.Length(x)
	case "tube_wall":
		in.Tube.Wall = units.Length(x)
	case "tube_length":
		in.Tube.Length = units.Length(x)
	case "plain_end_a":
		in.Tube.PlainA = units.Length(x)
	case "plain_end_b":
		in.Tube.PlainB = units.Length(x)
	case "fin_height":
		in.Tube.Fin.Height = units.Length(x)
	case "strip_thickness":
		in.Tube.Fin.Strip = units.Length(x)
	case "fin_pitch":
		in.Tube.Fin.Count = units.PerLength(x)
	case "tip_thickness":
		in.Tube.Fin.TipGiven = units.Length(x)
	case "groove_depth":
		in.Tube.Fin.Groove = units.Length(x)
	case "foot_lap":
		in.Tube.Fin.Lap = units.Length(x)
	case "sleeve_thickness":
		in.Tube.Fin.Sleeve = units.Length(x)
	case "film_coefficient":
		in.Air.Film = units.FilmCoefficient(x)
	case "metal_temperature":
		in.Air.Metal = units.Temperature(x)
	default:
		return replaceHeat(in, field, x)
	}
	return true
}

// mustReplace is replace for a caller that knows the field.
func mustReplace(in *Input, field string, x float64) {
	if !replace(in, field, x) {
		panic("design: cannot sweep " + field)
	}
}

// Vary returns in with one number replaced [SI]; ok is false for a field that holds no number.
// The spans' slice is shared with in and not written to.
func Vary(in Input, field string, x float64) (out Input, ok bool) {
	ok = replace(&in, field, x)
	return in, ok
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

// Sweep evaluates the surface of in, which was rated as near, at each value of one field [SI] and hands every one to
// visit; where the design is impossible visit gets ok false. It panics on a field that holds no number.
func Sweep(in Input, near *rating.Thermal, field string, values []float64, visit func(i int, s rating.Surface, ok bool)) {
	sweep(&in, near, field, values, visit)
}

func sweep(in *Input, near *rating.Thermal, field string, values []float64, visit func(i int, s rating.Surface, ok bool)) {
	rating.SweepSurface(len(values), designs(in, field, values, possible), near, visit)
}

// SweepBank rates in, which was rated as near, at each value of one field [SI]. Where a design is impossible the answers are nil.
func SweepBank(in Input, near *rating.Thermal, field string, values []float64, visit func(i int, answers map[rating.Quantity]rating.Answer)) {
	fits := func(in *Input) bool { return possible(in) && len(pitchFindings(in)) == 0 }
	rating.SweepBank(len(values), designs(&in, field, values, fits), near, visit)
}

// designs varies one field of in, and gives those that are possible.
func designs(in *Input, field string, values []float64, possible func(*Input) bool) rating.Designs {
	return func(i int) *rating.Input {
		mustReplace(in, field, values[i])
		if !possible(in) {
			return nil
		}
		return &in.Input
	}
}

func possible(in *Input) bool {
	var errs FieldErrors
	checkTogether(in, &errs)
	return len(errs) == 0
}

// Grid evaluates a quantity of the surface over two fields, row by row of ys. An impossible
// design is NaN here and nowhere else: a map draws it as empty.
func Grid(in Input, near *rating.Thermal, fieldX string, xs []float64, fieldY string, ys []float64, q rating.Quantity) []float64 {
	out := make([]float64, 0, len(xs)*len(ys))
	keep := func(_ int, s rating.Surface, ok bool) {
		if !ok {
			out = append(out, math.NaN())
			return
		}
		out = append(out, q.Of(&s))
	}
	for _, y := range ys {
		mustReplace(&in, fieldY, y)
		sweep(&in, near, fieldX, xs, keep)
	}
	return out
}
