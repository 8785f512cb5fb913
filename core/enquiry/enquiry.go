// Package enquiry reads what customers write: a line of plain text or a row of a table becomes entries of a design, each with the
// words it came from. Nothing is resolved in silence: what may be meant in two ways is a guess with its second reading beside it, and
// words that are not understood are kept. It knows the trade's words (words.txt) and no layout of any customer's.
package enquiry

// What may be read beside the entries of a design.
const (
	Mark         = "mark"          // what the customer calls the item
	FinOD        = "fin_od"        // outside diameter over the fins
	FinGap       = "fin_gap"       // clear distance between fins
	FinnedLength = "finned_length" // from the first fin to the last
	BetweenFaces = "between_faces" // of the tube, between the sheets that it is fixed in
	Spare        = "spare"         // finned tubes beyond the quantity
	SpareBare    = "spare_bare"    // bare ones
	GasFlow      = "gas_flow"      // volume of the gas outside
	Seam         = "seam"          // how the tube is made: seamless or welded
)

// Doubt says that a reading is a guess, and what else may be meant.
type Doubt struct {
	Kind  string `json:"kind"`  // with the text "enquiry.doubt.<kind>"
	Field string `json:"field"` // of the second reading
	Text  string `json:"text"`  // of the second reading; empty: that it says nothing of the field
}

// Reading is what some words were read as.
type Reading struct {
	Field  string  `json:"field"` // of a design, or one of the above
	Text   string  `json:"text"`  // as a design holds it
	From   []Span  `json:"from"`  // the words
	Doubts []Doubt `json:"doubts,omitempty"`
}

// Refused is something that is not made here, with its words.
type Refused struct {
	ID   string `json:"id"` // with the text "enquiry.not_made.<id>"
	From Span   `json:"from"`
}

// Read is a text that was read.
type Read struct {
	Text     string    `json:"text"`
	Readings []Reading `json:"readings"`
	NotMade  []Refused `json:"not_made,omitempty"`
	Unread   []Span    `json:"unread,omitempty"` // words that were not understood
}

// Find returns what was read of a field.
func (r *Read) Find(field string) (found *Reading, ok bool) {
	for i := range r.Readings {
		if r.Readings[i].Field == field {
			return &r.Readings[i], true
		}
	}
	return nil, false
}

// Doubtful reports whether something was read that may be meant otherwise.
func (r *Read) Doubtful() bool {
	for i := range r.Readings {
		if len(r.Readings[i].Doubts) > 0 {
			return true
		}
	}
	return false
}

// longest is how much of a text is read, in bytes: no line of an enquiry is as long.
const longest = 1200

// Line reads a line of plain text. What lies behind its first 1,200 bytes is kept as not understood.
func Line(text string) Read { return readText(text, prior{}) }
