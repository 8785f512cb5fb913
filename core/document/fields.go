package document

import (
	"unicode/utf8"

	"finwright/core/strict"
)

// Fields are the entries of a design by field. They come with every question of the page, so they are read by hand where they are written as a
// page writes them; all else is left to the library.
type Fields map[string]Entry

// UnmarshalJSON reads entries and refuses what they do not have.
func (f *Fields) UnmarshalJSON(text []byte) error {
	r := plainReader{text: string(text)} // of which all entries are parts
	if fields, ok := r.fields(); ok && utf8.ValidString(r.text) {
		*f = fields
		return nil
	}
	var fields map[string]Entry
	err := strict.Decode(text, &fields)
	*f = fields
	return err
}

// plainReader reads JSON in which no text has an escape, nothing is spaced, and names are written as ours.
type plainReader struct {
	text string
	at   int
}

func (r *plainReader) fields() (Fields, bool) {
	if !r.next('{') {
		return nil, false
	}
	out := make(Fields, usualFields)
	for !r.next('}') {
		if len(out) > 0 && !r.next(',') {
			return nil, false
		}
		name, ok := r.word()
		if !ok || !r.next(':') {
			return nil, false
		}
		entry, ok := r.entry()
		if !ok {
			return nil, false
		}
		if _, twice := out[name]; twice {
			return nil, false
		}
		out[name] = entry
	}
	return out, r.at == len(r.text)
}

// usualFields is how many there are, about.
const usualFields = 160

func (r *plainReader) entry() (e Entry, ok bool) {
	if !r.next('{') {
		return e, false
	}
	for first := true; !r.next('}'); first = false {
		if !first && !r.next(',') {
			return e, false
		}
		name, ok := r.word()
		if !ok || !r.next(':') {
			return e, false
		}
		value, ok := r.word()
		switch {
		case !ok:
			return e, false
		case name == "text":
			e.Text = value
		case name == "origin":
			e.Origin = Origin(value)
		default:
			return e, false
		}
	}
	return e, true
}

// next takes a mark where it comes next; spaces are left to the library.
func (r *plainReader) next(mark byte) bool {
	if r.at < len(r.text) && r.text[r.at] == mark {
		r.at++
		return true
	}
	return false
}

func (r *plainReader) word() (string, bool) {
	if !r.next('"') {
		return "", false
	}
	for from := r.at; r.at < len(r.text); r.at++ {
		switch c := r.text[r.at]; {
		case c == '"':
			r.at++
			return r.text[from : r.at-1], true
		case c == '\\', c < ' ':
			return "", false
		}
	}
	return "", false
}
