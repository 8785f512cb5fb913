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
	Tubes     Space = "tubes"     // how many there are, at their pitch: rows and tubes in a row follow one another
	Depth     Space = "depth"     // along the stream, with the clearance: the rows follow, in whole rows
)

// AirHold is what the gas outside keeps.
type AirHold string

// Air holds.
const (
	HoldVelocity AirHold = "velocity"  // at the face
	HoldMass     AirHold = "mass_flow" // through the bank
	HoldDrop     AirHold = "drop"      // of pressure in the bank, as it is judged
	HoldPower    AirHold = "fan_power"
)

// ProcessHold is what the stream in the tubes keeps, beside its inlet. Condensing steam keeps that alone.
type ProcessHold string

// Process holds.
const (
	HoldInlet ProcessHold = "inlet"  // and the flow
	HoldEnds  ProcessHold = "outlet" // the flow follows
	HoldDuty  ProcessHold = "duty"   // the flow follows
)

// Usual is the hold of space or air that goes with the kind of job; it is found when a design is read.
const Usual = "usual"

// Holds are what stands still while curves and answers vary something else.
type Holds struct {
	Space   Space
	Air     AirHold
	Process ProcessHold
}

// For returns the holds with the usual ones of a kind of job in place: of a new bank face, clearance and mass flow; of one that
// stands tubes, pitch and drop.
//
// Valid: any holds.
// Source: what is given in each kind of job; common practice, no source.
func (h Holds) For(retube bool) Holds {
	space, air := Face, HoldMass
	if retube {
		space, air = Tubes, HoldDrop
	}
	if h.Space == Usual {
		h.Space = space
	}
	if h.Air == Usual {
		h.Air = air
	}
	return h
}

// Range of face velocities [m/s] in which one is looked for.
const (
	LeastVelocity = 0.2
	MostVelocity  = 30
)

// Range of flows inside [kg/s] in which one is looked for.
const (
	LeastFlow = 0.001
	MostFlow  = 5000
)

// Kept are the amounts that a design holds.
type Kept struct {
	holds     Holds
	clearance units.Length // between fin tips
	pitch     units.Length
	width     float64 // [m] of the face
	depth     float64 // [m] over the fins
	tubes     int
	flow      float64 // [m3/s] that pass the face, in the state in which its velocity is stated
	velocity  float64 // [m/s] at the face
	inside    float64 // [kg/s]
	drop      float64 // [Pa]
	power     float64 // [W] of the fan
	inlet     float64 // [kg/m3] of the gas, and behind the bank
	outlet    float64
	out       float64 // [C] of the stream inside
	duty      float64 // [W]
}

// Keep takes what is held from a design, before anything is varied: lengths [m], flow [m3/s], drop [Pa], power [W], outlet [C] and
// duty [W]. near is the bank as rated; what cannot be held, since the bank has none, gives way to velocity, and to flow and inlet.
//
// Valid: a checked Input; near may be nil where it could not be rated.
// Source: plane geometry; the answers of the bank.
func (in *Input) Keep(near *Thermal) Kept {
	pitch := in.TubePitch()
	k := Kept{
		holds: in.Holds, clearance: pitch - in.Tube.FinOD(), pitch: pitch, width: float64(pitch) * float64(in.Bank.TubesPerRow),
		depth: in.depth(), tubes: in.Bank.Rows * in.Bank.TubesPerRow,
		flow: in.Air.Velocity * in.face(), velocity: in.Air.Velocity, inside: in.Process.Flow,
	}
	rated := near != nil && near.Overall.OnBare > 0
	switch {
	case k.holds.Air != HoldDrop && k.holds.Air != HoldPower:
	case !rated || !near.HasDrop():
		k.holds.Air = HoldVelocity
	default:
		d := near.Draught(in)
		k.drop, k.power, k.inlet, k.outlet = in.DropJudged(near), d.Power, d.Inlet, d.Outlet
		if k.holds.Air == HoldPower && k.power <= 0 {
			k.holds.Air = HoldVelocity
		}
	}
	if !rated || in.Process.Fluid == Steam {
		k.holds.Process = HoldInlet
		return k
	}
	k.out, k.duty = near.Duty.ProcessOut, math.Abs(near.Duty.Heat)
	if k.duty == 0 {
		k.holds.Process = HoldInlet
	}
	return k
}

