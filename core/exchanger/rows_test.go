package exchanger

import (
	"math"
	"slices"
	"testing"

	"finwright/core/internal/published"
	"finwright/core/numeric"
)

func TestRowsPublished(t *testing.T) {
	for _, row := range published.Read(t, published.Computed, "pntu_air_cooler") {
		a := Arrangement{Rows: int(row.Float("tube_rows")), Passes: int(row.Float("tube_passes"))}
		row.Check("P_air_exact", a.Effectiveness(row.Float("NTU_air"), row.Float("R_Cair_over_Ctube")), 1e-12)
	}
}

func TestCorrectionFactorPublished(t *testing.T) {
	for _, row := range published.Read(t, published.Computed, "lmtd_ft") {
		hotIn, hotOut, coldIn, coldOut := row.Float("Thi"), row.Float("Tho"), row.Float("Tci"), row.Float("Tco")
		p, r := (coldOut-coldIn)/(hotIn-coldIn), (hotIn-hotOut)/(coldOut-coldIn)
		row.Check("P_air", p, 1e-14)
		row.Check("R", r, 1e-14)
		row.Check("LMTD", LogMean(hotIn-coldOut, hotOut-coldIn), 1e-13)
		a := Arrangement{Rows: int(row.Float("rows")), Passes: int(row.Float("passes"))}
		f, absent := a.CorrectionFactor(p, r)
		if !absent.None() {
			t.Fatalf("%s: %v", row.Where(), absent)
		}
		row.Check("F_exact", f, 1e-11)
	}
}

// W13: Roetzel & Nicole, J. Heat Transfer 97 (1975) 5, example 2, as carried by an
// open library: 125 to 45 C against 25 to 95 C, 4 rows in one pass, F about
// 0.55. Their fit gives 0.5505; charts and fits may be 0.02 off the exact value.
func TestRoetzelNicole(t *testing.T) {
	f, absent := Arrangement{Rows: 4, Passes: 1}.CorrectionFactor(70.0/100, 80.0/70)
	if !absent.None() || math.Abs(f-0.55) > 0.02 {
		t.Errorf("F = %.6f (%v), published about 0.55", f, absent)
	}
}

// One row, mixed or not, is crossflow with the tube stream mixed across the row:
// the closed form of Kays & London holds whichever capacity is the smaller.
func TestOneRow(t *testing.T) {
	for _, ratio := range []float64{0.2, 1, 3} {
		for _, ntu := range []float64{0.1, 1, 4} {
			want := 0.0
			if ratio <= 1 { // the air is Cmin and unmixed
				want = MaxMixed(ntu, ratio)
			} else { // the tube stream is Cmin and mixed
				want = MinMixed(ntu*ratio, 1/ratio) / ratio
			}
			for _, mixed := range []bool{false, true} {
				near(t, "one row", Arrangement{1, 1, mixed}.Effectiveness(ntu, ratio), want, 1e-13)
			}
		}
	}
}

// Many rows in one pass tend to both fluids unmixed, many in as many passes to counterflow.
func TestManyRows(t *testing.T) {
	near(t, "60 rows in one pass", Arrangement{Rows: 60, Passes: 1}.Effectiveness(1.5, 0.75), BothUnmixed(1.5, 0.75), 1e-4)
	near(t, "60 rows in 60 passes", Arrangement{Rows: 60, Passes: 60}.Effectiveness(1.5, 0.75), Counterflow(1.5, 0.75), 1e-3)
}

// Mixing the air between rows costs a little in one pass and more passes gain.
func TestMixingAndPasses(t *testing.T) {
	one, mixed := Arrangement{Rows: 6, Passes: 1}, Arrangement{Rows: 6, Passes: 1, Mixed: true}
	if u, m := one.Effectiveness(2, 1), mixed.Effectiveness(2, 1); !(m < u) {
		t.Errorf("air mixed %g, unmixed %g", m, u)
	}
	last := 0.0
	for passes := 1; passes <= 6; passes++ {
		p := Arrangement{Rows: 6, Passes: passes}.Effectiveness(2, 1)
		if p <= last {
			t.Errorf("%d passes give %g, one fewer %g", passes, p, last)
		}
		last = p
	}
}

// With the air mixed between rows, each in its own pass, rows are single-row exchangers in
// exact counterflow: their effectivenesses combine by the closed form of Domingos
// for identical units, (1 - e^n)/(1 - ratio e^n) with e = (1 - p)/(1 - ratio p)
// (Kays & London, multipass overall counterflow, from memory).
func TestMultipassCounterflow(t *testing.T) {
	for _, n := range []int{2, 3, 5} {
		for _, ratio := range []float64{0.4, 1.6} {
			p := Arrangement{Rows: 1, Passes: 1}.Effectiveness(2.0/float64(n), ratio)
			e := math.Pow((1-ratio*p)/(1-p), float64(n))
			want := (e - 1) / (e - ratio)
			near(t, "passes in counterflow", Arrangement{n, n, true}.Effectiveness(2, ratio), want, 1e-12)
		}
	}
}

