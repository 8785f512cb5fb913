package verdict

import (
	"slices"

	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop"
)

var securityRule = &Rule{ID: "end_security", Field: "end_security", Changes: []string{"end_security"}, Judge: judgeSecurity}

// judgeSecurity asks whether the line holds the ends of the fins in the way that is asked for. The change is to its first way.
//
// Source: common practice, no source: fins unwind where their ends are not held.
func judgeSecurity(p *Pair) Verdict {
	way := p.Order.Asked.Security
	switch {
	case way == "":
		return moot("shop.why.our_security")
	case len(p.Line.Securing) == 0:
		return unknown("shop.why.no_securing", "line", p.Line.Name)
	case slices.ContainsFunc(p.Line.Securing, func(s shop.Securing) bool { return string(s.Way) == way }):
		return Verdict{State: figure.Good}
	}
	return Verdict{
		State: figure.No, Why: message.New("shop.why.security", "line", p.Line.Name, "way", message.Key("choice.end_security."+way)),
		Change: []Setting{{Field: "end_security", Choice: string(p.Line.Securing[0].Way)}},
	}
}
