package main

import (
	"html/template"

	"finwright/core/document"
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
	Fields  []field
}

type field struct {
	ID, Label string
	Hint      string // what may be typed
	Choices   []choice
}

type choice struct{ ID, Text string }

func pageData() form {
	f := form{Format: document.Format, Version: document.Version, Sections: report.Sections, Examples: cases.List()}
	for _, id := range document.Groups {
		g := group{ID: id, Section: document.Section(id)}
		for _, spec := range document.Specs {
			if spec.Group == id {
				g.Fields = append(g.Fields, inWords(spec))
			}
		}
		f.Groups = append(f.Groups, g)
	}
	return f
}

func inWords(spec document.Spec) field {
	texts := message.English()
	f := field{ID: spec.ID, Label: texts.Text("field." + spec.ID)}
	if spec.Number() {
		f.Hint = texts.Text(string(message.Accepts(spec.Kind)))
	}
	for _, id := range spec.Choices {
		f.Choices = append(f.Choices, choice{id, texts.Text(spec.ChoiceKey(id))})
	}
	return f
}
