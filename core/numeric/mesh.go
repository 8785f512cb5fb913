package numeric

import "math"

// Mesh divides the way from 0 to 1 into panels, the same from both ends. A panel of one e-folding leaves an error below rounding
// at its end and of 1e-10 inside it, for f as smooth as T; where T has come to f, panels may be longer.
type Mesh struct{ lengths []float64 }

// MostEven is the rate [-] up to which panels are even, and every digit of what is left of a start is kept. Beyond, they grow away from the ends, so that the work does not grow with the rate.
const MostEven = 64

// slackening is over how many e-foldings panels grow e-fold: as T comes to f by as much, and a panel's error is of ninth order.
const slackening = 9

// Divide makes the mesh one for rates [-] up to the given one, where T follows an f that itself followed T so many times over:
// each time keeps the layer at an end alive by another e-folding.
//
// Valid: rate >= 0, layers >= 1. There are at most MostPanels(layers).
func (m *Mesh) Divide(rate float64, layers int) {
	m.lengths = m.lengths[:0]
	if rate <= MostEven {
		panels := max(1, int(math.Ceil(rate)))
		for range panels {
			m.lengths = append(m.lengths, 1/float64(panels))
		}
		return
	}
	for x := 0.0; x < rate/2; { // in e-foldings, to the middle
		length := max(1, math.Exp((x-float64(layers))/slackening))
		if x+1.5*length > rate/2 { // no sliver in the middle
			length = rate/2 - x
		}
		m.lengths = append(m.lengths, length/rate)
		x += length
	}
	for i := len(m.lengths) - 1; i >= 0; i-- {
		m.lengths = append(m.lengths, m.lengths[i])
	}
}

// MostPanels bounds the panels of a mesh at any rate.
func MostPanels(layers int) int { return max(MostEven, 2*(layers+2*slackening)) }

// Places returns at how many points f and T are sampled.
func (m *Mesh) Places() int { return len(m.lengths) * stages }

// Fill writes those points s, and the weights with which samples add up to a mean.
func (m *Mesh) Fill(places, weights []float64) {
	from := 0.0
	for n, length := range m.lengths {
		for i := range stages {
			places[n*stages+i] = from + collocation.points[i]*length
			weights[n*stages+i] = collocation.weights[i] * length
		}
		from += length
	}
}
