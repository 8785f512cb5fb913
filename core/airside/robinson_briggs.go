package airside

import "finwright/core/figure"

// RobinsonBriggs1966 returns the pressure drop [Pa] of staggered banks of high fins.
//
//	dp = 4 f N G^2/(2 rho);  f = 9.465 Re^-0.316 (PT/d)^-0.927 (PT/PD)^0.515
//
// Books that print 18.93 use dp = f N G^2/rho, which is the same.
// Valid: 2000 <= Re <= 50 000; d 18.6 to 40.9, hf 10.5 to 14.9, t 0.4 to 0.6, fin
// pitch 2.31 to 2.82, PT 42.8 to 114 mm; geometry from memory.
// Source: Robinson and Briggs, Chem. Eng. Prog. Symp. Ser. 62 no. 64 (1966) 177, from
// memory; constants as Thulukkanam, Heat Exchanger Design Handbook, 2nd ed. (2013),
// section 4.5.1 has them, read in an open program that cites it.
func RobinsonBriggs1966(x *Crossing) Drop {
	friction := 9.465 * x.powers(-0.316, 0, x.TransversePitch/x.OD, -0.927, x.TransversePitch/x.DiagonalPitch(), 0.515)
	return fanning(x, friction)
}

// robinsonBriggs1966 is RobinsonBriggs1966 in the list.
var robinsonBriggs1966 = Method[Drop]{
	ID:      "robinson_briggs_1966",
	Formula: figure.Formula{Result: "Δp", Expression: "4 f N_r G_m² / (2 ρ)", Source: "source.robinson_briggs_1966", Valid: "valid.robinson_briggs_1966"},
	Compute: RobinsonBriggs1966,
	Args:    frictionArgs,
	Limits:  robinsonBriggsLimits,
}

func robinsonBriggsLimits(to []figure.Limit, x *Crossing) []figure.Limit {
	return append(to,
		reynoldsLimit(x, 2e3, 5e4),
		staggeredOnly(x),
		odLimit(x, 18.6e-3, 40.9e-3).Printed(1e-4),
		heightLimit(x, 10.5e-3, 14.9e-3).Printed(1e-4),
		thicknessLimit(x, 0.4e-3, 0.6e-3).Printed(1e-4),
		pitchLimit(x, 2.31e-3, 2.82e-3).Printed(1e-5),
		transverseLimit(x, 42.8e-3, 114e-3).Printed(1e-4))
}
