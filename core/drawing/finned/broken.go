package finned

import (
	"math"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
)

// A held scale may be too large for the tube: then metal and discs are broken off where their place ends, and a dimension
// that leads past it ends there without an arrow. The disc alone goes on beside the heading, so that there is something to pull.

// around returns the half-planes of a box.
func around(lo, hi ink.Point) []halfPlane {
	return []halfPlane{{-1, 0, -lo.X}, {1, 0, hi.X}, {0, -1, -lo.Y}, {0, 1, hi.Y}}
}

// within returns the half-planes that bound the section across, up to so far above its centre.
func (l layout) within(m ink.Point, up float64) []halfPlane {
	return around(ink.At(m.X-l.reachX, m.Y-up), ink.At(m.X+l.reachX, m.Y+l.reachY))
}

// seen returns what of a loop lies within half-planes: itself, and the runs of its outline that are no cuts.
func seen(loop []ink.Point, cuts []halfPlane) (rest []ink.Point, runs [][]ink.Point) {
	beyond := false
	for _, h := range cuts {
		for _, p := range loop {
			beyond = beyond || h.depth(p) > 0
		}
	}
	if !beyond {
		return loop, [][]ink.Point{ink.Closed(loop)}
	}
	for _, h := range cuts {
		if loop = h.clip(loop); len(loop) < 3 {
			return nil, nil
		}
	}
	return loop, edges(loop, cuts...)
}

// clearOf leaves out what of a path lies in a box.
func clearOf(path []ink.Point, lo, hi ink.Point) [][]ink.Point {
	var runs [][]ink.Point
	var run []ink.Point
	for _, p := range path {
		if p.X > lo.X && p.X < hi.X && p.Y > lo.Y && p.Y < hi.Y {
			if len(run) > 1 {
				runs = append(runs, run)
			}
			run = nil
			continue
		}
		run = append(run, p)
	}
	if len(run) > 1 {
		runs = append(runs, run)
	}
	return runs
}

// drawDisc draws the fin's disc about m, clear of the heading, and the lines along which it is broken off.
func (c composer) drawDisc(m ink.Point) {
	const clear = 1.2 // mm
	r, x, y, up := c.finOD()/2*c.scales.Main, c.layout.reachX, c.layout.reachY, c.layout.riseY
	at := c.layout.across
	taken := at.x // by the heading
	for _, t := range c.Scene.Texts {
		if t.ID == "title-across" || t.ID == "scale-across" {
			taken = max(taken, t.X+sheet.TextWidth(t.Text))
		}
	}
	_, runs := seen(sheet.Circle(m, r), c.layout.within(m, up))
	for _, run := range runs {
		if r <= y {
			c.Line(ink.Thick, run...)
			continue
		}
		for _, part := range clearOf(run, ink.At(0, 0), ink.At(taken+clear, at.y+c.layout.head-2+clear)) {
			c.Line(ink.Thick, part...)
		}
	}
	chord := func(at, most float64) float64 { return min(most, math.Sqrt(max(0, r*r-at*at))) }
	if r > up {
		if half := min(chord(up, x), m.X-taken-clear); half > 0 {
			c.BreakLine(ink.At(m.X-half, m.Y-up), ink.At(m.X+half, m.Y-up))
		}
	}
	if half := chord(y, x); r > y {
		c.BreakLine(ink.At(m.X-half, m.Y+y), ink.At(m.X+half, m.Y+y))
	}
	if half := chord(x, y); r > x {
		c.BreakLine(ink.At(m.X-x, m.Y-half), ink.At(m.X-x, m.Y+half))
		c.BreakLine(ink.At(m.X+x, m.Y-half), ink.At(m.X+x, m.Y+half))
	}
}

// upTo limits a distance from the axis to what is drawn.
func (c composer) upTo(distance float64) float64 { return min(distance, c.layout.reachY) }

// reaches reports whether a distance from the axis is drawn whole.
func (c composer) reaches(distance float64) bool { return distance <= c.layout.reachY+1e-9 }

// open says which end of a dimension is broken off.
func (c composer) open(m sheet.Measured, from, to float64) sheet.Measured {
	m.OpenFrom, m.OpenTo = !c.reaches(from), !c.reaches(to)
	return m
}
