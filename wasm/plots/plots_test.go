package plots

import (
	"bytes"
	"encoding/json"
	"flag"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"finwright/core/report"
	"finwright/core/units"
)

var update = flag.Bool("update", false, "rewrite the golden patches")

// sample is a plot of two panels and three lines with made-up shapes: a parabola and a falling line.
func sample() report.Curves {
	ratio := report.Panel{Figure: "area_ratio", Label: "Area ratio", Mark: &report.Point{X: 15.875, Y: 21.4}}
	used := report.Panel{Figure: "fin_efficiency", Label: "Fin efficiency", Mark: &report.Point{X: 15.875, Y: 0.88}}
	for k, name := range []string{"0.30 mm", "0.41 mm", "0.61 mm"} {
		a, e := report.Curve{Label: name, Main: k == 1}, report.Curve{Label: name, Main: k == 1}
		for i := range 61 {
			x := 5 + float64(i)/3
			a.X, a.Y = append(a.X, x), append(a.Y, x*x/16+float64(k))
			e.X, e.Y = append(e.X, x), append(e.Y, 1-x/128+float64(k)/64)
		}
		ratio.Lines, used.Lines = append(ratio.Lines, a), append(used.Lines, e)
	}
	return report.Curves{
		ID:     "height",
		X:      report.Axis{Field: "fin_height", Unit: "mm", Label: "Fin height", Nudge: 0.5},
		Panels: []report.Panel{ratio, used},
		Title:  "Efficiency falls below 0.9 above 13 mm", Alt: "Against fin height",
	}
}

func sampleField() report.Map {
	f := report.Map{
		ID: "map", Quantity: "area_ratio", Columns: 24, Rows: 20, Title: "A ratio of 20 is reached from 14 mm", Alt: "A map",
		X:    report.SampledAxis{Axis: report.Axis{Field: "fin_height", Unit: "mm", Label: "Fin height", Nudge: 0.5}, From: 5, To: 25},
		Y:    report.SampledAxis{Axis: report.Axis{Field: "fin_pitch", Unit: "fins/m", Label: "Fins per length", Nudge: 5}, From: 200, To: 450},
		Ring: report.Point{X: 15.875, Y: 393.701},
	}
	var samples []float64
	for j := range f.Rows {
		for i := range f.Columns {
			samples = append(samples, 1+float64(i)/8+float64(j)/16)
		}
	}
	f.Fill(samples, func(level float64) string { return strconv.FormatFloat(level, 'g', 4, 64) })
	return f
}

// everything is each piece of JSON that the package makes, by name.
func everything() map[string]json.RawMessage {
	return map[string]json.RawMessage{
		"height_patch": written(Patch(sample(), nil, units.SI).Patch), "map_patch": written(NewMap(sampleField()).Patch), "map_ring": written(MoveRing(sampleField()).Patch),
	}
}

func written(o Option) json.RawMessage {
	text, err := json.Marshal(o)
	if err != nil {
		panic(err)
	}
	return text
}

func TestPatchesAreJSON(t *testing.T) {
	for name, text := range everything() {
		if !json.Valid(text) {
			t.Errorf("%s is no JSON: %.200s", name, text)
		}
	}
}

