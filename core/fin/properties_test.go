package fin

import (
	"fmt"
	"math"
	"sync/atomic"
	"testing"

	"finwright/core/proof"
)

// everyFin calls check with each profile and tip over a grid of sizes and mL.
func everyFin(t *testing.T, check func(t *testing.T, f Fin, h float64)) {
	for _, profile := range []Profile{Uniform, RolledTaper, LinearTaper} {
		for _, tip := range []Tip{Adiabatic, Convective} {
			t.Run(fmt.Sprintf("profile %d tip %d", profile, tip), func(t *testing.T) {
				for _, relative := range []float64{1e-6, 0.01, 0.2, 1.25, 3} {
					for _, ml := range []float64{1e-6, 1e-3, 0.1, 0.7, 2, 8, 60, 500} {
						f := inch
						f.Profile, f.Tip = profile, tip
						f.TipRadius = f.RootRadius * (1 + relative)
						h := ml * ml * f.Conductivity * f.RootThickness / (2 * f.Height() * f.Height())
						check(t, f, h)
					}
				}
			})
		}
	}
}

func TestResultsAreSound(t *testing.T) {
	everyFin(t, func(t *testing.T, f Fin, h float64) {
		r := Solve(f, h)
		// A thin tip has more foldings than mL: the tallest fin's pass 745.
		cold := f.Profile == RolledTaper && r.ML > 499 && r.TipRatio == 0
		if !(r.Efficiency > 0 && r.Efficiency <= 1+1e-14) || !(r.TipRatio > 0 && r.TipRatio <= 1+1e-14) && !cold {
			t.Errorf("%+v h %g: %+v is not between 0 and 1", f, h, r)
		}
		if r.TipRatio > r.Efficiency*(1+1e-12) {
			t.Errorf("%+v h %g: the tip (%g) is closer to the root than the mean (%g)", f, h, r.TipRatio, r.Efficiency)
		}
		if balance := r.Efficiency * h * r.Area / r.HeatPerKelvin; math.Abs(balance-1) > 1e-14 {
			t.Errorf("%+v h %g: heat and efficiency disagree by %g", f, h, balance-1)
		}
	})
}

// A fin works worse with a larger film coefficient and better with more or thicker
// metal. Near 1 the change is below rounding, hence the small allowance.
func TestMonotonic(t *testing.T) {
	const slack = 1e-13
	everyFin(t, func(t *testing.T, f Fin, h float64) {
		base := Solve(f, h)
		at := func(name string, f Fin, h, sign float64) {
			got := Solve(f, h).Efficiency
			strict := base.ML > 1e-4
			if change := sign * (got/base.Efficiency - 1); change < -slack || strict && change <= 0 {
				t.Errorf("%+v h %g: efficiency %.17g becomes %.17g with %s", f, h, base.Efficiency, got, name)
			}
		}
		at("more film coefficient", f, h*1.05, -1)
		better := f
		better.Conductivity *= 1.05
		at("more conductivity", better, h, +1)
		if f.Tip == Adiabatic { // a thicker edge that convects also adds area
			thicker := f
			thicker.RootThickness *= 1.05
			thicker.TipThickness *= 1.05
			at("more thickness", thicker, h, +1)
			higher := f
			higher.TipRadius += 0.05 * f.Height()
			at("more height", higher, h, -1)
		}
	})
}

// For small mL every adiabatic fin loses 1 - eta = C (mL)^2; a straight fin has C = 1/3
// and a low annular fin approaches it.
func TestLowFinLimit(t *testing.T) {
	for _, profile := range []Profile{Uniform, RolledTaper} {
		f := inch
		f.Profile = profile
		f.TipRadius = f.RootRadius * (1 + 1e-5)
		h := 1e-4 * f.Conductivity * f.RootThickness / (2 * f.Height() * f.Height())
		r := Solve(f, h)
		if got := (1 - r.Efficiency) / (r.ML * r.ML); math.Abs(got*3-1) > 1e-4 {
			t.Errorf("profile %d: loss %.9g (mL)^2, want a third", profile, got)
		}
	}
}

// For large mL only the root matters: the heat approaches 2 pi ro sqrt(2 h k t), the
// straight fin of infinite height, with a correction of order 1/(m ro).
func TestTallFinLimit(t *testing.T) {
	for _, profile := range []Profile{Uniform, RolledTaper, LinearTaper} {
		f := inch
		f.Profile = profile
		r := Solve(f, 5e7)
		straight := 2 * math.Pi * f.RootRadius * math.Sqrt(2*5e7*f.Conductivity*f.RootThickness)
		if off := r.HeatPerKelvin/straight - 1; math.Abs(off) > 1/(rootM(f, 5e7)*f.RootRadius) {
			t.Errorf("profile %d at mL %.0f: heat is %.3g off the straight fin's", profile, r.ML, off)
		}
	}
}

