// Package sample holds the tubes that tests of a shop have made. Each call gives one of its own, to be changed.
package sample

import (
	"finwright/core/material"
	"finwright/core/tube"
	"finwright/core/units"
)

// PerInch is one fin to the inch.
const PerInch = units.PerLength(1 / 0.0254)

// Metals returns carbon steel for the tube and aluminium for the fin.
func Metals() (ofTube, ofFin material.Metal) {
	ofTube, okTube := material.TubeMetal("cs")
	ofFin, okFin := material.FinMetal("al1060")
	if !okTube || !okFin {
		panic("sample: no metal")
	}
	return ofTube, ofFin
}

// Footed is a tube of 1 in, 20 ft long, with 5/8 in fins of 0.4 mm aluminium, 10 to the inch.
func Footed() tube.Tube {
	return tube.Tube{
		OD: 25.4 * units.Millimetre, Wall: 2.108 * units.Millimetre, Basis: tube.AverageWall,
		Length: 6.096, PlainA: 38 * units.Millimetre, PlainB: 38 * units.Millimetre, Density: 7850,
		Fin: tube.Fin{
			Type: tube.Footed, Height: 15.875 * units.Millimetre, Strip: 0.4 * units.Millimetre,
			Count: 10 * PerInch, Profile: tube.AsMade, Density: 2705, Root: tube.FromTube,
		},
	}
}

// Embedded is the same with an embedded fin and a wall for it.
func Embedded() tube.Tube {
	t := Footed()
	t.Wall = 2.769 * units.Millimetre
	t.Fin.Type, t.Fin.Groove = tube.Embedded, 0.25*units.Millimetre
	return t
}

// Supported is an embedded tube of 40 ft with bare spans at six supports.
func Supported() tube.Tube {
	t := Embedded()
	t.Length = 12.192
	for i := range 6 {
		t.Spans = append(t.Spans, tube.Span{Centre: units.Length(i+1) * 1.74, Width: 0.060})
	}
	return t
}
