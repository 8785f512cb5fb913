package airside

import (
	"math"
	"slices"
	"testing"

	"finwright/core/figure"
	"finwright/core/fluid"
	"finwright/core/internal/correlation"
	"finwright/core/proof"
)

func crossing(b Bank, f Flow) *Crossing {
	x := Cross(b, f)
	return &x
}

func estimate[A Answer](t *testing.T, estimates []Estimate[A], id string) Estimate[A] {
	t.Helper()
	for _, v := range estimates {
		if v.ID == id {
			return v
		}
	}
	t.Fatalf("no method %s", id)
	return Estimate[A]{}
}

// The common bank passes the limits that core/internal/correlation says, and the spread is that of the films which hold it.
func TestVectorsRange(t *testing.T) {
	b, f := vector()
	films := Evaluate(FilmMethods, crossing(b, f))
	passed := func(limits []figure.Limit) string {
		names := ""
		for _, l := range limits {
			if !l.In() {
				names += " " + l.Variable
			}
		}
		return names
	}
	var holding []float64
	for id, want := range correlation.Films {
		if got := passed(estimate(t, films, id).Limits); got != want.Passes {
			t.Errorf("%s passes%s, want%s", id, got, want.Passes)
		}
		if want.Passes == "" {
			holding = append(holding, want.Vector)
		}
	}
	low, high, n := Spread(films)
	if n != len(holding) || n < 2 {
		t.Fatalf("%d films in range, want %d, and two at least", n, len(holding))
	}
	near(t, "low end of spread", low, slices.Min(holding), 3e-4)
	near(t, "high end of spread", high, slices.Max(holding), 3e-4)

	drops := Evaluate(DropMethods, crossing(b, f))
	for id, want := range correlation.Drops {
		if got := passed(estimate(t, drops, id).Limits); got != want.Passes {
			t.Errorf("%s passes%s, want%s", id, got, want.Passes)
		}
	}
}

// The rule looks at choices alone: film and drop of one work, and no drop where none is known.
func TestRule(t *testing.T) {
	for _, c := range []struct {
		layout     Layout
		welded     bool
		film, drop string
	}{
		{Staggered, false, "esdu_86022", "esdu_86022_drop"},
		{Staggered, true, "weierman_1976", "weierman_1976_drop"},
		{InLine, false, "ganguli_1985", ""},
		{InLine, true, "ganguli_1985", ""},
	} {
		pair, drop := Rule(c.layout, c.welded), ""
		if pair.HasDrop() {
			drop = DropMethods[pair.Drop].ID
		}
		if film := FilmMethods[pair.Film].ID; film != c.film || drop != c.drop {
			t.Errorf("layout %d, welded %v: %s and %q, want %s and %q", c.layout, c.welded, film, drop, c.film, c.drop)
		}
	}
}

func TestFewRowsDoWorse(t *testing.T) {
	b, f := vector()
	for _, c := range []struct {
		rows          int
		esdu, ganguli float64
	}{{1, 0.76, 0.20 / 0.38}, {2, 0.84, 0.33 / 0.38}, {3, 0.92, 0.36 / 0.38}, {4, 1, 1}, {8, 1, 1}} {
		few, many := b, b
		few.Rows, many.Rows = c.rows, 8
		near(t, "ESDU row factor", ESDU86022(crossing(few, f)).Nusselt/ESDU86022(crossing(many, f)).Nusselt, c.esdu, 1e-12)
		near(t, "Ganguli row factor", Ganguli1985(crossing(few, f)).Nusselt/Ganguli1985(crossing(many, f)).Nusselt, c.ganguli, 1e-12)
	}
}

func TestPropertyCorrections(t *testing.T) {
	b, f := vector()
	corrected := f
	corrected.WallPrandtl = f.Prandtl() / 1.1
	near(t, "ESDU F1", ESDU86022(crossing(b, corrected)).Nusselt/ESDU86022(crossing(b, f)).Nusselt, math.Pow(1.1, 0.26), 1e-12)
	corrected.TemperatureRatio = 1.2
	near(t, "Weierman film", Weierman1976(crossing(b, corrected)).Nusselt/Weierman1976(crossing(b, f)).Nusselt, math.Pow(1.2, 0.25), 1e-12)
	near(t, "Weierman drop", Weierman1976Drop(crossing(b, corrected)).Total/Weierman1976Drop(crossing(b, f)).Total, math.Pow(1.2, -0.25), 1e-12)
}

