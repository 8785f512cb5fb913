package fin

import "math"

// inverses are 1/(j (j+1)): to divide takes several times as long as all else of a term.
var inverses = func() (list [mostTerms + 1]float64) {
	for j := 1; j <= mostTerms; j++ {
		list[j] = 1 / float64(j*(j+1))
	}
	return list
}()

// constant is series where P is constant, as in a rolled taper: what remains of the recurrence is
// (j+1) j b[j+1] = alpha b[j-1] - beta b[j-2].
func constant(alpha, beta, first float64) (u, du float64, terms int) {
	older, old, term := 0.0, 1.0, first
	u, du = 1+first, first
	j := 1.0
	for n := 1; n <= mostTerms; n++ {
		older, old, term = old, term, (alpha*old-beta*older)*inverses[n]
		slope := (j + 1) * term
		u += term
		du += slope
		if math.Abs(slope)+math.Abs(j*old) <= negligible*math.Abs(du) {
			return u, du, n
		}
		j++
	}
	panic("fin: a series of more terms than any takes")
}
