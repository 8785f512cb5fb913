package lesson

import (
	"strconv"
	"strings"

	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/units"
)

// Story is an explanation that moves: sentences of which some numbers are pulled and the others follow. Its words are the texts
// "lesson.story.<id>.title" and those that Tells names.
type Story struct {
	ID      string
	Section string // of the page whose drawing and curves go with it

	Tells func(r *Reading) []Sentence
	Curve func(w report.Writer, r *Reading) *FinCurve  // nil: none
	Bars  func(w report.Writer, r *Reading) []ShareBar // nil: none
	Wound func(w report.Writer, r *Reading) *Winding   // nil: none
}

// Sentence is one paragraph: a text by its key, the entries in it that are pulled, and what else fills it.
type Sentence struct {
	Key   string
	Pulls []string
	Args  []any
}

// Stories lists them.
var Stories = []*Story{&efficiencyStory, &resistanceStory, &windingStory}

// ShownStory is one as the page shows it.
type ShownStory struct {
	ID         string      `json:"id"`
	Section    string      `json:"section"`
	Title      string      `json:"title"`
	Paragraphs []Paragraph `json:"paragraphs"`
	Curve      *FinCurve   `json:"curve"`
	Bars       []ShareBar  `json:"bars"`
	Winding    *Winding    `json:"winding"`
}

// Paragraph is text in pieces.
type Paragraph struct {
	Pieces []Piece `json:"pieces"`
}

// Piece is plain text, or a number that is pulled.
type Piece struct {
	Text  string  `json:"text"`
	Field string  `json:"field"` // empty: plain text
	Label string  `json:"label"`
	Now   float64 `json:"now"` // where between its ends it stands [SI]
	Low   float64 `json:"low"`
	High  float64 `json:"high"`
}

// FinCurve is the temperature along a fin in a box of 100 by 60, from root to tip and from the root's temperature at the top to the gas's.
type FinCurve struct {
	Path string  `json:"path"`
	Tip  float64 `json:"tip"` // its height at the tip
	Root string  `json:"root"`
	Edge string  `json:"edge"`
	Gas  string  `json:"gas"`
	Said string  `json:"said"` // the curve in words
}

// ShareBar is a share of a whole.
type ShareBar struct {
	Label string  `json:"label"`
	Share float64 `json:"share"`
	Said  string  `json:"said"`
}

// ShowStories names all stories, and tells the one of an ID on a tube; of a tube that cannot be computed only the title.
func ShowStories(w report.Writer, id string, r *Reading) []ShownStory {
	out := make([]ShownStory, len(Stories))
	for i, s := range Stories {
		out[i] = ShownStory{ID: s.ID, Section: s.Section, Title: w.Texts.Text("lesson.story." + s.ID + ".title"), Paragraphs: []Paragraph{}, Bars: []ShareBar{}}
		if s.ID != id || r.Err != nil || !r.Heat.Absent.None() {
			continue
		}
		for _, one := range s.Tells(r) {
			out[i].Paragraphs = append(out[i].Paragraphs, one.tell(w, r))
		}
		if s.Curve != nil {
			out[i].Curve = s.Curve(w, r)
		}
		if s.Wound != nil {
			out[i].Winding = s.Wound(w, r)
		}
		if s.Bars != nil {
			out[i].Bars = s.Bars(w, r)
		}
	}
	return out
}

// Marks about the place of an entry in a text, which no text has.
const (
	opens  = "\x01"
	closes = "\x02"
)

// tell renders a sentence and parts it at its entries.
func (s *Sentence) tell(w report.Writer, r *Reading) (p Paragraph) {
	args := append([]any{}, s.Args...)
	for i, id := range s.Pulls {
		args = append(args, id, opens+strconv.Itoa(i)+closes)
	}
	rest := w.Texts.Render(message.New(s.Key, args...), w.System)
	for rest != "" {
		before, after, open := strings.Cut(rest, opens)
		if before != "" {
			p.Pieces = append(p.Pieces, Piece{Text: before})
		}
		if !open {
			break
		}
		var number string
		number, rest, _ = strings.Cut(after, closes)
		i, _ := strconv.Atoi(number)
		p.Pieces = append(p.Pieces, pulled(w, r, s.Pulls[i]))
	}
	return p
}

// pulled is the number of an entry; one that the design does not ask for is plain text.
func pulled(w report.Writer, r *Reading, id string) Piece {
	f := field.Must(id)
	si := f.Get(&r.In)
	p := Piece{Text: w.Texts.Numbers.Entry(f.Kind, si, w.System)}
	if f.Kind == units.FinCount {
		p.Text = w.Texts.Numbers.FinCount(si, w.System)
	}
	if f.Used(r.Document.Text) {
		p.Field, p.Label, p.Now, p.Low, p.High = id, w.Texts.Text(f.Label()), si, f.Low, f.High
	}
	return p
}

// of is a figure as an argument.
func of(r *Reading, id string) message.Amount {
	f, _ := r.Result.Find(id)
	return message.Amount{Kind: f.Kind, SI: f.SI}
}

// asks reports whether a tube asks for an entry.
func asks(r *Reading, id string) bool { return field.Must(id).Used(r.Document.Text) }

// absent reports whether a figure has no value.
func absent(f figure.Figure, found bool) bool { return !found || !f.Absent.None() }

func celsius(w report.Writer, t float64) string {
	return w.Texts.Numbers.Figure(units.Temp, t, w.System).String()
}
