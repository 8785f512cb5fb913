package tube

import (
	"math"
	"testing"
)

// Hand calculation: 25.4 x 2.108 mm of steel weighs pi 23.292 2.108 7850 = 1.21087 kg/m; with an average wall of 2.3188 mm 1.31990 kg/m,
// with a minimum wall up to 2.5296 mm 1.42674 kg/m.
func TestHeaviestWeightByHand(t *testing.T) {
	for basis, perMetre := range map[WallBasis]float64{AverageWall: 1.31990, MinimumWall: 1.42674} {
		tb := with(func(t *Tube) { t.Basis = basis })
		want := perMetre*6.096 + 1.03*float64(tb.FinMass())*(6.096-0.076)
		near(t, string(basis), float64(tb.HeaviestWeight()), want, 1e-5)
		if tb.HeaviestWeight() <= tb.Weight() {
			t.Errorf("%s: no heavier", basis)
		}
	}
}

// By a second route: the tube in slices of a tenth of a millimetre.
func TestBalanceBySlices(t *testing.T) {
	even := footed()
	near(t, "a tube alike at both ends", float64(even.Balance()), 3.048, 1e-12)
	for _, tb := range []*Tube{
		with(func(t *Tube) { t.PlainB = 1.5 }),
		with(func(t *Tube) { t.PlainA, t.Spans = 0.4, []Span{{2, 0.5}, {5, 0.25}} }),
	} {
		const slice = 1e-4
		mass, moment := 0.0, 0.0
		for x := slice / 2; x < float64(tb.Length); x += slice {
			m := float64(tb.TubeMass())
			finned := x > float64(tb.PlainA) && x < float64(tb.Length-tb.PlainB)
			for _, s := range tb.Spans {
				finned = finned && math.Abs(x-float64(s.Centre)) > float64(s.Width)/2
			}
			if finned {
				m += float64(tb.FinMass())
			}
			mass, moment = mass+m, moment+m*x
		}
		near(t, "balance", float64(tb.Balance()), moment/mass, 1e-5)
	}
}
