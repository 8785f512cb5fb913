package finned

import (
	"math"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
)

// Ghost is another tube, of which only the outline is drawn, at the scale of the one in hand [mm]: its own diameter and that over its
// fins.
type Ghost struct {
	OD    float64 `json:"od"`
	FinOD float64 `json:"fin_od"`
}

// widest returns the greatest diameter over the fins [mm]: all are drawn at one scale.
func (c composer) widest() float64 {
	most := c.finOD()
	for _, g := range c.Ghosts {
		most = max(most, g.FinOD)
	}
	return most
}

// Spacing of the corners of a straight ghost line [mm of sheet], and the room that is left about writing.
const (
	ghostStep  = 0.5
	ghostClear = 0.6
)

// drawGhosts draws the outlines of the others, last: they give way to all writing, and where one is like the tube there is none.
func (c composer) drawGhosts() {
	s, y := c.scales.Main, c.layout.centreY
	m := ink.At(c.layout.across.x+c.layout.across.w/2, y)
	x0, x1, _ := c.alongEnds()
	for _, g := range c.Ghosts {
		for _, d := range []struct{ ghost, own float64 }{{g.OD, c.od}, {g.FinOD, c.finOD()}} {
			r := d.ghost / 2 * s
			if math.Abs(d.ghost-d.own)*s < ghostClear/2 { // it would lie on a line of the tube
				continue
			}
			_, runs := seen(sheet.Circle(m, r), c.layout.within(m, c.layout.reachY))
			for _, run := range runs {
				c.ghost(run)
			}
			if c.reaches(r) {
				c.ghost(stretch(x0, x1, y-r))
				c.ghost(stretch(x0, x1, y+r))
			}
		}
	}
}

// ghost draws a path where nothing is written.
func (c composer) ghost(path []ink.Point) {
	runs := [][]ink.Point{path}
	for _, t := range c.Scene.Texts {
		lo, hi := t.Box()
		lo, hi = ink.At(lo.X-ghostClear, lo.Y-ghostClear), ink.At(hi.X+ghostClear, hi.Y+ghostClear)
		var rest [][]ink.Point
		for _, run := range runs {
			rest = append(rest, clearOf(run, lo, hi)...)
		}
		runs = rest
	}
	for _, run := range runs {
		c.Line(ink.Ghost, run...)
	}
}

// stretch is a level line with a corner at every step, so that parts of it can be left out.
func stretch(x0, x1, y float64) []ink.Point {
	n := max(1, int(math.Ceil((x1-x0)/ghostStep)))
	path := make([]ink.Point, n+1)
	for i := range path {
		path[i] = ink.At(x0+(x1-x0)*float64(i)/float64(n), y)
	}
	return path
}
