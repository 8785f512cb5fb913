package report

import (
	"math"
	"strconv"
	"strings"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/drawing/sheet"
	"finwright/core/drawing/svg"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/numeric"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/shop/verdict"
	"finwright/core/units"
)

// MakingSection is how a design is made, as the page shows it beside its figures.
type MakingSection struct {
	Shop     string         `json:"shop"`
	Answer   string         `json:"answer"` // can the line make it?
	Lines    []MakingLine   `json:"lines"`
	Auto     bool           `json:"auto"` // the line was chosen here
	Verdicts []ShownVerdict `json:"verdicts"`
	Cautions []ShownCaution `json:"cautions"`
	Pictures []Picture      `json:"pictures"`
	Breaks   MakingBreaks   `json:"breaks"`
	Steps    []MakingStep   `json:"work_steps"`
	Checks   []MakingCheck  `json:"checks"`
	Budget   string         `json:"budget"` // that a budget price is no offer, and how long it holds; empty where there is none
	Promise  MakingPromise  `json:"promise"`
}

// MakingBreaks is the price in other quantities than the one ordered. It needs none of the pictures' room.
type MakingBreaks struct {
	Title string        `json:"title"` // with the currency
	Rows  []MakingBreak `json:"rows"`
}

// MakingBreak is the price in one quantity; Note says why there is none, or why a tube is dearer than in the next smaller one.
type MakingBreak struct {
	ID      string `json:"id"`
	Tubes   string `json:"tubes"`
	PerTube string `json:"per_tube"`
	Price   string `json:"price"`
	Note    string `json:"note"`
	Ordered bool   `json:"ordered"`
}

// MakingLine is one line of the shop and what its rules say together.
type MakingLine struct {
	Name    string           `json:"name"`
	State   figure.State     `json:"state"`
	Mark    string           `json:"mark"`
	Text    string           `json:"text"`
	Used    bool             `json:"used"`
	Command document.Command `json:"command"` // to use it
}

// ShownVerdict is one rule held against the design.
type ShownVerdict struct {
	Rule   string       `json:"rule"`
	Label  string       `json:"label"`
	State  figure.State `json:"state"`
	Mark   string       `json:"mark"`
	Value  string       `json:"value"`
	Limit  string       `json:"limit"`
	Margin string       `json:"margin"`
	Why    string       `json:"why"`
	Change *Change      `json:"change"`
}

// Change is the nearest change that makes a rule good, ready to be applied.
type Change struct {
	Text    string           `json:"text"`
	Effect  string           `json:"effect"` // what it does to duty and price, and what to agree first; empty where that was not asked
	Command document.Command `json:"command"`
}

// Picture is a drawing that stands alone. One without an SVG says why in Alt.
type Picture struct {
	ID  string `json:"id"`
	SVG string `json:"svg"`
	Alt string `json:"alt"`
}

// Room is what the pictures of making may take [CSS px].
type Room struct {
	Wide    float64 `json:"wide"`              // of the whole-length drawing
	Card    float64 `json:"card"`              // of a card; 0: only the drawing of the whole length is wanted, for a tube that is being pulled
	Letters float64 `json:"letters,omitempty"` // how large texts are, of the usual, as sheet.LettersOf takes it
}

// Making renders how a design is made.
func (w Writer) Making(m *design.Production, room Room) MakingSection {
	out := MakingSection{
		Shop: m.Shop.Name, Auto: m.Auto, Cautions: w.cautions(m), Verdicts: w.verdicts(m),
		Pictures: w.pictures(m, room), Breaks: w.breaks(m), Steps: w.steps(m), Checks: w.checks(m), Budget: w.budget(m), Promise: w.promise(m),
	}
	for _, l := range m.Lines {
		name := l.Name
		line := MakingLine{
			Name: name, State: l.State, Mark: w.mark(l.State), Used: name == m.Line.Name, Text: w.lineText(l),
			Command: document.Command{Op: "set", Values: []document.Value{{Field: "line", Text: &name}}},
		}
		if line.Used {
			out.Answer = w.answerOf(m, l)
		}
		out.Lines = append(out.Lines, line)
	}
	return out
}

func (w Writer) breaks(m *design.Production) MakingBreaks {
	out := MakingBreaks{Title: w.say(message.New("making.breaks", "currency", w.Currency)), Rows: []MakingBreak{}}
	for _, b := range m.Breaks {
		row := MakingBreak{ID: strconv.Itoa(b.Quantity), Tubes: w.number(units.Count, float64(b.Quantity)), Ordered: b.Ordered}
		if !b.Why.None() {
			row.Note = w.say(b.Why)
		}
		if b.Cost != nil {
			row.PerTube, row.Price = w.number(units.Cost, float64(b.Cost.PerTube)), w.number(units.Cost, float64(b.Cost.Price))
		}
		out.Rows = append(out.Rows, row)
	}
	return out
}

