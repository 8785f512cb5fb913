package making

import (
	"math"

	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// Lifting is how a crate stands and hangs. It is an estimate: whoever rates gear weighs the load first.
type Lifting struct {
	Bearers  int          // under the load, evenly from end to end
	Spacing  units.Length // of the bearers
	Slings   Interval     // from each end of the crate
	Balance  units.Length // centre of gravity of the tubes, from their end A
	Spreader bool         // the crate is so long that it hangs from a beam, on upright slings
	Leg      units.Length // the shortest that two slings from one hook may be; 0 with a spreader
	PerLeg   units.Mass   // that each of two slings carries
}

// Bounds of lifting.
//
// Source: common practice from memory and engineering judgement: bearers every 1 to 1.5 m, slings not flatter than 60 degrees from upright,
// a spreader for what is longer than 6 m.
const (
	BearersApart   units.Length = 1.2
	Flattest                    = math.Pi / 3 // [rad] of a sling from upright
	spreaderBeyond units.Length = 6
)

// lift returns how a crate of a length [m] and gross mass [kg] is borne. A sling at an angle b from upright carries 1 / cos b of its share.
//
// Valid: a crate longer than nothing.
// Source: statics of two slings alike, on a load that balances between them.
func lift(k *shop.Crate, t *tube.Tube, length units.Length, gross units.Mass) Lifting {
	l := Lifting{
		Bearers: 1 + int(math.Ceil(float64(length/BearersApart)-shop.Slack)),
		Slings:  Interval{length * units.Length(k.Slings.Low), length * units.Length(k.Slings.High)},
		Balance: t.Balance(), Spreader: length > spreaderBeyond, PerLeg: gross / 2,
	}
	l.Spacing = length / units.Length(l.Bearers-1)
	if !l.Spreader {
		apart := float64(length - 2*l.Slings.From)
		l.Leg = units.Length(apart / 2 / math.Sin(Flattest))
		l.PerLeg /= units.Mass(math.Cos(Flattest))
	}
	return l
}
