// Package quotes is what is kept of enquiries: what the customer sent, all that was told, settled and typed since, and what each item was
// quoted at, by which shop and when. It writes and reads that as text, holds two revisions against one another and finds what was quoted
// before for a tube. It keeps nothing itself.
package quotes

import (
	"slices"

	"finwright/core/document"
	"finwright/core/enquiry"
	"finwright/core/field"
	"finwright/core/units"
)

// State is how far an enquiry has come.
type State string

// States, in the order in which an enquiry goes through them.
const (
	Asked   State = "asked"
	Priced  State = "priced"
	Offered State = "offered"
	Won     State = "won"
	Lost    State = "lost"
)

// States lists them.
var States = []State{Asked, Priced, Offered, Won, Lost}

// Told reports whether the customer knows the prices: what he was told stays as it is.
func (s State) Told() bool { return s == Offered || s == Won || s == Lost }

// Letterhead is what an enquiry says of itself, as typed.
type Letterhead struct {
	Customer  string `json:"customer"`
	Reference string `json:"reference"` // the customer's
	Revision  string `json:"revision"`
	Due       string `json:"due"` // a day as 2026-11-27, or empty
	State     State  `json:"state"`
}

// Record is one revision of an enquiry.
type Record struct {
	ID   string `json:"id"`   // given by whoever makes it; it stays when all else changes
	Of   string `json:"of"`   // the enquiry that it is a revision of
	Time string `json:"time"` // when it was written last
	Letterhead
	Units   units.System         `json:"units"` // that it is read in
	Text    string               `json:"text"`  // as it was sent
	Columns []enquiry.HeadColumn `json:"columns,omitempty"`
	Decided []enquiry.Decision   `json:"decided,omitempty"`
	Edits   []enquiry.Edit       `json:"edits,omitempty"`
	Quoted
}

// Quoted is what the items were quoted at.
type Quoted struct {
	Day      string            `json:"day"` // of the prices; empty: there are none yet
	Shop     string            `json:"shop"`
	Currency string            `json:"currency"`
	Base     map[string]string `json:"base"` // what each says of its tube that says nothing else
	Quotes   []Quote           `json:"quotes"`
}

// Quote is one item as it was quoted.
type Quote struct {
	Mark        string            `json:"mark"`
	Entries     map[string]string `json:"entries"` // of its design, otherwise than the base
	Bare        []Bare            `json:"bare,omitempty"`
	Tubes       int               `json:"tubes"`
	Price       *float64          `json:"price,omitempty"` // of all its tubes [money]; none: it was refused, or could not be priced
	Provisional bool              `json:"provisional,omitempty"`
}

// Bare is a stretch without fins, as typed.
type Bare struct {
	Centre string `json:"centre"`
	Width  string `json:"width"`
}

// ofTube are the groups of fields that say what a tube is. What is done with it, and how closely it is held, is no part of that.
var ofTube = []string{"tube", "fin", "fin_detail", "lengths"}

// OfTube reports whether a field says what the tube is.
func OfTube(f *field.Field) bool { return slices.Contains(ofTube, f.Group) }

// BaseOf is what the items say of their tubes that say nothing else than a document.
func BaseOf(d document.Document) map[string]string {
	out := map[string]string{}
	for i := range field.Fields {
		if f := &field.Fields[i]; OfTube(f) {
			out[f.ID] = d.Text(f.ID)
		}
	}
	return out
}

// QuoteOf is an item of a design that differs from a base.
func QuoteOf(mark string, x document.Differences) Quote {
	q := Quote{Mark: mark, Entries: map[string]string{}}
	for id, entry := range x.Fields {
		q.Entries[id] = entry.Text
	}
	if x.Spans != nil {
		for _, s := range *x.Spans {
			q.Bare = append(q.Bare, Bare{s.Centre.Text, s.Width.Text})
		}
	}
	return q
}

// Text is what an item says of a field: itself, by the base, or as older programs took it.
func (r *Quoted) Text(q *Quote, id string) string {
	if text, ok := q.Entries[id]; ok {
		return text
	}
	if text, ok := r.Base[id]; ok {
		return text
	}
	f, ok := field.Find(id)
	if !ok {
		return ""
	}
	return f.House
}

// Total is what all items come to [money], how many tubes they are, and how many items have no price.
func (r *Quoted) Total() (price float64, tubes, unpriced int) {
	for i := range r.Quotes {
		q := &r.Quotes[i]
		if q.Price == nil {
			unpriced++
			continue
		}
		price += *q.Price
		tubes += q.Tubes
	}
	return price, tubes, unpriced
}

// Same reports whether a record says what another does, but for when it was written, and for the day of prices that are the same.
func (r *Record) Same(other *Record) bool {
	then := *other
	then.ID, then.Time, then.Day = r.ID, r.Time, r.Day
	return (r.Day == "") == (other.Day == "") && r.says() == then.says()
}
