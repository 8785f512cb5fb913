package search

import (
	"finwright/core/design"
	"finwright/core/message"
)

// All is what gives in the search for the nearest design.
const All = "all"

// Range is the must of a problem that leaves out what is beyond a correlation's range: it gives as the others do.
const Range = string(Beyond)

// Gives lists what must hold in a problem, each of which may be asked to give alone: Problem.Give. Where nothing holds it all, the answers
// say which bounds bind: with one that gives some design holds, and by Miss it is told how much of it must give at least. Where no one of
// them helps alone, All tells the design that misses least, all shares together; what is no number is missed by one.
func (p *Problem) Gives() []string {
	var out []string
	for _, c := range cuts[:unrated] {
		_, asked := p.Must[string(c)]
		if asked || string(c) == Range && !p.Outside {
			out = append(out, string(c))
		}
	}
	return out
}

// loosen lets what is asked for give: a bound is missed by as much as must be, what is no number is left out.
func (s *Search) loosen(give string) design.FieldErrors {
	at, bound := Measure(give).Place()
	switch {
	case give == "":
	case give == All:
		s.nearest, s.loose = true, ^uint32(0)
	case bound && s.must.states(at):
		s.loose = 1 << at
	case give == Limits && s.must.limits:
		s.must.limits = false
	case give == Line && s.must.line != "":
		s.must.line = ""
	case give == Range && !s.must.outside:
		s.must.outside = true
	default:
		return design.FieldErrors{{Field: "give", Message: message.New("search.no_must", "text", give)}}
	}
	if s.loose != 0 {
		s.wanted = []int{miss}
	}
	return nil
}

// gives reports whether the bound at a place, or a cut, may be missed.
func (s *Search) gives(at int) bool { return s.loose>>at&1 == 1 }
