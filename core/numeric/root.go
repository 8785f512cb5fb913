package numeric

import (
	"fmt"
	"math"
)

// Root returns where the continuous f crosses zero between a and b [any unit], at which it
// must differ in sign or vanish, to a few units in the last place of x. It
// never leaves the bracket and needs at most some hundred calls.
//
// Valid: as said; an error says that f has one sign.
// Source: Chandrupatla, Adv. Eng. Software 28 (1997) 145: inverse quadratic
// steps where they are safe, else halving; from memory.
func Root(f func(float64) float64, a, b float64) (float64, error) {
	fa, fb := f(a), f(b)
	if !(fa*fb <= 0) {
		return 0, fmt.Errorf("numeric: no change of sign: f(%g) = %g, f(%g) = %g", a, fa, b, fb)
	}
	if fa == 0 {
		return a, nil
	}
	c, fc := a, fa // the point before last
	t := 0.5
	for range 200 {
		x := a + t*(b-a)
		fx := f(x)
		if math.Signbit(fx) == math.Signbit(fa) {
			c, fc = a, fa
		} else {
			c, fc, b, fb = b, fb, a, fa
		}
		a, fa = x, fx
		best, least := a, fa
		if math.Abs(fb) < math.Abs(fa) {
			best, least = b, fb
		}
		near := (4e-16*math.Abs(best) + 1e-300) / math.Abs(b-c)
		if least == 0 || near > 0.5 {
			return best, nil
		}
		xi, phi := (a-b)/(c-b), (fa-fb)/(fc-fb)
		t = 0.5
		if phi*phi < xi && (1-phi)*(1-phi) < 1-xi {
			t = fa/(fb-fa)*fc/(fb-fc) + (c-a)/(b-a)*fa/(fc-fa)*fb/(fc-fb)
		}
		t = min(max(t, near), 1-near)
	}
	return 0, fmt.Errorf("numeric: no root to full precision between %g and %g; residual %g", b, a, fa)
}
