package bridge

import (
	"errors"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/search"
)

// searchArgs is a problem with the document and the shop that it is for.
type searchArgs struct {
	Document document.Document `json:"document"`
	Shop     string            `json:"shop,omitempty"` // a capability file; empty: the one that ships
	Problem  search.Problem    `json:"problem"`
}

type searchableArgs struct {
	Document document.Document `json:"document"`
	Shop     string            `json:"shop,omitempty"`
}

// searchForm says what can be asked of a search, each thing that may vary over the shop's own list.
func searchForm(a searchableArgs) (report.SearchForm, error) {
	if err := document.Check(a.Document); err != nil {
		return report.SearchForm{}, err
	}
	c, err := openShop(a.Shop)
	if err != nil {
		return report.SearchForm{}, err
	}
	w := writer(a.Document)
	in, err := design.Read(a.Document)
	if err != nil {
		return report.SearchForm{}, err
	}
	return w.SearchForm(search.Own(&in, &c, a.Document.Units), a.Document), nil
}

// sized says how many designs a problem has, and what of it may be asked to give where none holds.
type sized struct {
	Count int      `json:"count"`
	Said  string   `json:"said"`
	Gives []string `json:"gives"`
}

func searchSize(a searchArgs) (sized, error) {
	s, err := a.read()
	if err != nil {
		return sized{}, err
	}
	return sized{s.Count(), texts().Render(message.New("search.count", "count", s.Count()), a.Document.Units), append([]string{}, a.Problem.Gives()...)}, nil
}

// searchStartArgs say how many designs are looked at; 0: as many as a hurdle takes.
type searchStartArgs struct {
	searchArgs
	Sights int `json:"sights,omitempty"`
}

// searchStarted is the hurdle that goes with every chunk of it, and a first sight of its answer, which no merge takes.
type searchStarted struct {
	Hurdle search.Hurdle `json:"hurdle"`
	First  foundPart     `json:"first"`
}

func searchStart(a searchStartArgs) (searchStarted, error) {
	s, err := a.read()
	if err != nil {
		return searchStarted{}, err
	}
	hurdle, first := s.Start(a.Sights)
	return searchStarted{hurdle, partOf(&first)}, nil
}

// searchChunkArgs are places of a grid from one on up to another.
type searchChunkArgs struct {
	searchArgs
	Hurdle search.Hurdle `json:"hurdle"`
	From   int           `json:"from"`
	To     int           `json:"to"`
}

func searchChunk(a searchChunkArgs) (foundPart, error) {
	s, err := a.read()
	if err != nil {
		return foundPart{}, err
	}
	if a.From < 0 || a.To < a.From || a.To > s.Count() || a.To-a.From > mostPlaces {
		return foundPart{}, errors.New("bridge: no such places")
	}
	p := s.Chunk(a.From, a.To, a.Hurdle)
	return partOf(&p), nil
}

// mostPlaces bounds a chunk: progress is told and a search can be stopped between chunks.
const mostPlaces = 1 << 17

// searchMergeArgs are parts of one answer; the last merge thins the front where it is too long.
type searchMergeArgs struct {
	searchArgs
	Parts []foundPart `json:"parts"`
	Last  bool        `json:"last,omitempty"`
}

func searchMerge(a searchMergeArgs) (foundPart, error) {
	s, err := a.read()
	if err != nil {
		return foundPart{}, err
	}
	merged := search.Part{}
	for _, f := range a.Parts {
		p, err := f.part(s)
		if err != nil {
			return foundPart{}, err
		}
		merged = search.Merge(merged, p)
	}
	thinned := 0.0
	if a.Last {
		merged.Front, thinned = merged.Thin()
	}
	out := partOf(&merged)
	out.Thinned = thinned
	return out, nil
}

// searchDesignsArgs are places of designs to look at, keep or take over.
type searchDesignsArgs struct {
	searchArgs
	Places []int `json:"places"`
}

type searchDesigns struct {
	Documents []document.Document `json:"documents"`
}

func searchDocuments(a searchDesignsArgs) (searchDesigns, error) {
	s, err := a.read()
	if err != nil {
		return searchDesigns{}, err
	}
	out := searchDesigns{make([]document.Document, len(a.Places))}
	for i, place := range a.Places {
		if place < 0 || place >= s.Count() {
			return searchDesigns{}, errors.New("bridge: no such place")
		}
		out.Documents[i] = s.Document(place)
	}
	return out, nil
}

// read reads the problem; what of it cannot be used is told to the user by field.
func (a *searchArgs) read() (*search.Search, error) {
	if err := document.Check(a.Document); err != nil {
		return nil, err
	}
	c, err := openShop(a.Shop)
	if err != nil {
		return nil, err
	}
	s, err := search.New(a.Document, a.Problem, &c)
	var wrong design.FieldErrors
	if errors.As(err, &wrong) {
		t := told{Message: wrong[0].Message}
		for _, f := range wrong {
			t.fields = append(t.fields, report.ShopFault{Field: f.Field, Message: texts().Render(f.Message, a.Document.Units)})
		}
		return nil, t
	}
	return s, err
}
