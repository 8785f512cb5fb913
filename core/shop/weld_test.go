package shop

import (
	"math"
	"testing"

	"finwright/core/units"
)

// Between two thicknesses the speed goes in proportion, beyond the table it stays; a metal that is not in it has none.
func TestEdgeSpeedFollowsItsTable(t *testing.T) {
	w := Weld{Power: 95e3, Heat: 52e6, Edge: []EdgeSpeed{{"a", 2e-3, 1}, {"b", 1e-3, 5}, {"a", 1e-3, 2}}}
	for _, c := range []struct{ strip, speed float64 }{{0.5e-3, 2}, {1e-3, 2}, {1.25e-3, 1.75}, {2e-3, 1}, {3e-3, 1}} {
		if v, ok := w.EdgeSpeed("a", units.Length(c.strip)); !ok || math.Abs(float64(v)-c.speed) > 1e-12 {
			t.Errorf("%g: %g %v, want %g", c.strip, v, ok, c.speed)
		}
	}
	if _, ok := w.EdgeSpeed("c", 1e-3); ok {
		t.Error("a metal that nothing is known of has a speed")
	}
	// By hand: 95 kW over 52 J/mm2 of an edge 1.2 mm thick are 1.5224 m/s.
	if v := w.GeneratorSpeed(1.2e-3); math.Abs(float64(v)-1.52244) > 1e-5 {
		t.Errorf("generator: %g m/s", v)
	}
}
