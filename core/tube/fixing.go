package tube

import (
	"finwright/core/material"
	"finwright/core/units"
)

// Fixing is how a fin is held on its tube, with all that depends on it. What it does not
// name is none: the zero value is a fin wound on edge that nothing more is known of.
type Fixing struct {
	Type    FinType
	Layers  int              // thicknesses of strip that lie on the tube between fins: the foot
	Knurled bool             // foot and tube are knurled together
	Tension bool             // winding tension alone keeps the joint closed
	Contact Contact          // where fin and tube meet
	Forming material.Forming // what the fin's metal must bear
	Section Section          // what a cut along the tube shows
	Bond    material.Value   // [m2 K/W] resistance of a new tube's joint below its limit, on the bare area
	Limits  Limits
	Usual   Usual // zero where nothing is usual: no shop that is known makes it
}

// Contact is where fin and tube meet; bond.ContactArea has the area of each that fixings.go names.
type Contact string

// Section is the shape that a cut along the tube shows; core/drawing/finned draws each that fixings.go names.
type Section string

// Limits are the highest process temperatures [C] for a fin type. The house's
// may be edited; either may be unknown.
//
// Valid: process temperatures in normal running of new tubes; what is not known is not given.
type Limits struct {
	Standard material.Value
	House    material.Value
}

// Usual is where a shop that begins to make the type starts from, until it knows its own.
//
// Source: engineering judgement, editable.
type Usual struct {
	Growth     float64        // [-] of the bare length under the fins
	Scatter    float64        // [-] of that guess
	StripRatio float64        // [-] strip used over n pi d
	LeastWall  units.Length   // that bears the rolls
	Knurl      units.Length   // depth
	Spindle    units.Rotation // highest in steady work
}

// FinTypes lists the types in the order a page offers them.
func FinTypes() []FinType {
	types := make([]FinType, len(Fixings))
	for i, f := range Fixings {
		types[i] = f.Type
	}
	return types
}

// Fixing returns how a fin of this type is held; the zero value for a type that is not listed.
func (t FinType) Fixing() *Fixing {
	for _, f := range Fixings {
		if f.Type == t {
			return f
		}
	}
	return &unlisted
}

var unlisted Fixing

// Wound reports whether the fin is wound from strip.
func (t FinType) Wound() bool { return t.Fixing().Section != MuffSection }

// Tapers reports whether the strip is wound through taper rolls, which keep its width in the neutral line at the tube. Welded
// strip is not.
func (t FinType) Tapers() bool { return t.Wound() && t.Fixing().Section != WeldSection }

// FootLayers is how many strip thicknesses lie on the tube between fins.
func (t FinType) FootLayers() int { return t.Fixing().Layers }

// Lapped reports whether each foot laps the next.
func (t FinType) Lapped() bool { return t.Fixing().Layers > 1 }

// Knurled reports whether foot and tube are knurled together.
func (t FinType) Knurled() bool { return t.Fixing().Knurled }

// CutInto reports whether groove or knurl is rolled into the tube.
func (t FinType) CutInto() bool { return t.Grooved() || t.Knurled() }

// Grooved reports whether the fin is let into the tube.
func (t FinType) Grooved() bool { return t.Fixing().Section == GrooveSection }
