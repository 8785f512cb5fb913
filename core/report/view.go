package report

import (
	"cmp"
	"errors"
	"fmt"
	"strconv"
	"strings"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/numeric"
	"finwright/core/units"
)

// View is a design as the page shows it. When a field is wrong, Valid is false
// and everything computed is absent: the page keeps the last good figures, greyed.
type View struct {
	Title     string          `json:"title"`
	Units     units.System    `json:"units"`
	Valid     bool            `json:"valid"`
	Fields    []FormField     `json:"fields"`
	Spans     []FormSpan      `json:"spans"`
	Even      string          `json:"even"` // so many bare spans and so wide, as what makes sense evenly spaced
	Headline  []ShownFigure   `json:"headline,omitzero"`
	Groups    []ShownGroup    `json:"groups,omitzero"`
	Methods   []ShownMethod   `json:"methods,omitzero"`
	ByMethods string          `json:"by_methods,omitzero"` // names those in use
	Bars      []Bar           `json:"bars,omitzero"`
	Cases     *ShownCases     `json:"cases"`              // nil where nobody looks at them
	Making    *MakingSection  `json:"making"`             // nil where nobody looks at it
	Ruling    *Ruling         `json:"ruling"`             // nil where an entry is wrong
	Survivors []ShownSurvivor `json:"survivors,omitzero"` // where a temperature refuses the fin type
	Notices   []ShownNotice   `json:"notices,omitzero"`
	Remarks   string          `json:"remarks"` // how many notices there are
	Summary   string          `json:"summary"`
	Pairs     []ShownAsked    `json:"pairs,omitzero"`
	Followed  string          `json:"followed"` // what the last commands took along beside what they entered
	Glimpse   bool            `json:"glimpse"`  // only what moves while something is pulled: Fields are those that were set, and what is absent stands
}

// FormField is one entry of the form. Text is what to show in the units in force,
// Typed what was typed.
type FormField struct {
	ID     string          `json:"id"`
	Text   string          `json:"text"`
	Typed  string          `json:"typed"`
	Error  string          `json:"error"`
	Watch  string          `json:"watch"`
	Origin document.Origin `json:"origin"`
	Used   bool            `json:"used"`
	Auto   string          `json:"auto"`             // what stands in for an empty entry
	Unit   string          `json:"unit,omitempty"`   // of a number that is typed alone
	Beside string          `json:"beside,omitempty"` // the same in a unit that is kept beside
}

// FormSpan is one bare span of the form.
type FormSpan struct {
	Number string    `json:"number"` // which it is
	Centre SpanEntry `json:"centre"`
	Width  SpanEntry `json:"width"`
}

// SpanEntry is one of its two entries: Text and Typed as in a field of the form.
type SpanEntry struct {
	Text  string `json:"text"`
	Typed string `json:"typed"`
	Error string `json:"error"`
}

// ShownFigure is one result, printed.
type ShownFigure struct {
	ID     string       `json:"id"`
	Label  string       `json:"label"`
	Value  string       `json:"value"`
	Unit   string       `json:"unit"`
	Basis  string       `json:"basis"`
	State  figure.State `json:"state"`
	Mark   string       `json:"mark"`   // the state in a word
	Tests  string       `json:"tests"`  // what the mark says that it is held against
	Full   string       `json:"full"`   // every digit, for copying
	Beside string       `json:"beside"` // what stands beside the value: spread, range, confirmation
	Absent string       `json:"absent"` // why there is no value
}

// ShownGroup is a titled list of figures.
type ShownGroup struct {
	ID      string        `json:"id"`
	Section string        `json:"section"`
	Title   string        `json:"title"`
	Figures []ShownFigure `json:"figures"`
}

// ShownNotice is a remark on the design.
type ShownNotice struct {
	State  figure.State `json:"state"`
	Mark   string       `json:"mark"`
	Text   string       `json:"text"`
	Field  string       `json:"field"`
	Figure string       `json:"figure"`
	Change *Change      `json:"change"` // what would mend it; nil where nothing is offered
}

// Writer renders in one language and one system of units. Both are its own: the page's has those of the page, a paper's
// those of its reader.
type Writer struct {
	Texts    message.Catalogue
	System   units.System
	Section  Section  // whose figures are wanted, beside the headline; zero: all of them
	Headline []string // that the user chose; empty: those of the house
	Currency string   // of a shop, where money is printed
	Along    Sight    // what is in sight along the curves
}

// Sight is what is in sight along each field that curves and map go along, in the reader's units. It stays as long as the design is within.
type Sight map[string]Range

