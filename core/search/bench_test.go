package search

import (
	"runtime"
	"testing"

	"finwright/core/document"
	"finwright/core/shop"
)

// question is "1.2 MW from water at 90 C to air at 30 C, at most 120 Pa, bank at most 6 m long: which tube and how many?", over a
// grid of 1,036,800 designs, or of 207,360.
func question(large bool) Problem {
	p := Problem{
		Axes: []Axis{
			{Field: "tube_od", Texts: []string{"25.4 mm", "31.75 mm", "38.1 mm"}},
			{Field: "fin_height", Texts: []string{"3/8 in", "1/2 in", "5/8 in"}},
			{Field: "fin_pitch", Low: "7 fpi", High: "11 fpi", Step: "1 fpi"},
			{Field: "face_velocity", Low: "2 m/s", High: "3.75 m/s", Step: "0.25 m/s"},
			{Field: "rows", Low: "3", High: "6", Step: "1"},
			{Field: "passes", Texts: []string{"1", "2", "3"}},
			{Field: "tubes_per_row", Low: "16", High: "58", Step: "6"},
			{Field: "tube_length", Low: "4.5 m", High: "7 m", Step: "0.5 m"},
		},
		Must:   map[string]string{"duty": "1.2 MW", "air_drop": "120 Pa", "tube_length": "6 m", "line": "made"},
		Wanted: []Measure{Price},
	}
	if large {
		p.Axes = append(p.Axes, Axis{Field: "fin_type", Texts: []string{"footed", "embedded"}}, Axis{Field: "tube_wall", Texts: []string{"14 BWG", "12 BWG"}})
		p.Axes[6] = Axis{Field: "tubes_per_row", Low: "16", High: "61", Step: "5"}
	}
	return p
}

// chunk is how many places a call of the page looks at.
const chunk = 8192

// search answers a problem in chunks, one after the other, and says how long its start took.
func search(b *testing.B, p Problem) (*Search, Part) {
	c := shop.House()
	s, err := New(document.New(), p, &c)
	if err != nil {
		b.Fatal(err)
	}
	hurdle, _ := s.Start(0)
	part := Part{}
	for from := 0; from < s.Count(); from += chunk {
		part = Merge(part, s.Chunk(from, min(from+chunk, s.Count()), hurdle))
	}
	return s, part
}

func BenchmarkStart(b *testing.B) {
	c := shop.House()
	s, err := New(document.New(), question(true), &c)
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		s.Start(0)
	}
}

// BenchmarkSearch tells of the question at both sizes, and of the large one with nothing refused and one thing wanted, what share each
// stage cuts and what share is rated.
func BenchmarkSearch(b *testing.B) {
	type named struct {
		name    string
		problem Problem
	}
	few, three := question(false), question(true)
	few.Axes, three.Wanted = few.Axes[1:5], []Measure{Price, Mass, FanPower}
	problems := []named{{"1k", few}, {"200k", question(false)}, {"1M", question(true)}, {"1M_three_wanted", three}}
	for _, wanted := range [][]Measure{{Price, Duty, FanPower}, {Price, Face, Duty}, {Tubes, FanPower, Duty}} {
		free := question(true)
		free.Must, free.Outside, free.Wanted = nil, true, wanted
		problems = append(problems, named{"1M_free_three_" + string(wanted[1]), free})
	}
	for _, m := range Measures {
		if m.Wanted {
			free := question(true)
			free.Must, free.Outside, free.Wanted = nil, true, []Measure{m.ID}
			problems = append(problems, named{"1M_free_" + string(m.ID), free})
		}
	}
	for _, p := range problems {
		b.Run(p.name, func(b *testing.B) {
			var s *Search
			var part Part
			for b.Loop() {
				s, part = search(b, p.problem)
			}
			if part.Seen != s.Count() {
				b.Errorf("%d of %d seen", part.Seen, s.Count())
			}
			for cut, n := range part.Cuts {
				if n > 0 {
					b.ReportMetric(100*float64(n)/float64(part.Seen), "%"+string(cuts[cut]))
				}
			}
			b.ReportMetric(100*float64(part.Passed)/float64(part.Seen), "%passed")
			b.ReportMetric(float64(len(part.Front)), "front")
			var m runtime.MemStats
			runtime.ReadMemStats(&m)
			b.ReportMetric(float64(m.Sys)/(1<<20), "MB") // of the program: in WebAssembly its linear memory
		})
	}
}
