package airside

import (
	"finwright/core/figure"
	"finwright/core/units"
)

// Arguments under the symbols that the formulas share.

func arg(symbol string, k units.Kind, si float64) figure.Arg {
	return figure.Arg{Symbol: symbol, Kind: k, SI: si}
}

func reynolds(a Film) figure.Arg     { return arg("Re", units.Count, a.Reynolds) }
func prandtl(x *Crossing) figure.Arg { return arg("Pr", units.Factor, x.Prandtl()) }
func gap(x *Crossing) figure.Arg     { return arg("s", units.Gap, x.Gap()) }
func height(x *Crossing) figure.Arg  { return arg("h_f", units.Height, x.FinHeight()) }

// frictionArgs are the arguments of a pressure drop that friction alone makes.
func frictionArgs(x *Crossing, a Drop) []figure.Arg {
	return []figure.Arg{
		arg("f", units.Factor, a.Friction), arg("N_r", units.Count, float64(x.Rows)), arg("G_m", units.MassFlux, x.MassVelocity), arg("ρ", units.Dense, x.Density),
	}
}
