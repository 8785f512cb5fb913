package search

import (
	"finwright/core/design"
	"finwright/core/exchanger"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/rating"
)

// walker goes from place to place and keeps of a design what the next has too.
type walker struct {
	s      *Search
	hurdle barrier
	place  int
	at     []int // value of each axis
	in     field.Input
	values Values          // that are known before it is rated
	missed [levels]float64 // of a search for the nearest: at least, by level

	fit []int8 // of each length whether it leaves room for fins: 1 or -1; 0: not looked at

	scope  rating.Scope
	scoped bool
	reach  rating.Reach
	bench  workbench
}

func newWalker(s *Search, hurdle Hurdle) *walker {
	return &walker{s: s, hurdle: hurdle.barrier(), place: none, at: make([]int, len(s.axes)), fit: make([]int8, mostSteps)}
}

// visit goes to a place and returns why its design is not in the answer, or none, and for how many places from there on that holds
// without a look at them.
func (w *walker) visit(place int) (cut, span int) {
	for l := w.move(place); l < levels; l++ {
		w.missed[l] = 0
		if cut := w.enter(l); cut != none {
			share := w.s.share(l)
			return cut, share - place%share
		}
	}
	return none, 1
}

// move sets the values of a place and returns the outermost level in which one changed.
func (w *walker) move(place int) level {
	s, outermost := w.s, len(w.at)
	if next := w.place + 1; place == next && place > 0 {
		for i := len(w.at) - 1; i >= 0; i-- {
			outermost = i
			if w.at[i]++; w.at[i] < s.axes[i].size() {
				break
			}
			w.at[i] = 0
		}
	} else {
		for i := len(w.at) - 1; i >= 0; i-- {
			if at := place / s.block[i] % s.axes[i].size(); at != w.at[i] {
				w.at[i], outermost = at, i
			}
		}
	}
	first := w.place == none
	w.place = place
	switch {
	case first:
		return ofMetal
	case outermost == len(w.at):
		return ofBank
	}
	return s.axes[outermost].level
}

// enter computes what belongs to a level and says whether that alone cuts.
func (w *walker) enter(l level) (cut int) {
	for i := range w.s.axes {
		if a := &w.s.axes[i]; l != ofMetal && a.level == l {
			a.set(&w.in, w.at[i])
		}
	}
	switch l {
	case ofMetal:
		return w.enterMetal()
	case ofTube:
		w.bench.clear()
		if len(design.Check(&w.in, design.OfTube)) > 0 {
			return impossible
		}
	case ofAir:
		return w.enterAir()
	case ofBank:
		return w.enterBank()
	}
	return none
}

func (w *walker) enterMetal() (cut int) {
	m := &w.s.made[w.place/w.s.share(ofMetal)]
	if m.wrong {
		return impossible
	}
	w.in = m.in
	if w.scope, w.scoped = w.in.Scope(); w.s.must.limits && exchanger.Worst(design.Foreseen(&w.in)) != figure.Good {
		if cut := w.refuse(ofMetal, byLimits); cut != none {
			return cut
		}
	}
	if w.s.must.line != "" && w.in.FinMetal.Family.Suits(w.in.Tube.Fin.Type.Fixing().Forming) == material.Unsuitable {
		return w.refuse(ofMetal, byLine)
	}
	return none
}

func (w *walker) enterAir() (cut int) {
	if len(design.Check(&w.in, design.OfPitch)) > 0 {
		return impossible
	}
	if w.s.must.states(depth) {
		_, deep, _ := design.Bundle(&w.in)
		if cut := w.hold(ofAir, depth, deep); cut != none {
			return cut
		}
	}
	if !w.scoped {
		return none
	}
	w.reach = w.scope.Reach(&w.in.Input)
	if w.reach.Beyond && !w.s.must.outside {
		if cut := w.refuse(ofAir, beyond); cut != none {
			return cut
		}
	}
	return w.hold(ofAir, airDrop, w.reach.Drop)
}

// hold holds a number, or what it is at best, to its bound.
func (w *walker) hold(l level, at int, si float64) (cut int) {
	switch {
	case w.s.gives(at):
		w.missed[l] += w.s.must.misses(at, si)
	case w.s.must.breaks(at, si):
		return at
	}
	return none
}

// refuse is hold for what is no number: to miss it counts as one, where all may be missed.
func (w *walker) refuse(l level, cut int) int {
	if w.s.nearest {
		w.missed[l]++
		return none
	}
	return cut
}
