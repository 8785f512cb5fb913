package bridge

import (
	"errors"

	"finwright/core/document"
	"finwright/core/paper"
	"finwright/core/report"
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

// searchToldArgs ask for the answer as it is shown, with other designs marked in its picture: that in hand, then those beside it.
type searchToldArgs struct {
	searchArgs
	Part  foundPart           `json:"part"`
	Marks []document.Document `json:"marks"`
	X     string              `json:"x,omitempty"` // measures of the picture
	Y     string              `json:"y,omitempty"`
}

func searchTold(a searchToldArgs) (report.SearchTold, error) {
	s, err := a.read()
	if err != nil {
		return report.SearchTold{}, err
	}
	p, err := a.Part.part(s)
	if err != nil {
		return report.SearchTold{}, err
	}
	c, err := openShop(a.Shop)
	if err != nil {
		return report.SearchTold{}, err
	}
	w := writer(a.Document)
	w.Currency = c.Currency
	var marks []search.Found
	for _, d := range a.Marks {
		f, _ := search.Evaluate(d, a.Problem.Day, &c) // one that cannot be rated has no place in the picture
		marks = append(marks, f)
	}
	return w.Found(s, &p, a.Part.Thinned, marks, a.X, a.Y), nil
}

// searchPaperArgs ask for the answer on paper.
type searchPaperArgs struct {
	searchArgs
	Part  foundPart `json:"part"`
	Older bool      `json:"older,omitempty"` // something has changed since
}

func searchPaper(a searchPaperArgs) (paper.Paper, error) {
	s, err := a.read()
	if err != nil {
		return paper.Paper{}, err
	}
	p, err := a.Part.part(s)
	if err != nil {
		return paper.Paper{}, err
	}
	c, err := openShop(a.Shop)
	if err != nil {
		return paper.Paper{}, err
	}
	w := writer(a.Document)
	w.Currency = c.Currency
	return w.SearchPaper(report.PrintedSearch{Search: s, Problem: &a.Problem, Part: &p, Thinned: a.Part.Thinned, Document: a.Document, Shop: c.Name, Older: a.Older}), nil
}

// searchBindsArgs ask what a search in which one thing gives says of it.
type searchBindsArgs struct {
	searchArgs
	Part foundPart `json:"part"`
}

type searchBinds struct {
	Said string `json:"said"`
}

func searchBound(a searchBindsArgs) (searchBinds, error) {
	s, err := a.read()
	if err != nil {
		return searchBinds{}, err
	}
	p, err := a.Part.part(s)
	if err != nil {
		return searchBinds{}, err
	}
	return searchBinds{writer(a.Document).Binds(a.Problem.Give, &p, s.Misses())}, nil
}
