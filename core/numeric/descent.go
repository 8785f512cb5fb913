package numeric

import "math"

// Descent seeks where a falling function crosses nought, one question at a time, for answers that are costly and that
// follow from one another. Begin with its Low and High, between which the function must cross.
// It cannot go round: each step halves what is left, of the answer or of the bracket.
//
// Source: secant steps inside a bracket, else halving.
type Descent struct {
	Low, High float64
	x, f      float64 // the last answer
	any       bool
}

// Next takes the answer f at x, both in one unit [any], and returns where to ask next.
//
// Valid: x between Low and High.
// Source: see Descent.
func (d *Descent) Next(x, f float64) float64 {
	if f > 0 {
		d.Low = x
	} else {
		d.High = x
	}
	next := x + f // of a function that falls about as fast as x rises
	if d.any {
		next = x - f*(x-d.x)/(f-d.f)
		if math.Abs(f) > math.Abs(d.f)/2 {
			next = d.Low // no progress: halve
		}
	}
	d.x, d.f, d.any = x, f, true
	if !(next > d.Low && next < d.High) {
		next = d.Low + (d.High-d.Low)/2
	}
	return next
}
