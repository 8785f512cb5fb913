package ink

import "math"

// RGBA is a colour, each part from 0 to 1, alpha not multiplied in.
type RGBA [4]float32

// Theme is the colour of each tone.
type Theme [tones]RGBA

// Corner is a triangle's corner [device pixels] with its colour.
type Corner struct {
	X, Y float32
	RGBA RGBA
}

// Mesh is what a graphics processor draws: triangles painted one after another.
// Edges fade over one pixel, so no further smoothing is needed.
type Mesh struct {
	Corners   []Corner
	Triangles []uint16 // three places in Corners each, counted from Batch's start
	Batches   []Batch
}

// Batch is a run of a mesh that one call can draw.
type Batch struct{ Corner, Triangle int }

// batchSize keeps places within 16 bits.
const batchSize = 1 << 16

// Transform takes sheet to screen: k x + X, in CSS pixels with the sheet's millimetres at PxPerMM.
type Transform struct{ K, X, Y float64 }

// Screen is what a scene is painted on.
type Screen struct {
	Width, Height float64 // device pixels
	Ratio         float64 // device pixels per CSS pixel
	Transform     Transform
	Theme         Theme
}

// painter turns shapes and lines into a mesh.
type painter struct {
	view
	*Mesh
}

// view places a sheet on a screen.
type view struct {
	Screen
	scale, unit float64 // device pixels per sheet millimetre, and per millimetre as seen
}

func viewOn(s Screen) view {
	return view{s, s.Transform.K * PxPerMM * s.Ratio, PxPerMM * s.Ratio}
}

// Paint rebuilds a mesh. Line widths, dashes and hatching keep their size on screen at any zoom.
func (m *Mesh) Paint(a Artwork, s Screen) {
	m.Corners, m.Triangles, m.Batches = m.Corners[:0], m.Triangles[:0], append(m.Batches[:0], Batch{})
	p := painter{viewOn(s), m}
	for _, t := range a.Tints {
		p.tint(t)
	}
	for _, shape := range a.Shapes {
		p.metal(shape)
	}
	for _, l := range a.Lines {
		p.draw(l)
	}
}

func (v view) place(path []Point) []Point {
	out := make([]Point, len(path))
	for i, q := range path {
		out[i] = Point{q.X*v.scale + v.Transform.X*v.Ratio, q.Y*v.scale + v.Transform.Y*v.Ratio}
	}
	return out
}

// hatching returns the section lines of a shape's loops as they lie on the screen.
func (v view) hatching(s Shape, loops [][]Point) []Segment {
	origin := v.place([]Point{{}})[0]
	return Hatch(loops, Hatching{s.Hatch.Angle, s.Hatch.Spacing * v.unit}, origin, Point{}, Point{v.Width, v.Height})
}

// strokes returns a line as it lies on the screen, in its dashes, with its heads and the pen [device pixels].
func (v view) strokes(l Polyline) (parts, heads [][]Point, pen Pen) {
	pen = l.Stroke.Pen()
	width := pen.Width * v.unit
	path := snap(v.place(l.Points), width)
	parts = [][]Point{path}
	if dash := pen.Dashes(Length(path) / v.unit); dash != nil {
		for i := range dash {
			dash[i] *= v.unit
		}
		parts = Dash(path, dash...)
	}
	pen.Width = width
	return parts, l.Arrows.Heads(path, v.unit), pen
}

// tint paints flat pieces. The outline covers their rim, save where the metal is too thin to have one.
func (p painter) tint(t Tint) {
	colour := p.Theme[HeatTone(t.Step)]
	for _, l := range t.Loops {
		path := p.place(l)
		if t.Narrow*p.Transform.K < SolidBelow {
			p.fill([][]Point{path}, colour)
		} else {
			p.fan(path, colour)
		}
	}
}

// fan fills a convex loop, edges as they fall.
func (p painter) fan(loop []Point, colour RGBA) {
	p.reserve(len(loop))
	first := p.corner(loop[0], colour)
	last := p.corner(loop[1], colour)
	for _, q := range loop[2:] {
		next := p.corner(q, colour)
		p.Triangles = append(p.Triangles, first, last, next)
		last = next
	}
}

