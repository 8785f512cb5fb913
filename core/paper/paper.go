// Package paper is the shape of what goes out of the door: a head, and blocks one under the other, all of finished texts in the
// language and the units of whoever reads it. It knows neither what is told nor what it is shown on.
package paper

import (
	"slices"

	"finwright/core/csv"
)

// Kind is which paper it is. Its title is the text "paper.kind.<kind>".
type Kind string

// Kinds of paper.
const (
	Datasheet  Kind = "datasheet"
	Traveller  Kind = "traveller"
	Offer      Kind = "offer"
	Note       Kind = "note" // the calculation
	Inspection Kind = "inspection"
	Packing    Kind = "packing"
	Sides      Kind = "comparison" // designs side by side
	Accepted   Kind = "acknowledgement"
	Record     Kind = "record" // what came back from the floor
)

// Kinds lists them in the order of an order's way.
var Kinds = []Kind{Datasheet, Offer, Accepted, Traveller, Inspection, Packing, Record, Note, Sides}

// House reports whether a paper stays in the house: it tells what the shop takes for the work.
func (k Kind) House() bool { return k == Traveller || k == Record }

// Several reports whether a paper can be of several items, a line each.
func (k Kind) Several() bool { return k == Offer || k == Accepted || k == Packing }

// Known reports whether there is such a paper.
func (k Kind) Known() bool { return slices.Contains(Kinds, k) }

// Paper is one of them, ready to be laid out.
type Paper struct {
	Kind   Kind    `json:"kind"`
	Title  string  `json:"title"`
	Status string  `json:"status"` // provisional, approved or void, in a word
	Across string  `json:"across"` // said across each sheet; empty: nothing is the matter
	Foot   string  `json:"foot"`   // of each sheet, beside its number
	Head   []Pair  `json:"head"`
	Blocks []Block `json:"blocks"`
}

// Pair is something that has a name, and what it is.
type Pair struct {
	Label string `json:"label"`
	Value string `json:"value"`
	Note  string `json:"note,omitempty"` // what it refers to, how it is judged

	Figure string `json:"figure,omitempty"` // of the page that it is
}

// Form says how a block is laid out.
type Form string

// Forms of a block.
const (
	Heading   Form = "heading"   // Text
	Text      Form = "text"      // Text, or Lines one under the other
	Caution   Form = "caution"   // the same, framed
	Pairs     Form = "pairs"     // in columns
	Tabulated Form = "table"     // Table, with Text over it
	Blanks    Form = "blanks"    // Pairs of which a hand writes the values
	Hold      Form = "hold"      // Text, a line at which work waits for a signature
	Picture   Form = "drawing"   // Drawing
	NewSheet  Form = "new_sheet" // what follows begins one
	Code      Form = "code"      // Text, in squares that a camera reads
)

// Block is a part of a paper; its form says which members count.
type Block struct {
	Form    Form     `json:"form"`
	Text    string   `json:"text,omitempty"`
	Lines   []string `json:"lines,omitempty"`
	Pairs   []Pair   `json:"pairs,omitempty"`
	Table   *Table   `json:"table,omitempty"`
	Drawing *Drawing `json:"drawing,omitempty"`
}

// Whole reports whether a block has what its form asks for.
func (b *Block) Whole() bool {
	switch b.Form {
	case Tabulated:
		return b.Table != nil && b.Table.whole()
	case Picture:
		return b.Drawing != nil
	case Code:
		return len(b.Text) <= mostCoded
	case Heading, Text, Caution, Pairs, Blanks, Hold, NewSheet:
		return true
	}
	return false
}

// whole reports whether all rows are as long as the head.
func (t *Table) whole() bool {
	for _, row := range t.Rows {
		if len(row) != len(t.Columns) {
			return false
		}
	}
	return len(t.Columns) > 0
}

// Table has a row a thing. A column that is written into by hand is Open.
type Table struct {
	Columns []Column   `json:"columns"`
	Rows    [][]string `json:"rows"`
	Sum     bool       `json:"sum,omitempty"` // the last row is of all above it
}

// Column is one of a table's.
type Column struct {
	Label  string `json:"label"`
	Number bool   `json:"number,omitempty"` // its cells are numbers
	Open   bool   `json:"open,omitempty"`   // they are written by hand

	Formula bool `json:"formula,omitempty"` // they are formulas, with an index after an underscore and an exponent after a caret
}

// Drawing is a picture to scale; without one Text says why.
type Drawing struct {
	SVG  string `json:"svg"`
	Text string `json:"text"` // what is to be known of it
}

// CSV writes a table as a file that spreadsheets open.
func (t *Table) CSV() string {
	heads := make([]string, len(t.Columns))
	for i, c := range t.Columns {
		heads[i] = c.Label
	}
	return csv.Mark + csv.Write(append([][]string{heads}, t.Rows...)...)
}
