package finned

import (
	"math"
	"strconv"

	"finwright/core/message"
)

// ladder is the mantissas of the recommended scales, 1:1, 1:2, 1:5, 1:10 and so on, and enlarged alike.
//
// Source: ISO 5455, from memory.
var ladder = []float64{1, 2, 5}

// below returns the ladder's greatest number not above x. Valid: x > 0.
func below(x float64) float64 {
	decade := math.Pow(10, math.Floor(math.Log10(x)))
	best := decade
	for _, m := range ladder {
		if m*decade <= x*(1+1e-9) {
			best = m * decade
		}
	}
	return best
}

// above returns the ladder's least number not below x.
func above(x float64) float64 {
	b := below(x)
	if b >= x*(1-1e-9) {
		return b
	}
	decade := math.Pow(10, math.Floor(math.Log10(b)+1e-9))
	for _, m := range ladder {
		if m*decade > b*(1+1e-9) {
			return m * decade
		}
	}
	return 10 * decade
}

// snapScale returns the greatest usual scale not above s: n : 1 or 1 : n.
func snapScale(s float64) float64 {
	if s >= 1 {
		return below(s)
	}
	return 1 / above(1/s)
}

// scaleText writes a scale as drawings state it.
func scaleText(c message.Catalogue, s float64) string {
	n, key := s, "drawing.enlarged"
	if s < 1 {
		n, key = 1/s, "drawing.reduced"
	}
	return c.Render(message.New(key, "n", c.Numbers.Write(strconv.FormatFloat(n, 'g', 3, 64))), "")
}

// roundBelow returns the greatest of 1, 2, 5, 10... not above x, for a scale bar.
func roundBelow(x float64) float64 {
	decade := math.Pow(10, math.Floor(math.Log10(x)))
	for _, m := range []float64{5, 2} {
		if m*decade <= x {
			return m * decade
		}
	}
	return decade
}

func shortest(x float64) string { return strconv.FormatFloat(x, 'g', 6, 64) }