// golden compares patches with what they were; it shows a change, not that either is right.
func TestGoldenPatches(t *testing.T) {
	for name, text := range everything() {
		file := filepath.Join("..", "..", "testdata", "golden", "plot_"+name+".json")
		var pretty bytes.Buffer
		if err := json.Indent(&pretty, bytes.TrimSpace(text), "", " "); err != nil {
			t.Fatal(err)
		}
		if *update {
			if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(file, append(pretty.Bytes(), '\n'), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		saved, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		var got, want any
		if err := json.Unmarshal(text, &got); err != nil {
			t.Fatal(err)
		}
		if err := json.Unmarshal(saved, &want); err != nil {
			t.Fatal(err)
		}
		if at := differ(got, want); at != "" {
			t.Errorf("%s differs at %s; run the test with -update if that is meant", name, at)
		}
	}
}

// differ names the first place where two JSON values differ; numbers may by 1e-9.
func differ(a, b any) string {
	switch a := a.(type) {
	case map[string]any:
		b, ok := b.(map[string]any)
		if !ok || len(a) != len(b) {
			return "."
		}
		for key := range a {
			if at := differ(a[key], b[key]); at != "" {
				return "." + key + at
			}
		}
		return ""
	case []any:
		b, ok := b.([]any)
		if !ok || len(a) != len(b) {
			return "[]"
		}
		for i := range a {
			if at := differ(a[i], b[i]); at != "" {
				return "[]" + at
			}
		}
		return ""
	case float64:
		b, ok := b.(float64)
		if !ok || math.Abs(a-b) > 1e-9*math.Abs(a) {
			return "."
		}
		return ""
	}
	if a != b {
		return "."
	}
	return ""
}

// A patch fills the series that it says it does: the chart has no others.
func TestPatchFillsItsSeries(t *testing.T) {
	ids := func(text json.RawMessage) []string {
		var o struct{ Series []struct{ ID string } }
		if err := json.Unmarshal(text, &o); err != nil {
			t.Fatal(err)
		}
		var ids []string
		for _, s := range o.Series {
			ids = append(ids, s.ID)
		}
		return ids
	}
	var want []string
	for i, panel := range Series(sample()) {
		for _, id := range panel {
			want = append(want, SeriesID(i, id))
		}
	}
	all := everything()
	if got := ids(all["height_patch"]); !slices.Equal(got, want) {
		t.Errorf("curves: series %v, want %v", got, want)
	}
	if got := ids(all["map_patch"]); !slices.Equal(got, MapSeries()) {
		t.Errorf("map: series %v, want %v", got, MapSeries())
	}
	if got := ids(all["map_ring"]); len(got) > 0 {
		t.Errorf("moving the ring changes %v", got)
	}
	f := sampleField()
	if got := MoveRing(f).Rings; len(got) != 1 || *got[0] != (Spot{f.Ring.X, f.Ring.Y}) {
		t.Errorf("the ring is at %v", got)
	}
}

func TestGapsAndAbsentMarks(t *testing.T) {
	c := sample()
	c.Panels[0].Lines[1].Y[3] = math.NaN()
	c.Panels[0].Mark = nil
	u := Patch(c, nil, units.SI)
	var p struct {
		Series []struct {
			ID   string
			Data []any
		}
	}
	if err := json.Unmarshal(written(u.Patch), &p); err != nil {
		t.Fatal(err)
	}
	if u.X.Steps != nil {
		t.Error("a design outside the plot has steps")
	}
	for _, s := range p.Series {
		switch s.ID {
		case "0own":
			if point := s.Data[3].([]any); point[1] != nil {
				t.Errorf("a gap is drawn at %v", point)
			}
		}
	}
	if u.Rings[0] != nil || u.Rings[1] == nil || *u.Rings[1] != Spot(*c.Panels[1].Mark) {
		t.Errorf("rings at %v", u.Rings)
	}
}

// An axis ends with its samples, so that a map fills it, and its ticks are round all the same.
func TestLineIsDottedBeyondItsRange(t *testing.T) {
	c := sample()
	own := &c.Panels[0].Lines[1]
	own.Beyond = make([]bool, len(own.X))
	for i, x := range own.X {
		own.Beyond[i] = x > 20
	}
	found := 0
	for _, p := range panelData(c.Panels[0], scales(c, nil).x, scales(c, nil).y[0]) {
		if p.id != "beyond" {
			continue
		}
		found++
		var data [][2]*float64
		if err := json.Unmarshal(p.data, &data); err != nil {
			t.Fatal(err)
		}
		for _, d := range data {
			if beyond := *d[0] > 20; beyond != (d[1] != nil) {
				t.Errorf("at %g: %v", *d[0], d[1])
			}
		}
	}
	if found != 1 {
		t.Errorf("%d series beyond the range, want one", found)
	}
}

func TestScaleOfSamples(t *testing.T) {
	s := filled(2.5, 23.75, ticksAcross)
	if s.low != 2.5 || s.high != 23.75 {
		t.Errorf("runs from %g to %g", s.low, s.high)
	}
	if got := strings.Join(s.texts, " "); got != "5 10 15 20" || len(s.ticks) != 4 {
		t.Errorf("ticks are %s", got)
	}
}

func TestSpread(t *testing.T) {
	for _, c := range []struct{ at, want []float64 }{
		{[]float64{0.1, 0.5, 0.9}, []float64{0.1, 0.5, 0.9}},
		{[]float64{0.5, 0.5, 0.5}, []float64{0.3, 0.5, 0.7}},
		{[]float64{0.4, 0.5}, []float64{0.35, 0.55}},
		{[]float64{0, 0, 0.05}, []float64{0, 0.2, 0.4}},
		{[]float64{0.95, 1, 1}, []float64{0.6, 0.8, 1}},
		{[]float64{0.1, 0.7, 0.75, 1}, []float64{0.1, 0.6, 0.8, 1}},
	} {
		at := slices.Clone(c.at)
		spread(at, 0.2)
		for i := range at {
			if math.Abs(at[i]-c.want[i]) > 1e-12 {
				t.Errorf("%v spreads to %v, want %v", c.at, at, c.want)
				break
			}
		}
	}
}

// The lowest panel of the page is 44 px high, in a low window; names are written 12 px high.
func TestNamesStandApartInTheLowestPanel(t *testing.T) {
	c := sample()
	var marks []struct{ Value [2]float64 }
	if err := json.Unmarshal(names(c.Panels[0].Lines, 25, round(0, 50, 5)), &marks); err != nil || len(marks) != 3 {
		t.Fatalf("%d names: %v", len(marks), err)
	}
	for i := range marks[1:] {
		if px := (marks[i+1].Value[1] - marks[i].Value[1]) / 50 * 44; px < 12 {
			t.Errorf("names %.1f px apart", px)
		}
	}
}

func TestHiddenLinesHaveNoName(t *testing.T) {
	c := sample()
	lines := c.Panels[0].Lines
	lines[0].Y = lines[1].Y
	text := string(names(lines, 25, round(0, 50, 5)))
	if strings.Contains(text, "0.30 mm") || !strings.Contains(text, "{own|0.41 mm}") || !strings.Contains(text, "0.61 mm") {
		t.Errorf("names are %s", text)
	}
}

func BenchmarkPatch(b *testing.B) {
	c := sample()
	for b.Loop() {
		Patch(c, nil, units.SI)
		Patch(c, nil, units.SI)
	}
}

func BenchmarkMap(b *testing.B) {
	f := sampleField()
	f.Columns, f.Rows = 200, 200
	var samples []float64
	for j := range f.Rows {
		for i := range f.Columns {
			samples = append(samples, 1+math.Hypot(float64(i)/50, float64(j)/90))
		}
	}
	for b.Loop() {
		f.Fill(samples, func(float64) string { return "1" })
		NewMap(f)
	}
}
