package airside

import (
	"finwright/core/figure"
	"finwright/core/units"
)

// Schmidt1963 returns the film coefficient [W/(m2 K)] of staggered and in-line banks.
//
//	Nu = C Re^0.625 AR^-0.375 Pr^(1/3);  C staggered 0.45, in line 0.30
//
// Valid: 1e3 <= Re <= 4e4, 5 <= AR <= 12; from memory. The number of rows is not part of it.
// Source: Schmidt, Kältetechnik 15 (1963) 98 and 370, from memory.
func Schmidt1963(x *Crossing) Film {
	nu := schmidtLayout(x.Layout) * x.powers(0.625, third, x.AreaRatio, -0.375)
	return film(x, nu)
}

// schmidt1963 is Schmidt1963 in the list.
var schmidt1963 = Method[Film]{
	ID: "schmidt_1963", FromMemory: true,
	Formula: figure.Formula{Result: "Nu", Expression: "C Re^0.625 AR^−0.375 Pr^(1/3)", Source: "source.schmidt_1963", Valid: "valid.schmidt_1963"},
	Compute: Schmidt1963,
	Args: func(x *Crossing, a Film) []figure.Arg {
		return []figure.Arg{arg("C", units.Factor, schmidtLayout(x.Layout)), reynolds(a), arg("AR", units.Factor, x.AreaRatio), prandtl(x)}
	},
	Limits: func(to []figure.Limit, x *Crossing) []figure.Limit {
		return append(to, reynoldsLimit(x, 1e3, 4e4), number("area_ratio", x.AreaRatio, 5, 12).Printed(1))
	},
}

// schmidtLayout returns C [-].
func schmidtLayout(layout Layout) float64 {
	if layout == InLine {
		return 0.30
	}
	return 0.45
}
