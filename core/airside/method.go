package airside

import "finwright/core/figure"

// Answer is what a correlation says, comparable by one number.
type Answer interface {
	Film | Drop
	// Measure returns the film coefficient [W/(m2 K)] or the pressure drop [Pa].
	Measure() float64
}

// Measure returns the film coefficient [W/(m2 K)].
//
// Valid: as the correlation that answered.
// Source: that correlation.
func (f Film) Measure() float64 { return f.Coefficient }

// Measure returns the whole pressure drop [Pa].
//
// Valid: as the correlation that answered.
// Source: that correlation.
func (d Drop) Measure() float64 { return d.Total }

// Method is one correlation with all that is said of it. Its file states it; its name is
// the text "airside.<ID>".
type Method[A Answer] struct {
	ID         string
	FromMemory bool           // the constants are from memory and could not be confirmed by a text
	Formula    figure.Formula // of the Nusselt number or of the pressure drop
	Compute    func(*Crossing) A
	Args       func(*Crossing, A) []figure.Arg // the numbers that Formula names, of the answer of Compute
	// Limits appends the published range, beside the values met, to a list.
	Limits func(to []figure.Limit, x *Crossing) []figure.Limit
}

// FilmMethods lists the film correlations in the order a page offers them: those of
// high-finned tubes first, widest database first.
var FilmMethods = []Method[Film]{esdu86022, briggsYoung1963HighFin, briggsYoung1963, ganguli1985, schmidt1963, weierman1976}

// DropMethods lists the pressure drop correlations in the order a page offers them: that
// which counts entry and exit first.
var DropMethods = []Method[Drop]{esdu86022Drop, robinsonBriggs1966, ganguli1985Drop, weierman1976Drop}

// Estimate is one correlation's answer with its range.
type Estimate[A Answer] struct {
	ID      string
	Answer  A
	Limits  []figure.Limit
	InRange bool
}

// MostLimits is how many limits a method states at most.
const MostLimits = 10

// Evaluate asks every method.
func Evaluate[A Answer](methods []Method[A], x *Crossing) []Estimate[A] {
	estimates := make([]Estimate[A], len(methods))
	all := make([]figure.Limit, 0, MostLimits*len(methods))
	for i := range methods {
		m, from := &methods[i], len(all)
		all = m.Limits(all, x)
		limits := all[from:len(all):len(all)]
		estimates[i] = Estimate[A]{m.ID, m.Compute(x), limits, figure.AllIn(limits)}
	}
	return estimates
}

// Spread returns the lowest and highest Measure [W/(m2 K)] or [Pa] of the estimates in range, and how many
// there are; with none, zeros.
//
// Valid: any estimates of the same bank and flow.
// Source: the correlations in range.
func Spread[A Answer](estimates []Estimate[A]) (low, high float64, n int) {
	for _, v := range estimates {
		if !v.InRange {
			continue
		}
		x := v.Answer.Measure()
		if n == 0 {
			low, high = x, x
		}
		low, high = min(low, x), max(high, x)
		n++
	}
	return low, high, n
}
