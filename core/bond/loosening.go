package bond

import (
	"math"

	"finwright/core/material"
	"finwright/core/numeric"
	"finwright/core/units"
)

// windingTemperature is the temperature at which strip is wound [C].
const windingTemperature = 20

// Elastic strains [-] left in strip after winding.
//
// Source: engineering judgement, editable: from the yield of soft aluminium (30 MPa) to where winding hardens it (100 MPa), over 69 GPa.
const (
	SoftStrain    = 0.4e-3
	DefaultStrain = 1.0e-3
	HardStrain    = 1.45e-3
)

// Winding is a tension-wound joint. The model is of first order and its answers
// are an order of magnitude: it leaves out creep, cycling, the helix and the
// stiffness of the tube. The tube is taken as cold as the fin's root, and the gap as the same all round:
// both are the worst case.
//
// Valid: fin types with tube.Fixing.Tension.
// Source: own derivation, engineering judgement; the mechanism is that of Gardner & Carnavos,
// J. Heat Transfer 82 (1960) 279, abstract read.
type Winding struct {
	OD       float64 // [m] tube outside diameter
	Strain   float64 // [-] elastic strain of the fin at its root: winding stress over modulus
	Fin      *material.Metal
	Tube     *material.Metal
	Metallic float64 // [m2 K/W] resistance while closed, on the bare area
}

// Mismatch returns by how much the fin's metal expands more than the tube's [1/K], in the mean from 20 C to a temperature [C].
//
// Valid: as material.Metal.ExpansionTo.
// Source: the metals' own.
func (w *Winding) Mismatch(celsius float64) float64 {
	fin, _ := w.Fin.ExpansionTo(units.Temperature(celsius))
	tube, _ := w.Tube.ExpansionTo(units.Temperature(celsius))
	return float64(fin - tube)
}

// Opening returns the strain [-] by which the fin's root has outgrown the tube at a temperature [C];
// not above zero while winding strain is left.
//
//	e = (af - at) (T - 20) - e0, means from 20 C to T
//
// Valid: order of magnitude.
// Source: own derivation, see Winding.
func (w *Winding) Opening(celsius float64) float64 {
	return w.Mismatch(celsius)*(celsius-windingTemperature) - w.Strain
}

// BeyondUse is a temperature [C] above any at which a fin held by tension is used: a limit beyond it is none.
//
// Source: engineering judgement.
const BeyondUse = 1000

// LossTemperature returns the temperature [C] of the joint, fin and tube alike,
// above which contact is lost; ok is false if heat never opens it.
//
//	T = 20 + e0/(af - at), means from 20 C to T
//
// Valid: order of magnitude.
// Source: own derivation, see Winding.
func (w *Winding) LossTemperature() (celsius float64, ok bool) {
	from := float64(windingTemperature)
	for {
		// From one point of either metal to the next the opening is a smooth curve, beyond the last a straight line.
		to := math.Inf(1)
		for _, c := range [...]*material.Curve{&w.Fin.Expansion, &w.Tube.Expansion} {
			for _, p := range c.Points {
				if at := float64(p.At); at > from {
					to = min(to, at)
				}
			}
		}
		if math.IsInf(to, 1) {
			break
		}
		if w.Opening(to) > 0 {
			t, err := numeric.Root(w.Opening, from, to)
			return t, err == nil
		}
		from = to
	}
	mismatch := w.Mismatch(from)
	if mismatch <= 0 {
		return math.Inf(1), false
	}
	return windingTemperature + w.Strain/mismatch, true
}

// Gap returns the radial gap [m] that has opened at a temperature of the fin's root [C]; zero while in contact.
//
//	g = e d/2
//
// Valid: order of magnitude.
// Source: own derivation, see Winding.
func (w *Winding) Gap(celsius float64) float64 {
	return max(0, w.Opening(celsius)) * w.OD / 2
}

// Resistance returns the joint's resistance [m2 K/W] on the bare area with a gap [m] full of gas of a conductivity [W/(m K)]
// and a jump distance [m].
//
//	R = (g + j g/(g + j))/k + metallic
//
// The jump of the temperature at the two walls counts as j more gap once the gap is wide beside it; it comes in with the gap, as
// the spots in contact part one by one.
//
// Valid: order of magnitude; conductivity > 0, gap and jump not negative.
// Source: own derivation, see Winding.
func (w *Winding) Resistance(gap, conductivity, jump float64) float64 {
	if gap <= 0 {
		return w.Metallic
	}
	return (gap+jump*gap/(gap+jump))/conductivity + w.Metallic
}
