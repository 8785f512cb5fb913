package design

import (
	"math"
	"slices"
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

// TryChanges offers, of the changes that the rules propose, those that hold when the document d, which the making is of, takes
// them and the rule is then good; see trial.
func (m *Production) TryChanges(d document.Document) {
	m.Offers = map[string]Offer{}
	try := newTrial(m, d)
	for i := range m.Verdicts {
		v := &m.Verdicts[i]
		if v.Change == nil {
			continue
		}
		found := try.best(v.Change, v.Others, func(changed *Production) bool {
			i := slices.IndexFunc(changed.Verdicts, func(other verdict.Verdict) bool { return other.Rule == v.Rule })
			return i >= 0 && changed.Verdicts[i].State == figure.Good
		})
		v.Change = nil
		if found != nil {
			v.Change, m.Offers[v.Rule.ID] = found.Settings, *found
		}
	}
}

// with judges and plans the document with settings made in it; ok is false where an entry could then not be used. Nothing is
// judged of what nobody makes.
func (m *Production) with(d document.Document, settings []verdict.Setting) (changed Production, ok bool) {
	d, err := document.Edit(d, Command(settings, d.Units))
	if err != nil {
		return Production{}, false
	}
	in, err := Read(d)
	if err != nil {
		return Production{}, false
	}
	h, err := RateBriefly(&in)
	if err != nil {
		return Production{}, false
	}
	if m.in.Shop == nil {
		return Unmade(in, h), true
	}
	in.MadeBy(m.in.Shop)
	return Brief(in, h), true
}
