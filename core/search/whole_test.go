package search

import (
	"slices"
	"sync"
	"testing"

	"finwright/core/document"
	"finwright/core/proof"
	"finwright/core/shop"
)

// spreadOver answers a search with so many workers that take chunks as they are free, and merges as they come.
func spreadOver(s *Search, workers, chunk int, hurdle Hurdle) Part {
	froms, parts := make(chan int), make(chan Part)
	var working sync.WaitGroup
	for range workers {
		working.Go(func() {
			for from := range froms {
				parts <- s.Chunk(from, min(from+chunk, s.Count()), hurdle)
			}
		})
	}
	go func() {
		for from := 0; from < s.Count(); from += chunk {
			froms <- from
		}
		close(froms)
		working.Wait()
		close(parts)
	}()
	whole := Part{}
	for p := range parts {
		whole = Merge(whole, p)
	}
	return whole
}

// The answer is the same for any number of workers and any size of chunks, and the hurdle of a start leaves out nothing of it, though it
// leaves out most.
func TestStartLeavesTheAnswer(t *testing.T) {
	c := shop.House()
	p := question(false)
	p.Axes = slices.DeleteFunc(p.Axes, func(a Axis) bool { return a.Field == "tube_od" || a.Field == "passes" || a.Field == "fin_height" })
	p.Must["duty"], p.Must["air_drop"] = "800 kW", "150 Pa"
	if !proof.Long() {
		p.Axes[0] = Axis{Field: "fin_pitch", Texts: []string{"9 fpi", "10 fpi"}}
	}
	for _, wanted := range [][]Measure{{Price}, {Duty, Mass}, {Price, Duty, FanPower}} {
		p.Wanted = wanted
		s, err := New(document.New(), p, &c)
		if err != nil {
			t.Fatal(err)
		}
		hurdle, first := s.Start(900 * len(wanted))
		whole := s.Chunk(0, s.Count(), Hurdle{})
		if len(first.Best) == 0 || whole.Passed < 2*mostBest || !hurdle.Full {
			t.Fatalf("%d of %d pass, %d at first", whole.Passed, whole.Seen, len(first.Best))
		}
		one := spreadOver(s, 1, s.Count(), hurdle)
		if !slices.Equal(one.Best, whole.Best) || !slices.Equal(one.Front, whole.Front) || one.Cuts[outdone] < s.Count()/20 {
			t.Errorf("%v: with a hurdle the answer is another, or it leaves out %d of %d alone", wanted, one.Cuts[outdone], s.Count())
		}
		for workers := 1; workers <= 3; workers++ {
			for _, chunk := range []int{97, 1000} {
				if !proof.Long() && (workers != 2 || chunk != 97) {
					continue
				}
				got := spreadOver(s, workers, chunk, hurdle)
				if !slices.Equal(got.Best, one.Best) || !slices.Equal(got.Front, one.Front) || got.Cuts != one.Cuts || got.Passed != one.Passed || got.Seen != s.Count() {
					t.Errorf("%v: %d workers with chunks of %d find another answer", wanted, workers, chunk)
				}
			}
		}
	}
}

// Of a million designs of which nothing is refused and three things are wanted most are not rated, though thousands are on the front: of
// every thousandth the hurdle leaves at most a quarter. With nothing known of the front all would be.
func TestThreeWantedAreMostlyUnrated(t *testing.T) {
	c := shop.House()
	p := question(true)
	p.Must, p.Outside, p.Wanted = nil, true, []Measure{Price, Duty, FanPower}
	s, err := New(document.New(), p, &c)
	if err != nil {
		t.Fatal(err)
	}
	hurdle, first := s.Start(0)
	if len(first.Front) < 300 || len(hurdle.Front) > hurdleFront {
		t.Fatalf("%d on the front at first, %d of the hurdle", len(first.Front), len(hurdle.Front))
	}
	left := func(h Hurdle) (rated, seen int) {
		w := newWalker(s, h)
		for place := 17; place < s.Count(); place += 997 {
			cut, _ := w.visit(place)
			if seen++; cut == none {
				rated++
			}
		}
		return rated, seen
	}
	if rated, seen := left(hurdle); rated > seen/4 {
		t.Errorf("%d of %d would be rated", rated, seen)
	}
	if rated, seen := left(Hurdle{}); rated != seen {
		t.Errorf("without a hurdle %d of %d would be", rated, seen)
	}
}
