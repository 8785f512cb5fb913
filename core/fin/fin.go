// Package fin computes how well an annular fin is used: its efficiency, the
// temperature of its tip and the heat that it carries.
//
// Everything is bare SI float64. The model is one-dimensional radial conduction
// with a constant film coefficient and conductivity, a perfect bond at the root
// and no conduction round the helix. Every efficiency names its area: Result.Area.
package fin

import "math"

// Profile is the shape of the fin's thickness over the radius.
type Profile int

const (
	// Uniform is a fin of constant thickness.
	Uniform Profile = iota
	// RolledTaper is a strip thinned by winding: thickness times radius is
	// constant, so that the tip thickness follows from the diameters.
	RolledTaper
	// LinearTaper falls in a straight line from root to tip thickness; a tip
	// thickness of zero is a knife edge.
	LinearTaper
)

// Tip says what leaves the outer edge of the fin.
type Tip int

const (
	// Adiabatic lets nothing leave the edge; efficiency is on the two faces. A
	// caller who counts the edge in the fin area applies the same efficiency to
	// it: right for thin tips, and the usual practice.
	Adiabatic Tip = iota
	// Convective gives the edge the same film coefficient as the faces;
	// efficiency is on the two faces and the edge.
	Convective
)

// Fin is one annular disc.
//
// Valid: 0 < RootRadius < TipRadius; RootThickness > 0; TipThickness >= 0, read
// only for LinearTaper; Conductivity > 0. Solve panics on anything else.
type Fin struct {
	Profile       Profile
	Tip           Tip
	RootRadius    float64 // [m]
	TipRadius     float64 // [m]
	RootThickness float64 // [m]
	TipThickness  float64 // [m] LinearTaper only
	Conductivity  float64 // [W/(m K)]
}

// Height returns the radial height of the fin [m].
//
// Valid: TipRadius > RootRadius.
// Source: plane geometry.
func (f Fin) Height() float64 { return f.TipRadius - f.RootRadius }

// ThicknessAt returns the thickness [m] at radius r [m].
//
// Valid: RootRadius <= r <= TipRadius.
// Source: rolled taper: the strip keeps its volume and its neutral line lies at
// the root, so that t r is constant; common practice in the trade, no source.
func (f Fin) ThicknessAt(r float64) float64 {
	switch f.Profile {
	case RolledTaper:
		return f.RootThickness * f.RootRadius / r
	case LinearTaper:
		return f.TipThickness + f.slope()*(f.TipRadius-r)
	default:
		return f.RootThickness
	}
}

// slope returns how fast a linear taper thickens towards the root [-].
func (f Fin) slope() float64 { return (f.RootThickness - f.TipThickness) / f.Height() }

// area returns the surface [m2] that the efficiency refers to: the two faces,
// projected on the disc's plane, and the edge if heat leaves it.
func (f Fin) area() float64 {
	a := 2 * math.Pi * f.Height() * (f.TipRadius + f.RootRadius)
	if f.Tip == Convective {
		a += 2 * math.Pi * f.TipRadius * f.ThicknessAt(f.TipRadius)
	}
	return a
}

// wellFormed reports whether every dimension is inside the documented range.
func (f Fin) wellFormed() bool {
	return f.RootRadius > 0 && f.TipRadius > f.RootRadius && f.RootThickness > 0 && f.Conductivity > 0 &&
		(f.Profile != LinearTaper || f.TipThickness >= 0)
}
