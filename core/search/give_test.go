package search

import (
	"maps"
	"math"
	"testing"

	"finwright/core/document"
	"finwright/core/figure"
	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/core/units"
)

// without returns a problem in which something need not hold.
func (p Problem) without(id string) Problem {
	p.Must = maps.Clone(p.Must)
	delete(p.Must, id)
	if p.Outside = p.Outside || id == Range; id == string(Duty) {
		delete(p.Must, Surplus)
	}
	return p
}

// missed returns by what share of its bound an answer misses a number; known is false where it has none.
func (a *answer) missed(p *Problem, m *Meaning, system units.System) (share float64, known bool) {
	only := Problem{Must: map[string]string{string(m.ID): p.Must[string(m.ID)]}, Outside: true}
	if m.ID == Duty {
		for _, id := range []string{Surplus, LowerEnd} {
			if text, ok := p.Must[id]; ok {
				only.Must[id] = text
			}
		}
	}
	has, known := a.figures[m.ID]
	if m.ID == Duty && p.Must[LowerEnd] != "" {
		has, known = a.least, !math.IsNaN(a.least)
	}
	if !known || a.holds(&only, system) {
		return 0, known
	}
	var bound float64
	if m.ID == Ready {
		day, _ := shop.ParseDay(p.Must[string(Ready)])
		bound = float64(day)
	} else {
		parsed, _ := units.Parse(m.Kind, p.Must[string(m.ID)], system)
		bound = parsed.SI
		if surplus, err := units.Parse(units.Percent, p.Must[Surplus], system); err == nil && m.ID == Duty {
			bound *= 1 + surplus.SI
		}
	}
	return math.Abs(has-bound) / bound, true
}

// missedInAll adds up what an answer misses; what is no number, or none, counts as one.
func (a *answer) missedInAll(p *Problem, system units.System) (sum float64) {
	for i := range Measures {
		if _, asked := p.Must[string(Measures[i].ID)]; !asked {
			continue
		}
		share, known := a.missed(p, &Measures[i], system)
		if !known {
			share = 1
		}
		sum += share
	}
	for _, no := range []bool{
		a.outside && !p.Outside, p.Must[Limits] != "" && a.limits != figure.Good,
		p.Must[Line] != "" && a.line == figure.No || p.Must[Line] == Clear && a.line != figure.Good,
	} {
		if no {
			sum++
		}
	}
	return sum
}

// Where nothing holds, what each bound must give is the least by which a design that holds all else misses it, and the nearest is the
// one that misses least together.
func TestWhatMustGive(t *testing.T) {
	c := shop.House()
	tried := map[string]int{}
	proof.Proof{Share: 3, Full: 150, Seed: 72, Alone: true}.Run(t, func(pc *proof.Case) {
		d, p := drawn(pc.Rand, &c)
		if _, err := New(d, p, &c); err != nil {
			return
		}
		answers, _, _ := bruteForce(d, &p, &c)
		for _, give := range append(p.Gives(), All) {
			loose := p
			loose.Give = give
			s, err := New(d, loose, &c)
			if err != nil {
				pc.Fatal(err)
			}
			got := s.Chunk(0, s.Count(), Hurdle{})
			inChunks(pc, s, Hurdle{}, &got)
			want, place := giving(d, &p, give, answers)
			switch {
			case place < 0 && len(got.Best) > 0:
				pc.Errorf("%s gives, and the design at %d holds: %+v", give, got.Best[0].Place, p)
			case place < 0:
			case len(got.Best) == 0 || got.Best[0].Place != place:
				pc.Errorf("%s gives: the design at %d holds, not told by %+v of %+v", give, place, got, p)
			case math.Abs(got.Best[0].Values.SI[miss]-want) > 1e-9*math.Max(1, want):
				pc.Errorf("%s must give %g, not %g", give, want, got.Best[0].Values.SI[miss])
			default:
				tried[give]++
			}
		}
	})
	for _, give := range []string{string(Duty), string(AirDrop), Limits, Line, Range, All} {
		if proof.Long() && tried[give] == 0 {
			t.Errorf("%s never gave", give)
		}
	}
}

// giving returns the place of the design that misses least where something gives, and what it misses; -1 where none holds the rest.
func giving(d document.Document, p *Problem, give string, answers []answer) (least float64, place int) {
	rest, place := p.without(give), -1
	m, bound := Measure(give).Place()
	best := math.Inf(1)
	for _, a := range answers {
		rest.Wanted = nil
		by, ok := 0.0, a.rated
		switch {
		case give == All:
			by = a.missedInAll(p, d.Units)
		case bound:
			by, ok = a.missed(p, &Measures[m], d.Units)
			ok = ok && a.rated && a.holds(&rest, d.Units)
		default:
			rest.Wanted = p.Wanted
			if ok = a.holds(&rest, d.Units); ok {
				by = a.wants(p)[0] // ordered as always
			}
		}
		if ok && rounded(by) < best {
			best, least, place = rounded(by), by, a.place
		}
	}
	if !bound && give != All {
		least = 0
	}
	return least, place
}
