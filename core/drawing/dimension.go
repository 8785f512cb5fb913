package drawing

import (
	"math"

	"finwright/core/drawing/ink"
)

// Distances of ISO 129-1 practice [mm].
const (
	overrun  = 1.2  // extension line beyond the dimension line
	standoff = 0.8  // extension line from the outline; text above its line
	tail     = 4.2  // dimension line outside of its extension lines
	emWidth  = 0.55 // mean width of a letter over the text height
)

// measured is a dimension: its name, which is the field that sets it if there is one, and its text.
type measured struct {
	name  string
	text  string
	field bool
}

func (m measured) label(p ink.Point, rotate float64, a Anchor) Text {
	t := Text{ID: "dim-" + m.name, Class: "dim", X: p.X, Y: p.Y, Anchor: a, Rotate: rotate, Text: m.text}
	if m.field {
		t.Field = m.name
	}
	return t
}

func textWidth(text string) float64 { return float64(len([]rune(text))) * emWidth * TextHeight }

// sheet gathers a scene.
type sheet struct{ scene Scene }

func (s *sheet) line(k ink.Stroke, p ...ink.Point) {
	s.scene.Lines = append(s.scene.Lines, ink.Line{Stroke: k, Points: p, Arrows: ink.NoArrows})
}

func (s *sheet) arrow(a ink.Arrows, p ...ink.Point) {
	s.scene.Lines = append(s.scene.Lines, ink.Line{Stroke: ink.Measure, Points: p, Arrows: a})
}

func (s *sheet) text(id, class string, x, y float64, a Anchor, text string) {
	s.scene.Texts = append(s.scene.Texts, Text{ID: id, Class: class, X: x, Y: y, Anchor: a, Text: text})
}

// span draws the dimension line from a to b along one axis: arrows inside where there is room, otherwise
// outside; the text over the line, or on its tail beyond b. It is written as for a horizontal line from left to
// right and turned by at.
func (s *sheet) span(m measured, a, b float64, rotate float64, at func(u, v float64) ink.Point) {
	w := textWidth(m.text)
	length := math.Abs(b - a)
	beyond := math.Copysign(1, b-a)
	middle := (a + b) / 2
	if length >= 2*ink.ArrowLength+1 {
		s.arrow(ink.AtBoth, at(a, 0), at(b, 0))
	} else {
		s.arrow(ink.AtEnd, at(a-beyond*tail, 0), at(a, 0))
		s.line(ink.Measure, at(a, 0), at(b, 0))
		reach := tail
		if length < w {
			reach += w
		}
		s.arrow(ink.AtStart, at(b, 0), at(b+beyond*reach, 0))
	}
	switch {
	case length >= w:
	case length >= 2*ink.ArrowLength+1:
		s.line(ink.Measure, at(b, 0), at(b+beyond*(standoff+w), 0))
		middle = b + beyond*(standoff+w/2)
	default:
		middle = b + beyond*(tail+w/2)
	}
	s.scene.Texts = append(s.scene.Texts, m.label(at(middle, standoff), rotate, Middle))
}

// across draws a horizontal dimension at y, from x1 to x2; text that does not fit goes beyond x2. The extension lines start at y1 and y2.
func (s *sheet) across(m measured, x1, x2, y, y1, y2 float64) {
	s.extension(ink.At(x1, y1), ink.At(x1, y))
	s.extension(ink.At(x2, y2), ink.At(x2, y))
	s.span(m, x1, x2, 0, func(u, v float64) ink.Point { return ink.At(u, y-v) })
}

// upright is the same for a vertical dimension at x, read from the right.
func (s *sheet) upright(m measured, y1, y2, x, x1, x2 float64) {
	s.extension(ink.At(x1, y1), ink.At(x, y1))
	s.extension(ink.At(x2, y2), ink.At(x, y2))
	s.span(m, y1, y2, -90, func(u, v float64) ink.Point { return ink.At(x-v, u) })
}

// extension draws from near the outline at p to just past the dimension line at q.
func (s *sheet) extension(p, q ink.Point) {
	d := math.Hypot(q.X-p.X, q.Y-p.Y)
	if d <= standoff {
		return
	}
	f := func(at float64) ink.Point { return ink.At(p.X+(q.X-p.X)*at/d, p.Y+(q.Y-p.Y)*at/d) }
	s.line(ink.Measure, f(standoff), f(d+overrun))
}

// breakLine draws a long thin line with a zigzag in its middle.
func (s *sheet) breakLine(p, q ink.Point) {
	const zig = 1.1
	d := math.Hypot(q.X-p.X, q.Y-p.Y)
	if d < 4*zig {
		s.line(ink.Break, p, q)
		return
	}
	ux, uy := (q.X-p.X)/d, (q.Y-p.Y)/d
	at := func(u, v float64) ink.Point { return ink.At(p.X+ux*u-uy*v, p.Y+uy*u+ux*v) }
	m := d / 2
	s.line(ink.Break, p, at(m-zig, 0), at(m-zig/2, zig), at(m+zig/2, -zig), at(m+zig, 0), q)
}
