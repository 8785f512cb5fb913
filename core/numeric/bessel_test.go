package numeric

import (
	"math"
	"testing"

	"finwright/core/internal/published"
)

func TestBessel01Published(t *testing.T) {
	for _, table := range []struct {
		name      string
		tolerance float64
	}{
		{"bessel", 1e-13},
		{"bessel_scaled_wide", 1e-13},
	} {
		for _, row := range published.Read(t, published.Computed, table.name) {
			i0, i1, k0, k1 := Bessel01(row.Float("x"))
			row.Check("I0_exp_minus_x", i0, table.tolerance)
			row.Check("I1_exp_minus_x", i1, table.tolerance)
			row.Check("K0_exp_x", k0, table.tolerance)
			row.Check("K1_exp_x", k1, table.tolerance)
		}
	}
}

// The unscaled columns carry the same truth through math.Exp.
func TestBessel01Unscaled(t *testing.T) {
	for _, row := range published.Read(t, published.Computed, "bessel") {
		x := row.Float("x")
		i0, i1, k0, k1 := Bessel01(x)
		row.Check("I0", i0*math.Exp(x), 1e-12)
		row.Check("I1", i1*math.Exp(x), 1e-12)
		row.Check("K0", k0*math.Exp(-x), 1e-12)
		row.Check("K1", k1*math.Exp(-x), 1e-12)
	}
}

// Where one method hands over to the next the functions must join.
func TestBessel01Joins(t *testing.T) {
	for _, x := range []float64{logarithmicTo, asymptoticFrom} {
		a0, a1, b0, b1 := Bessel01(math.Nextafter(x, 0))
		c0, c1, d0, d1 := Bessel01(math.Nextafter(x, 2*x))
		for i, pair := range [][2]float64{{a0, c0}, {a1, c1}, {b0, d0}, {b1, d1}} {
			if math.Abs(pair[0]/pair[1]-1) > 1e-13 {
				t.Errorf("x = %g, function %d jumps from %.17g to %.17g", x, i, pair[0], pair[1])
			}
		}
	}
}

// I0' = I1 and K0' = -K1 hold for values that no table lists
// (Abramowitz & Stegun 9.6.27, from memory).
func TestBessel01Derivatives(t *testing.T) {
	for x := 1e-3; x < 9e3; x *= 1.37 {
		step := 1e-3 * math.Min(x, 1)
		_, i1, _, k1 := Bessel01(x)
		upI, _, upK, _ := Bessel01(x + step)
		downI, _, downK, _ := Bessel01(x - step)
		slopeI := (upI*math.Exp(step) - downI*math.Exp(-step)) / (2 * step)
		slopeK := (upK*math.Exp(-step) - downK*math.Exp(step)) / (2 * step)
		if math.Abs(slopeI/i1-1) > 1e-5 || math.Abs(slopeK/-k1-1) > 1e-5 {
			t.Errorf("x = %g: I0' = %.12g and I1 = %.12g, K0' = %.12g and K1 = %.12g", x, slopeI, i1, slopeK, k1)
		}
	}
}

func TestBessel01RefusesBadArguments(t *testing.T) {
	for _, x := range []float64{0, -1, math.NaN()} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("Bessel01(%g) did not panic", x)
				}
			}()
			Bessel01(x)
		}()
	}
}

func BenchmarkBessel01(b *testing.B) {
	for _, c := range []struct {
		name string
		x    float64
	}{{"logarithmic", 0.9}, {"integral", 5}, {"asymptotic", 50}} {
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				Bessel01(c.x)
			}
		})
	}
}
