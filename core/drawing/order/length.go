package order

import (
	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
)

// Whole is a tube over its whole length. Places are in millimetres from finished
// end A; texts are ready to be read.
type Whole struct {
	OD, FinOD float64
	Zones     []WholeZone // from end A on, without a gap
	Finished  string      // names the row of finished places
	AsCut     string      // names the row of places on the tube as cut
}

// WholeZone is one stretch of it.
type WholeZone struct {
	Kind     ZoneKind
	From, To float64
	Stripped float64 // of a finned zone: to where its run-down is wound, and stripped back
	Label    string  // over the tube
	Brief    string  // the same where there is less room; may be empty
	Edge     string  // place of To in the row of finished places; empty: none is stated
	Cut      string  // place of To on the tube as cut
}

// ZoneKind says how a zone is drawn.
type ZoneKind int

// Kinds of zone.
const (
	CutAway ZoneKind = iota // drawn hidden
	BareZone
	FinnedZone
)

// Sizes of the whole-length view [mm].
const (
	finReach   = 4.5 // from the axis to the fin tips
	rowGap     = 2.0
	levelStep  = sheet.TextHeight + 0.5
	sideRoom   = 6.0
	originRing = 0.7 // radius
	cutTube    = 2.0 // height of the tube as cut
)

// finStripes stand for fins: at the scale of a whole tube their pitch would be black.
var finStripes = ink.Hatching{Angle: 90, Spacing: 0.9}

// ComposeWhole draws a tube over its whole length: zones to scale along the
// tube, diameters larger, and under it each zone's edge as a running dimension,
// finished and on the tube as cut.
//
// Valid: zones in order, of a length above nought together.
func ComposeWhole(t Whole, widthPx float64) sheet.Scene {
	w := max(widthPx, 280) / ink.PxPerMM
	s := newPicture(w, 0)
	left := sideRoom + max(sheet.TextWidth(t.Finished), sheet.TextWidth(t.AsCut)) + sheet.TextWidth(t.Zones[0].Cut)
	first, last := t.Zones[0].From, t.Zones[len(t.Zones)-1].To
	scale := (w - left - sideRoom) / (last - first)
	x := func(mm float64) float64 { return left + (mm-first)*scale }
	axis := sheet.TextHeight + 2 + finReach
	half := finReach * t.OD / t.FinOD

	s.over(t.Zones, x)
	s.Line(ink.Centre, ink.At(x(first)-2, axis), ink.At(x(last)+2, axis))
	for _, z := range t.Zones {
		s.zone(z, x(z.From), x(z.To), x(z.Stripped), axis, half)
	}
	top := axis + finReach
	row := func(name string, origin, from float64, text func(WholeZone) string) {
		var edges []edge
		for _, z := range t.Zones {
			if text(z) != "" {
				edges = append(edges, edge{x: x(z.To), text: text(z)})
			}
		}
		s.Write("row-"+name, "scale", 0, top+rowGap+levelStep, sheet.Start, name)
		top = s.running(edges, x(origin), from, top+rowGap)
	}
	row(t.Finished, 0, axis+half, func(z WholeZone) string { return z.Edge })
	// The tube as cut, before anything is wound and its ends are cut away.
	s.Frame(ink.Thin, x(first), top+rowGap, x(last), top+rowGap+cutTube)
	top += rowGap + cutTube
	row(t.AsCut, first, top, func(z WholeZone) string { return z.Cut })
	s.Scene.Height = top + 1
	return s.Scene
}

// over writes the zones' names over the tube: finned ones first, the others where there is room.
func (s *picture) over(zones []WholeZone, x func(float64) float64) {
	var taken [][2]float64
	put := func(z WholeZone, within bool) {
		middle, label := (x(z.From)+x(z.To))/2, z.Label
		if within && sheet.TextWidth(label) > x(z.To)-x(z.From) {
			label = z.Brief
		}
		half := sheet.TextWidth(label) / 2
		middle = min(max(middle, half), s.Scene.Width-half)
		if label == "" || within && 2*half > x(z.To)-x(z.From) {
			return
		}
		for _, t := range taken {
			if middle-half < t[1]+1 && middle+half > t[0]-1 {
				return
			}
		}
		taken = append(taken, [2]float64{middle - half, middle + half})
		s.Write("zone", "dim", middle, sheet.TextHeight, sheet.Middle, label)
	}
	for _, z := range zones {
		if z.Kind == FinnedZone {
			put(z, true)
		}
	}
	for _, z := range zones {
		if z.Kind == BareZone {
			put(z, false)
		}
	}
}

