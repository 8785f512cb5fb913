package rating

import (
	"slices"

	"finwright/core/fluid"
)

// own returns the properties of the user's own fluid at a temperature [C], and whether it lies between those at which it is
// known.
func (in *Input) own(celsius float64) (p fluid.Properties, known bool) {
	points, n := in.ownPoints()
	t := celsius + zeroCelsius
	table := fluid.Table(points[:n])
	return table.Beyond(t), n == 1 || t >= table[0].Temperature && t <= table[n-1].Temperature
}

// ownPoints returns the points of the own fluid in the order of temperature; of two at one temperature the first counts.
func (in *Input) ownPoints() (points [MostPoints]fluid.Point, n int) {
	p := &in.Process
	points[0], n = fluid.Point{Temperature: float64(p.OwnAt) + zeroCelsius, Properties: p.Own}, 1
	for _, more := range p.More[:max(0, p.Points-1)] {
		t := float64(more.At) + zeroCelsius
		if !slices.ContainsFunc(points[:n], func(is fluid.Point) bool { return is.Temperature == t }) {
			points[n] = fluid.Point{Temperature: t, Properties: more.Properties}
			n++
		}
	}
	for i := 1; i < n; i++ {
		for j := i; j > 0 && points[j].Temperature < points[j-1].Temperature; j-- {
			points[j], points[j-1] = points[j-1], points[j]
		}
	}
	return points, n
}

// OwnKnown reports whether the own fluid is known at all the temperatures [C] at which the bank asked for it, and between which it is.
//
// Valid: an own fluid.
// Source: as it was entered.
func (t *Thermal) OwnKnown(in *Input) (known bool, low, high float64) {
	points, n := in.ownPoints()
	_, mean := in.own(t.state.process)
	_, wall := in.own(t.state.wall)
	return mean && (wall || in.gasInside()), points[0].Temperature - zeroCelsius, points[n-1].Temperature - zeroCelsius
}

// glycol returns the mixture of water and a glycol, nil where the stream is none.
func (in *Input) glycol() *fluid.Glycol {
	switch in.Process.Fluid {
	case Ethylene:
		return &fluid.EthyleneGlycol
	case Propylene:
		return &fluid.PropyleneGlycol
	}
	return nil
}

// liquid returns the properties of a stream of one phase at a temperature [C].
func (in *Input) liquid(celsius float64) (fluid.Properties, error) {
	if g := in.glycol(); g != nil {
		return g.At(celsius+zeroCelsius, in.Process.Glycol)
	}
	if in.Process.Fluid == OwnFluid {
		p, _ := in.own(celsius)
		return p, nil
	}
	return fluid.Water(celsius+zeroCelsius, in.StreamPressure())
}

// thickens reports whether the viscosity of the stream is known at the wall, and counts there.
func (in *Input) thickens() bool {
	return in.Process.Fluid != OwnFluid || in.Process.Points > 1 && !in.Process.Gas
}

// wallViscosity returns the viscosity [Pa s] of a stream of one phase at a temperature [C].
func (in *Input) wallViscosity(celsius float64) (float64, error) {
	if in.Process.Fluid == Water {
		return fluid.WaterViscosity(celsius+zeroCelsius, in.StreamPressure())
	}
	p, err := in.liquid(celsius)
	return p.Viscosity, err
}

// Freezing returns the temperature [C] below which what is in the tubes freezes or, own, pours no more; ok is false where
// that is not known.
//
// Valid: a liquid.
// Source: fluid.Glycol.Freezing; water 0 C; an own fluid's pour point as entered.
func (in *Input) Freezing() (celsius float64, ok bool) {
	switch g := in.glycol(); {
	case g != nil:
		return g.Freezing(in.Process.Glycol) - zeroCelsius, true
	case in.Process.Fluid != OwnFluid:
		return 0, true
	}
	return in.Process.Pour.SI, in.Process.Pour.Stated && !in.Process.Gas
}

// Laminar reports whether a liquid in the tubes runs below the Reynolds number at which turbulence begins.
func (t *Thermal) Laminar(in *Input) bool {
	return in.Process.Fluid != Steam && !in.gasInside() && t.Inside.Method == "hausen_1943"
}
