package fluid

import (
	"math"

	"finwright/core/figure"
	"finwright/core/units"
)

// Point is what the user knows of a fluid at one temperature.
type Point struct {
	Temperature float64 // [K] absolute
	Properties
}

// Table is a fluid that the user describes: a thermal oil, a glycol mixture, a
// process gas at its pressure. One point is a constant fluid.
type Table []Point

// NewTable checks the points: at least one, every property positive, temperatures
// rising. Both must lie above the low bound that the error names, not on it.
func NewTable(points ...Point) (Table, error) {
	if err := check(figure.Limit{Variable: "points", Kind: units.Count, Value: float64(len(points)), Low: 1, High: math.Inf(1)}); err != nil {
		return nil, err
	}
	before := 0.0
	for _, p := range points {
		if !(p.Temperature > before) {
			return nil, &OutOfRange{temperature(p.Temperature, before, math.Inf(1))}
		}
		before = p.Temperature
		for _, limit := range []figure.Limit{
			{Variable: "density", Kind: units.Dense, Value: p.Density},
			{Variable: "heat_capacity", Kind: units.Factor, Value: p.HeatCapacity},
			{Variable: "viscosity", Kind: units.Factor, Value: p.Viscosity},
			{Variable: "conductivity", Kind: units.Conduct, Value: p.Conductivity},
		} {
			if !(limit.Value > 0) || math.IsInf(limit.Value, 1) {
				limit.High = math.Inf(1)
				return nil, &OutOfRange{limit}
			}
		}
	}
	return Table(points), nil
}

// At returns the properties at absolute temperature t [K]: straight lines between
// the points, of the viscosity's logarithm over 1/t so that a liquid that follows
// Andrade's law is exact.
//
// Valid: between the first and last point; at every t if there is one point.
// Source: the user's points; interpolation is arithmetic (Andrade, Nature 125
// (1930) 309, from memory).
func (f Table) At(t float64) (Properties, error) {
	if len(f) == 1 {
		return f[0].Properties, nil
	}
	if err := check(temperature(t, f[0].Temperature, f[len(f)-1].Temperature)); err != nil {
		return Properties{}, err
	}
	i := 1
	for i < len(f)-1 && f[i].Temperature < t {
		i++
	}
	a, b := f[i-1], f[i]
	x := (t - a.Temperature) / (b.Temperature - a.Temperature)
	y := (1/t - 1/a.Temperature) / (1/b.Temperature - 1/a.Temperature)
	return Properties{
		Density:      a.Density + x*(b.Density-a.Density),
		HeatCapacity: a.HeatCapacity + x*(b.HeatCapacity-a.HeatCapacity),
		Viscosity:    a.Viscosity * math.Pow(b.Viscosity/a.Viscosity, y),
		Conductivity: a.Conductivity + x*(b.Conductivity-a.Conductivity),
	}, nil
}

// mostBeyond bounds by how many times the viscosity is followed beyond the last point: steep points are no promise.
const mostBeyond = 1e4

// Beyond returns the properties at any absolute temperature t [K]: those of At between the points, and beyond them
// those of the nearest, but for the viscosity, which goes on as it went between the last two, to mostBeyond times the
// last or one part of it in so many.
//
// Valid: between the points; beyond them the caller must say so.
// Source: as At.
func (f Table) Beyond(t float64) Properties {
	last := len(f) - 1
	held := min(f[last].Temperature, max(f[0].Temperature, t))
	p, err := f.At(held)
	if err != nil {
		panic(err) // held is not
	}
	if last == 0 || t == held {
		return p
	}
	a, b := f[0], f[1]
	if t > held {
		a, b = f[last-1], f[last]
	}
	on := a.Viscosity * math.Pow(b.Viscosity/a.Viscosity, (1/t-1/a.Temperature)/(1/b.Temperature-1/a.Temperature))
	p.Viscosity = min(max(on, p.Viscosity/mostBeyond), p.Viscosity*mostBeyond)
	return p
}
