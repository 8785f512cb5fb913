package making

import (
	"math"
	"math/rand/v2"
	"testing"

	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// Hand calculation: groove 0.3, strip 0.4 mm, 10 fpi, wall 2.77 mm, 1 in tube: about 1.9 %.
func TestGrowthBoundByHand(t *testing.T) {
	o := embedded()
	o.Tube.Fin.Groove, o.Tube.Wall = 0.0003, 0.00277
	near(t, "bound", GrowthBound(&o.Tube), 0.019, 0.05/1.9)
}

func TestTolerableErrorByHand(t *testing.T) {
	got := TolerableGrowthError(0.005, 12.2)
	if math.Abs(got-0.0004) > 0.00005 {
		t.Errorf("5 mm at 12.2 m tolerate %.5f, want 0.04 %%", got)
	}
}

func TestGuessUntilMeasured(t *testing.T) {
	c := shop.House()
	m, _ := c.Lines[1].Practice(tube.Embedded)
	if g := LearnGrowth(&c, m); g.Learned || g.Share != 0.001 || g.Note.None() {
		t.Errorf("without tubes: %+v", g)
	}
	c.Measured = []shop.Measured{{Type: tube.Embedded, Cut: 12, Finned: 11.9, Finished: 12.010}, {Type: tube.Embedded, Cut: 12, Finned: 11.9, Finished: 12.011}, {Type: tube.KnurledFooted, Cut: 6, Finned: 5.9, Finished: 6}}
	if g := LearnGrowth(&c, m); g.Learned || g.Samples != 2 {
		t.Errorf("two tubes are trusted: %+v", g)
	}
	c.Measured = append(c.Measured, shop.Measured{Type: tube.Embedded, Cut: 6, Finned: 5.9, Finished: 6.0055})
	if g := LearnGrowth(&c, m); !g.Learned || g.Samples != 3 {
		t.Errorf("three tubes are not trusted: %+v", g)
	}
}

// Student's t by a table: 2.776, 2.571, 2.228, 2.086, 2.042 for 4, 5, 10, 20 and 30 degrees of freedom.
func TestStudent(t *testing.T) {
	for freedom, want := range map[int]float64{1: 12.706, 2: 4.303, 3: 3.182, 4: 2.776, 5: 2.571, 10: 2.228, 20: 2.086, 30: 2.042} {
		near(t, "t", Student95(freedom), want, 0.005)
	}
}

// The fit finds the slope that tubes were made with, and its half-width holds
// the next tube about 95 times in 100.
func TestFitFindsWhatTubesWereMadeWith(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	const share, spread = 0.0012, 0.0002
	draw := func() shop.Measured {
		bare := 2 + 10*r.Float64()
		grown := bare*share + spread*6*r.NormFloat64()
		return shop.Measured{Type: tube.Embedded, Cut: units.Length(bare + 0.1), Finned: units.Length(bare + grown), Finished: units.Length(bare + 0.1 + grown)}
	}
	inside, runs := 0, 3000
	for range runs {
		tubes := make([]shop.Measured, 8)
		for i := range tubes {
			tubes[i] = draw()
		}
		g, half := FitGrowth(tubes, tube.Embedded)
		var xx float64
		for i := range tubes {
			x, _ := lengthening(&tubes[i])
			xx += x * x
		}
		x := math.Sqrt(xx / 8) // a tube of the samples' mean length
		if next := share + spread*6*r.NormFloat64()/x; math.Abs(next-g) <= half {
			inside++
		}
	}
	if got := float64(inside) / float64(runs); math.Abs(got-0.95) > 0.015 {
		t.Errorf("%.3f of the next tubes fall inside, want 0.95", got)
	}
	exact := []shop.Measured{{Type: tube.Embedded, Cut: 10, Finned: 9.01, Finished: 10.01}, {Type: tube.Embedded, Cut: 5, Finned: 4.0040, Finished: 5.0040}}
	g, half := FitGrowth([]shop.Measured{exact[0], exact[0], exact[0]}, tube.Embedded)
	near(t, "share of equal tubes", g, 0.01/9, 1e-9)
	if half > 1e-12 {
		t.Errorf("equal tubes scatter by %g", half)
	}
	if g, _ := FitGrowth(exact, tube.Embedded); g < 0.001 || g > 0.01/9 {
		t.Errorf("slope %g lies outside its samples", g)
	}
}

// 0.055 % of 12 m puts an edge 6.6 mm out, and 5 mm are 0.0417 % of it.
func TestEdgeOffByHand(t *testing.T) {
	near(t, "edge", float64(EdgeOff(0.00055, 12)), 0.0066, 1e-12)
	near(t, "back", float64(EdgeOff(TolerableGrowthError(0.005, 12), 12)), 0.005, 1e-12)
}
