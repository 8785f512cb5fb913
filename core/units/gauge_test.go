package units_test

import (
	"testing"

	"finwright/core/internal/published"
	"finwright/core/units"
)

func TestBWGPublished(t *testing.T) {
	rows := published.Read(t, published.Library, "bwg")
	if len(rows) != 24 {
		t.Fatalf("%d gauges, want 24", len(rows))
	}
	thicker := units.Metre
	for _, row := range rows {
		wall, ok := units.BWG(int(row.Float("bwg")))
		if !ok {
			t.Fatalf("%s: no such gauge", row.Where())
		}
		row.CheckPrinted("wall_in", wall.Inches())
		row.CheckPrinted("wall_mm", wall.Millimetres())
		if wall >= thicker {
			t.Errorf("%s: %g mm is not thinner than the gauge before", row.Where(), wall.Millimetres())
		}
		thicker = wall
	}
}

func TestBWGEnds(t *testing.T) {
	for _, n := range []int{-1, 0, 25} {
		if wall, ok := units.BWG(n); ok {
			t.Errorf("gauge %d exists: %g mm", n, wall.Millimetres())
		}
	}
}
