// Package bond says how much the joint between fin and tube resists heat, on
// which area, and when winding tension no longer holds it closed.
//
// Everything is bare SI float64; temperatures are degrees Celsius.
package bond

import (
	"math"

	"finwright/core/material"
	"finwright/core/tube"
)

// Where a default comes from.
var (
	judged = material.Source{Key: "bond.source.judged", Status: material.Judgement}
	ranked = material.Source{Key: "bond.source.ranked", Status: material.Judgement}
	fused  = material.Source{Key: "bond.source.fused", Status: material.Judgement}
)

// Default returns the bond resistance [m2 K/W] of a new tube below its
// temperature limit, on the bare area pi d L. Offer it for editing.
//
// Valid: new tubes, below the limit of the type.
// Source: engineering judgement, editable. Edge-wound and extruded have no figure of their
// own: they are set by their rank among the others.
func Default(t tube.FinType) material.Value {
	switch t {
	case tube.Footed, tube.OverlapFooted:
		return material.Value{SI: 5e-5, Source: judged}
	case tube.KnurledFooted, tube.KnurledOverlap:
		return material.Value{SI: 2e-5, Source: judged}
	case tube.Embedded:
		return material.Value{SI: 1e-5, Source: judged}
	case tube.EdgeWound:
		return material.Value{SI: 1e-4, Source: ranked}
	case tube.Extruded:
		return material.Value{SI: 2e-5, Source: ranked}
	case tube.Welded:
		return material.Value{SI: 0, Source: fused}
	}
	panic("bond: unknown fin type " + string(t))
}

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
func ContactArea(t tube.FinType, od, count, strip, groove float64) float64 {
	switch t {
	case tube.Embedded:
		return count * math.Pi * od * (2*groove + strip)
	case tube.EdgeWound, tube.Welded:
		return count * math.Pi * od * strip
	}
	return math.Pi * od
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
