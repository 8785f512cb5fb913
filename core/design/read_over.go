package design

import (
	"strings"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/units"
)

// Base is a document that many designs differ from in a few entries: it is read once, and of each design what it says otherwise.
type Base struct {
	doc   document.Document
	in    field.Input      // before anything follows from the entries together
	ok    bool             // all entries can be read
	stood []bool           // of the fields in their order: whether it was read, or a choice
	plain []bool           // of each, whether it is in its own kind
	hangs map[string][]int // of an entry, the places of the fields that look at it
}

// ReadBase reads a base.
func ReadBase(d document.Document) *Base {
	n := len(field.Fields)
	b := &Base{doc: d, stood: make([]bool, n), plain: make([]bool, n), hangs: map[string][]int{}}
	of := 0
	r := reader{units: d.Units, text: func(id string) string {
		if list := b.hangs[id]; len(list) == 0 || list[len(list)-1] != of {
			b.hangs[id] = append(list, of)
		}
		return d.Fields[id].Text
	}}
	for i := range field.Fields {
		f := &field.Fields[i]
		of = i
		r.read(f)
		b.stood[i], b.plain[i] = stands(f, r.text), inOwnKind(f, d.Fields[f.ID].Text)
	}
	b.in, b.ok = r.in, len(r.errs) == 0
	return b
}

// stands reports whether a field sets something whatever was set before.
func stands(f *field.Field, text func(id string) string) bool {
	return f.Choice != nil || f.Used(text) && strings.TrimSpace(text(f.ID)) != ""
}

func inOwnKind(f *field.Field, text string) bool {
	return f.Also == nil || !units.Is(f.Also.Kind, text)
}

// Read is Read of the design that differs so from the base: to the last bit, which a test holds.
func (b *Base) Read(x document.Differences) (field.Input, error) {
	if in, ok := b.read(x); ok {
		return in, nil
	}
	return Read(b.doc.With(x)) // which says what is wrong
}

// read reads what an entry of x changes. ok is false where more is to be looked at.
func (b *Base) read(x document.Differences) (in field.Input, ok bool) {
	if !b.ok || x.Units != nil || x.Spans != nil || len(b.doc.Spans) > 0 {
		return in, false
	}
	r := reader{in: b.in, units: b.doc.Units, text: func(id string) string {
		if entry, ok := x.Fields[id]; ok {
			return entry.Text
		}
		return b.doc.Fields[id].Text
	}}
	again := make([]bool, len(field.Fields))
	for id := range x.Fields {
		for _, i := range b.hangs[id] {
			again[i] = true
		}
	}
	for i := range field.Fields {
		if !again[i] {
			continue
		}
		f := &field.Fields[i]
		if !b.plain[i] || !inOwnKind(f, r.text(f.ID)) || b.stood[i] && !stands(f, r.text) {
			return in, false
		}
		r.read(f)
	}
	if r.in.OwnTube.Chosen || r.in.OwnFin.Chosen || len(r.errs) > 0 {
		return in, false
	}
	r.in.Holds = r.in.Holds.For(r.in.Job.Retube)
	if r.process(); len(r.errs) > 0 {
		return in, false
	}
	var errs FieldErrors
	checkTogether(&r.in, &errs)
	return r.in, len(errs) == 0
}
