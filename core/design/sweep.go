package design

import (
	"math"

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

// Quantity is a number of an evaluated design that curves and maps show.
type Quantity string

// Quantities.
const (
	AreaRatio  Quantity = "area_ratio"
	Efficiency Quantity = "fin_efficiency"
	UsedArea   Quantity = "used_area"
)

// Quantities lists them in the order a page offers them.
var Quantities = []Quantity{AreaRatio, Efficiency, UsedArea}

var quantityKinds = map[Quantity]units.Kind{
	AreaRatio: units.Factor, Efficiency: units.Factor, UsedArea: units.SurfacePerMetre,
	Film: units.Film, AirDrop: units.Drop, UBare: units.Film, Duty: units.Duty, PerWeight: units.DutyPerWeight, PerFace: units.DutyPerArea,
}

// Kind says how the quantity is shown.
func (q Quantity) Kind() units.Kind { return quantityKinds[q] }

// Of returns the quantity from s in SI.
func (q Quantity) Of(s *State) float64 {
	switch q {
	case AreaRatio:
		return s.Areas.Ratio()
	case Efficiency:
		return s.Fin.Efficiency
	case UsedArea:
		return float64(s.Used)
	}
	panic("design: no quantity " + string(q))
}

// Sweep evaluates in at each value of one field [SI] and hands every State to
// visit; where the design is impossible visit gets ok false. It panics on a
// field that holds no number.
func Sweep(in Input, field string, values []float64, visit func(i int, s State, ok bool)) {
	sweep(&in, field, values, visit)
}

// sweep writes into in, one copy for all values: a copy for each would cost more than its evaluation.
func sweep(in *Input, field string, values []float64, visit func(i int, s State, ok bool)) {
	var errs FieldErrors
	for i, x := range values {
		mustReplace(in, field, x)
		errs = errs[:0]
		if checkTogether(in, &errs); len(errs) > 0 {
			visit(i, State{}, false)
			continue
		}
		visit(i, solve(in), true)
	}
}

// Grid evaluates a quantity over two fields, row by row of ys. An impossible
// design is NaN here and nowhere else: a map draws it as empty.
func Grid(in Input, fieldX string, xs []float64, fieldY string, ys []float64, q Quantity) []float64 {
	out := make([]float64, 0, len(xs)*len(ys))
	keep := func(_ int, s State, ok bool) {
		if !ok {
			out = append(out, math.NaN())
			return
		}
		out = append(out, q.Of(&s))
	}
	for _, y := range ys {
		mustReplace(&in, fieldY, y)
		sweep(&in, fieldX, xs, keep)
	}
	return out
}
