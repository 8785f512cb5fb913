package bond

import (
	"math"
	"testing"

	"finwright/core/fluid"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

func near(t testing.TB, name string, got, want, tolerance float64) {
	t.Helper()
	if math.Abs(got-want) > tolerance {
		t.Errorf("%s = %.6g, want %g within %g", name, got, want, tolerance)
	}
}

// Engineering judgement, editable: the values that ship, new tubes below their limit.
func TestDefaults(t *testing.T) {
	for fin, want := range map[tube.FinType]float64{
		tube.Footed: 5e-5, tube.OverlapFooted: 5e-5, tube.KnurledFooted: 2e-5, tube.Embedded: 1e-5, tube.Welded: 0,
	} {
		near(t, string(fin), fin.Fixing().Bond.SI, want, 0)
	}
	for _, fin := range tube.FinTypes() {
		v := fin.Fixing().Bond
		if !v.Known() || v.Status != material.Judgement || !message.English().Has(v.Key) {
			t.Errorf("%s: default %+v needs a source with a text", fin, v)
		}
	}
	// Best bond to worst when hot: trade practice and judgement, from memory.
	rank := []tube.FinType{tube.Welded, tube.Embedded, tube.Extruded, tube.Footed, tube.EdgeWound}
	for i := 1; i < len(rank); i++ {
		if rank[i].Fixing().Bond.SI <= rank[i-1].Fixing().Bond.SI {
			t.Errorf("%s resists no more than %s", rank[i], rank[i-1])
		}
	}
}

// Computed independently: an embedded fin of 0.4 mm in a 0.25 mm groove, 10 fins
// per inch on 25.4 mm, touches 0.0283 m2/m or 0.354 of the bare area.
func TestContactArea(t *testing.T) {
	bare := math.Pi * 0.0254
	got := ContactArea(tube.Embedded.Fixing().Contact, 0.0254, 1/0.00254, 0.0004, 0.00025)
	near(t, "groove contact", got, 0.0283, 5e-5)
	near(t, "groove contact over bare", got/bare, 0.354, 5e-4)
	near(t, "foot contact over bare", ContactArea(tube.Footed.Fixing().Contact, 0.0254, 1/0.00254, 0.0004, 0)/bare, 1, 1e-15)
	near(t, "edge contact over bare", ContactArea(tube.EdgeWound.Fixing().Contact, 0.0254, 1/0.00254, 0.0004, 0)/bare, 0.0004/0.00254, 1e-15)
}

func TestRefer(t *testing.T) {
	contact := ContactArea(tube.Embedded.Fixing().Contact, 0.0254, 400, 0.0004, 0.00025)
	r := OnContact(1e-5, 0.0254, contact)
	near(t, "heat resistance kept", r/contact, 1e-5/(math.Pi*0.0254), 1e-15)
	near(t, "there and back", Refer(r, contact, math.Pi*0.0254), 1e-5, 1e-20)
}

// constant is a metal whose expansion [1/K] is the same from 20 C to wherever.
func constant(t testing.TB, expansion float64) *material.Metal {
	t.Helper()
	m, faults := material.NewOwn("a", 200, 2700, units.Expansion(expansion))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	return &m
}

// Computed independently for aluminium on carbon steel, 23.6e-6 and 12.1e-6 1/K.
func TestLoosening(t *testing.T) {
	w := Winding{OD: 0.0254, Fin: constant(t, 23.6e-6), Tube: constant(t, 12.1e-6)}
	for _, c := range []struct {
		stress, loss float64 // [MPa], [C] as computed, to the degree
	}{{100, 146}, {30, 58}} {
		w.Strain = c.stress / 69e3
		got, ok := w.LossTemperature()
		if !ok {
			t.Fatal("aluminium on steel must loosen")
		}
		near(t, "loss temperature", got, c.loss, 0.5)
		near(t, "gap just below", w.Gap(got-1e-6), 0, 0)
		if w.Gap(got+1) <= 0 {
			t.Error("no gap above the loss temperature")
		}
	}
	w.Strain = 1.0e-3
	near(t, "opening at 200 C", w.Opening(200), 1.07e-3, 5e-6)
	near(t, "gap at 200 C", w.Gap(200), 13.6e-6, 0.05e-6)
	near(t, "resistance at 200 C", w.Resistance(w.Gap(200), 0.036, 0), 3.8e-4, 0.05e-4)
	w.Metallic = 5e-5
	near(t, "closed at 60 C", w.Resistance(w.Gap(60), 0.028, 3e-7), 5e-5, 0)
}

// Expansion by range, by hand: to 100 C aluminium 23.6 and carbon steel 12.1, to 200 C 24.4 and 12.7e-6 (half-way to 13.3 at
// 300 C); at 120 C so 23.76 and 12.22, which leaves 11.54e-6 over 100 K.
func TestExpansionByRange(t *testing.T) {
	fin, ok := material.FinMetal("al1060")
	tube, also := material.TubeMetal("cs")
	if !ok || !also {
		t.Fatal("no such metal")
	}
	w := Winding{OD: 0.0254, Fin: &fin, Tube: &tube}
	near(t, "opening at 120 C without strain", w.Opening(120), 1.154e-3, 1e-9)
	near(t, "opening at 200 C without strain", w.Opening(200), 11.7e-6*180, 1e-9)
	for _, strain := range []float64{SoftStrain, DefaultStrain, HardStrain, 4e-3} {
		w.Strain = strain
		loss, ok := w.LossTemperature()
		if !ok {
			t.Fatalf("strain %g: never", strain)
		}
		near(t, "opening at the loss temperature", w.Opening(loss), 0, 1e-12)
	}
	// 20 + 4e-3/12.2e-6, both held at their last point.
	near(t, "beyond the last point", func() float64 { t, _ := w.LossTemperature(); return t }(), 347.87, 0.01)
	// The order of magnitude by strain at 120 C that the trade's notes have, in a gap of air of 0.0325 W/mK with 0.37e-6 m of jump.
	for _, c := range []struct{ strain, want, tolerance float64 }{{SoftStrain, 3.0e-4, 0.1e-4}, {DefaultStrain, 0.73e-4, 0.07e-4}, {HardStrain, 0, 0}} {
		w.Strain = c.strain
		near(t, "resistance at 120 C", w.Resistance(w.Gap(120), 0.0325, 0.37e-6), c.want, c.tolerance)
	}
}

// The jump comes in with the gap: nought where it begins, all of it where the gap is wide; more gap always resists more.
func TestJumpComesInWithTheGap(t *testing.T) {
	w := Winding{Metallic: 5e-5}
	near(t, "a hair's gap", w.Resistance(1e-15, 0.03, 3e-7), 5e-5, 1e-12)
	near(t, "a wide gap", w.Resistance(1e-4, 0.03, 3e-7), 5e-5+1.003e-4/0.03, 1e-7)
	last := 0.0
	for gap := 0.0; gap < 1e-5; gap += 1e-7 {
		r := w.Resistance(gap, 0.03, 3e-7)
		if r <= last {
			t.Errorf("%g m resists %g after %g", gap, r, last)
		}
		last = r
	}
}

// Air at 20 C and 101,325 Pa has a mean free path of 66 nm (as handbooks give it, from memory). By hand, 1.813e-5 sqrt(pi/(2 x
// 101325 x 1.204)) = 6.506e-8 m, and the jump 2 x 1.1/0.9 x 2.8/2.4 x 6.506e-8/0.709 = 2.617e-7 m.
func TestJumpDistance(t *testing.T) {
	air := fluid.Properties{Density: 1.204, HeatCapacity: 1006, Viscosity: 1.813e-5, Conductivity: 1.813e-5 * 1006 / 0.709}
	near(t, "free path", FreePath(air, 101325), 66e-9, 1.5e-9)
	near(t, "free path by hand", FreePath(air, 101325), 6.506e-8, 5e-12)
	near(t, "jump distance", JumpDistance(air, 101325), 2.617e-7, 5e-11)
}

// A steel fin on an austenitic tube tightens as it warms.
func TestTightening(t *testing.T) {
	w := Winding{OD: 0.0254, Strain: 1e-3, Fin: constant(t, 12e-6), Tube: constant(t, 16.2e-6), Metallic: 1e-5}
	if _, ok := w.LossTemperature(); ok {
		t.Error("a loss temperature where heat tightens the joint")
	}
	near(t, "gap at 400 C", w.Gap(400), 0, 0)
}

// Common practice, no source: which types the winding tension alone holds, and which something else does too. A type that stands
// in neither list is as its row says.
func TestHeldByTension(t *testing.T) {
	for _, c := range []struct {
		tension bool
		types   []tube.FinType
	}{
		{true, []tube.FinType{tube.Footed, tube.OverlapFooted, tube.EdgeWound}},
		{false, []tube.FinType{tube.KnurledFooted, tube.KnurledOverlap, tube.Embedded, tube.Welded, tube.Extruded}},
	} {
		for _, fin := range c.types {
			if fin.Fixing().Tension != c.tension {
				t.Errorf("%s: held by tension %v", fin, !c.tension)
			}
		}
	}
}
