package exchanger

import "math"

// The closed forms below take ntu, the number of transfer units UA/Cmin [-],
// and cr = Cmin/Cmax [-], 0 for a fluid that condenses or boils, and return the
// effectiveness [-], heat over the most that Cmin could carry.

// Counterflow returns the effectiveness [-] in counterflow.
//
//	eps = (1 - e)/(1 - cr e),  e = exp(-ntu (1 - cr))
//
// Valid: ntu >= 0, 0 <= cr <= 1.
// Source: Kays & London, Compact Heat Exchangers, from memory.
func Counterflow(ntu, cr float64) float64 {
	x := ntu * (1 - cr)
	if x < 1e-9 { // cr at or next to one
		return ntu / (1 + ntu)
	}
	lost := -math.Expm1(-x)
	return lost / (lost + (1-cr)*math.Exp(-x))
}

// Parallel returns the effectiveness [-] in parallel flow.
//
//	eps = (1 - exp(-ntu (1 + cr)))/(1 + cr)
//
// Valid: ntu >= 0, 0 <= cr <= 1.
// Source: Kays & London, Compact Heat Exchangers, from memory.
func Parallel(ntu, cr float64) float64 { return -math.Expm1(-ntu*(1+cr)) / (1 + cr) }

// MaxMixed returns the effectiveness [-] in crossflow, Cmax mixed and Cmin unmixed.
//
//	eps = (1 - exp(-cr (1 - exp(-ntu))))/cr
//
// Valid: ntu >= 0, 0 <= cr <= 1.
// Source: Kays & London, Compact Heat Exchangers, from memory.
func MaxMixed(ntu, cr float64) float64 {
	alone := -math.Expm1(-ntu)
	if cr == 0 {
		return alone
	}
	return -math.Expm1(-cr*alone) / cr
}

// MinMixed returns the effectiveness [-] in crossflow, Cmin mixed and Cmax unmixed.
//
//	eps = 1 - exp(-(1 - exp(-cr ntu))/cr)
//
// Valid: ntu >= 0, 0 <= cr <= 1.
// Source: Kays & London, Compact Heat Exchangers, from memory.
func MinMixed(ntu, cr float64) float64 {
	if cr == 0 {
		return -math.Expm1(-ntu)
	}
	return -math.Expm1(math.Expm1(-cr*ntu) / cr)
}

// BothUnmixed returns the effectiveness [-] in crossflow with both fluids unmixed, exactly.
//
//	eps = 1/(cr ntu) sum over n >= 0 of P(n+1, ntu) P(n+1, cr ntu)
//
// where P(n+1, a) = 1 - exp(-a) (1 + a + ... + a^n/n!).
//
// Valid: 0 <= ntu <= 1e5 (work grows with ntu), 0 <= cr <= 1.
// Source: Mason, Proc. 2nd US Nat. Congress of Applied Mechanics (1955) 801, from memory.
func BothUnmixed(ntu, cr float64) float64 {
	b := cr * ntu
	if b == 0 {
		return -math.Expm1(-ntu)
	}
	terms := int(ntu+12*math.Sqrt(ntu)) + 40 // beyond, P(n+1, ntu) < 1e-20 P(1, ntu)
	p, q := poissonTails(ntu, terms), poissonTails(b, terms)
	sum := 0.0
	for n := range p {
		sum += p[n] * q[n]
	}
	return sum / b
}

// poissonTails returns P(n+1, a) for n from 0 to terms-1: the chance of more
// than n events where a are expected, a well below terms. It is summed from the
// far end, so that small ones keep their digits.
func poissonTails(a float64, terms int) []float64 {
	chance := make([]float64, terms+1) // in parts of the likeliest
	mode := int(a)
	chance[mode] = 1
	for n := mode; n < terms; n++ {
		chance[n+1] = chance[n] * a / float64(n+1)
	}
	for n := mode; n > 0; n-- {
		chance[n-1] = chance[n] * float64(n) / a
	}
	tails := make([]float64, terms)
	sum := 0.0
	for n := terms - 1; n >= 0; n-- {
		sum += chance[n+1]
		tails[n] = sum
	}
	for n := range tails {
		tails[n] /= sum + chance[0]
	}
	return tails
}
