package rating

import (
	"math"

	"finwright/core/units"
)

// Space is what stands still in the bank while something else is varied.
type Space string

// Spaces.
const (
	AsEntered Space = "entered"   // the tube pitch where it is stated, else the clearance
	Clearance Space = "clearance" // between fin tips
	Pitch     Space = "pitch"     // of the tubes
	Face      Space = "face"      // its width, with the clearance: the tubes in a row follow, in whole tubes
)

// AirHold is what the gas outside keeps.
type AirHold string

// Air holds.
const (
	HoldVelocity AirHold = "velocity"  // at the face
	HoldMass     AirHold = "mass_flow" // through the bank
)

// Holds are what stands still while curves and answers vary something else.
type Holds struct {
	Space Space
	Air   AirHold
}

// Kept are the amounts that a design holds.
type Kept struct {
	holds     Holds
	clearance units.Length // between fin tips
	pitch     units.Length
	width     float64 // [m] of the face
	flow      float64 // [m3/s] that pass it, in the state in which its velocity is stated
}

// Keep takes what is held from a design, before anything is varied: lengths [m] and the flow [m3/s].
//
// Valid: a checked Input.
// Source: plane geometry.
func (in *Input) Keep() Kept {
	pitch := in.TubePitch()
	return Kept{in.Holds, pitch - in.Tube.FinOD(), pitch, float64(pitch) * float64(in.Bank.TubesPerRow), in.Air.Velocity * in.face()}
}

// face returns the area of the face [m2].
func (in *Input) face() float64 {
	return float64(in.TubePitch()) * float64(in.Bank.TubesPerRow) * float64(in.Tube.FinnedLength())
}

// Follow lets a design in which one entry has been varied follow what is held, by pitch [m], tubes and velocity [m/s]; the
// entry itself is left alone. It must have
// come from the design that k is of.
//
// Valid: a tube pitch that stays positive.
// Source: plane geometry; tubes in a row are rounded to whole ones.
func (k *Kept) Follow(in *Input, varied string) {
	if varied != "tube_pitch" && varied != "tip_clearance" {
		switch k.holds.Space {
		case Pitch:
			in.Bank.TubePitch = k.pitch
		case Clearance, Face:
			in.Bank.TubePitch = in.Tube.FinOD() + k.clearance
		}
	}
	if k.holds.Space == Face && varied != "tubes_per_row" {
		in.Bank.TubesPerRow = max(1, int(math.Round(k.width/float64(in.TubePitch()))))
	}
	if k.holds.Air == HoldMass && varied != "face_velocity" {
		in.Air.Velocity = k.flow / in.face()
	}
}
