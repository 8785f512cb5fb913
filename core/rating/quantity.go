package rating

import (
	"math"

	"finwright/core/airside"
	"finwright/core/units"
)

// Quantity is a number of a rated design that curves and maps show.
type Quantity string

// Quantities of the surface.
const (
	AreaRatio  Quantity = "area_ratio"
	Efficiency Quantity = "fin_efficiency"
	UsedArea   Quantity = "used_area"
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

// OfSurface lists the quantities of the surface in the order a page offers them.
var OfSurface = []Quantity{AreaRatio, Efficiency, UsedArea}

var quantityKinds = map[Quantity]units.Kind{
	AreaRatio: units.Factor, Efficiency: units.Factor, UsedArea: units.SurfacePerMetre,
	Film: units.Film, AirDrop: units.Drop, UBare: units.Film, Duty: units.Duty, PerWeight: units.DutyPerWeight, PerFace: units.DutyPerArea,
}

// Kind says how the quantity is shown.
func (q Quantity) Kind() units.Kind { return quantityKinds[q] }

// Of returns the quantity from s [SI].
//
// Valid: a quantity of OfSurface.
// Source: see Surface.
func (q Quantity) Of(s *Surface) float64 {
	switch q {
	case AreaRatio:
		return s.Areas.Ratio()
	case Efficiency:
		return s.Fin.Efficiency
	case UsedArea:
		return float64(s.Used)
	}
	panic("rating: no quantity " + string(q))
}

// Spread reports whether several correlations answer for the quantity.
func (q Quantity) Spread() bool { return q == Film || q == AirDrop }

// Answer is a quantity with the lowest and highest of the correlations in range; NaN where fewer than two are. Value is NaN
// where nothing here computes it.
type Answer struct {
	Value, Low, High float64
	InRange          bool // whether the correlation it rests on is
}

// Answers returns the quantities of a rated bank in SI: of one that was rated briefly none has a lowest and a highest.
func Answers(in *Input, t *Thermal) map[Quantity]Answer {
	perWeight, perFace := t.Yield(&in.Tube)
	inRange := in.Air.FilmGiven || t.UsedFilm.InRange
	drop := Answer{math.NaN(), math.NaN(), math.NaN(), true}
	if t.HasDrop() {
		drop = band(t.Drops, &t.UsedDrop)
	}
	only := func(x float64) Answer { return Answer{x, math.NaN(), math.NaN(), inRange} }
	film := band(t.Films, &t.UsedFilm)
	if in.Air.FilmGiven {
		film = only(float64(in.Air.Film))
	}
	return map[Quantity]Answer{
		Film: film, AirDrop: drop,
		UBare: only(t.Overall.OnBare), Duty: only(math.Abs(t.Duty.Heat)), PerWeight: only(perWeight), PerFace: only(perFace),
	}
}

func band[A airside.Answer](estimates []airside.Estimate[A], used *airside.Estimate[A]) Answer {
	low, high, n := airside.Spread(estimates)
	if n < 2 {
		low, high = math.NaN(), math.NaN()
	}
	return Answer{used.Answer.Measure(), low, high, used.InRange}
}
