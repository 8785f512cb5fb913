package search

import (
	"slices"

	"finwright/core/document"
	"finwright/core/numeric"
	"finwright/core/shop"
)

// Varied are the fields that vary, in the order of the grid.
func (s *Search) Varied() []string {
	out := make([]string, len(s.axes))
	for i := range s.axes {
		out[i] = s.axes[i].ID
	}
	return out
}

// Values are those that the i-th of Varied was tried with.
func (s *Search) Values(i int) []string { return s.axes[i].texts }

// Texts are the values of the design at a place, in the order of Varied.
func (s *Search) Texts(place int) []string {
	out := make([]string, len(s.axes))
	for i, at := range s.Steps(place) {
		out[i] = s.axes[i].texts[at]
	}
	return out
}

// Steps are which of its values each of Varied has at a place.
func (s *Search) Steps(place int) []int {
	out := make([]int, len(s.axes))
	for i := range s.axes {
		out[i] = place / s.block[i] % s.axes[i].size()
	}
	return out
}

// Asked are the places of the measures that are told of a design: what is wanted first, then what must hold, in any case duty, price and tubes.
func (s *Search) Asked() []int {
	out := slices.Clone(s.wanted)
	for at := range miss {
		if s.must.states(at) && !slices.Contains(out, at) {
			out = append(out, at)
		}
	}
	for _, at := range []int{duty, price, tubes} {
		if !slices.Contains(out, at) {
			out = append(out, at)
		}
	}
	return out
}

// CutCount is how many designs a cut left out.
type CutCount struct {
	Cut
	Count int
}

// CutsByCount returns the cuts that left any out, the largest first.
func (p *Part) CutsByCount() []CutCount {
	var out []CutCount
	for i, n := range p.Cuts {
		if n > 0 {
			out = append(out, CutCount{cuts[i], n})
		}
	}
	return numeric.Sorted(out, func(a, b *CutCount) int { return b.Count - a.Count })
}

// Missed returns by what share, together, a design of the search for the nearest misses what must hold [-].
func (f *Found) Missed() float64 { return f.Values.SI[miss] }

// Evaluate returns the measures of a design that is in no grid, whatever it holds; ok is false where it cannot be rated.
func Evaluate(d document.Document, day string, c *shop.Capability) (f Found, ok bool) {
	s, err := New(d, Problem{Wanted: []Measure{Tubes}, Outside: true, Day: day}, c)
	if err != nil {
		return f, false
	}
	p := s.Chunk(0, 1, Hurdle{})
	if len(p.Best) == 0 {
		return f, false
	}
	return p.Best[0], true
}

// Misses reports whether designs are searched by how much they miss what must hold.
func (s *Search) Misses() bool { return s.loose != 0 }
