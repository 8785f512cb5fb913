// Package floor is what comes back from the floor: tubes as they were measured, held against what was asked, and what the shop's file learns
// of them once somebody answers for it.
package floor

import (
	"errors"
	"strings"

	"finwright/core/message"
	"finwright/core/units"
)

// Value is one that was measured [SI], or was not.
type Value struct {
	SI    float64
	Known bool
}

// Tube is one as it was measured.
type Tube [5]Value

// Places of a tube's values.
const (
	Fins     = iota // over a metre
	FinOD           // [m]
	Cut             // length before winding [m]
	Finished        // length as wound, its trims on it [m]
	Took            // seconds on the line [s]
)

// Column is one of the values that a tube is typed with. Its name is the text "floor.<ID>".
type Column struct {
	ID   string
	Kind units.Kind

	low, high float64 // what is taken for a slip of the hand lies outside [SI]
}

// Columns lists them in the order in which they are typed.
var Columns = [...]Column{
	Fins:     {"fins", units.Count, 1, 20000},
	FinOD:    {"fin_od", units.Diameter, 0.001, 2},
	Cut:      {"cut", units.Distance, 0.001, 200},
	Finished: {"finished", units.Distance, 0.001, 200},
	Took:     {"took", units.Time, 1, 360000},
}

// most tubes that are read: more are no sample.
const most = 200

// Fault is what is wrong in a line of what was typed, the first being 1.
type Fault struct {
	Line int
	Why  message.Message
}

// Read reads tubes, one a line, their values parted by semicolons or tabs as a spreadsheet gives them; a value that was not measured is left
// out, or a dash. A bare number is in the unit that the system shows, a time in seconds.
func Read(text string, s units.System) (tubes []Tube, faults []Fault) {
	n := 0
	for line := range strings.Lines(text) {
		n++
		if line = strings.Trim(line, " \r\n"); strings.Trim(line, "\t; ") == "" {
			continue
		}
		if len(tubes) == most {
			return tubes, append(faults, Fault{n, message.New("floor.too_many", "most", most)})
		}
		t, why := readTube(line, s)
		if why != nil {
			faults = append(faults, Fault{n, *why})
			continue
		}
		tubes = append(tubes, t)
	}
	return tubes, faults
}

func readTube(line string, s units.System) (t Tube, why *message.Message) {
	cells := strings.Split(strings.ReplaceAll(line, "\t", ";"), ";")
	if len(cells) > len(Columns) {
		m := message.New("floor.too_wide", "values", len(cells), "most", len(Columns))
		return t, &m
	}
	for i, cell := range cells {
		if cell = strings.TrimSpace(cell); cell == "" || cell == "-" || cell == "–" {
			continue
		}
		c := &Columns[i]
		si, err := c.read(cell, s)
		var bad *units.ParseError
		switch {
		case errors.As(err, &bad):
			m := message.New("floor.unread", "name", message.New("floor."+c.ID), "why", message.Unread(bad))
			return t, &m
		case si < c.low || si > c.high:
			m := message.New("floor.outside", "name", message.New("floor."+c.ID), "text", cell, "low", message.Of(c.Kind, c.low), "high", message.Of(c.Kind, c.high))
			return t, &m
		}
		t[i] = Value{si, true}
	}
	return t, nil
}

// read takes a bare number of a time for seconds, as a watch shows them.
func (c *Column) read(text string, s units.System) (float64, error) {
	if c.Kind == units.Time {
		if p, err := units.Parse(c.Kind, text+" s", s); err == nil {
			return p.SI, nil
		}
	}
	p, err := units.Parse(c.Kind, text, s)
	return p.SI, err
}
