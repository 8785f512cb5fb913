package sheet

import (
	"math"
	"testing"

	"finwright/core/drawing/ink"
)

func TestCircleIsFlatEnough(t *testing.T) {
	for _, r := range []float64{0.5, 5, 50} {
		loop := Circle(ink.Point{}, r)
		for i, p := range loop {
			q := loop[(i+1)%len(loop)]
			if off := math.Hypot(p.X, p.Y) - r; math.Abs(off) > 1e-9 {
				t.Fatalf("r = %g: off the circle by %g", r, off)
			}
			if sagitta := r - math.Hypot((p.X+q.X)/2, (p.Y+q.Y)/2); sagitta > Flatness {
				t.Fatalf("r = %g: chord %g mm inside", r, sagitta)
			}
		}
	}
}
