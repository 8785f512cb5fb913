package report

import (
	"math"
	"strconv"
)

// Scale is an axis with round ends and round ticks.
type Scale struct {
	Low  float64
	High float64
	Step float64

	decimals int
}

// ladder holds the steps of an axis within one power of ten, and the decimals each needs more than that power.
var ladder = []struct {
	step     float64
	decimals int
}{{1, 0}, {2, 0}, {2.5, 1}, {5, 0}}

// mostDecades bounds the search for a step: ends that are no round numbers take one step more than fit.
const mostDecades = 2

// NiceRange returns the narrowest scale of at most n steps that holds lo to hi.
// Valid: finite lo <= hi, n >= 1.
func NiceRange(lo, hi float64, n int) Scale {
	if n < 1 || !(lo <= hi) || math.IsInf(lo, 0) || math.IsInf(hi, 0) {
		panic("report: no such range")
	}
	if hi-lo <= 1e-9*math.Max(math.Abs(lo), math.Abs(hi)) {
		half := math.Max(math.Abs(lo)/10, 1e-6)
		lo, hi = lo-half, hi+half
	}
	const hair = 1e-9 // of a step, so that an end on a tick is not pushed to the next one
	least := int(math.Floor(math.Log10((hi - lo) / float64(n))))
	for power := least; power <= least+mostDecades; power++ {
		for _, rung := range ladder {
			step := rung.step * math.Pow(10, float64(power))
			first, last := math.Floor(lo/step+hair), math.Ceil(hi/step-hair)
			if last-first <= float64(n) {
				s := Scale{decimals: max(0, rung.decimals-power)}
				s.Low, s.High, s.Step = s.round(first*step), s.round(last*step), s.round(step)
				return s
			}
		}
	}
	panic("report: no scale holds the range")
}

// round clears the last binary digits, so that the third tick of 0.1 is 0.3.
func (s Scale) round(v float64) float64 {
	clean, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'f', s.decimals, 64), 64)
	return clean + 0 // no negative nought
}

// Ticks lists the places that carry a number, both ends included.
func (s Scale) Ticks() []float64 {
	n := int(math.Round((s.High - s.Low) / s.Step))
	ticks := make([]float64, n+1)
	for i := range ticks {
		ticks[i] = s.round(s.Low + float64(i)*s.Step)
	}
	return ticks
}

// Texts prints the ticks, all with as many decimals as the step needs.
func (s Scale) Texts() []string {
	ticks := s.Ticks()
	texts := make([]string, len(ticks))
	for i, v := range ticks {
		texts[i] = strconv.FormatFloat(v, 'f', s.decimals, 64)
	}
	return texts
}

// Levels returns round values strictly between lo and hi that part it into at most n bands.
func Levels(lo, hi float64, n int) []float64 {
	var inner []float64
	for _, v := range NiceRange(lo, hi, n).Ticks() {
		if v > lo && v < hi {
			inner = append(inner, v)
		}
	}
	return inner
}

// Absent is the band of a sample that has no value.
const Absent = 255

// BandIndex returns how many of the rising levels v reaches, or Absent.
func BandIndex(levels []float64, v float64) byte {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return Absent
	}
	band := byte(0)
	for _, level := range levels {
		if v >= level {
			band++
		}
	}
	return band
}

// extent returns the least and the greatest finite value, or 0, 0 where there is none.
func extent(values []float64) (lo, hi float64) {
	lo, hi = math.Inf(1), math.Inf(-1)
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			continue
		}
		lo, hi = math.Min(lo, v), math.Max(hi, v)
	}
	if lo > hi {
		return 0, 0
	}
	return lo, hi
}
