// Package outgoing makes what leaves the house. Whatever goes to a customer is made of Told and Design and of nothing else: they have no
// place for mark-up, rates, costs, remarks, names of what was kept, origins or the shop. A price is a finished text with its day and its
// term, which nobody computes again. An internal copy is made elsewhere (document.SaveJob), by another command.
package outgoing

import (
	"slices"

	"finwright/core/compare"
	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/shop"
)

// Figures may be told to a customer, of those that a user can decide by. The others are prices, which travel as Told.Price where they
// are asked for, or say how the shop works.
var Figures = slices.DeleteFunc(slices.Clone(report.Deciding), func(id string) bool { return slices.Contains(prices, id) || slices.Contains(stays, id) })

var (
	prices = []string{"price_tube", "price"}
	stays  = []string{"line_hours", report.LineFigure}
)

// Usual are told until somebody picks others, in the order in which they stand: heat, what it takes, size and weight.
var Usual = []string{"duty", "air_drop", "fin_od", "tube_weight"}

// Slid are the entries that are slid until somebody picks others.
var Slid = []string{"fin_height", "fin_pitch"}

// MostFigures and MostEntries are picked.
const (
	MostFigures = 4
	MostEntries = 2
)

// Picked is what the sender picked to be told.
type Picked struct {
	Figures []string     `json:"figures"` // of Figures, in the order in which they stand
	Entries []string     `json:"entries"` // of compare.Ladders: what can be slid
	Held    compare.Held `json:"held"`    // while it is compared
	Price   bool         `json:"price"`
	Day     string       `json:"day"`   // today, as 2026-11-27
	Until   string       `json:"until"` // the last on which a price holds; empty: not stated
}

// Told is what is said of a design, in finished texts.
type Told struct {
	Day     string   `json:"day"`
	Tube    string   `json:"tube"` // in one line
	Figures []Figure `json:"figures"`
	Price   []Figure `json:"price"` // none where it was not asked for, or where the tube is refused
	Term    string   `json:"term"`  // of which day the price is, and until when it holds
	Refused []string `json:"refused"`
	Held    string   `json:"held"` // while it was compared; empty where nothing was
	Beside  []Beside `json:"beside"`
	Entries []string `json:"entries"` // as they were picked
}

// Figure is one of the design, printed.
type Figure struct {
	ID    string       `json:"id"`
	Label string       `json:"label"`
	Value string       `json:"value"` // or why there is none
	Unit  string       `json:"unit"`
	State figure.State `json:"state"`
	Mark  string       `json:"mark"` // the state in a word
}

// Beside is a design that was kept: how it does, its figures and its outline.
type Beside struct {
	Said   string   `json:"said"`
	Values []string `json:"values"` // of Figures, where it has them
	OD     float64  `json:"od"`     // of the tube [mm]; 0 where it cannot be drawn
	FinOD  float64  `json:"fin_od"` // [mm]
}

// Tell says of a design and of those kept beside it what may leave the house; c is the shop that makes them, nil where nobody is to.
// Errors are design.FieldErrors, of the design's own entries.
func Tell(w report.Writer, d document.Document, kept []document.Document, c *shop.Capability, p Picked) (Told, error) {
	in, h, err := design.ReadAndRate(d, c)
	if err != nil {
		return Told{}, err
	}
	res := design.Evaluate(in, h)
	res.AddCarried(d)
	if c != nil {
		w.Currency = c.Currency
		m := design.Brief(in, h)
		res.AddMaking(&m)
	}
	t := teller{w, p}
	out := Told{Day: p.Day, Tube: w.Card(in, h).Line, Figures: []Figure{}, Price: []Figure{}, Refused: t.Refusals(&res), Beside: []Beside{}, Entries: t.entries()}
	for _, id := range t.figures() {
		out.Figures = append(out.Figures, t.line(&res, id))
	}
	if p.Price && len(out.Refused) == 0 {
		out.Price, out.Term = t.price(&res)
	}
	if len(kept) > 0 {
		t.compare(&out, append([]document.Document{d}, kept...), c)
	}
	return out, nil
}

// teller says what was picked, in its reader's words.
type teller struct {
	report.Writer
	picked Picked
}

func (t teller) say(key string, pairs ...any) string {
	return t.Texts.Render(message.New(key, pairs...), t.System)
}

// figures are those picked that may be told, else the usual ones.
func (t teller) figures() []string {
	picked := known(t.picked.Figures, Figures, MostFigures)
	if len(picked) == 0 {
		return Usual
	}
	return picked
}

func (t teller) entries() []string { return known(t.picked.Entries, compare.Ladders, MostEntries) }

// Slides reports whether an entry has standard steps to slide over.
func Slides(id string) bool { return slices.Contains(compare.Ladders, id) }

// known are the first of a list that another has, each once.
func known(list, of []string, most int) []string {
	out := []string{}
	for _, id := range list {
		if slices.Contains(of, id) && !slices.Contains(out, id) && len(out) < most {
			out = append(out, id)
		}
	}
	return out
}

func (t teller) line(res *design.Result, id string) Figure {
	f, ok := res.Find(id)
	if !ok {
		return Figure{ID: id, Label: t.Texts.Text("figure." + id), State: figure.Plain}
	}
	shown := t.Figure(f)
	out := Figure{ID: id, Label: shown.Label, Value: shown.Value, Unit: shown.Unit, State: shown.State, Mark: shown.Mark}
	if shown.Absent != "" {
		out.Value = shown.Absent
	}
	return out
}

// price is that of a tube and of the order, where there is one.
func (t teller) price(res *design.Result) (list []Figure, term string) {
	list = []Figure{}
	for _, id := range prices {
		if f, ok := res.Find(id); ok && f.Absent.None() && f.State != figure.No {
			list = append(list, t.line(res, id))
		}
	}
	switch _, dated := shop.ParseDay(t.picked.Until); {
	case len(list) == 0:
		return list, ""
	case dated:
		return list, t.say("outgoing.term", "day", t.picked.Day, "until", t.picked.Until)
	}
	return list, t.say("outgoing.no_term", "day", t.picked.Day)
}

// compare says how those that were kept do, under what they say otherwise and not under the names that they were given.
func (t teller) compare(out *Told, designs []document.Document, c *shop.Capability) {
	held := t.picked.Held
	if !slices.Contains(compare.Helds, held) {
		held = compare.Box
	}
	table := compare.Of(designs, 0, held, "", c)
	table.Entries = slices.DeleteFunc(table.Entries, func(id string) bool { return !leaves(field.Must(id)) })
	for i := range table.Columns {
		table.Columns[i].Row.Why, table.Columns[i].Row.Line = report.Public(table.Columns[i].Row.Why), ""
	}
	shown := t.Comparison(&table, make([]string, len(designs)), t.picked.Price)
	out.Held = shown.Held
	for i, d := range designs[1:] {
		beside := Beside{Said: shown.Columns[i+1].Said, Values: make([]string, len(out.Figures))}
		for j, f := range out.Figures {
			if at := slices.IndexFunc(shown.Figures, func(l report.ComparedLine) bool { return l.ID == f.ID }); at >= 0 {
				beside.Values[j] = shown.Figures[at].Cells[i+1].Value
			}
		}
		if in, err := design.Read(d); err == nil {
			beside.OD, beside.FinOD = in.Tube.OD.Millimetres(), in.Tube.FinOD().Millimetres()
		}
		out.Beside = append(out.Beside, beside)
	}
}

// leaves reports whether a field's text may leave the house: how the order is made may not, mark-up and line among it.
func leaves(f *field.Field) bool { return f.Group != "making" }
