package floor

import (
	"math"
	"slices"
	"strings"
	"testing"

	"finwright/core/units"
)

func TestReadsTubesAsTheyAreTyped(t *testing.T) {
	text := "394; 57.1; 5585; 5590 mm; 184\n\n;;;;3 min\n394\t57.2 mm\t-\t5591\n"
	tubes, faults := Read(text, units.SI)
	if faults != nil || len(tubes) != 3 {
		t.Fatalf("%v, %v", tubes, faults)
	}
	for i, want := range []Tube{
		{{394, true}, {0.0571, true}, {5.585, true}, {5.59, true}, {184, true}},
		{Took: {180, true}},
		{Fins: {394, true}, FinOD: {0.0572, true}, Finished: {5.591, true}},
	} {
		for j, v := range tubes[i] {
			if v.Known != want[j].Known || math.Abs(v.SI-want[j].SI) > 1e-9 {
				t.Errorf("tube %d: %v, want %v", i, tubes[i], want)
			}
		}
	}
	if inches, _ := Read("; 2.25", units.US); len(inches) != 1 || math.Abs(inches[0][FinOD].SI-0.05715) > 1e-9 {
		t.Errorf("in inches: %v", inches)
	}
}

// What cannot be read is told at its line, and takes no other with it.
func TestUnreadLinesAreTold(t *testing.T) {
	for _, c := range []struct{ text, key string }{
		{"394; wide", "floor.unread"},
		{"394.5", "floor.unread"},
		{"394; 57 m", "floor.outside"},
		{"0", "floor.outside"},
		{"1;2;3;4;5;6", "floor.too_wide"},
	} {
		tubes, faults := Read("394\n"+c.text+"\n395", units.SI)
		if len(tubes) != 2 || len(faults) != 1 || faults[0].Line != 2 || faults[0].Why.Key != c.key {
			t.Errorf("%q: %v, %v", c.text, tubes, faults)
		}
	}
	if tubes, faults := Read(strings.Repeat("394\n", most+1), units.SI); len(tubes) != most || len(faults) != 1 || faults[0].Why.Key != "floor.too_many" {
		t.Errorf("%d tubes, %v", len(tubes), faults)
	}
}

// By hand: 180, 184, 188, 192, 196: mean 188, deviation sqrt(160/4), over sqrt(5), times Student's 2.776 of four.
func TestMeanAndItsScatter(t *testing.T) {
	mean, half := meanOf([]float64{180, 184, 188, 192, 196})
	if mean != 188 || math.Abs(half-2.776*math.Sqrt(40)/math.Sqrt(5)) > 0.005*half {
		t.Errorf("%g ± %g", mean, half)
	}
}

// Of 10, none failed: the interval's upper end is 27.8 % [one-half of Wilson's whole for no failure in ten, common tables].
func TestShareAndItsScatter(t *testing.T) {
	if got := 2 * wilson(0, 10); math.Abs(got-0.2775) > 0.0005 {
		t.Errorf("%g", got)
	}
}

func TestBandHolds(t *testing.T) {
	b := Band{0.05715, 0.0005, 0, true}
	held := []bool{}
	for _, si := range []float64{0.0566, 0.05665, 0.057, 0.05715, 0.0572} {
		held = append(held, b.Holds(Value{si, true}))
	}
	if want := []bool{false, true, true, true, false}; !slices.Equal(held, want) {
		t.Errorf("%v, want %v", held, want)
	}
	if b.Holds(Value{}) {
		t.Error("what was not measured holds")
	}
}
