// Package design combines the packages below it: it reads a document into an
// input and checks it, rates it, and makes of that the figures, the remarks and
// the plan of its making.
package design

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// Read turns a document into an input. On any wrong entry it returns
// FieldErrors that name all of them.
func Read(d document.Document) (field.Input, error) {
	in, err := ReadEach(d)
	if err == nil {
		var errs FieldErrors
		if checkTogether(&in, &errs); len(errs) > 0 {
			return in, errs
		}
	}
	return in, err
}

// ReadEach is Read without a look at whether entries go together, which Check finds of each part: of a design in which some of
// them are put in anew.
func ReadEach(d document.Document) (field.Input, error) {
	entries := d.Fields // d.Text would copy the document for every text
	r := reader{text: func(id string) string { return entries[id].Text }, units: d.Units}
	for i := range field.Fields {
		r.read(&field.Fields[i])
	}
	r.metal(&r.in.OwnTube, r.in.MakeTubeOf, "own_tube_")
	r.metal(&r.in.OwnFin, r.in.MakeFinOf, "own_fin_")
	for i, s := range d.Spans {
		r.in.Tube.Spans = append(r.in.Tube.Spans, tube.Span{
			Centre: units.Length(r.span(&field.SpanCentre, i, s.Centre.Text)),
			Width:  units.Length(r.span(&field.SpanWidth, i, s.Width.Text)),
		})
	}
	r.in.Holds = r.in.Holds.For(r.in.Job.Retube)
	if len(r.errs) == 0 {
		r.process()
	}
	if len(r.errs) > 0 {
		return r.in, r.errs
	}
	return r.in, nil
}

// reader reads fields one by one and gathers what is wrong. Of unused ones a number stays nought and a choice is the
// house's: a wrong text in a hidden field must not block the design.
type reader struct {
	text  func(id string) string
	units units.System
	in    field.Input
	errs  FieldErrors
}

func (r *reader) read(f *field.Field) {
	if !f.Used(r.text) {
		if f.Choice != nil {
			f.Choice(&r.in, f.House)
		}
		return
	}
	text := r.text(f.ID)
	switch {
	case f.Choice != nil && (text == f.House || slices.Contains(f.Choices(), text)): // the house's is one, and needs no list
		f.Choice(&r.in, text)
	case f.Choice != nil:
		r.errs.add(f.ID, "error.choice", "label", message.Key(f.Label()))
	case f.MayBeEmpty() && strings.TrimSpace(text) == "":
	case f.Day != nil:
		r.day(f, text)
	case f.Text != nil:
		*f.Text(&r.in) = text
	default:
		r.number(f, text)
	}
}

func (r *reader) span(f *field.Field, i int, text string) float64 {
	return r.parse(f, fmt.Sprintf("%s_%d", f.ID, i+1), text)
}

// metal makes the user's own metal, where one is chosen and all that is said of it can be read. Its fields begin with prefix.
func (r *reader) metal(own *field.Alloy, makeOf func(material.Metal), prefix string) {
	unread := slices.ContainsFunc(r.errs, func(e FieldError) bool { return strings.HasPrefix(e.Field, prefix) })
	if !own.Chosen || unread {
		return
	}
	made, faults := material.NewOwn(own.Name, units.Conductivity(own.Conductivity), units.Density(own.Density), units.Expansion(own.Expansion))
	for _, f := range faults {
		r.errs = append(r.errs, FieldError{prefix + string(f.Property), f.Why})
	}
	makeOf(made)
}

// number reads a number, written in the field's kind or in another that it takes.
func (r *reader) number(f *field.Field, text string) {
	if f.KindOf(text) == f.Kind {
		f.Set(&r.in, r.parse(f, f.ID, text))
		return
	}
	p, _ := units.Parse(f.Also.Kind, text, r.units) // KindOf has read it
	*f.Also.Number(&r.in) = rating.Optional{SI: p.SI, Stated: true}
}

// firstDay is the earliest day that a design may name: what lies before is a slip of the hand.
const firstDay = "2000-01-01"

// day reads a day.
func (r *reader) day(f *field.Field, text string) {
	first, _ := shop.ParseDay(firstDay)
	d, ok := shop.ParseDay(strings.TrimSpace(text))
	if !ok || d < first {
		r.errs.add(f.ID, "error.day", "text", strings.TrimSpace(text), "first", firstDay)
		return
	}
	*f.Day(&r.in) = d
}

// parse reads text and holds it to the range of f; at is where an error shows.
func (r *reader) parse(f *field.Field, at, text string) float64 {
	p, err := units.Parse(f.Kind, text, r.units)
	if err != nil {
		var bad *units.ParseError
		errors.As(err, &bad) // no other error is documented
		r.errs = append(r.errs, FieldError{at, message.Unread(bad)})
		return 0
	}
	if !f.Within(p.SI) {
		r.outside(f, at, p.SI)
		return 0
	}
	return p.SI
}

// outside says that a number [SI] does not lie in the range of f.
func (r *reader) outside(f *field.Field, at string, si float64) {
	quantity := func(si float64) message.Amount { return message.Amount{Kind: f.Kind, SI: si} }
	r.errs.add(at, "error.range", "value", quantity(si), "low", message.Least(quantity(f.Low)), "high", message.Most(quantity(f.High)))
}
