package drawing

import (
	"math"
	"testing"

	"finwright/core/drawing/ink"
)

func TestCircleIsFlatEnough(t *testing.T) {
	for _, r := range []float64{0.5, 5, 50} {
		loop := circle(ink.Point{}, r)
		for i, p := range loop {
			q := loop[(i+1)%len(loop)]
			near(t, "on the circle", math.Hypot(p.X, p.Y), r, 1e-9)
			if sagitta := r - math.Hypot((p.X+q.X)/2, (p.Y+q.Y)/2); sagitta > flatness {
				t.Fatalf("r = %g: chord %g mm inside", r, sagitta)
			}
		}
	}
}
