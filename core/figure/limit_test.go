package figure

import (
	"math"
	"testing"

	"finwright/core/message"
	"finwright/core/units"
)

func TestLimit(t *testing.T) {
	inf := math.Inf(1)
	for _, c := range []struct {
		name   string
		limit  Limit
		in     bool
		passed float64
		text   string
	}{
		{"inside", Limit{"reynolds", units.Count, 5000, 1000, 8000, 0}, true, 0, ""},
		{"on the bound as inches give it", Limit{"fin_height", units.Height, 0.625 * 0.0254, 0, 0.015875, 0}, true, 0, ""},
		{"above", Limit{"reynolds", units.Count, 8638, 1000, 8000, 0}, false, 0.07975, "Reynolds number 8638 is outside 1000 to 8000"},
		{"below", Limit{"rows", units.Count, 4, 6, inf, 0}, false, 1.0 / 3, "tube rows 4 is below 6"},
		{"open below", Limit{"rows", units.Count, 9, -inf, 6, 0}, false, 0.5, "tube rows 9 is above 6"},
		{"above zero", Limit{"relative_humidity", units.Factor, 0.5, -1, 0, 0}, false, 0.5, "relative humidity 0.5 is outside -1 to 0"},
		{"a single value", Limit{"layout", units.Count, 1, 0, 0, 0}, false, 1, ""},
		{"of a choice", Limit{"in_line", units.Count, 1, 0, 0, 0}, false, 1, "rows stand in line, and it holds for staggered ones"},
		{"no number", Limit{"reynolds", units.Count, math.NaN(), 1000, 8000, 0}, false, inf, ""},
		{"9 fins to the inch are 2.822 mm", Limit{"fin_pitch", units.Gap, 0.0254 / 9, 2.31e-3, 2.82e-3, 1e-5}, true, 0, ""},
		{"past the last digit", Limit{"fin_pitch", units.Gap, 2.826e-3, 2.31e-3, 2.82e-3, 1e-5}, false, 1e-6 / 2.82e-3, ""},
		{"before the first", Limit{"fin_pitch", units.Gap, 2.304e-3, 2.31e-3, 2.82e-3, 1e-5}, false, 1e-6 / 2.31e-3, ""},
	} {
		if c.limit.In() != c.in || math.Abs(c.limit.Passed()-c.passed) > 1e-9 && c.limit.Passed() != c.passed {
			t.Errorf("%s: In %v, Passed %v; want %v, %v", c.name, c.limit.In(), c.limit.Passed(), c.in, c.passed)
		}
		if c.text != "" {
			if got := message.English().Render(c.limit.Message(), units.SI); got != c.text {
				t.Errorf("%s: %q, want %q", c.name, got, c.text)
			}
		}
	}
}

func TestWorst(t *testing.T) {
	in := Limit{"reynolds", units.Count, 5000, 1000, 8000, 0}
	out := Limit{"rows", units.Count, 3, 6, math.Inf(1), 0}
	if !AllIn([]Limit{in}) || AllIn([]Limit{in, out}) || Worst([]Limit{in, out}) != 0.5 || Worst(nil) != 0 {
		t.Error("AllIn or Worst disagrees with its limits")
	}
}
