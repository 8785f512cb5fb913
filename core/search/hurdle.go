package search

import (
	"cmp"
	"math"

	"finwright/core/numeric"
)

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

// barrier is a hurdle as a walker holds designs to it.
type barrier struct {
	full  bool
	last  float64
	place int
	front []barrierPoint // rising in what is wanted first
	held  int            // which of the front outdid the design before: mostly it does the next
}

type barrierPoint struct {
	worth worth
	place int
}

func (h *Hurdle) barrier() barrier {
	b := barrier{full: h.Full, last: h.Last, place: h.Place, front: make([]barrierPoint, len(h.Front))}
	for i, f := range h.Front {
		copy(b.front[i].worth[:], f.Worth)
		b.front[i].place = f.Place
	}
	b.front = numeric.Sorted(b.front, func(a, b *barrierPoint) int { return cmp.Compare(a.worth[0], b.worth[0]) })
	return b
}

// outdoes reports whether a design that is at best so can neither be among the best nor on the front: of those that hold enough come before
// it in what is wanted first, or are its equals in that and come before it in the grid, and one dominates it or is its equal in all and
// comes before it. What comes after at its best does so however it is.
func (b *barrier) outdoes(best worth, place int) bool {
	if !b.full || best[0] < b.last || best[0] == b.last && place <= b.place {
		return false
	}
	if b.held < len(b.front) && b.front[b.held].outdoes(&best, place) {
		return true
	}
	for i := range b.front {
		f := &b.front[i]
		if f.worth[0] > best[0] {
			return false
		}
		if f.outdoes(&best, place) {
			b.held = i
			return true
		}
	}
	return false
}

func (f *barrierPoint) outdoes(best *worth, place int) bool {
	return f.worth.dominates(best) || f.worth == *best && f.place < place
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
	mostSights  = 1500 // places in all, where one thing is wanted
	manySights  = 6000 // where several are: a front is longer than a list, and what it leaves unrated is many times what it takes
	hurdleFront = 1000 // points of a front: with all of a longer one little more is left out
)

// Start looks at some designs all over the grid, then at the neighbours of the best of these at whose it has not looked, again and again:
// a hurdle for the search, and a first sight of its answer. What it finds is in the chunks too. It looks at so many designs as sights says, 0
// at as many as a hurdle is worth: a hurdle of other sights is another, with which the same is found.
func (s *Search) Start(sights int) (Hurdle, Part) {
	most := mostSights
	if len(s.wanted) > 1 {
		most = min(manySights, max(2*mostSights, s.count/perSight))
	}
	if sights <= 0 {
		sights = max(firstPlaces, s.count/4) // of a small grid the search itself is as soon done
	}
	sights = min(sights, most)
	b := beginning{s: s, seen: map[int]bool{}, asked: map[int]bool{}, walker: newWalker(s, Hurdle{})}
	first := min(s.count, firstPlaces, sights)
	for i := range first {
		b.look(i * s.count / first)
	}
	if len(s.wanted) > 1 {
		b.scatter(sights / 2)
	}
	b.climb(sights)
	return s.hurdleOf(&b.part), b.part
}

// perSight is how many designs of a large grid there are for each that a start looks at.
const perSight = 64

// beginning is a start on its way.
type beginning struct {
	s      *Search
	walker *walker
	part   Part
	seen   map[int]bool
	asked  map[int]bool // places whose neighbours have been looked at
	front  []Found      // as it was when it was last sorted out
}

func (b *beginning) look(place int) {
	if b.seen[place] {
		return
	}
	b.seen[place] = true
	if cut, _ := b.walker.visit(place); cut == none {
		if f, cut := b.walker.rate(); cut == none {
			b.part.take(f)
		}
	}
}

// sortOut brings the hurdle up to date that a start has of its own: so what it goes on to rate are designs that may be in the answer.
func (b *beginning) sortOut() {
	h := b.s.hurdleOf(&b.part)
	b.walker.hurdle = h.barrier()
}

// often is after how many steps that is done.
const often = 100

// scatter looks at places one golden section of the grid after the other, which leaves no part of it out.
func (b *beginning) scatter(sights int) {
	step := max(1, int(float64(b.s.count)/math.Phi))
	for common(step, b.s.count) > 1 {
		step++
	}
	for i := range min(sights, b.s.count/2) {
		if i%often == 0 {
			b.sortOut()
		}
		b.look(i * step % b.s.count)
	}
}

// common returns the largest number that divides both.
func common(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// climb looks at the neighbours of the best, and where several things are wanted mostly at those of the front, now here and now there on it.
func (b *beginning) climb(sights int) {
	many := len(b.s.wanted) > 1
	for turn := 0; len(b.seen) < sights; turn++ {
		if many && turn%often == 0 {
			b.sortOut()
			b.front = append(b.front[:0], b.part.Front...)
		}
		place, more := b.leading(b.part.Best, 0)
		if many && (turn%4 > 0 || !more) {
			from := math.Mod(float64(turn)*math.Phi, 1) * float64(len(b.front))
			if at, ahead := b.leading(b.front, int(from)); ahead {
				place, more = at, true
			}
		}
		if !more {
			return
		}
		b.ask(place)
	}
}

// leading returns the first place of a list, from one of it on and round, whose neighbours have not been looked at; more is false where
// there is none.
func (b *beginning) leading(list []Found, from int) (place int, more bool) {
	for i := range list {
		if f := &list[(from+i)%len(list)]; !b.asked[f.Place] {
			return f.Place, true
		}
	}
	return 0, false
}

// ask looks at the neighbours of a place.
func (b *beginning) ask(place int) {
	b.asked[place] = true
	for i, block := range b.s.block {
		size := b.s.axes[i].size()
		at := place / block % size
		if at > 0 {
			b.look(place - block)
		}
		if at+1 < size {
			b.look(place + block)
		}
	}
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