func (p painter) metal(s Shape) {
	loops := make([][]Point, len(s.Loops))
	for i, l := range s.Loops {
		loops[i] = p.place(l)
	}
	ink := p.Theme[InkTone]
	tinted := s.Hatch.Spacing == 0
	if s.Narrow*p.Transform.K < SolidBelow {
		if !tinted {
			p.fill(loops, ink)
		}
		return
	}
	if !tinted {
		for _, l := range p.hatching(s, loops) {
			p.stroke(l[:], ThinWidth*p.unit, p.Theme[FaintTone])
		}
	}
	for _, e := range s.Edges {
		p.stroke(snap(p.place(e), ThickWidth*p.unit), ThickWidth*p.unit, ink)
	}
}

// fill paints the inside of loops. Steep sides fade over a pixel across, so that a fin thinner than a pixel gets its
// share of ink wherever it falls; flat ones lie where pixels begin; what lies between fades outwards.
func (p painter) fill(loops [][]Point, colour RGBA) {
	for i, l := range loops {
		crisp := snap(Closed(l), 2)
		for j := range l {
			loops[i][j].Y = math.Round(crisp[j].Y*64) / 64 // fewer levels, none a hair apart
		}
	}
	for _, q := range Fill(loops) {
		left, right := ramp(q[0], q[3]), ramp(q[1], q[2])
		outer, inner := [4]Point{}, [4]Point{}
		tone := [4]RGBA{}
		for _, side := range [2][2]int{{0, 1}, {3, 2}} {
			l, r := side[0], side[1]
			width := q[r].X - q[l].X
			outer[l], outer[r] = Point{q[l].X - left, q[l].Y}, Point{q[r].X + right, q[r].Y}
			inner[l], inner[r] = Point{q[l].X + left, q[l].Y}, Point{q[r].X - right, q[r].Y}
			c := colour
			if width < left+right {
				inner[l], inner[r] = inner[r], inner[l] // never full: level between where the pixel takes in all of it
				c[3] *= float32(width / (left + right))
			}
			tone[l], tone[r] = c, c
		}
		clear := colour
		clear[3] = 0
		p.quad(outer[0], inner[0], inner[3], outer[3], clear, tone[0], tone[3], clear)
		p.quad(inner[0], inner[1], inner[2], inner[3], tone[0], tone[1], tone[2], tone[3])
		p.quad(inner[1], outer[1], outer[2], inner[2], tone[1], clear, clear, tone[2])
	}
	for _, l := range loops {
		for i, a := range l {
			b := l[(i+1)%len(l)]
			if a.Y != b.Y && ramp(a, b) == 0 {
				p.stroke([]Point{a, b}, 0, colour)
			}
		}
	}
}

// ramp returns half the width over which a side from a to b fades across, 0 for a shallow one.
func ramp(a, b Point) float64 {
	if math.Abs(b.X-a.X) > math.Abs(b.Y-a.Y) {
		return 0
	}
	return 0.5
}

func (p painter) draw(l Polyline) {
	parts, heads, pen := p.strokes(l)
	colour := p.Theme[pen.Tone]
	for _, d := range parts {
		p.stroke(d, pen.Width, colour)
	}
	for _, h := range heads {
		p.head(h[0], h[1], h[2], colour)
	}
}

// head paints an arrowhead as a ribbon that widens from its tip to its barbs, so that it is a slender triangle also where
// it is three pixels wide. Across, it fades over a pixel as a stroke does.
func (p painter) head(tip, left, right Point, colour RGBA) {
	back, half := Between(left, right, 0.5), Distance(left, right)/2
	if half == 0 {
		return
	}
	nx, ny := (left.X-back.X)/half, (left.Y-back.Y)/half
	stations := [3]float64{0, min(1, 0.5/half), 1} // up to the second it is narrower than a pixel
	p.reserve(4 * len(stations))
	var last [4]uint16
	for i, f := range stations {
		q, w := Between(tip, back, f), f*half
		at := func(d float64) Point { return Point{q.X + nx*d, q.Y + ny*d} }
		peak, clear := colour, colour
		peak[3] *= float32(min(1, 2*w))
		clear[3] = 0
		core, edge := max(w-0.5, 0), w+0.5
		next := [4]uint16{p.corner(at(edge), clear), p.corner(at(core), peak), p.corner(at(-core), peak), p.corner(at(-edge), clear)}
		if i > 0 {
			p.ribbon(last, next)
		}
		last = next
	}
}

// ribbon joins two rows of corners across a stroke.
func (p painter) ribbon(last, next [4]uint16) {
	for j := range 3 {
		p.Triangles = append(p.Triangles, last[j], last[j+1], next[j], last[j+1], next[j+1], next[j])
	}
}

