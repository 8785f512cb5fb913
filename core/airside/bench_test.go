package airside

import (
	"testing"

	"finwright/core/fin"
)

// BenchmarkEvaluation is the unit of work of the budget: the efficiency of a rolled
// taper, one film coefficient and one pressure drop.
func BenchmarkEvaluation(b *testing.B) {
	bank, flow := vector()
	tube := fin.Fin{Profile: fin.RolledTaper, RootRadius: 0.0127, TipRadius: 0.028575, RootThickness: 0.4e-3, Conductivity: 215}
	sum := 0.0
	b.ReportAllocs()
	for b.Loop() {
		x := Cross(bank, flow)
		film := ESDU86022(&x)
		sum += fin.Solve(tube, film.Coefficient).Efficiency + ESDU86022Drop(&x).Total
	}
	if !(sum > 0) {
		b.Fatal("no work done")
	}
}

func BenchmarkFilm(b *testing.B) {
	x := crossing(vector())
	for _, m := range FilmMethods {
		b.Run(m.ID, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				m.Compute(x)
			}
		})
	}
}

func BenchmarkDrop(b *testing.B) {
	x := crossing(vector())
	for _, m := range DropMethods {
		b.Run(m.ID, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				m.Compute(x)
			}
		})
	}
}

// BenchmarkEvaluate asks every correlation with its range, as a point of a curve does.
func BenchmarkEvaluate(b *testing.B) {
	x := crossing(vector())
	b.ReportAllocs()
	for b.Loop() {
		Evaluate(FilmMethods, x)
		Evaluate(DropMethods, x)
	}
}
