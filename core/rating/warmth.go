package rating

import "math"

// warmth is the heat capacity [W/K] of the stream inside as the last rounds had it, by which its mean temperature is found: a
// table of a user's own may let it fall or rise steeply.
type warmth struct{ celsius, capacity, slope float64 }

// take takes what a round had.
func (w *warmth) take(celsius, capacity float64) {
	if by := celsius - w.celsius; w.capacity > 0 && math.Abs(by) > apart {
		w.slope = (capacity - w.capacity) / by
	}
	w.celsius, w.capacity = celsius, capacity
}

// mean returns the temperature [C] at which the stream has given half a heat [W], with the capacity that it has there.
//
// Source: one step of Newton.
func (w *warmth) mean(inlet, half float64) float64 {
	next := inlet - half/w.capacity
	bent := half * w.slope / (w.capacity * w.capacity)
	return w.celsius + (next-w.celsius)/(1-min(bent, mostBent))
}

const (
	apart    = 1e-3 // [K] between temperatures of which a slope can be taken
	mostBent = 0.5  // [-] that a step is drawn out to twice, at most
)
