package search

import (
	"finwright/core/design"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/shop"
	"finwright/core/shop/making"
)

// workbench remembers how one tube is judged and planned: by its length the first, by length and quantity the second.
type workbench struct {
	judged  map[orderKey]*judged
	planned map[orderKey]planned
}

// orderKey is what tells the orders of one tube apart.
type orderKey struct {
	length   float64
	quantity int
}

// judged is what the line says of a tube of which nothing is known how hot it gets.
type judged struct {
	design.Production
	sole    bool // the line is this one however hot the tube gets
	refused bool
	watched bool
}

// planned is what a plan says that a search asks for.
type planned struct {
	price, day       float64
	priced, promised bool
}

func (b *workbench) clear() { b.judged, b.planned = nil, nil }

// line judges the order of an input.
//
// A rule refuses or does not whatever the temperatures: of these only a watch comes (expansion). And that of several lines is
// chosen which refuses least, so whether the chosen one refuses hangs on none either; which it is may.
func (b *workbench) line(in *field.Input) *judged {
	key := orderKey{length: float64(in.Tube.Length)}
	if in.Job.FreeIssue {
		key.quantity = in.Job.Quantity // whether there are spares enough hangs on it, and nothing else that is judged
	}
	if j, ok := b.judged[key]; ok {
		return j
	}
	j := &judged{Production: design.Judged(in, &design.Heat{})}
	j.sole = !j.Auto && j.NoLine.None() || lines(in) < 2
	j.refused, j.watched = refusedBy(&j.Production)
	if b.judged == nil {
		b.judged = map[orderKey]*judged{}
	}
	b.judged[key] = j
	return j
}

// lines returns how many lines of the shop make the fin type.
func lines(in *field.Input) (n int) {
	for i := range in.Shop.Lines {
		if _, makes := in.Shop.Lines[i].Practice(in.Tube.Fin.Type); makes {
			n++
		}
	}
	return n
}

// refusedBy reports whether a rule of the line refuses an order, or cannot tell whether it can be made, and whether one watches, asks or
// lacks its line.
func refusedBy(m *design.Production) (refused, watched bool) {
	watched = !m.NoLine.None()
	for i := range m.Verdicts {
		switch v := &m.Verdicts[i]; {
		case v.State == figure.No, v.State == figure.Plain && !v.Moot && v.Why.Key == "shop.why.zones":
			refused = true
		case v.State == figure.Watch:
			watched = true
		}
	}
	return refused, watched
}

// plan plans the order of an input on the line of m.
func (b *workbench) plan(in *field.Input, m *judged, today shop.Day) planned {
	key := orderKey{float64(in.Tube.Length), in.Job.Quantity}
	if p, ok := b.planned[key]; ok {
		return p
	}
	order := *m.Order
	order.Quantity = in.Job.Quantity
	p := planOf(&m.Production, &order, today)
	if b.planned == nil || len(b.planned) == mostPlanned {
		b.planned = map[orderKey]planned{}
	}
	b.planned[key] = p
	return p
}

// mostPlanned bounds what is remembered.
const mostPlanned = 1 << 14

// planOf plans an order; today is nought where no promise is asked for, which takes longer than the plan.
func planOf(m *design.Production, order *making.Order, today shop.Day) (p planned) {
	plan := making.PlanOf(m.Shop, m.Line, order, nil)
	if plan.Cost != nil {
		p.price, p.priced = float64(plan.Cost.Price), true
	}
	if today == 0 {
		return p
	}
	if promise, why := plan.Promise(m.Shop, today); why.None() {
		p.day, p.promised = float64(promise.Day), true
	}
	return p
}
