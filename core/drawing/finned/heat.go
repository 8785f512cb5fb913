package finned

import (
	"cmp"
	"math"
	"slices"
	"sort"

	"finwright/core/drawing/ink"
	"finwright/core/numeric"
)

// HeatNode is a place in the metal and its temperature.
type HeatNode struct {
	R float64 // [m] from the axis
	X float64 // [m] along the tube from the heel of a fin
	T float64 // [C]
}

// Temperatures is the temperature in one pitch of the metal.
//
// Valid: each cell's first two corners lie on one radius, its last two on a
// greater one, and it runs round; tube and fin share no cell; Low <= High.
type Temperatures struct {
	Nodes     []HeatNode
	Quads     [][4]int // nodes round each cell
	Low, High float64  // [C] ends of the colour scale
}

// step returns which step of the colour scale t [C] is in.
func (h Temperatures) step(t float64) int {
	if h.High <= h.Low {
		return 0
	}
	return max(0, min(ink.HeatSteps-1, int(math.Floor((t-h.Low)/(h.High-h.Low)*ink.HeatSteps))))
}

// from returns the temperature at which a step begins [C].
func (h Temperatures) from(step int) float64 {
	return h.Low + (h.High-h.Low)*float64(step)/ink.HeatSteps
}

// heatRow is the cells of one body between two radii, in their order along the tube.
type heatRow struct {
	low, high float64 // [m]
	cells     [][4]HeatNode
}

// body is the tube's cells or the fin's, in rows from the axis outwards.
type body []heatRow

// bodies parts a field into the tube's cells and the fin's.
func (c composer) bodies() (ofTube, ofFin body) {
	r, groove, strip := c.od/2e3, c.groove/1e3, c.strip/1e3
	for _, q := range c.Heat.Quads {
		var cell [4]HeatNode
		var middle HeatNode
		for i, n := range q {
			cell[i] = c.Heat.Nodes[n]
			middle.R, middle.X = middle.R+cell[i].R/4, middle.X+cell[i].X/4
		}
		if cell[0].X > cell[1].X {
			cell = [4]HeatNode{cell[1], cell[0], cell[3], cell[2]}
		}
		into := &ofTube
		if middle.R > r || middle.R > r-groove && middle.X > 0 && middle.X < strip {
			into = &ofFin
		}
		*into = into.with(cell)
	}
	return ofTube.inOrder(), ofFin.inOrder()
}

// inOrder sorts rows outwards and their cells along the tube.
func (b body) inOrder() body {
	for i := range b {
		b[i].cells = numeric.Sorted(b[i].cells, func(a, b *[4]HeatNode) int { return cmp.Compare(a[0].X, b[0].X) })
	}
	return numeric.Sorted(b, func(a, b *heatRow) int { return cmp.Compare(a.low, b.low) })
}

// with adds a cell to its row; cells of one row mostly follow one another.
func (b body) with(cell [4]HeatNode) body {
	const usual = 24 // cells in a row
	for i := len(b) - 1; i >= 0; i-- {
		if b[i].low == cell[0].R {
			b[i].cells = append(b[i].cells, cell)
			return b
		}
	}
	return append(b, heatRow{cell[0].R, cell[2].R, append(make([][4]HeatNode, 0, usual), cell)})
}

// at returns the temperature [C] at a radius and a place along the tube [m]. Beside the metal that was solved for (in a
// bend, a fillet or a tooth) it is that of the nearest at the same radius.
func (b body) at(r, x, pitch float64) float64 {
	i, found := slices.BinarySearchFunc(b, r, func(row heatRow, r float64) int { return cmp.Compare(row.low, r) })
	if !found && i > 0 {
		i--
	}
	cells := b[i].cells
	v := max(0, min(1, (r-b[i].low)/(b[i].high-b[i].low)))
	edge := func(cell, low, high int) (x, t float64) {
		a, b := &cells[cell][low], &cells[cell][high]
		return a.X + v*(b.X-a.X), a.T + v*(b.T-a.T)
	}
	last := len(cells) - 1
	from, _ := edge(0, 0, 3)
	to, _ := edge(last, 1, 2)
	if off := x - (from+to)/2; math.Abs(off) > pitch/2*(1+1e-9) {
		x -= pitch * math.Round(off/pitch)
	}
	n := sort.Search(last, func(n int) bool {
		right, _ := edge(n, 1, 2)
		return x <= right
	})
	left, cool := edge(n, 0, 3)
	right, warm := edge(n, 1, 2)
	u := max(0, min(1, (x-left)/(right-left)))
	return cool + u*(warm-cool)
}
