package exchanger

import (
	"math"
	"testing"

	"finwright/core/internal/published"
)

var forms = map[string]func(ntu, cr float64) float64{
	"both_unmixed": BothUnmixed, "counterflow": Counterflow, "parallel": Parallel, "Cmin_mixed": MinMixed, "Cmax_mixed": MaxMixed,
}

func TestEffectivenessPublished(t *testing.T) {
	for _, row := range append(published.Read(t, published.Library, "entu_crossflow"), published.Read(t, published.Computed, "entu_crossflow")...) {
		form, ok := forms[row.Text("arrangement")]
		if !ok {
			t.Fatalf("%s: no arrangement %q", row.Where(), row.Text("arrangement"))
		}
		row.Check("eps", form(row.Float("NTU"), row.Float("Cr")), 1e-13)
	}
}

// W14: Holman, Heat Transfer, example 10-9, as carried by an open library: U 275
// W/m2K, 10.82 m2, 9672 W/K mixed, 1377.5 W/K, 130 and 15 C.
func TestHolman(t *testing.T) {
	ntu := 275 * 10.82 / 1377.5
	near(t, "effectiveness", MaxMixed(ntu, 1377.5/9672.0), 0.8312180361, 1e-9)
	near(t, "book effectiveness", MaxMixed(ntu, 1377.5/9672.0), 0.831218, 1e-6)
	near(t, "book heat", MaxMixed(ntu, 1377.5/9672.0)*1377.5*115, 131675.33, 1e-6)
}

// W15: Incropera & DeWitt, finned crossflow exhaust gas to water exchanger, from
// memory, unverified: 1 kg/s water 35 to 125 C, 4197 J/kgK; gas 300 to 100 C;
// U 100 W/m2K. The book reads NTU 2.1 and 39.7 m2 from its chart.
func TestIncropera(t *testing.T) {
	gas := 1 * 4197.0 * 90 / 200
	near(t, "gas capacity", gas, 1888.65, 1e-6)
	near(t, "effectiveness", 200.0/265, 0.7547170, 1e-7)
	near(t, "effectiveness of the exact NTU", BothUnmixed(2.0808384, gas/4197), 200.0/265, 1e-7)
	near(t, "book NTU", 2.0808384, 2.1, 0.011)
	near(t, "book area", 2.0808384*gas/100, 39.7, 0.011)
}

// Limits that every arrangement shares, and their order: counterflow carries
// most, parallel flow least.
func TestEffectivenessLimits(t *testing.T) {
	for name, form := range forms {
		near(t, name+" of a condensing fluid", form(1.7, 0), 1-math.Exp(-1.7), 1e-14)
		near(t, name+" next to a condensing fluid", form(1.7, 1e-12), 1-math.Exp(-1.7), 1e-10)
		near(t, name+" of a tiny exchanger", form(1e-12, 0.6), 1e-12, 1e-10)
		for _, cr := range []float64{0.1, 0.5, 0.99, 1} {
			last := 0.0
			for ntu := 0.01; ntu < 1e4; ntu *= 1.7 {
				eps := form(ntu, cr)
				if !(eps >= last-1e-12) || eps > Counterflow(ntu, cr)+1e-12 || eps < Parallel(ntu, cr)-1e-12 {
					t.Errorf("%s: effectiveness %g at ntu %g, cr %g: before %g, counterflow %g", name, eps, ntu, cr, last, Counterflow(ntu, cr))
				}
				last = eps
			}
		}
	}
}

// Near cr = 1 counterflow passes smoothly to ntu/(1 + ntu).
func TestCounterflowBalanced(t *testing.T) {
	for _, away := range []float64{0, 1e-15, 1e-12, 1e-9, 1e-6} {
		near(t, "balanced counterflow", Counterflow(3, 1-away), 0.75, 1e-6)
	}
}

func near(t testing.TB, name string, got, want, relative float64) {
	t.Helper()
	if !(math.Abs(got-want) <= relative*math.Abs(want)) {
		t.Errorf("%s = %.12g, want %.12g within %g", name, got, want, relative)
	}
}

func BenchmarkBothUnmixed(b *testing.B) {
	for b.Loop() {
		BothUnmixed(2, 0.75)
	}
}
