package sheet

import (
	"math"

	"finwright/core/drawing/ink"
)

// Distances of ISO 129-1 practice [mm].
const (
	Overrun  = 1.2 // extension line beyond the dimension line
	Standoff = 0.8 // extension line from the outline; text above its line
	Tail     = 3.1 // dimension line outside of its extension lines
)

// Measured is a dimension: its name, which is that of the field where one sets it, and its text. An open end is where the
// drawing is broken off: it has neither extension line nor arrow.
type Measured struct {
	Name             string
	Text             string
	Field            bool
	OpenFrom, OpenTo bool
	Beyond           float64 // a text that does not fit stands so far past the dimension's end [mm], at least
}

// heads returns where the arrows are of a dimension line that has room for them.
func (m Measured) heads() ink.Arrows {
	switch {
	case m.OpenFrom && m.OpenTo:
		return ink.NoArrows
	case m.OpenFrom:
		return ink.AtEnd
	case m.OpenTo:
		return ink.AtStart
	}
	return ink.AtBoth
}

// Label writes a dimension's text, to which the lines since Begin belong.
func (s *Sheet) Label(m Measured, p ink.Point, rotate float64, a Anchor) {
	t := Text{ID: "dim-" + m.Name, Class: "dim", X: p.X, Y: p.Y, Anchor: a, Rotate: rotate, Width: TextWidth(m.Text), Text: m.Text}
	if m.Field {
		t.Field = m.Name
	}
	s.Scene.Texts = append(s.Scene.Texts, t)
	s.own()
}

// span draws the dimension line from a to b along one axis: arrows inside where there is room, otherwise
// outside; the text over the line, or on its tail beyond b. It is written as for a horizontal line from left to
// right and turned by at.
func (s *Sheet) span(m Measured, a, b float64, rotate float64, at func(u, v float64) ink.Point) {
	w := TextWidth(m.Text)
	length := math.Abs(b - a)
	beyond := math.Copysign(1, b-a)
	middle := (a + b) / 2
	if length >= 2*ink.ArrowLength+1 {
		s.Arrow(m.heads(), at(a, 0), at(b, 0))
	} else {
		s.Arrow(ink.AtEnd, at(a-beyond*Tail, 0), at(a, 0))
		s.Line(ink.Measure, at(a, 0), at(b, 0))
		reach := Tail
		if length < w {
			reach = max(Tail, m.Beyond) + w
		}
		s.Arrow(ink.AtStart, at(b, 0), at(b+beyond*reach, 0))
	}
	switch {
	case length >= w:
	case length >= 2*ink.ArrowLength+1:
		past := max(Standoff, m.Beyond)
		s.Line(ink.Measure, at(b, 0), at(b+beyond*(past+w), 0))
		middle = b + beyond*(past+w/2)
	default:
		middle = b + beyond*(max(Tail, m.Beyond)+w/2)
	}
	s.Label(m, at(middle, Standoff), rotate, Middle)
}

// Across draws a horizontal dimension at y, from x1 to x2; text that does not fit goes beyond x2. The extension lines start at y1 and y2.
func (s *Sheet) Across(m Measured, x1, x2, y, y1, y2 float64) {
	s.Begin()
	s.Extend(ink.At(x1, y1), ink.At(x1, y))
	s.Extend(ink.At(x2, y2), ink.At(x2, y))
	s.span(m, x1, x2, 0, func(u, v float64) ink.Point { return ink.At(u, y-v) })
}

// Upright is the same for a vertical dimension at x, read from the right.
func (s *Sheet) Upright(m Measured, y1, y2, x, x1, x2 float64) {
	s.Begin()
	if !m.OpenFrom {
		s.Extend(ink.At(x1, y1), ink.At(x, y1))
	}
	if !m.OpenTo {
		s.Extend(ink.At(x2, y2), ink.At(x, y2))
	}
	s.span(m, y1, y2, -90, func(u, v float64) ink.Point { return ink.At(x-v, u) })
}

// Extend draws an extension line from near the outline at p to just past the dimension line at q.
func (s *Sheet) Extend(p, q ink.Point) {
	d := math.Hypot(q.X-p.X, q.Y-p.Y)
	if d <= Standoff {
		return
	}
	f := func(at float64) ink.Point { return ink.At(p.X+(q.X-p.X)*at/d, p.Y+(q.Y-p.Y)*at/d) }
	s.Line(ink.Measure, f(Standoff), f(d+Overrun))
}
