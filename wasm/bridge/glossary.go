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