// answerOf says whether the line in use can make the tube, and beside it what refuses the tube elsewhere.
func (w Writer) answerOf(m *design.Production, l design.LineVerdict) string {
	said := w.say(message.New("making.answer."+string(l.State), "line", l.Name, "refused", l.Refused, "watched", l.Watched))
	if m.Plan.BoughtIn != nil {
		said = w.say(m.Plan.Absent[making.TheProgramme])
	}
	if m.Refused != nil {
		said += " " + w.say(message.New("making.answer.elsewhere", "part", message.Key("part."+m.Refused.Section)))
	}
	if k := m.Plan.Winding; k != nil && m.Order.FreeIssue {
		said += " " + w.say(message.New("making.send."+string(m.Shop.Buying.Spoilt), "count", k.Made(), "quantity", k.Good, "first_off", k.FirstOff, "rejected", k.Rejected))
	}
	return said
}

func (w Writer) lineText(l design.LineVerdict) string {
	switch l.State {
	case figure.No:
		return w.say(message.New("making.refused", "count", l.Refused))
	case figure.Watch:
		return w.say(message.New("making.watched", "count", l.Watched))
	}
	return w.Texts.Text("making.free")
}

func (w Writer) verdicts(m *design.Production) []ShownVerdict {
	list := m.Verdicts
	out := make([]ShownVerdict, 0, len(list))
	for _, v := range list {
		row := ShownVerdict{Rule: v.Rule.ID, Label: w.Texts.Text("shop.rule." + v.Rule.ID), State: v.State, Mark: w.mark(v.State), Why: w.say(v.Why), Change: w.change(v.Change)}
		if o, ok := m.Offers[v.Rule.ID]; ok {
			row.Change = w.offer(o)
		}
		switch {
		case v.Asks:
			row.Mark = w.Texts.Text("making.question")
		case v.Moot:
			row.Mark = w.Texts.Text("making.moot")
		case v.State == figure.Plain:
			row.Mark = w.Texts.Text("making.not_judged")
		}
		if m := v.Measure; m != nil {
			row.Value, row.Limit = w.told(m.Kind, m.Value, m.Limit, v.State), w.told(m.Kind, m.Limit, m.Value, v.State)
			switch {
			case math.Abs(m.Margin) <= shop.Slack:
				row.Margin = w.Texts.Text("making.at_limit")
			case !math.IsInf(m.Margin, 0) && !math.IsNaN(m.Margin):
				row.Margin = w.told(units.Percent, m.Margin, 0, v.State)
			}
		}
		out = append(out, row)
	}
	return numeric.Sorted(out, func(a, b *ShownVerdict) int { return figure.ByGravity(a.State, b.State) })
}

// told prints a number so that it does not read like the other, where one has passed the other.
func (w Writer) told(k units.Kind, si, other float64, s figure.State) string {
	var b units.Beside
	if passed(s) {
		b.Others = []float64{other}
	}
	return w.Texts.Numbers.FigureBeside(k, si, b, w.System).String()
}

// change puts settings in words and in one command.
func (w Writer) change(settings []verdict.Setting) *Change {
	if settings == nil {
		return nil
	}
	var said []string
	for _, s := range settings {
		value := w.Texts.Numbers.Echo(s.Kind, s.SI, w.System)
		if spec, _ := field.Find(s.Field); s.Choice != "" {
			value = w.Texts.Text(spec.ChoiceKey(s.Choice))
		}
		name := message.New("field." + s.Field)
		if strings.HasPrefix(s.Field, "span_") {
			name = message.New("making."+s.Field, "number", s.Index+1)
		}
		said = append(said, w.say(message.New("making.change", "field", name, "value", value)))
	}
	command := design.Command(settings, w.System)
	command.Write(w.Texts.Numbers.Typed)
	return &Change{Text: strings.Join(said, ", "), Command: command}
}

// along is a length in a picture, in the unit that the picture names; feet alone are said to be feet.
func (w Writer) along(l units.Length) string {
	t := w.Texts.Numbers.Figure(units.Distance, float64(l), w.System)
	if t.Unit != units.Distance.Unit(w.System) {
		return t.String()
	}
	return t.Value
}

func (w Writer) pictures(m *design.Production, room Room) []Picture {
	out := []Picture{}
	letters := sheet.LettersOf(room.Letters)
	room.Wide, room.Card = room.Wide/letters, room.Card/letters
	add := func(id string, scene func() (sheet.Scene, bool)) {
		p := Picture{ID: id, Alt: w.Texts.Text("making.picture." + id)}
		if s, ok := scene(); ok {
			s.Enlarge(letters)
			p.SVG = svg.Write(s, svg.Style{})
		}
		out = append(out, p)
	}
	add("length", func() (sheet.Scene, bool) { return w.whole(m, room.Wide) })
	if room.Card == 0 {
		return out
	}
	add("schedule", func() (sheet.Scene, bool) { return w.schedule(m, room.Card) })
	add("crate", func() (sheet.Scene, bool) { return w.crate(m, room.Card) })
	add("bundle", func() (sheet.Scene, bool) { return w.bundle(m, room.Card) })
	add("swings", func() (sheet.Scene, bool) { return w.swings(m, room.Card) })
	return out
}
