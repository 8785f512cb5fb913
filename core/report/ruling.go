package report

import (
	"strings"

	"finwright/core/design"
	"finwright/core/figure"
	"finwright/core/message"
)

// Ruling is the one verdict on a design: the same words in every section, and where they lead.
type Ruling struct {
	State   figure.State `json:"state"`
	Mark    string       `json:"mark"`
	Text    string       `json:"text"`
	Section string       `json:"section"`
	Field   string       `json:"field"`
	Figure  string       `json:"figure"`
	Change  *Change      `json:"change"` // what would mend it; nil where nothing is offered
}

// Ruling judges a result.
func (w Writer) Ruling(res *design.Result) *Ruling {
	v := res.Verdict()
	return &Ruling{State: v.State, Mark: w.mark(v.State), Text: w.say(verdictText(res, v)), Section: v.Section, Field: v.Notice.Field, Figure: v.Notice.Figure, Change: w.offered(v.Notice)}
}

// verdictText names where the gravest is and why, and what of the others speaks the other way.
func verdictText(res *design.Result, v design.Part) message.Message {
	part := message.Key("part." + v.Section)
	making, judged := res.Part("making")
	switch {
	case v.State == figure.No && v.Section != making.Section && judged && making.State == figure.No:
		return message.New("verdict.both_refuse", "part", part, "why", v.Notice.Message, "line", res.Line)
	case v.State == figure.No && v.Section != making.Section && judged:
		return message.New("verdict.not_to_quote", "part", part, "why", v.Notice.Message, "line", res.Line)
	case v.State.Graver(figure.Kept):
		return message.New("verdict.part", "part", part, "why", v.Notice.Message)
	case !judged:
		return message.New("verdict.making_open")
	}
	return message.New("verdict." + string(v.State))
}

// line is the line's verdict as a figure among those that decide: its name, and what its rules say together.
func (w Writer) line(res *design.Result) ShownFigure {
	out := ShownFigure{ID: LineFigure, Label: w.Texts.Text("figure." + LineFigure), State: figure.Plain}
	making, judged := res.Part("making")
	if !judged {
		out.Absent = w.say(notYet)
		return out
	}
	line := res.Line
	if res.BoughtIn {
		line = w.Texts.Text("making.bought_in")
	}
	out.Value, out.Full, out.State, out.Mark = line, line, making.State, w.mark(making.State)
	return out
}

// LineWorking says what the line's verdict rests on: there is no formula, but there are rules that are not kept.
func (w Writer) LineWorking(res *design.Result) Working {
	shown := w.line(res)
	out := Working{Title: shown.Label, Meaning: w.Texts.Text("meaning." + LineFigure), Result: strings.TrimSpace(shown.Value + " " + shown.Mark), Absent: shown.Absent}
	for _, n := range res.Making {
		out.Remarks = append(out.Remarks, w.say(n.Message))
	}
	return out
}

// LineFigure is the line's verdict among the figures that decide.
const LineFigure = "line"

// notYet stands where the making was not judged: in the first answer, and beside a shop that cannot be read.
var notYet = message.New("making.not_judged_here")

// Deciding lists what the user may choose to stand among the figures that decide, in the order in which they stand.
var Deciding = []string{
	"fin_od", "total_area", "area_ratio", "fin_efficiency", "used_area", "metre_mass", "tube_weight",
	"film", "u_bare", "duty", "air_out", "process_out", "air_drop", "inside_loss", "fan_power", "tested_normal", "hottest_root",
	"price_tube", "price", "line_hours", LineFigure,
}

// Decides are those that do until the user chooses.
var Decides = []string{"fin_od", "area_ratio", "fin_efficiency", "u_bare", "duty", "air_drop", "price_tube", LineFigure}

// headline prints the figures that decide: those chosen, of the list, or those of the house.
func (w Writer) headline(res *design.Result) []ShownFigure {
	chosen := map[string]bool{}
	for _, id := range w.Headline {
		chosen[id] = true
	}
	var out []ShownFigure
	for _, id := range Deciding {
		if chosen[id] {
			out = append(out, w.decider(res, id))
		}
	}
	if len(out) > 0 {
		return out
	}
	for _, id := range Decides {
		out = append(out, w.decider(res, id))
	}
	return out
}

func (w Writer) decider(res *design.Result, id string) ShownFigure {
	if id == LineFigure {
		return w.line(res)
	}
	f, ok := res.Find(id)
	if !ok {
		f = figure.Figure{ID: id, State: figure.Plain, Absent: notYet}
	}
	return w.Figure(f)
}
