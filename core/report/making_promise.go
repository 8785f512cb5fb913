package report

import (
	"strconv"

	"finwright/core/design"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// MakingPromise is when an order is ready, with how that is found. Without rows Title says why there is none.
type MakingPromise struct {
	Title string        `json:"title"`
	Rows  []PromisePart `json:"rows"`
}

// PromisePart is something that an order waits for or that is done in it.
type PromisePart struct {
	ID   string `json:"id"`
	Name string `json:"name"`
	Days string `json:"days"`
	Day  string `json:"day"` // on which it is over
	Note string `json:"note"`
}

func (w Writer) promise(m *design.Production) MakingPromise {
	out := MakingPromise{Rows: []PromisePart{}}
	p, why := m.Plan.Promise(m.Shop, m.Day)
	switch {
	case !why.None():
		out.Title = w.say(message.New("making.no_promise", "why", why))
		return out
	case p.Ordered == 0:
		return out
	}
	key := "making.promise"
	if m.Order.Ordered != 0 {
		key = "making.promise_ordered"
	}
	out.Title = w.say(message.New(key, "ordered", p.Ordered.String(), "day", p.Day.String(), "governs", message.Key("making.gate."+p.Gates[p.Governs].ID)))
	add := func(id string, name message.Message, days int, until shop.Day, note message.Message) {
		row := PromisePart{ID: id, Name: w.say(name), Days: strconv.Itoa(days), Day: until.String()}
		if !note.None() {
			row.Note = w.say(note)
		}
		out.Rows = append(out.Rows, row)
	}
	none := message.Message{}
	if m.Day > p.Day {
		out.Title += " " + w.say(message.New("making.promise_passed", "today", m.Day.String()))
	}
	for i, g := range p.Gates {
		note := none
		if i == p.Governs {
			note = message.New("making.governs")
		}
		add(g.ID, message.New("making.gate."+g.ID), g.Days, p.Ordered+shop.Day(g.Days), note)
	}
	if p.Before > 0 {
		add("before", message.New("making.promise_before"), p.Before, p.In, none)
	}
	add("queue", message.New("making.promise_queue"), p.Queue, p.Turn, none)
	add("work", message.New("making.promise_work"), p.Work, p.Done, message.New("making.promise_hours", "hours", message.Of(units.Hours, p.Hours)))
	if p.After > 0 {
		add("after", message.New("making.promise_after"), p.After, p.Day, none)
	}
	return out
}

// budget says of a budget price that it is no offer, and how long it holds.
func (w Writer) budget(m *design.Production) string {
	r := &m.Shop.Rates
	if m.Plan.Cost == nil || r.Band == 0 {
		return ""
	}
	if m.Day == 0 {
		return w.say(message.New("making.budget", "band", message.Of(units.Percent, r.Band), "days", r.BandDays))
	}
	return w.say(message.New("making.budget_until", "band", message.Of(units.Percent, r.Band), "day", (m.Day + shop.Day(r.BandDays)).String()))
}
