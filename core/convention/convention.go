// Package convention tells by which conventions another party's printed figure comes out: what was counted, how thick the fin was
// taken, which area or length it stands on, in which unit it was printed.
package convention

import (
	"cmp"
	"math"
	"slices"

	"finwright/core/numeric"
	"finwright/core/rating"
	"finwright/core/units"
)

// Choice is the answer to one question of convention. Its text is "convention.<ask>.<answer>".
type Choice struct{ Ask, Answer string }

// question is something that can be counted in several ways, of which the first is this program's.
type question struct {
	ask     string
	answers []string
}

// Quantity is a figure that others print. Its name is the text "convention.<id>".
type Quantity struct {
	ID    string
	Kind  units.Kind
	Units []string // in which it is printed, as they can be typed; none where it has no unit

	asks func(d *Design) []question
	of   func(d *Design, answer func(ask string) string) float64 // [SI]
}

// Quantities lists them.
var Quantities = []Quantity{surface, ratio, mass, overall}

// Find returns the quantity of an ID.
func Find(id string) (*Quantity, bool) {
	i := slices.IndexFunc(Quantities, func(q Quantity) bool { return q.ID == id })
	if i < 0 {
		return nil, false
	}
	return &Quantities[i], true
}

// Design is the tube, and the bank where it has been rated.
type Design struct {
	*rating.Input
	Thermal *rating.Thermal // nil where there is none
}

// Rated reports whether the quantity needs a bank that has been rated.
func (q *Quantity) Rated() bool { return q.ID == overall.ID }

// Reading is what a set of conventions makes of the design.
type Reading struct {
	SI      float64
	Choices []Choice // those that are not this program's
	Miss    float64  // [-] by what share the printed number is more
	Fits    bool     // it is the printed number to its digits
}

// Printed is a number as another party prints it.
type Printed struct {
	SI     float64
	Half   float64 // a unit in its last place, by half [SI]
	Factor float64 // what one of its unit is in SI
}

// mostReadings are returned.
const mostReadings = 6

// Read tries every set of conventions: those that give the printed number, the fewest departures from this program's first, or, where
// none does, the nearest.
//
// Valid: a design that the quantity can be found of; a positive number.
// Source: enumeration.
func (q *Quantity) Read(d *Design, p Printed) []Reading {
	asks := q.asks(d)
	var all []Reading
	at := make([]int, len(asks))
	answer := func(ask string) string {
		i := slices.IndexFunc(asks, func(a question) bool { return a.ask == ask })
		if i < 0 {
			return ""
		}
		return asks[i].answers[at[i]]
	}
	for more := true; more; more = advance(at, asks) {
		r := Reading{SI: q.of(d, answer)}
		for i, a := range asks {
			if at[i] > 0 {
				r.Choices = append(r.Choices, Choice{a.ask, a.answers[at[i]]})
			}
		}
		all = append(all, q.units(r, p)...)
	}
	all = numeric.Sorted(all, func(x, y *Reading) int {
		switch {
		case x.Fits != y.Fits:
			if x.Fits {
				return -1
			}
			return 1
		case !x.Fits:
			return cmp.Or(cmp.Compare(math.Abs(x.Miss), math.Abs(y.Miss)), cmp.Compare(len(x.Choices), len(y.Choices)))
		}
		return cmp.Or(cmp.Compare(len(x.Choices), len(y.Choices)), cmp.Compare(math.Abs(x.Miss), math.Abs(y.Miss)))
	})
	if fit := slices.IndexFunc(all, func(r Reading) bool { return !r.Fits }); fit > 0 {
		all = all[:fit]
	}
	return distinct(all)
}

// units are the readings of one value, the number printed in its own unit and, where that is one of those that are mistaken for
// one another, in each other one.
func (q *Quantity) units(r Reading, p Printed) []Reading {
	judge := func(r Reading, by float64) Reading {
		printed := p.SI * by
		r.Miss = printed/r.SI - 1
		half := p.Half * by * (1 + 1e-9)
		switch off := r.SI - printed; {
		case math.Abs(off) <= half:
			r.Fits = true
		case off > 0 && off < 2*half:
			r.Fits, r.Choices = true, append(slices.Clone(r.Choices), Choice{"digits", "cut"})
		}
		return r
	}
	out := []Reading{judge(r, 1)}
	usual := func(unit string) bool { return math.Abs(q.factor(unit)/p.Factor-1) < 1e-9 }
	if !slices.ContainsFunc(q.Units, usual) {
		return out
	}
	for _, unit := range q.Units {
		if usual(unit) {
			continue
		}
		in := r
		in.Choices = append(slices.Clone(r.Choices), Choice{"unit", unit})
		out = append(out, judge(in, q.factor(unit)/p.Factor))
	}
	return out
}

// factor returns what one of a unit is in SI.
func (q *Quantity) factor(unit string) float64 {
	one, err := units.Parse(q.Kind, "1 "+unit, units.SI)
	if err != nil {
		panic("convention: no unit " + unit)
	}
	return one.SI
}

// distinct keeps the first of those that give the same value, since nobody could tell them apart, and no more than are shown.
func distinct(all []Reading) []Reading {
	var out []Reading
	for _, r := range all {
		if len(out) == mostReadings {
			break
		}
		same := func(o Reading) bool { return math.Abs(o.Miss-r.Miss) <= 1e-12 && math.Abs(o.SI-r.SI) <= 1e-12*r.SI }
		if !slices.ContainsFunc(out, same) {
			out = append(out, r)
		}
	}
	return out
}

// advance goes to the next set of answers; false after the last.
func advance(at []int, asks []question) bool {
	for i := range at {
		if at[i]++; at[i] < len(asks[i].answers) {
			return true
		}
		at[i] = 0
	}
	return false
}
