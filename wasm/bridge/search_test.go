package bridge

import (
	"maps"
	"math"
	"reflect"
	"slices"
	"strings"
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
	var told report.SearchTold
	if e := ask(t, "search_told", askedFor(map[string]any{"part": whole, "marks": []document.Document{document.New()}, "x": "price", "y": "duty"}), &told); e != "" {
		t.Fatal(e)
	}
	wholeLists(t, "told", reflect.ValueOf(told))
	heads := told.Columns
	if len(heads) != 3+told.Measures || heads[0].ID != "fin_pitch" || heads[3].ID != "price" || heads[3].Unit != "EUR" || len(told.Rows) != len(whole.Best) || !told.Rows[0].Front {
		t.Errorf("%+v, %+v", heads, told.Rows[0])
	}
	if row := told.Rows[0]; row.Place != whole.Best[0].Place || len(row.Cells) != len(heads) || slices.Contains(row.Cells, "") {
		t.Errorf("%+v", row)
	}
	kinds := map[string]int{}
	for _, p := range told.Picture.Points {
		kinds[p.Kind]++
		if !(p.X >= 0 && p.X <= 1 && p.Y >= 0 && p.Y <= 1) || p.Text == "" {
			t.Errorf("%+v", p)
		}
	}
	if kinds["best"] != len(whole.Best) || kinds["front"] != len(whole.Front) || kinds["hand"] != 1 {
		t.Errorf("%v points, %d best and %d in front", kinds, len(whole.Best), len(whole.Front))
	}
	for _, axis := range []report.SearchScale{told.Picture.X, told.Picture.Y} {
		if len(axis.Ticks) < 2 || len(axis.Ticks) > 9 || axis.Label == "" {
			t.Errorf("%+v", axis)
		}
		for i, tick := range axis.Ticks {
			if tick.At < 0 || tick.At > 1 || i > 0 && tick.At <= axis.Ticks[i-1].At {
				t.Errorf("%+v", axis)
			}
		}
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
	var form report.SearchForm
	if e := ask(t, "search_form", map[string]any{"document": document.New()}, &form); e != "" || len(form.Axes) < 10 || len(form.Musts) < 15 || len(form.Wanted) < 6 {
		t.Errorf("%s: %+v", e, form)
	}
}

// Where nothing holds, what would have to give is told of each thing that must hold: by how much, or that it does not help alone.
func TestSearchTellsWhatMustGive(t *testing.T) {
	problem := func(give string) map[string]any {
		p := askedFor(nil)["problem"].(map[string]any)
		p["must"] = map[string]string{"duty": "9 MW", "air_drop": "400 Pa"}
		p["give"] = give
		return map[string]any{"problem": p}
	}
	said := func(give string) string {
		var started searchStarted
		var part foundPart
		var binds searchBinds
		if e := ask(t, "search_start", askedFor(problem(give)), &started); e != "" {
			t.Fatal(e)
		}
		args := problem(give)
		args["hurdle"], args["from"], args["to"] = started.Hurdle, 0, 4*4*7
		if e := ask(t, "search_chunk", askedFor(args), &part); e != "" {
			t.Fatal(e)
		}
		args = problem(give)
		args["part"] = part
		if e := ask(t, "search_binds", askedFor(args), &binds); e != "" {
			t.Fatal(e)
		}
		return binds.Said
	}
	if got := said("duty"); !strings.Contains(got, "Duty: by ") || !strings.Contains(got, "% alone") {
		t.Error(got)
	}
	if got := said("air_drop"); !strings.Contains(got, "nothing holds yet") {
		t.Error(got)
	}
}
