package fin

import "math"

// Schmidt1949 returns Schmidt's approximate efficiency [-], on the two faces, of
// an annular fin of uniform thickness f.RootThickness whatever f.Profile says.
// It is shown beside the exact value, never instead of it.
//
//	phi = (re/ro - 1)(1 + 0.35 ln(re/ro));  eta = tanh(m ro phi)/(m ro phi)
//
// h is the film coefficient [W/(m2 K)].
// Valid: h > 0; 0.6 to 1.3 % below the exact value for common high-finned tubes.
// Source: Schmidt, Refrig. Eng. 57 (1949) 351, from memory.
func Schmidt1949(f Fin, h float64) float64 {
	ratio := f.TipRadius / f.RootRadius
	x := rootM(f, h) * f.Height() * (1 + 0.35*math.Log(ratio))
	return math.Tanh(x) / x
}
