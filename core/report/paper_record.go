package report

import (
	"strconv"
	"strings"

	"finwright/core/message"
	"finwright/core/paper"
	"finwright/core/shop"
	"finwright/core/shop/floor"
	"finwright/core/units"
)

// returned is what came back from the floor, as far as it can be read.
type returned struct {
	tubes   []floor.Tube
	counted floor.Counted
	faults  []string // what cannot be, and where
}

// returned reads what was typed of an order's tubes.
func (w *Papers) returned() returned {
	var r returned
	tubes, faults := floor.Read(w.Texts.Numbers.Typed(w.Answers["measured"]), w.System)
	r.tubes = tubes
	for _, f := range faults {
		r.faults = append(r.faults, w.say(message.New("paper.line_wrong", "name", w.ask("measured"), "line", f.Line, "why", f.Why)))
	}
	for id, to := range map[string]*int{"good": &r.counted.Good, "scrapped": &r.counted.Scrapped, "rejected": &r.counted.Rejected} {
		text := w.answer(id)
		n, err := strconv.Atoi(text)
		if text != "" && (err != nil || n < 0 || n > mostCounted) {
			r.faults = append(r.faults, w.say(message.New("paper.no_count", "name", w.ask(id), "text", text, "most", mostCounted)))
			continue
		}
		*to = n
	}
	return r
}

// mostCounted tubes are beyond any order.
const mostCounted = 1000000

// ShownProposal is what the shop may learn of the tubes of an order.
type ShownProposal struct {
	Thing floor.Thing `json:"thing"`
	Said  string      `json:"said"`
	Why   string      `json:"why"` // it is not to be had; empty: it waits for somebody who answers for it
}

// proposals is what the tubes speak for; none of a design that is not made.
func (w *Papers) proposals() []floor.Proposal {
	if w.Stale || w.refused() || w.Made == nil || w.Made.Plan.Programme == nil || w.Made.Plan.Line == nil {
		return nil
	}
	r := w.returned()
	if r.faults != nil {
		return nil
	}
	return floor.Learn(w.Made.Shop, &w.Made.Plan, r.tubes, r.counted)
}

// Proposals says them.
func (w *Papers) Proposals() []ShownProposal {
	out := []ShownProposal{}
	for _, p := range w.proposals() {
		shown := ShownProposal{Thing: p.Thing, Said: w.say(message.New("floor.proposed", "thing", message.New("floor.thing."+string(p.Thing)), "was", p.Was, "new", p.New, "scatter", p.Scatter, "tubes", p.Tubes))}
		if !p.Why.None() {
			shown.Why = w.say(p.Why)
		}
		out = append(out, shown)
	}
	return out
}

// Learn makes a proposed change of the shop's file, for which the one who is named answers; why says what keeps it from being made.
func (w *Papers) Learn(thing floor.Thing, c shop.Capability) (next shop.Capability, why message.Message) {
	who := w.answer("learned_by")
	for _, p := range w.proposals() {
		if p.Thing != thing {
			continue
		}
		switch {
		case !p.Why.None():
			return c, p.Why
		case who == "":
			return c, message.New("floor.nobody", "name", w.ask("learned_by"))
		}
		next, faults := p.Accept(c, w.say(message.New("floor.accepted", "thing", message.New("floor.thing."+string(p.Thing)), "was", p.Was, "new", p.New, "scatter", p.Scatter,
			"tubes", p.Tubes, "item", w.itemName(), "day", w.Day, "who", who)))
		if faults != nil {
			return c, faults[0].Why
		}
		return next, message.Message{}
	}
	return c, message.New("floor.gone")
}