func TestPassRows(t *testing.T) {
	for _, c := range []struct {
		rows, passes int
		want         []int
	}{{4, 1, []int{4}}, {4, 2, []int{2, 2}}, {5, 2, []int{3, 2}}, {8, 3, []int{3, 3, 2}}, {3, 3, []int{1, 1, 1}}} {
		if got := (Arrangement{Rows: c.rows, Passes: c.passes}).PassRows(); !slices.Equal(got, c.want) {
			t.Errorf("%d rows in %d passes: %v, want %v", c.rows, c.passes, got, c.want)
		}
	}
}

func TestTransferUnits(t *testing.T) {
	a := Arrangement{Rows: 4, Passes: 2}
	for _, ntu := range []float64{1e-6, 0.3, 2, 9} {
		got, absent := a.TransferUnits(a.Effectiveness(ntu, 0.8), 0.8)
		if !absent.None() {
			t.Fatal(absent)
		}
		near(t, "transfer units and back", got, ntu, 1e-8)
	}
	if _, absent := a.TransferUnits(0.99, 1.5); absent.Key != "exchanger.unreachable" {
		t.Errorf("out of reach, yet %v", absent)
	}
	if _, absent := a.CorrectionFactor(0.8, 1.3); absent.Key != "exchanger.crossed" {
		t.Errorf("past the other's inlet, yet %v", absent)
	}
}

func TestLogMean(t *testing.T) {
	near(t, "far apart", LogMean(100, 10), 90/math.Log(10), 1e-15)
	near(t, "equal", LogMean(7, 7), 7, 0)
	near(t, "next to equal", LogMean(7, 7*(1+1e-9)), 7*(1+0.5e-9), 1e-15)
	near(t, "either way", LogMean(3, 8), LogMean(8, 3), 1e-15)
}

func BenchmarkRows(b *testing.B) {
	for b.Loop() {
		Arrangement{Rows: 4, Passes: 2}.Effectiveness(1.2, 0.8)
	}
}

func BenchmarkCorrectionFactor(b *testing.B) {
	for b.Loop() {
		Arrangement{Rows: 4, Passes: 2}.CorrectionFactor(0.4118, 1.714)
	}
}

// A stream next to nothing beside the other gives all it has, and no more: the heat balance closes at any ratio.
func TestFaintStream(t *testing.T) {
	for _, a := range []Arrangement{{Rows: 1, Passes: 1}, {Rows: 4, Passes: 2}, {Rows: 6, Passes: 1}, {Rows: 5, Passes: 5}, {Rows: 30, Passes: 30}, {Rows: 30, Passes: 4}} {
		for _, ratio := range []float64{0.01, 60, 70, 600, 3e4, 1e7} {
			for _, ntu := range []float64{0.3, 3, 40, 2000} {
				r := a.respond(&workspace{}, ntu, ratio)
				// What the air gains the stream has lost; each is kept to rounding of itself.
				if gained, lost := ratio*r.air, 1-r.process; math.Abs(gained-lost) > 1e-12*ratio*r.air+1e-15*ratio || r.process < -1e-12 || r.air <= 0 {
					t.Errorf("%+v ratio %g ntu %g: the air gains %.12g, the stream loses %.12g", a, ratio, ntu, gained, lost)
				}
				if want := numeric.MostPanels(a.Rows) * 8; len(r.places) > want {
					t.Errorf("%+v ratio %g ntu %g: %d places, stated %d", a, ratio, ntu, len(r.places), want)
				}
			}
		}
	}
}

// Where panels turn from even to growing the answer stays.
func TestMeshesMeet(t *testing.T) {
	for _, a := range []Arrangement{{Rows: 1, Passes: 1}, {Rows: 4, Passes: 2}, {Rows: 8, Passes: 2}, {Rows: 30, Passes: 3}} {
		const ntu = 9
		least := numeric.MostEven / (-math.Expm1(-ntu/float64(a.Rows)) * float64(a.PassRows()[0]))
		follow := func(ratio float64) response {
			var w workspace
			r := a.respond(&w, ntu, ratio)
			a.follow(&w, &r)
			return r
		}
		even, growing := follow(least*(1-1e-12)), follow(least*(1+1e-12))
		near(t, "within", growing.within, even.within, 1e-11)
		near(t, "air", growing.air, even.air, 1e-11)
		sum := 0.0
		for k, row := range growing.rows {
			sum += mean(row.Process, growing.weights)
			if got, want := mean(row.AirOut, growing.weights), mean(even.rows[k].AirOut, even.weights); math.Abs(got-want) > 1e-12 {
				t.Errorf("%+v row %d: the air leaves at %.15g, with even panels at %.15g", a, k, got, want)
			}
		}
		near(t, "mean over the rows", growing.within, sum/float64(a.Rows), 1e-14)
	}
}
