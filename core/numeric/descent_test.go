package numeric

import (
	"math"
	"testing"
)

func TestDescent(t *testing.T) {
	for _, c := range []struct {
		name            string
		f               func(float64) float64
		low, high, from float64
		want            float64
		most            int
	}{
		{"nearly a line", func(x float64) float64 { return 10*math.Exp(-0.01*x) - x }, 0, 20, 5, 9.127652716086226, 6},
		{"steep", func(x float64) float64 { return 1 - math.Exp(40*(x-3)) }, 0, 20, 1, 3, 60},
		{"flat about the root", func(x float64) float64 { return math.Pow(3-x, 5) }, 0, 20, 1, 3, 60},
		{"a step", func(x float64) float64 { return math.Copysign(1, 0.3-x) }, 0, 1, 0.9, 0.3, 60},
		{"two that would take turns", func(x float64) float64 { return 4/(1+x*x*x*x) - x }, 0, 20, 3, 1.226339, 12},
	} {
		d := Descent{Low: c.low, High: c.high}
		x, n := c.from, 0
		for ; n < 100 && d.High-d.Low > 1e-9*d.High; n++ {
			f := c.f(x)
			if math.Abs(f) < 1e-9 {
				break
			}
			x = d.Next(x, f)
		}
		tolerance := 1e-4
		if c.name == "flat about the root" {
			tolerance = 0.02 // f is small about the root
		}
		if math.Abs(x-c.want) > tolerance || n > c.most {
			t.Errorf("%s: %.9g after %d answers, want %.9g after %d at most", c.name, x, n, c.want, c.most)
		}
	}
}
