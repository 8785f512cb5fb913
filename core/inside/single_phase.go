package inside

import (
	"math"

	"finwright/core/figure"
	"finwright/core/units"
)

// Gnielinski1976 returns the Nusselt number [-] of turbulent flow.
//
//	Nu = (f/8)(Re - 1000) Pr/[1 + 12.7 sqrt(f/8)(Pr^(2/3) - 1)]
//
// re is the Reynolds number [-], pr the Prandtl number [-], friction the Darcy
// friction factor [-].
// Valid: 2300 <= Re <= 5e6, 0.5 <= Pr <= 2000; long tubes: the factor for short ones,
// 1 + (di/L)^(2/3), is left out.
// Source: Gnielinski, Int. Chem. Eng. 16 (1976) 359, as the open library ht carries it.
func Gnielinski1976(re, pr, friction float64) float64 {
	x := friction / 8
	return x * (re - 1000) * pr / (1 + 12.7*math.Sqrt(x)*(math.Cbrt(pr*pr)-1))
}

// Hausen1943 returns the mean Nusselt number [-] of laminar flow from the inlet of a tube
// whose wall has one temperature.
//
//	Nu = 3.66 + 0.0668 Gz/(1 + 0.04 Gz^(2/3));  Gz = Re Pr di/L
//
// gz is the Graetz number [-].
// Valid: Re <= 2300; velocity profile developed, so low for gases near the inlet;
// buoyancy not counted.
// Source: Hausen, Z. VDI Beih. Verfahrenstech. 4 (1943) 91, as the open library ht carries it.
func Hausen1943(gz float64) float64 {
	return 3.66 + 0.0668*gz/(1+0.04*math.Cbrt(gz*gz))
}

// Exponents of the viscosity ratio, bulk over wall, for a liquid.
//
// Source: laminar: Sieder and Tate, Ind. Eng. Chem. 28 (1936) 1429; turbulent: the 0.11
// that Gnielinski 1976 gives the ratio of Prandtl numbers, which for a liquid is
// nearly that of viscosities; both from memory.
const (
	laminarWall   = 0.14
	turbulentWall = 0.11
)

// SinglePhase returns the film coefficient [W/(m2 K)] of a liquid or gas: Hausen1943 up to
// Re 2300, Gnielinski1976 from 4000, and between them a straight line in Reynolds number
// from the one at 2300 to the other at 4000.
//
// Valid: Re up to 5e6, Pr 0.5 to 2000 beyond laminar flow, viscosity ratio 0.0044 to
// 9.75, relative roughness up to 0.05; the answer's Limits say.
// Source: as named; straight line: Gnielinski, Int. J. Heat Mass Transfer 63 (2013)
// 134, from memory.
func SinglePhase(t Tube, f Flow) Film {
	answer := Convection(t, f)
	rough := t.Roughness / t.Bore
	answer.Limits = append(make([]figure.Limit, 0, 4),
		figure.Limit{Variable: "reynolds", Kind: units.Count, Value: answer.Reynolds, Low: 0, High: 5e6},
		number("viscosity_ratio", f.viscosityRatio(), 0.0044, 9.75),
		number("roughness", rough, 0, 0.05))
	if answer.Reynolds > laminarEnd {
		answer.Limits = append(answer.Limits, number("prandtl", f.Prandtl(), 0.5, 2000))
	}
	return answer
}

// Convection is SinglePhase [W/(m2 K)] without its Limits, for a search that asks many times.
//
// Valid: as SinglePhase.
// Source: as SinglePhase.
func Convection(t Tube, f Flow) Film {
	re, pr, rough, ratio := f.Reynolds(t), f.Prandtl(), t.Roughness/t.Bore, f.viscosityRatio()
	laminar := func(re float64) float64 {
		return Hausen1943(re*pr*t.Bore/t.Length) * math.Pow(ratio, laminarWall)
	}
	turbulent := func(re float64) float64 {
		return Gnielinski1976(re, pr, Friction(re, rough)) * math.Pow(ratio, turbulentWall)
	}
	answer := Film{Reynolds: re}
	switch {
	case re <= laminarEnd:
		answer.Method, answer.Nusselt = "hausen_1943", laminar(re)
	case re >= TurbulentFrom:
		answer.Method, answer.Nusselt = "gnielinski_1976", turbulent(re)
	default:
		x := (re - laminarEnd) / (TurbulentFrom - laminarEnd)
		answer.Method, answer.Nusselt = "gnielinski_2013", (1-x)*laminar(laminarEnd)+x*turbulent(TurbulentFrom)
	}
	answer.Coefficient = answer.Nusselt * f.Conductivity / t.Bore
	return answer
}

// viscosityRatio returns the viscosity in the stream over that at the wall [-]; 1 where the latter is not known.
func (f *Flow) viscosityRatio() float64 {
	if f.WallViscosity > 0 {
		return f.Viscosity / f.WallViscosity
	}
	return 1
}
