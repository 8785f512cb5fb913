// Package compare sets designs side by side: what is held is made to hold in each, all are rated by the method of one of them, the
// base, and what differs is told.
package compare

import "finwright/core/rating"

// Held is what stands still while designs are compared. The stream inside keeps its flow and its inlet in each.
type Held string

// What may be held.
const (
	Box     Held = "box"     // width, depth and length, with the clearance and the mass flow of the gas: tubes in a row follow, then rows
	Tubes   Held = "tubes"   // their pitch, number and length, and the pressure drop: the face velocity follows
	Job     Held = "job"     // the duty, with the clearance and the mass flow of the gas: tubes in a row follow, then rows
	Length  Held = "length"  // the duty, tubes in a row, rows, clearance and the mass flow of the gas: the length of the tubes follows
	Fan     Held = "fan"     // as Box, with the fan's power: the face velocity follows too
	Nothing Held = "nothing" // each is as it was entered
)

// Helds lists them in the order in which a page offers them, the usual one first.
var Helds = []Held{Box, Tubes, Job, Length, Fan, Nothing}

// holds is how the bank keeps it.
func (h Held) holds() rating.Holds {
	out := rating.Holds{Space: rating.Clearance, Air: rating.HoldMass, Process: rating.HoldInlet}
	switch h {
	case Tubes:
		out.Space, out.Air = rating.Tubes, rating.HoldDrop
	case Fan:
		out.Air = rating.HoldPower
	}
	return out
}

// fills reports whether as many tubes stand in it as go in.
func (h Held) fills() bool { return h == Box || h == Fan }
