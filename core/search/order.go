package search

import (
	"cmp"
	"math"

	"finwright/core/numeric"
)

// rounded returns a number rounded to 31 binary digits, a part in a thousand million: designs whose numbers differ by less are equal in
// them. Rounding keeps the order of numbers, so a bound stays one.
func rounded(x float64) float64 {
	const spare = 52 - 30 // of the binary digits behind the first
	if x == 0 || math.IsInf(x, 0) {
		return x
	}
	return math.Float64frombits((math.Float64bits(x) + 1<<(spare-1)) &^ (1<<spare - 1))
}

// mostWanted is how many measures may be wanted.
const mostWanted = 3

// worth is what is wanted of a design, rounded, each so that less is better. Of fewer measures the rest are nought.
type worth [mostWanted]float64

// dominates reports whether a is nowhere worse than b and better in one.
func (a *worth) dominates(b *worth) bool {
	better := false
	for i := range a {
		if a[i] > b[i] {
			return false
		}
		better = better || a[i] < b[i]
	}
	return better
}

// Found is a design that holds all that must hold.
type Found struct {
	Place   int // in the grid
	Outside bool
	Values  Values

	worth worth
}

// before orders designs: by the measure that is wanted first, then by place in the grid.
func before(a, b *Found) int {
	if c := cmp.Compare(a.worth[0], b.worth[0]); c != 0 {
		return c
	}
	return cmp.Compare(a.Place, b.Place)
}

// inFront orders designs for their front: by all that is wanted, then by place.
func inFront(a, b *Found) int {
	for i := range a.worth {
		if c := cmp.Compare(a.worth[i], b.worth[i]); c != 0 {
			return c
		}
	}
	return cmp.Compare(a.Place, b.Place)
}

// frontOf returns the designs that no other dominates, sorted by inFront; of equals the first in the grid stands for all.
//
// Sorted so, a design can be dominated by those before it alone, and among these by one of the staircase of second and third
// measures that none before has undercut.
func frontOf(list []Found) []Found {
	list = numeric.Sorted(list, inFront)
	front := make([]Found, 0, min(len(list), 64))
	var stairs [][2]float64 // second measure rising, third falling
	for i := range list {
		second, third := list[i].worth[1], list[i].worth[2]
		// Of the steps whose second is no greater the last has the least third.
		at := firstWhere(len(stairs), func(i int) bool { return stairs[i][0] > second })
		if at > 0 && stairs[at-1][1] <= third {
			continue
		}
		front = append(front, list[i])
		if at > 0 && stairs[at-1][0] == second {
			at--
		}
		to := at
		for to < len(stairs) && stairs[to][1] >= third {
			to++
		}
		if to == at {
			stairs = append(stairs, [2]float64{})
			copy(stairs[at+1:], stairs[at:])
			to++
		}
		stairs[at] = [2]float64{second, third}
		stairs = append(stairs[:at+1], stairs[to:]...)
	}
	return front
}

// firstWhere returns the first of n places at which something holds that holds at all places after it, n where it holds at none.
func firstWhere(n int, holds func(i int) bool) int {
	from, to := 0, n
	for from < to {
		if middle := (from + to) / 2; holds(middle) {
			to = middle
		} else {
			from = middle + 1
		}
	}
	return from
}
