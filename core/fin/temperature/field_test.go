package temperature

import (
	"math"
	"testing"

	"finwright/core/fin"
	"finwright/core/numeric"
	"finwright/core/proof"
)

// usual is a 1 in footed tube before its foot is added.
func usual() Section {
	return Section{
		BoreRadius: 0.0127 - 0.002108, TubeRadius: 0.0127, FinRadius: 0.028575,
		Pitch: 0.00254, Profile: fin.RolledTaper, Thickness: 0.0004,
		TubeConductivity: 50, FinConductivity: 215, InsideFilm: 1000, OutsideFilm: 50,
	}
}

func solve(t testing.TB, s Section, f Fineness) Distribution {
	t.Helper()
	got, err := Solve(s, 1, 0, f)
	if err != nil {
		t.Fatal(err)
	}
	return got
}

// variants returns one section for each way a fin is held.
func variants() map[string]Section {
	plain, footed, lapped, embedded, welded := usual(), usual(), usual(), usual(), usual()
	plain.Bond = 1e-4
	footed.Foot, footed.Slit, footed.Bond = 0.0004, true, 5e-5
	lapped.Foot, lapped.Bond = 0.0008, 5e-5
	embedded.Groove, embedded.Bond = 0.00025, 1e-5
	welded.Profile, welded.FinConductivity = fin.Uniform, 45
	linear := embedded
	linear.Profile, linear.TipThickness = fin.LinearTaper, 0.0002
	return map[string]Section{"plain": plain, "footed": footed, "lapped": lapped, "embedded": embedded, "welded": welded, "linear": linear}
}

func TestHeatBalance(t *testing.T) {
	for name, s := range variants() {
		for _, f := range []Fineness{Page, Refined} {
			got := solve(t, s, f)
			if off := math.Abs(got.HeatIn/got.HeatOut - 1); off > 1e-9 {
				t.Errorf("%s at fineness %d: heat in %g W, out %g W: off by %.1e", name, f, got.HeatIn, got.HeatOut, off)
			}
		}
	}
}

// TestManufactured solves for a harmonic field, T = 1 + I0(a r) cos(a (x - t/2))
// with a = 2 pi/pitch, whose fluxes are fed in as the fluid's temperature on
// every side. Independent truth: the exact function. The tube and fin are one metal.
func TestManufactured(t *testing.T) {
	for _, profile := range []fin.Profile{fin.Uniform, fin.RolledTaper, fin.LinearTaper} {
		s := usual()
		s.Profile, s.TipThickness = profile, 0.0002
		s.TubeConductivity, s.FinConductivity = 10, 10
		s.Pitch, s.FinRadius = 0.012, 0.018 // long waves, so that the fin's edge sees them too
		a := 2 * math.Pi / s.Pitch
		low := func(r float64) (i0, i1 float64) { // scaled so that the bore has I0 = 1
			i0, i1, _, _ = numeric.Bessel01(a * r)
			b0, _, _, _ := numeric.Bessel01(a * s.BoreRadius)
			grow := math.Exp(a*(r-s.BoreRadius)) / b0
			return i0 * grow, i1 * grow
		}
		exact := func(r, x float64) float64 {
			i0, _ := low(r)
			return 1 + i0*math.Cos(a*(x-s.Thickness/2))
		}
		fluid := func(h float64) ambient {
			return func(r, x float64, at side) float64 {
				i0, i1 := low(r)
				sin, cos := math.Sincos(a * (x - s.Thickness/2))
				slope := a * (at.nr*i1*cos - at.nx*i0*sin)
				return exact(r, x) + s.TubeConductivity/h*slope
			}
		}
		var errs []float64
		for _, fineness := range []int{1, 2, 4} {
			g := s.grid(fineness)
			got, err := g.solve(s, fluid(s.InsideFilm), fluid(s.OutsideFilm))
			if err != nil {
				t.Fatal(err)
			}
			worst := 0.0
			for _, p := range g.points {
				worst = max(worst, math.Abs(got[p.unknown]-exact(p.r, p.x)))
			}
			errs = append(errs, worst)
		}
		for i := 1; i < len(errs); i++ {
			order := math.Log2(errs[i-1] / errs[i])
			t.Logf("profile %d: error %.2e, order %.3f", profile, errs[i], order)
			if order < 1.9 {
				t.Errorf("profile %d: order %.3f from errors %v, want 2", profile, order, errs)
			}
		}
	}
}

