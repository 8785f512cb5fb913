package inside

import (
	"math"
	"testing"

	"finwright/core/fluid"
	"finwright/core/message"
)

func steam(t testing.TB, celsius, massVelocity float64) Condensing {
	t.Helper()
	s, err := fluid.SaturatedWater(celsius + 273.15)
	if err != nil {
		t.Fatal(err)
	}
	return Condensing{Saturated: s, CriticalPressure: fluid.WaterCriticalPressure, Bore: 0.025, MassVelocity: massVelocity, Flux: 50e3}
}

// across gives the flux that a difference across the condensate [K] makes of a film that falls with the flux.
func across(c Condensing, difference float64) Condensing {
	for range 100 {
		c.Flux = difference * Chato1962(c)
	}
	return c
}

// Steam at 100 C in a 25 mm tube whose condensate bears 10 K, worked by hand with the steam
// table's rho 958.4, k 0.679, mu 282e-6, cp 4217 and h_fg 2257e3 (from memory): 9636 W/m2K. In a bore of 21.2 mm with 5 K
// it is 11,931 W/m2K, computed outside this project in the form that divides by the difference.
func TestChato(t *testing.T) {
	c := across(steam(t, 100, 5), 10)
	near(t, "Chato", Chato1962(c), 9636, 0.003)
	narrow := steam(t, 100, 5)
	narrow.Bore = 0.0212
	near(t, "Chato in 21.2 mm", Chato1962(across(narrow, 5)), 11931, 3e-3)

	l := c.Liquid
	latent := c.LatentHeat + 0.375*l.HeatCapacity*10
	near(t, "the form with the difference", Chato1962(c), 0.555*math.Pow(9.80665*l.Density*(l.Density-c.Vapour.Density)*
		math.Pow(l.Conductivity, 3)*latent/(l.Viscosity*10*c.Bore), 0.25), 1e-9)
	wide := c
	wide.Bore *= 8
	near(t, "a bore eight times as wide, at one flux", Chato1962(wide), Chato1962(c)/2, 0.005)
}

// Local value: the open library ht's documented example.
func TestShahLocal(t *testing.T) {
	c := Condensing{Bore: 0.3, MassVelocity: 1 / (math.Pi / 4 * 0.09), CriticalPressure: 2e7}
	c.Pressure = 1e6
	c.Liquid = fluid.Properties{Density: 800, HeatCapacity: 2300, Viscosity: 1e-5, Conductivity: 0.6}
	near(t, "Shah", Shah1979At(c, 0.4), 2561.2593415479214, 1e-12)
}

// sheared is the mean over the quality of the fast film alone.
func sheared(c Condensing) float64 {
	sum := 0.0
	for i := range qualities {
		sum += weight(i) * Shah1979At(c, quality(i))
	}
	return sum
}

// Steam at 100 C in a bore of 21.2 mm: the fast film's mean over the quality and the vapour's velocity at the inlet,
// computed outside this project, to their digits. The mean is h_lo (0.55 + 2.09/pr^0.38), as the paper has it (from memory).
func TestShearOverQuality(t *testing.T) {
	for _, c := range []struct {
		massVelocity, film, velocity float64
		regime                       Regime
	}{{5, 1769, 0.46, Stratified}, {10, 3080, 0.92, Between}, {20, 5363, 1.83, Sheared}, {40, 9338, 3.66, Sheared}} {
		s := steam(t, 100, c.massVelocity)
		s.Bore = 0.0212
		near(t, "Shah's printed mean", shahLiquid(&s)*(0.55+2.09/math.Pow(s.reduced(), 0.38)), c.film, 3e-3)
		near(t, "mean over quality", sheared(s), c.film, 0.025)
		if j := s.VapourVelocity(1); math.Abs(j-c.velocity) > 0.01 || s.Regime() != c.regime {
			t.Errorf("G %g: jg* %.4f, %s; want %g, %s", c.massVelocity, j, s.Regime(), c.velocity, c.regime)
		}
	}
}

// Sixteen places stand for twenty thousand.
func TestPlacesOverQuality(t *testing.T) {
	sum := 0.0
	for i := range qualities {
		sum += weight(i)
	}
	near(t, "weights", sum, 1, 1e-15)
	for _, g := range []float64{1, 10, 40, 100, 200} {
		c := steam(t, 120, g)
		slow, fine := Chato1962(c), 0.0
		const n = 20000
		for i := range n {
			fine += higher(slow, Shah1979At(c, (float64(i)+0.5)/n)) / n
		}
		near(t, "film", Condense(c).Coefficient, fine, 3e-4)
	}
}

// Slow vapour gives Chato's film, fast vapour Shah's, and between them nothing steps; the old answer halved where the
// vapour's Reynolds number passed 35 000.
func TestCondense(t *testing.T) {
	slow := steam(t, 100, 0.1)
	near(t, "slow", Condense(slow).Coefficient, Chato1962(slow), 1e-4)
	fast := steam(t, 150, 200)
	near(t, "fast", Condense(fast).Coefficient, sheared(fast), 0.06)
	last := Condense(steam(t, 100, 1)).Coefficient
	for g := 1.0; g < 500; g *= 1.001 {
		c := steam(t, 100, g)
		f := Condense(c)
		if f.Coefficient < last || f.Coefficient > 1.001*last {
			t.Fatalf("G %g: from %g to %g", g, last, f.Coefficient)
		}
		last = f.Coefficient
		s := ShapeOf(c)
		if brief := Condensation(c, &s); brief.Coefficient != f.Coefficient {
			t.Fatalf("G %g: a search is told %g, of %g", g, brief.Coefficient, f.Coefficient)
		}
	}
	for g, in := range map[float64]bool{5: true, 180: true, 2000: false} {
		if f := Condense(steam(t, 150, g)); f.InRange() != in {
			t.Errorf("G %g: in range %v, want %v: %+v", g, f.InRange(), in, f.Limits)
		}
	}
}

// The second opinion agrees with the first at both ends, and lies within a third of it between.
func TestSecondOpinion(t *testing.T) {
	slow := steam(t, 100, 1)
	near(t, "slow", Breber1980(slow), Chato1962(slow), 1e-9)
	for g := 1.0; g < 500; g *= 1.1 {
		c := steam(t, 100, g)
		near(t, "between", Breber1980(c), Condense(c).Coefficient, 0.33)
	}
}

func TestRegimesHaveWords(t *testing.T) {
	for _, r := range []Regime{Stratified, Between, Sheared} {
		if !message.English().Has("figure.vapour_" + string(r)) {
			t.Errorf("no text figure.vapour_%s", r)
		}
	}
}
