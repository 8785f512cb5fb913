package fin

import (
	"math"
	"testing"

	"finwright/core/internal/published"
)

// finned is a length of tube with n fins, worked as the textbooks do: uniform
// fins lengthened by half their thickness, or with an exactly convecting tip. Some
// books take that efficiency on the fin's true faces and edge.
type finned struct {
	eta, finArea, totalArea  float64
	fin, gap, total          float64
	bare, gain, gainAtEta    float64
	heatAtEta, largestPerFin float64
}

func work(row published.Row, tip Tip, eta float64) finned {
	d, t := row.Float("tube_od_m"), row.Float("thickness_m")
	f := Fin{
		Tip:           tip,
		RootRadius:    d / 2,
		TipRadius:     d/2 + row.Float("fin_height_m"),
		RootThickness: t,
		Conductivity:  row.Float("k_W_mK"),
	}
	edged := f
	edged.Tip = Convective
	if tip == Adiabatic {
		f.TipRadius += t / 2
	}
	h, n, length := row.Float("h_W_m2K"), row.Float("fins"), row.Float("length_m")
	kelvin := row.Float("root_C") - row.Float("air_C")
	r := Solve(f, h)
	area := r.Area
	if row.Text("area_convention") == "faces_and_edge" {
		area = edged.area()
	}
	between := math.Pi * d * (length - n*t)
	w := finned{
		eta: r.Efficiency, finArea: area, totalArea: n*area + between,
		fin: r.Efficiency * h * area * kelvin, gap: h * between / n * kelvin, bare: h * math.Pi * d * length * kelvin,
		heatAtEta: h * area * eta * kelvin, largestPerFin: h * area * kelvin,
	}
	w.total = h * w.totalArea * SurfaceEfficiency(n*w.finArea, w.totalArea, r.Efficiency) * kelvin
	w.gain = w.total - w.bare
	w.gainAtEta = n*(w.heatAtEta+w.gap) - w.bare
	return w
}

// exact returns an example's answers by its own columns: with an adiabatic tip, and with a convecting one.
func exact(row published.Row) (w, convective finned) {
	eta := 1.0
	if row.Has("eta_book") {
		eta = row.Float("eta_book")
	}
	return work(row, Adiabatic, eta), work(row, Convective, eta)
}

func TestExamplesComputed(t *testing.T) {
	for _, row := range published.Read(t, published.Computed, "annular_fin_examples") {
		w, convective := exact(row)
		for _, c := range []struct {
			column string
			got    float64
		}{
			{"eta", w.eta},
			{"fin_area_m2", w.finArea},
			{"total_area_m2", w.totalArea},
			{"q_fin_W", w.fin},
			{"q_gap_W", w.gap},
			{"q_total_W", w.total},
			{"q_bare_W", w.bare},
			{"q_gain_W", w.gain},
			{"q_max_fin_W", w.largestPerFin},
			{"q_fin_convective_tip_W", convective.fin},
			{"q_total_convective_tip_W", convective.total},
			{"q_fin_at_book_eta_W", w.heatAtEta},
			{"q_gain_at_book_eta_W", w.gainAtEta},
		} {
			if row.Has(c.column) {
				row.CheckPrinted(c.column, c.got)
			}
		}
	}
}

// The books read the efficiency from a chart, or round it to two digits on the way, and all that follows is as far off: so
// the tolerances, which stand in the rows, are wider than what is printed.
func TestWorkedExamples(t *testing.T) {
	for _, row := range published.Read(t, published.Book, "annular_fin_examples") {
		w, _ := exact(row)
		for _, c := range []struct {
			column, tolerance string
			got               float64
		}{
			{"eta_book", "eta_book_rtol", w.eta},
			{"fin_area_book_m2", "area_book_rtol", w.finArea},
			{"total_area_book_m2", "area_book_rtol", w.totalArea},
			{"q_fin_book_W", "q_book_rtol", w.fin},
			{"q_gap_book_W", "q_book_rtol", w.gap},
			{"q_total_book_W", "q_book_rtol", w.total},
			{"q_bare_book_W", "q_bare_book_rtol", w.bare},
			{"q_gain_book_W", "q_book_rtol", w.gain},
			{"q_max_fin_book_W", "q_max_fin_book_rtol", w.largestPerFin},
		} {
			if !row.Has(c.column) {
				continue
			}
			want, tolerance := row.Float(c.column), row.Float(c.tolerance)
			if off := math.Abs(want/c.got - 1); !(off <= tolerance) {
				t.Errorf("%s: %s = %.6g, book %g: book off by %.2g, allowed %g (%s)",
					row.Where(), c.column, c.got, want, off, tolerance, row.Text("source"))
			}
		}
	}
}

// The Kern & Kraus fin as carried by the open library ht (1.0.7), which prints
// 0.841258862023; mpmath gives 0.8412588620231.
func TestKernKraus(t *testing.T) {
	f := Fin{RootRadius: 0.0127, TipRadius: 0.028575, RootThickness: 3.8e-4, Conductivity: 200}
	if got := Solve(f, 58).Efficiency; math.Abs(got/0.8412588620231-1) > 1e-12 {
		t.Errorf("efficiency %.15g, want 0.8412588620231", got)
	}
}

// One aluminium fin by four formulas, 1 in x 5/8 in x 0.4 mm, k 215: computed
// independently of this project (own Bessel series; taper checked by Runge-Kutta).
func TestFourFormulas(t *testing.T) {
	for _, row := range published.Read(t, published.Computed, "one_fin_four_formulas") {
		f := Fin{RootRadius: 0.0127, TipRadius: 0.028575, RootThickness: 4e-4, Conductivity: 215}
		h := row.Float("h_W_m2K")
		row.CheckPrinted("uniform", Solve(f, h).Efficiency)
		row.CheckPrinted("schmidt", Schmidt1949(f, h))
		f.Profile = RolledTaper
		rolled := Solve(f, h).Efficiency
		row.CheckPrinted("rolled_taper", rolled)

		f.Profile = Uniform
		tip := 4e-4 * 0.0127 / 0.028575
		f.RootThickness = (4e-4 + tip) / 2
		row.CheckPrinted("uniform_at_mean_thickness", Solve(f, h).Efficiency)
		f.RootThickness = tip + 0.59*(4e-4-tip) // the usual substitute, good to 0.1 %
		if got := Solve(f, h).Efficiency; math.Abs(got/rolled-1) > 1e-3 {
			t.Errorf("%s: substitute thickness gives %.6f, rolled taper %.6f", row.Where(), got, rolled)
		}
	}
}
