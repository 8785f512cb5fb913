package plots

import (
	"math"

	"finwright/core/report"
	"finwright/core/units"
)

// Axes are those of a plot as the page shows them. They hold while designs are compared: they widen for a curve that leaves them and do not
// follow one that shrinks. The page sends those in sight, and none where they are to fit anew.
type Axes struct {
	ID    string       `json:"id"`
	Units units.System `json:"units"`
	Field string       `json:"field"` // along x
	X     [2]float64   `json:"x"`
	Y     [][2]float64 `json:"y"` // of each panel
}

// mostHeld bounds the ends of an axis that is to hold.
const mostHeld = 1e12

// Sight returns what is in sight along each field.
func Sight(shown []Axes, system units.System) report.Sight {
	out := report.Sight{}
	for _, a := range shown {
		if a.Units == system {
			out[a.Field] = report.Range{Low: a.X[0], High: a.X[1]}
		}
	}
	return out
}

// of returns the axes of a plot's panels; nil where none are in sight.
func of(c report.Curves, shown []Axes, system units.System) [][2]float64 {
	for _, a := range shown {
		if a.ID == c.ID && a.Units == system && len(a.Y) == len(c.Panels) {
			return a.Y
		}
	}
	return nil
}

// holding widens lo to hi by an axis that holds.
func holding(lo, hi float64, held [2]float64) (float64, float64) {
	if held[0] >= held[1] || lo > hi || math.Max(-held[0], held[1]) > mostHeld {
		return lo, hi
	}
	return math.Min(lo, held[0]), math.Max(hi, held[1])
}
