package design

import (
	"math"

	"finwright/core/units"
)

// setters holds the numbers that a sweep may vary.
var setters = map[string]func(*Input, float64){
	"tube_od":           func(in *Input, x float64) { in.Tube.OD = units.Length(x) },
	"tube_wall":         func(in *Input, x float64) { in.Tube.Wall = units.Length(x) },
	"tube_length":       func(in *Input, x float64) { in.Tube.Length = units.Length(x) },
	"plain_end_a":       func(in *Input, x float64) { in.Tube.PlainA = units.Length(x) },
	"plain_end_b":       func(in *Input, x float64) { in.Tube.PlainB = units.Length(x) },
	"fin_height":        func(in *Input, x float64) { in.Tube.Fin.Height = units.Length(x) },
	"strip_thickness":   func(in *Input, x float64) { in.Tube.Fin.Strip = units.Length(x) },
	"fin_pitch":         func(in *Input, x float64) { in.Tube.Fin.Count = units.PerLength(x) },
	"tip_thickness":     func(in *Input, x float64) { in.Tube.Fin.TipGiven = units.Length(x) },
	"groove_depth":      func(in *Input, x float64) { in.Tube.Fin.Groove = units.Length(x) },
	"foot_lap":          func(in *Input, x float64) { in.Tube.Fin.Lap = units.Length(x) },
	"sleeve_thickness":  func(in *Input, x float64) { in.Tube.Fin.Sleeve = units.Length(x) },
	"film_coefficient":  func(in *Input, x float64) { in.Air.Film = units.FilmCoefficient(x) },
	"metal_temperature": func(in *Input, x float64) { in.Air.Metal = units.Temperature(x) },
}

// Vary returns in with one number replaced [SI]; ok is false for a field that holds no number.
// The spans' slice is shared with in and not written to.
func Vary(in Input, field string, x float64) (out Input, ok bool) {
	set, ok := setters[field]
	if ok {
		set(&in, x)
	}
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
	sweep(&in, setter(field), values, visit)
}

// setter returns how to replace the number of a field.
func setter(field string) func(*Input, float64) {
	set, ok := setters[field]
	if !ok {
		panic("design: cannot sweep " + field)
	}
	return set
}

// sweep writes into in, one copy for all values: a copy for each would cost more than its evaluation.
func sweep(in *Input, set func(*Input, float64), values []float64, visit func(i int, s State, ok bool)) {
	var errs FieldErrors
	for i, x := range values {
		set(in, x)
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
	setX, setY := setter(fieldX), setter(fieldY)
	keep := func(_ int, s State, ok bool) {
		if !ok {
			out = append(out, math.NaN())
			return
		}
		out = append(out, q.Of(&s))
	}
	for _, y := range ys {
		setY(&in, y)
		sweep(&in, setX, xs, keep)
	}
	return out
}
