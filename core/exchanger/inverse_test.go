package exchanger

import (
	"math"
	"testing"
)

func TestTubesForDuty(t *testing.T) {
	b, u := cooler()
	heat := func(tubes int) (float64, bool) { // at one face velocity, so that air grows with the face
		b := b
		b.TubesPerRow = tubes
		return b.Rate(u, Stream{35, 3.3 * 1.15 * 1007 * b.FaceArea()}, Stream{120, 60e3}).Heat, tubes != 7
	}
	for _, duty := range []float64{1e5, 1e6, 2.5e6} {
		for _, guess := range []int{-3, 1, 40, 400, 1000} {
			calls := 0
			got, absent, _ := TubesForDuty(duty, guess, 400, func(n int) (float64, bool) { calls++; return heat(n) })
			watts := func(n int) float64 { w, _ := heat(n); return w }
			if calls > 20 { // in doubled strides over the range, then halved
				t.Errorf("%g W from %d: %d banks were asked", duty, guess, calls)
			}
			if !absent.None() || watts(got) < duty || got > 1 && watts(got-1) >= duty {
				t.Errorf("%g W from %d: %d tubes a row carry %g W, one fewer %g W (%v)", duty, guess, got, watts(got), watts(got-1), absent)
			}
		}
	}
	if _, absent, answered := TubesForDuty(60e3*85*1.01, 30, 400, heat); absent.Key != "exchanger.too_many" || !answered {
		t.Errorf("more than the process holds, yet %v", absent)
	}
	if got, _, _ := TubesForDuty(1, 30, 1, heat); got != 1 {
		t.Errorf("one tube is enough, got %d", got)
	}
	if _, _, answered := TubesForDuty(1, 1, 400, func(int) (float64, bool) { return math.Inf(1), false }); answered {
		t.Error("a refusal is taken for an answer")
	}
}

func TestFaceVelocity(t *testing.T) {
	calls := 0
	drop := func(v float64) (float64, bool) { calls++; return 9 * math.Pow(v, 1.7), true }
	got, absent, _ := FaceVelocity(120, 0.5, 2, 8, drop)
	if !absent.None() {
		t.Fatal(absent)
	}
	near(t, "velocity", got, math.Pow(120.0/9, 1/1.7), 1e-13)
	if calls > 6 {
		t.Errorf("%d banks were asked", calls)
	}
	if _, absent, _ := FaceVelocity(1, 0.5, 2, 8, drop); absent.Key != "exchanger.drop_above" {
		t.Errorf("%v", absent)
	}
	if _, absent, _ := FaceVelocity(1e4, 0.5, 2, 8, drop); absent.Key != "exchanger.drop_below" {
		t.Errorf("%v", absent)
	}
	// Faster than 3 m/s there is no answer: what lies below is found, and what would lie above is a no that knows it.
	halted := func(v float64) (float64, bool) { p, _ := drop(v); return p, v <= 3 }
	if v, absent, _ := FaceVelocity(40, 0.5, 2, 8, halted); !absent.None() || math.Abs(9*math.Pow(v, 1.7)-40) > 1e-9 {
		t.Errorf("40 Pa below where the curve ends: %g m/s, %v", v, absent)
	}
	if _, absent, answered := FaceVelocity(120, 0.5, 2, 8, halted); absent.Key != "exchanger.drop_below" || answered {
		t.Errorf("beyond where the curve ends: %v, answered %v", absent, answered)
	}
}
