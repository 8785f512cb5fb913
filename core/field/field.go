// Package field is the table of all that a design consists of: one row a field,
// in which everything stands that is said of it, and the input that the rows fill.
// The form, the documents, the reader and the sweeps walk it.
package field

import (
	"finwright/core/material"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/units"
)

// Field is one entry of a design.
type Field struct {
	ID        string // with the texts "field.<id>", its label, and "help.<id>"
	Group     string
	Since     int    // the version of the documents that has it first
	Before    string // what the older ones are taken to say, the house's value of that time; of a field since version 6 on
	House     string // what a new document holds; empty: it may be left empty
	Clearable bool   // it may be left empty though a new document fills it
	Used      Use    // whether it counts for the design as it stands; else it is hidden, and its text not looked at

	// Where it goes is one of these: a number, a count, a number that need not be stated, a choice, a day or a free text.
	Real     func(in *Input) *float64
	Whole    func(in *Input) *int
	Optional func(in *Input) *rating.Optional
	Choice   func(in *Input, choice string)
	Day      func(in *Input) *shop.Day
	Text     func(in *Input) *string

	Kind    units.Kind      // of a number
	Choices func() []string // that there are, with the texts "choice.<id>.<choice>"
	Named   string          // the choices have the texts of what they name, which begin with this

	// Of a number: the range that it must lie in [SI], which keeps typing errors out and the formulas inside their
	// meaning (what a given line can make is another and narrower matter), or why it has none here.
	Low, High float64
	Unbounded string

	// Of a number whose units are far apart: what is usual of it. A number alone that is not, in the unit in sight, and is in another may be
	// meant in that, and is asked about. It is no limit. Common practice, no source.
	Usual Range

	Also *Way // another kind that its number may be written in; nil: none

	Fixed   string                                // why a sweep cannot vary a number that is not whole; empty: it can
	StandIn func(in *Input) (si float64, ok bool) // what stands in for a number left empty; nil: nothing does
}

// Way is a kind that a field's number may be written in beside its own, such as a volume flow for a mass flow. Which of the
// field's own it is depends on other fields, so that the reader of the design finds it when all are read.
type Way struct {
	Kind   units.Kind
	Number func(in *Input) *rating.Optional
}

// KindOf returns the kind in which a text of the field is written.
func (f *Field) KindOf(text string) units.Kind {
	if f.Also != nil && units.Is(f.Also.Kind, text) {
		return f.Also.Kind
	}
	return f.Kind
}

// MayBeEmpty reports whether the field may be left empty.
func (f *Field) MayBeEmpty() bool { return f.House == "" || f.Clearable }

// Label and Help return the keys of its texts, ChoiceKey that of one of its choices.
func (f *Field) Label() string { return "field." + f.ID }
func (f *Field) Help() string  { return "help." + f.ID }

func (f *Field) ChoiceKey(choice string) string {
	switch {
	case f.Named == "":
		return "choice." + f.ID + "." + choice
	case choice == material.Own, choice == rating.ByRule:
		return "choice." + choice
	}
	return f.Named + choice
}

// Find returns the row of a field.
func Find(id string) (f *Field, ok bool) {
	for i := range Fields {
		if Fields[i].ID == id {
			return &Fields[i], true
		}
	}
	return nil, false
}

// Must is Find for one who knows that there is such a field.
func Must(id string) *Field {
	f, ok := Find(id)
	if !ok {
		panic("field: no field " + id)
	}
	return f
}
