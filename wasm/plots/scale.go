package plots

import (
	"math"

	"finwright/core/report"
)

// scale is an axis from end to end, with the ticks on it and their texts.
type scale struct {
	low, high float64
	ticks     []float64
	texts     []string
}

// Most ticks on an axis, such that their numbers stay apart in the narrowest plot.
const (
	ticksAcross = 6
	ticksUp     = 5
)

// round is a scale with round ends that holds lo to hi.
func round(lo, hi float64, n int) scale {
	if lo > hi { // not a single value: the axis still stands
		lo, hi = 0, 1
	}
	s := report.NiceRange(lo, hi, n)
	return scale{s.Low, s.High, s.Ticks(), s.Texts()}
}

// filled is a scale that ends where its samples do, with round ticks between.
func filled(lo, hi float64, n int) scale {
	s := round(lo, hi, n)
	if lo >= hi {
		return s
	}
	out := scale{low: lo, high: hi}
	for i, v := range s.ticks {
		if v >= lo && v <= hi {
			out.ticks, out.texts = append(out.ticks, v), append(out.texts, s.texts[i])
		}
	}
	return out
}

// at is the place on the scale that is a share of its length from its low end.
func (s scale) at(share float64) float64 { return s.low + share*(s.high-s.low) }

// share is the inverse of at.
func (s scale) share(v float64) float64 { return (v - s.low) / (s.high - s.low) }

// reach widens lo to hi by the values that are finite.
func reach(lo, hi float64, values []float64) (float64, float64) {
	for _, v := range values {
		if !math.IsNaN(v) && !math.IsInf(v, 0) {
			lo, hi = math.Min(lo, v), math.Max(hi, v)
		}
	}
	return lo, hi
}
