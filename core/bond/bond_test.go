package bond

import (
	"math"
	"testing"

	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/tube"
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

// Computed independently for aluminium on carbon steel, 23.6e-6 and 12.1e-6 1/K.
func TestLoosening(t *testing.T) {
	w := Winding{OD: 0.0254, FinExpansion: 23.6e-6, TubeExpansion: 12.1e-6}
	for _, c := range []struct {
		stress, loss float64 // [MPa], [C] as computed, to the degree
	}{{100, 146}, {30, 58}} {
		w.Strain = c.stress / 69e3
		got, ok := w.LossTemperature()
		if !ok {
			t.Fatal("aluminium on steel must loosen")
		}
		near(t, "loss temperature", got, c.loss, 0.5)
		near(t, "gap just below", w.Gap(got-1e-6, got-1e-6), 0, 0)
		if w.Gap(got+1, got+1) <= 0 {
			t.Error("no gap above the loss temperature")
		}
	}
	w.Strain = 1.0e-3
	near(t, "opening at 200 C", w.Opening(200, 200), 1.07e-3, 5e-6)
	near(t, "gap at 200 C", w.Gap(200, 200), 13.6e-6, 0.05e-6)
	near(t, "resistance at 200 C", w.Resistance(200, 200, 0.036), 3.8e-4, 0.05e-4)
	w.Metallic = 5e-5
	near(t, "closed at 60 C", w.Resistance(60, 60, 0.028), 5e-5, 0)
}

// A steel fin on an austenitic tube tightens as it warms.
func TestTightening(t *testing.T) {
	w := Winding{OD: 0.0254, Strain: 1e-3, FinExpansion: 12e-6, TubeExpansion: 16.2e-6, Metallic: 1e-5}
	if _, ok := w.LossTemperature(); ok {
		t.Error("a loss temperature where heat tightens the joint")
	}
	near(t, "resistance at 400 C", w.Resistance(400, 400, 0.05), 1e-5, 0)
}

func TestHeldByTension(t *testing.T) {
	for _, fin := range tube.FinTypes() {
		want := fin == tube.Footed || fin == tube.OverlapFooted || fin == tube.EdgeWound
		if fin.Fixing().Tension != want {
			t.Errorf("%s: held by tension %v", fin, !want)
		}
	}
}
