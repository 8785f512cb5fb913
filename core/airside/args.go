package airside

import (
	"finwright/core/figure"
	"finwright/core/units"
)

// Arguments under the symbols that the formulas share.

func arg(symbol string, k units.Kind, si float64) figure.Arg {
	return figure.Arg{Symbol: symbol, Kind: k, SI: si}
}

func reynolds(a Film) figure.Arg { return arg("Re", units.Count, a.Reynolds) }
func prandtl(f *Flow) figure.Arg { return arg("Pr", units.Factor, f.Prandtl()) }
func gap(b *Bank) figure.Arg     { return arg("s", units.Gap, b.Gap()) }
func height(b *Bank) figure.Arg  { return arg("h_f", units.Height, b.FinHeight()) }

// frictionArgs are the arguments of a pressure drop that friction alone makes.
func frictionArgs(b Bank, f Flow, a Drop) []figure.Arg {
	g, _ := throat(&b, &f)
	return []figure.Arg{
		arg("f", units.Factor, a.Friction), arg("N_r", units.Count, float64(b.Rows)), arg("G_m", units.MassFlux, g), arg("ρ", units.Dense, f.Density),
	}
}
