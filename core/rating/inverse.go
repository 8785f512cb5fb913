package rating

import (
	"math"

	"finwright/core/airside"
	"finwright/core/exchanger"
	"finwright/core/message"
)

// mostTubes bounds the search for tubes in a row.
const mostTubes = 500

// TubesFor returns how many tubes in a row carry a duty [W], or why none do; hindered is what keeps the last bank asked
// from an answer. near is the bank as rated.
//
// Valid: duty > 0; up to 500 tubes in a row.
// Source: exchanger.TubesForDuty.
func (in *Input) TubesFor(duty float64, near *Thermal) (n int, why message.Message, hindered *Hindrance) {
	kept := in.Keep()
	return in.least(duty, mostTubes, near, func(at *Input, n int) bool {
		at.Bank.TubesPerRow = n
		kept.Follow(at, "tubes_per_row")
		return true
	})
}

// mostRows bounds the search for rows.
const mostRows = 30

// RowsFor returns how many rows of as many tubes carry a duty [W], or why none do; hindered is as of TubesFor. near is the bank
// as rated.
//
// Valid: duty > 0; up to 30 rows, and at least as many as there are passes.
// Source: exchanger.TubesForDuty.
func (in *Input) RowsFor(duty float64, near *Thermal) (n int, why message.Message, hindered *Hindrance) {
	return in.least(duty, mostRows, near, func(at *Input, n int) bool {
		at.Bank.Rows = n
		return n >= at.Bank.Passes
	})
}

// least returns the least number that carries a duty [W]; with makes the bank of a number, and says whether there is one.
func (in *Input) least(duty float64, most int, near *Thermal, with func(at *Input, n int) bool) (n int, why message.Message, hindered *Hindrance) {
	var s settling
	n, why, answered := exchanger.TubesForDuty(duty, most, func(n int) (float64, bool) {
		at := *in
		if !with(&at, n) {
			return 0, true
		}
		var t Thermal
		t, hindered = s.from(&at, near.state, coarse)
		return math.Abs(t.Duty.Heat), hindered == nil
	})
	if answered {
		hindered = nil
	}
	return n, why, hindered
}

// VelocityFor returns the face velocity [m/s] between low and high at which the bank has a pressure drop [Pa], the larger
// where the root is counted two ways, or why none has; hindered is what keeps faster or slower air from an answer. near is the bank as rated.
//
// Valid: drop > 0 and a bank that has one: see airside.Pair.
// Source: exchanger.FaceVelocity.
func (in *Input) VelocityFor(drop, low, high float64, near *Thermal) (v float64, why message.Message, hindered *Hindrance) {
	var s settling
	v, why, answered := exchanger.FaceVelocity(drop, low, in.Air.Velocity, high, func(v float64) (float64, bool) {
		at := *in
		at.Air.Velocity = v
		t, cannot := s.from(&at, near.state, coarse)
		if cannot != nil {
			hindered = cannot
			return 0, false
		}
		t.UsedDrop.Answer = airside.DropMethods[t.Drop].Compute(s.pitches, t.Flow)
		return at.DropJudged(&t), true
	})
	if answered {
		hindered = nil
	}
	return v, why, hindered
}
