package sheet

import (
	"math"

	"finwright/core/drawing/ink"
)

// Flatness is how far a chord may lie inside its arc [mm of sheet]: a tenth of a pixel at tenfold zoom.
const Flatness = 0.0025

// Circle returns a closed loop of chords.
func Circle(c ink.Point, r float64) []ink.Point {
	n := 12
	if r > Flatness {
		n = max(n, int(math.Ceil(math.Pi/math.Acos(1-Flatness/r))))
	}
	return Arc(c, r, 0, 2*math.Pi*(1-1/float64(n)), n-1)
}

// Arc returns n chords from angle a to b, y down.
func Arc(c ink.Point, r, a, b float64, n int) []ink.Point {
	p := make([]ink.Point, n+1)
	for i := range p {
		sin, cos := math.Sincos(a + (b-a)*float64(i)/float64(n))
		p[i] = ink.At(c.X+r*cos, c.Y+r*sin)
	}
	return p
}
