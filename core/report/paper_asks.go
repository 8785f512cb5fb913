package report

import (
	"finwright/core/message"
	"finwright/core/paper"
)

// ShownQuestion is an entry of a paper as the page asks for it.
type ShownQuestion struct {
	ID      string        `json:"id"`
	Label   string        `json:"label"`
	Of      paper.Scope   `json:"of"`
	Many    bool          `json:"many,omitempty"`
	Day     bool          `json:"day,omitempty"`
	Choices []NamedFigure `json:"choices,omitempty"`
	Else    string        `json:"else,omitempty"` // what stands on the paper where nothing is answered
}

// NotYet says why a paper cannot be issued: something keeps it from being used, or it cannot be told from others.
func (w *Papers) NotYet() string {
	switch {
	case w.across() != "":
		return w.say(message.New("paper.not_yet.across", "why", w.across()))
	case w.answer("number") == "" || w.answer("revision") == "":
		return w.t("paper.not_yet.number")
	}
	return ""
}

// Asks are the questions of a paper.
func (w *Papers) Asks(kind paper.Kind) []ShownQuestion {
	out := []ShownQuestion{}
	for _, q := range kind.Asks(w.Items != nil) {
		shown := ShownQuestion{ID: q.ID, Label: w.ask(q.ID), Of: q.Of, Many: q.Many, Day: q.Day}
		for _, choice := range q.Choices {
			shown.Choices = append(shown.Choices, NamedFigure{choice, w.t("paper." + q.ID + "." + choice)})
		}
		switch q.ID {
		case "item":
			shown.Else = w.itemName()
		case "date":
			shown.Else = w.Day
		}
		out = append(out, shown)
	}
	return out
}
