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
func Weierman1976(b Bank, f Flow) Film {
	g, re := throat(&b, &f)
	c1 := 0.091 * powers(re, -0.25)
	c3 := 0.35 + 0.65*math.Exp(-0.17*b.FinHeight()/b.Gap())
	c5 := 0.7 + (0.70-0.8*weiermanRows(b.Rows))*math.Exp(-b.RowPitch/b.TransversePitch)
	j := c1 * c3 * c5 * math.Sqrt(b.FinOD/b.OD) * powers(f.temperatureRatio(), 0.25)
	h := j * g * f.HeatCapacity * powers(f.Prandtl(), -2*third)
	return Film{Coefficient: h, Nusselt: h * b.OD / f.Conductivity, Reynolds: re}
}

// weierman1976 is Weierman1976 in the list.
var weierman1976 = Method[Film]{
	ID: "weierman_1976", FromMemory: true,
	Formula: figure.Formula{Result: "Nu", Expression: "j Re Pr^(1/3)", Source: "source.weierman_1976", Valid: "valid.weierman_1976"},
	Compute: Weierman1976,
	Args: func(_ Bank, f Flow, a Film) []figure.Arg {
		j := a.Nusselt / (a.Reynolds * math.Cbrt(f.Prandtl()))
		return []figure.Arg{arg("j", units.Factor, j), reynolds(a), prandtl(&f)}
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
func Weierman1976Drop(b Bank, f Flow) Drop {
	g, re := throat(&b, &f)
	c2 := 0.075 + 1.85*powers(re, -0.3)
	c4 := 0.11 * powers(0.05*b.TransversePitch/b.OD, -0.7*powers(b.FinHeight()/b.Gap(), 0.2))
	few, pitches := weiermanRows(b.Rows), b.RowPitch/b.TransversePitch
	c6 := 1.1 + (1.8-2.1*few)*math.Exp(-2*pitches) - (0.7-0.8*few)*math.Exp(-0.6*pitches)
	friction := c2 * c4 * c6 * math.Sqrt(b.FinOD/b.OD) * powers(f.temperatureRatio(), -0.25)
	return fanning(&b, &f, friction, g, re)
}

// weierman1976Drop is Weierman1976Drop in the list.
var weierman1976Drop = Method[Drop]{
	ID: "weierman_1976_drop", FromMemory: true,
	Formula: figure.Formula{Result: "Δp", Expression: "4 f N_r G_m² / (2 ρ)", Source: "source.weierman_1976_drop", Valid: "valid.weierman_1976_drop"},
	Compute: Weierman1976Drop,
	Args:    frictionArgs,
	Limits:  weiermanLimits,
}

func weiermanLimits(to []figure.Limit, b Bank, _ Flow) []figure.Limit {
	return append(to,
		staggeredOnly(&b),
		countLimit(&b, 1, 7).Printed(1/inch),
		thicknessLimit(&b, 0.9e-3, 2.8e-3).Printed(1e-4))
}
