package enquiry

import (
	"errors"
	"slices"

	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/units"
)

// Decision settles a doubt of some items: for the first reading or for the second.
type Decision struct {
	Items  []int  `json:"items"`          // their places, from 0 on
	Field  string `json:"field"`          // of the first reading
	Kind   string `json:"kind"`           // of the doubt
	Second bool   `json:"second"`         // the second reading is meant
	Text   string `json:"text,omitempty"` // the second reading, where there may be several
}

// Edit is an entry that somebody typed over what was read.
type Edit struct {
	Item  int    `json:"item"` // its place, from 0 on
	Field string `json:"field"`
	Text  string `json:"text"` // empty: nothing is said of the field
}

// Fault is what is wrong with an edit, which then changes nothing.
type Fault struct {
	Edit
	Why message.Message
}

// Clone is an enquiry of which items can be settled and entered while e stays as it was read.
func (e *Enquiry) Clone() Enquiry {
	out := *e
	out.Items = slices.Clone(e.Items)
	for i := range out.Items {
		out.Items[i].Whole = slices.Clone(e.Items[i].Whole)
	}
	return out
}

// Decide settles doubts. What is decided of items or fields that are not there any more changes nothing.
func (e *Enquiry) Decide(list []Decision) {
	for _, d := range list {
		for _, i := range d.Items {
			if i >= 0 && i < len(e.Items) {
				e.Items[i].decide(d)
			}
		}
	}
}

func (x *Entry) decide(d Decision) {
	at := slices.IndexFunc(x.Whole, func(r Reading) bool { return r.Field == d.Field })
	if at < 0 {
		return
	}
	r := &x.Whole[at]
	is := slices.IndexFunc(r.Doubts, func(doubt Doubt) bool {
		return doubt.Kind == d.Kind && (d.Text == "" || doubt.Text == d.Text)
	})
	if is < 0 {
		return
	}
	second := r.Doubts[is]
	r.Doubts = slices.DeleteFunc(slices.Clone(r.Doubts), func(doubt Doubt) bool { return doubt.Kind == d.Kind })
	switch {
	case !d.Second:
	case second.Field == "":
		x.Whole = slices.Delete(x.Whole, at, at+1)
	case second.Field == r.Field:
		r.Text = second.Text
	default:
		moved := *r
		moved.Field, moved.Text = second.Field, second.Text
		x.Whole = slices.Delete(x.Whole, at, at+1)
		x.Whole = slices.DeleteFunc(x.Whole, func(other Reading) bool { return other.Field == moved.Field })
		x.Whole = append(x.Whole, moved)
	}
}

// Enter lays what was typed over what was read, in system s, and returns what could not be used.
func (e *Enquiry) Enter(list []Edit, s units.System) (wrong []Fault) {
	for _, edit := range list {
		if edit.Item < 0 || edit.Item >= len(e.Items) {
			continue
		}
		x := &e.Items[edit.Item]
		if edit.Field == Mark {
			x.Mark, x.Named = edit.Text, true
			continue
		}
		x.Whole = slices.DeleteFunc(x.Whole, func(r Reading) bool {
			return r.Field == edit.Field || r.Field == "fin_height" && edit.Field == FinOD || r.Field == FinOD && edit.Field == "fin_height"
		})
		if edit.Text == "" {
			continue
		}
		text, why := usable(edit.Field, edit.Text, s)
		if !why.None() {
			wrong = append(wrong, Fault{edit, why})
			continue
		}
		x.Whole = append(x.Whole, Reading{Field: edit.Field, Text: text, From: []Span{}})
	}
	return wrong
}

// usable is a text as a design holds it, or why it cannot be used.
func usable(name, text string, s units.System) (taken string, why message.Message) {
	f, ok := row(name)
	switch {
	case !ok:
		return text, message.Message{}
	case f.Choice != nil && !slices.Contains(f.Choices(), text):
		return "", message.New("error.choice", "label", message.Key(Label(name)))
	case !f.IsNumber():
		return text, message.Message{}
	}
	p, err := units.Parse(f.KindOf(text), text, s)
	if err != nil {
		var bad *units.ParseError
		errors.As(err, &bad) // no other error is documented
		return "", message.Unread(bad)
	}
	if !f.Within(p.SI) && f.KindOf(text) == f.Kind {
		amount := func(si float64) message.Amount { return message.Amount{Kind: f.Kind, SI: si} }
		return "", message.New("error.range", "value", amount(p.SI), "low", message.Least(amount(f.Low)), "high", message.Most(amount(f.High)))
	}
	return p.Text, message.Message{}
}

// Label returns the key of what a reading's field is called.
func Label(name string) string {
	if _, beside := besides[name]; !beside {
		if f, ok := field.Find(name); ok {
			return f.Label()
		}
	}
	return "enquiry.field." + name
}
