package design

import (
	"math"
	"slices"
	"strings"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/rating"
	"finwright/core/shop/verdict"
)

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

// trial makes changes in a document, which the making is of, to find those that hold: every entry can be used, what the change is
// to mend is mended, and nothing is refused that was not refused before; nor does anything hold while surface or heat refuse the
// tube and would still.
type trial struct {
	m        *Production
	d        document.Document
	refusals map[string]bool // before
	now      Outcome
}

func newTrial(m *Production, d document.Document) trial {
	return trial{m, d, m.refusals(), m.outcome()}
}

// best offers, of a change and others that mend the same, the first that holds and leaves alone what the customer fixed, else the
// first that holds; nil where none does.
func (t *trial) best(change []verdict.Setting, others [][]verdict.Setting, mended func(*Production) bool) *Offer {
	var found *Offer
	for _, settings := range append([][]verdict.Setting{change}, others...) {
		fixed := fixedIn(t.d, settings)
		if found != nil && fixed {
			continue
		}
		if changed, ok := t.m.with(t.d, settings); ok && t.bearable(&changed) && mended(&changed) {
			found = &Offer{settings, fixed, t.now, changed.outcome()}
			if !fixed {
				break
			}
		}
	}
	return found
}

// bearable reports whether nothing is refused but by rules of the line that refused before.
func (t *trial) bearable(changed *Production) bool {
	for what := range changed.refusals() {
		if !t.refusals[what] || !strings.HasPrefix(what, byRule) {
			return false
		}
	}
	return true
}

// TryRemarks offers, of the changes that the remarks on d propose, those that hold and after which the remark is not made any
// more. m is the making of d, or Unmade. A remark that is made for its change alone goes where that does not hold, and stands
// behind its like where the customer fixed what it changes.
func (r *Result) TryRemarks(m *Production, d document.Document) {
	proposes := func(n Notice) bool { return n.Change != nil }
	if !slices.ContainsFunc(r.Notices, proposes) {
		return
	}
	try := newTrial(m, d)
	var kept, agreed []Notice
	for _, n := range r.Notices {
		if proposes(n) {
			n.Offer = try.best(n.Change, n.Others, func(changed *Production) bool { return !slices.ContainsFunc(changed.remarks(), n.same) })
		}
		switch {
		case !proposes(n) || n.State != figure.Plain || n.Offer != nil && !n.Offer.Fixed:
			kept = append(kept, n)
		case n.Offer != nil:
			agreed = append(agreed, n)
		}
		for i := range r.Parts {
			if r.Parts[i].Notice.same(n) {
				r.Parts[i].Notice.Offer = n.Offer
			}
		}
	}
	r.Notices = append(kept, agreed...)
}

// same reports whether two remarks are of one thing.
func (n Notice) same(other Notice) bool {
	return n.Field == other.Field && n.Message.Key == other.Message.Key
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
func (m *Production) refusals() map[string]bool {
	out := map[string]bool{}
	for _, v := range m.Verdicts {
		if v.State == figure.No {
			out[byRule+v.Rule.ID] = true
		}
	}
	for _, n := range m.remarks() {
		if n.State == figure.No {
			out[n.Field+" "+n.Message.Key] = true
		}
	}
	return out
}

// remarks are those on surface and heat.
func (m *Production) remarks() []Notice {
	s := m.in.Surface(&m.heat.Thermal)
	return append(notices(m.in, &s, nil), heatNotices(m.in, m.heat)...)
}
