package temperature

import "math"

// Fineness scales the grid.
type Fineness int

const (
	Page    Fineness = 1 // heat within 2e-3: what a page redraws at once
	Refined Fineness = 3 // heat within 2e-4
)

// Node is a place in the metal and its temperature.
type Node struct {
	R float64 // [m] from the axis
	X float64 // [m] along the tube from the heel of the fin
	T float64 // [C]
}

// Distribution is the temperature in one pitch and what follows from it.
type Distribution struct {
	Nodes []Node
	Quads [][4]int // nodes round each cell of metal; fin and tube do not share nodes

	Bore    float64 // [C] mean metal temperature at the bore
	Surface float64 // [C] mean temperature of the tube's outside, under foot or fin too
	Root    float64 // [C] mean over the fin's section where it stands free
	Tip     float64 // [C] mean over the fin's edge
	Coldest float64 // [C] in the metal
	Hottest float64 // [C] in the metal

	HeatIn      float64 // [W] per pitch, from the inside fluid
	HeatOut     float64 // [W] per pitch, to the outside fluid
	Conductance float64 // [W/K] per pitch, heat over the difference of fluid temperatures
	Efficiency  float64 // [-] heat from faces and edge over that with all of them at Root
}

// Solve returns the field between an inside and an outside fluid, both [C].
//
// Valid: as Section says. Heat converges from above with the square of the
// cell size; at Page it is within 2e-3 for any usual fin, at Refined 2e-4.
// Source: see solve; checked against an independent finite-volume solution.
func Solve(s Section, inside, outside float64, f Fineness) (Distribution, error) {
	if !s.wellFormed() || f < 1 {
		panic("temperature: the section is not well formed")
	}
	g := s.grid(int(f))
	// Solved for a difference of one kelvin and scaled, so that equal fluids do no harm.
	one := func(float64, float64, side) float64 { return 1 }
	zero := func(float64, float64, side) float64 { return 0 }
	theta, err := g.solve(s, one, zero)
	if err != nil {
		return Distribution{}, err
	}
	scale := func(theta float64) float64 { return outside + theta*(inside-outside) }

	out := Distribution{Nodes: make([]Node, len(g.points)), Quads: make([][4]int, len(g.cells))}
	for i, p := range g.points {
		out.Nodes[i] = Node{p.r, p.x, scale(theta[p.unknown])}
	}
	for i, c := range g.cells {
		out.Quads[i] = c.corners
	}
	least, most := math.Inf(1), math.Inf(-1)
	for _, t := range theta {
		least, most = min(least, t), max(most, t)
	}
	out.Coldest, out.Hottest = scale(least), scale(most)
	if out.Coldest > out.Hottest {
		out.Coldest, out.Hottest = out.Hottest, out.Coldest
	}

	boreArea, bore := g.over(g.bore, theta)
	_, between := g.over(g.between, theta)
	finArea, faces := g.over(g.fin, theta)
	root := g.mean(g.root, theta)
	out.Bore, out.Surface = scale(bore/boreArea), scale(g.mean(g.surface, theta))
	out.Root, out.Tip = scale(root), scale(g.mean(g.tip, theta))
	out.Conductance = s.OutsideFilm * (between + faces)
	out.HeatIn = s.InsideFilm * (boreArea - bore) * (inside - outside)
	out.HeatOut = out.Conductance * (inside - outside)
	out.Efficiency = faces / (finArea * root)
	return out, nil
}

// Constriction returns by how much [-] a tube with the overall coefficient u [W/(m2 K)] on its bare area of diameter od [m]
// carries more heat than the field of one pitch [m]: of resistances in series, by how much the heat is held up that gathers at the
// root of the fin.
//
//	x = u pi d p/K - 1
//
// Valid: the u of the same films, dirt, bond and fin; the page's grid leaves it up to 0.001 too low.
// Source: definition.
func (d *Distribution) Constriction(u, od, pitch float64) float64 {
	return u*math.Pi*od*pitch/d.Conductance - 1
}

// over returns the area [m2] of sides and the integral of theta on them.
func (g grid) over(sides []side, theta []float64) (area, integral float64) {
	for _, s := range sides {
		a, b := theta[g.points[s.a].unknown], theta[g.points[s.b].unknown]
		g.along(s.a, s.b, func(na, nb, _, _, ds float64) {
			area += ds
			integral += (na*a + nb*b) * ds
		})
	}
	return area, integral
}

// mean returns theta averaged along a line of points at one radius.
func (g grid) mean(line []int, theta []float64) float64 {
	var length, sum float64
	for i := 1; i < len(line); i++ {
		p, q := g.points[line[i-1]], g.points[line[i]]
		length += q.x - p.x
		sum += (q.x - p.x) * (theta[p.unknown] + theta[q.unknown]) / 2
	}
	return sum / length
}
