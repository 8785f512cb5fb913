package rating

import "math"

// Filled is how many whole tubes and rows go into a box, for how many there would be room, and what they leave unused of it [m].
type Filled struct {
	Tubes, Rows     int
	TubesOf, RowsOf float64
	Beside, Behind  float64
}

// Fill counts how many tubes of a design, at its pitches, go into width and depth [m] of the bank that k is of. It leaves the design
// alone. A count is nought where not one goes in.
//
// Valid: pitches that are positive.
// Source: plane geometry; a box takes no part of a tube, so that counts are rounded down. What fits but for the noise of a
// conversion fits.
func (k *Kept) Fill(in *Input) Filled {
	pitch, behind, over := float64(in.TubePitch()), float64(in.RowPitch()), float64(in.Tube.FinOD())
	f := Filled{TubesOf: k.width / pitch, RowsOf: max(0, (k.depth-over)/behind+1)}
	f.Tubes, f.Rows = wholeIn(f.TubesOf), wholeIn(f.RowsOf)
	f.Beside = max(0, k.width-float64(f.Tubes)*pitch)
	f.Behind = max(0, k.depth-over-float64(f.Rows-1)*behind)
	return f
}

// wholeIn rounds down, but for noise.
func wholeIn(x float64) int { return int(math.Floor(x * (1 + noise))) }

// noise [-] of sizes that were converted from one system to the other.
const noise = 1e-9

// Width returns the room [m] of the bank that k is of across the stream: a pitch for each tube.
//
// Valid: any bank.
// Source: plane geometry.
func (k *Kept) Width() float64 { return k.width }

// Depth returns its room [m] along the stream, over the fins.
//
// Valid: any bank.
// Source: plane geometry.
func (k *Kept) Depth() float64 { return k.depth }

// Hold lets a design whose geometry is set follow what k holds of gas and stream: the face velocity [m/s] and the flow inside [kg/s]
// are found at which it does. ok is false where none between the bounds of both does; hindered is what keeps a bank that was asked from
// an answer.
//
// Valid: a checked Input of the design that k is of, or of another for the same streams.
// Source: as following.
func (k *Kept) Hold(in *Input) (ok bool, hindered *Hindrance) {
	var s settling
	_, ok, hindered = s.following(k, in, "", cold(in), fine)
	return ok, hindered
}
