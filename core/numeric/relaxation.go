package numeric

import "math"

// stages is the number of Gauss points in a panel; the method is of order twice that.
const stages = 8

// Relaxation solves dT/ds = rate (f(s) - T) for s from 0 to 1 by Gauss
// collocation in panels short enough that only rounding is left. What T gains
// over the way is rate times the mean of f - T to rounding, so a heat balance closes.
//
// Valid: rate >= 0, at most that of the mesh.
// Source: Hairer & Wanner, Solving Ordinary Differential Equations II, Gauss
// methods, from memory.
type Relaxation struct {
	kinds []collocated // one for each length of panel
	kind  []int        // of each panel
}

// collocated is one length of panel.
type collocated struct {
	reply [stages][stages]float64 // T at the points from f at the points
	carry [stages]float64         // T at the points from T at the panel's start
	step  float64                 // rate times panel length
}

// gaussRule holds Gauss's points and weights on 0..1 and the integrals from 0
// to point i of the Lagrange polynomial of point j.
type gaussRule struct {
	points, weights [stages]float64
	integral        [stages][stages]float64
}

var collocation = newGaussRule()

func newGaussRule() gaussRule {
	var g gaussRule
	var at [stages][]float64 // Legendre polynomials 0 to stages+1 at each point
	for i := range stages {
		x := -math.Cos(math.Pi * (float64(i) + 0.75) / (stages + 0.5))
		for range 10 {
			p := legendre(x)
			slope := stages * (x*p[stages] - p[stages-1]) / (x*x - 1)
			x -= p[stages] / slope
		}
		at[i] = legendre(x)
		slope := stages * (x*at[i][stages] - at[i][stages-1]) / (x*x - 1)
		g.points[i] = (1 + x) / 2
		g.weights[i] = 1 / ((1 - x*x) * slope * slope)
	}
	for i := range stages {
		for j := range stages {
			sum := g.points[i]
			for k := 1; k < stages; k++ {
				sum += at[j][k] * (at[i][k+1] - at[i][k-1]) / 2
			}
			g.integral[i][j] = g.weights[j] * sum
		}
	}
	return g
}

// legendre returns the Legendre polynomials 0 to stages at x.
func legendre(x float64) []float64 {
	p := []float64{1, x}
	for k := 1; k < stages; k++ {
		n := float64(k)
		p = append(p, ((2*n+1)*x*p[k]-n*p[k-1])/(n+1))
	}
	return p
}

// Prepare makes r one for a rate [-] over the panels of a mesh.
func (r *Relaxation) Prepare(rate float64, m Mesh) {
	r.kinds, r.kind = r.kinds[:0], r.kind[:0]
	for n, length := range m.lengths {
		if mirror := len(m.lengths) - 1 - n; n > 0 && length == m.lengths[n-1] {
			r.kind = append(r.kind, r.kind[n-1])
		} else if mirror < n {
			r.kind = append(r.kind, r.kind[mirror])
		} else {
			r.kind = append(r.kind, len(r.kinds))
			r.kinds = append(r.kinds, collocate(rate*length))
		}
	}
}

// collocate solves (I + step A) T = T0 + step A f, with the integrals A, for each unit f and for T0 = 1. No pivot is looked for: Gauss's
// weights make I + step A positive, in the sense of the product that they weigh.
func collocate(step float64) collocated {
	r := collocated{step: step}
	var m [stages][stages]float64 // I + step A, and in the end its inverse
	for i := range stages {
		for j := range stages {
			m[i][j] = step * collocation.integral[i][j]
		}
		m[i][i]++
	}
	for k := range stages {
		from := &m[k]
		pivot := 1 / from[k]
		from[k] = 1
		for j := range from {
			from[j] *= pivot
		}
		for i := range stages {
			if i == k {
				continue
			}
			rest := &m[i]
			factor := rest[k]
			rest[k] = 0
			for j := range rest {
				rest[j] -= factor * from[j]
			}
		}
	}
	for i := range stages {
		for j := range stages {
			r.reply[i][j] = -m[i][j] // step A times the inverse is what the inverse leaves of I
			r.carry[i] += m[i][j]
		}
		r.reply[i][i]++
	}
	return r
}

// Run fills t with T at the places, given T(0) = start and f there, and returns
// T(1), all in the unit [any] of start. Backward runs from s = 1 to 0 instead: start is T(1) and T(0) is returned.
//
// Valid: as many places in t as in f.
// Source: see Relaxation.
func (r *Relaxation) Run(start float64, f, t []float64, backward bool) float64 {
	panels := len(r.kind)
	for n, kind := range r.kind { // a mesh is the same from both ends
		k := &r.kinds[kind]
		first, next := n*stages, 1
		if backward {
			first, next = (panels-n)*stages-1, -1
		}
		var drive [stages]float64 // f at the panel's points
		for j := range drive {
			drive[j] = f[first+j*next]
		}
		gain := 0.0
		for i := range stages {
			v, reply := k.carry[i]*start, &k.reply[i]
			for j := range drive {
				v += reply[j] * drive[j]
			}
			t[first+i*next] = v
			gain += collocation.weights[i] * (drive[i] - v)
		}
		start += k.step * gain
	}
	return start
}
