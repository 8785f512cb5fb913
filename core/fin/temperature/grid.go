package temperature

import "math"

// Cells across each part of the section at fineness 1, chosen so that the heat
// comes out within 2e-3; finer grids multiply them all.
const (
	acrossFin    = 8
	acrossGap    = 16
	throughWall  = 12
	throughLayer = 6 // groove or foot
	alongFin     = 28
)

// grading is the power with which cells shrink towards a corner. The flux there
// grows as distance^(-1/3), for which any power above 1.5 keeps second order.
const grading = 2

// body is a piece of metal, or none.
type body int8

const (
	void body = iota
	tubeBody
	finBody
)

// point is a corner of the grid as one body sees it; points of both bodies that
// lie together, or are joined round the pitch, may share an unknown.
type point struct {
	r, x    float64
	unknown int
}

// cell is a quadrilateral of one body; corners run round it.
type cell struct {
	body    body
	corners [4]int // points
}

// side is an edge of the metal: its two points and the outward normal.
type side struct {
	a, b   int
	nr, nx float64
}

// contact is an edge where two bodies meet through the bond: a on the one, b on the other.
type contact struct{ a, b [2]int }

// grid is a structured grid fitted to the section's outline.
type grid struct {
	points   []point
	cells    []cell
	bore     []side
	between  []side // wetted tube, foot or muff between fins
	fin      []side // wetted faces and edge of the fin
	contacts []contact
	root     []int // points across the fin where it stands free
	tip      []int // points across the fin's edge
	surface  []int // points of the tube's outside along a pitch
	unknowns int
}

// layout numbers rows of corners outwards and columns of corners along the pitch.
type layout struct {
	Section
	rows             []float64 // radius of each row of corners
	across           []float64 // of the fin, 0 to 1 at corners 0 to len-1
	gap              []float64 // of the gap, 0 to 1, from the fin on
	floor, seat, top int       // rows at the bottom of the groove, the tube's surface and the free root
	metal            [][]body  // of every cell, by row and column
}

func (s Section) layout(fineness int) layout {
	l := layout{
		Section: s,
		across:  towardsBoth(acrossFin * fineness),
		gap:     towardsBoth(acrossGap * fineness),
	}
	l.stack(s.BoreRadius, s.TubeRadius-s.Groove, towardsEnd(throughWall*fineness))
	l.floor, l.seat = len(l.rows)-1, len(l.rows)-1
	if s.Groove > 0 {
		l.stack(l.rows[l.floor], s.TubeRadius, towardsBoth(throughLayer*fineness))
		l.seat = len(l.rows) - 1
	}
	if s.Foot > 0 {
		l.stack(s.TubeRadius, s.rootRadius(), towardsBoth(throughLayer*fineness))
	}
	l.top = len(l.rows) - 1
	l.stack(s.rootRadius(), s.FinRadius, towardsStart(alongFin*fineness))
	all, ofFin := l.columns()
	l.metal = make([][]body, len(l.rows)-1)
	for j := range l.metal {
		l.metal[j] = make([]body, all)
		for i := range all {
			l.metal[j][i] = l.of(j, i >= ofFin)
		}
	}
	return l
}

// stack adds rows between two radii; the first is there already, unless none is.
func (l *layout) stack(from, to float64, parts []float64) {
	if len(l.rows) > 0 {
		parts = parts[1:]
	}
	for _, f := range parts {
		l.rows = append(l.rows, from+(to-from)*f)
	}
}

// columns returns how many columns of cells there are, and how many of them are the fin's.
func (l *layout) columns() (all, ofFin int) {
	return len(l.across) + len(l.gap) - 2, len(l.across) - 1
}

// x returns where column i of corners lies at radius r.
func (l *layout) x(i int, r float64) float64 {
	heel, toe := l.faces(r)
	if last := len(l.across) - 1; i > last {
		return toe + (l.Pitch+heel-toe)*l.gap[i-last]
	}
	return heel + (toe-heel)*l.across[i]
}

// of returns the metal of the cells above row j, in the gap between fins or not.
func (l *layout) of(j int, gap bool) body {
	switch {
	case j < l.floor || j < l.seat && gap:
		return tubeBody
	case j >= l.top && gap:
		return void
	}
	return finBody
}

// at returns the metal of the cell above row j and right of column i.
func (l *layout) at(j, i int) body {
	if j < 0 || j >= len(l.metal) || i < 0 || i >= len(l.metal[j]) {
		return void
	}
	return l.metal[j][i]
}

// touches reports whether corner (j, i) belongs to b. The tube closes round the pitch.
func (l *layout) touches(j, i int, b body) bool {
	left := i - 1
	if b == tubeBody && i == 0 {
		left = len(l.metal[0]) - 1
	}
	return l.at(j, i) == b || l.at(j-1, i) == b || l.at(j, left) == b || l.at(j-1, left) == b
}

