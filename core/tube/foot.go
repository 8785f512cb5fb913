package tube

import (
	"math"

	"finwright/core/units"
)

// Foot is how a shop cuts strip for a foot.
type Foot struct {
	By    FootRule
	Bend  float64      // [-] of the thickness, from the inside of a tight bend to its neutral fibre
	Knurl units.Length // by which a knurled foot reaches beyond its pitch
	Lap   units.Length // of a lapped foot under its neighbour, where an order states none
}

// FootRule is what the width of strip for a foot goes by.
type FootRule string

// Rules of the width. The first asks nothing of the shop; it may be one builder's.
const (
	FewerFins    FootRule = "fewer_fins"    // a knurled or lapped foot is cut for one fin per inch fewer
	NeutralFibre FootRule = "neutral_fibre" // the foot as it lies on the tube, unbent along its neutral fibre
)

// FootRules lists them.
var FootRules = []FootRule{FewerFins, NeutralFibre}

// developed reports whether the width is that of the foot unbent.
func (t *Tube) developed() bool { return t.Fin.Foot.By == NeutralFibre }

// footWidth returns the width of strip [m] for a foot: what stands and what lies, each up to the bend, and the bend along its
// neutral fibre. By fewer fins, a rule of thumb takes less off for the bend.
//
//	w = (hf - t) + (b - t) + k (pi/2) t; by fewer fins w = b + hf - 3 t + (pi/2) t
//
// Valid: a tight bend, of no radius inside.
// Source: own derivation, the arc of a quarter turn at k t; by fewer fins: common practice, no source.
func (t *Tube) footWidth() units.Length {
	s, flat := t.Fin.Strip, t.FootReach()+t.Fin.Height
	if t.developed() {
		return flat - 2*s + units.Length(t.Fin.Foot.Bend*math.Pi/2)*s
	}
	return flat - 3*s + s*(math.Pi/2)
}
