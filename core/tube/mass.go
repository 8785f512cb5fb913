package tube

import "finwright/core/units"

// wallOver is how much thicker a wall may be than on average [-], at the heavy side of its tolerance.
//
// Source: ASTM A450/A1016 allow a minimum wall 0/+18 to +22 %, an average wall some 10 % to either side, from memory.
const wallOver = 0.10

// StripOver is how much heavier strip may be than it should, rolled and slit [-].
//
// Source: engineering judgement.
const StripOver = 0.03

// HeaviestWall returns the wall [m] at the heavy side of its tolerance.
//
// Valid: as MeanWall.
// Source: wallOver over the wall as stated, or twice minimumWallExcess, the whole of its tolerance.
func (t *Tube) HeaviestWall() units.Length {
	if t.Basis == MinimumWall {
		return t.Wall * (1 + 2*minimumWallExcess)
	}
	return t.Wall * (1 + wallOver)
}

// HeaviestWeight returns the mass [kg] that one finned tube can have at the heavy side of its tolerances, to lift by.
//
// Valid: as Weight.
// Source: Weight, with HeaviestWall and StripOver.
func (t *Tube) HeaviestWeight() units.Mass {
	heavy := *t
	heavy.Wall, heavy.Basis = t.HeaviestWall(), AverageWall
	return units.Mass(float64(heavy.TubeMass())*float64(t.Length) + (1+StripOver)*float64(t.FinMass())*float64(t.FinnedLength()))
}

// FinsAt returns where the fins of one tube balance [m], from end A.
//
// Valid: as FinnedLength, which is not nought.
// Source: moments of the length between the plain ends, less those of the bare spans.
func (t *Tube) FinsAt() units.Length {
	from, to := t.PlainA, t.Length-t.PlainB
	moment := (to*to - from*from) / 2
	for _, s := range t.Spans {
		moment -= s.Width * s.Centre
	}
	return moment / t.FinnedLength()
}

// Balance returns where one finned tube balances [m], from end A.
//
// Valid: as FinsAt.
// Source: moments of the bare tube and of the fins.
func (t *Tube) Balance() units.Length {
	bare, fins := float64(t.TubeMass())*float64(t.Length), float64(t.FinMass())*float64(t.FinnedLength())
	return units.Length((bare*float64(t.Length)/2 + fins*float64(t.FinsAt())) / (bare + fins))
}
