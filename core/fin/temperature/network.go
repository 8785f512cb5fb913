package temperature

import (
	"fmt"

	"finwright/core/numeric"
)

// network is the discrete problem as conductances: links between unknowns and
// a ground that each has to its fluid. Keeping them apart, rather than as one
// matrix, is what lets heat in equal heat out where films are weak and metal strong.
type network struct {
	links  []link
	ground []float64 // [W/K]
	load   []float64 // [W] ground times the fluid's temperature
}

type link struct {
	i, j        int
	conductance float64 // [W/K]
}

// linksOf is how many links come to a node, about.
const linksOf = 4

func newNetwork(unknowns int) *network {
	return &network{links: make([]link, 0, linksOf*unknowns), ground: make([]float64, unknowns), load: make([]float64, unknowns)}
}

func (n *network) join(i, j int, conductance float64) {
	n.links = append(n.links, link{i, j, conductance})
}

// solve returns the temperatures, improved once from what heat is left over.
func (n *network) solve() ([]float64, error) {
	first := make([]int, len(n.ground))
	for i := range first {
		first[i] = i
	}
	for _, l := range n.links {
		late := max(l.i, l.j)
		first[late] = min(first[late], l.i, l.j)
	}
	m := numeric.NewSkyline(first)
	for i, g := range n.ground {
		m.Add(i, i, g)
	}
	for _, l := range n.links {
		m.Add(l.i, l.i, l.conductance)
		m.Add(l.j, l.j, l.conductance)
		m.Add(l.i, l.j, -l.conductance)
	}
	if err := m.Factor(); err != nil {
		return nil, fmt.Errorf("temperature: %w", err)
	}
	theta := make([]float64, len(n.load))
	for range 2 {
		left := n.leftOver(theta)
		m.Solve(left)
		for i, d := range left {
			theta[i] += d
		}
	}
	return theta, nil
}

// leftOver returns the heat [W] that does not leave each unknown again. What a
// link takes from one end it gives to the other, so that rounding loses none.
func (n *network) leftOver(theta []float64) []float64 {
	heat := make([]float64, len(theta))
	for i, t := range theta {
		heat[i] = n.load[i] - n.ground[i]*t
	}
	for _, l := range n.links {
		flow := l.conductance * (theta[l.i] - theta[l.j])
		heat[l.i] -= flow
		heat[l.j] += flow
	}
	return heat
}
