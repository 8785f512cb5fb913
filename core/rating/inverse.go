package rating

import (
	"math"

	"finwright/core/airside"
	"finwright/core/exchanger"
	"finwright/core/message"
	"finwright/core/units"
)

// mostTubes bounds the search for tubes in a row.
const mostTubes = 500

// TubesFor returns how many tubes in a row carry a duty [W], or why none do; hindered is what keeps the last bank asked
// from an answer. near is the bank as rated.
//
// Valid: duty > 0; up to 500 tubes in a row.
// Source: exchanger.TubesForDuty, along what is held; a duty that is held is what the question varies.
func (in *Input) TubesFor(duty float64, near *Thermal) (n int, why message.Message, hindered *Hindrance) {
	bank := in.countedBy("tubes_per_row", near)
	search := func(duty float64, most int, heat func(n int) (float64, bool)) (int, message.Message, bool) {
		return exchanger.TubesForDuty(duty, bank.guess(duty), most, heat)
	}
	return bank.least(duty, mostTubes, search, func(at *Input, n int) bool {
		at.Bank.TubesPerRow = n
		return true
	})
}

// mostRows bounds the search for rows.
const mostRows = 30

// RowsFor returns how many rows of as many tubes carry a duty [W], or why none do; hindered is as of TubesFor. near is the bank
// as rated.
//
// Valid: duty > 0; up to 30 rows, and at least as many as there are passes.
// Source: exchanger.RowsForDuty, as TubesFor.
func (in *Input) RowsFor(duty float64, near *Thermal) (n int, why message.Message, hindered *Hindrance) {
	bank := in.countedBy("rows", near)
	return bank.least(duty, mostRows, exchanger.RowsForDuty, func(at *Input, n int) bool {
		at.Bank.Rows = n
		return n >= at.Bank.Passes
	})
}

// counted is a bank of which one number is varied, to carry a duty.
type counted struct {
	in     *Input
	near   *Thermal
	kept   Kept
	varied string
}

func (in *Input) countedBy(varied string, near *Thermal) counted {
	b := counted{in, near, in.Keep(near), varied}
	if b.kept.holds.Process == HoldDuty {
		b.kept.holds.Process = HoldInlet
	}
	return b
}

// search finds the least number whose duty is enough, as exchanger.TubesForDuty does.
type search func(duty float64, most int, heat func(n int) (watts float64, ok bool)) (n int, absent message.Message, answered bool)

// guess is about how many tubes in a row a duty [W] takes.
func (b *counted) guess(duty float64) int {
	if b.near == nil || b.near.Duty.Heat == 0 {
		return 1
	}
	return int(min(float64(b.in.Bank.TubesPerRow)*duty/math.Abs(b.near.Duty.Heat), mostTubes))
}

// least returns the least number that carries a duty [W]; with makes the bank of a number, and says whether there is one.
func (b *counted) least(duty float64, most int, search search, with func(at *Input, n int) bool) (n int, why message.Message, hindered *Hindrance) {
	if b.kept.holds.Space == Tubes {
		return 0, message.New("absent.tubes_held"), nil
	}
	var s settling
	n, why, answered := search(duty, most, func(n int) (float64, bool) {
		at := *b.in
		if !with(&at, n) {
			return 0, true
		}
		b.kept.Follow(&at, b.varied)
		var t Thermal
		var ok bool
		t, ok, hindered = s.following(&b.kept, &at, b.varied, b.near.state, coarse)
		return math.Abs(t.Duty.Heat), ok
	})
	if answered {
		hindered = nil
	}
	return n, why, hindered
}

// Lengths that are looked for [m]: up to the longest, to what a saw keeps.
const (
	LongestTube = 30
	CutTo       = 1e-3
)

// LengthFor returns the least length of tube [m], in whole millimetres, at which a bank carries a duty [W] and keeps what kept holds; found is
// false where none does. near is the bank as rated.
//
// Valid: duty > 0; lengths that leave fins on the tube, up to 30 m.
// Source: exchanger.TubesForDuty, by millimetres: more length carries no less of one mass flow of gas, as more tubes in a row do not.
func (in *Input) LengthFor(duty float64, kept *Kept, near *Thermal) (long float64, found bool) {
	if near.Duty.Heat == 0 {
		return 0, false
	}
	var s settling
	guess := int(min(float64(in.Tube.Length)*duty/math.Abs(near.Duty.Heat), LongestTube) / CutTo)
	n, _, _ := exchanger.TubesForDuty(duty, guess, int(LongestTube/CutTo), func(n int) (float64, bool) {
		at := *in
		if at.Tube.Length = units.Length(float64(n) * CutTo); at.Tube.FinnedLength() <= 0 {
			return 0, false
		}
		kept.Follow(&at, "tube_length")
		t, ok, _ := s.following(kept, &at, "tube_length", near.state, fine)
		return math.Abs(t.Duty.Heat), ok
	})
	return float64(n) * CutTo, n > 0
}

// VelocityFor returns the face velocity [m/s] between low and high at which the bank has a pressure drop [Pa], the larger
// where the root is counted two ways, or why none has; hindered is what keeps faster or slower air from an answer. near is the bank as rated.
//
// Valid: drop > 0 and a bank that has one: see airside.Pair.
// Source: exchanger.FaceVelocity, along what the stream inside holds.
func (in *Input) VelocityFor(drop, low, high float64, near *Thermal) (v float64, why message.Message, hindered *Hindrance) {
	var s settling
	kept := in.Keep(near)
	v, why, answered := exchanger.FaceVelocity(drop, low, in.Air.Velocity, high, func(v float64) (float64, bool) {
		at := *in
		at.Air.Velocity = v
		kept.Follow(&at, "face_velocity")
		t, ok, cannot := s.following(&kept, &at, "face_velocity", near.state, coarse)
		if !ok {
			hindered = cannot
			return 0, false
		}
		t.UsedDrop.Answer = airside.DropMethods[t.Drop].Compute(s.cross(&t))
		return at.DropJudged(&t), true
	})
	if answered {
		hindered = nil
	}
	return v, why, hindered
}
