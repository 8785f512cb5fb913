package charts

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"regexp"
	"slices"
	"testing"

	"finwright/core/message"
)

type option struct {
	Animation *bool
	Tooltip   any
	Grid      []struct{ Top, Bottom string }
	XAxis     []struct{ Name string }
	YAxis     []struct {
		Name      string
		NameGap   float64
		AxisLabel struct {
			HideOverlap, ShowMinLabel, ShowMaxLabel bool
			LineHeight                              float64
		}
	}
	Series []struct {
		ID    string
		Stack string
		Data  []any
	}
}

// each visits the option of every chart in both themes.
func each(t *testing.T, visit func(name string, text json.RawMessage, o option)) {
	t.Helper()
	text, err := JSON(message.English())
	if err != nil {
		t.Fatal(err)
	}
	var all map[string][]Plot
	if err := json.Unmarshal(text, &all); err != nil {
		t.Fatal(err)
	}
	places := inPage(t)
	if len(all) != 2 {
		t.Errorf("options for %d systems of units", len(all))
	}
	for system, list := range all {
		var drawn []string
		for _, plot := range list {
			drawn = append(drawn, plot.ID)
			for theme, text := range map[string]json.RawMessage{"light": plot.Option, "dark": plot.Dark} {
				var o option
				if err := json.Unmarshal(text, &o); err != nil {
					t.Fatal(err)
				}
				visit(system+" "+plot.ID+" "+theme, text, o)
			}
		}
		if slices.Sort(drawn); !slices.Equal(drawn, places) {
			t.Errorf("%s: options of the plots %q, the page has places for %q", system, drawn, places)
		}
	}
}

// inPage lists the plots that the page has a place for.
func inPage(t *testing.T) []string {
	t.Helper()
	page, err := os.ReadFile("../index.html")
	if err != nil {
		t.Fatal(err)
	}
	var places []string
	for _, found := range regexp.MustCompile(`data-plot="(\w+)"`).FindAllSubmatch(page, -1) {
		places = append(places, string(found[1]))
	}
	if len(places) < 7 {
		t.Errorf("the page has places for the plots %q alone", places)
	}
	slices.Sort(places)
	return places
}

func TestOptionsKeepWithThePage(t *testing.T) {
	each(t, func(name string, text json.RawMessage, o option) {
		for _, forbidden := range []string{"__f__", "function", "toolbox", "dataView", "NaN", "<"} {
			if bytes.Contains(text, []byte(forbidden)) {
				t.Errorf("%s holds %q", name, forbidden)
			}
		}
		if o.Animation == nil || *o.Animation {
			t.Errorf("%s moves by itself", name)
		}
		if o.Tooltip != nil {
			t.Errorf("%s: a tooltip of the chart library breaks the style policy", name)
		}
		if o.XAxis[len(o.XAxis)-1].Name == "" {
			t.Errorf("%s: the x axis has no name", name)
		}
		for _, y := range o.YAxis {
			if y.Name == "" {
				t.Errorf("%s: a y axis has no name", name)
			}
		}
	})
}

// In the lowest chart of the page no text stands on another: numbers leave their like out, and the
// name of a panel is clear of the last number of the one above it.
func TestTextsStandApartInALowChart(t *testing.T) {
	const lowest = 11.5 * 16 // px, by the page's style
	each(t, func(name string, _ json.RawMessage, o option) {
		for i, y := range o.YAxis {
			if l := y.AxisLabel; !l.HideOverlap || !l.ShowMinLabel || !l.ShowMaxLabel || l.LineHeight != fontTick {
				t.Errorf("%s: the numbers of y axis %d may stand on one another: %+v", name, i, l)
			}
			if i == 0 {
				continue
			}
			var above, below float64
			if _, err := fmt.Sscanf(o.Grid[i-1].Bottom+" "+o.Grid[i].Top, "%g%% %g%%", &above, &below); err != nil {
				t.Fatal(err)
			}
			if gap := lowest * (above + below - 100) / 100; gap < fontTick/2+fontName+y.NameGap {
				t.Errorf("%s: %g px between panels", name, gap)
			}
		}
	})
}

func TestOptionsHoldNoData(t *testing.T) {
	each(t, func(name string, _ json.RawMessage, o option) {
		for _, s := range o.Series {
			if len(s.Data) > 0 {
				t.Errorf("%s: series %s has data", name, s.ID)
			}
		}
	})
}

// A band and its floor are heaped, whatever their grid: each panel needs a heap of its own.
func TestEachPanelHeapsOnItsOwn(t *testing.T) {
	heaped := false
	each(t, func(name string, _ json.RawMessage, o option) {
		of := map[string][]string{}
		for _, s := range o.Series {
			if s.Stack != "" {
				of[s.Stack] = append(of[s.Stack], s.ID[1:])
			}
		}
		for heap, parts := range of {
			heaped = true
			if !slices.Equal(parts, []string{"floor", "band"}) {
				t.Errorf("%s: heap %s is of %v", name, heap, parts)
			}
		}
	})
	if !heaped {
		t.Error("no chart has a band")
	}
}
