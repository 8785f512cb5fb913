package airside

import (
	"math"

	"finwright/core/figure"
	"finwright/core/fluid"
	"finwright/core/units"
)

const gravity = 9.80665 // [m/s2]

// Still is a horizontal finned tube in a gas at rest.
type Still struct {
	fluid.Properties         // at the mean of surface and gas temperature
	FinOD            float64 // [m]
	Gap              float64 // [m] clear, between fins
	Expansion        float64 // [1/K] of the gas at constant pressure: 1/T of an ideal gas
	Excess           float64 // [K] surface over gas, or under it, taken positive
}

// Rayleigh returns g beta dT s^3/(nu alpha) s/Df [-].
//
// Valid: a gas; gap, diameter and excess positive.
// Source: definition, as EdwardsChaddock1963 has it.
func (s Still) Rayleigh() float64 {
	nu := s.Viscosity / s.Density
	alpha := s.Conductivity / (s.Density * s.HeatCapacity)
	return gravity * s.Expansion * s.Excess * s.Gap * s.Gap * s.Gap / (nu * alpha) * s.Gap / s.FinOD
}

// EdwardsChaddock1963 returns the film coefficient of natural convection about one
// horizontal tube with annular fins, for want of a fan; its Nusselt number is on the
// gap. Other tubes above or below are not counted, nor is radiation.
//
//	Nu = 0.125 Ra^0.55 [1 - exp(-137/Ra)]^0.294
//
// Ra is as Rayleigh; h is the mean over the whole outside surface [W/(m2 K)].
// Valid: 5 <= Ra <= 1e4, measured at Df/d 1.94; close fins fall below it.
// Source: Edwards and Chaddock, ASHRAE Trans. 69 (1963) 313, from memory.
func EdwardsChaddock1963(s Still) (h float64, limits []figure.Limit) {
	ra := s.Rayleigh()
	nu := 0.125 * powers(ra, 0.55, -math.Expm1(-137/ra), 0.294)
	return nu * s.Conductivity / s.Gap, []figure.Limit{number("rayleigh", ra, 5, 1e4)}
}

// StillFormula is EdwardsChaddock1963 for the working.
var StillFormula = figure.Formula{
	Result: "h", Expression: "k_g/s · 0.125 Ra^0.55 (1 − exp(−137 / Ra))^0.294",
	Source: "source.edwards_chaddock_1963", Valid: "valid.edwards_chaddock_1963",
}

// Args returns the numbers that StillFormula names.
func (s Still) Args() []figure.Arg {
	return []figure.Arg{arg("Ra", units.Factor, s.Rayleigh()), arg("k_g", units.Conduct, s.Conductivity), arg("s", units.Gap, s.Gap)}
}
