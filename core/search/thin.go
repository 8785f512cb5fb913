package search

import "math"

// Thin returns the front with at most mostFront points, and the share [-] by which points that stand for one another may differ in what
// is wanted; 0 where it is whole. Points are told apart by a grid of as many binary digits of each number as leave no more, and of
// those in one cell the first stays. It is the last thing that is done to an answer: a front that was thinned merges no more.
func (p *Part) Thin() (front []Found, share float64) { return thin(p.Front, mostFront) }

// finest is how many binary digits behind the first the finest grid tells apart.
const finest = 20

func thin(front []Found, most int) ([]Found, float64) {
	if len(front) <= most {
		return front, 0
	}
	var kept []Found
	digits := finest
	for ; digits >= 0; digits-- {
		kept = kept[:0]
		cells := make(map[[mostWanted]uint64]struct{}, most)
		for _, f := range front {
			var cell [mostWanted]uint64
			for i, x := range f.worth {
				cell[i] = math.Float64bits(x) >> (52 - digits)
			}
			if _, taken := cells[cell]; taken {
				continue
			}
			if len(kept) == most {
				break
			}
			cells[cell] = struct{}{}
			kept = append(kept, f)
		}
		if len(cells) < most || digits == 0 {
			break
		}
	}
	return kept, math.Ldexp(1, -digits)
}