// Thinning by rolling leaves more room for the gas; edge pitches leave less.
func TestFreeRatio(t *testing.T) {
	b, _ := vector()
	tapered := b
	tapered.MeanThickness = 0.4e-3 * inch * math.Log(2.25) / 0.03175
	near(t, "obstruction of a rolled taper", tapered.Obstruction(), 0.028644, 2e-5) // trade sheet, worked by hand
	if !(tapered.FreeRatio() > b.FreeRatio()) {
		t.Error("a tapered fin leaves less free area than a uniform one")
	}
	b.EdgePitches = 0.5
	near(t, "with corbels", b.FreeRatio(), 0.52126*10/10.5, 1e-5)
	b.EdgePitches, b.RowPitch = 0, 0.030 // shallow rows: the diagonal gap governs
	near(t, "diagonal gap", b.FreeRatio(), 2*(math.Hypot(0.030, 0.03175)-0.0304)/0.0635, 1e-12)
}

// Over random valid banks every method is finite and positive, grows with the flow and
// never claims a range without limits.
func TestEveryMethodBehaves(t *testing.T) {
	proof.Proof{Share: 200, Full: 2000, Seed: 1}.Run(t, func(c *proof.Case) {
		t, r := c, c.Rand
		between := func(low, high float64) float64 { return low + (high-low)*r.Float64() }
		d := between(0.0159, 0.0508)
		df := d * between(1.2, 2.4)
		b := Bank{
			OD: d, FinOD: df, FinPitch: between(2e-3, 8e-3), AreaRatio: between(3, 30),
			RootThickness: between(0.3e-3, 1.5e-3), TransversePitch: df * between(1.02, 1.6),
			Rows: 1 + r.IntN(10), TubesPerRow: 1 + r.IntN(60), EdgePitches: 0.5, Layout: Layout(r.IntN(2)),
		}
		b.MeanThickness = b.RootThickness * between(0.5, 1)
		b.RowPitch = b.TransversePitch * between(0.8, 1.1)
		air, err := fluid.DryAir(between(240, 660), between(7e4, 1.1e5))
		if err != nil {
			t.Fatal(err)
		}
		f := Flow{Properties: air, FaceMassVelocity: air.Density * between(0.5, 8)}
		faster := f
		faster.FaceMassVelocity *= 1.1
		films, quick := Evaluate(FilmMethods, crossing(b, f)), Evaluate(FilmMethods, crossing(b, faster))
		drops, quickDrops := Evaluate(DropMethods, crossing(b, f)), Evaluate(DropMethods, crossing(b, faster))
		check := func(id string, x, more float64, limits []figure.Limit) {
			if !(x > 0) || math.IsInf(x, 1) || !(more > x) || len(limits) == 0 || len(limits) > MostLimits {
				t.Fatalf("%s gives %g, faster %g, %d limits for %+v", id, x, more, len(limits), b)
			}
		}
		for i, v := range films {
			check(v.ID, v.Answer.Measure(), quick[i].Answer.Measure(), v.Limits)
		}
		for i, v := range drops {
			check(v.ID, v.Answer.Measure(), quickDrops[i].Answer.Measure(), v.Limits)
		}
	})
}

// Against the VDI Heat Atlas form, Nu = 0.24 (Ra s/d)^(1/3) on the mean of root and tip
// diameter, read in an open program that cites section F2.4.4; the two lie within
// 30 % of each other where both can be used.
func TestNaturalConvection(t *testing.T) {
	air, err := fluid.DryAir(325, fluid.StandardPressure)
	if err != nil {
		t.Fatal(err)
	}
	for _, gap := range []float64{4e-3, 5e-3, 6e-3, 8e-3} {
		const d, df, excess = 0.0254, 0.0508, 50.0
		s := Still{Properties: air, FinOD: df, Gap: gap, Expansion: 1 / 325.0, Excess: excess}
		h, limits := EdwardsChaddock1963(s)
		if !figure.AllIn(limits) {
			t.Errorf("gap %g: Ra %g out of range", gap, s.Rayleigh())
		}
		size := (d + df) / 2
		ra := s.Rayleigh() * math.Pow(size/gap, 3) * df / gap
		atlas := 0.24 * math.Cbrt(ra*gap/d) * air.Conductivity / size
		near(t, "natural convection", h, atlas, 0.30)
	}
	_, limits := EdwardsChaddock1963(Still{Properties: air, FinOD: 0.05715, Gap: 2.14e-3, Expansion: 1 / 325.0, Excess: 50})
	if figure.AllIn(limits) {
		t.Error("ten fins to the inch are too close for the correlation")
	}
}

func TestAllocations(t *testing.T) {
	x := crossing(vector())
	for _, m := range FilmMethods {
		if n := testing.AllocsPerRun(100, func() { m.Compute(x) }); n != 0 {
			t.Errorf("%s allocates %g times", m.ID, n)
		}
	}
	for _, m := range DropMethods {
		if n := testing.AllocsPerRun(100, func() { m.Compute(x) }); n != 0 {
			t.Errorf("%s allocates %g times", m.ID, n)
		}
	}
}
