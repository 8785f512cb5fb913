package temperature

import "math"

// gauss are the two abscissae of Gauss's rule on -1..1; both weights are one.
var gauss = [2]float64{-1 / math.Sqrt(3), 1 / math.Sqrt(3)}

// corners are the shape functions of a square at a place in it, and their derivatives along u and v.
type corners struct{ shape, du, dv [4]float64 }

// gaussCorners are those of the four places of the rule.
var gaussCorners = func() (at [4]corners) {
	for i, u := range gauss {
		for j, v := range gauss {
			at[2*i+j] = corners{
				shape: [4]float64{(1 - u) * (1 - v) / 4, (1 + u) * (1 - v) / 4, (1 + u) * (1 + v) / 4, (1 - u) * (1 + v) / 4},
				du:    [4]float64{-(1 - v) / 4, (1 - v) / 4, (1 + v) / 4, -(1 + v) / 4},
				dv:    [4]float64{-(1 - u) / 4, -(1 + u) / 4, (1 + u) / 4, (1 - u) / 4},
			}
		}
	}
	return at
}()

// ambient is the temperature of the fluid at a place on a side.
type ambient func(r, x float64, s side) float64

// solve returns the temperature of every unknown: bilinear finite elements in
// the Galerkin form of
//
//	div(k grad T) = 0,  -k dT/dn = h (T - ambient),  k dT/dn = jump/bond
//
// with r as weight: symmetric and free of loss on tapered cells too.
//
// Valid: a well-formed section.
// Source: Zienkiewicz & Taylor, The Finite Element Method, axisymmetric field
// problems, from memory.
func (g grid) solve(s Section, inside, outside ambient) ([]float64, error) {
	n := newNetwork(g.unknowns)
	for _, c := range g.cells {
		g.conduct(n, c, s.conductivity(c.body))
	}
	for _, c := range g.contacts {
		g.bond(n, c, 1/s.Bond)
	}
	for _, side := range g.bore {
		g.film(n, side, s.InsideFilm, inside)
	}
	for _, sides := range [][]side{g.between, g.fin} {
		for _, side := range sides {
			g.film(n, side, s.OutsideFilm, outside)
		}
	}
	return n.solve()
}

func (s Section) conductivity(b body) float64 {
	if b == tubeBody {
		return s.TubeConductivity
	}
	return s.FinConductivity
}

// conduct adds k times the integral of grad Ni . grad Nj 2 pi r over a cell.
func (g grid) conduct(n *network, c cell, k float64) {
	var p [4]point
	for i, at := range c.corners {
		p[i] = g.points[at]
	}
	var stiff [4][4]float64
	for at := range gaussCorners {
		shape, du, dv := &gaussCorners[at].shape, &gaussCorners[at].du, &gaussCorners[at].dv
		var r, ru, xu, rv, xv float64
		for i := range p {
			r += shape[i] * p[i].r
			ru += du[i] * p[i].r
			xu += du[i] * p[i].x
			rv += dv[i] * p[i].r
			xv += dv[i] * p[i].x
		}
		area := xu*rv - xv*ru
		weight := k * 2 * math.Pi * r / area
		var gr, gx [4]float64 // gradients times area
		for i := range p {
			gx[i] = rv*du[i] - ru*dv[i]
			gr[i] = xu*dv[i] - xv*du[i]
		}
		for a := range 4 {
			for b := range a {
				stiff[a][b] += weight * (gr[a]*gr[b] + gx[a]*gx[b])
			}
		}
	}
	for a := range 4 {
		for b := range a {
			n.join(p[a].unknown, p[b].unknown, -stiff[a][b])
		}
	}
}

// along walks the two Gauss points of an edge: shape functions and 2 pi r ds.
func (g grid) along(a, b int, visit func(na, nb, r, x, area float64)) {
	p, q := g.points[a], g.points[b]
	half := math.Hypot(q.r-p.r, q.x-p.x) / 2
	for _, u := range gauss {
		na, nb := (1-u)/2, (1+u)/2
		r := na*p.r + nb*q.r
		visit(na, nb, r, na*p.x+nb*q.x, 2*math.Pi*r*half)
	}
}

// film adds a film coefficient h on a side.
func (g grid) film(n *network, s side, h float64, t ambient) {
	a, b := g.points[s.a].unknown, g.points[s.b].unknown
	g.along(s.a, s.b, func(na, nb, r, x, area float64) {
		w, fluid := h*area, t(r, x, s)
		n.ground[a] += w * na
		n.ground[b] += w * nb
		n.load[a] += w * na * fluid
		n.load[b] += w * nb * fluid
		n.join(a, b, -w*na*nb)
	})
}

// bond adds a conductance [W/(m2 K)] between the two bodies at a contact.
func (g grid) bond(n *network, c contact, conductance float64) {
	ids := [4]int{g.points[c.a[0]].unknown, g.points[c.a[1]].unknown, g.points[c.b[0]].unknown, g.points[c.b[1]].unknown}
	g.along(c.a[0], c.a[1], func(na, nb, _, _, area float64) {
		jump := [4]float64{na, nb, -na, -nb}
		for i := range 4 {
			for j := range i {
				n.join(ids[i], ids[j], -conductance*area*jump[i]*jump[j])
			}
		}
	})
}
