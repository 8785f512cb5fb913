package paper

import "slices"

// Question is an entry of papers that no design has. Its label is the text "paper.ask.<id>".
type Question struct {
	ID      string
	Of      Scope
	Many    bool     // its answer may take several lines
	Day     bool     // its answer is a day
	Choices []string // with the texts "paper.<id>.<choice>"; the first is taken where none is chosen
	In      []Kind   // the papers that ask for it; none named: all
}

// Scope says how far an answer reaches: it is given once for all papers of a job, for all of an item, or for one paper.
type Scope string

// Scopes.
const (
	OfJob   Scope = "job"
	OfItem  Scope = "item"
	OfPaper Scope = "paper"
)

// Words of a paper's state.
const (
	Provisional = "provisional"
	Approved    = "approved"
	Void        = "void"
)

// Longest answer that is put on a paper [bytes].
const Longest = 4000

// Questions lists them in the order in which they are asked.
var Questions = []Question{
	{ID: "number", Of: OfPaper},
	{ID: "revision", Of: OfPaper},
	{ID: "status", Of: OfPaper, Choices: []string{Provisional, Approved, Void}},
	{ID: "date", Of: OfPaper, Day: true},
	{ID: "customer", Of: OfJob},
	{ID: "reference", Of: OfJob},
	{ID: "item", Of: OfItem},
	{ID: "tube_standard", Of: OfItem, In: []Kind{Datasheet, Offer, Accepted, Traveller, Inspection, Packing, Record, Note}},
	{ID: "prepared", Of: OfJob},
	{ID: "checked", Of: OfPaper},
	{ID: "approved", Of: OfPaper},

	{ID: "form", Of: OfPaper, Choices: []string{"offer", "budget", "substitution"}, In: []Kind{Offer}},
	{ID: "alternatives", Of: OfPaper, Choices: []string{"no_alternatives", "with_alternatives"}, In: []Kind{Offer}},
	{ID: "standing", Of: OfItem, Choices: []string{"firm", "provisional"}, In: []Kind{Offer}},
	{ID: "valid", Of: OfPaper, In: []Kind{Offer}},
	{ID: "taxes", Of: OfJob, Choices: []string{"without_tax", "with_tax"}, In: []Kind{Offer}},
	{ID: "delivery_term", Of: OfJob, In: []Kind{Offer, Accepted}},
	{ID: "payment", Of: OfJob, In: []Kind{Offer}},
	{ID: "promise_from", Of: OfJob, In: []Kind{Offer}},
	{ID: "metal_basis", Of: OfJob, Many: true, In: []Kind{Offer}},
	{ID: "extras", Of: OfPaper, Many: true, In: []Kind{Offer}},
	{ID: "quantity_tolerance", Of: OfJob, In: []Kind{Offer}},
	{ID: "deviations", Of: OfPaper, Many: true, In: []Kind{Offer}},
	{ID: "open_questions", Of: OfPaper, Many: true, In: []Kind{Offer}},
	{ID: "not_included", Of: OfPaper, Many: true, In: []Kind{Offer}},
	{ID: "guarantee", Of: OfPaper, Choices: []string{"none_guaranteed", "duty_guaranteed"}, In: []Kind{Offer}},
	{ID: "terms", Of: OfJob, Many: true, In: []Kind{Offer}},

	{ID: "order", Of: OfJob, In: []Kind{Accepted, Traveller, Inspection, Packing, Record}},
	{ID: "order_revision", Of: OfJob, In: []Kind{Accepted}},
	{ID: "order_date", Of: OfJob, Day: true, In: []Kind{Accepted}},
	{ID: "offer", Of: OfJob, In: []Kind{Accepted}},
	{ID: "differences", Of: OfPaper, Many: true, In: []Kind{Accepted}},
	{ID: "drawing_revision", Of: OfItem, In: []Kind{Accepted, Traveller, Inspection}},
	{ID: "delivery", Of: OfItem, Many: true, In: []Kind{Accepted}},
	{ID: "documents", Of: OfItem, Many: true, In: []Kind{Accepted, Inspection}},
	{ID: "hold_points", Of: OfItem, Many: true, In: []Kind{Accepted, Traveller, Inspection}},
	{ID: "marking", Of: OfItem, In: []Kind{Accepted, Traveller, Packing}},
	{ID: "address", Of: OfJob, Many: true, In: []Kind{Accepted, Packing}},
	{ID: "starts_when", Of: OfJob, In: []Kind{Accepted}},
	{ID: "object_by", Of: OfPaper, Day: true, In: []Kind{Accepted}},

	{ID: "due", Of: OfItem, Day: true, In: []Kind{Traveller, Packing}},
	{ID: "tube_heats", Of: OfItem, In: []Kind{Traveller, Packing}},
	{ID: "coil_numbers", Of: OfItem, In: []Kind{Traveller, Packing}},
	{ID: "test_pressure", Of: OfItem, In: []Kind{Traveller, Inspection}},
	{ID: "measured", Of: OfItem, Many: true, In: []Kind{Record}},
	{ID: "good", Of: OfItem, In: []Kind{Record}},
	{ID: "scrapped", Of: OfItem, In: []Kind{Record}},
	{ID: "rejected", Of: OfItem, In: []Kind{Record}},
	{ID: "concessions", Of: OfItem, Many: true, In: []Kind{Record}},
	{ID: "learned_by", Of: OfItem, In: []Kind{Record}},
	{ID: "purpose", Of: OfPaper, Many: true, In: []Kind{Note}},
	{ID: "money", Of: OfPaper, Choices: []string{"no_money", "money"}, In: []Kind{Sides}},
}

// eachItsOwn are questions that every item of a paper of several answers for itself.
var eachItsOwn = []string{"tube_standard", "standing"}

// Asks lists the questions of a paper, of one item or of several.
func (k Kind) Asks(several bool) []Question {
	var out []Question
	for _, q := range Questions {
		if (q.In == nil || slices.Contains(q.In, k)) && !(several && slices.Contains(eachItsOwn, q.ID)) {
			out = append(out, q)
		}
	}
	return out
}
