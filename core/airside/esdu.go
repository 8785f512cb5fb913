package airside

import (
	"finwright/core/figure"
	"finwright/core/units"
)

// ESDU86022 returns the film coefficient [W/(m2 K)] of staggered banks of high fins.
//
//	Nu = 0.242 Re^0.658 (s/hf)^0.297 (PT/PL)^-0.091 Pr^(1/3) F1 F2
//	F1 = (Pr/Pr_wall)^0.26;  F2 = 0.76, 0.84, 0.92 for 1, 2, 3 rows, else 1
//
// s is the gap at the root.
// Valid: 5000 <= Re <= 50 000; 4 to 11 fins/in, d 3/8 to 2 in, hf 1/3 to 5/8 in,
// Df/d 1.2 to 2.4.
// Source: ESDU 86022 (1986) as Hewitt, Shires and Bott, Process Heat Transfer
// (1994) have it, carried by the open library ht.
func ESDU86022(x *Crossing) Film {
	nu := 0.242 * esduRows(x.Rows) *
		x.powers(0.658, third, x.Gap()/x.FinHeight(), 0.297, x.TransversePitch/x.RowPitch, -0.091)
	return film(x, nu*esduWall(x))
}

// esdu86022 is ESDU86022 in the list.
var esdu86022 = Method[Film]{
	ID:      "esdu_86022",
	Formula: figure.Formula{Result: "Nu", Expression: "0.242 Re^0.658 (s / h_f)^0.297 (P_T / P_L)^−0.091 Pr^(1/3) F_1 F_2", Source: "source.esdu_86022", Valid: "valid.esdu_86022"},
	Compute: ESDU86022,
	Args: func(x *Crossing, a Film) []figure.Arg {
		return []figure.Arg{
			reynolds(a), gap(x), height(x), arg("P_T", units.Diameter, x.TransversePitch), arg("P_L", units.Diameter, x.RowPitch), prandtl(x),
			arg("F_1", units.Factor, esduWall(x)), arg("F_2", units.Factor, esduRows(x.Rows)),
		}
	},
	Limits: esduLimits,
}

// esduWall returns F1 [-]; 1 where the wall is not known.
func esduWall(x *Crossing) float64 {
	if x.WallPrandtl == 0 {
		return 1
	}
	return powers(x.Prandtl()/x.WallPrandtl, 0.26)
}

// esduRows returns F2 [-], by which few rows do worse than many.
func esduRows(rows int) float64 {
	if rows >= 4 {
		return 1
	}
	return 0.68 + 0.08*float64(rows)
}

// ESDU86022Drop returns the pressure drop [Pa] of staggered banks of high fins.
//
//	dp = (Ka + N Kf) G^2/(2 rho);  Ka = 1 + sigma^2
//	Kf = 4.567 Re^-0.242 AR^0.504 (PT/d)^-0.376 (PL/d)^-0.546
//
// Ka is the loss of entering and leaving the bank. Friction is Kf.
// Valid: as ESDU86022; 72 % of its points lie within 10 %.
// Source: as ESDU86022.
func ESDU86022Drop(x *Crossing) Drop {
	kf := 4.567 * x.powers(-0.242, 0, x.AreaRatio, 0.504, x.TransversePitch/x.OD, -0.376, x.RowPitch/x.OD, -0.546)
	head := x.MassVelocity * x.MassVelocity / (2 * x.Density)
	row, entry := kf*head, esduEntry(x)*head
	return Drop{Total: entry + row*float64(x.Rows), PerRow: row, Entry: entry, Friction: kf, Reynolds: x.Reynolds}
}

// esdu86022Drop is ESDU86022Drop in the list.
var esdu86022Drop = Method[Drop]{
	ID:      "esdu_86022_drop",
	Formula: figure.Formula{Result: "Δp", Expression: "(K_a + N_r f) G_m² / (2 ρ)", Source: "source.esdu_86022_drop", Valid: "valid.esdu_86022_drop"},
	Compute: ESDU86022Drop,
	Args: func(x *Crossing, a Drop) []figure.Arg {
		return append(frictionArgs(x, a), arg("K_a", units.Factor, esduEntry(x)))
	},
	Limits: esduLimits,
}

// esduEntry returns Ka [-].
func esduEntry(x *Crossing) float64 {
	return 1 + x.Free*x.Free
}

func esduLimits(to []figure.Limit, x *Crossing) []figure.Limit {
	return append(to,
		reynoldsLimit(x, 5e3, 5e4),
		staggeredOnly(x),
		countLimit(x, 4, 11).Printed(1/inch),
		odLimit(x, 0.375*inch, 2*inch),
		heightLimit(x, inch/3, 0.625*inch),
		diameterRatioLimit(x, 1.2, 2.4).Printed(0.1))
}
