package design

import (
	"slices"

	"finwright/core/exchanger"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
)

// Part is what surface, heat or making says of a design: its gravest state, with the first remark that is so grave.
type Part struct {
	Section string // of the page that shows it
	State   figure.State
	Notice  Notice // zero where the state is Kept or better
}

// Sections whose parts are judged, in the order of a report.
const (
	surfacePart = "surface"
	heatPart    = "heat"
	makingPart  = "making"
)

// remark adds what a part of a design remarks on; least is what it says without a remark.
func (r *Result) remark(section string, least figure.State, found []Notice) {
	r.Notices = append(r.Notices, found...)
	p := Part{Section: section, State: least}
	for _, n := range found {
		if n.State.Graver(p.State) {
			p.State, p.Notice = n.State, n
		}
	}
	r.Parts = append(r.Parts, p)
}

// Verdict is the one verdict on a design: the part that weighs most, the first of equals. A tube that a line can make is
// refused all the same where its heat or its surface is.
func (r *Result) Verdict() Part {
	worst := Part{State: figure.Plain} // of what nothing is said
	for _, p := range r.Parts {
		if p.State.Graver(worst.State) {
			worst = p
		}
	}
	return worst
}

// Part finds what a section says; ok is false where it was not judged.
func (r *Result) Part(section string) (p Part, ok bool) {
	i := slices.IndexFunc(r.Parts, func(p Part) bool { return p.Section == section })
	if i < 0 {
		return Part{Section: section, State: figure.Plain}, false
	}
	return r.Parts[i], true
}

// kept says what stands of the temperature limits of a bank without a remark: a limit that is only remembered is kept,
// which is less than good.
func (h *Heat) kept() figure.State {
	if h.Absent.None() && h.Limits.Standard.Status == material.FromMemory {
		return figure.Kept
	}
	return figure.Good
}

// limitTests says what a case's temperature is held against.
func (h *Heat) limitTests() message.Message {
	limit := h.Limits.Standard
	if !limit.Known() || h.Limits.House.Known() && h.Limits.House.SI < limit.SI {
		limit = h.Limits.House
	}
	if !limit.Known() {
		return message.New("limit.no_standard")
	}
	return message.New("tests.limit", "limit", celsius(limit.SI), "source", message.Key(limit.Key))
}

// testedID is the figure of the temperature that a case is held to its limits with.
func testedID(c exchanger.Case) string { return "tested_" + string(c) }
