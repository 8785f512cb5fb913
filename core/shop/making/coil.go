package making

import (
	"math"

	"finwright/core/shop"
	"finwright/core/units"
)

// CoilLength returns the length of strip [m] in a coil by its size.
//
//	L = fill pi/4 (OD2 - ID2) W / (w t)
//
// A pancake is as wide as its strip, W = w.
// Valid: width, thickness > 0; traverse-wound coils many strips wide.
// Source: volume of the coil; the usual form pi (OD2 - ID2)/(4 t f) has f = 1/fill.
func CoilLength(k *shop.Coil, width, thickness units.Length) units.Length {
	od, id := float64(k.OD), float64(k.ID)
	section := k.Fill * math.Pi / 4 * (od*od - id*id) / float64(thickness)
	if k.Form == shop.Traverse {
		section *= float64(k.Width / width)
	}
	return units.Length(section)
}

// MassLength returns the length of strip [m] that weighs mass.
//
//	L = m / (w t rho)
//
// Valid: all > 0.
// Source: definition of density.
func MassLength(mass units.Mass, width, thickness units.Length, density units.Density) units.Length {
	return units.Length(float64(mass) / (float64(width) * float64(thickness) * float64(density)))
}

// StripMass returns the mass [kg] of a length of strip.
//
// Valid: any.
// Source: definition of density.
func StripMass(length, width, thickness units.Length, density units.Density) units.Mass {
	return units.Mass(float64(length) * float64(width) * float64(thickness) * float64(density))
}

// FilledCoil is a coil of one strip, filled up to the first of its limits.
type FilledCoil struct {
	Form   shop.CoilForm
	Length units.Length
	Mass   units.Mass
	ByMass bool // the mass limit binds, not the size
	OD     units.Length
	Width  units.Length
	Change units.Duration
}

// FillCoil returns the largest coil of a strip that the line takes, its length in [m] and mass in [kg].
//
// Valid: width, thickness, density > 0.
// Source: CoilLength and MassLength, the lesser.
func FillCoil(k *shop.Coil, width, thickness units.Length, density units.Density) FilledCoil {
	f := FilledCoil{Form: k.Form, Length: CoilLength(k, width, thickness), OD: k.OD, Width: width, Change: k.Change}
	if k.Form == shop.Traverse {
		f.Width = k.Width
	}
	if heavy := MassLength(k.Mass, width, thickness, density); heavy < f.Length {
		f.Length, f.ByMass = heavy, true
	}
	f.Mass = StripMass(f.Length, width, thickness, density)
	return f
}

// Replaces returns how many coils of form other one coil of form f holds [-].
//
// Valid: both of the same strip.
// Source: ratio of lengths.
func (f FilledCoil) Replaces(other FilledCoil) float64 { return float64(f.Length / other.Length) }
