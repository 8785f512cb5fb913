package fin

import (
	"math"

	"finwright/core/numeric"
)

// gardner1945 returns the heat per kelvin [W/K] and tip temperature ratio [-] of
// a fin of uniform thickness in closed form; h is the film coefficient [W/(m2 K)].
//
//	q = 2 pi k t m ro [(I1e + b I0e) K1o - (K1e - b K0e) I1o] / [(K1e - b K0e) I0o + (I1e + b I0e) K0o]
//	m = sqrt(2h/(k t)); o at m ro, e at m re; b = h/(k m) if the tip convects, else 0
//
// The difference in the numerator cancels when the fin is low against its radius;
// ok is false where that would cost more than one digit.
//
// Valid: h > 0, any m ro and m re, since exponentials are carried apart.
// Source: Gardner, Trans. ASME 67 (1945) 621; Kern & Kraus, Extended Surface Heat
// Transfer (1972); both from memory.
func gardner1945(f Fin, h float64) (heat, tip float64, ok bool) {
	m := rootM(f, h)
	xo, xe := m*f.RootRadius, m*f.TipRadius
	i0o, i1o, k0o, k1o := numeric.Bessel01(xo)
	i0e, i1e, k0e, k1e := numeric.Bessel01(xe)
	rise, fall := i1e, k1e
	if f.Tip == Convective {
		b := h / (f.Conductivity * m)
		rise += b * i0e
		fall -= b * k0e
	}
	decay := math.Exp(-m * f.Height())
	fall *= decay * decay
	if fall*i1o > 0.9*rise*k1o {
		return 0, 0, false
	}
	below := fall*i0o + rise*k0o
	heat = 2 * math.Pi * f.Conductivity * f.RootThickness * xo * (rise*k1o - fall*i1o) / below
	return heat, decay / (xe * below), true
}
