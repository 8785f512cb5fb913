package document

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"finwright/core/field"
	"finwright/core/units"
)

// Command is one change. Op says which members count:
//
//	set          Values
//	units        System
//	origin       Field (empty: every field that is assumed), Origin
//	title        Text
//	mark         Text
//	add_span     (none)
//	even_spans   Text, such as "6 x 60 mm": so many bare spans, evenly spaced, in place of all; an empty one changes nothing
//	remove_span  Index
//	span         Index, Part, Text
//	all          Commands, one after the other, which may not hold another "all"
type Command struct {
	Op     string       `json:"op"`
	Values []Value      `json:"values,omitempty"`
	System units.System `json:"system,omitempty"`
	Field  string       `json:"field,omitempty"`
	Origin Origin       `json:"origin,omitempty"`
	Index  int          `json:"index,omitempty"`
	Part   string       `json:"part,omitempty"` // "centre" or "width"
	Text   string       `json:"text,omitempty"`

	Commands []Command `json:"commands,omitempty"`
}

// Value sets one field, either to a text as typed, or to a number in a unit
// (from a grip or a plot), or by whole steps up or down from what it holds.
type Value struct {
	Field  string   `json:"field"`
	Text   *string  `json:"text,omitempty"`
	Number *float64 `json:"number,omitempty"`
	Unit   string   `json:"unit,omitempty"`
	Steps  int      `json:"steps,omitempty"`
}

// Write changes every text of a number in the command by write: a reader's language has its own decimal sign.
func (c *Command) Write(write func(text string) string) {
	if c.Op == "span" || c.Op == "even_spans" {
		c.Text = write(c.Text)
	}
	for _, v := range c.Values {
		if f, ok := field.Find(v.Field); ok && f.IsNumber() && v.Text != nil {
			*v.Text = write(*v.Text)
		}
	}
	for i := range c.Commands {
		c.Commands[i].Write(write)
	}
}

// Limits on what a document holds, against pasted floods.
const (
	maxText  = 200 // bytes
	maxSpans = 40
)

// MaxEntries returns how many entries a document can have, those of bare spans among them.
func MaxEntries() int { return len(field.Fields) + 2*maxSpans }

// Edit returns d changed by c. An error means that the command makes no sense
// (a programmer's mistake or a hostile file); a wrong text of an entry is no error: it is
// kept as typed and found by validation. One that stands for several entries is refused by an OpenError, and a number alone that may be meant
// in several units by an AskError.
func Edit(d Document, c Command) (Document, error) {
	d = d.clone()
	switch c.Op {
	case "set":
		for _, v := range c.Values {
			if err := set(d, v); err != nil {
				return d, err
			}
		}
	case "units":
		if c.System != units.SI && c.System != units.US {
			return d, fmt.Errorf("document: system %q", c.System)
		}
		d.Units = c.System
	case "origin":
		return d, setOrigin(d, c.Field, c.Origin)
	case "title":
		d.Title = cut(c.Text)
	case "mark":
		d.Mark = cut(c.Text)
	case "add_span":
		if len(d.Spans) >= maxSpans {
			return d, fmt.Errorf("document: more than %d spans", maxSpans)
		}
		d.Spans = append(d.Spans, nextSpan(d))
	case "even_spans":
		if strings.TrimSpace(c.Text) == "" {
			return d, nil
		}
		spans, err := evenSpans(d, cut(c.Text))
		if err != nil {
			return d, err
		}
		d.Spans = spans
	case "remove_span":
		if c.Index < 0 || c.Index >= len(d.Spans) {
			return d, fmt.Errorf("document: span %d", c.Index)
		}
		d.Spans = slices.Delete(d.Spans, c.Index, c.Index+1)
	case "span":
		return d, setSpan(d, c)
	case "all":
		for _, one := range c.Commands {
			if one.Op == "all" {
				return d, errors.New("document: commands within commands")
			}
			var err error
			if d, err = Edit(d, one); err != nil {
				return d, err
			}
		}
	default:
		return d, fmt.Errorf("document: command %q", c.Op)
	}
	return d, nil
}

