package report

import (
	"slices"
	"strconv"
	"strings"

	"finwright/core/design"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// MakingStep is one step of the work on an order beside the line, as the page lists it.
type MakingStep struct {
	ID    string `json:"id"`
	Name  string `json:"name"`
	Tubes string `json:"tubes"`
	Time  string `json:"time"`
	Cost  string `json:"cost"`
	When  string `json:"when"` // the head under which steps of one time stand
	Note  string `json:"note"` // who asked for it, by whom it is done if that is a supplier, and what must be heeded
}

// MakingCheck is one check of the first tubes off, with what is to be found.
type MakingCheck struct {
	ID   string `json:"id"`
	Name string `json:"name"`
	Find string `json:"find"`
}

// number prints a number without its unit.
func (w Writer) number(k units.Kind, si float64) string {
	return w.Texts.Numbers.Figure(k, si, w.System).Value
}

func (w Writer) steps(m *design.Production) []MakingStep {
	out := []MakingStep{}
	for i := range m.Plan.Steps {
		s := &m.Plan.Steps[i]
		row := MakingStep{
			ID: strconv.Itoa(i), Name: s.Step.Name, Tubes: w.number(units.Count, float64(s.Tubes)),
			Time: w.Texts.Numbers.Figure(units.Time, float64(s.Time), w.System).String(), Cost: w.number(units.Cost, float64(s.Cost)),
		}
		row.When = w.Texts.Text("making.step." + string(s.Step.When))
		var note []string
		if s.Asked {
			note = append(note, w.Texts.Text("making.step.asked"))
		}
		if s.SubLet() {
			row.Time = ""
			note = append(note, w.say(message.New("making.sub_let", "mark_up", message.Of(units.Percent, s.Step.MarkUp), "days", s.Step.Lead)))
		}
		for _, id := range s.Cautions {
			note = append(note, w.Texts.Text("caution."+id))
		}
		row.Note = strings.Join(note, " ")
		out = append(out, row)
	}
	time := func(s MakingStep) int {
		return slices.IndexFunc(shop.StepTimes, func(t shop.StepTime) bool { return s.When == w.Texts.Text("making.step."+string(t)) })
	}
	slices.SortStableFunc(out, func(a, b MakingStep) int { return time(a) - time(b) })
	return out
}

func (w Writer) checks(m *design.Production) []MakingCheck {
	out := []MakingCheck{}
	for i, k := range m.Plan.Checks(m.Shop) {
		out = append(out, MakingCheck{ID: strconv.Itoa(i), Name: w.Texts.Text("check." + string(k.Check.Kind)), Find: w.say(k.Find)})
	}
	return out
}
