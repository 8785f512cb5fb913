package report

import (
	"strings"

	"finwright/core/design"
	"finwright/core/figure"
	"finwright/core/message"
)

// Beside says of an item what is worked out on demand alone: the price of a tube in other quantities, and of each rule that is not kept the nearest change
// that keeps it, where there is one.
func (w Writer) Beside(m *design.Production) (said []string) {
	if list := w.Breaks(m); list != "" {
		said = append(said, w.say(message.New("enquiry.beside.breaks", "list", list)))
	}
	for i := range m.Verdicts {
		v := &m.Verdicts[i]
		if v.Moot || v.State != figure.No && v.State != figure.Watch {
			continue
		}
		o, ok := m.Offers[v.Rule.ID]
		if !ok {
			continue
		}
		change := w.offer(o)
		said = append(said, w.say(message.New("enquiry.beside.change", "rule", message.Key("shop.rule."+v.Rule.ID), "why", v.Why, "change", change.Text, "effect", change.Effect)))
	}
	if len(said) == 0 {
		said = append(said, w.say(message.New("enquiry.beside.none")))
	}
	return said
}

// Breaks lists the prices of a tube in the quantities that a shop prices besides, and in the order's own; empty where it has none.
func (w Writer) Breaks(m *design.Production) string {
	var list []string
	for _, b := range m.Breaks {
		if b.Cost == nil {
			continue
		}
		key := "enquiry.beside.break"
		if b.Ordered {
			key = "enquiry.beside.ordered"
		}
		list = append(list, w.say(message.New(key, "tubes", b.Quantity, "price", w.amount(float64(b.Cost.PerTube)))))
	}
	return strings.Join(list, ", ")
}
