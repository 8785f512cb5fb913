package report

import (
	"strings"

	"finwright/core/design"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// ShownSurvivor is a fin type that would bear the temperatures by which the design is refused.
type ShownSurvivor struct {
	ID     string       `json:"id"`
	Text   string       `json:"text"` // duty, price and line
	State  figure.State `json:"state"`
	Mark   string       `json:"mark"` // whether the line can make it
	Change Change       `json:"change"`
}

// Survivors prints the fin types that would bear it.
func (w Writer) Survivors(list []design.Survivor) []ShownSurvivor {
	out := make([]ShownSurvivor, len(list))
	for i, s := range list {
		text := w.outcome(s.Outcome)
		if s.Fixed {
			text = append(text, w.Texts.Text("change.fixed"))
		}
		change := w.change(s.Settings)
		change.Text = w.Texts.Text("choice.fin_type." + string(s.Type))
		if !s.Metal.None() {
			change.Text += ", " + w.say(s.Metal)
		}
		line := s.Line
		if s.BoughtIn {
			line = w.Texts.Text("making.bought_in")
		}
		out[i] = ShownSurvivor{ID: string(s.Type), Text: strings.Join(append(text, line), ", "), State: s.State, Mark: w.mark(s.State), Change: *change}
	}
	return out
}

// outcome says duty and price as far as they are known.
func (w Writer) outcome(o design.Outcome) []string {
	out := []string{}
	if o.Duty.Stated {
		out = append(out, w.duty(o.Duty).String())
	}
	if o.Price.Stated {
		out = append(out, w.say(message.New("change.price_each", "price", w.price(o.Price))))
	}
	return out
}

func (w Writer) duty(v rating.Optional) units.Text {
	return w.Texts.Numbers.Figure(units.Duty, v.SI, w.System)
}

func (w Writer) price(v rating.Optional) string {
	return w.amount(v.SI)
}

// amount prints money with its currency.
func (w Writer) amount(x float64) string {
	return strings.TrimSpace(w.Texts.Numbers.Figure(units.Cost, x, w.System).Value + " " + w.Currency)
}

// offered is what a remark offers, nil where that is nothing.
func (w Writer) offered(n design.Notice) *Change {
	if n.Offer == nil {
		return nil
	}
	return w.offer(*n.Offer)
}

// offer puts a change in words and in one command, with what it does to duty and price.
func (w Writer) offer(o design.Offer) *Change {
	c := w.change(o.Settings)
	said := append(w.effect("duty", o.Before.Duty, o.After.Duty, func(v rating.Optional) string { return w.duty(v).String() }),
		w.effect("price", o.Before.Price, o.After.Price, w.price)...)
	if o.Fixed {
		said = append(said, w.Texts.Text("change.fixed"))
	}
	c.Effect = strings.Join(said, "; ")
	return c
}

// effect says what becomes of a quantity of which the outcome is known.
func (w Writer) effect(of string, before, after rating.Optional, print func(rating.Optional) string) []string {
	if !after.Stated {
		return nil
	}
	to := print(after)
	switch {
	case !before.Stated:
		return []string{w.say(message.New("change."+of+"_then", "to", to))}
	case print(before) == to:
		return []string{w.say(message.New("change."+of+"_same", "to", to))}
	}
	return []string{w.say(message.New("change."+of, "from", print(before), "to", to))}
}
