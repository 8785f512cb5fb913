package main

import (
	"html/template"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/testdata/cases"
)

// pageFunctions gives the pages their words: msg is the English text of a key.
var pageFunctions = template.FuncMap{"msg": message.English().Text}

// form is what the pages are rendered with: the document's fields in words, the sections, the examples, and what marks a saved design.
type form struct {
	Format   string
	Version  int
	Groups   []group
	Sections []report.Section
	Examples []cases.Case
}

type group struct {
	ID      string
	Section string // shown with this section alone; empty: with all
	Fields  []entry
}

type entry struct {
	ID, Label string
	Hint      string // what may be typed
	Choices   []choice
}

type choice struct{ ID, Text string }

func pageData() form {
	f := form{Format: document.Format, Version: document.Version, Sections: report.Sections, Examples: cases.List()}
	for _, known := range field.Groups {
		g := group{ID: known.ID, Section: known.Section}
		for i := range field.Fields {
			if f := &field.Fields[i]; f.Group == known.ID {
				g.Fields = append(g.Fields, inWords(f))
			}
		}
		f.Groups = append(f.Groups, g)
	}
	return f
}

func inWords(f *field.Field) entry {
	texts := message.English()
	e := entry{ID: f.ID, Label: texts.Text(f.Label())}
	if f.IsNumber() {
		e.Hint = texts.Text(string(message.Accepts(f.Kind)))
	}
	if f.Choices == nil {
		return e
	}
	for _, id := range f.Choices() {
		e.Choices = append(e.Choices, choice{id, texts.Text(f.ChoiceKey(id))})
	}
	return e
}
