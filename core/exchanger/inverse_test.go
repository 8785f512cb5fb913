package exchanger

import (
	"math"
	"testing"
)

func TestTubesForDuty(t *testing.T) {
	b, u := cooler()
	heat := func(tubes int) float64 { // at one face velocity, so that air grows with the face
		b := b
		b.TubesPerRow = tubes
		return b.Rate(u, Stream{35, 3.3 * 1.15 * 1007 * b.FaceArea()}, Stream{120, 60e3}).Heat
	}
	for _, duty := range []float64{1e5, 1e6, 2.5e6} {
		calls := 0
		got, absent := TubesForDuty(duty, 400, func(n int) float64 { calls++; return heat(n) })
		if calls > 20 { // doubled to 400, then halved
			t.Errorf("%g W: %d banks were asked", duty, calls)
		}
		if !absent.None() || heat(got) < duty || got > 1 && heat(got-1) >= duty {
			t.Errorf("%g W: %d tubes a row carry %g W, one fewer %g W (%v)", duty, got, heat(got), heat(got-1), absent)
		}
	}
	if _, absent := TubesForDuty(60e3*85*1.01, 400, heat); absent.Key != "exchanger.too_many" {
		t.Errorf("more than the process holds, yet %v", absent)
	}
	if got, _ := TubesForDuty(1, 1, heat); got != 1 {
		t.Errorf("one tube is enough, got %d", got)
	}
}

func TestFaceVelocity(t *testing.T) {
	drop := func(v float64) float64 { return 9 * math.Pow(v, 1.7) }
	got, absent := FaceVelocity(120, 0.5, 8, drop)
	if !absent.None() {
		t.Fatal(absent)
	}
	near(t, "velocity", got, math.Pow(120.0/9, 1/1.7), 1e-13)
	if _, absent := FaceVelocity(1, 0.5, 8, drop); absent.Key != "exchanger.drop_above" {
		t.Errorf("%v", absent)
	}
	if _, absent := FaceVelocity(1e4, 0.5, 8, drop); absent.Key != "exchanger.drop_below" {
		t.Errorf("%v", absent)
	}
}
