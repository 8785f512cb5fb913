package report

import (
	"slices"

	"finwright/core/design"
	"finwright/core/message"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// ShownCaution is what the plan remarks or what may hurt: one text, or several under one head.
type ShownCaution struct {
	ID    string   `json:"id"`
	At    string   `json:"at"`   // the group of figures by which it stands, "steps" or "checks"; empty: it is about the whole order
	Head  string   `json:"head"` // empty: there is one text
	Texts []string `json:"texts"`
}

// heeded gathers cautions, each once. The floor hears of no money.
type heeded struct {
	Writer
	list  []ShownCaution
	floor bool
}

func (h *heeded) add(id, at, head, text string) {
	i := slices.IndexFunc(h.list, func(c ShownCaution) bool {
		return head != "" && c.At == at && c.Head == head || head == "" && slices.Equal(c.Texts, []string{text})
	})
	switch {
	case i < 0:
		h.list = append(h.list, ShownCaution{id, at, head, []string{text}})
	case head != "":
		h.list[i].Texts = append(h.list[i].Texts, text)
	}
}

// remark adds what a plan says beside the rules.
func (h *heeded) remark(at string, list ...message.Message) {
	for _, m := range list {
		if !m.None() {
			text := h.say(m)
			h.add(text, at, "", text)
		}
	}
}

// cautions are the plan's own remarks, and what may hurt, each by the part of the work that it is about.
func (w Writer) cautions(m *design.Production) []ShownCaution { return heed(heeded{Writer: w}, m) }

// floorCautions are those that the floor is told.
func (w Writer) floorCautions(m *design.Production) []ShownCaution {
	return heed(heeded{Writer: w, floor: true}, m)
}

func heed(h heeded, m *design.Production) []ShownCaution {
	w := h.Writer
	h.list = []ShownCaution{}
	h.remarks(m)
	for _, c := range m.Plan.Cautions() {
		head, id := "", c.ID
		if c.About != "" {
			head, id = w.Texts.Text(c.About), c.About
		}
		h.add(id, c.At, head, w.Texts.Text("caution."+c.ID))
	}
	return h.list
}

// remarks adds what the plan says of itself, and why a part of it is absent.
func (h *heeded) remarks(m *design.Production) {
	p := &m.Plan
	if p.Programme != nil && !p.Programme.Growth.Learned && p.Programme.Growth.Scatter > 0 {
		h.remark("cutting", p.Programme.Growth.Note)
	}
	if p.Packing != nil {
		h.remark("packing", p.Packing.Warnings...)
	}
	if s, o := p.Supply, p.Other; !h.floor && s != nil && o != nil && s.Priced && o.Priced && o.Cost() < s.Cost() {
		h.remark("tubes", message.New("making.buy."+string(o.Way), "by", h.amount(float64(s.Cost()-o.Cost()))))
	}
	for i := range p.Drawn {
		d := &p.Drawn[i]
		h.remark("tubes", message.New("making.drawn", "tubes", d.Tubes, "length", message.Of(units.Distance, d.Stock), "heat", d.From.Heat, "pieces", d.Pieces))
	}
	h.strip(p)
	if m.Day > 0 && !h.floor {
		h.remark("cost", p.OldPrices(m.Shop, m.Day)...)
	}
	for _, part := range []making.Part{making.TheProgramme, making.TheStrip, making.ThePacking, making.TheBundle, making.TheCost} {
		h.remark("", p.Absent[part])
	}
	if k := p.Practice; k != nil && (p.Ledger == nil || p.Ledger.ToBuy() > 0) {
		demand := func(text string) { h.add("demands", "buy", h.Texts.Text("making.demands"), text) }
		for _, one := range k.Demands {
			demand(h.Texts.Text("shop.demand." + string(one)))
		}
		if k.Burr > 0 {
			demand(h.say(message.New("making.demand_burr", "burr", message.Most(message.Of(units.Gap, k.Burr)))))
		}
	}
}

// strip says which strip on hand is taken, what of it stays and what goes back.
func (h *heeded) strip(p *making.Plan) {
	l := p.Ledger
	if l == nil {
		return
	}
	for i := range l.Hand {
		hand := p.Winding.Hand[i].From
		key := "making.drawn_strip"
		if hand.Remark != "" {
			key = "making.drawn_strip_remark"
		}
		h.remark("buy", message.New(key, "mass", message.Of(units.Weight, hand.Mass), "length", message.Of(units.Run, p.Winding.Hand[i].Length), "heat", hand.Heat, "remark", hand.Remark))
	}
	if stay := p.Winding.Stay; stay > 0 && l.ToBuy() > 0 {
		h.remark("buy", message.New("making.strip_stays", "coils", stay))
	}
	if l.Returned > 0 {
		h.remark("buy", message.New("making.strip_returned", "length", message.Of(units.Run, l.Returned), "heat", p.Winding.Hand[l.Hand-1].From.Heat))
	}
}