func (w Writer) say(m message.Message) string { return w.Texts.Render(m, w.System) }

// View renders document d with the outcome of design.Read and, where that went
// well, design.Evaluate.
func (w Writer) View(d document.Document, errs error, res *design.Result) View {
	var wrong design.FieldErrors
	errors.As(errs, &wrong)
	v := View{Title: d.Title, Units: d.Units, Valid: errs == nil, Spans: w.spans(d, wrong), Even: w.even(1, document.DefaultSpan)}
	watch := map[string][]string{}
	if res != nil {
		for _, n := range numeric.Sorted(res.Notices, byGravity) { // what hinders stands first
			text := w.say(n.Message)
			watch[n.Field] = append(watch[n.Field], text)
			v.Notices = append(v.Notices, ShownNotice{n.State, w.mark(n.State), text, n.Field, n.Figure, w.offered(n)})
		}
		if res.Supports > 0 {
			v.Even = w.even(res.Supports, float64(res.SpanWidth))
		}
		v.Headline, v.Ruling, v.Groups = w.headline(res), w.Ruling(res), w.groups(res)
		if w.Section.ID == "" || w.Section.Methods {
			v.Methods, v.Bars, v.Pairs = w.methods(res.Heat), w.bars(res.Heat), w.pairs(res)
			v.ByMethods = methodsUsed(v.Methods)
		}
	}
	v.Remarks = w.say(message.New("notice.all", "count", len(v.Notices)))
	v.Fields = w.fields(d, wrong, watch, res)
	v.Summary = w.summary(v, len(wrong))
	return v
}

// Glimpse renders of document d what moves while something of the design before is pulled: the entries that were set, the figures
// that decide and, with lists, all in sight and what holds the heat back. The rest of a View is absent.
func (w Writer) Glimpse(before, d document.Document, res *design.Result, lists bool) View {
	v := View{Glimpse: true, Title: d.Title, Units: d.Units, Valid: true, Headline: w.headline(res)}
	if lists {
		v.Groups = w.groups(res)
	}
	if lists && w.Section.Methods {
		v.Bars = w.bars(res.Heat)
	}
	for i := range field.Fields {
		if f := &field.Fields[i]; d.Fields[f.ID] != before.Fields[f.ID] {
			v.Fields = append(v.Fields, w.field(f, d, nil, nil, res))
		}
	}
	return v
}

func (w Writer) groups(res *design.Result) []ShownGroup {
	var out []ShownGroup
	for _, g := range res.Groups {
		if w.Section.holds(g) {
			out = append(out, w.group(g))
		}
	}
	return out
}

func byGravity(a, b *design.Notice) int { return figure.ByGravity(a.State, b.State) }

func (w Writer) fields(d document.Document, wrong design.FieldErrors, watch map[string][]string, res *design.Result) []FormField {
	out := make([]FormField, len(field.Fields))
	for i := range field.Fields {
		out[i] = w.field(&field.Fields[i], d, wrong, watch, res)
	}
	return out
}

func (w Writer) field(f *field.Field, d document.Document, wrong design.FieldErrors, watch map[string][]string, res *design.Result) FormField {
	entry := d.Fields[f.ID]
	kind := f.KindOf(entry.Text)
	shown := FormField{
		ID: f.ID, Typed: w.typed(kind, entry.Text), Text: w.shown(kind, entry.Text), Origin: entry.Origin,
		Used: f.Used(d.Text), Watch: strings.Join(watch[f.ID], " "), Error: w.wrong(wrong, f.ID),
	}
	if f.IsNumber() {
		shown.Unit = f.Alone(entry.Text, w.System)
		if p, err := units.Parse(kind, entry.Text, w.System); err == nil {
			shown.Beside = w.Texts.Numbers.Other(kind, p.SI, w.System)
		}
	}
	if res == nil {
		return shown
	}
	if q, ok := res.Auto[f.ID]; ok {
		shown.Auto = w.Texts.Numbers.Echo(q.Kind, q.SI, w.System)
	}
	if f.ID == "line" {
		shown.Auto = res.Line
	}
	return shown
}

// shown is the text as typed if it is written in the system in force, else the
// same quantity in that system: millimetres and inches never mix in one view.
func (w Writer) shown(k units.Kind, text string) string {
	if k == "" || units.WrittenIn(k, text, w.System) {
		return w.typed(k, text)
	}
	p, err := units.Parse(k, text, w.System)
	if err != nil {
		return w.typed(k, text)
	}
	return w.Texts.Numbers.Entry(k, p.SI, w.System)
}

