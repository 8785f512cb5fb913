package shop

import (
	"math"
	"testing"

	"finwright/core/material"
	"finwright/core/tube"
	"finwright/core/units"
)

const fpi = units.PerLength(1 / 0.0254)

func near(t testing.TB, name string, got, want, rtol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= rtol*math.Abs(want)) {
		t.Errorf("%s = %.9g, want %.9g within %.1g", name, got, want, rtol)
	}
}

func metals(tubeID, finID string) (material.Metal, material.Metal) {
	a, okA := material.TubeMetal(tubeID)
	b, okB := material.FinMetal(finID)
	if !okA || !okB {
		panic("shop: no metal")
	}
	return a, b
}

// footed is an order for 120 tubes of 1 in, 20 ft long, with 5/8 in fins of 0.4 mm aluminium, 10 to the inch.
func footed() Order {
	tm, fm := metals("cs", "al1060")
	return Order{
		TubeMetal: tm, FinMetal: fm, Quantity: 120,
		Tube: tube.Tube{
			OD: 25.4 * units.Millimetre, Wall: 2.108 * units.Millimetre, Basis: tube.AverageWall,
			Length: 6.096, PlainA: 38 * units.Millimetre, PlainB: 38 * units.Millimetre, Density: 7850,
			Fin: tube.Fin{
				Type: tube.Footed, Height: 15.875 * units.Millimetre, Strip: 0.4 * units.Millimetre,
				Count: 10 * fpi, Profile: tube.AsMade, Density: 2705, Root: tube.FromTube,
			},
		},
	}
}

// embedded is the same with an embedded fin and a wall for it.
func embedded() Order {
	o := footed()
	o.Tube.Wall = 2.769 * units.Millimetre
	o.Tube.Fin.Type, o.Tube.Fin.Groove = tube.Embedded, 0.25*units.Millimetre
	return o
}
