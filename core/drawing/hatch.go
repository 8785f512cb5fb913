package drawing

import (
	"math"
	"slices"
)

// Segment is a straight line.
type Segment [2]Point

// Hatch returns the lines of a hatching inside loops, even-odd. The lines pass
// through origin or lie whole spacings from it, so that neighbours of one metal
// line up. Angle is in degrees, counter-clockwise as seen.
// Valid: spacing > 0. Lines outside of the box from lo to hi are left out.
func Hatch(loops [][]Point, h Hatching, origin, lo, hi Point) []Segment {
	sin, cos := math.Sincos(-h.Angle * math.Pi / 180)
	across := func(p Point) float64 { return (-(p.X-origin.X)*sin + (p.Y-origin.Y)*cos) / h.Spacing }
	along := func(p Point) float64 { return p.X*cos + p.Y*sin }
	first, last := math.Inf(1), math.Inf(-1)
	for _, loop := range loops {
		for _, p := range loop {
			first, last = min(first, across(p)), max(last, across(p))
		}
	}
	boxFirst, boxLast := math.Inf(1), math.Inf(-1)
	for _, p := range []Point{lo, hi, {lo.X, hi.Y}, {hi.X, lo.Y}} {
		boxFirst, boxLast = min(boxFirst, across(p)), max(boxLast, across(p))
	}
	from, to := int(math.Ceil(max(first, boxFirst))), int(math.Floor(min(last, boxLast)))
	if from > to {
		return nil
	}
	hits := make([][]Segment, to-from+1) // one crossing each: the place, and its distance along the line in [1].X
	for _, loop := range loops {
		for i, p := range loop {
			q := loop[(i+1)%len(loop)]
			a, b := across(p), across(q)
			// Half open, so that a corner on a line counts once.
			for n := max(from, int(math.Ceil(min(a, b)))); n <= to && float64(n) < max(a, b); n++ {
				f := (float64(n) - a) / (b - a)
				at := Point{p.X + f*(q.X-p.X), p.Y + f*(q.Y-p.Y)}
				hits[n-from] = append(hits[n-from], Segment{at, {X: along(at)}})
			}
		}
	}
	var out []Segment
	for _, line := range hits {
		slices.SortFunc(line, func(a, b Segment) int {
			switch {
			case a[1].X < b[1].X:
				return -1
			case a[1].X > b[1].X:
				return 1
			}
			return 0
		})
		for i := 0; i+1 < len(line); i += 2 {
			out = append(out, Segment{line[i][0], line[i+1][0]})
		}
	}
	return out
}

// Fill parts the inside of loops, even-odd, into trapezoids between horizontal
// lines. Loops must not cross one another.
func Fill(loops [][]Point) [][4]Point {
	var levels []float64
	for _, loop := range loops {
		for _, p := range loop {
			levels = append(levels, p.Y)
		}
	}
	slices.Sort(levels)
	levels = slices.Compact(levels)
	type side struct{ top, bottom float64 }
	var out [][4]Point
	for i := 0; i+1 < len(levels); i++ {
		top, bottom := levels[i], levels[i+1]
		var sides []side
		for _, loop := range loops {
			for j, p := range loop {
				q := loop[(j+1)%len(loop)]
				if p.Y > q.Y {
					p, q = q, p
				}
				if p.Y <= top && q.Y >= bottom && p.Y < q.Y {
					slope := (q.X - p.X) / (q.Y - p.Y)
					sides = append(sides, side{p.X + slope*(top-p.Y), p.X + slope*(bottom-p.Y)})
				}
			}
		}
		slices.SortFunc(sides, func(a, b side) int {
			if a.top+a.bottom < b.top+b.bottom {
				return -1
			}
			return 1
		})
		for k := 0; k+1 < len(sides); k += 2 {
			l, r := sides[k], sides[k+1]
			out = append(out, [4]Point{{l.top, top}, {r.top, top}, {r.bottom, bottom}, {l.bottom, bottom}})
		}
	}
	return out
}

// Dash parts a polyline into dashes; pattern is dash, gap, dash, gap... in the units of p.
func Dash(p []Point, pattern ...float64) [][]Point {
	var out [][]Point
	part, left := 0, pattern[0]
	var run []Point
	for i := 0; i+1 < len(p); i++ {
		a, b := p[i], p[i+1]
		length := math.Hypot(b.X-a.X, b.Y-a.Y)
		for at := 0.0; at < length; {
			step := min(left, length-at)
			start, end := between(a, b, at/length), between(a, b, (at+step)/length)
			if part%2 == 0 {
				if run == nil {
					run = []Point{start}
				}
				run = append(run, end)
			}
			at, left = at+step, left-step
			if left <= 1e-9 {
				if run != nil {
					out = append(out, run)
				}
				run, part = nil, part+1
				left = pattern[part%len(pattern)]
			}
		}
	}
	if run != nil {
		out = append(out, run)
	}
	return out
}

func between(a, b Point, f float64) Point { return Point{a.X + f*(b.X-a.X), a.Y + f*(b.Y-a.Y)} }
