package finned

import (
	"math"

	"finwright/core/drawing/ink"
)

// halfPlane is the set of points with N·p <= D.
type halfPlane struct{ nx, ny, d float64 }

func (h halfPlane) depth(p ink.Point) float64 { return h.nx*p.X + h.ny*p.Y - h.d }

// clip cuts a loop by a half-plane (Sutherland and Hodgman, Comm. ACM 17 (1974) 32).
// Of a loop that falls apart, the pieces stay joined along the cut, which changes neither area nor hatching.
func (h halfPlane) clip(loop []ink.Point) []ink.Point {
	var out []ink.Point
	for i, p := range loop {
		q := loop[(i+1)%len(loop)]
		a, b := h.depth(p), h.depth(q)
		if a <= 0 {
			out = append(out, p)
		}
		if a < 0 && b > 0 || a > 0 && b < 0 {
			f := a / (a - b)
			out = append(out, ink.At(p.X+f*(q.X-p.X), p.Y+f*(q.Y-p.Y)))
		}
	}
	return out
}

// edges returns the outline of a loop less what lies on the lines of cuts.
func edges(loop []ink.Point, cuts ...halfPlane) [][]ink.Point {
	onCut := func(p, q ink.Point) bool {
		for _, h := range cuts {
			if math.Abs(h.depth(p)) < 1e-9 && math.Abs(h.depth(q)) < 1e-9 {
				return true
			}
		}
		return false
	}
	var out [][]ink.Point
	var run []ink.Point
	for i, p := range loop {
		q := loop[(i+1)%len(loop)]
		if onCut(p, q) {
			if len(run) > 0 {
				out = append(out, run)
			}
			run = nil
			continue
		}
		if len(run) == 0 {
			run = []ink.Point{p}
		}
		run = append(run, q)
	}
	if len(run) > 0 && len(out) > 0 && out[0][0] == loop[0] {
		out[0] = append(run[:len(run)-1], out[0]...) // the run that passes the loop's first point
	} else if len(run) > 0 {
		out = append(out, run)
	}
	return out
}
