package shop

import (
	"cmp"
	"slices"

	"finwright/core/units"
)

// Batch returns the order in which jobs run so that change-overs take least:
// equal setups together, and a deeper change only when all that share the
// shallower settings are done. The setup that is on the line comes first.
//
// A change-over takes the time of the deepest thing that differs, so setups form
// a tree (type, diameter, tooling, pitch), and no tour is shorter than one that
// finishes a branch before it leaves it.
//
// Valid: any; now is nil if nothing is known of the line.
// Source: own derivation; deepest change governs: engineering judgement.
func Batch(jobs []Setup, now *Setup) []int {
	run := make([]int, len(jobs))
	for i := range run {
		run[i] = i
	}
	slices.SortStableFunc(run, func(a, b int) int { return before(jobs[a], jobs[b], now) })
	return run
}

// before compares level by level; on each, what is on the line comes first as
// long as the levels above agree with the line.
func before(a, b Setup, now *Setup) int {
	on := now != nil
	level := func(same int, aOn, bOn bool) (int, bool) {
		if same == 0 {
			on = on && aOn
			return 0, false
		}
		switch {
		case on && aOn:
			return -1, true
		case on && bOn:
			return 1, true
		}
		return same, true
	}
	var at Setup
	if now != nil {
		at = *now
	}
	if c, done := level(cmp.Compare(a.Type, b.Type), a.Type == at.Type, b.Type == at.Type); done {
		return c
	}
	if c, done := level(cmp.Compare(a.OD, b.OD), a.OD == at.OD, b.OD == at.OD); done {
		return c
	}
	tool := func(s Setup) bool { return s.Height == at.Height && s.Strip == at.Strip }
	if c, done := level(cmp.Or(cmp.Compare(a.Height, b.Height), cmp.Compare(a.Strip, b.Strip)), tool(a), tool(b)); done {
		return c
	}
	if c, done := level(cmp.Compare(a.Count, b.Count), a.Count == at.Count, b.Count == at.Count); done {
		return c
	}
	return cmp.Compare(a.Metal, b.Metal)
}

// Changing returns the time of all change-overs when jobs run in an order.
func (c *ChangeOver) Changing(jobs []Setup, run []int, now *Setup) units.Duration {
	var sum units.Duration
	for _, i := range run {
		if now != nil {
			sum += c.Change(*now, jobs[i])
		}
		now = &jobs[i]
	}
	return sum
}
