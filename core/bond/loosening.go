package bond

import "math"

// windingTemperature is the temperature at which strip is wound [C].
const windingTemperature = 20

// DefaultStrain is the elastic strain [-] left in soft strip after winding.
//
// Source: engineering judgement, editable: 0.4e-3 at the yield of soft aluminium (30 MPa) to
// 1.45e-3 when it is hardened by winding (100 MPa), both over 69 GPa.
const DefaultStrain = 1.0e-3

// Winding is a tension-wound joint. The model is of first order and its answers
// are an order of magnitude: it leaves out creep, cycling, the helix and the
// stiffness of the tube.
//
// Valid: fin types with tube.Fixing.Tension.
// Source: own derivation, engineering judgement; the mechanism is that of Gardner & Carnavos,
// J. Heat Transfer 82 (1960) 279, abstract read.
type Winding struct {
	OD            float64 // [m] tube outside diameter
	Strain        float64 // [-] elastic strain of the fin at its root: winding stress over modulus
	FinExpansion  float64 // [1/K] mean
	TubeExpansion float64 // [1/K] mean
	Metallic      float64 // [m2 K/W] resistance while closed, on the bare area
}

// Opening returns the strain [-] by which the fin's root has outgrown the tube;
// not above zero while winding strain is left.
//
//	e = af (Tf - 20) - at (Tt - 20) - e0
//
// fin and tube are metal temperatures [C] at the joint.
// Valid: order of magnitude.
// Source: own derivation, see Winding.
func (w Winding) Opening(fin, tube float64) float64 {
	return w.FinExpansion*(fin-windingTemperature) - w.TubeExpansion*(tube-windingTemperature) - w.Strain
}

// LossTemperature returns the temperature [C] of the joint, fin and tube alike,
// above which contact is lost; ok is false if the tube outgrows the fin, so that heat only tightens it.
//
//	T = 20 + e0/(af - at)
//
// Valid: order of magnitude.
// Source: own derivation, see Winding.
func (w Winding) LossTemperature() (celsius float64, ok bool) {
	mismatch := w.FinExpansion - w.TubeExpansion
	if mismatch <= 0 {
		return math.Inf(1), false
	}
	return windingTemperature + w.Strain/mismatch, true
}

// Gap returns the radial gap [m] that has opened; zero while in contact.
//
//	g = e d/2
//
// fin and tube are metal temperatures [C] at the joint.
// Valid: order of magnitude.
// Source: own derivation, see Winding.
func (w Winding) Gap(fin, tube float64) float64 {
	return max(0, w.Opening(fin, tube)) * w.OD / 2
}

// Resistance returns the joint's resistance [m2 K/W] on the bare area.
//
//	R = g/k_air + metallic
//
// fin and tube are metal temperatures [C] at the joint; air is the conductivity
// [W/(m K)] of the air in the gap.
// Valid: order of magnitude; air > 0.
// Source: own derivation, see Winding.
func (w Winding) Resistance(fin, tube, air float64) float64 {
	return w.Gap(fin, tube)/air + w.Metallic
}
