package fluid

import (
	"math"
	"testing"

	"finwright/core/proof"
)

// Shared powers are those of the library to the last bit, for every whole exponent of the tables: no figure hangs on which of the two was asked.
func TestPowersAreThoseOfTheLibrary(t *testing.T) {
	whole := map[float64]bool{}
	for _, table := range [][]term{region1, region2Ideal, region2, viscosityTerms, conductivityTerms} {
		for _, c := range table {
			whole[c.i], whole[c.j] = true, true
		}
	}
	twentieths := map[int]bool{-22: true, -6: true} // of the dilute gas
	for _, table := range [][]residual{airViscosityTerms, airConductivityTerms} {
		for _, c := range table {
			whole[float64(c.d)], twentieths[c.t] = true, true
		}
	}
	proof.Proof{Share: 200, Full: 100_000, Seed: 31}.Run(t, func(c *proof.Case) {
		base := math.Exp(4 * (c.Rand.Float64() - 0.6))
		for _, x := range []float64{base, -base, 0} {
			p := wholePowers(x)
			for y := range whole {
				if x == 0 && y < 0 {
					continue
				}
				if got, want := p.whole(int(y)), math.Pow(x, y); got != want {
					c.Errorf("%g to %g: %g, the library has %g", x, y, got, want)
				}
			}
		}
		s := transportAt(airCritical/base, 1)
		for y := range twentieths {
			if got, want := s.tau.whole(y), math.Pow(base, float64(y)/20); math.Abs(got/want-1) > 2e-14 {
				c.Errorf("%g to %d/20: %g, the library has %g", base, y, got, want)
			}
		}
	})
}

// The viscosity alone is that of the whole answer to the last bit, and is refused where that is.
func TestViscosityAlone(t *testing.T) {
	proof.Proof{Share: 200, Full: 100_000, Seed: 32}.Run(t, func(c *proof.Case) {
		temperature, pressure := 270+360*c.Rand.Float64(), math.Exp(19*c.Rand.Float64())
		whole, refused := Water(temperature, pressure)
		alone, alike := WaterViscosity(temperature, pressure)
		if alone != whole.Viscosity || (refused == nil) != (alike == nil) {
			c.Errorf("%g K, %g Pa: %g (%v) alone, %g (%v) of all", temperature, pressure, alone, alike, whole.Viscosity, refused)
		}
	})
}
