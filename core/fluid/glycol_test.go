package fluid

import (
	"math"
	"testing"
)

// Ethylene glycol of 30 % at 569 and 500 R as the open library CoolProp prints it in customary units (lb/ft3, Btu/lb F,
// 1e-5 lb/ft s, Btu/h ft F), and its freezing point, 465.434 R: a check on arithmetic.
func TestGlycolAsTheLibraryPrintsIt(t *testing.T) {
	for _, c := range []struct{ rankine, density, heat, viscosity, conductivity float64 }{
		{569, 64.1291, 0.903676, 80.8991, 0.280781},
		{500, 65.1491, 0.877102, 242.449, 0.2604},
	} {
		p, err := EthyleneGlycol.At(c.rankine*5/9, 0.30)
		if err != nil {
			t.Fatal(err)
		}
		for name, pair := range map[string][3]float64{
			"density":       {p.Density, c.density * 16.018463, 1e-5},
			"heat capacity": {p.HeatCapacity, c.heat * 4186.8, 1e-5},
			"viscosity":     {p.Viscosity, c.viscosity * 1e-5 * 1.488164, 1e-5},
			"conductivity":  {p.Conductivity, c.conductivity * 1.730735, 1e-3},
		} {
			if math.Abs(pair[0]/pair[1]-1) > pair[2] {
				t.Errorf("%g R: %s %.6g, printed %.6g", c.rankine, name, pair[0], pair[1])
			}
		}
	}
	if got := EthyleneGlycol.Freezing(0.30); math.Abs(got-465.434*5/9) > 0.002 {
		t.Errorf("freezes at %.3f K", got)
	}
}

// Without glycol both are water: IAPWS is another source altogether.
func TestNoGlycolIsWater(t *testing.T) {
	for _, g := range []*Glycol{&EthyleneGlycol, &PropyleneGlycol} {
		for celsius := 10.0; celsius <= 80; celsius += 5 {
			got, err1 := g.At(celsius+zeroCelsius, 0)
			want, err2 := Water(celsius+zeroCelsius, StandardPressure)
			if err1 != nil || err2 != nil {
				t.Fatal(err1, err2)
			}
			for name, share := range map[string]float64{
				"density":       math.Abs(got.Density/want.Density-1) / 1e-3,
				"heat capacity": math.Abs(got.HeatCapacity/want.HeatCapacity-1) / 2e-3,
				"conductivity":  math.Abs(got.Conductivity/want.Conductivity-1) / 6e-3,
				"viscosity":     math.Abs(got.Viscosity/want.Viscosity-1) / 2e-2,
			} {
				if share > 1 {
					t.Errorf("%g C: %s is %.2f times its tolerance away from water", celsius, name, share)
				}
			}
		}
		if f := g.Freezing(0); math.Abs(f-zeroCelsius) > 0.05 {
			t.Errorf("water freezes at %g K", f)
		}
	}
}

// Handbook values from memory: ethylene glycol of 50 % by mass freezes near -34 to -36 C, propylene near -32 to -34.
func TestGlycolLimits(t *testing.T) {
	if f := EthyleneGlycol.Freezing(0.5) - zeroCelsius; f < -37 || f > -33 {
		t.Errorf("ethylene glycol freezes at %g C", f)
	}
	if f := PropyleneGlycol.Freezing(0.5) - zeroCelsius; f < -34.5 || f > -31.5 {
		t.Errorf("propylene glycol freezes at %g C", f)
	}
	for _, c := range []struct{ t, share float64 }{{300, -0.01}, {300, 0.61}, {230, 0.5}, {374, 0.5}} {
		if _, err := EthyleneGlycol.At(c.t, c.share); err == nil {
			t.Errorf("%g K, %g: no error", c.t, c.share)
		}
	}
}

// A liquid whose points are known beyond them keeps Andrade's law, and holds the rest.
func TestTableBeyondItsPoints(t *testing.T) {
	oil := func(t float64) Point { // Andrade's law with 2000 K
		return Point{t, Properties{900 - t/2, 1800 + t, 1e-5 * math.Exp(2000/t), 0.15 - 1e-4*t}}
	}
	f, err := NewTable(oil(320), oil(360), oil(400))
	if err != nil {
		t.Fatal(err)
	}
	for _, at := range []float64{280, 320, 340, 400, 450} {
		p := f.Beyond(at)
		if want := oil(at).Viscosity; math.Abs(p.Viscosity/want-1) > 1e-12 {
			t.Errorf("%g K: viscosity %g, want %g", at, p.Viscosity, want)
		}
		if want := oil(min(400, max(320, at))).Density; math.Abs(p.Density-want) > 1e-9 {
			t.Errorf("%g K: density %g, want %g", at, p.Density, want)
		}
	}
	if p := Table(f[:1]).Beyond(500); p != f[0].Properties {
		t.Error("one point is a constant fluid")
	}
}
