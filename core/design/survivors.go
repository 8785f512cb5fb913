package design

import (
	"slices"

	"finwright/core/document"
	"finwright/core/exchanger"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/shop/verdict"
	"finwright/core/tube"
)

// Survivor is a fin type that would bear the temperatures by which a design is refused: what it does, and whether a line of
// the shop can make it.
type Survivor struct {
	Type     tube.FinType
	Metal    message.Message // of the fin, where that of the design does not suit the type
	Settings []verdict.Setting
	Fixed    bool // the customer fixed what it changes
	Outcome  Outcome
	Line     string
	State    figure.State // of the line
	BoughtIn bool         // finned: no line winds it
}

// Survivors lists the fin types that no limit of temperature refuses, in the order of a page and those for which the customer must
// be asked last, where one refuses document d, which the making is of. A fin metal that does not suit a type gives way to the first that does.
func (m *Production) Survivors(d document.Document) []Survivor {
	if !refusedHot(m.heat.Findings) {
		return nil
	}
	var out, agreed []Survivor
	for _, fixing := range tube.Fixings {
		if fixing.Type == m.in.Tube.Fin.Type {
			continue
		}
		s := Survivor{Type: fixing.Type, Settings: []verdict.Setting{{Field: "fin_type", Choice: string(fixing.Type)}}}
		if m.in.FinMetal.Family.Suits(fixing.Forming) == material.Unsuitable {
			for i := range material.FinMetals {
				if other := &material.FinMetals[i]; other.Family.Suits(fixing.Forming) == material.Usual {
					s.Metal, s.Settings = other.Name(), append(s.Settings, verdict.Setting{Field: "fin_metal", Choice: other.ID})
					break
				}
			}
		}
		made, ok := m.with(d, s.Settings)
		if !ok || !made.heat.Absent.None() || overLimit(made.heat.Findings) {
			continue
		}
		s.Fixed, s.Outcome, s.Line, s.State = fixedIn(d, s.Settings), made.outcome(), made.Line.Name, verdict.Worst(made.Verdicts)
		s.BoughtIn = made.Plan.BoughtIn != nil
		if s.State == figure.No {
			s.Outcome.Price = rating.Optional{} // of a tube that is refused there is none to quote
		}
		if s.Fixed {
			agreed = append(agreed, s)
		} else {
			out = append(out, s)
		}
	}
	return append(out, agreed...)
}

// overLimit reports whether a limit of temperature is passed, be it only the house's.
func overLimit(found []exchanger.Finding) bool {
	return refusedHot(found) || slices.ContainsFunc(found, func(f exchanger.Finding) bool { return f.Why.Key == "limit.above_house" })
}

// refusedHot reports whether a limit of temperature is passed.
func refusedHot(found []exchanger.Finding) bool {
	for _, f := range found {
		if f.State == figure.No && f.Of != exchanger.OfSpacing {
			return true
		}
	}
	return false
}
