package units

import "math"

// steps holds, per kind, the step in which a dimension is pulled: what a
// drawing would state, in the unit that the system shows. Kinds without an
// entry are not snapped.
var steps = map[Kind]struct{ si, us float64 }{
	Diameter:  {0.1, 1.0 / 64},
	Wall:      {0.01, 0.001},
	Height:    {0.1, 1.0 / 64},
	Thickness: {0.005, 0.0002},
	FinCount:  {1, 0.05},
	Distance:  {1, 1.0 / 16},
	Film:      {0.5, 0.1},
	Temp:      {1, 1},
	Count:     {1, 1},
}

func step(k Kind, s System) float64 {
	if s == US {
		return steps[k].us
	}
	return steps[k].si
}

// Snap rounds an SI value to the kind's step in system s, but never to nought.
func Snap(k Kind, si float64, s System) float64 {
	d := step(k, s)
	if d == 0 {
		return si
	}
	n := math.Round(In(k, si, s) / d)
	if n == 0 && si > 0 {
		n = 1
	}
	return Out(k, n*d, s)
}

// Step moves an SI value by n steps, onto the grid of steps.
func Step(k Kind, si float64, n int, s System) float64 {
	d := step(k, s)
	if d == 0 {
		return si
	}
	return Out(k, (math.Round(In(k, si, s)/d)+float64(n))*d, s)
}

// StepSize returns the step of kind k in the unit that system s shows, 0 if it has none.
func StepSize(k Kind, s System) float64 { return step(k, s) }

// Out converts x in the unit that system s shows to SI.
func Out(k Kind, x float64, s System) float64 {
	if u, ok := k.in(s); ok {
		return x*u.factor + u.offset
	}
	return x
}