// TestBondJump has a full foot over the bond and a field of r alone: exact is
// T = -ln r in the tube and the same less the jump q bond in the fin.
func TestBondJump(t *testing.T) {
	s := usual()
	s.Profile, s.FinConductivity = fin.Uniform, s.TubeConductivity
	s.Foot, s.Bond = 0.0004, 3e-4
	jump := s.Bond * s.TubeConductivity / s.TubeRadius
	exact := func(r float64, b body) float64 {
		if b == finBody {
			return -math.Log(r) - jump
		}
		return -math.Log(r)
	}
	fluid := func(h float64, b body) ambient {
		return func(r, _ float64, at side) float64 {
			return exact(r, b) - s.TubeConductivity/h*at.nr/r
		}
	}
	var errs []float64
	for _, fineness := range []int{1, 2} {
		g := s.grid(fineness)
		got, err := g.solve(s, fluid(s.InsideFilm, tubeBody), fluid(s.OutsideFilm, finBody))
		if err != nil {
			t.Fatal(err)
		}
		worst := 0.0
		for _, c := range g.cells {
			for _, at := range c.corners {
				p := g.points[at]
				worst = max(worst, math.Abs(got[p.unknown]-exact(p.r, c.body)))
			}
		}
		errs = append(errs, worst)
	}
	if errs[1] > 1e-4 || math.Log2(errs[0]/errs[1]) < 1.9 {
		t.Errorf("errors %v: want second order and below 1e-4 of a jump of %.3f", errs, jump)
	}
}

// TestOneDimension thins the fin and makes the wall, the film in it and the bond
// vanish: the efficiency must become that of the exact one-dimensional fin.
func TestOneDimension(t *testing.T) {
	for _, profile := range []fin.Profile{fin.Uniform, fin.RolledTaper, fin.LinearTaper} {
		for _, ml := range []float64{0.3, 1, 2} {
			s := usual()
			s.Profile, s.Thickness, s.TipThickness = profile, 5e-5, 3e-5
			s.TubeConductivity, s.InsideFilm = 1e7, 1e9
			height := s.FinRadius - s.TubeRadius
			s.OutsideFilm = ml * ml / (height * height) * s.FinConductivity * s.Thickness / 2
			got := solve(t, s, Refined)
			want := fin.Solve(s.Fin(), s.OutsideFilm)
			if off := math.Abs(got.Efficiency/want.Efficiency - 1); off > 1e-4 {
				t.Errorf("profile %d, mL %g: efficiency %.6f, one-dimensional %.6f: off by %.1e", profile, ml, got.Efficiency, want.Efficiency, off)
			}
			if off := math.Abs(got.Tip/got.Root/want.TipRatio - 1); off > 3e-4 {
				t.Errorf("profile %d, mL %g: tip ratio %.6f, one-dimensional %.6f", profile, ml, got.Tip/got.Root, want.TipRatio)
			}
		}
	}
}

// TestPoorBond lets the bond alone resist: with metal that conducts without
// loss the heat is that of films and bond in series on the area in contact.
func TestPoorBond(t *testing.T) {
	circle := 2 * math.Pi * 0.0127
	contact := map[string]float64{ // [m2] per pitch, from the geometry
		"foot":   circle * 0.00254,
		"edge":   circle * 0.0004,
		"groove": circle*0.0004*(1-0.00025/0.0127) + 2*math.Pi*(0.0127*0.0127-0.01245*0.01245),
	}
	for name, area := range contact {
		s := usual()
		s.Profile = fin.Uniform
		s.TubeConductivity, s.FinConductivity, s.InsideFilm = 1e6, 1e6, 1e9
		s.OutsideFilm, s.Bond = 20, 0.05
		switch name {
		case "foot":
			s.Foot = 0.0004
		case "groove":
			s.Groove = 0.00025
		}
		faces := 2*math.Pi*(s.FinRadius*s.FinRadius-s.rootRadius()*s.rootRadius()) + 2*math.Pi*s.FinRadius*s.Thickness
		between := 2 * math.Pi * s.rootRadius() * (s.Pitch - s.Thickness)
		behind, beside := faces, between // the bond
		if s.Foot > 0 {
			behind, beside = faces+between, 0
		}
		want := 1/(1/(s.OutsideFilm*behind)+s.Bond/area) + s.OutsideFilm*beside
		if got := solve(t, s, Refined).Conductance; math.Abs(got/want-1) > 1e-3 {
			t.Errorf("%s: %.6g W/K, in series %.6g", name, got, want)
		}
	}
}

