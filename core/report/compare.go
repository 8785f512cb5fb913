package report

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"strings"

	"finwright/core/compare"
	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/numeric"
	"finwright/core/units"
)

// Comparison is designs side by side as the page shows them.
type Comparison struct {
	Held    string           `json:"held"` // what stands still, and what moves first
	Columns []ComparedColumn `json:"columns"`
	Entries []ComparedLine   `json:"entries"` // that differ
	Figures []ComparedLine   `json:"figures"`
}

// ComparedColumn is one of them. Of one that is refused Refused says why, and its cells are empty.
type ComparedColumn struct {
	Name     string            `json:"name"` // what it says otherwise than the base, where it was given none
	Base     bool              `json:"base"`
	State    figure.State      `json:"state"`
	Mark     string            `json:"mark"` // the state in a word
	Why      string            `json:"why"`  // the remark behind it
	Line     string            `json:"line"` // that makes it
	Followed []string          `json:"followed"`
	Outside  string            `json:"outside"` // where the one method is out of its range
	Refused  string            `json:"refused"`
	Said     string            `json:"said"`    // how it does against the base, in a sentence
	Instead  string            `json:"instead"` // what it does in the place of the base, as a sentence to send
	Document document.Document `json:"document"`
}

// ComparedLine is an entry or a figure in all columns.
type ComparedLine struct {
	ID     string         `json:"id"`
	Label  string         `json:"label"`
	Unit   string         `json:"unit"`
	Same   bool           `json:"same"`   // in all columns, as it is printed
	Means  string         `json:"means"`  // what the glossary knows its label by: kind and id
	Worked string         `json:"worked"` // the section whose figure it is, for its working; empty: it has none
	Cells  []ComparedCell `json:"cells"`
}

// ComparedCell is one value, with what it is against the base.
type ComparedCell struct {
	Value   string `json:"value"`
	Against string `json:"against"` // the base; empty in its own column, and where that has none
	Best    bool   `json:"best"`
	Refused bool   `json:"refused"` // a price of what is refused
	Moved   bool   `json:"moved"`   // an entry that followed from what is held
	Absent  string `json:"absent"`  // why there is no value
}

// Comparison prints designs side by side under the names that they were given, without money where that stays at home.
func (w Writer) Comparison(t *compare.Table, names []string, money bool) Comparison {
	c := comparing{w, t, money}
	out := Comparison{Held: w.Texts.Text("compare.holds." + string(t.Held)), Columns: make([]ComparedColumn, len(t.Columns)), Entries: []ComparedLine{}, Figures: []ComparedLine{}}
	for i := range t.Columns {
		out.Columns[i] = c.column(i, names[i])
	}
	for _, id := range t.Entries {
		out.Entries = append(out.Entries, c.entries(field.Must(id)))
	}
	if t.Spans {
		out.Entries = append(out.Entries, c.spansOf())
	}
	for i, f := range compare.Figures() {
		if money || !f.Kind.Money() {
			out.Figures = append(out.Figures, c.figures(i, &f))
		}
	}
	out.Figures = numeric.Sorted(out.Figures, func(a, b *ComparedLine) int { return leads(a.ID) - leads(b.ID) })
	return out
}

// leads tells what comes first: what is asked for, what it costs in fan power and in money.
func leads(id string) int {
	first := []string{"duty", "air_drop", "price_tube"}
	if at := slices.Index(first, id); at >= 0 {
		return at
	}
	return len(first)
}

// comparing writes the parts of a table.
type comparing struct {
	Writer
	t     *compare.Table
	money bool
}

func (w comparing) column(i int, name string) ComparedColumn {
	c := &w.t.Columns[i]
	out := ComparedColumn{Name: name, Base: i == w.t.Base, State: c.Row.State, Line: c.Row.Line, Followed: []string{}, Document: c.Document}
	if name == "" {
		out.Name = w.name(i)
	}
	for _, m := range c.Followed {
		out.Followed = append(out.Followed, w.say(m))
	}
	if room := w.Followed(c.Room); room != "" {
		out.Followed = append(out.Followed, room)
	}
	for _, m := range c.Outside {
		if said := w.say(m); !strings.Contains(out.Outside, said) { // film and drop of one work have one range
			out.Outside = strings.TrimSpace(out.Outside + " " + said)
		}
	}
	if !c.Refused.None() {
		out.State, out.Refused = figure.No, w.say(c.Refused)
	} else if !c.Row.Why.None() {
		out.Why = w.say(c.Row.Why)
	}
	out.Mark = w.mark(out.State)
	out.Said, out.Instead = w.against(i, out.Name), w.instead(i)
	return out
}

// name says what a column has otherwise than the base, and the base than the first other.
func (w comparing) name(i int) string {
	if i != w.t.Base {
		return cmp.Or(w.otherwise(i, i), w.Texts.Text("compare.as_base"))
	}
	for other := range w.t.Columns {
		if said := w.otherwise(other, i); said != "" {
			return said
		}
	}
	return w.Texts.Text("compare.base_alone")
}

