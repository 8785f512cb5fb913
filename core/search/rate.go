package search

import (
	"math"

	"finwright/core/design"
	"finwright/core/exchanger"
	"finwright/core/figure"
	"finwright/core/rating"
)

// rate rates the design that the walker has come to, in full and from a start that hangs on it alone, and holds it to all that must hold.
func (w *walker) rate() (f Found, cut int) {
	s := w.s
	h, err := design.RateBriefly(&w.in)
	if err != nil || !h.Absent.None() {
		return f, unrated
	}
	f.Place, f.Outside, f.Values = w.place, outside(&h, w.in.Air.FilmGiven), w.values
	w.measure(&f.Values, &h)
	e := exact{s: s, cut: none}
	if f.Outside && !s.must.outside {
		e.refuse(beyond)
	}
	if s.must.limits && exchanger.Worst(h.Findings) != figure.Good {
		e.refuse(byLimits)
	}
	if !e.over() {
		w.making(&f.Values, &h, &e)
	}
	for at := range miss {
		if at == duty {
			e.duty(w, &f.Values, &h)
		} else {
			e.hold(at, &f.Values)
		}
	}
	if s.loose != 0 {
		f.Values.Set(miss, e.missed)
	}
	if e.over() {
		return f, e.cut
	}
	var known bool
	if f.worth, known = s.worthOf(&f.Values); !known {
		return f, unknown
	}
	if s.day != s.needed { // what is promised decides nothing, so it is told of what holds alone
		order := *e.make.Order
		order.Quantity = w.in.Job.Quantity
		if p := planOf(&e.make.Production, &order, s.day); p.promised {
			f.Values.Set(ready, p.day)
		}
	}
	return f, none
}

// outside reports whether a correlation in use is beyond its range.
func outside(h *design.Heat, filmGiven bool) bool {
	t := &h.Thermal
	return !filmGiven && !t.UsedFilm.InRange || t.HasDrop() && !t.UsedDrop.InRange || !t.Inside.InRange()
}

// measure takes what the bank does.
func (w *walker) measure(v *Values, h *design.Heat) {
	t, in := &h.Thermal, &w.in.Input
	v.Set(duty, math.Abs(t.Duty.Heat))
	v.Set(transfer, design.UA(t))
	_, deep, dry := design.Bundle(&w.in)
	v.Set(depth, deep)
	v.Set(mass, dry)
	if t.HasDrop() {
		v.Set(airDrop, in.DropJudged(t))
		v.Set(fanPower, t.Draught(in).Power)
	}
	if t.InsideLoss != nil {
		v.Set(insideLoss, t.InsideLoss.Total)
	}
}

// making takes price and day, and holds the line to its verdict, of a tube of which it is known how hot it gets.
func (w *walker) making(v *Values, h *design.Heat, e *exact) {
	s, in := w.s, &w.in
	j := w.bench.line(in)
	if s.must.line == Clear || !j.sole {
		hot := judged{Production: design.Judged(in, h), sole: true}
		hot.refused, hot.watched = refusedBy(&hot.Production)
		j = &hot
	}
	if s.must.line != "" && (j.refused || s.must.line == Clear && j.watched) {
		e.refuse(byLine)
	}
	if e.over() {
		return
	}
	var p planned
	if first := w.bench.line(in); first.sole {
		p = w.bench.plan(in, first, s.needed)
	} else {
		p = planOf(&j.Production, j.Order, s.needed)
	}
	e.make = j
	if p.priced {
		v.Set(price, p.price)
		if v.SI[duty] > 0 {
			v.Set(perKilowatt, p.price/(v.SI[duty]*float64(in.Job.Bundles)/1000))
		}
	}
	if p.promised {
		v.Set(ready, p.day)
	}
}

// exact gathers why a design that was rated does not hold: the first reason, or of a search for the nearest by how much it misses.
type exact struct {
	s      *Search
	cut    int
	missed float64
	make   *judged // the order as judged
}

// over reports whether nothing more needs to be asked.
func (e *exact) over() bool { return e.cut != none }

// refuse is said where no number says by how much it is missed.
func (e *exact) refuse(cut int) { e.miss(cut, 1, e.s.nearest) }

func (e *exact) miss(cut int, by float64, gives bool) {
	if gives {
		e.missed += by
	} else if !e.over() {
		e.cut = cut
	}
}

// hold holds the number at a place to its bound; what is not known does not hold.
func (e *exact) hold(at int, v *Values) {
	if e.over() || !e.s.must.states(at) {
		return
	}
	if !v.Known(at) {
		e.refuse(at)
	} else if by := e.s.must.misses(at, v.SI[at]); by > 0 {
		e.miss(at, by, e.s.gives(at))
	}
}

// duty holds the duty to its bound, that of the least of all correlations in range where it counts: a duty of which no correlation is in
// range does not hold.
func (e *exact) duty(w *walker, v *Values, h *design.Heat) {
	must := &e.s.must
	if !must.lower || e.over() || !must.states(duty) || must.breaks(duty, v.SI[duty]) && !e.s.gives(duty) {
		e.hold(duty, v)
		return
	}
	t, hindered := rating.Rate(&w.in.Input)
	if hindered != nil {
		panic("search: a bank that was rated briefly is not rated in full")
	}
	spread := w.in.Spread(&t)
	if spread.Count == 0 {
		e.refuse(duty)
		return
	}
	least := Values{}
	least.Set(duty, min(v.SI[duty], math.Abs(spread.Low.Duty.Heat)))
	e.hold(duty, &least)
}
