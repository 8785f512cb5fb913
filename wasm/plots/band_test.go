package plots

import (
	"encoding/json"
	"math"
	"testing"

	"finwright/core/report"
	"finwright/core/units"
)

// A band is drawn as its floor and what it adds, heaped: the sum must be the upper bound given.
func TestBandReachesItsBound(t *testing.T) {
	c := sample()
	for i := range c.Panels {
		p := &c.Panels[i]
		p.Lines = []report.Curve{{Main: true, X: []float64{1, 2, 3}, Y: []float64{5, 6, 7}}}
		p.Low, p.High = []float64{math.NaN(), 5, 6}, []float64{math.NaN(), 8, 10}
	}
	var patch struct {
		Series []struct {
			ID   string
			Data []json.RawMessage // pairs, but for the names of lines
		}
	}
	if err := json.Unmarshal(written(Patch(c, nil, units.SI).Patch), &patch); err != nil {
		t.Fatal(err)
	}
	ends := map[string]float64{}
	for _, s := range patch.Series {
		if panel := s.ID[:1]; s.ID == SeriesID(0, "floor") || s.ID == SeriesID(0, "band") || s.ID == SeriesID(1, "floor") || s.ID == SeriesID(1, "band") {
			var last [2]float64
			if err := json.Unmarshal(s.Data[len(s.Data)-1], &last); err != nil {
				t.Fatal(err)
			}
			ends[panel] += last[1]
		}
	}
	if len(ends) != len(c.Panels) {
		t.Errorf("%d heaps for %d panels", len(ends), len(c.Panels))
	}
	for panel, top := range ends {
		if top != 10 {
			t.Errorf("the heap of panel %s reaches %g, want 10", panel, top)
		}
	}
}