// against says in a sentence how a column does against the base.
func (w comparing) against(i int, name string) string {
	c := &w.t.Columns[i]
	if i == w.t.Base {
		return ""
	}
	what, base := w.otherwise(i, i), w.values(i, w.t.Base)
	if what == "" {
		what, base = name, w.Texts.Text("compare.base")
	}
	if !c.Refused.None() {
		return w.say(message.New("compare.refused", "what", what, "why", c.Refused))
	}
	points := w.t.Points(i, w.money)
	if len(points) == 0 {
		return w.say(message.New("compare.alone", "what", what))
	}
	said := w.say(message.New("compare.against", "what", what, "base", base, "points", w.points(points), "sure", w.t.Sureness(i)))
	if c.Row.State == figure.No {
		said += " " + w.say(message.New("compare.but", "why", c.Row.Why))
	}
	return said
}

// instead says what a column does in the place of the base, with the fins of both by count and thickness.
func (w comparing) instead(i int) string {
	change := w.t.Instead(i)
	if change.None() {
		return ""
	}
	says := func(at int) string {
		d := w.t.Columns[at].Document
		fins := w.value(field.Must("fin_pitch"), d) + " " + w.value(field.Must("strip_thickness"), d)
		other := slices.DeleteFunc(w.told(i), func(id string) bool { return id == "fin_pitch" || id == "strip_thickness" })
		return strings.Trim(fins+", "+w.labelled(other, d), ", ")
	}
	key := "compare.instead"
	if w.t.Columns[i].Row.State == figure.No || len(w.t.Columns[i].Outside) > 0 {
		key = "compare.instead_but" // it must not be sent as if nothing were the matter
	}
	why := w.t.Columns[i].Row.Why
	if why.None() && key == "compare.instead_but" {
		why = w.t.Columns[i].Outside[0]
	}
	return w.say(message.New(key, "what", says(i), "base", says(w.t.Base), "change", change, "why", why, "held", message.Key("compare.holding."+string(w.t.Held))))
}

// told are the entries of column i that differ from the base and did not follow, those that name it.
func (w comparing) told(i int) []string {
	var out []string
	base, c := w.t.Columns[w.t.Base].Document, &w.t.Columns[i]
	for _, id := range w.t.Entries {
		f := field.Must(id)
		if !c.Moved[id] && f.Used(c.Document.Text) && w.shownEntry(f, c.Document) != w.shownEntry(f, base) {
			out = append(out, id)
		}
	}
	return out
}

// mostTold entries make a name.
const mostTold = 3

// otherwise says what column i has otherwise than the base, as it stands in column of; empty where that is nothing or too much for a name.
// A number bears its label, but for the count of fins, which the trade knows by its unit.
func (w comparing) otherwise(i, of int) string {
	told := w.told(i)
	if len(told) > mostTold {
		return ""
	}
	return w.labelled(told, w.t.Columns[of].Document)
}

func (w comparing) labelled(ids []string, d document.Document) string {
	said := make([]string, len(ids))
	for i, id := range ids {
		f := field.Must(id)
		if said[i] = w.value(f, d); f.Choice == nil && f.Kind != units.FinCount {
			said[i] = w.Texts.Text(f.Label()) + " " + said[i]
		}
	}
	return strings.Join(said, ", ")
}

// values are what column of has where column i is otherwise than the base, without labels.
func (w comparing) values(i, of int) string {
	var said []string
	for _, id := range w.told(i) {
		said = append(said, w.value(field.Must(id), w.t.Columns[of].Document))
	}
	return strings.Join(said, ", ")
}

// value is an entry in a sentence: fins as they were counted, and a word for what is not stated.
func (w comparing) value(f *field.Field, d document.Document) string {
	if f.Kind == units.FinCount {
		return w.typed(f.Kind, d.Text(f.ID))
	}
	return cmp.Or(w.shownEntry(f, d), w.Texts.Text("compare.unstated"))
}

func (w Writer) points(list []message.Message) string {
	said := make([]string, len(list))
	for i, m := range list {
		said[i] = w.say(w.inMoney(m))
	}
	return strings.Join(said, ", ")
}

// inMoney writes an amount of money with its currency.
func (w Writer) inMoney(m message.Message) message.Message {
	if by, ok := message.AmountOf(m.Arg("by")); ok && by.Kind.Money() {
		return message.New(m.Key, "by", w.amount(by.SI))
	}
	return m
}

// shownEntry is an entry as it reads: of a choice its words, of a number that was found no more digits than a figure has.
func (w Writer) shownEntry(f *field.Field, d document.Document) string {
	text := d.Text(f.ID)
	switch {
	case f.Choice != nil && slices.Contains(f.Choices(), text):
		return w.Texts.Text(f.ChoiceKey(text))
	case f.IsNumber():
		said := w.shown(f.KindOf(text), text)
		if p, err := units.Parse(f.KindOf(text), text, d.Units); err == nil && f.Kind == units.FinCount {
			said = w.Texts.Numbers.FinCount(p.SI, w.System)
		}
		return said
	}
	return text
}

