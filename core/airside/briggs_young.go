package airside

import (
	"math"

	"finwright/core/figure"
	"finwright/core/units"
)

// BriggsYoung1963 returns the film coefficient [W/(m2 K)] of staggered banks of low and
// high fins.
//
//	Nu = 0.134 Re^0.681 Pr^(1/3) (s/hf)^0.2 (s/t)^0.1134
//
// s and t are gap and thickness at the root.
// Valid: 1000 <= Re <= 8000 (also printed 18 000, not confirmed); d 11.13 to 40.89,
// hf 1.42 to 16.57, t 0.33 to 2.02, fin pitch 1.30 to 4.06, PT 24.49 to 111 mm;
// equilateral, six rows or more; standard deviation 5.1 %.
// Source: Briggs and Young, Chem. Eng. Prog. Symp. Ser. 59 no. 41 (1963) 1, as the
// open library ht carries it; row count and layout from memory.
func BriggsYoung1963(x *Crossing) Film {
	s := x.Gap()
	nu := 0.134 * x.powers(0.681, third, s/x.FinHeight(), 0.2, s/x.RootThickness, 0.1134)
	return film(x, nu)
}

// briggsYoung1963 is BriggsYoung1963 in the list.
var briggsYoung1963 = Method[Film]{
	ID:      "briggs_young_1963",
	Formula: figure.Formula{Result: "Nu", Expression: "0.134 Re^0.681 Pr^(1/3) (s / h_f)^0.2 (s / t)^0.1134", Source: "source.briggs_young_1963", Valid: "valid.briggs_young_1963"},
	Compute: BriggsYoung1963,
	Args: func(x *Crossing, a Film) []figure.Arg {
		return []figure.Arg{reynolds(a), prandtl(x), gap(x), height(x), arg("t", units.Thickness, x.RootThickness)}
	},
	Limits: briggsYoungLimits,
}

// briggsYoungLimits is the range of the data behind both forms. Five per cent about the
// equilateral pitch ratio is engineering judgement.
func briggsYoungLimits(to []figure.Limit, x *Crossing) []figure.Limit {
	equilateral := math.Sqrt(3) / 2
	return append(to,
		reynoldsLimit(x, 1000, 8000),
		staggeredOnly(x),
		number("pitch_ratio", x.RowPitch/x.TransversePitch, 0.95*equilateral, 1.05*equilateral),
		rowsLimit(x, 6),
		odLimit(x, 11.13e-3, 40.89e-3).Printed(1e-5),
		heightLimit(x, 1.42e-3, 16.57e-3).Printed(1e-5),
		thicknessLimit(x, 0.33e-3, 2.02e-3).Printed(1e-5),
		pitchLimit(x, 1.30e-3, 4.06e-3).Printed(1e-5),
		transverseLimit(x, 24.49e-3, 111e-3).Printed(1e-5))
}
