// Package fluid gives the properties of what flows over and through the tubes:
// dry and moist air, water and steam, and fluids that the user describes.
//
// Everything is bare SI float64; temperatures are absolute [K], pressures
// absolute [Pa]. Each function states how far it was held to its reference.
package fluid

import (
	"fmt"

	"finwright/core/figure"
	"finwright/core/units"
)

// Properties is what heat transfer and pressure drop need of a fluid at one state.
type Properties struct {
	Density      float64 // [kg/m3]
	HeatCapacity float64 // [J/(kg K)] at constant pressure
	Viscosity    float64 // [Pa s] dynamic
	Conductivity float64 // [W/(m K)]
}

// Prandtl returns cp mu/k [-].
//
// Valid: as the properties.
// Source: definition.
func (p Properties) Prandtl() float64 { return p.HeatCapacity * p.Viscosity / p.Conductivity }

// OutOfRange is the error of a property asked for where its formulation does not hold.
type OutOfRange struct{ figure.Limit }

// Error is for logs; people read Limit.Message.
func (e *OutOfRange) Error() string {
	return fmt.Sprintf("fluid: %s %g outside %g to %g", e.Variable, e.Value, e.Low, e.High)
}

const zeroCelsius = 273.15 // [K]

// check returns an OutOfRange for the first limit that is not kept.
func check(limits ...figure.Limit) error {
	for _, l := range limits {
		if !l.In() {
			return &OutOfRange{l}
		}
	}
	return nil
}

// temperature makes a limit from absolute temperatures [K].
func temperature(t, low, high float64) figure.Limit {
	return figure.Limit{
		Variable: "temperature", Kind: units.Temp,
		Value: t - zeroCelsius, Low: low - zeroCelsius, High: high - zeroCelsius,
	}
}

// pressure makes a limit from absolute pressures [Pa].
func pressure(p, low, high float64) figure.Limit {
	return figure.Limit{Variable: "pressure", Kind: units.Pressure, Value: p, Low: low, High: high}
}
