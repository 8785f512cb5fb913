package plots

import (
	"encoding/json"
	"math"
	"testing"

	"finwright/core/report"
)

// A band is drawn as its floor and what it adds, heaped; floor and sum must be
// the bounds given, and each panel must heap on its own.
func TestBandIsHeapedOnItsOwnFloor(t *testing.T) {
	c := sample()
	for i := range c.Panels {
		p := &c.Panels[i]
		p.Lines = []report.Line{{Main: true, X: []float64{1, 2, 3}, Y: []float64{5, 6, 7}}}
		p.Low, p.High = []float64{math.NaN(), 5, 6}, []float64{math.NaN(), 8, 10}
	}
	var option struct {
		Series []struct {
			ID    string
			Stack string
			Data  []json.RawMessage // pairs, but for the names of lines
		}
	}
	if err := json.Unmarshal(Options(c)[0].Option, &option); err != nil {
		t.Fatal(err)
	}
	stacks := map[string]float64{}
	for _, s := range option.Series {
		if s.Stack != "" {
			var last [2]float64
			if err := json.Unmarshal(s.Data[len(s.Data)-1], &last); err != nil {
				t.Fatal(err)
			}
			stacks[s.Stack] += last[1]
		}
	}
	if len(stacks) != len(c.Panels) {
		t.Errorf("%d heaps for %d panels", len(stacks), len(c.Panels))
	}
	for name, top := range stacks {
		if top != 10 {
			t.Errorf("heap %s reaches %g, want 10", name, top)
		}
	}
}
