package numeric

import (
	"math"
	"testing"
)

func TestRoot(t *testing.T) {
	for _, c := range []struct {
		name       string
		f          func(float64) float64
		a, b, want float64
	}{
		{"square root of two", func(x float64) float64 { return x*x - 2 }, 0, 2, math.Sqrt2},
		{"the other way round", func(x float64) float64 { return x*x - 2 }, 2, 0, math.Sqrt2},
		{"at an end", func(x float64) float64 { return x - 3 }, 3, 5, 3},
		{"at the other end", func(x float64) float64 { return x - 5 }, 3, 5, 5},
		{"flat about the root", func(x float64) float64 { return math.Pow(x-1, 9) }, 0, 4, 1},
		{"steep", func(x float64) float64 { return math.Exp(50*x) - 1e10 }, -5, 5, math.Log(1e10) / 50},
		{"a step", func(x float64) float64 { return math.Copysign(1, x-0.3) }, 0, 1, 0.3},
		{"over many decades", func(x float64) float64 { return math.Log(x / 1e-9) }, 1e-12, 1e6, 1e-9},
	} {
		calls := 0
		got, err := Root(func(x float64) float64 { calls++; return c.f(x) }, c.a, c.b)
		tolerance := 1e-14
		if c.name == "flat about the root" {
			tolerance = 1e-3 // f underflows about the root
		}
		if err != nil || math.Abs(got/c.want-1) > tolerance || calls > 120 {
			t.Errorf("%s: %.17g after %d calls (%v), want %.17g", c.name, got, calls, err, c.want)
		}
	}
	if _, err := Root(func(x float64) float64 { return 1 + x*x }, -1, 1); err == nil {
		t.Error("found a root where there is none")
	}
	if _, err := Root(func(float64) float64 { return math.NaN() }, -1, 1); err == nil {
		t.Error("found a root of not-a-number")
	}
}
