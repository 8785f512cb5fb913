package main

import (
	"encoding/json"
	"html/template"
	"slices"
	"strings"

	"finwright/core/compare"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/glossary"
	"finwright/core/message"
	"finwright/core/outgoing"
	"finwright/core/paper"
	"finwright/core/quotes"
	"finwright/core/report"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// form is what the pages are rendered with: the document's fields in words, the sections, the examples, and what marks a saved design.
type form struct {
	Language string // its code
	Root     string // the way to the folder of all languages
	Wrong    string // a JSON list of what is said of one entry that cannot be used, of two, and so on to all
	Format   string
	Version  int
	Groups   []group
	Sections []report.Section
	Examples []cases.Case
	Deciding []decider
	Compared []decider // the figures of designs side by side
	Helds    []compare.Held
	Ladders  []string
	MostKept int
	States   []quotes.State // of an enquiry
	Shown    []decider      // the figures that may be shown to a customer
	Slots    []slot         // places for those that are
	Slides   []string       // the entries that are slid until somebody picks others
	Papers   []paper.Kind
	Symbols  string // of workings, that the glossary explains, between spaces
	// FirstView is JSON.
	FirstView template.JS
}

// decider is a figure that the user may choose to decide by.
type decider struct {
	ID, Label string
	House     bool // whether it decides until he chooses
}

// slot is a place for a figure that is shown, with the usual one.
type slot struct {
	Number int
	Usual  string
}

type group struct {
	ID      string
	Section string // shown with this section alone; empty: with all
	Open    string // the sections in which it is not folded from the start, between spaces
	Folded  bool   // in the section that the page opens with
	Unused  bool   // none of its entries is used by the design that is shown first
	Fields  []entry
}

type entry struct {
	ID, Label string
	Unused    bool   // by the design that is shown first: the page is laid out without it
	Hint      string // what may be typed
	Choices   []choice
	Types     []typeHelp // of the fin, at its entry
}

type choice struct{ ID, Text string }

func pageData(l language) form {
	f := form{
		Language: l.code, Root: l.root(), Wrong: counted(l.texts, "page.wrong", document.MaxEntries()),
		Format: document.Format, Version: document.Version, Sections: report.Sections, Examples: cases.List(), Helds: compare.Helds, Ladders: compare.Ladders, Slides: outgoing.Slid, MostKept: document.MostKept, States: quotes.States, Papers: paper.Kinds, Symbols: strings.Join(glossary.Symbols(), " "),
	}
	for _, id := range report.Deciding {
		f.Deciding = append(f.Deciding, decider{id, l.texts.Text("figure." + id), slices.Contains(report.Decides, id)})
	}
	for _, known := range compare.Figures() {
		f.Compared = append(f.Compared, decider{known.ID, l.texts.Text("figure." + known.ID), slices.Contains(report.OptionsDecide, known.ID)})
	}
	for _, id := range outgoing.Figures {
		f.Shown = append(f.Shown, decider{ID: id, Label: l.texts.Text("figure." + id)})
	}
	for i, id := range outgoing.Usual {
		f.Slots = append(f.Slots, slot{i + 1, id})
	}
	first := cases.First()
	for _, known := range field.Groups {
		g := group{
			ID: known.ID, Section: known.Section, Unused: true,
			Open: strings.Join(known.Open, " "), Folded: !slices.Contains(known.Open, report.Sections[0].ID),
		}
		for i := range field.Fields {
			if f := &field.Fields[i]; f.Group == known.ID {
				e := inWords(l.texts, f)
				e.Unused = !f.Used(first.Text)
				g.Unused = g.Unused && e.Unused
				g.Fields = append(g.Fields, e)
			}
		}
		f.Groups = append(f.Groups, g)
	}
	return f
}

// counted lists a text for each count from one up: the page counts some things by itself, and puts no plurals together.
func counted(texts message.Catalogue, key string, most int) string {
	all := make([]string, most)
	for i := range all {
		all[i] = texts.Render(message.New(key, "count", i+1), units.SI)
	}
	list, err := json.Marshal(all)
	if err != nil {
		panic(err) // texts always marshal
	}
	return string(list)
}

func inWords(texts message.Catalogue, f *field.Field) entry {
	e := entry{ID: f.ID, Label: texts.Text(f.Label())}
	if f.IsNumber() {
		e.Hint = texts.Text(string(message.Accepts(f.Kind)))
		if f.Also != nil {
			e.Hint += "; " + texts.Text(string(message.Accepts(f.Also.Kind)))
		}
	}
	if f.Day != nil {
		e.Hint = texts.Text("accepts.day")
	}
	if f.Choices == nil {
		return e
	}
	for _, id := range f.Choices() {
		e.Choices = append(e.Choices, choice{id, texts.Text(f.ChoiceKey(id))})
	}
	if f.ID == "fin_type" {
		e.Types = typeHelps(texts)
	}
	return e
}
