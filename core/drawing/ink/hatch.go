package ink

import (
	"cmp"
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
		slices.SortFunc(line, func(a, b Segment) int { return cmp.Compare(a[1].X, b[1].X) })
		for i := 0; i+1 < len(line); i += 2 {
			out = append(out, Segment{line[i][0], line[i+1][0]})
		}
	}
	return out
}

// Fill parts the inside of loops, even-odd, into trapezoids between horizontal
// lines: those through corners, and at levels. Loops must not cross one another.
func Fill(loops [][]Point, levels ...float64) [][4]Point {
	levels = slices.Clone(levels)
	var waiting []Segment // sides that begin further down, the next one last
	for _, loop := range loops {
		for j, p := range loop {
			q := loop[(j+1)%len(loop)]
			levels = append(levels, p.Y)
			switch {
			case p.Y < q.Y:
				waiting = append(waiting, Segment{p, q})
			case p.Y > q.Y:
				waiting = append(waiting, Segment{q, p})
			}
		}
	}
	slices.Sort(levels)
	levels = slices.Compact(levels)
	slices.SortFunc(waiting, func(a, b Segment) int { return cmp.Compare(b[0].Y, a[0].Y) })
	var out [][4]Point
	var active []Segment
	for i := 0; i+1 < len(levels); i++ {
		top, bottom := levels[i], levels[i+1]
		active = slices.DeleteFunc(active, func(s Segment) bool { return s[1].Y <= top })
		for n := len(waiting); n > 0 && waiting[n-1][0].Y <= top; n-- {
			active = append(active, waiting[n-1])
			waiting = waiting[:n-1]
		}
		at := func(s Segment, y float64) float64 { return Between(s[0], s[1], (y-s[0].Y)/(s[1].Y-s[0].Y)).X }
		middle := (top + bottom) / 2
		slices.SortFunc(active, func(a, b Segment) int { return cmp.Compare(at(a, middle), at(b, middle)) })
		for k := 0; k+1 < len(active); k += 2 {
			l, r := active[k], active[k+1]
			out = append(out, [4]Point{{at(l, top), top}, {at(r, top), top}, {at(r, bottom), bottom}, {at(l, bottom), bottom}})
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
			start, end := Between(a, b, at/length), Between(a, b, (at+step)/length)
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