func (w comparing) entries(f *field.Field) ComparedLine {
	line := ComparedLine{ID: f.ID, Label: w.Texts.Text(f.Label()), Means: "field " + f.ID}
	for i := range w.t.Columns {
		c := &w.t.Columns[i]
		cell := ComparedCell{Moved: c.Moved[f.ID]}
		switch {
		case !f.Used(c.Document.Text):
			cell.Absent = w.Texts.Text("compare.unused")
		case cell.Moved && f.IsNumber():
			cell.Value = w.found(f, c.Document)
		default:
			cell.Value = w.shownEntry(f, c.Document)
		}
		line.Cells = append(line.Cells, cell)
	}
	return line
}

// found is a number that followed, in the digits of a figure.
func (w Writer) found(f *field.Field, d document.Document) string {
	p, err := units.Parse(f.Kind, d.Text(f.ID), d.Units)
	if err != nil {
		return w.shownEntry(f, d)
	}
	return w.Texts.Numbers.Figure(f.Kind, p.SI, w.System).String()
}

// spansOf counts the bare spans, which are not the same.
func (w comparing) spansOf() ComparedLine {
	line := ComparedLine{ID: "spans", Label: w.Texts.Text("compare.spans"), Means: "text compare.spans"}
	for i := range w.t.Columns {
		line.Cells = append(line.Cells, ComparedCell{Value: strconv.Itoa(len(w.t.Columns[i].Document.Spans))})
	}
	return line
}

// figures is one figure in all columns.
func (w comparing) figures(at int, f *design.RowFigure) ComparedLine {
	line := ComparedLine{ID: f.ID, Same: true, Means: "figure " + f.ID, Worked: worked(f)}
	line.Label = w.Texts.Text("figure." + f.ID)
	base := &w.t.Columns[w.t.Base]
	for i := range w.t.Columns {
		c := &w.t.Columns[i]
		var cell ComparedCell
		switch {
		case !c.Refused.None():
		case !c.Row.Cells[at].Absent.None():
			cell.Absent = w.say(c.Row.Cells[at].Absent)
		default:
			text := w.Texts.Numbers.Figure(f.Kind, c.Row.Cells[at].SI, w.System)
			cell.Value, line.Unit = text.Value, text.Unit
			cell.Refused = f.Kind.Money() && c.Row.State == figure.No
			cell.Best = slices.Contains(w.t.Best[at], i)
			if i != w.t.Base && base.Refused.None() && base.Row.Cells[at].Absent.None() {
				cell.Against = w.difference(f.Kind, base.Row.Cells[at].SI, c.Row.Cells[at].SI)
			}
		}
		line.Cells = append(line.Cells, cell)
	}
	for i, cell := range line.Cells {
		line.Same = line.Same && (cell.Value == line.Cells[w.t.Base].Value || !w.t.Columns[i].Refused.None())
	}
	if f.Kind.Money() {
		line.Unit = strings.TrimSpace(w.Currency + " " + line.Unit)
	}
	return line
}

// worked names the section that a figure has its working from.
func worked(f *design.RowFigure) string {
	switch {
	case f.ID == "duty_per_tube":
		return ""
	case f.Kind.Money(), slices.Contains(ofMaking, f.ID):
		return "making"
	}
	return "heat"
}

// ofMaking are the figures of the plan that are no money.
var ofMaking = []string{"strip_bought", "tube_time", "line_hours"}

// OptionsDecide are the figures by which options are told apart until the user picks others, beside those that decide.
var OptionsDecide = []string{"duty", "ua", "duty_per_tube", "air_drop", "fan_power", "bank_tubes", "tube_weight", "price_tube", "price"}

// difference is what a value is against that of the base: a share, of temperatures the degrees between to a tenth.
func (w Writer) difference(k units.Kind, base, here float64) string {
	apart, by := math.Abs(here-base), ""
	switch {
	case k == units.Temp:
		by, apart = w.tenths(apart)
	case base == 0:
		return ""
	default:
		share := compare.Share(apart / base)
		by, apart = w.Texts.Numbers.Echo(share.Kind, share.SI, w.System), share.SI
	}
	switch {
	case apart == 0:
		return by
	case here < base:
		return w.say(message.New("compare.minus", "by", by))
	}
	return w.say(message.New("compare.plus", "by", by))
}

// tenths writes a difference of temperatures [K] to a tenth of the reader's degrees, and tells how many these are.
func (w Writer) tenths(k float64) (text string, degrees float64) {
	key := "moves.kelvin"
	if w.System == units.US {
		k, key = k*9/5, "moves.fahrenheit"
	}
	degrees = math.Round(k*10) / 10
	return w.say(message.New(key, "by", w.Texts.Numbers.Echo(units.Number, degrees, w.System))), degrees
}
