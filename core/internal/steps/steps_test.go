// Package steps proves that a small change of a design gives a small difference: no figure steps, but for the named ones.
package steps

import (
	"math"
	"testing"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/proof"
)

const (
	designs = 200   // that are walked in make long
	points  = 200   // of a walk
	closest = 1e-11 // [-] of the walk, to which a change is followed
	allowed = 1e-6  // [-] of a figure's scale, of such a change
)

// walk is one design along one of its numbers.
type walk struct {
	c       *proof.Case
	d       document.Document
	f       *field.Field
	s       span
	answers map[float64]*answer
}

// at answers the design at a share of the span, once.
func (w *walk) at(x float64) *answer {
	a, ok := w.answers[x]
	if !ok {
		put(w.d, w.f, w.s.low+(w.s.high-w.s.low)*x)
		a = ask(w.d)
		w.answers[x] = a
	}
	return a
}

// change returns how much a figure differs between two places [-]; 0 where it has no value at one of them.
func (w *walk) change(id string, from, to float64) float64 {
	a, ok := w.at(from).of(id)
	b, also := w.at(to).of(id)
	if !ok || !also {
		return 0
	}
	return differ(w.at(from), id, a, b)
}

// TestNoFigureSteps walks each number of plausible designs and follows the largest change of each figure until it is gone.
func TestNoFigureSteps(t *testing.T) {
	fields := walked()
	count := proof.Proof{Share: 4, Full: designs * len(fields), Seed: 20}.Run(t, func(c *proof.Case) {
		n := c.Index % designs
		f := fields[(c.Index/designs+n)%len(fields)]
		d := draw(n)
		if !f.Used(d.Text) {
			return
		}
		w := walk{c, d, f, spanOf(f), map[float64]*answer{}}
		w.run()
	})
	t.Logf("%d walks", count)
}

func (w *walk) run() {
	widest := map[string]float64{} // change of each figure
	where := map[string]int{}
	for i := 1; i < points; i++ {
		from, to := place(i-1), place(i)
		a := w.at(from)
		if a == nil {
			continue
		}
		for id := range a.places {
			if by := w.change(id, from, to); by > widest[id] {
				widest[id], where[id] = by, i
			}
		}
	}
	for id, i := range where {
		w.follow(id, place(i-1), place(i))
	}
}

func place(i int) float64 { return float64(i) / (points - 1) }

// follow halves an interval about the larger change of a figure, until the change is gone or the interval is. What still
// shrinks then is steep and no step.
func (w *walk) follow(id string, from, to float64) {
	last := math.Inf(1) // change of an interval eight times as wide as the closest
	for to-from > closest {
		by := w.change(id, from, to)
		if by <= allowed {
			return
		}
		if to-from > 8*closest {
			last = by
		}
		mid := from + (to-from)/2
		if w.at(mid) == nil {
			return // it ends here: what is refused has no figures
		}
		if w.change(id, from, mid) >= w.change(id, mid, to) {
			to = mid
		} else {
			from = mid
		}
	}
	by := w.change(id, from, to)
	if e := excepted(id); by <= allowed || by < last/4 || e != nil && e.seen(w.at(from), w.at(to)) {
		return
	}
	a, _ := w.at(from).of(id)
	b, _ := w.at(to).of(id)
	w.c.Errorf("%s steps from %.12g to %.12g (%.2g of its scale) at %s = %.12g", id, a, b, by, w.f.ID, w.s.low+(w.s.high-w.s.low)*to)
}