// Holds are what is held in truth, where something of what is asked cannot be.
func (k *Kept) Holds() Holds { return k.holds }

// Room is what follows from entries by geometry and the gas alone: area of the face [m2], tube pitch, gap between fin tips and depth over
// the fins [m], flow of the gas [kg/s]. ok is false where the gas is beyond its properties.
//
// Valid: a checked Input.
// Source: plane geometry; the density of the gas.
func (in *Input) Room() (r Room, ok bool) {
	g, err := in.gas()
	if err != nil {
		return r, false
	}
	face, pitch := in.face(), float64(in.TubePitch())
	return Room{face, pitch, pitch - float64(in.Tube.FinOD()), in.depth(), g.flux(&in.Air) * face}, true
}

// Room is how much of it a bank takes, and gives the gas.
type Room struct{ Face, Pitch, Clearance, Depth, Gas float64 }

// face returns the area of the face [m2].
func (in *Input) face() float64 {
	return float64(in.TubePitch()) * float64(in.Bank.TubesPerRow) * float64(in.Tube.FinnedLength())
}

// depth returns how deep the bank is over its fins [m].
func (in *Input) depth() float64 {
	return float64(in.Bank.Rows-1)*float64(in.RowPitch()) + float64(in.Tube.FinOD())
}

// Follow lets a design in which one entry has been varied follow what is held, by pitch [m], tubes, rows and velocity [m/s]; the
// entry itself is left alone. It must have come from the design that k is of. A drop, a fan's power and the ends of the stream
// inside take a rating, see settling.following: here velocity and flow go back to where they were.
//
// Valid: a tube pitch that stays positive.
// Source: plane geometry; tubes and rows are rounded to whole ones.
func (k *Kept) Follow(in *Input, varied string) {
	if varied != "tube_pitch" && varied != "tip_clearance" {
		switch k.holds.Space {
		case Pitch, Tubes:
			in.Bank.TubePitch = k.pitch
		case Clearance, Face, Depth:
			in.Bank.TubePitch = in.Tube.FinOD() + k.clearance
		}
	}
	switch {
	case k.holds.Space == Face && varied != "tubes_per_row":
		in.Bank.TubesPerRow = whole(k.width / float64(in.TubePitch()))
	case k.holds.Space == Depth && varied != "rows":
		in.Bank.Rows = whole((k.depth-float64(in.Tube.FinOD()))/float64(in.RowPitch()) + 1)
	case k.holds.Space == Tubes && varied == "rows":
		in.Bank.TubesPerRow = whole(float64(k.tubes) / float64(in.Bank.Rows))
	case k.holds.Space == Tubes && varied == "tubes_per_row":
		in.Bank.Rows = whole(float64(k.tubes) / float64(in.Bank.TubesPerRow))
	}
	switch {
	case varied == "face_velocity":
	case k.holds.Air == HoldMass:
		in.Air.Velocity = k.flow / in.face()
	case k.holds.Air == HoldDrop, k.holds.Air == HoldPower:
		in.Air.Velocity = k.velocity
	}
	if k.finds(varied) {
		in.Process.Flow = k.inside
	}
}

// finds reports whether the flow inside has to be found while an entry is varied.
func (k *Kept) finds(varied string) bool {
	return (k.holds.Process == HoldEnds || k.holds.Process == HoldDuty) && varied != "inside_flow"
}

// whole rounds to a whole number of tubes or rows, of which there is one at least.
func whole(x float64) int { return max(1, int(math.Round(x))) }
