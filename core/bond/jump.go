package bond

import (
	"math"

	"finwright/core/fluid"
)

// Accommodation is the share [-] of the energy that a molecule of gas could exchange with a metal as it is in a shop, which it does.
//
// Source: engineering judgement; handbooks give 0.87 to 0.97 for air on metals, from memory.
const Accommodation = 0.9

// FreePath returns the mean free path [m] of a gas at a pressure [Pa].
//
//	l = mu sqrt(pi/(2 p rho))
//
// Valid: an ideal gas.
// Source: kinetic theory; Kennard, Kinetic Theory of Gases (1938), from memory.
func FreePath(gas fluid.Properties, pressure float64) float64 {
	return gas.Viscosity * math.Sqrt(math.Pi/(2*pressure*gas.Density))
}

// JumpDistance returns by how much a narrow gap [m] resists as if it were wider, since the gas at its two walls is not as hot
// as they are.
//
//	j = 2 (2 - a)/a 2 gamma/(gamma + 1) l/Pr, gamma 1.4
//
// pressure [Pa].
// Valid: gaps of many free paths; gases of two atoms, others within a tenth.
// Source: Kennard, Kinetic Theory of Gases (1938), from memory.
func JumpDistance(gas fluid.Properties, pressure float64) float64 {
	const gamma = 1.4
	return 2 * (2 - Accommodation) / Accommodation * 2 * gamma / (gamma + 1) * FreePath(gas, pressure) / gas.Prandtl()
}
