package shop

import (
	"math"

	"finwright/core/units"
)

// Weld is how a line welds strip to the tube; the zero value where it does not, or where the shop does not say.
type Weld struct {
	Power   units.Power       // that the generator gives
	Heat    units.HeatPerArea // taken by the welded edge
	Restart units.Duration    // at a joint, beside the change of the coil
	Edge    []EdgeSpeed
	Preheat []Preheat
}

// EdgeSpeed is the greatest speed along the edge at which strip of a metal and thickness still welds soundly.
type EdgeSpeed struct {
	Metal string
	Strip units.Length
	Speed units.Speed
}

// Preheat is how long a tube of a metal is heated before its fins are welded on, and what that uses up.
type Preheat struct {
	Metal string // of the tube
	Time  units.Duration
	Cost  units.Money
}

// PreheatOf returns how tubes of a metal are heated first, the zero value where they are not.
func (w *Weld) PreheatOf(metal string) Preheat {
	for _, p := range w.Preheat {
		if p.Metal == metal {
			return p
		}
	}
	return Preheat{}
}

// Known reports whether the shop says how it welds.
func (w *Weld) Known() bool { return w.Power > 0 }

// EdgeSpeed returns the greatest speed [m/s] along the edge of strip: between two thicknesses of the table in proportion, beyond
// its ends that of the end; ok is false if the table does not have the metal.
//
// Valid: any thickness.
// Source: the shop's own trials.
func (w *Weld) EdgeSpeed(metal string, strip units.Length) (v units.Speed, ok bool) {
	var below, above *EdgeSpeed
	for i := range w.Edge {
		e := &w.Edge[i]
		if e.Metal != metal {
			continue
		}
		if e.Strip <= strip && (below == nil || e.Strip > below.Strip) {
			below = e
		}
		if e.Strip >= strip && (above == nil || e.Strip < above.Strip) {
			above = e
		}
	}
	switch {
	case below == nil && above == nil:
		return 0, false
	case below == nil:
		return above.Speed, true
	case above == nil || above.Strip == below.Strip:
		return below.Speed, true
	}
	share := units.Speed((strip - below.Strip) / (above.Strip - below.Strip))
	return below.Speed + share*(above.Speed-below.Speed), true
}

// GeneratorSpeed returns the speed [m/s] along the edge that the generator has power for.
//
//	v = P / (q t)
//
// Valid: strip > 0, where the shop says how it welds.
// Source: what the generator gives goes into the welded edge, of the strip's thickness; q from the shop's own runs.
func (w *Weld) GeneratorSpeed(strip units.Length) units.Speed {
	return units.Speed(float64(w.Power) / (float64(w.Heat) * float64(strip)))
}

// WeldTurn returns the length [m] of edge that a turn welds.
//
//	l = pi d
//
// Valid: any.
// Source: strip stands on the tube.
func WeldTurn(od units.Length) units.Length { return math.Pi * od }
