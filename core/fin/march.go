package fin

import "math"

const (
	// A step spans at most this many e-foldings of temperature, which keeps its
	// series short and free from cancellation.
	stepFoldings = 3
	// A step reaches at most this part of the way to the nearest singular point.
	stepReach = 0.5
	// Terms below this part of the sum are rounding.
	negligible = 1e-17

	// What the thinnest fin of the worst metal in the strongest film takes, with room.
	mostSteps = 2000
	mostTerms = 100
)

// march returns the heat per kelvin [W/K] and tip temperature ratio [-] of a fin
// of any profile; h is the film coefficient [W/(m2 K)].
//
// It walks from the tip inward in Taylor steps of the exact equation
//
//	d/dy(P du/dy) = c (r - y) u,  P = r t = p0 + p1 y + p2 y^2,  c = 2h/k
//
// where y runs inward from the step's outer radius r. In a rolled taper P is
// constant and u is a sum of Airy functions, summed here without their overflow and
// cancellation. Temperature is scaled to one at each step, so nothing overflows;
// working from the tip, where the gradient is small, nothing cancels for low fins.
//
// Valid: h > 0. Relative error about 1e-14, growing slowly with m L.
// Source: Taylor and Frobenius series of the fin equation; derived here.
func march(f Fin, h float64) (heat, tip float64) {
	heat, tip, _, _ = walk(f, h)
	return heat, tip
}

// walk is march, and says how many steps it took and how many terms the longest series had.
func walk(f Fin, h float64) (heat, tip float64, steps, terms int) {
	c := 2 * h / f.Conductivity
	gradient := 0.0 // du/dy over u
	if f.Tip == Convective {
		gradient = h / f.Conductivity
	}
	tip = 1
	for r := f.TipRadius; r > f.RootRadius; steps++ {
		if steps == mostSteps {
			panic("fin: more steps than any fin takes")
		}
		p := f.expand(r)
		next := max(r-p.step(c, r), f.RootRadius)
		length := r - next // of the rounded radii, so that no part is lost
		u, du, n := p.series(c, r, length, gradient)
		terms = max(terms, n)
		gradient = du / (u * length)
		tip /= u
		r = next
	}
	return 2 * math.Pi * f.Conductivity * f.RootRadius * f.RootThickness * gradient, tip, steps, terms
}

// expansion is P = r t about one radius, as a polynomial in the distance inward
// from it, with the distance to the nearest other zero of P.
type expansion struct{ p0, p1, p2, reach float64 }

func (f Fin) expand(r float64) expansion {
	switch f.Profile {
	case RolledTaper:
		return expansion{f.RootRadius * f.RootThickness, 0, 0, math.Inf(1)}
	case LinearTaper:
		t, g := f.ThicknessAt(r), f.slope()
		p := expansion{r * t, r*g - t, -g, r}
		if t > 0 {
			p.reach = min(r, math.Abs(t/g))
		}
		return p
	default:
		t := f.ThicknessAt(r)
		return expansion{r * t, -t, 0, r}
	}
}

// step returns a step length [m] whose series converges fast. At a knife edge
// p0 is zero and the second bound holds; elsewhere the first is the larger one
// or the reach is smaller than both.
func (p expansion) step(c, r float64) float64 {
	foldings := stepFoldings * math.Sqrt(p.p0/(c*r))
	if p.p1 != 0 {
		foldings = max(foldings, stepFoldings*p.p1/(c*r))
	}
	return min(stepReach*p.reach, foldings)
}

// series sums u and length du/dy at the inner end of a step on whose outer end
// u = 1 and du/dy = gradient, and says how many terms that took.
func (p expansion) series(c, r, length, gradient float64) (u, du float64, terms int) {
	scale := length * length / p.p0
	first, edge := gradient*length, p.p0 == 0
	if edge {
		scale = length / p.p1
		first = c * r * scale
	}
	alpha, beta := c*r*scale, c*length*scale
	if p.p1 == 0 && p.p2 == 0 {
		return constant(alpha, beta, first)
	}
	gamma, delta := p.p1*scale/length, p.p2*scale
	older, old, term := 0.0, 1.0, first
	u, du = 1+first, first
	for j := 1.0; j <= mostTerms; j++ {
		var next float64
		if edge { // regular solution: (j+1)^2 b[j+1] = ...
			next = (alpha*term - beta*old - delta*j*(j+1)*term) / ((j + 1) * (j + 1))
		} else { // (j+1) j b[j+1] = ...
			next = (alpha*old-beta*older-delta*(j-1)*j*old)/(j*(j+1)) - gamma*j/(j+1)*term
		}
		older, old, term = old, term, next
		u += term
		slope := (j + 1) * term
		du += slope
		if math.Abs(slope)+math.Abs(j*old) <= negligible*math.Abs(du) {
			return u, du, int(j)
		}
	}
	panic("fin: a series of more terms than any takes")
}
