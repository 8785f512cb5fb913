package report

import (
	"cmp"
	"slices"
	"strings"

	"finwright/core/design"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/units"
)

// ShownMethod is one correlation's answer beside its range.
type ShownMethod struct {
	ID    string       `json:"id"`
	Label string       `json:"label"`
	Text  string       `json:"text"` // value and unit
	Of    string       `json:"of"`   // what it computes
	State figure.State `json:"state"`
	Mark  string       `json:"mark"`
	Used  bool         `json:"used"`
	Why   string       `json:"why"`  // limits passed
	Take  *Change      `json:"take"` // puts it in use; nil where it is
}

func (w Writer) methods(h design.Heat) []ShownMethod {
	out := make([]ShownMethod, 0, len(h.Methods))
	for _, m := range h.Methods {
		text := w.Texts.Numbers.Figure(m.Kind, m.SI, w.System).String()
		of := "figure.film"
		if m.Kind == units.Drop {
			of = "figure.air_drop"
		}
		row := ShownMethod{
			ID: m.ID, Label: w.Texts.Text("airside." + m.ID), Text: text, Of: w.Texts.Text(of),
			State: figure.Good, Mark: w.Texts.Text("range.in"), Used: m.Used,
		}
		if !m.InRange {
			row.State, row.Mark = figure.Outside, w.Texts.Text("range.out")
		}
		if !m.Used {
			row.Take = w.change(m.Take())
		}
		said := make([]string, len(m.Why))
		for i, why := range m.Why {
			said[i] = w.say(why)
		}
		row.Why = strings.Join(said, "; ")
		out = append(out, row)
	}
	return out
}

// methodsUsed names the correlations in use, each once.
func methodsUsed(methods []ShownMethod) string {
	var names []string
	for _, m := range methods {
		if m.Used && !slices.Contains(names, m.Label) {
			names = append(names, m.Label)
		}
	}
	return strings.Join(names, ", ")
}

// Alarm says in a few words which limit is passed; empty where none is.
func (w Writer) Alarm(h design.Heat) string {
	for _, f := range h.Findings {
		if f.State == figure.No {
			return w.say(message.New("drawing.alarm", "case", message.Key("case."+string(f.Case)), "limit", f.Why.Arg("limit")))
		}
	}
	return ""
}

// Bar is one resistance on the way from the stream inside to the air.
type Bar struct {
	Figure string  `json:"figure"`
	Label  string  `json:"label"`
	Text   string  `json:"text"`
	Share  float64 `json:"share"` // of the whole length
}

func (w Writer) bars(h design.Heat) []Bar {
	out := make([]Bar, 0, len(h.Thermal.Overall.Resistances))
	if !h.Absent.None() {
		return out
	}
	for _, r := range h.Thermal.Overall.Resistances {
		id := "share_" + string(r.Layer)
		out = append(out, Bar{id, w.Texts.Text("figure." + id), w.Texts.Numbers.Figure(units.Percent, r.Share, w.System).String(), r.Share})
	}
	return out
}

// ShownAsked is what the bank does beside what is asked of it; empty where nothing is asked.
type ShownAsked struct {
	ID     string       `json:"id"`
	Label  string       `json:"label"`
	Found  string       `json:"found"`
	Wanted string       `json:"wanted"`
	Over   string       `json:"over"` // found over wanted, less one
	State  figure.State `json:"state"`
	Mark   string       `json:"mark"`
}

func (w Writer) pairs(res *design.Result) []ShownAsked {
	out := make([]ShownAsked, 0, len(res.Pairs))
	for _, p := range res.Pairs {
		f, _ := res.Find(p.Figure)
		row := ShownAsked{ID: p.Figure, Label: w.Texts.Text("figure." + cmp.Or(f.Label, f.ID)), State: p.State, Mark: w.mark(p.State)}
		if row.Found = w.say(p.Absent); p.Absent.None() {
			row.Found = w.told(p.Kind, p.Found, p.Wanted.SI, p.State)
		}
		if p.Wanted.Stated {
			row.Wanted = w.told(p.Kind, p.Wanted.SI, p.Found, p.State)
		}
		if p.Over.Stated {
			row.Over = w.told(units.Percent, p.Over.SI, 0, p.State)
		}
		out = append(out, row)
	}
	return out
}