// record is what came back from the floor: each tube against what was asked of it, what was let pass by whom, and what the shop may learn.
func (p *papering) record() {
	if why := p.unmakeable(); why != nil {
		p.Caution(why...)
		return
	}
	r := p.returned()
	p.Caution(r.faults...)
	p.Pairs(append(p.answered("order", "tube_standard"), p.entries("quantity")...)...)
	p.Text(p.tubeLine())
	p.measured(r.tubes)

	p.Heading(p.t("paper.part.counts"))
	p.Pairs(p.answered("good", "scrapped", "rejected")...)

	p.Heading(p.t("paper.part.concessions"))
	p.conceded()

	p.Heading(p.t("paper.part.learned"))
	list := p.Proposals()
	for _, one := range list {
		p.Text(strings.Join(present(one.Said, one.Why), " "))
	}
	if len(list) == 0 {
		p.Text(p.say(message.New("floor.too_few", "least", floor.Least)))
	}
	p.Text(p.t("floor.never"))
	p.Pairs(p.answered("learned_by")...)
}

// measured holds each tube against what was asked.
func (p *papering) measured(tubes []floor.Tube) {
	p.Heading(p.t("paper.part.measured"))
	if len(tubes) == 0 {
		p.Text(p.t("floor.none"))
		return
	}
	bands := floor.Bands(p.Made.Shop, &p.Made.Plan)
	var asked, rows [][]string
	heads := []paper.Column{{Label: p.t("paper.column.tube"), Number: true}}
	for i, c := range floor.Columns {
		name, b := p.t("floor."+c.ID), bands[i]
		heads = append(heads, paper.Column{Label: name, Number: true})
		allowed := p.t("floor.not_judged")
		if b.Judged {
			allowed = p.say(message.New("floor.allowed", "from", p.print(c.Kind, b.Want-b.Less), "to", p.print(c.Kind, b.Want+b.More)))
		}
		asked = append(asked, []string{name, p.print(c.Kind, b.Want), allowed, p.outOf(tubes, i, b)})
	}
	for n, t := range tubes {
		row := []string{whole(n + 1)}
		var out []string
		for i, c := range floor.Columns {
			text := ""
			if t[i].Known {
				text = p.print(c.Kind, t[i].SI)
			}
			if t[i].Known && bands[i].Judged && !bands[i].Holds(t[i]) {
				out = append(out, p.t("floor."+c.ID))
			}
			row = append(row, text)
		}
		rows = append(rows, append(row, p.grown(t), strings.Join(out, ", ")))
	}
	p.Table(p.t("floor.against"), p.columns("what", "wanted:n", "allowed", "out"), asked)
	p.Table(p.t("floor.tubes"), append(append(heads, paper.Column{Label: p.t("floor.grew"), Number: true}), p.columns("out")...), rows)
}

// outOf says how many of those that were measured are out.
func (p *papering) outOf(tubes []floor.Tube, i int, b floor.Band) string {
	known, out := 0, 0
	for _, t := range tubes {
		if t[i].Known {
			known++
		}
		if t[i].Known && !b.Holds(t[i]) {
			out++
		}
	}
	if !b.Judged || known == 0 {
		return ""
	}
	return p.say(message.New("floor.out_of", "out", out, "of", known))
}

func (p *papering) grown(t floor.Tube) string {
	if !t[floor.Cut].Known || !t[floor.Finished].Known {
		return ""
	}
	return p.print(units.Gap, t[floor.Finished].SI-t[floor.Cut].SI)
}

// conceded lists what was out and who let it pass; one that nobody answers for is none.
func (p *papering) conceded() {
	var rows [][]string
	var wrong []string
	for i, line := range p.lines("concessions") {
		what, who, _ := strings.Cut(line, ";")
		if what, who = strings.TrimSpace(what), strings.TrimSpace(who); what == "" || who == "" {
			wrong = append(wrong, p.say(message.New("paper.line_wrong", "name", p.ask("concessions"), "line", i+1, "why", message.New("floor.concession"))))
			continue
		}
		rows = append(rows, []string{what, who})
	}
	p.Caution(wrong...)
	if rows == nil && wrong == nil {
		p.Text(p.t("floor.no_concession"))
	}
	p.Table("", p.columns("what", "accepted_by"), rows)
}
