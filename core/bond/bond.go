// Package bond says how much the joint between fin and tube resists heat, on
// which area, and when winding tension no longer holds it closed.
//
// Everything is bare SI float64; temperatures are degrees Celsius.
package bond

import (
	"math"

	"finwright/core/tube"
)

// ContactArea returns the area [m2] in which fin and tube meet, per metre of
// finned tube: the whole tube under a foot or muff, both walls and the floor of
// a groove, else the edge of the strip.
//
//	foot, muff  pi d
//	groove      n pi d (2 g + t)
//	edge, weld  n pi d t
//
// od [m], count [1/m] fins per metre, strip [m], groove [m] depth (0 if none).
// Valid: count x strip < 1; groove small against the diameter.
// Source: plane geometry.
func ContactArea(c tube.Contact, od, count, strip, groove float64) float64 {
	switch c {
	case tube.GrooveWall:
		return count * math.Pi * od * (2*groove + strip)
	case tube.StripEdge:
		return count * math.Pi * od * strip
	case tube.WholeTube:
		return math.Pi * od
	}
	panic("bond: no contact " + string(c))
}

// Refer carries a resistance [m2 K/W] from one reference area [m2] to another
// of the same tube: the same heat crosses both, so resistance over area is kept.
//
// Valid: areas > 0.
// Source: definition of a resistance.
func Refer(resistance, from, to float64) float64 { return resistance * to / from }

// OnContact carries a resistance on the bare area pi d L [m2 K/W] to the area in contact.
//
// od [m] and contactArea [m2 per metre] as for ContactArea.
// Valid: contactArea > 0.
// Source: Refer.
func OnContact(resistance, od, contactArea float64) float64 {
	return Refer(resistance, math.Pi*od, contactArea)
}
