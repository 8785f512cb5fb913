// Package inside computes the film coefficient and the pressure drop of what flows
// through the tubes: a liquid, a gas, or a vapour that condenses.
//
// Everything is bare SI float64. Film coefficients are on the inside area, pi times
// bore times length; Reynolds and Nusselt numbers are on the bore.
package inside

import (
	"finwright/core/figure"
	"finwright/core/fluid"
	"finwright/core/units"
)

// Tube is one tube as the stream inside sees it.
//
// Valid: Bore and Length positive, Roughness from 0.
type Tube struct {
	Bore      float64 // [m]
	Length    float64 // [m] from header to header
	Roughness float64 // [m] mean height; 0 is a smooth tube
}

// Flow is the stream in each tube.
type Flow struct {
	fluid.Properties         // at the bulk mean
	MassVelocity     float64 // [kg/(m2 s)] mass flow over bore area
	WallViscosity    float64 // [Pa s] of a liquid at the wall; 0 leaves the correction out, as for a gas
}

// Reynolds returns G di/mu [-].
//
// Valid: any flow.
// Source: definition.
func (f Flow) Reynolds(t Tube) float64 { return f.MassVelocity * t.Bore / f.Viscosity }

// Film is the answer of a film correlation; its texts are "inside.<Method>",
// "source.<Method>" and "valid.<Method>".
type Film struct {
	Method      string
	Coefficient float64 // [W/(m2 K)] on the inside area
	Nusselt     float64 // [-] on the bore
	Reynolds    float64 // [-] on the bore; of all the stream as liquid where it condenses
	Limits      []figure.Limit
}

// InRange reports whether the correlation's published range holds.
func (f Film) InRange() bool { return figure.AllIn(f.Limits) }

func number(variable string, value, low, high float64) figure.Limit {
	return figure.Limit{Variable: variable, Kind: units.Factor, Value: value, Low: low, High: high}
}
