package fin

import "math"

// Result is what one fin does per kelvin between its root and the air.
type Result struct {
	Efficiency    float64 // [-] heat carried over heat if all of Area were at root temperature
	Area          float64 // [m2] surface that Efficiency refers to
	TipRatio      float64 // [-] (tip - air) over (root - air) temperature
	HeatPerKelvin float64 // [W/K] = Efficiency x film coefficient x Area
	ML            float64 // [-] height x sqrt(2h/(k t)), t at the root
}

// Solve returns the exact one-dimensional solution of the fin for the film
// coefficient h [W/(m2 K)], to 1e-13 relative.
//
//	d/dr(r t dtheta/dr) = (2h/k) r theta,  theta(root) = 1
//
// Valid: h > 0; tested for ML from 1e-6 to 500. Where temperature falls by more than
// 745 e-foldings TipRatio is below the smallest float64 and comes out as zero.
// Source: uniform: Gardner, Trans. ASME 67 (1945) 621, from memory; tapers: the
// same equation summed in Taylor series, see march.
func Solve(f Fin, h float64) Result {
	if !f.wellFormed() || !(h > 0) {
		panic("fin: dimensions, conductivity and film coefficient must be positive and the tip outside the root")
	}
	var heat, tip float64
	closed := false
	if f.Profile == Uniform {
		heat, tip, closed = gardner1945(f, h)
	}
	if !closed {
		heat, tip = march(f, h)
	}
	area := f.area()
	return Result{
		Efficiency:    heat / (h * area),
		Area:          area,
		TipRatio:      tip,
		HeatPerKelvin: heat,
		ML:            rootM(f, h) * f.Height(),
	}
}

// rootM returns m = sqrt(2h/(k t)) [1/m] with the thickness at the root.
func rootM(f Fin, h float64) float64 {
	return math.Sqrt(2 * h / (f.Conductivity * f.RootThickness))
}