// zone draws one stretch of the tube from x1 to x2, and hidden what is wound beyond it up to x3.
func (s *picture) zone(z WholeZone, x1, x2, x3, axis, half float64) {
	stroke := ink.Thick
	if z.Kind == CutAway {
		stroke = ink.Thin
		s.Line(ink.Hidden, ink.At(x1, axis-half), ink.At(x1, axis+half))
		s.Line(ink.Hidden, ink.At(x2, axis-half), ink.At(x2, axis+half))
	} else {
		s.Line(ink.Thick, ink.At(x1, axis-half), ink.At(x1, axis+half))
		s.Line(ink.Thick, ink.At(x2, axis-half), ink.At(x2, axis+half))
	}
	if z.Kind != FinnedZone {
		s.Line(stroke, ink.At(x1, axis-half), ink.At(x2, axis-half))
		s.Line(stroke, ink.At(x1, axis+half), ink.At(x2, axis+half))
		return
	}
	if x3 > x2 {
		s.Line(ink.Hidden, ink.At(x2, axis-finReach), ink.At(x3, axis-finReach), ink.At(x3, axis+finReach), ink.At(x2, axis+finReach))
	}
	loop := []ink.Point{ink.At(x1, axis-finReach), ink.At(x2, axis-finReach), ink.At(x2, axis+finReach), ink.At(x1, axis+finReach)}
	s.Scene.Shapes = append(s.Scene.Shapes, ink.Shape{Class: ink.FinMetal, Loops: [][]ink.Point{loop}, Edges: [][]ink.Point{ink.Closed(loop)}, Narrow: x2 - x1, Hatch: finStripes})
}

// edge is one place of a row of running dimensions.
type edge struct {
	x      float64
	text   string
	anchor sheet.Anchor
}

// running draws a row of running dimensions (ISO 129-1) at y, from the ring that marks their origin, with extension lines
// from the outline at from. A text stands over no line
// of another edge: it gives way to a side, then to a deeper level. It returns the
// lowest y that the row needs.
func (s *picture) running(edges []edge, origin, from, y float64) float64 {
	s.Line(ink.Measure, ink.Closed(sheet.Circle(ink.At(origin, y), originRing))...)
	last := origin
	for _, e := range edges {
		a, b := ink.At(last, y), ink.At(e.x, y)
		switch {
		case b.X-a.X >= 2*ink.ArrowLength:
			s.Arrow(ink.AtEnd, a, b)
		case b.X > a.X:
			s.Line(ink.Measure, a, b)
		}
		last = e.x
	}
	bottom := y
	for level := 0; len(edges) > 0; level++ {
		bottom += levelStep
		var waiting []edge
		free := -1e9 // what the level's texts have not taken yet
		for i, e := range edges {
			placed := false
			for _, a := range []sheet.Anchor{sheet.Middle, sheet.End, sheet.Start} {
				lo, hi := reach(e, a)
				if lo < free || crossed(edges, i, lo, hi) || hi > s.Scene.Width {
					continue
				}
				e.anchor, placed, free = a, true, hi+1
				break
			}
			if !placed {
				waiting = append(waiting, e)
				continue
			}
			down := bottom - sheet.Overrun
			if e.anchor == sheet.Middle {
				down = bottom - levelStep - sheet.Overrun + 0.3
			}
			s.Extend(ink.At(e.x, from), ink.At(e.x, down))
			at := e.x + map[sheet.Anchor]float64{sheet.Start: 0.7, sheet.End: -0.7}[e.anchor]
			s.Write("edge", "dim", at, bottom, e.anchor, e.text)
		}
		if len(waiting) == len(edges) { // nothing fits: a sheet too narrow for a single text
			return bottom
		}
		edges = waiting
	}
	return bottom
}

// reach returns what a text takes of its line.
func reach(e edge, a sheet.Anchor) (lo, hi float64) {
	w := sheet.TextWidth(e.text)
	switch a {
	case sheet.Start:
		return e.x + 0.7, e.x + 0.7 + w
	case sheet.End:
		return e.x - 0.7 - w, e.x - 0.7
	}
	return e.x - w/2, e.x + w/2
}

// crossed reports whether the extension line of another edge runs through a text.
func crossed(edges []edge, i int, lo, hi float64) bool {
	for j, e := range edges {
		if j != i && e.x > lo-0.5 && e.x < hi+0.5 {
			return true
		}
	}
	return false
}
