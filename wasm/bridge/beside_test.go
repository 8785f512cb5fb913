package bridge

import (
	"math"
	"testing"

	"finwright/core/document"
)

// What is kept stands in every plot of a section where its own figures have it, with its own curve through that place.
func TestKeptStandsInThePlots(t *testing.T) {
	low, wrong := document.New(), document.New()
	low.Fields["fin_height"] = document.Entry{Text: "10 mm", Origin: document.Customer}
	wrong.Fields["fin_height"] = document.Entry{Text: "low", Origin: document.Customer}
	for section, count := range map[string]int{"surface": 3, "heat": 4, "making": 0, "options": 0} {
		var got standing
		if e := ask(t, "beside", map[string]any{"designs": []document.Document{low, wrong}, "section": section, "system": "si"}, &got); e != "" || len(got.Plots) != count {
			t.Fatalf("%s: %s, %d plots", section, e, len(got.Plots))
		}
		for _, p := range got.Plots {
			for i, panel := range p.Panels {
				if len(panel.Spots) != 1 || p.ID != "map" && len(panel.Paths) != 1 {
					t.Errorf("%s, %d: %d places, %d curves", p.ID, i, len(panel.Spots), len(panel.Paths))
				}
			}
		}
	}
	var got standing
	if e := ask(t, "beside", map[string]any{"designs": []document.Document{low}, "section": "surface", "system": "si"}, &got); e != "" {
		t.Fatal(e)
	}
	height := got.Plots[0].Panels[0].Spots[0]
	if got.Plots[0].ID != "height" || math.Abs(height.X-10) > 1e-9 || math.Abs(height.Y-11.97) > 0.01 {
		t.Errorf("it stands at %+v of %s", height, got.Plots[0].ID)
	}
	if e := ask(t, "beside", map[string]any{"designs": []document.Document{low}, "section": "surface", "system": "cgs"}, &got); e == "" {
		t.Error("any system is taken")
	}
}
