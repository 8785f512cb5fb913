package finned

import (
	"math"
	"testing"
)

func near(t testing.TB, name string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s = %.9g, want %.9g within %.1g", name, got, want, tolerance)
	}
}
