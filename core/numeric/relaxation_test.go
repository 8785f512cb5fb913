package numeric

import (
	"math"
	"testing"
)

// TestRelaxation follows f(s) = cos(s) forward and backward; the exact
// solution is elementary.
func TestRelaxation(t *testing.T) {
	for _, rate := range []float64{0, 1e-9, 0.4, 3, 17.3, 400} {
		panels := Panels(rate)
		places, weights := Places(panels)
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
		r := NewRelaxation(rate, panels)
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
		if math.Abs(2.5+rate*mean-end) > 1e-13 {
			t.Errorf("rate %g: gain %g is not rate times mean difference %g", rate, end-2.5, rate*mean)
		}
		if back := r.Run(2.5, mirrored, got, true); math.Abs(back-end) > 1e-13 {
			t.Errorf("rate %g: backward ends at %.16g, forward at %.16g", rate, back, end)
		}
	}
}

func TestPlacesIntegrate(t *testing.T) {
	places, weights := Places(1)
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

func BenchmarkNewRelaxation(b *testing.B) {
	for b.Loop() {
		NewRelaxation(0.7, 1)
	}
}

func BenchmarkRelaxationRun(b *testing.B) {
	r := NewRelaxation(0.7, 1)
	f, t := make([]float64, stages), make([]float64, stages)
	for b.Loop() {
		r.Run(1, f, t, false)
	}
}
