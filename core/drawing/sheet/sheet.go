package sheet

import (
	"math"

	"finwright/core/drawing/ink"
)

// Sheet is a scene in the making.
type Sheet struct {
	Scene Scene
	owned []owned
	first int // of the lines of the dimension that is drawn now
}

// Line draws a path.
func (s *Sheet) Line(k ink.Stroke, p ...ink.Point) {
	s.Scene.Lines = append(s.Scene.Lines, ink.Polyline{Stroke: k, Points: p, Arrows: ink.NoArrows})
}

// Arrow draws a path of a dimension, with heads.
func (s *Sheet) Arrow(a ink.Arrows, p ...ink.Point) {
	s.Scene.Lines = append(s.Scene.Lines, ink.Polyline{Stroke: ink.Measure, Points: p, Arrows: a})
}

// Write sets a line of writing.
func (s *Sheet) Write(id, class string, x, y float64, a Anchor, text string) {
	s.Scene.Texts = append(s.Scene.Texts, Text{ID: id, Class: class, X: x, Y: y, Anchor: a, Width: TextWidth(text), Text: text})
}

// Frame draws a rectangle, begun where no corner shows that it is not closed.
func (s *Sheet) Frame(k ink.Stroke, x1, y1, x2, y2 float64) {
	begin := ink.At((x1+x2)/2, y1)
	s.Line(k, begin, ink.At(x2, y1), ink.At(x2, y2), ink.At(x1, y2), ink.At(x1, y1), begin)
}

// BreakLine draws a long thin line with a zigzag in its middle.
func (s *Sheet) BreakLine(p, q ink.Point) {
	const zig = 1.1
	d := math.Hypot(q.X-p.X, q.Y-p.Y)
	if d < 4*zig {
		s.Line(ink.Break, p, q)
		return
	}
	ux, uy := (q.X-p.X)/d, (q.Y-p.Y)/d
	at := func(u, v float64) ink.Point { return ink.At(p.X+ux*u-uy*v, p.Y+uy*u+ux*v) }
	m := d / 2
	s.Line(ink.Break, p, at(m-zig, 0), at(m-zig/2, zig), at(m+zig/2, -zig), at(m+zig, 0), q)
}