// typed is a text of a document as it was typed in this language.
func (w Writer) typed(k units.Kind, text string) string {
	if k == "" {
		return text
	}
	return w.Texts.Numbers.Typed(text)
}

func (w Writer) wrong(errs design.FieldErrors, field string) string {
	var out []string
	for _, e := range errs {
		if e.Field == field {
			out = append(out, w.say(e.Message))
		}
	}
	return strings.Join(out, " ")
}

func (w Writer) spans(d document.Document, errs design.FieldErrors) []FormSpan {
	kind := field.SpanCentre.Kind
	out := make([]FormSpan, len(d.Spans))
	for i, s := range d.Spans {
		out[i] = FormSpan{
			Number: strconv.Itoa(i + 1),
			Centre: SpanEntry{w.shown(kind, s.Centre.Text), w.typed(kind, s.Centre.Text), w.wrong(errs, fmt.Sprintf("span_centre_%d", i+1))},
			Width:  SpanEntry{w.shown(kind, s.Width.Text), w.typed(kind, s.Width.Text), w.wrong(errs, fmt.Sprintf("span_width_%d", i+1))},
		}
	}
	return out
}

// even writes so many bare spans of a width [m] as they may be typed, a round one of the system where that is no narrower.
func (w Writer) even(count int, width float64) string {
	width = max(width, units.Snap(units.Distance, width, w.System))
	return strconv.Itoa(count) + " × " + w.Texts.Numbers.Echo(units.Distance, width, w.System)
}

func (w Writer) mark(s figure.State) string {
	if s == figure.Plain {
		return ""
	}
	return w.Texts.Text("state." + string(s))
}

func (w Writer) group(g design.FigureGroup) ShownGroup {
	out := ShownGroup{ID: g.ID, Section: g.Section, Title: w.Texts.Text("figures." + g.ID)}
	for _, f := range g.Figures {
		out.Figures = append(out.Figures, w.Figure(f))
	}
	return out
}

// Figure prints one figure.
func (w Writer) Figure(f figure.Figure) ShownFigure {
	out := ShownFigure{ID: f.ID, Label: w.Texts.Text("figure." + cmp.Or(f.Label, f.ID)), State: f.State, Mark: w.mark(f.State)}
	if !f.Tests.None() {
		out.Tests = w.say(message.New("tests.held", "limit", f.Tests))
	}
	if f.Basis != figure.NoBasis {
		out.Basis = w.Texts.Text("basis." + string(f.Basis))
	}
	if !f.Absent.None() {
		out.Absent = w.say(f.Absent)
		return out
	}
	said := make([]string, len(f.Beside))
	for i, m := range f.Beside {
		said[i] = w.say(m)
	}
	out.Beside = strings.Join(said, "; ")
	text := w.Texts.Numbers.FigureBeside(f.Kind, f.SI, units.Beside{Others: against(&f), Side: f.Side}, w.System)
	out.Value, out.Unit, out.Full = text.Value, text.Unit, w.Texts.Numbers.Full(f.Kind, f.SI, w.System)
	if f.Kind.Money() {
		out.Unit = strings.TrimSpace(w.Currency + " " + text.Unit)
	}
	return out
}

// against are the numbers that a figure has passed, beside which it must not read like them.
func against(f *figure.Figure) []float64 {
	if !passed(f.State) {
		return nil
	}
	var out []float64
	for _, m := range append(f.Why, f.Tests) {
		out = append(out, amounts(m, f.Kind)...)
	}
	return out
}

// passed reports whether a state says that a limit is passed.
func passed(s figure.State) bool { return s.Graver(figure.Kept) }

// amounts are those of a kind in a message [SI].
func amounts(m message.Message, k units.Kind) []float64 {
	var out []float64
	for _, arg := range m.Args() {
		if inner, ok := arg.(message.Message); ok {
			out = append(out, amounts(inner, k)...)
		} else if a, ok := message.AmountOf(arg); ok && a.Kind == k {
			out = append(out, a.SI)
		}
	}
	return out
}

// summary is one line for those who listen to the page.
func (w Writer) summary(v View, wrong int) string {
	if !v.Valid {
		return w.say(message.New("summary.wrong", "count", wrong))
	}
	parts := make([]string, 0, len(v.Headline))
	for _, f := range v.Headline {
		parts = append(parts, strings.TrimSpace(f.Label+" "+f.Value+" "+f.Unit))
	}
	return strings.Join(parts, "; ")
}
