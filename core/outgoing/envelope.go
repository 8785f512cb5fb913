package outgoing

import (
	"encoding/json"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/strict"
	"finwright/core/units"
)

// Format marks what was sent to a customer, which is no design file: it has neither the job nor all of a design.
const Format = "finwright-sent"

// Version is that of the envelope. The design in it has one of its own, and is lifted as any other.
const Version = 1

// Sent is what a customer's link carries.
type Sent struct {
	Format  string `json:"format"`
	Version int    `json:"version"`
	Design  Design `json:"design"`
	Told    Told   `json:"told"`
}

// Design is a design as it leaves the house: what is asked for, without who answers for it and how it is made.
type Design struct {
	Version int               `json:"version"` // of the documents
	Title   string            `json:"title"`
	Units   units.System      `json:"units"`
	Fields  map[string]string `json:"fields"` // texts as typed, of those in use
	Spans   []Span            `json:"spans"`
}

// Span is a bare stretch, as typed.
type Span struct {
	Centre string `json:"centre"`
	Width  string `json:"width"`
}

// Without is a design without what stays in the house. What is typed and not in use is no part of it.
func Without(d document.Document) Design {
	out := Design{Version: document.Version, Title: d.Title, Units: d.Units, Fields: map[string]string{}, Spans: []Span{}}
	for i := range field.Fields {
		f := &field.Fields[i]
		switch {
		case !leaves(f):
		case f.Used(d.Text):
			out.Fields[f.ID] = d.Text(f.ID)
		default:
			out.Fields[f.ID] = f.House
		}
	}
	for _, s := range d.Spans {
		out.Spans = append(out.Spans, Span{s.Centre.Text, s.Width.Text})
	}
	return out
}

// Send writes the envelope.
func Send(d document.Document, told Told) ([]byte, error) {
	return json.Marshal(Sent{Format, Version, Without(d), told})
}

// Limits on what is read, against floods.
const (
	mostLetters = 4000 // of all that is told
	mostLines   = 12
)

// Open reads an envelope that came from elsewhere. Errors are *document.OpenError.
func Open(text []byte) (document.Document, Told, error) {
	var head struct {
		Format  string `json:"format"`
		Version int    `json:"version"`
	}
	if strict.Unmarshal(text, &head) != nil || head.Format != Format {
		return document.Document{}, Told{}, bad()
	}
	if head.Version > Version {
		return document.Document{}, Told{}, &document.OpenError{Message: message.New("open.newer", "version", head.Version, "known", Version)}
	}
	var s Sent
	if strict.Decode(text, &s) != nil || !s.Told.bounded() {
		return document.Document{}, Told{}, bad()
	}
	d, err := s.Design.document()
	return d, s.Told, err
}

func bad() error { return &document.OpenError{Message: message.New("open.bad_link")} }

// bounded reports whether what is told is no more than a page shows.
func (t Told) bounded() bool {
	letters := len(t.Day) + len(t.Tube) + len(t.Term) + len(t.Held)
	for _, list := range [][]Figure{t.Figures, t.Price} {
		for _, l := range list {
			letters += len(l.ID) + len(l.Label) + len(l.Value) + len(l.Unit) + len(l.State) + len(l.Mark)
		}
	}
	lists := [][]string{t.Refused, t.Entries}
	for _, b := range t.Beside {
		letters += len(b.Said)
		lists = append(lists, b.Values)
	}
	for _, list := range lists {
		for _, text := range list {
			letters += len(text)
		}
	}
	return letters <= mostLetters && max(len(t.Figures), len(t.Price), len(t.Refused), len(t.Beside), len(t.Entries)) <= mostLines
}

// document is the design whole again, read as any saved one. Nobody answers for its entries yet, and of what stayed in the house it says
// nothing.
func (s Design) document() (document.Document, error) {
	entry := func(text string) document.Entry { return document.Entry{Text: text, Origin: document.Assumed} }
	base := document.Document{Title: s.Title, Units: s.Units, Fields: map[string]document.Entry{}, Spans: []document.Span{}}
	for id, text := range s.Fields {
		base.Fields[id] = entry(text)
	}
	for i := range field.Fields {
		f := &field.Fields[i]
		if _, there := base.Fields[f.ID]; !there && !leaves(f) && f.Since <= s.Version {
			base.Fields[f.ID] = entry(f.House)
		}
	}
	for _, span := range s.Spans {
		base.Spans = append(base.Spans, document.Span{Centre: entry(span.Centre), Width: entry(span.Width)})
	}
	text, err := json.Marshal(struct {
		Format  string          `json:"format"`
		Version int             `json:"version"`
		Base    any             `json:"base"`
		Items   []document.Item `json:"items"`
	}{document.Format, s.Version, base, []document.Item{{ID: "1"}}})
	if err != nil {
		return base, bad()
	}
	f, err := document.OpenFile(text)
	if err != nil {
		return base, err
	}
	return f.Job.Design(0), nil
}
