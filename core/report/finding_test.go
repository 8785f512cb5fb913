package report

import (
	"math"
	"slices"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// A title says what its curves do, not what such curves do as a rule.
func TestTitlesAreFindings(t *testing.T) {
	w := Writer{Texts: message.English(), System: units.SI}
	for _, c := range []struct {
		entries [2]string
		want    string
	}{
		{[2]string{}, "Closer fins: more surface, each fin better used, because the film falls"},
		{[2]string{"film_source", "given"}, "Closer fins: more surface, used as well as before"},
	} {
		d := cases.First()
		if c.entries[0] != "" {
			d.Fields[c.entries[0]] = document.Entry{Text: c.entries[1], Origin: document.Customer}
		}
		in, h, err := design.ReadAndRate(d, nil)
		if err != nil {
			t.Fatal(err)
		}
		plots := w.Curves(in, h)
		if plots[1].Title != c.want {
			t.Errorf("%v: %q, want %q", c.entries, plots[1].Title, c.want)
		}
	}
}

func TestFindingOfFallingUse(t *testing.T) {
	c := Curves{Panels: []Panel{{Lines: []Curve{{Main: true, Y: []float64{math.NaN(), 0.9, 0.88, 0.85}}}}}}
	if got := usedAsCloser(c).Key; got != "plot.used_worse" {
		t.Errorf("falling use is called %s", got)
	}
}

// What whole tubes make of a curve is not called its best place.
func TestBestOfACurve(t *testing.T) {
	w := Writer{Texts: message.English(), System: units.SI}
	for _, c := range []struct {
		y    []float64
		want message.Key
	}{
		{[]float64{70, 75, 71, 74, 70}, "plot.level"},
		{[]float64{50, 40, 30, 20, 10}, "plot.yield_height.lowest"},
		{[]float64{math.NaN(), 40, 30, 20, 10}, "plot.yield_height.lowest"},
		{[]float64{10, 20, 30, 40, math.NaN()}, "plot.yield_height.highest"},
		{[]float64{10, 20, 30, 20, 10}, "plot.peak"},
		{[]float64{math.NaN(), math.NaN()}, "plot.nowhere"},
	} {
		x := []float64{5, 10, 15, 20, 25}
		got := w.best(Curves{ID: "yield_height", X: Axis{Kind: units.Height}, Panels: []Panel{{Lines: []Curve{{X: x, Y: c.y}}}}}, 0)
		if message.Key(got.Key) != c.want {
			t.Errorf("%v is best %s, want %s", c.y, got.Key, c.want)
		}
	}
}

// The map begins where fins begin, or with the design where that has less.
func TestMapBeginsWhereFinsBegin(t *testing.T) {
	w := Writer{Texts: message.English(), System: units.SI}
	for _, c := range []struct {
		height string
		from   float64
	}{{"12 mm", 2}, {"1.5 mm", 1.5}} {
		d := cases.First()
		d.Fields["fin_height"] = document.Entry{Text: c.height, Origin: document.Customer}
		in, h, err := design.ReadAndRate(d, nil)
		if err != nil {
			t.Fatal(err)
		}
		m := w.Map(in, h, rating.AreaRatio)
		if math.Abs(m.X.From-c.from) > 1e-9 || m.Y.From != 80 {
			t.Errorf("%s: the map begins at %g and %g", c.height, m.X.From, m.Y.From)
		}
		if slices.Contains(m.Bands, Absent) {
			t.Errorf("%s: there are blank places", c.height)
		}
	}
}
