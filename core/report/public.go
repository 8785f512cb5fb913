package report

import (
	"slices"
	"strings"

	"finwright/core/design"
	"finwright/core/figure"
	"finwright/core/message"
)

// Public is a remark as it may leave the house: of one about the making no more than that there is one.
func Public(m message.Message) message.Message {
	if strings.HasPrefix(m.Key, "making.") || strings.HasPrefix(m.Key, "shop.") {
		return message.New("outgoing.not_made")
	}
	return m
}

// Refusals says why a design is refused, each reason once. Why the shop cannot make it stays in the house, and that a price is none to
// quote follows from the rest.
func (w Writer) Refusals(res *design.Result) []string {
	out := []string{}
	for _, n := range res.Notices {
		if n.State != figure.No || strings.HasSuffix(n.Message.Key, "_to_quote") {
			continue
		}
		if said := w.say(Public(n.Message)); !slices.Contains(out, said) {
			out = append(out, said)
		}
	}
	return out
}
