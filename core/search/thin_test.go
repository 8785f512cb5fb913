package search

import (
	"math"
	"testing"

	"finwright/core/proof"
)

// cloud makes designs of which many are on the front: what is wanted falls on a bowl, and they lie on it or a little above.
func cloud(c *proof.Case, n, wanted int) []Found {
	list := make([]Found, n)
	for i := range list {
		f := &list[i]
		f.Place = i
		x, y := c.Rand.Float64(), c.Rand.Float64()
		above := 1 + 0.1*float64(c.Rand.IntN(3))
		f.worth = worth{rounded(1 + x), 0, 0}
		if wanted > 1 {
			f.worth[1] = rounded(-above * (3 - 1/(0.1+x+y/10)))
		}
		if wanted > 2 {
			f.worth[2] = rounded(above * (4 - x*x - y))
		}
		if c.Rand.IntN(20) == 0 && i > 0 {
			f.worth = list[i-1].worth
		}
	}
	return list
}

// No point of a front is dominated, and what is not on it is dominated or equal to one that is and comes before.
func TestFrontIsTheFront(t *testing.T) {
	proof.Proof{Share: 20, Full: 2000, Seed: 73}.Run(t, func(c *proof.Case) {
		list := cloud(c, 1+c.Rand.IntN(200), 1+c.Rand.IntN(3))
		front := frontOf(append([]Found(nil), list...))
		on := map[int]bool{}
		for _, f := range front {
			on[f.Place] = true
		}
		for i := range list {
			covered := false
			for j := range list {
				if list[j].worth.dominates(&list[i].worth) || list[j].worth == list[i].worth && list[j].Place < list[i].Place {
					covered = true
				}
			}
			if covered == on[list[i].Place] {
				c.Errorf("of %d, %v: covered %v, on the front %v", len(list), list[i].worth, covered, on[list[i].Place])
			}
		}
	})
}

// A front that is too long keeps points that stand for all others, and as many as it may.
func TestFrontIsThinned(t *testing.T) {
	proof.Proof{Share: 3, Full: 50, Seed: 74}.Run(t, func(c *proof.Case) {
		front := frontOf(cloud(c, 3000, 3))
		most := 1 + len(front)/(2+c.Rand.IntN(5))
		kept, share := thin(front, most)
		if len(kept) > most || share == 0 || len(kept) < most/16 {
			c.Errorf("%d of %d points are kept, at most %d, by %g", len(kept), len(front), most, share)
		}
		for _, f := range front {
			near := false
			for _, k := range kept {
				apart := 0.0
				for i := range f.worth {
					apart = max(apart, math.Abs(f.worth[i]-k.worth[i])/math.Abs(f.worth[i]))
				}
				near = near || apart <= share
			}
			if !near {
				c.Fatalf("nothing stands for %v within %g", f.worth, share)
			}
		}
		if whole, share := thin(front, len(front)); len(whole) != len(front) || share != 0 {
			c.Error("what is short enough is thinned")
		}
	})
}
