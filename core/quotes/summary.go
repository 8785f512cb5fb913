package quotes

import (
	"math"
	"slices"
	"strings"

	"finwright/core/field"
	"finwright/core/units"
)

// Summary is what a list of enquiries needs of one, apart from its text.
type Summary struct {
	ID   string `json:"id"`
	Of   string `json:"of"`
	Time string `json:"time"`
	Letterhead
	Items       int       `json:"items"`
	Unpriced    int       `json:"unpriced"`
	Provisional int       `json:"provisional"`
	Price       float64   `json:"price"` // [money]
	Currency    string    `json:"currency"`
	Day         string    `json:"day"`
	Words       string    `json:"words"`   // of its texts, each once
	Lengths     []float64 `json:"lengths"` // of its tubes [m], each once
	Counts      []float64 `json:"counts"`  // of fins [1/m], each once
}

// mostWords bounds what is kept to be searched, in bytes: of ten thousand items most words are those of the first.
const mostWords = 60_000

// Summary is what a list needs of a record.
func (r *Record) Summary() Summary {
	out := Summary{ID: r.ID, Of: r.Of, Time: r.Time, Letterhead: r.Letterhead, Items: len(r.Quotes), Currency: r.Currency, Day: r.Day, Lengths: []float64{}, Counts: []float64{}}
	out.Price, _, out.Unpriced = r.Total()
	words := newWords()
	words.add(r.Customer, r.Reference, r.Revision)
	for i := range r.Quotes {
		q := &r.Quotes[i]
		if q.Provisional {
			out.Provisional++
		}
		words.add(q.Mark)
		x := item{&r.Quoted, r.Units, q}
		for k := range field.Fields {
			f := &field.Fields[k]
			if !OfTube(f) || !f.Used(x.text) {
				continue
			}
			si, ok := said(f, x.text(f.ID), r.Units)
			switch {
			case !ok:
			case f.Kind == units.FinCount:
				out.Counts = once(out.Counts, si)
			case slices.Contains(lengths, f.Kind):
				out.Lengths = once(out.Lengths, si)
			}
		}
	}
	words.add(r.Text)
	out.Words = words.String()
	return out
}

// once adds a size to those of a list, unless it is there.
func once(list []float64, si float64) []float64 {
	if slices.Contains(list, si) {
		return list
	}
	return append(list, si)
}

// words are the words of texts, each once, in small letters.
type words struct {
	strings.Builder
	seen map[string]bool
}

func newWords() *words { return &words{seen: map[string]bool{}} }

func (w *words) add(texts ...string) {
	for _, text := range texts {
		for word := range strings.FieldsSeq(text) {
			if w.Len()+len(word) > mostWords {
				return
			}
			if word = strings.ToLower(word); !w.seen[word] {
				w.seen[word] = true
				w.WriteString(word + " ")
			}
		}
	}
}

// Search is what is looked for: words, and sizes with their units, all of which must be found.
type Search struct {
	words []string
	sizes []size
}

// size is a number that was looked for, and the texts by which it may stand too.
type size struct {
	text          string
	length, count float64 // [m], [1/m]; 0: it is none
}

// longest is how many words a size takes: 1 1/4 in.
const longest = 3

// SearchFor reads what is looked for. A number with its unit is found in whatever unit it was written.
func SearchFor(text string, s units.System) (out Search) {
	list := strings.Fields(strings.ToLower(text))
next:
	for i := 0; i < len(list); i++ {
		for n := min(longest, len(list)-i); n > 0; n-- {
			if x, ok := sizeOf(strings.Join(list[i:i+n], " "), s); ok {
				out.sizes = append(out.sizes, x)
				i += n - 1
				continue next
			}
		}
		out.words = append(out.words, list[i])
	}
	return out
}

func sizeOf(text string, s units.System) (x size, ok bool) {
	x.text = text
	for _, kind := range []units.Kind{units.Wall, units.Diameter, units.Distance} {
		if p, err := units.Parse(kind, text, s); err == nil {
			x.length, ok = p.SI, true
			break
		}
	}
	if p, err := units.Parse(units.FinCount, text, s); err == nil {
		x.count, ok = p.SI, true
	}
	return x, ok
}

// Finds reports whether all that is looked for is in a record.
func (q Search) Finds(l *Summary) bool {
	for _, word := range q.words {
		if !strings.Contains(l.Words, word) {
			return false
		}
	}
	for _, x := range q.sizes {
		near := func(want float64) func(float64) bool {
			return func(have float64) bool { return want > 0 && math.Abs(have-want) <= alikeShare*want }
		}
		if !strings.Contains(l.Words, x.text) && !slices.ContainsFunc(l.Lengths, near(x.length)) && !slices.ContainsFunc(l.Counts, near(x.count)) {
			return false
		}
	}
	return true
}
