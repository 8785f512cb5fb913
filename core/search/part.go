package search

// mostBest is how many designs an answer lists, mostFront how many points of its front.
const (
	mostBest  = 200
	mostFront = 20_000
)

// Part is the answer for some places of a grid. Merged with those of the other places, in whatever order, it is the answer for all.
type Part struct {
	Seen   int
	Passed int           // hold all that must hold
	Cuts   [cutCount]int // by place in the list of cuts
	Best   []Found       // by what is wanted first, mostBest at most
	Front  []Found       // that no other dominates in all that is wanted

	loose int // of Front: found since it was last sorted out
}

func (s *Search) part() Part { return Part{} }

// Chunk looks at the places from one on up to another.
func (s *Search) Chunk(from, to int, hurdle Hurdle) Part {
	p, w := s.part(), newWalker(s, hurdle)
	for place := from; place < to; {
		cut, span := w.visit(place)
		span = min(span, to-place)
		p.Seen += span
		var f Found
		if cut == none {
			f, cut = w.rate()
		}
		if cut == none {
			p.Passed++
			p.take(f)
		} else {
			p.Cuts[cut] += span
		}
		place += span
	}
	p.tidy()
	return p
}

// take adds a design that holds.
func (p *Part) take(f Found) {
	p.keep(f)
	p.Front = append(p.Front, f)
	if p.loose++; p.loose > max(1000, len(p.Front)/2) {
		p.tidy()
	}
}

// keep puts a design among the best, if it is one.
func (p *Part) keep(f Found) {
	at := firstWhere(len(p.Best), func(i int) bool { return before(&p.Best[i], &f) >= 0 })
	if at == mostBest || at < len(p.Best) && p.Best[at].Place == f.Place {
		return
	}
	if len(p.Best) < mostBest {
		p.Best = append(p.Best, f)
	}
	copy(p.Best[at+1:], p.Best[at:])
	p.Best[at] = f
}

// Counts returns how many designs each cut left out, where it left out any.
func (p *Part) Counts() map[string]int {
	out := map[string]int{}
	for i, n := range p.Cuts {
		if n > 0 {
			out[string(cuts[i])] = n
		}
	}
	return out
}

// Restore makes a part of this search of what was written of one; ok is false where it is none.
func (s *Search) Restore(seen, passed int, counts map[string]int, best, front []Found) (p Part, ok bool) {
	p = Part{Seen: seen, Passed: passed, Front: front}
	found := 0
	for i, c := range cuts {
		if n, has := counts[string(c)]; has {
			p.Cuts[i], found = n, found+1
		}
	}
	for _, list := range [][]Found{best, front} {
		for i := range list {
			f := &list[i]
			var known bool
			if f.worth, known = s.worthOf(&f.Values); !known || f.Place < 0 || f.Place >= s.count {
				return p, false
			}
		}
	}
	for _, f := range best {
		p.keep(f)
	}
	p.Front = frontOf(front)
	return p, found == len(counts)
}

// tidy sorts the front out.
func (p *Part) tidy() {
	if p.loose > 0 {
		p.Front, p.loose = frontOf(p.Front), 0
	}
}

// Merge returns the answer for the places of both.
func Merge(a, b Part) Part {
	a.Seen, a.Passed = a.Seen+b.Seen, a.Passed+b.Passed
	for i, n := range b.Cuts {
		a.Cuts[i] += n
	}
	a.Best = append([]Found{}, a.Best...)
	for _, f := range b.Best {
		a.keep(f)
	}
	a.Front = frontOf(append(append([]Found{}, a.Front...), b.Front...))
	return a
}
