package bridge

import (
	"errors"
	"fmt"

	"finwright/core/compare"
	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/outgoing"
	"finwright/core/report"
	"finwright/core/shop"
)

type sendArgs struct {
	Document document.Document   `json:"document"`
	Kept     []document.Document `json:"kept"`
	Shop     string              `json:"shop,omitempty"` // a capability file; empty: the one that ships
	Picked   outgoing.Picked     `json:"picked"`
}

// sent is what may leave the house of a design: what is told of it, for a screen or a sheet, and the text of a customer's link.
type sent struct {
	Told outgoing.Told `json:"told"`
	Text string        `json:"text"`
}

func send(a sendArgs) (sent, error) {
	if len(a.Kept) > document.MostKept {
		return sent{}, fmt.Errorf("bridge: %d designs", len(a.Kept))
	}
	for _, d := range append([]document.Document{a.Document}, a.Kept...) {
		if err := document.Check(d); err != nil {
			return sent{}, err
		}
	}
	told, err := outgoing.Tell(writer(a.Document), a.Document, a.Kept, madeBy(a.Shop), a.Picked)
	if err != nil {
		return sent{}, err
	}
	text, err := outgoing.Send(a.Document, told)
	return sent{told, string(text)}, err
}

// madeBy is the shop of a capability file, nil where that cannot be read.
func madeBy(text string) *shop.Capability {
	if c, err := openShop(text); err == nil {
		return &c
	}
	return nil
}

type receiveArgs struct {
	Text  string       `json:"text"`
	Sheet *drawingArea `json:"sheet"`
	wanted
}

// received is what a customer's link opens to. Nobody is to make it here: its page asks for everything with Shop, which is none, so that no
// price is computed and no line judged.
type received struct {
	opened
	Told outgoing.Told `json:"told"`
	Shop string        `json:"shop"`
}

// nobody is no capability file.
const nobody = "-"

func receive(a receiveArgs) (received, error) {
	d, said, err := outgoing.Open([]byte(a.Text))
	var oe *document.OpenError
	if errors.As(err, &oe) {
		return received{}, told{Message: oe.Message}
	}
	if err != nil {
		return received{}, err
	}
	a.Shop = nobody
	out := received{Told: said, Shop: nobody}
	out.opened, err = showFile(document.File{Job: document.JobOf([]document.Document{d})}, nil, a.Sheet, a.wanted)
	return out, err
}

type stepsArgs struct {
	Document document.Document `json:"document"`
	Entries  []string          `json:"entries"`        // of compare.Ladders
	Shop     string            `json:"shop,omitempty"` // a capability file; empty: the one that ships
}

// stepped are the standard values of entries, to slide over.
type stepped struct {
	Entries []report.Steps `json:"entries"`
}

func steps(a stepsArgs) (stepped, error) {
	if err := document.Check(a.Document); err != nil {
		return stepped{}, err
	}
	if _, err := design.Read(a.Document); err != nil {
		return stepped{}, err
	}
	w, c, out := writer(a.Document), madeBy(a.Shop), stepped{[]report.Steps{}}
	for _, id := range a.Entries {
		if !outgoing.Slides(id) {
			return stepped{}, fmt.Errorf("bridge: no steps of %q", id)
		}
		texts, at := compare.Standard(a.Document, id, c)
		out.Entries = append(out.Entries, w.Steps(field.Must(id), a.Document, texts, at))
	}
	return out, nil
}