// The series and the closed form are two routes to one number.
func TestSeriesMeetsClosedForm(t *testing.T) {
	compared := 0
	everyFin(t, func(t *testing.T, f Fin, h float64) {
		if f.Profile != Uniform {
			return
		}
		closedHeat, closedTip, ok := gardner1945(f, h)
		if !ok {
			return
		}
		compared++
		heat, tip := march(f, h)
		if math.Abs(heat/closedHeat-1) > 1e-12 || math.Abs(tip/closedTip-1) > 1e-11 {
			t.Errorf("%+v h %g: series %.17g, %.17g; closed form %.17g, %.17g", f, h, heat, tip, closedHeat, closedTip)
		}
	})
	if compared < 40 {
		t.Errorf("the closed form held in only %d cases", compared)
	}
}

// A linear taper with equal ends is a uniform fin.
func TestLinearTaperWithEqualEnds(t *testing.T) {
	for _, h := range []float64{0.01, 50, 2e3, 5e7} {
		f := inch
		want := Solve(f, h)
		f.Profile, f.TipThickness = LinearTaper, f.RootThickness
		got := Solve(f, h)
		if math.Abs(got.Efficiency/want.Efficiency-1) > 1e-12 || math.Abs(got.TipRatio/want.TipRatio-1) > 1e-11 {
			t.Errorf("h %g: %+v, want %+v", h, got, want)
		}
	}
}

// A very thin tip approaches the knife edge, which is solved by another recurrence.
func TestKnifeEdgeIsTheLimit(t *testing.T) {
	for _, h := range []float64{1, 50, 2e3} {
		f := inch
		f.Profile, f.TipThickness = LinearTaper, 0
		want := Solve(f, h).Efficiency
		f.TipThickness = 1e-11 * f.RootThickness
		if got := Solve(f, h).Efficiency; math.Abs(got/want-1) > 1e-9 {
			t.Errorf("h %g: %.15g with a thin tip, %.15g with a knife edge", h, got, want)
		}
	}
}

// The rolled taper in Bessel functions of order 1/3 and 2/3 (power series; the
// hyperbolic profile of Kern & Kraus, from memory) is a second route to it.
func TestRolledTaperByFractionalBessel(t *testing.T) {
	for _, h := range []float64{5, 50, 500} {
		f := inch
		f.Profile = RolledTaper
		ro, re := f.RootRadius, f.TipRadius
		p := math.Sqrt(2 * h / (f.Conductivity * f.RootThickness * ro))
		zo, ze := 2.0/3*p*math.Pow(ro, 1.5), 2.0/3*p*math.Pow(re, 1.5)
		i := func(thirds, z float64) float64 { return besselPower(thirds/3, z) }
		want := 2 * math.Sqrt(ro) / (p * (re*re - ro*ro)) *
			(i(2, ze)*i(-2, zo) - i(-2, ze)*i(2, zo)) /
			(i(-2, ze)*i(-1, zo) - i(2, ze)*i(1, zo))
		if got := Solve(f, h).Efficiency; math.Abs(got/want-1) > 1e-10 {
			t.Errorf("h %g: %.15g, fractional Bessel %.15g", h, got, want)
		}
	}
}

// besselPower sums I_nu(z).
func besselPower(nu, z float64) float64 {
	term := math.Pow(z/2, nu) / math.Gamma(nu+1)
	sum := term
	for k := 1.0; k < 80; k++ {
		term *= z * z / 4 / (k * (k + nu))
		sum += term
	}
	return sum
}

// A taper works worse than a uniform fin of root thickness and better than one of
// tip thickness.
func TestTaperLiesBetween(t *testing.T) {
	for _, h := range []float64{1, 30, 300, 3000} {
		f := inch
		thick := Solve(f, h).Efficiency
		f.Profile = RolledTaper
		rolled := Solve(f, h).Efficiency
		tip := f.ThicknessAt(f.TipRadius)
		f.Profile, f.TipThickness = LinearTaper, tip
		linear := Solve(f, h).Efficiency // straight lies above the hyperbola
		f.Profile, f.RootThickness = Uniform, tip
		thin := Solve(f, h).Efficiency
		if !(thin < rolled && rolled < linear && linear < thick) {
			t.Errorf("h %g: thin %g, rolled %g, linear %g, thick %g", h, thin, rolled, linear, thick)
		}
	}
}

