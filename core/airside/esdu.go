package airside

import "finwright/core/figure"

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
	if f.WallPrandtl > 0 {
		nu *= powers(pr/f.WallPrandtl, 0.26)
	}
	return film(&b, &f, nu, re)
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
	sigma := b.FreeRatio()
	row, entry := kf*head, (1+sigma*sigma)*head
	return Drop{Total: entry + row*float64(b.Rows), PerRow: row, Entry: entry, Friction: kf, Reynolds: re}
}

func esduLimits(b Bank, f Flow) []figure.Limit {
	return []figure.Limit{
		reynoldsLimit(&b, &f, 5e3, 5e4),
		staggeredOnly(&b),
		countLimit(&b, 4, 11),
		odLimit(&b, 0.375*inch, 2*inch),
		heightLimit(&b, inch/3, 0.625*inch),
		diameterRatioLimit(&b, 1.2, 2.4),
	}
}
