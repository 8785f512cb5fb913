package report

import (
	"slices"
	"strings"

	"finwright/core/document"
	"finwright/core/enquiry"
	"finwright/core/field"
	"finwright/core/message"
)

// shared finds what items say that another said before: it is printed and sent once.
type shared struct {
	w       Writer
	out     *ShownEnquiry
	said    map[saidCell]int
	entries map[EnquiryEntry]int
	designs map[string]int
	key     []byte
}

// saidCell is a reading as far as its print goes.
type saidCell struct {
	field, text string
	doubt       enquiry.Doubt
}

func newShared(w Writer, out *ShownEnquiry) *shared {
	return &shared{w: w, out: out, said: map[saidCell]int{}, entries: map[EnquiryEntry]int{}, designs: map[string]int{}}
}

// entry prints an item.
func (s *shared) entry(x *enquiry.Entry) ShownEntry {
	out := ShownEntry{Mark: x.Mark, Cells: make([]int, len(s.out.Heads)), Unread: []string{}}
	var source, refused []string
	for _, p := range x.Parts {
		if !p.Common {
			source = append(source, strings.TrimSpace(p.Text))
		}
		for _, words := range p.Unread {
			out.Unread = append(out.Unread, p.Text[words.From:words.To])
		}
		for _, n := range p.NotMade {
			refused = append(refused, s.w.say(message.New("enquiry.not_made."+n.ID)))
		}
	}
	out.Source, out.Refused = strings.Join(source, " · "), strings.Join(refused, " ")
	for i, h := range s.out.Heads {
		r, ok := x.Find(h.ID)
		if !ok {
			out.Cells[i] = s.reading(&enquiry.Reading{Field: h.ID})
			continue
		}
		if len(r.Doubts) > 0 {
			out.Open++
		}
		out.Cells[i] = s.reading(r)
	}
	differences := x.Differences(s.out.Base)
	if differences.Title != nil {
		out.Title = *differences.Title
	}
	out.Design = s.design(differences)
	return out
}

// reading is the place of the cell of a reading.
func (s *shared) reading(r *enquiry.Reading) int {
	key := saidCell{field: r.Field, text: r.Text}
	if len(r.Doubts) > 0 {
		key.doubt = r.Doubts[0]
	}
	at, ok := s.said[key]
	if !ok {
		cell := EnquiryCell{Field: r.Field, Text: r.Text, Shown: s.w.reading(r.Field, r.Text)}
		if si, ok := enquiry.Size(r.Field, r.Text); ok {
			cell.SI = &si
		}
		if d := key.doubt; d.Kind != "" {
			cell.Why = s.w.say(message.New("enquiry.guess."+d.Kind, "first", cell.Shown, "second", s.w.second(r.Field, d)))
		}
		at = s.cell(cell)
		s.said[key] = at
	}
	return at
}

// cell adds a cell, and returns its place.
func (s *shared) cell(c EnquiryCell) int {
	s.out.Cells = append(s.out.Cells, c)
	return len(s.out.Cells) - 1
}

// design is the place of a design's differences, mark and title aside.
func (s *shared) design(x document.Differences) int {
	list := make([]int, 0, len(x.Fields))
	for i := range field.Fields {
		id := field.Fields[i].ID
		if entry, ok := x.Fields[id]; ok {
			list = append(list, onceIn(EnquiryEntry{id, entry.Text, entry.Origin}, s.entries, &s.out.Entries))
		}
	}
	s.key = s.key[:0]
	for _, at := range list {
		s.key = append(s.key, byte(at), byte(at>>8), byte(at>>16))
	}
	at, ok := s.designs[string(s.key)]
	if !ok {
		at = len(s.out.Designs)
		s.designs[string(s.key)] = at
		s.out.Designs = append(s.out.Designs, slices.Clip(list))
	}
	return at
}

// onceIn is the place of a value in a list that holds each once.
func onceIn[T comparable](value T, places map[T]int, list *[]T) int {
	at, ok := places[value]
	if !ok {
		at = len(*list)
		places[value] = at
		*list = append(*list, value)
	}
	return at
}
