package numeric

import "math"

// Mesh divides the way from 0 to 1 into panels, the same from both ends. A panel of one e-folding leaves an error below rounding
// at its end and of 1e-10 inside it, for f as smooth as T; where T has come to f, panels may be longer.
type Mesh struct{ lengths []float64 }

// MostEven is the rate [-] up to which panels are even, and every digit of what is left of a start is kept. Beyond, they grow away from the ends, so that the work does not grow with the rate.
const MostEven = 64

// slackening is over how many e-foldings panels grow e-fold: as T comes to f by as much, and a panel's error is of ninth order.
const slackening = 9

// NewMesh divides the way for rates [-] up to the given one, where T follows an f that itself followed T so many times over: each
// time keeps the layer at an end alive by another e-folding.
//
// Valid: rate >= 0, layers >= 1. There are at most MostPanels(layers).
func NewMesh(rate float64, layers int) Mesh {
	if rate <= MostEven {
		panels := max(1, int(math.Ceil(rate)))
		m := Mesh{make([]float64, panels)}
		for i := range m.lengths {
			m.lengths[i] = 1 / float64(panels)
		}
		return m
	}
	var half []float64 // in e-foldings
	for x := 0.0; x < rate/2; {
		length := max(1, math.Exp((x-float64(layers))/slackening))
		if x+1.5*length > rate/2 { // no sliver in the middle
			length = rate/2 - x
		}
		half = append(half, length/rate)
		x += length
	}
	m := Mesh{make([]float64, 2*len(half))}
	for i, length := range half {
		m.lengths[i], m.lengths[2*len(half)-1-i] = length, length
	}
	return m
}

// MostPanels bounds the panels of a mesh at any rate.
func MostPanels(layers int) int { return max(MostEven, 2*(layers+2*slackening)) }

// Places returns the points s at which f and T are sampled, and the weights with which samples add up to a mean.
func (m Mesh) Places() (places, weights []float64) {
	places, weights = make([]float64, 0, len(m.lengths)*stages), make([]float64, 0, len(m.lengths)*stages)
	from := 0.0
	for _, length := range m.lengths {
		for i := range stages {
			places = append(places, from+collocation.points[i]*length)
			weights = append(weights, collocation.weights[i]*length)
		}
		from += length
	}
	return places, weights
}