// TestVanishingBond finds the same heat whether the bodies share points or are
// joined by next to no resistance.
func TestVanishingBond(t *testing.T) {
	for name, s := range variants() {
		s.Bond = 0
		joined := solve(t, s, Page)
		s.Bond = 1e-11
		if bonded := solve(t, s, Page); math.Abs(bonded.HeatOut/joined.HeatOut-1) > 1e-6 {
			t.Errorf("%s: %.9g W joined, %.9g W bonded", name, joined.HeatOut, bonded.HeatOut)
		}
	}
}

func TestOrderOfTemperatures(t *testing.T) {
	for name, s := range variants() {
		got, err := Solve(s, 150, 30, Page)
		if err != nil {
			t.Fatal(err)
		}
		if !(150 > got.Bore && got.Bore > got.Surface && got.Surface > got.Root && got.Root > got.Tip && got.Tip > 30) {
			t.Errorf("%s: %v %v %v %v do not fall from 150 to 30", name, got.Bore, got.Surface, got.Root, got.Tip)
		}
		back, err := Solve(s, 30, 150, Page)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(back.HeatOut+got.HeatOut) > 1e-9*got.HeatOut || math.Abs(back.Tip+got.Tip-180) > 1e-9 || back.Coldest > back.Hottest {
			t.Errorf("%s: heated and cooled do not mirror", name)
		}
	}
}

// TestEqualFluids carries no heat and still knows its efficiency.
func TestEqualFluids(t *testing.T) {
	s := usual()
	got, err := Solve(s, 40, 40, Page)
	if err != nil {
		t.Fatal(err)
	}
	if got.HeatIn != 0 || got.HeatOut != 0 || got.Tip != 40 || !(got.Efficiency > 0.8 && got.Efficiency < 0.9) {
		t.Errorf("heat %g, tip %g, efficiency %g", got.HeatOut, got.Tip, got.Efficiency)
	}
}

// TestRandomSections takes any section a page could ask for: finite, balanced
// and bounded by the two fluids.
func TestRandomSections(t *testing.T) {
	proof.Proof{Share: 20, Full: 300, Seed: 3}.Run(t, func(c *proof.Case) {
		random := c.Rand
		between := func(low, high float64) float64 { return low * math.Pow(high/low, random.Float64()) }
		s := Section{
			TubeRadius: between(0.005, 0.11), Profile: fin.Profile(random.IntN(3)),
			Thickness:        between(1e-4, 3e-3),
			TubeConductivity: between(10, 400), FinConductivity: between(10, 400),
			InsideFilm: between(5, 2e4), OutsideFilm: between(2, 1000),
		}
		s.TipThickness = s.Thickness * between(0.3, 1)
		s.Pitch = s.Thickness * between(1.2, 20)
		s.BoreRadius = s.TubeRadius * (1 - between(0.03, 0.3))
		switch random.IntN(3) {
		case 0:
			s.Foot, s.Slit = s.Thickness, random.IntN(2) == 0
		case 1:
			s.Groove = (s.TubeRadius - s.BoreRadius) * between(0.05, 0.5)
		}
		s.FinRadius = s.rootRadius() + between(1e-3, 0.04)
		if random.IntN(4) > 0 {
			s.Bond = between(1e-7, 1e-2)
		}
		got := solve(c, s, Page)
		if !(math.Abs(got.HeatIn/got.HeatOut-1) < 1e-9) || !(got.Efficiency > 0 && got.Efficiency <= 1) ||
			!(got.Coldest >= 0) || !(got.Hottest <= 1) {
			c.Errorf("in %g out %g eta %g from %g to %g: %+v", got.HeatIn, got.HeatOut, got.Efficiency, got.Coldest, got.Hottest, s)
		}
	})
}

func BenchmarkPage(b *testing.B) {
	for name, s := range variants() {
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				solve(b, s, Page)
			}
		})
	}
}

func BenchmarkRefined(b *testing.B) {
	s := variants()["footed"]
	for b.Loop() {
		solve(b, s, Refined)
	}
}
