package bridge

import (
	"maps"
	"math"
	"reflect"
	"testing"

	"finwright/core/document"
	"finwright/core/report"
)

// askedFor is a small search, as a page asks for it.
func askedFor(more map[string]any) map[string]any {
	args := map[string]any{
		"document": document.New(),
		"problem": map[string]any{
			"axes": []map[string]any{
				{"field": "fin_pitch", "low": "8 fpi", "high": "11 fpi", "step": "1 fpi"},
				{"field": "tubes_per_row", "texts": []string{"20", "25", "30", "35"}},
				{"field": "tube_length", "low": "3 m", "high": "6 m", "step": "0.5 m"},
			},
			"must":   map[string]string{"duty": "900 kW", "line": "made"},
			"wanted": []string{"price", "duty"},
		},
	}
	maps.Copy(args, more)
	return args
}

// A page asks how many there are, starts, asks for chunks, merges them as they come, and looks at what was found: the rows of the
// designs have the numbers that they were found by.
func TestSearchFromSizeToDesigns(t *testing.T) {
	var size sized
	var started searchStarted
	if e := ask(t, "search_size", askedFor(nil), &size); e != "" || size.Count != 4*4*7 || len(size.Gives) != 3 {
		t.Fatalf("%s: %+v", e, size)
	}
	if e := ask(t, "search_start", askedFor(map[string]any{"sights": 20}), &started); e != "" || started.First.Seen > 0 {
		t.Fatalf("%s: %+v", e, started)
	}
	whole := foundPart{Cuts: map[string]int{}, Best: []foundDesign{}, Front: []foundDesign{}}
	for from := 0; from < size.Count; from += 50 {
		var part, merged foundPart
		if e := ask(t, "search_chunk", askedFor(map[string]any{"hurdle": started.Hurdle, "from": from, "to": min(size.Count, from+50)}), &part); e != "" {
			t.Fatal(e)
		}
		last := from+50 >= size.Count
		if e := ask(t, "search_merge", askedFor(map[string]any{"parts": []foundPart{whole, part}, "last": last}), &merged); e != "" {
			t.Fatal(e)
		}
		whole = merged
	}
	wholeLists(t, "part", reflect.ValueOf(whole))
	left := whole.Passed
	for _, n := range whole.Cuts {
		left += n
	}
	if whole.Seen != size.Count || left != size.Count || whole.Passed == 0 || len(whole.Front) < 2 || whole.Thinned != 0 {
		t.Fatalf("%d of %d seen, %d passed and cut by %v", whole.Seen, size.Count, whole.Passed, whole.Cuts)
	}
	var shown report.ShownSearch
	if e := ask(t, "search_show", askedFor(map[string]any{"part": whole, "x": "price", "y": "duty"}), &shown); e != "" {
		t.Fatal(e)
	}
	wholeLists(t, "shown", reflect.ValueOf(shown))
	if cell := shown.Best[0].Cells[0]; len(shown.Points) != whole.Passed || shown.Measures[0].Unit != "kW" || cell.Unit != "kW" || cell.Value == "" || len(shown.Cuts) != len(whole.Cuts) {
		t.Errorf("%d points, %+v", len(shown.Points), shown.Best[0])
	}
	if first := shown.Points[0]; !first.Front || first.Place != whole.Front[0].Place || math.Abs(first.Y*1000-*whole.Front[0].Values[0]) > 1e-6*first.Y*1000 {
		t.Errorf("%+v is not the first of the front", first)
	}
	var designs searchDesigns
	var list listed
	places := []int{whole.Best[0].Place, whole.Front[len(whole.Front)-1].Place}
	if e := ask(t, "search_designs", askedFor(map[string]any{"places": places}), &designs); e != "" {
		t.Fatal(e)
	}
	if e := ask(t, "rows", map[string]any{"documents": designs.Documents}, &list); e != "" {
		t.Fatal(e)
	}
	found := []foundDesign{whole.Best[0], whole.Front[len(whole.Front)-1]}
	for i, row := range list.Rows {
		for _, cell := range row.Cells {
			if at := map[string]int{"duty": 0, "price": 11}[cell.ID]; cell.ID == "duty" || cell.ID == "price" {
				if math.Abs(cell.SI-*found[i].Values[at]) > 1e-9*cell.SI {
					t.Errorf("the row of %d has a %s of %g, found by %g", found[i].Place, cell.ID, cell.SI, *found[i].Values[at])
				}
			}
		}
	}
}

func TestSearchRefuses(t *testing.T) {
	for name, more := range map[string]map[string]any{
		"search_chunk":   {"hurdle": map[string]any{}, "from": 0, "to": 1e6},
		"search_designs": {"places": []int{-1}},
		"search_merge":   {"parts": []foundPart{{Cuts: map[string]int{"invention": 1}}}},
		"search_size":    {"problem": map[string]any{"axes": []any{}, "must": map[string]string{"duty": "much"}, "wanted": []string{"price"}}},
	} {
		var reply any
		if e := ask(t, name, askedFor(more), &reply); e == "" {
			t.Errorf("%s answers %v", name, more)
		}
	}
	var axes searchable
	if e := ask(t, "search_axes", map[string]any{"document": document.New()}, &axes); e != "" || len(axes.Axes) < 10 {
		t.Errorf("%s: %+v", e, axes)
	}
}
