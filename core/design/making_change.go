package design

import (
	"math"
	"strings"

	"finwright/core/document"
	"finwright/core/figure"
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

// TryChanges keeps, of the changes that the rules propose, those that hold when the document d, which the making is of,
// takes them: every entry can be used, the rule is good, and nothing is refused that was not refused before.
func (m *Production) TryChanges(d document.Document) {
	before := m.refusals(m.Verdicts)
	for i := range m.Verdicts {
		v := &m.Verdicts[i]
		if v.Change != nil && !m.holds(d, v, before) {
			v.Change = nil
		}
	}
}

// holds tries the change of one verdict.
func (m *Production) holds(d document.Document, v *verdict.Verdict, before map[string]bool) bool {
	d, err := document.Edit(d, Command(v.Change, d.Units))
	if err != nil {
		return false
	}
	in, h, err := ReadAndRate(d)
	if err != nil {
		return false
	}
	in.Shop = m.in.Shop
	after := judge(in, h)
	for what := range after.refusals(after.Verdicts) {
		if !before[what] {
			return false
		}
	}
	for _, now := range after.Verdicts {
		if now.Rule == v.Rule {
			return now.State == figure.Good
		}
	}
	return false
}

// refusals names what is refused: by the rules of the line, and by the remarks on surface and heat.
func (m *Production) refusals(verdicts []verdict.Verdict) map[string]bool {
	out := map[string]bool{}
	for _, v := range verdicts {
		if v.State == figure.No {
			out["rule "+v.Rule.ID] = true
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
