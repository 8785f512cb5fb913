package airside

import (
	"math"

	"finwright/core/figure"
	"finwright/core/units"
)

// Weierman1976 returns the film coefficient [W/(m2 K)] of staggered banks of solid welded
// fins, with the later constants. The in-line set could not be confirmed and is absent.
//
//	h = j G cp Pr^(-2/3);  j = C1 C3 C5 (Df/d)^0.5 (Tg/Tf)^0.25
//	C1 = 0.091 Re^-0.25;  C3 = 0.35 + 0.65 e^(-0.17 hf/s)
//	C5 = 0.7 + (0.70 - 0.8 e^(-0.15 N^2)) e^(-PL/PT)
//
// s is the gap at the root; Tg/Tf the absolute temperature of gas over mean fin.
// Valid: 1 to 7 fins/in, 0.9 to 2.8 mm thick: what is welded (common practice); the
// paper's own range is not confirmed. It overpredicts closely finned tubes.
// Source: Weierman, Oil Gas J. 74 no. 36 (1976) 94, constants of a later revision, from memory, not confirmed; C5 as
// Ganapathy, Industrial Boilers and HRSG, table 8.10b has it, C1 and C3 from memory.
func Weierman1976(x *Crossing) Film {
	c1 := 0.091 * x.powers(-0.25, 0)
	c3 := 0.35 + 0.65*math.Exp(-0.17*x.FinHeight()/x.Gap())
	c5 := 0.7 + (0.70-0.8*weiermanRows(x.Rows))*math.Exp(-x.RowPitch/x.TransversePitch)
	j := c1 * c3 * c5 * math.Sqrt(x.FinOD/x.OD) * powers(x.temperatureRatio(), 0.25)
	h := j * x.MassVelocity * x.HeatCapacity * x.powers(0, -2*third)
	return Film{Coefficient: h, Nusselt: h * x.OD / x.Conductivity, Reynolds: x.Reynolds}
}

// weierman1976 is Weierman1976 in the list.
var weierman1976 = Method[Film]{
	ID: "weierman_1976", FromMemory: true,
	Formula: figure.Formula{Result: "Nu", Expression: "j Re Pr^(1/3)", Source: "source.weierman_1976", Valid: "valid.weierman_1976"},
	Compute: Weierman1976,
	Args: func(x *Crossing, a Film) []figure.Arg {
		j := a.Nusselt / (a.Reynolds * math.Cbrt(x.Prandtl()))
		return []figure.Arg{arg("j", units.Factor, j), reynolds(a), prandtl(x)}
	},
	Limits: weiermanLimits,
}

// weiermanRows returns e^(-0.15 N^2) [-], which fades as rows are added.
func weiermanRows(rows int) float64 { return math.Exp(-0.15 * float64(rows*rows)) }

// Weierman1976Drop returns the pressure drop [Pa] of staggered banks of solid welded fins.
//
//	dp = 4 f N G^2/(2 rho);  f = C2 C4 C6 (Df/d)^0.5 (Tg/Tf)^-0.25
//	C2 = 0.075 + 1.85 Re^-0.3;  C4 = 0.11 (0.05 PT/d)^(-0.7 (hf/s)^0.2)
//	C6 = 1.1 + (1.8 - 2.1 e^(-0.15 N^2)) e^(-2 PL/PT) - (0.7 - 0.8 e^(-0.15 N^2)) e^(-0.6 PL/PT)
//
// The change of momentum of a gas that warms or cools is not part of it.
// Valid: as Weierman1976.
// Source: as Weierman1976; C6 as Ganapathy has it, C2 and C4 from memory.
func Weierman1976Drop(x *Crossing) Drop {
	c2 := 0.075 + 1.85*x.powers(-0.3, 0)
	c4 := 0.11 * powers(0.05*x.TransversePitch/x.OD, -0.7*powers(x.FinHeight()/x.Gap(), 0.2))
	few, pitches := weiermanRows(x.Rows), x.RowPitch/x.TransversePitch
	c6 := 1.1 + (1.8-2.1*few)*math.Exp(-2*pitches) - (0.7-0.8*few)*math.Exp(-0.6*pitches)
	friction := c2 * c4 * c6 * math.Sqrt(x.FinOD/x.OD) * powers(x.temperatureRatio(), -0.25)
	return fanning(x, friction)
}

// weierman1976Drop is Weierman1976Drop in the list.
var weierman1976Drop = Method[Drop]{
	ID: "weierman_1976_drop", FromMemory: true,
	Formula: figure.Formula{Result: "Δp", Expression: "4 f N_r G_m² / (2 ρ)", Source: "source.weierman_1976_drop", Valid: "valid.weierman_1976_drop"},
	Compute: Weierman1976Drop,
	Args:    frictionArgs,
	Limits:  weiermanLimits,
}

func weiermanLimits(to []figure.Limit, x *Crossing) []figure.Limit {
	return append(to,
		staggeredOnly(x),
		countLimit(x, 1, 7).Printed(1/inch),
		thicknessLimit(x, 0.9e-3, 2.8e-3).Printed(1e-4))
}
