package airside

import "finwright/core/figure"

// BriggsYoung1963HighFin returns the film coefficient [W/(m2 K)] of staggered banks, from
// the high-finned tubes of the same tests alone.
//
//	Nu = 0.1378 Re^0.718 Pr^(1/3) (s/hf)^0.296
//
// s is the gap at the root.
// Valid: as BriggsYoung1963, and Df/d 1.7 to 2.4.
// Source: Briggs and Young, Chem. Eng. Prog. Symp. Ser. 59 no. 41 (1963) 1; formula
// as Thulukkanam, Heat Exchanger Design Handbook, 2nd ed. (2013), section 4.5.1
// has it, read in an open program that cites it; diameter ratio from memory.
func BriggsYoung1963HighFin(x *Crossing) Film {
	nu := 0.1378 * x.powers(0.718, third, x.Gap()/x.FinHeight(), 0.296)
	return film(x, nu)
}

// briggsYoung1963HighFin is BriggsYoung1963HighFin in the list.
var briggsYoung1963HighFin = Method[Film]{
	ID:      "briggs_young_1963_high_fin",
	Formula: figure.Formula{Result: "Nu", Expression: "0.1378 Re^0.718 Pr^(1/3) (s / h_f)^0.296", Source: "source.briggs_young_1963_high_fin", Valid: "valid.briggs_young_1963_high_fin"},
	Compute: BriggsYoung1963HighFin,
	Args: func(x *Crossing, a Film) []figure.Arg {
		return []figure.Arg{reynolds(a), prandtl(x), gap(x), height(x)}
	},
	Limits: briggsYoungHighFinLimits,
}

func briggsYoungHighFinLimits(to []figure.Limit, x *Crossing) []figure.Limit {
	return append(briggsYoungLimits(to, x), diameterRatioLimit(x, 1.7, 2.4).Printed(0.1))
}
