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
func ESDU86022(b Bank, f Flow) Film {
	_, re := throat(&b, &f)
	pr := f.Prandtl()
	nu := 0.242 * esduRows(b.Rows) *
		powers(re, 0.658, b.Gap()/b.FinHeight(), 0.297, b.TransversePitch/b.RowPitch, -0.091, pr, third)
	return film(&b, &f, nu*esduWall(&f), re)
}

// esdu86022 is ESDU86022 in the list.
var esdu86022 = Method[Film]{
	ID:      "esdu_86022",
	Formula: figure.Formula{Result: "Nu", Expression: "0.242 Re^0.658 (s / h_f)^0.297 (P_T / P_L)^−0.091 Pr^(1/3) F_1 F_2", Source: "source.esdu_86022", Valid: "valid.esdu_86022"},
	Compute: ESDU86022,
	Args: func(b Bank, f Flow, a Film) []figure.Arg {
		return []figure.Arg{
			reynolds(a), gap(&b), height(&b), arg("P_T", units.Diameter, b.TransversePitch), arg("P_L", units.Diameter, b.RowPitch), prandtl(&f),
			arg("F_1", units.Factor, esduWall(&f)), arg("F_2", units.Factor, esduRows(b.Rows)),
		}
	},
	Limits: esduLimits,
}

// esduWall returns F1 [-]; 1 where the wall is not known.
func esduWall(f *Flow) float64 {
	if f.WallPrandtl == 0 {
		return 1
	}
	return powers(f.Prandtl()/f.WallPrandtl, 0.26)
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
func ESDU86022Drop(b Bank, f Flow) Drop {
	g, re := throat(&b, &f)
	kf := 4.567 * powers(re, -0.242, b.AreaRatio, 0.504, b.TransversePitch/b.OD, -0.376, b.RowPitch/b.OD, -0.546)
	head := g * g / (2 * f.Density)
	row, entry := kf*head, esduEntry(&b)*head
	return Drop{Total: entry + row*float64(b.Rows), PerRow: row, Entry: entry, Friction: kf, Reynolds: re}
}

// esdu86022Drop is ESDU86022Drop in the list.
var esdu86022Drop = Method[Drop]{
	ID:      "esdu_86022_drop",
	Formula: figure.Formula{Result: "Δp", Expression: "(K_a + N_r f) G_m² / (2 ρ)", Source: "source.esdu_86022_drop", Valid: "valid.esdu_86022_drop"},
	Compute: ESDU86022Drop,
	Args: func(b Bank, f Flow, a Drop) []figure.Arg {
		return append(frictionArgs(b, f, a), arg("K_a", units.Factor, esduEntry(&b)))
	},
	Limits: esduLimits,
}

// esduEntry returns Ka [-].
func esduEntry(b *Bank) float64 {
	sigma := b.FreeRatio()
	return 1 + sigma*sigma
}

func esduLimits(to []figure.Limit, b Bank, f Flow) []figure.Limit {
	return append(to,
		reynoldsLimit(&b, &f, 5e3, 5e4),
		staggeredOnly(&b),
		countLimit(&b, 4, 11).Printed(1/inch),
		odLimit(&b, 0.375*inch, 2*inch),
		heightLimit(&b, inch/3, 0.625*inch),
		diameterRatioLimit(&b, 1.2, 2.4).Printed(0.1))
}
