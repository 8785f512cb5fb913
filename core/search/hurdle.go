package search

import "math"

// Hurdle is what designs that were found first leave to beat. It is found once for a search and handed to all its chunks, so that what they
// leave out hangs on the grid alone.
type Hurdle struct {
	Full  bool          `json:"full"`  // as many hold as the answer lists
	Last  float64       `json:"last"`  // what is wanted first of the last of these, rounded, less is better
	Place int           `json:"place"` // of that one
	Front []HurdlePoint `json:"front"` // some of their front
}

// HurdlePoint is a design of a hurdle: what is wanted of it, rounded, less being better, and its place.
type HurdlePoint struct {
	Worth []float64 `json:"worth"`
	Place int       `json:"place"`
}

// outdoes reports whether a design that is at best so can neither be among the best nor on the front: of those that hold enough come before
// it in what is wanted first, or are its equals in that and come before it in the grid, and one dominates it or is its equal in all and
// comes before it. What comes after at its best does so however it is.
func (b *Hurdle) outdoes(best worth, place int) bool {
	if !b.Full || best[0] < b.Last || best[0] == b.Last && place <= b.Place {
		return false
	}
	for i := range b.Front {
		f := &b.Front[i]
		var at worth
		copy(at[:], f.Worth)
		if at.dominates(&best) || at == best && f.Place < place {
			return true
		}
	}
	return false
}

// atBest returns what is wanted of a design that is no better than v; of what is not known nothing is.
func (s *Search) atBest(v *Values) worth {
	var w worth
	for i, at := range s.wanted {
		switch {
		case !v.Known(at):
			w[i] = math.Inf(-1)
		case Measures[at].More:
			w[i] = -rounded(v.SI[at])
		default:
			w[i] = rounded(v.SI[at])
		}
	}
	return w
}

// How much a start looks at.
const (
	firstPlaces = 300  // evenly over the grid
	mostSights  = 1500 // places in all, where nothing else is asked: twice as many where several things are wanted, since a front is longer than a list
	hurdleFront = 200
)

// Start looks at some designs all over the grid, then at the neighbours of the best of these at whose it has not looked, again and again:
// a hurdle for the search, and a first sight of its answer. What it finds is in the chunks too. It looks at so many designs as sights says, 0
// at as many as a hurdle is worth: a hurdle of other sights is another, with which the same is found.
func (s *Search) Start(sights int) (Hurdle, Part) {
	most := mostSights
	if len(s.wanted) > 1 {
		most *= 2
	}
	if sights <= 0 || sights > most {
		sights = most
	}
	seen := map[int]bool{}
	part := s.part()
	w := newWalker(s, Hurdle{})
	look := func(place int) {
		if seen[place] {
			return
		}
		seen[place] = true
		if cut, _ := w.visit(place); cut == none {
			if f, cut := w.rate(); cut == none {
				part.take(f)
			}
		}
	}
	first := min(s.count, firstPlaces, sights)
	for i := range first {
		look(i * s.count / first)
	}
	asked := map[int]bool{}
	for turn := 0; len(seen) < sights; turn++ {
		place, more := s.leading(&part, asked, turn)
		if !more {
			break
		}
		asked[place] = true
		for i := range s.axes {
			at := place / s.block[i] % s.axes[i].size()
			if at > 0 {
				look(place - s.block[i])
			}
			if at+1 < s.axes[i].size() {
				look(place + s.block[i])
			}
		}
	}
	return s.hurdleOf(&part), part
}

// leading returns the place whose neighbours are looked at next: the best one, or, in turn, the first of the front that is left, where
// several things are wanted; more is false where none is left.
func (s *Search) leading(p *Part, asked map[int]bool, turn int) (place int, more bool) {
	lists := [2][]Found{p.Best, p.Front}
	if len(s.wanted) > 1 && turn%4 == 3 {
		p.tidy()
		lists = [2][]Found{p.Front, p.Best}
	}
	for _, list := range lists {
		for i := range list {
			if !asked[list[i].Place] {
				return list[i].Place, true
			}
		}
	}
	return 0, false
}

func (s *Search) hurdleOf(p *Part) Hurdle {
	p.tidy()
	b := Hurdle{Full: len(p.Best) == mostBest, Front: []HurdlePoint{}}
	if b.Full {
		last := &p.Best[mostBest-1]
		b.Last, b.Place = last.worth[0], last.Place
	}
	for _, f := range spread(p.Front, hurdleFront) {
		b.Front = append(b.Front, HurdlePoint{append([]float64{}, f.worth[:len(s.wanted)]...), f.Place})
	}
	return b
}

// spread returns at most so many of a list, evenly.
func spread(list []Found, most int) []Found {
	if len(list) <= most {
		return list
	}
	out := make([]Found, most)
	for i := range out {
		out[i] = list[i*len(list)/most]
	}
	return out
}