// grid numbers the points row by row, so that the matrix is narrow, and joins them into cells.
func (s Section) grid(fineness int) grid {
	l := s.layout(fineness)
	all, ofFin := l.columns()
	var g grid
	onTube, onFin := make([][]int, len(l.rows)), make([][]int, len(l.rows))
	for j, r := range l.rows {
		onTube[j], onFin[j] = make([]int, all+1), make([]int, all+1)
		for i := range all + 1 {
			onTube[j][i], onFin[j][i] = none, none
			if l.touches(j, i, tubeBody) {
				with := none
				if i == all {
					with = onTube[j][0]
				}
				onTube[j][i] = g.add(r, l.x(i, r), with)
			}
			if l.touches(j, i, finBody) {
				with := none
				if i == all && !s.Slit {
					with = onFin[j][0]
				}
				if s.Bond == 0 && onTube[j][i] != none {
					with = onTube[j][i]
				}
				onFin[j][i] = g.add(r, l.x(i, r), with)
			}
		}
	}

	ids := map[body][][]int{tubeBody: onTube, finBody: onFin}
	for j := range len(l.rows) - 1 {
		for i := range all {
			b := l.at(j, i)
			if b == void {
				continue
			}
			low, high := ids[b][j], ids[b][j+1]
			g.cells = append(g.cells, cell{b, [4]int{low[i], low[i+1], high[i+1], high[i]}})
			if j == 0 {
				g.bore = append(g.bore, side{low[i], low[i+1], -1, 0})
			}
			if l.at(j+1, i) == void {
				top := side{high[i], high[i+1], 1, 0}
				if i < ofFin {
					g.fin = append(g.fin, top)
				} else {
					g.between = append(g.between, top)
				}
			}
			if j >= l.top && i == 0 {
				g.fin = append(g.fin, g.face(low[i], high[i], -1))
			}
			if j >= l.top && i == ofFin-1 {
				g.fin = append(g.fin, g.face(low[i+1], high[i+1], 1))
			}
		}
	}
	if s.Bond > 0 {
		g.contacts = l.contacts(onTube, onFin)
	}
	g.root = onFin[l.top][:ofFin+1]
	g.tip = onFin[len(l.rows)-1][:ofFin+1]
	g.surface = onTube[l.seat]
	if s.Groove > 0 { // the tube's outside ends at the groove
		g.surface = g.surface[ofFin:]
	}
	return g
}

// none is the number of a point that is not there.
const none = -1

// add appends a point and returns its number; it shares the unknown of point with, if any.
func (g *grid) add(r, x float64, with int) int {
	unknown := g.unknowns
	if with == none {
		g.unknowns++
	} else {
		unknown = g.points[with].unknown
	}
	g.points = append(g.points, point{r, x, unknown})
	return len(g.points) - 1
}

// face returns the side from a outwards to b whose normal points along sign x.
func (g *grid) face(a, b int, sign float64) side {
	dr, dx := g.points[b].r-g.points[a].r, g.points[b].x-g.points[a].x
	length := math.Hypot(dr, dx)
	return side{a, b, -sign * dx / length, sign * dr / length}
}

// contacts returns the edges between tube and fin: the floor and walls of a
// groove, the foot of a fin that stands on the tube, or the whole of a foot.
func (l *layout) contacts(tube, fin [][]int) []contact {
	var found []contact
	all, ofFin := l.columns()
	for i := range all {
		if l.at(l.floor, i) == finBody {
			j := l.floor
			found = append(found, contact{[2]int{tube[j][i], tube[j][i+1]}, [2]int{fin[j][i], fin[j][i+1]}})
		}
	}
	for j := l.floor; j < l.seat; j++ {
		for _, i := range []int{0, ofFin} {
			found = append(found, contact{[2]int{tube[j][i], tube[j+1][i]}, [2]int{fin[j][i], fin[j+1][i]}})
		}
	}
	return found
}

// towardsStart returns n+1 places from 0 to 1, close together at 0.
func towardsStart(n int) []float64 {
	places := make([]float64, n+1)
	for i := range places {
		places[i] = math.Pow(float64(i)/float64(n), grading)
	}
	return places
}

// towardsEnd returns n+1 places from 0 to 1, close together at 1.
func towardsEnd(n int) []float64 { return mirrored(towardsStart(n)) }

// towardsBoth returns n+1 places from 0 to 1, n even, close together at both ends.
func towardsBoth(n int) []float64 {
	half := towardsStart(n / 2)
	places := make([]float64, 0, n+1)
	for _, f := range half {
		places = append(places, f/2)
	}
	for _, f := range mirrored(half)[1:] {
		places = append(places, (1+f)/2)
	}
	return places
}

// mirrored returns places counted from the other end.
func mirrored(places []float64) []float64 {
	n := len(places)
	out := make([]float64, n)
	for i, f := range places {
		out[n-1-i] = 1 - f
	}
	return out
}
