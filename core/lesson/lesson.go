// Package lesson holds the exercises of a trainee: each a question, a guess, a task in the live tool, and a check that is
// worked out from the trainee's own document.
package lesson

import (
	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/units"
)

// Exercise is one of them. Its words are the texts "lesson.<id>.title", ".question", ".guess", ".task", ".asked", ".hint_1",
// ".hint_2" and ".answer".
type Exercise struct {
	ID      string
	Section string // of the page that shows what it is about
	Args    []any  // that fill its texts

	Start     []Entry  // what its tube says otherwise than the house's
	Free      []string // what the task lets change; all other entries stay as they start, and so do bare spans but for FreeSpans
	FreeSpans bool

	Guess Guess
	Tests []Test // what the trainee's tube must show
	Asked Asked  // the number that is typed

	Solution []Entry  // what solves it, of the entries and, by SpanEntry, of bare spans
	Workings []string // figures that the worked answer lays open
}

// Entry is what one entry says, as it is typed.
type Entry struct{ Field, Text string }

// Asked is the number that is to be typed; a zero one asks for none.
type Asked struct {
	Kind units.Kind
	Of   func(c *Case) (si float64, ok bool)
}

// Case is what an exercise is judged on: its tube as it starts and as the trainee has it.
type Case struct{ Start, Now *Reading }

// Test is one thing that the trainee's tube must show, said by the text "lesson.<exercise>.test.<id>".
type Test struct {
	ID    string
	Holds func(c *Case) bool
	Found func(c *Case) message.Message // what it shows instead; nil: nothing is said
}

// Guess is what is foretold before the task: one of some bands of a number, or of some words.
type Guess struct {
	Kind  units.Kind
	Bands []float64 // bounds between the bands [SI]; none: Words are
	Words []string  // texts "lesson.<exercise>.word.<word>", in no order

	// Truth finds, of the tube as it starts, the number [SI], or the place of the word, and says it by "lesson.<exercise>.told".
	Truth func(start *Reading) (number float64, told []any)
}

// Exercises lists them in the order in which they are learned.
var Exercises = []*Exercise{
	&double, &metal, &taper, &kilogram, &face, &bore, &oil, &steam, &basis, &disc, &drop, &startUp, &growth, &quote, &slip,
}

// Find returns the exercise of an ID.
func Find(id string) (x *Exercise, ok bool) {
	for _, x := range Exercises {
		if x.ID == id {
			return x, true
		}
	}
	return nil, false
}

// text is the key of one of its texts, and say the text with what it is about.
func (x *Exercise) text(part string) string         { return "lesson." + x.ID + "." + part }
func (x *Exercise) say(part string) message.Message { return message.New(x.text(part), x.Args...) }

// Document is the tube that it starts with.
func (x *Exercise) Document(title string, s units.System) document.Document {
	d := document.New()
	d.Title, d.Units = title, s
	put(&d, orderOf)
	put(&d, x.Start)
	return d
}

// orderOf is what is ordered where the exercise does not say it: so that no single tube bears what the whole order costs.
var orderOf = []Entry{{"quantity", "120"}}

// Solved is the tube that solves it.
func (x *Exercise) Solved(title string, s units.System) document.Document {
	d := x.Document(title, s)
	put(&d, x.Solution)
	return d
}

// put types entries into a document that is nobody else's.
func put(d *document.Document, entries []Entry) {
	for _, e := range entries {
		if part, at := spanPart(e.Field); part != "" {
			typeSpan(d, part, at, e.Text)
			continue
		}
		d.Fields[e.Field] = document.Entry{Text: e.Text, Origin: document.Customer}
	}
}
