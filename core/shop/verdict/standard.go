package verdict

import (
	"math"

	"finwright/core/shop"
	"finwright/core/units"
)

// Steps of sizes that can be bought or have rolls. Common practice, no source.
const (
	heightStep = units.Inch / 16
	stripStep  = 0.05e-3 // m
)

// heightAtMost returns the highest fin for which the line has rolls that is no higher than h, else the next sixteenth of an
// inch below it; nought where there is none.
func heightAtMost(p *Pair, h units.Length) units.Length {
	best := units.Length(0)
	if p.Practice != nil {
		for _, t := range p.Practice.Tools {
			if t.Height <= h*(1+shop.Slack) {
				best = max(best, t.Height)
			}
		}
	}
	if best > 0 {
		return best
	}
	return units.Length(math.Floor(float64(h/heightStep)+shop.Slack)) * heightStep
}

// stripAtLeast returns the thinnest strip for which the line has rolls that is no thinner than t, else the next twentieth of a
// millimetre above it.
func stripAtLeast(p *Pair, t units.Length) units.Length {
	best := units.Length(math.Inf(1))
	for _, tool := range p.Practice.Tools {
		if tool.Strip >= t*(1-shop.Slack) {
			best = min(best, tool.Strip)
		}
	}
	if !math.IsInf(float64(best), 1) {
		return best
	}
	return units.Length(math.Ceil(float64(t/stripStep)-shop.Slack)) * stripStep
}

// wallAtLeast returns the thinnest wall of a gauge that is no thinner than w; beyond the gauges it is w.
func wallAtLeast(w units.Length) units.Length {
	best := units.Length(math.Inf(1))
	for n := 1; ; n++ {
		wall, ok := units.BWG(n)
		if !ok {
			break
		}
		if wall >= w*(1-shop.Slack) {
			best = min(best, wall)
		}
	}
	if math.IsInf(float64(best), 1) {
		return roundUp(w)
	}
	return best
}
