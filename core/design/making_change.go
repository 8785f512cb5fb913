package design

import (
	"math"
	"strings"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/rating"
	"finwright/core/shop/verdict"
	"finwright/core/units"
)

// Command makes settings in a document, as texts in the units of its system.
func Command(settings []verdict.Setting, s units.System) document.Command {
	all := document.Command{Op: "all"}
	for _, one := range settings {
		text := one.Choice
		if text == "" {
			text = exact(one.Kind, one.SI, s)
		}
		c := document.Command{Op: "set", Values: []document.Value{{Field: one.Field, Text: &text}}}
		if part, ok := strings.CutPrefix(one.Field, "span_"); ok {
			c = document.Command{Op: "span", Index: one.Index, Part: part, Text: text}
		}
		all.Commands = append(all.Commands, c)
	}
	return all
}

// exact writes a quantity so that it is read back as the same: short if that
// can be, in the system in force if that can be.
func exact(k units.Kind, si float64, s units.System) string {
	other := units.US
	if s == units.US {
		other = units.SI
	}
	for _, text := range []string{units.Echo(k, si, s), units.Echo(k, si, other)} {
		if p, err := units.Parse(k, text, s); err == nil && math.Abs(p.SI-si) <= 1e-10*math.Abs(si) {
			return text
		}
	}
	return units.Plain.Full(k, si, s) + " " + k.Unit(s)
}

// Offer is a change that holds when the document takes it, and what it does.
type Offer struct {
	Settings      []verdict.Setting
	Fixed         bool // it touches what the customer fixed
	Before, After Outcome
}

// Outcome is what a change is weighed by.
type Outcome struct {
	Duty  rating.Optional // [W]
	Price rating.Optional // of a tube
}

// TryChanges offers, of the changes that the rules propose, those that hold when the document d, which the making is of,
// takes them: every entry can be used, the rule is good, and nothing is refused that was not refused before; nor is anything
// offered while surface or heat refuse the tube and would still. Of several for a rule the first is offered that leaves alone what
// the customer fixed, else the first.
func (m *Production) TryChanges(d document.Document) {
	before, now := m.refusals(m.Verdicts), m.outcome()
	m.Offers = map[string]Offer{}
	for i := range m.Verdicts {
		v := &m.Verdicts[i]
		if v.Change == nil {
			continue
		}
		var found *Offer
		for _, settings := range append([][]verdict.Setting{v.Change}, v.Others...) {
			fixed := fixedIn(d, settings)
			if found != nil && fixed {
				continue
			}
			if after, ok := m.tried(d, v.Rule, settings, before); ok {
				found = &Offer{settings, fixed, now, after}
				if !fixed {
					break
				}
			}
		}
		v.Change = nil
		if found != nil {
			v.Change, m.Offers[v.Rule.ID] = found.Settings, *found
		}
	}
}

// fixedIn reports whether settings touch an entry that the customer fixed.
func fixedIn(d document.Document, settings []verdict.Setting) bool {
	for _, s := range settings {
		entry := d.Fields[s.Field]
		switch s.Field {
		case field.SpanCentre.ID:
			entry = d.Spans[s.Index].Centre
		case field.SpanWidth.ID:
			entry = d.Spans[s.Index].Width
		}
		if entry.Origin == document.Customer {
			return true
		}
	}
	return false
}

// tried makes settings in the document and tells what comes of it; ok is false where that does not hold.
func (m *Production) tried(d document.Document, rule *verdict.Rule, settings []verdict.Setting, before map[string]bool) (after Outcome, ok bool) {
	changed, ok := m.with(d, settings)
	if !ok {
		return Outcome{}, false
	}
	for what := range changed.refusals(changed.Verdicts) {
		if !before[what] || !strings.HasPrefix(what, byRule) {
			return Outcome{}, false
		}
	}
	for _, v := range changed.Verdicts {
		if v.Rule == rule {
			return changed.outcome(), v.State == figure.Good
		}
	}
	return Outcome{}, false
}

// with judges and plans the document with settings made in it; ok is false where an entry could then not be used.
func (m *Production) with(d document.Document, settings []verdict.Setting) (changed Production, ok bool) {
	d, err := document.Edit(d, Command(settings, d.Units))
	if err != nil {
		return Production{}, false
	}
	in, err := Read(d)
	if err != nil {
		return Production{}, false
	}
	h, err := rateBriefly(&in)
	if err != nil {
		return Production{}, false
	}
	in.MadeBy(m.in.Shop)
	return Brief(in, h), true
}

func (m *Production) outcome() Outcome {
	var out Outcome
	if m.heat.Absent.None() {
		out.Duty = rating.Optional{SI: math.Abs(m.heat.Thermal.Duty.Heat), Stated: true}
	}
	if m.Plan.Cost != nil {
		out.Price = rating.Optional{SI: float64(m.Plan.Cost.PerTube), Stated: true}
	}
	return out
}

// byRule begins the name of a refusal by a rule of the line.
const byRule = "rule "

// refusals names what is refused: by the rules of the line, and by the remarks on surface and heat.
func (m *Production) refusals(verdicts []verdict.Verdict) map[string]bool {
	out := map[string]bool{}
	for _, v := range verdicts {
		if v.State == figure.No {
			out[byRule+v.Rule.ID] = true
		}
	}
	s := m.in.Surface(&m.heat.Thermal)
	for _, n := range append(notices(&m.in, &s, nil), heatNotices(&m.in, m.heat)...) {
		if n.State == figure.No {
			out[n.Field+" "+n.Message.Key] = true
		}
	}
	return out
}