func TestConvectiveTipCarriesMore(t *testing.T) {
	everyFin(t, func(t *testing.T, f Fin, h float64) {
		f.Tip = Adiabatic
		closed := Solve(f, h)
		f.Tip = Convective
		open := Solve(f, h)
		if open.HeatPerKelvin < closed.HeatPerKelvin*(1-1e-13) || open.Area <= closed.Area {
			t.Errorf("%+v h %g: %g W/K with a convecting tip, %g without", f, h, open.HeatPerKelvin, closed.HeatPerKelvin)
		}
	})
}

func TestSurfaceEfficiency(t *testing.T) {
	for _, c := range []struct {
		name                  string
		fin, total, eta, want float64
	}{
		{"no fins", 0, 2, 0.4, 1},
		{"nothing but fins", 2, 2, 0.4, 0.4},
		{"by hand (1.5 x 0.8 + 0.5)/2", 1.5, 2, 0.8, 0.85},
	} {
		if got := SurfaceEfficiency(c.fin, c.total, c.eta); math.Abs(got-c.want) > 1e-15 {
			t.Errorf("%s: %g, want %g", c.name, got, c.want)
		}
	}
}

func TestSolveRefusesBadFins(t *testing.T) {
	bad := map[string]func(f *Fin, h *float64){
		"no height":         func(f *Fin, h *float64) { f.TipRadius = f.RootRadius },
		"inside out":        func(f *Fin, h *float64) { f.TipRadius = f.RootRadius / 2 },
		"no root":           func(f *Fin, h *float64) { f.RootRadius = 0 },
		"no thickness":      func(f *Fin, h *float64) { f.RootThickness = 0 },
		"no conductivity":   func(f *Fin, h *float64) { f.Conductivity = 0 },
		"not a number":      func(f *Fin, h *float64) { f.Conductivity = math.NaN() },
		"no film":           func(f *Fin, h *float64) { *h = 0 },
		"negative tip edge": func(f *Fin, h *float64) { f.Profile, f.TipThickness = LinearTaper, -1e-6 },
	}
	for name, spoil := range bad {
		t.Run(name, func(t *testing.T) {
			defer func() {
				if recover() == nil {
					t.Error("Solve did not panic")
				}
			}()
			f, h := inch, 50.0
			spoil(&f, &h)
			Solve(f, h)
		})
	}
}

func TestSolveDoesNotAllocate(t *testing.T) {
	for _, profile := range []Profile{Uniform, RolledTaper, LinearTaper} {
		f := inch
		f.Profile = profile
		if n := testing.AllocsPerRun(100, func() { Solve(f, 50) }); n != 0 {
			t.Errorf("profile %d allocates %g times", profile, n)
		}
	}
}

// Of any fin that can be entered the walk stays within its stated ceilings; the greatest that were met are noted.
func TestWalkIsBounded(t *testing.T) {
	var most, longest atomic.Int64
	raise := func(to *atomic.Int64, n int) {
		for old := to.Load(); int64(n) > old && !to.CompareAndSwap(old, int64(n)); old = to.Load() {
		}
	}
	proof.Proof{Share: 2000, Full: 500_000, Seed: 12}.Run(t, func(c *proof.Case) {
		between := func(low, high float64) float64 {
			return []float64{low, high, low * math.Pow(high/low, c.Rand.Float64())}[min(2, c.Rand.IntN(8))]
		}
		f := Fin{
			Profile: []Profile{Uniform, RolledTaper, LinearTaper}[c.Rand.IntN(3)], Tip: []Tip{Adiabatic, Convective}[c.Rand.IntN(2)],
			RootRadius: between(0.003, 0.165), RootThickness: between(0.0001, 0.006), Conductivity: between(1, 500),
		}
		f.TipRadius = f.RootRadius + between(1e-6, 0.060)
		f.TipThickness = min(f.RootThickness, between(0.00002, 0.006))
		h := between(0.1, 5000)
		heat, tip, steps, terms := walk(f, h)
		if !(heat > 0) || !(tip >= 0) || math.IsInf(heat, 0) {
			c.Errorf("%+v h %g: %g W/K, tip %g", f, h, heat, tip)
		}
		raise(&most, steps)
		raise(&longest, terms)
	})
	if most.Load() > mostSteps/2 || longest.Load() > mostTerms {
		t.Errorf("%d steps and %d terms, stated at most %d and %d", most.Load(), longest.Load(), mostSteps, mostTerms)
	}
	t.Logf("at most %d steps of %d terms", most.Load(), longest.Load())
}
