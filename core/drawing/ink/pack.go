package ink

import (
	"encoding/binary"
	"errors"
	"math"
)

// Codes stand for names in packed ink; their order is the format.
var (
	classes = []Class{TubeMetal, FinMetal, WeldMetal}
	strokes = []Stroke{Thick, Thin, Hidden, Centre, Measure, Break, Ghost}
	arrows  = []Arrows{NoArrows, AtBoth, AtStart, AtEnd}
)

// Pack writes artwork as a run of little-endian float32: the drawing
// program reads it many times faster than JSON, and it is a third as long.
//
//	grain, count of tints, then each: step, narrow, loops
//	count of shapes, then each: class, narrow, angle, spacing, loops, edges
//	count of lines, then each: stroke, arrows, points
//
// A list is its length and its items. Tints have many corners, of which none need be finer than a pixel at the closest
// zoom: each is two 16-bit counts of grains.
func Pack(a Artwork) []byte {
	w := writer{out: make([]byte, 0, 8*a.Corners())}
	w.grain = grain(a.Tints)
	w.number(w.grain, float64(len(a.Tints)))
	for _, t := range a.Tints {
		w.number(float64(t.Step), t.Narrow, float64(len(t.Loops)))
		for _, l := range t.Loops {
			w.coarse(l)
		}
	}
	w.number(float64(len(a.Shapes)))
	for _, s := range a.Shapes {
		w.number(float64(code(classes, s.Class)), s.Narrow, s.Hatch.Angle, s.Hatch.Spacing)
		w.paths(s.Loops)
		w.paths(s.Edges)
	}
	w.number(float64(len(a.Lines)))
	for _, l := range a.Lines {
		w.number(float64(code(strokes, l.Stroke)), float64(code(arrows, l.Arrows)))
		w.path(l.Points)
	}
	return w.out
}

// Corners counts the points of all paths.
func (a Artwork) Corners() int {
	n := 0
	count := func(paths [][]Point) {
		for _, p := range paths {
			n += len(p) + 1
		}
	}
	for _, t := range a.Tints {
		count(t.Loops)
	}
	for _, s := range a.Shapes {
		count(s.Loops)
		count(s.Edges)
	}
	for _, l := range a.Lines {
		n += len(l.Points) + 1
	}
	return n
}

// grain returns the least length [mm] by which 16 bits count to the end of all tints.
func grain(tints []Tint) float64 {
	far := 0.0
	for _, t := range tints {
		for _, l := range t.Loops {
			for _, p := range l {
				far = max(far, p.X, p.Y)
			}
		}
	}
	return float64(float32(far / math.MaxUint16))
}

type writer struct {
	out   []byte
	grain float64
}

func (w *writer) coarse(p []Point) {
	count := func(x float64) uint16 { return uint16(max(0, min(math.MaxUint16, math.Round(x/w.grain)))) }
	w.number(float64(len(p)))
	for _, q := range p {
		w.out = binary.LittleEndian.AppendUint16(w.out, count(q.X))
		w.out = binary.LittleEndian.AppendUint16(w.out, count(q.Y))
	}
}

func (w *writer) number(xs ...float64) {
	for _, x := range xs {
		w.out = binary.LittleEndian.AppendUint32(w.out, math.Float32bits(float32(x)))
	}
}

func (w *writer) path(p []Point) {
	w.number(float64(len(p)))
	for _, q := range p {
		w.number(q.X, q.Y)
	}
}

func (w *writer) paths(ps [][]Point) {
	w.number(float64(len(ps)))
	for _, p := range ps {
		w.path(p)
	}
}

func code[T ~string](list []T, x T) int {
	for i, y := range list {
		if x == y {
			return i
		}
	}
	panic("ink: no code for " + string(x))
}

// Unpack reads what Pack wrote. Anything else gives an error.
func Unpack(ink []byte) (Artwork, error) {
	r, a := reader{in: ink}, Artwork{}
	r.grain = r.number()
	for n := r.count(); n > 0; n-- {
		t := Tint{Step: r.index(HeatSteps), Narrow: r.number(), Loops: make([][]Point, r.count())}
		for i := range t.Loops {
			t.Loops[i] = r.coarse()
		}
		a.Tints = append(a.Tints, t)
	}
	for n := r.count(); n > 0; n-- {
		s := Shape{Class: name(&r, classes), Narrow: r.number()}
		s.Hatch = Hatching{r.number(), r.number()}
		s.Loops, s.Edges = r.paths(), r.paths()
		a.Shapes = append(a.Shapes, s)
	}
	for n := r.count(); n > 0; n-- {
		a.Lines = append(a.Lines, Polyline{Stroke: name(&r, strokes), Arrows: name(&r, arrows), Points: r.path()})
	}
	if r.bad || len(r.in) > 0 {
		return Artwork{}, errors.New("ink: ink that makes no sense")
	}
	return a, nil
}

type reader struct {
	in    []byte
	bad   bool
	grain float64
}

func (r *reader) number() float64 {
	if len(r.in) < 4 {
		r.bad = true
		return 0
	}
	x := math.Float32frombits(binary.LittleEndian.Uint32(r.in))
	r.in = r.in[4:]
	return float64(x)
}

// count reads a length, never more than there are numbers left.
func (r *reader) count() int {
	x := r.number()
	if !(x >= 0 && x <= float64(len(r.in)/4)) {
		r.bad = true
		return 0
	}
	return int(x)
}

// coarse reads a loop of at least three corners.
func (r *reader) coarse() []Point {
	n := r.count()
	if n < 3 {
		r.bad = true
		return nil
	}
	p := make([]Point, n)
	for i := range p {
		p[i] = Point{float64(binary.LittleEndian.Uint16(r.in)) * r.grain, float64(binary.LittleEndian.Uint16(r.in[2:])) * r.grain}
		r.in = r.in[4:]
	}
	return p
}

func (r *reader) path() []Point {
	n := r.count()
	if n == 0 {
		return nil
	}
	p := make([]Point, n)
	for i := range p {
		p[i] = Point{r.number(), r.number()}
	}
	return p
}

func (r *reader) paths() [][]Point {
	n := r.count()
	if n == 0 {
		return nil
	}
	ps := make([][]Point, n)
	for i := range ps {
		ps[i] = r.path()
	}
	return ps
}

func name[T any](r *reader, list []T) T {
	return list[r.index(len(list))]
}

// index reads a place in a list of n.
func (r *reader) index(n int) int {
	i := int(r.number())
	if i < 0 || i >= n {
		r.bad = true
		return 0
	}
	return i
}
