package rating

import (
	"math"

	"finwright/core/airside"
	"finwright/core/exchanger"
	"finwright/core/message"
)

// mostTubes bounds the search for tubes in a row.
const mostTubes = 500

// TubesFor returns how many tubes in a row carry a duty [W], or why none do. near is the bank as rated.
//
// Valid: duty > 0; up to 500 tubes in a row.
// Source: exchanger.TubesForDuty.
func (in *Input) TubesFor(duty float64, near *Thermal) (n int, why message.Message) {
	var s settling
	kept := in.Keep()
	return exchanger.TubesForDuty(duty, mostTubes, func(n int) float64 {
		at := *in
		at.Bank.TubesPerRow = n
		kept.Follow(&at, "tubes_per_row")
		t, hindered := s.from(&at, near.state, coarse)
		if hindered != nil {
			return 0
		}
		return math.Abs(t.Duty.Heat)
	})
}

// mostRows bounds the search for rows.
const mostRows = 30

// RowsFor returns how many rows of as many tubes carry a duty [W], or why none do. near is the bank as rated.
//
// Valid: duty > 0; up to 30 rows, and at least as many as there are passes.
// Source: exchanger.TubesForDuty.
func (in *Input) RowsFor(duty float64, near *Thermal) (n int, why message.Message) {
	var s settling
	return exchanger.TubesForDuty(duty, mostRows, func(n int) float64 {
		at := *in
		if at.Bank.Rows = n; n < at.Bank.Passes {
			return 0
		}
		t, hindered := s.from(&at, near.state, coarse)
		if hindered != nil {
			return 0
		}
		return math.Abs(t.Duty.Heat)
	})
}

// VelocityFor returns the face velocity [m/s] between low and high at which the bank has a pressure drop [Pa], the larger where the root is counted two ways, or why none
// has. near is the bank as rated.
//
// Valid: drop > 0 and a bank that has one: see airside.Pair.
// Source: exchanger.FaceVelocity.
func (in *Input) VelocityFor(drop, low, high float64, near *Thermal) (v float64, why message.Message) {
	var s settling
	return exchanger.FaceVelocity(drop, low, high, func(v float64) float64 {
		at := *in
		at.Air.Velocity = v
		t, hindered := s.from(&at, near.state, coarse)
		if hindered != nil {
			return math.Inf(1)
		}
		t.UsedDrop.Answer = airside.DropMethods[t.Drop].Compute(s.pitches, t.Flow)
		return at.DropJudged(&t)
	})
}
