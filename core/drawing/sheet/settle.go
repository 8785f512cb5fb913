package sheet

import (
	"math"

	"finwright/core/drawing/ink"
)

// capital is the height of figures and capitals over that of the text.
const capital = 0.74

// Box returns the corners of the room that a text takes.
func (t Text) Box() (lo, hi ink.Point) {
	x := 0.0
	switch t.Anchor {
	case Middle:
		x = -t.Width / 2
	case End:
		x = -t.Width
	}
	sin, cos := math.Sincos(t.Rotate * math.Pi / 180)
	a := ink.At(t.X+x*cos, t.Y+x*sin)
	b := ink.At(a.X+t.Width*cos+capital*TextHeight*sin, a.Y+t.Width*sin-capital*TextHeight*cos)
	return ink.At(min(a.X, b.X), min(a.Y, b.Y)), ink.At(max(a.X, b.X), max(a.Y, b.Y))
}

// owned says which lines a text's dimension is drawn with.
type owned struct{ text, from, to int }

// Begin starts a dimension: the lines from here to its label belong to it.
func (s *Sheet) Begin() { s.first = len(s.Scene.Lines) }

// own ties the lines since Begin to the text that was written last.
func (s *Sheet) own() {
	s.owned = append(s.owned, owned{len(s.Scene.Texts) - 1, s.first, len(s.Scene.Lines)})
}

// Settle leaves out what would lie over something else, or off the sheet: a dimension with its lines, or a text that
// stands for itself. What was drawn first stays; a warning stays before all, and a dimension gives way to other writing.
func (s *Sheet) Settle() {
	lines := make([]bool, len(s.Scene.Lines)) // that belong to a dimension which is not placed yet
	for _, o := range s.owned {
		for i := o.from; i < o.to; i++ {
			lines[i] = true
		}
	}
	of := make([]owned, len(s.Scene.Texts))
	for i := range of {
		of[i].text = i
	}
	for _, o := range s.owned {
		of[o.text] = o
	}
	outlines := extents(s.Scene.Shapes)
	var placed []int
	dropped := map[int]bool{}
	for turn := range 3 {
		for i, t := range s.Scene.Texts {
			switch {
			case t.turn() != turn:
			case s.fits(of[i], placed, lines, outlines):
				placed = append(placed, i)
				for l := of[i].from; l < of[i].to; l++ {
					lines[l] = false
				}
			default:
				dropped[i] = true
			}
		}
	}
	if len(dropped) > 0 {
		s.leaveOut(dropped, lines)
	}
}

// turn says when a text is placed: one that comes later gives way.
func (t Text) turn() int {
	switch t.Class {
	case "alarm":
		return 0
	case "dim":
		return 2
	}
	return 1
}

// fits reports whether a text and its lines keep clear of the texts that are placed and of the lines that stay.
func (s *Sheet) fits(o owned, placed []int, waiting []bool, outlines []extent) bool {
	t := s.Scene.Texts[o.text]
	lo, hi := t.Box()
	if lo.X < 0 || lo.Y < 0 || hi.X > s.Scene.Width || hi.Y > s.Scene.Height {
		return false
	}
	for _, i := range placed {
		lo2, hi2 := s.Scene.Texts[i].Box()
		if lo.X < hi2.X && lo2.X < hi.X && lo.Y < hi2.Y && lo2.Y < hi.Y {
			return false
		}
		for _, l := range s.Scene.Lines[o.from:o.to] {
			if meets(l.Points, lo2, hi2) {
				return false
			}
		}
	}
	return t.Class != "dim" || s.clear(lo, hi, o, waiting, outlines)
}

// clear reports whether no line runs through a box, and no outline: of the lines that are waiting, only a text's own count.
func (s *Sheet) clear(lo, hi ink.Point, o owned, waiting []bool, outlines []extent) bool {
	for i, l := range s.Scene.Lines {
		if waiting[i] && (i < o.from || i >= o.to) {
			continue
		}
		if meets(l.Points, lo, hi) {
			return false
		}
	}
	for _, o := range outlines {
		if lo.X < o.hi.X && o.lo.X < hi.X && lo.Y < o.hi.Y && o.lo.Y < hi.Y && meets(o.path, lo, hi) {
			return false
		}
	}
	return true
}

// extent is a path and the box about it.
type extent struct {
	path   []ink.Point
	lo, hi ink.Point
}

func extents(shapes []ink.Shape) []extent {
	var out []extent
	for _, shape := range shapes {
		for _, e := range shape.Edges {
			x := extent{e, e[0], e[0]}
			for _, p := range e {
				x.lo, x.hi = ink.At(min(x.lo.X, p.X), min(x.lo.Y, p.Y)), ink.At(max(x.hi.X, p.X), max(x.hi.Y, p.Y))
			}
			out = append(out, x)
		}
	}
	return out
}

// Free reports whether nothing that is written and no line of a dimension lies in a box.
func (s *Sheet) Free(lo, hi ink.Point) bool {
	if lo.X < 0 || lo.Y < 0 || hi.X > s.Scene.Width || hi.Y > s.Scene.Height {
		return false
	}
	for _, t := range s.Scene.Texts {
		lo2, hi2 := t.Box()
		if lo.X < hi2.X && lo2.X < hi.X && lo.Y < hi2.Y && lo2.Y < hi.Y {
			return false
		}
	}
	for _, l := range s.Scene.Lines {
		if l.Stroke == ink.Measure && meets(l.Points, lo, hi) {
			return false
		}
	}
	return true
}

// meets reports whether a path runs through the inside of a box.
func meets(path []ink.Point, lo, hi ink.Point) bool {
	for i := 0; i+1 < len(path); i++ {
		a, b := path[i], path[i+1]
		if a.X <= lo.X && b.X <= lo.X || a.X >= hi.X && b.X >= hi.X || a.Y <= lo.Y && b.Y <= lo.Y || a.Y >= hi.Y && b.Y >= hi.Y {
			continue
		}
		from, to := 0.0, 1.0
		clip := func(p, d, low, high float64) {
			if d == 0 {
				return // within: else it had been passed over
			}
			u, v := (low-p)/d, (high-p)/d
			from, to = max(from, min(u, v)), min(to, max(u, v))
		}
		clip(a.X, b.X-a.X, lo.X, hi.X)
		clip(a.Y, b.Y-a.Y, lo.Y, hi.Y)
		if from < to {
			return true
		}
	}
	return false
}

// leaveOut takes away texts, and the lines that still wait for one.
func (s *Sheet) leaveOut(texts map[int]bool, waiting []bool) {
	var lines []ink.Polyline
	for i, l := range s.Scene.Lines {
		if !waiting[i] {
			lines = append(lines, l)
		}
	}
	var kept []Text
	for i, t := range s.Scene.Texts {
		if !texts[i] {
			kept = append(kept, t)
		}
	}
	s.Scene.Lines, s.Scene.Texts = lines, kept
}
