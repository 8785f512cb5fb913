package exchanger

import "math"

// Bank is tubes in rows across an air stream.
//
// Valid: all lengths and counts positive; EdgePitches 0, 0.5 or 1.
type Bank struct {
	Arrangement
	TubesPerRow     int
	TransversePitch float64 // [m] between tubes of a row
	EdgePitches     float64 // [-] face width beyond one pitch a tube: 0, 0.5 with corbels at the sides, or 1
	FinnedLength    float64 // [m] of each tube in the air
	OD              float64 // [m] of the bare tube
}

// Tubes returns how many tubes the bank has.
func (b Bank) Tubes() int { return b.Rows * b.TubesPerRow }

// FaceWidth returns the width of the face [m]: one pitch a tube and the edge.
//
// Valid: as Bank.
// Source: conventions differ between books by up to one pitch; this one is stated by EdgePitches.
func (b Bank) FaceWidth() float64 {
	return b.TransversePitch * (float64(b.TubesPerRow) + b.EdgePitches)
}

// FaceArea returns the face area [m2], the width times the finned length.
//
// Valid: as Bank.
// Source: plane geometry.
func (b Bank) FaceArea() float64 { return b.FaceWidth() * b.FinnedLength }

// BareArea returns the bare area of all tubes in the air [m2], pi d L each.
//
// Valid: as Bank.
// Source: plane geometry.
func (b Bank) BareArea() float64 {
	return math.Pi * b.OD * b.FinnedLength * float64(b.Tubes())
}

// FanPower returns the shaft or electric power [W] to move a volume flow
// [m3/s] against a static pressure drop [Pa] at an efficiency [-] that covers
// fan, and drive and motor if it is to be electric.
//
// Valid: 0 < efficiency <= 1.
// Source: definition of fan efficiency.
func FanPower(flow, drop, efficiency float64) float64 { return flow * drop / efficiency }
