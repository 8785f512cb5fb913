package drawing

import (
	"encoding/binary"
	"fmt"
	"math"
)

// Codes stand for names in packed ink; their order is the format.
var (
	classes = []Class{TubeMetal, FinMetal, WeldMetal}
	strokes = []Stroke{Thick, Thin, Hidden, Centre, Measure, Break}
	arrows  = []Arrows{NoArrows, AtBoth, AtStart, AtEnd}
)

// Pack writes shapes and lines as a run of little-endian float32: the drawing
// program reads it many times faster than JSON, and it is a third as long.
//
//	count of shapes, then each: class, narrow, angle, spacing, loops, edges
//	count of lines, then each: stroke, arrows, points
//
// A list is its length and its items.
func Pack(shapes []Shape, lines []Line) []byte {
	w := writer{}
	w.number(float64(len(shapes)))
	for _, s := range shapes {
		w.number(float64(code(classes, s.Class)), s.Narrow, s.Hatch.Angle, s.Hatch.Spacing)
		w.paths(s.Loops)
		w.paths(s.Edges)
	}
	w.number(float64(len(lines)))
	for _, l := range lines {
		w.number(float64(code(strokes, l.Stroke)), float64(code(arrows, l.Arrows)))
		w.path(l.Points)
	}
	return w.out
}

type writer struct{ out []byte }

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

func code[T comparable](list []T, x T) int {
	for i, y := range list {
		if x == y {
			return i
		}
	}
	panic(fmt.Sprintf("drawing: no code for %v", x))
}

// Unpack reads what Pack wrote. Anything else gives an error.
func Unpack(ink []byte) (shapes []Shape, lines []Line, err error) {
	r := reader{in: ink}
	for n := r.count(); n > 0; n-- {
		s := Shape{Class: name(&r, classes), Narrow: r.number()}
		s.Hatch = Hatching{r.number(), r.number()}
		s.Loops, s.Edges = r.paths(), r.paths()
		shapes = append(shapes, s)
	}
	for n := r.count(); n > 0; n-- {
		lines = append(lines, Line{Stroke: name(&r, strokes), Arrows: name(&r, arrows), Points: r.path()})
	}
	if r.bad || len(r.in) > 0 {
		return nil, nil, fmt.Errorf("drawing: ink of %d bytes makes no sense", len(ink))
	}
	return shapes, lines, nil
}

type reader struct {
	in  []byte
	bad bool
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
	i := int(r.number())
	if i < 0 || i >= len(list) {
		r.bad = true
		return list[0]
	}
	return list[i]
}
