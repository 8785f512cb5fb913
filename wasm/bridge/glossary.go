package bridge

import (
	"fmt"

	"finwright/core/drawing/svg"
	"finwright/core/glossary"
	"finwright/core/units"
)

type termsArgs struct{}

type terms struct {
	Terms []glossary.ShownTerm `json:"terms"`
}

func listTerms(termsArgs) (terms, error) { return terms{glossary.Show(writerIn(units.SI))}, nil }

// termOfArgs ask for the term that a label leads to.
type termOfArgs struct {
	Kind string `json:"kind"`
	ID   string `json:"id"`
}

// termOf is its ID; empty: it leads to none.
type termOf struct {
	Term string `json:"term"`
}

func findTerm(a termOfArgs) (termOf, error) {
	t, ok := glossary.Of(a.Kind, a.ID)
	if !ok {
		return termOf{}, nil
	}
	return termOf{t.ID}, nil
}

type termPictureArgs struct {
	Term  string       `json:"term"`
	Units units.System `json:"units"`
	Dark  bool         `json:"dark,omitempty"` // the paper is dark
}

func drawTerm(a termPictureArgs) (drawn, error) {
	if err := known(a.Units); err != nil {
		return drawn{}, err
	}
	t, ok := glossary.Find(a.Term)
	if !ok {
		return drawn{}, fmt.Errorf("bridge: no term %q", a.Term)
	}
	scene, ok := t.Draw(texts(), a.Units)
	if !ok {
		return drawn{}, fmt.Errorf("bridge: %s has no picture", a.Term)
	}
	return drawn{svg.Write(scene, svg.Style{Dark: a.Dark})}, nil
}
