// Package document is the design as its user typed it, and the one way to
// change it: Edit takes a document and a command and returns a new document.
// A Job holds many, as what they say otherwise than a common base.
package document

import (
	"maps"
	"slices"

	"finwright/core/field"
	"finwright/core/units"
)

// Origin says who answers for a field; papers print it.
type Origin string

// Origins.
const (
	Customer Origin = "customer"
	House    Origin = "house"   // the shop's default
	Assumed  Origin = "assumed" // put in by whoever edits
)

// Origins lists them in the order a page offers them.
var Origins = []Origin{Customer, House, Assumed}

// Entry is one entry as typed, right or wrong.
type Entry struct {
	Text   string `json:"text"`
	Origin Origin `json:"origin"`
}

// Span is a bare stretch at a support, as typed.
type Span struct {
	Centre Entry `json:"centre"`
	Width  Entry `json:"width"`
}

// Document is one design.
type Document struct {
	Title  string       `json:"title"`
	Mark   string       `json:"mark,omitempty"` // what its item is called among those of a job
	Units  units.System `json:"units"`
	Fields Fields       `json:"fields"`
	Spans  []Span       `json:"spans"`
}

// New returns a document of house defaults.
func New() Document {
	d := Document{Units: units.SI, Fields: map[string]Entry{}, Spans: []Span{}}
	for i := range field.Fields {
		f := &field.Fields[i]
		d.Fields[f.ID] = Entry{f.House, House}
	}
	return d
}

// Text returns what was typed in a field.
func (d Document) Text(id string) string { return d.Fields[id].Text }

// clone copies d so that the caller's document stays as it was.
func (d Document) clone() Document {
	d.Fields = maps.Clone(d.Fields)
	d.Spans = slices.Clone(d.Spans)
	return d
}
