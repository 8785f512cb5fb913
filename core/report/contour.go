package report

import "math"

// ContourLines returns the lines on which samples have the value level, by
// marching squares with linear interpolation. Sample (i, j) lies at x[i], y[j]
// and is values[j*cols+i]. A square with a sample that is not finite is left
// out. A closed line ends with its first point.
//
// Source: W. E. Lorensen and H. E. Cline, Computer Graphics 21 (1987) 163, in two dimensions; a saddle is
// parted by the mean of its corners.
func ContourLines(values []float64, cols, rows int, x, y []float64, level float64) [][][2]float64 {
	g := grid{values, cols, rows, x, y, level}
	// Every crossed edge joins at most two squares, so each has at most two neighbours along its line.
	next := map[int32][2]int32{}
	var edges []int32 // in the order met, so that the same samples give the same lines
	link := func(from, to int32) {
		known, met := next[from]
		if met {
			next[from] = [2]int32{known[0], to}
			return
		}
		next[from] = [2]int32{to, none}
		edges = append(edges, from)
	}
	for j := 0; j+1 < rows; j++ {
		for i := 0; i+1 < cols; i++ {
			pieces, n := g.segments(i, j)
			for _, s := range pieces[:n] {
				link(s[0], s[1])
				link(s[1], s[0])
			}
		}
	}
	var lines [][][2]float64
	for _, ended := range []bool{true, false} { // lines with two ends first, so that what is left is closed
		for _, edge := range edges {
			if n, left := next[edge]; left && (n[1] == none) == ended {
				lines = append(lines, g.walk(next, edge))
			}
		}
	}
	return lines
}

// walk follows a line from its first edge to its end, or back to the first, and takes its edges out of next.
func (g grid) walk(next map[int32][2]int32, edge int32) [][2]float64 {
	line := [][2]float64{g.crossing(edge)}
	for first, from := edge, int32(none); ; {
		to := next[edge][0]
		if to == from {
			to = next[edge][1]
		}
		delete(next, edge)
		if to == none {
			return line
		}
		line = append(line, g.crossing(to))
		if to == first {
			return line
		}
		from, edge = edge, to
	}
}

const none = -1

// grid numbers its edges: 2k runs right from sample k, 2k+1 runs up from it.
type grid struct {
	values     []float64
	cols, rows int
	x, y       []float64
	level      float64
}

// segments returns the pieces of the line within the square whose lower left sample is (i, j), each from edge to edge,
// and how many there are.
func (g grid) segments(i, j int) (pieces [2][2]int32, n int) {
	k := j*g.cols + i
	a, b, c, d := g.values[k], g.values[k+1], g.values[k+1+g.cols], g.values[k+g.cols]
	if (a < g.level && b < g.level && c < g.level && d < g.level) || (a >= g.level && b >= g.level && c >= g.level && d >= g.level) {
		return pieces, 0
	}
	sum := a + b + c + d
	if math.IsNaN(sum) || math.IsInf(sum, 0) {
		return pieces, 0
	}
	south, east := int32(2*k), int32(2*(k+1)+1)
	north, west := int32(2*(k+g.cols)), int32(2*k+1)
	shape := 0
	for bit, v := range [4]float64{a, b, c, d} {
		if v >= g.level {
			shape |= 1 << bit
		}
	}
	if shape == 10 && sum/4 >= g.level {
		shape = 5 // a saddle's ridge runs the other way
	} else if shape == 5 && sum/4 >= g.level {
		shape = 10
	}
	switch shape {
	case 1, 14:
		return [2][2]int32{{west, south}}, 1
	case 2, 13:
		return [2][2]int32{{south, east}}, 1
	case 4, 11:
		return [2][2]int32{{east, north}}, 1
	case 8, 7:
		return [2][2]int32{{north, west}}, 1
	case 3, 12:
		return [2][2]int32{{west, east}}, 1
	case 6, 9:
		return [2][2]int32{{south, north}}, 1
	case 5:
		return [2][2]int32{{west, south}, {east, north}}, 2
	case 10:
		return [2][2]int32{{south, east}, {north, west}}, 2
	}
	return pieces, 0
}

// crossing is where the line crosses an edge.
func (g grid) crossing(edge int32) [2]float64 {
	k := int(edge) / 2
	i, j := k%g.cols, k/g.cols
	if edge%2 == 0 {
		t := (g.level - g.values[k]) / (g.values[k+1] - g.values[k])
		return [2]float64{g.x[i] + t*(g.x[i+1]-g.x[i]), g.y[j]}
	}
	t := (g.level - g.values[k]) / (g.values[k+g.cols] - g.values[k])
	return [2]float64{g.x[i], g.y[j] + t*(g.y[j+1]-g.y[j])}
}

// labelled makes contours of one level's lines. The longest carries the label as near to the middle of its length as the design's ring leaves
// room, if it is long enough to show around it.
func labelled(lines [][][2]float64, x, y SampledAxis, ring Point, label string) []Contour {
	const enough = 0.15 // of the map's width or height
	var contours []Contour
	longest, best := enough, none
	for i, points := range lines {
		contours = append(contours, Contour{Label: label, Points: points})
		if length := travel(points, x, y); length > longest {
			longest, best = length, i
		}
	}
	if best != none {
		contours[best].LabelAt = labelAt(lines[best], x, y, longest, ring)
	}
	return contours
}

// travel is the length of a line, counted in widths and heights of the map.
func travel(points [][2]float64, x, y SampledAxis) float64 {
	length := 0.0
	for i := 1; i < len(points); i++ {
		length += stride(points[i-1], points[i], x, y)
	}
	return length
}

func stride(a, b [2]float64, x, y SampledAxis) float64 {
	return math.Hypot((b[0]-a[0])/(x.To-x.From), (b[1]-a[1])/(y.To-y.From))
}

// What a label and the ring take together on the smallest map: of its width and of its height, from the middle of one to that of the other.
const (
	ringAcross = 0.13
	ringUp     = 0.11
)

// labelAt returns the place of a line's label: of those that keep clear of the ring and of the line's ends, the nearest to its middle; nil where there is none.
func labelAt(points [][2]float64, x, y SampledAxis, length float64, ring Point) *Point {
	const end = 0.1 // of the length
	var at *Point
	nearest, gone := (0.5-end)*length, 0.0
	for i := 1; i < len(points); i++ {
		gone += stride(points[i-1], points[i], x, y)
		p := points[i]
		clear := math.Abs(p[0]-ring.X) >= ringAcross*math.Abs(x.To-x.From) || math.Abs(p[1]-ring.Y) >= ringUp*math.Abs(y.To-y.From)
		if off := math.Abs(gone - length/2); clear && off < nearest {
			nearest, at = off, &Point{p[0], p[1]}
		}
	}
	return at
}
