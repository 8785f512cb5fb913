package finned

import (
	"finwright/core/drawing/ink"
	"finwright/core/tube"
)

// Profile returns the cut through one side of a tube over so many turns, in real millimetres: x along the tube from half a pitch before
// the first fin's middle, y outwards from the bare tube's surface. Every outline is closed, and cut off at both ends.
// Valid: as Compose; turns > 0.
func Profile(t tube.Tube, turns int) []ink.Shape {
	s := newSection(t)
	a, b := -s.pitch/2, (float64(turns)-0.5)*s.pitch
	cuts := []halfPlane{{-1, 0, -a}, {1, 0, b}}
	var out []ink.Shape
	for _, p := range s.parts(a, b) {
		loop := p.loop
		for _, h := range cuts {
			if loop = h.clip(loop); len(loop) < 3 {
				break
			}
		}
		if len(loop) >= 3 {
			out = append(out, ink.Shape{Class: p.class, Loops: [][]ink.Point{loop}, Narrow: p.narrow})
		}
	}
	return out
}
