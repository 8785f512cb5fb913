package bridge

import (
	"errors"

	"finwright/core/search"
)

// foundPart is the answer of a search for some places of its grid, or merged for all. Every design of it is seen, and either cut by
// something or passed.
type foundPart struct {
	Seen    int            `json:"seen"`
	Passed  int            `json:"passed"`
	Cuts    map[string]int `json:"cuts"`              // how many designs, by what
	Best    []foundDesign  `json:"best"`              // in the order of what is wanted first, then of the grid
	Front   []foundDesign  `json:"front"`             // in the order of what is wanted, then of the grid
	Thinned float64        `json:"thinned,omitempty"` // the share by which points of the front may differ that stand for one another; 0: it is whole
}

// foundDesign is one design.
type foundDesign struct {
	Place   int        `json:"place"`
	Outside bool       `json:"outside,omitempty"` // a correlation that it rests on is beyond its range
	Values  []*float64 `json:"values"`            // in the order of search.Measures, in SI; null: not known
}

func partOf(p *search.Part) foundPart {
	return foundPart{Seen: p.Seen, Passed: p.Passed, Cuts: p.Counts(), Best: designsOf(p.Best), Front: designsOf(p.Front)}
}

func designsOf(list []search.Found) []foundDesign {
	out := make([]foundDesign, len(list))
	for i := range list {
		f := &list[i]
		values := make([]*float64, len(search.Measures))
		for at := range values {
			if f.Values.Known(at) {
				values[at] = &f.Values.SI[at]
			}
		}
		out[i] = foundDesign{f.Place, f.Outside, values}
	}
	return out
}

// part reads a part of the answer of s.
func (f *foundPart) part(s *search.Search) (search.Part, error) {
	p, ok := s.Restore(f.Seen, f.Passed, f.Cuts, foundIn(f.Best), foundIn(f.Front))
	if !ok {
		return p, errors.New("bridge: no part of this search")
	}
	return p, nil
}

func foundIn(list []foundDesign) []search.Found {
	out := make([]search.Found, len(list))
	for i, d := range list {
		out[i] = search.Found{Place: d.Place, Outside: d.Outside}
		for at, x := range d.Values {
			if x != nil && at < len(search.Measures) {
				out[i].Values.Set(at, *x)
			}
		}
	}
	return out
}
