package airside

import (
	"math"

	"finwright/core/figure"
	"finwright/core/units"
)

// Ganguli1985 returns the film coefficient [W/(m2 K)] of staggered and in-line banks, with
// the row factors of the VDI Heat Atlas.
//
//	Nu = C Re^0.6 AR^-0.15 Pr^(1/3)
//	C staggered 0.38, 3 rows 0.36, 2 rows 0.33, 1 row 0.20; in line 0.22, below 4 rows 0.20
//
// Valid: 1e3 <= Re <= 1e5, 5 <= AR <= 30; stated as good to 10 to 25 %; d 0.44 to 2, hf 0.23
// to 0.75, t 0.010 to 0.022, PT 1.08 to 3.88 in, 7 to 11 fins/in; all from memory.
// Source: Ganguli, Tung and Taborek, AIChE Symp. Ser. 81 no. 245 (1985) 122, with VDI
// Heat Atlas, 2nd ed. (2010), M1; as the open library ht carries it.
func Ganguli1985(x *Crossing) Film {
	nu := ganguliRows(x.Layout, x.Rows) * x.powers(0.6, third, x.AreaRatio, -0.15)
	return film(x, nu)
}

// ganguli1985 is Ganguli1985 in the list.
var ganguli1985 = Method[Film]{
	ID:      "ganguli_1985",
	Formula: figure.Formula{Result: "Nu", Expression: "C Re^0.6 AR^−0.15 Pr^(1/3)", Source: "source.ganguli_1985", Valid: "valid.ganguli_1985"},
	Compute: Ganguli1985,
	Args: func(x *Crossing, a Film) []figure.Arg {
		return []figure.Arg{arg("C", units.Factor, ganguliRows(x.Layout, x.Rows)), reynolds(a), arg("AR", units.Factor, x.AreaRatio), prandtl(x)}
	},
	Limits: ganguliLimits,
}

// ganguliRows returns C [-].
func ganguliRows(layout Layout, rows int) float64 {
	switch {
	case layout == InLine && rows >= 4:
		return 0.22
	case layout == InLine || rows == 1:
		return 0.20
	case rows == 2:
		return 0.33
	case rows == 3:
		return 0.36
	}
	return 0.38
}

func ganguliLimits(to []figure.Limit, x *Crossing) []figure.Limit {
	to = append(to,
		reynoldsLimit(x, 1e3, 1e5),
		number("area_ratio", x.AreaRatio, 5, 30).Printed(1))
	return ganguliTubes(to, x)
}

// ganguliTubes is the range of the tubes behind film and drop.
func ganguliTubes(to []figure.Limit, x *Crossing) []figure.Limit {
	return append(to,
		odLimit(x, 0.44*inch, 2*inch).Printed(0.01*inch),
		heightLimit(x, 0.23*inch, 0.75*inch).Printed(0.01*inch),
		thicknessLimit(x, 0.010*inch, 0.022*inch).Printed(0.001*inch),
		transverseLimit(x, 1.08*inch, 3.88*inch).Printed(0.01*inch),
		countLimit(x, 7, 11).Printed(1/inch))
}

// Ganguli1985Drop returns the pressure drop [Pa] of staggered banks.
//
//	dp = 4 f N G^2/(2 rho);  a = (PT - Df)/d;  Ree = Re s/hf
//	f = [1 + 2 e^(-a/4)/(1 + a)] [0.021 + 27.2/Ree + 0.29 Ree^-0.2]
//
// s is the gap at the root.
// Valid: 1800 <= Re <= 1e5, from memory; tubes as Ganguli1985.
// Source: Ganguli, Tung and Taborek, AIChE Symp. Ser. 81 no. 245 (1985) 122, from memory.
func Ganguli1985Drop(x *Crossing) Drop {
	a := (x.TransversePitch - x.FinOD) / x.OD
	ree := x.Reynolds * x.Gap() / x.FinHeight()
	friction := (1 + 2*math.Exp(-a/4)/(1+a)) * (0.021 + 27.2/ree + 0.29*powers(ree, -0.2))
	return fanning(x, friction)
}

// ganguli1985Drop is Ganguli1985Drop in the list.
var ganguli1985Drop = Method[Drop]{
	ID: "ganguli_1985_drop", FromMemory: true,
	Formula: figure.Formula{Result: "Δp", Expression: "4 f N_r G_m² / (2 ρ)", Source: "source.ganguli_1985_drop", Valid: "valid.ganguli_1985_drop"},
	Compute: Ganguli1985Drop,
	Args:    frictionArgs,
	Limits:  ganguliDropLimits,
}

func ganguliDropLimits(to []figure.Limit, x *Crossing) []figure.Limit {
	return ganguliTubes(append(to, reynoldsLimit(x, 1.8e3, 1e5), staggeredOnly(x)), x)
}
