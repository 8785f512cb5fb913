package numeric

import (
	"math"
	"testing"
)

func divided(rate float64, layers int) (m Mesh, places, weights []float64) {
	m.Divide(rate, layers)
	places, weights = make([]float64, m.Places()), make([]float64, m.Places())
	m.Fill(places, weights)
	return m, places, weights
}

// TestRelaxation follows f(s) = cos(s) forward and backward; the exact
// solution is elementary.
func TestRelaxation(t *testing.T) {
	for _, rate := range []float64{0, 1e-9, 0.4, 3, 17.3, 63.9, 64.1, 400, 3e4, 1e7} {
		mesh, places, weights := divided(rate, 1)
		exact := func(s, start float64) float64 {
			particular := func(s float64) float64 {
				return rate * (rate*math.Cos(s) + math.Sin(s)) / (rate*rate + 1)
			}
			return particular(s) + (start-particular(0))*math.Exp(-rate*s)
		}
		f, mirrored, got := make([]float64, len(places)), make([]float64, len(places)), make([]float64, len(places))
		for i, s := range places {
			f[i] = math.Cos(s)
			mirrored[i] = math.Cos(1 - s)
		}
		var r Relaxation
		r.Prepare(rate, mesh)
		end := r.Run(2.5, f, got, false)
		if math.Abs(end-exact(1, 2.5)) > 1e-13 {
			t.Errorf("rate %g: T(1) = %.16g, exact %.16g", rate, end, exact(1, 2.5))
		}
		mean := 0.0
		for i, s := range places {
			mean += weights[i] * (f[i] - got[i])
			if math.Abs(got[i]-exact(s, 2.5)) > 1e-9 {
				t.Errorf("rate %g: T(%g) = %.12g, exact %.12g", rate, s, got[i], exact(s, 2.5))
			}
		}
		if math.Abs(2.5+rate*mean-end) > 1e-13+1e-15*rate { // a mean is kept to rounding
			t.Errorf("rate %g: gain %g is not rate times mean difference %g", rate, end-2.5, rate*mean)
		}
		if back := r.Run(2.5, mirrored, got, true); math.Abs(back-end) > 1e-13 {
			t.Errorf("rate %g: backward ends at %.16g, forward at %.16g", rate, back, end)
		}
	}
}

func TestPlacesIntegrate(t *testing.T) {
	_, places, weights := divided(1, 1)
	for degree := range 2 * stages {
		sum := 0.0
		for i, s := range places {
			sum += weights[i] * math.Pow(s, float64(degree))
		}
		if want := 1 / float64(degree+1); math.Abs(sum-want) > 1e-15 {
			t.Errorf("mean of s^%d = %.17g, want %.17g", degree, sum, want)
		}
	}
}

// However fast T relaxes, and however often its layer is passed on, there are no more panels than stated.
func TestMeshIsBounded(t *testing.T) {
	for _, layers := range []int{1, 4, 30, 60} {
		for rate := 1e-3; rate < 1e12; rate *= 1.3 {
			m, _, _ := divided(rate, layers)
			if n := len(m.lengths); n > MostPanels(layers) {
				t.Errorf("%d layers at rate %g take %d panels, stated %d", layers, rate, n, MostPanels(layers))
			}
			sum := 0.0
			for i, length := range m.lengths {
				sum += length
				if length <= 0 || length != m.lengths[len(m.lengths)-1-i] {
					t.Fatalf("rate %g: panel %d is %g long, its mirror %g", rate, i, length, m.lengths[len(m.lengths)-1-i])
				}
			}
			if math.Abs(sum-1) > 1e-13 {
				t.Errorf("rate %g: panels add up to %.15g", rate, sum)
			}
		}
	}
}

func BenchmarkPrepare(b *testing.B) {
	m, _, _ := divided(0.7, 1)
	var r Relaxation
	for b.Loop() {
		r.Prepare(0.7, m)
	}
}

func BenchmarkRelaxationRun(b *testing.B) {
	m, _, _ := divided(0.7, 1)
	var r Relaxation
	r.Prepare(0.7, m)
	f, t := make([]float64, stages), make([]float64, stages)
	for b.Loop() {
		r.Run(1, f, t, false)
	}
}