// snap moves level and plumb parts of a path to where pixels begin or, for
// lines an odd number of pixels wide, to their middle: such lines come out crisp.
func snap(path []Point, width float64) []Point {
	half := 0.5 * float64(int(math.Round(width))&1)
	round := func(x float64) float64 { return math.Round(x-half) + half }
	out := append([]Point(nil), path...)
	for i := 0; i+1 < len(path); i++ {
		if math.Abs(path[i].X-path[i+1].X) < 1e-3 {
			out[i].X, out[i+1].X = round(path[i].X), round(path[i+1].X)
		}
		if math.Abs(path[i].Y-path[i+1].Y) < 1e-3 {
			out[i].Y, out[i+1].Y = round(path[i].Y), round(path[i+1].Y)
		}
	}
	return out
}

// stroke draws a path as a ribbon whose edges fade out over a pixel; a path that ends where it begins is closed.
// Width 0 draws only the fade of a filled edge.
func (p painter) stroke(path []Point, width float64, colour RGBA) {
	n := len(path)
	switch {
	case n < 2:
		return
	case 4*n > batchSize:
		p.stroke(path[:n/2+1], width, colour)
		p.stroke(path[n/2:], width, colour)
		return
	}
	p.reserve(4 * n)
	ring := n > 2 && path[0] == path[n-1]
	core, edge := max(width/2-0.5, 0), width/2+0.5
	peak, clear := colour, colour
	peak[3] *= float32(min(1, max(width, 0.5)))
	clear[3] = 0
	var last [4]uint16
	for i, q := range path {
		before, after := q, q
		switch {
		case i > 0:
			before = path[i-1]
		case ring:
			before = path[n-2]
		}
		switch {
		case i < n-1:
			after = path[i+1]
		case ring:
			after = path[1]
		}
		mx, my := mitre(before, q, after)
		at := func(d float64) Point { return Point{q.X + mx*d, q.Y + my*d} }
		next := [4]uint16{p.corner(at(edge), clear), p.corner(at(core), peak), p.corner(at(-core), peak), p.corner(at(-edge), clear)}
		if i > 0 {
			p.ribbon(last, next)
		}
		last = next
	}
}

// mitre returns the direction in which a ribbon's edge leaves the path at q, so long that both sides keep their width; sharp corners are cut.
func mitre(before, q, after Point) (x, y float64) {
	ax, ay := normal(before, q)
	bx, by := normal(q, after)
	if ax == 0 && ay == 0 {
		return bx, by
	}
	if bx == 0 && by == 0 {
		return ax, ay
	}
	sx, sy := ax+bx, ay+by
	square := sx*sx + sy*sy
	const sharpest = 0.6 // of |a+b|^2 = 4 cos^2(half the turn)
	if square < sharpest {
		return ax, ay
	}
	return 2 * sx / square, 2 * sy / square
}

func normal(a, b Point) (x, y float64) {
	d := Distance(a, b)
	if d < 1e-9 {
		return 0, 0
	}
	return (a.Y - b.Y) / d, (b.X - a.X) / d
}

func (p painter) quad(a, b, c, d Point, ca, cb, cc, cd RGBA) {
	p.reserve(4)
	i, j, k, l := p.corner(a, ca), p.corner(b, cb), p.corner(c, cc), p.corner(d, cd)
	p.Triangles = append(p.Triangles, i, j, k, i, k, l)
}

// reserve starts a new batch unless the current one has places for n more corners.
func (p painter) reserve(n int) {
	if len(p.Corners)-p.Batches[len(p.Batches)-1].Corner+n > batchSize {
		p.Batches = append(p.Batches, Batch{len(p.Corners), len(p.Triangles)})
	}
}

// corner adds a corner and returns its place in the batch.
func (p painter) corner(q Point, colour RGBA) uint16 {
	p.Corners = append(p.Corners, Corner{float32(q.X), float32(q.Y), colour})
	return uint16(len(p.Corners) - 1 - p.Batches[len(p.Batches)-1].Corner)
}

// Batch returns the corners and triangles of one batch.
func (m *Mesh) Batch(i int) (corners []Corner, triangles []uint16) {
	from, to := m.Batches[i], Batch{len(m.Corners), len(m.Triangles)}
	if i+1 < len(m.Batches) {
		to = m.Batches[i+1]
	}
	return m.Corners[from.Corner:to.Corner], m.Triangles[from.Triangle:to.Triangle]
}