func set(d Document, v Value) error {
	f, ok := field.Find(v.Field)
	if !ok {
		return fmt.Errorf("document: field %q", v.Field)
	}
	text := d.Fields[v.Field].Text
	switch {
	case v.Text != nil && f.IsNumber():
		taken, err := typed(f, cut(*v.Text), text, d.Units)
		if err != nil {
			return err
		}
		text = taken
	case v.Text != nil:
		text = cut(*v.Text)
	case v.Number != nil:
		si, ok := units.From(f.Kind, *v.Number, v.Unit)
		if !ok || !f.IsNumber() {
			return fmt.Errorf("document: %s cannot be %g %s", v.Field, *v.Number, v.Unit)
		}
		text = units.Echo(f.Kind, units.Snap(f.Kind, si, d.Units), d.Units)
	case v.Steps != 0 && f.IsNumber():
		kind := f.KindOf(text)
		p, err := units.Parse(kind, text, d.Units)
		if err != nil {
			return nil // nothing to step from; the field already says what is wrong
		}
		text = units.Echo(kind, units.Step(kind, p.SI, v.Steps, d.Units), d.Units)
	default:
		return fmt.Errorf("document: nothing to set %s to", v.Field)
	}
	if text != d.Fields[v.Field].Text {
		d.Fields[v.Field] = Entry{text, Assumed}
	}
	return nil
}

// typed is what field f holds once text was typed over what it held. The unit of a number alone is written behind it, so that the text keeps
// its meaning when the system changes.
func typed(f *field.Field, text, held string, s units.System) (string, error) {
	taken, asked := f.Typed(text, held, s)
	if len(asked) > 0 {
		return "", &AskError{Text: strings.TrimSpace(text), Readings: asked}
	}
	if len(taken) > maxText {
		return text, nil
	}
	return taken, nil
}

func setOrigin(d Document, id string, o Origin) error {
	if !slices.Contains(Origins, o) {
		return fmt.Errorf("document: origin %q", o)
	}
	if id == "" {
		for k, f := range d.Fields {
			if f.Origin == Assumed {
				d.Fields[k] = Entry{f.Text, o}
			}
		}
		return nil
	}
	f, ok := d.Fields[id]
	if !ok {
		return fmt.Errorf("document: field %q", id)
	}
	d.Fields[id] = Entry{f.Text, o}
	return nil
}

// nextSpan puts a new bare span halfway between the last one and the far end.
func nextSpan(d Document) Span {
	length, err := units.Parse(units.Distance, d.Fields["tube_length"].Text, d.Units)
	if err != nil {
		length.SI = 6
	}
	from := 0.0
	if n := len(d.Spans); n > 0 {
		if p, err := units.Parse(units.Distance, d.Spans[n-1].Centre.Text, d.Units); err == nil {
			from = p.SI
		}
	}
	return Span{
		Centre: Entry{units.Echo(units.Distance, (from+length.SI)/2, d.Units), Assumed},
		Width:  Entry{units.Echo(units.Distance, DefaultSpan, d.Units), House},
	}
}

func setSpan(d Document, c Command) error {
	if c.Index < 0 || c.Index >= len(d.Spans) {
		return fmt.Errorf("document: span %d", c.Index)
	}
	f, entry := &field.SpanCentre, &d.Spans[c.Index].Centre
	switch c.Part {
	case "centre":
	case "width":
		f, entry = &field.SpanWidth, &d.Spans[c.Index].Width
	default:
		return fmt.Errorf("document: span part %q", c.Part)
	}
	text, err := typed(f, cut(c.Text), entry.Text, d.Units)
	if err == nil && text != entry.Text {
		*entry = Entry{text, Assumed}
	}
	return err
}

// cut bounds a text without splitting a letter.
func cut(text string) string {
	if len(text) <= maxText {
		return text
	}
	text = text[:maxText]
	for !utf8.ValidString(text) {
		text = text[:len(text)-1]
	}
	return text
}
