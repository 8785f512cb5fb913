package ink

import (
	"math"
	"testing"
)

// circle is one round 50, 50, of chords so short that its area is right to a millionth.
func circle(r float64) []Point {
	loop := make([]Point, 4000)
	for i := range loop {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(len(loop)))
		loop[i] = Point{50 + r*cos, 50 + r*sin}
	}
	return loop
}

var everywhere = [2]Point{{-1e3, -1e3}, {1e3, 1e3}}

// Lines a spacing apart cover a shape with their length times the spacing: by
// Cavalieri's principle that sum tends to the area of the ring, pi (R2 - r2).
func TestHatchCoversTheArea(t *testing.T) {
	ring := [][]Point{circle(40), circle(25)}
	want := math.Pi * (40*40 - 25*25)
	for _, angle := range []float64{0, 30, 45, 90, 135} {
		h := Hatching{angle, 0.05}
		sum := 0.0
		for _, s := range Hatch(ring, h, Point{}, everywhere[0], everywhere[1]) {
			sum += Distance(s[0], s[1]) * h.Spacing
		}
		near(t, "covered", sum, want, 1e-3*want)
	}
}

func TestHatchRunsAtItsAngleFromItsOrigin(t *testing.T) {
	square := [][]Point{{{0, 0}, {10, 0}, {10, 10}, {0, 10}}}
	origin := Point{3, 4}
	for _, angle := range []float64{0, 30, 45, 135} {
		for _, s := range Hatch(square, Hatching{angle, 1.7}, origin, everywhere[0], everywhere[1]) {
			// y grows downwards, so a rising line has dy < 0.
			direction := math.Atan2(-(s[1].Y-s[0].Y), s[1].X-s[0].X) * 180 / math.Pi
			near(t, "angle", math.Remainder(direction-angle, 180), 0, 1e-9)
			sin, cos := math.Sincos(-angle * math.Pi / 180)
			off := (-(s[0].X-origin.X)*sin + (s[0].Y-origin.Y)*cos) / 1.7
			near(t, "whole spacings from the origin", off, math.Round(off), 1e-9)
		}
	}
}

func TestHatchLeavesOutWhatIsNotSeen(t *testing.T) {
	square := [][]Point{{{0, 0}, {1000, 0}, {1000, 1000}, {0, 1000}}}
	all := Hatch(square, Hatching{45, 1}, Point{}, Point{}, Point{1000, 1000})
	few := Hatch(square, Hatching{45, 1}, Point{}, Point{490, 490}, Point{510, 510})
	if len(few) > 30 || len(all) < 1400 {
		t.Errorf("%d lines for a corner of the %d", len(few), len(all))
	}
	if got := Hatch(square, Hatching{45, 1}, Point{}, Point{-30, 1100}, Point{-20, 1110}); len(got) > 20 {
		t.Errorf("%d lines beside the shape", len(got))
	}
}

func TestFillHasTheArea(t *testing.T) {
	for name, loops := range map[string][][]Point{
		"ring":  {circle(40), circle(25)},
		"notch": {{{0, 0}, {4, 0}, {4, 3}, {3, 3}, {3, 1}, {1, 1}, {1, 3}, {0, 3}}},
		"arrow": {{{0, 0}, {5, 5}, {0, 10}, {2, 5}}},
	} {
		want := math.Abs(Area(loops[0]))
		for _, hole := range loops[1:] {
			want -= math.Abs(Area(hole))
		}
		sum := 0.0
		for _, q := range Fill(loops) {
			sum += math.Abs(Area(q[:]))
		}
		near(t, name, sum, want, 1e-9*want)
	}
}

func TestDash(t *testing.T) {
	corner := []Point{{0, 0}, {10, 0}, {10, 7}}
	pattern := []float64{3, 1}
	dashes := Dash(corner, pattern...)
	if len(dashes) != 5 {
		t.Fatalf("%d dashes on 17 mm of 3 and 1", len(dashes))
	}
	for i, d := range dashes[:4] {
		near(t, "dash", Length(d), 3, 1e-12)
		if i == 2 && len(d) != 3 {
			t.Errorf("the dash round the corner has %d points", len(d))
		}
	}
	near(t, "rest", Length(dashes[4]), 1, 1e-12)
}

func TestFittedDashesEndWhole(t *testing.T) {
	for _, pattern := range [][]float64{{3, 1}, {6, 0.9, 0.5, 0.9}} {
		for _, want := range []float64{2, 17.3, 60, 181} {
			fitted := fitDash(pattern, want)
			all := Dash([]Point{{0, 0}, {want, 0}}, fitted...)
			last := all[len(all)-1]
			near(t, "last dash", Length(last), fitted[0], 1e-6)
			near(t, "end", last[len(last)-1].X, want, 1e-6)
		}
	}
}
