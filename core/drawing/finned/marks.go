package finned

import (
	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
)

// Letters of what one view says of another.
const (
	detailLetter = "Z"
	cutLetter    = "A"
)

// Sizes of the marks [mm].
const (
	leastRing  = 1.5  // radius round what is enlarged
	markLetter = 3.1  // from the ring to the foot of its letter
	cutFrom    = 0.8  // from the fin tips to the stroke of a cutting plane
	cutStroke  = 2.44 // its length: as high as its letter
	cutArrow   = 3.2
)

// markDetail rings the place that the detail enlarges, fin0 being where the first fin stands, and reports whether it could. The
// letter stands in the bore, or beside the section where that is too narrow.
func (c composer) markDetail(fin0 float64, n int) bool {
	s, axis := c.scales.Main, c.layout.centreY
	r := c.od / 2 * s
	if !c.reaches(r) {
		return false
	}
	count := c.detailFins()
	room := r - markLetter - 0.4 // over the axis
	radius := max(leastRing, min(max(float64(count)*c.pitch*s*0.5+0.5, 2.5), room))
	first := max(0, (n-count)/2)
	if c.partly(n) {
		first = 0
	}
	m := ink.At(fin0+(float64(first)+float64(count-1)/2)*c.pitch*s, axis-r)
	letter := ink.At(m.X, m.Y+radius+markLetter)
	if room < leastRing {
		letter = ink.At(c.layout.along.x+sheet.TextWidth(detailLetter)/2, m.Y+sheet.TextHeight*0.37)
	}
	half := sheet.TextWidth(detailLetter) / 2
	free := c.Free(ink.At(letter.X-half, letter.Y-sheet.TextHeight*0.75), ink.At(letter.X+half, letter.Y))
	if room < leastRing { // a line leads to it
		free = free && c.Free(ink.At(letter.X, m.Y-0.1), ink.At(m.X-radius, m.Y+0.1))
	}
	if !free {
		return false
	}
	c.Line(ink.Thin, ink.Closed(sheet.Circle(m, radius))...)
	if room < leastRing {
		c.Line(ink.Thin, ink.At(m.X-radius, m.Y), ink.At(letter.X+half+0.4, m.Y))
	}
	c.Write("detail-mark", "mark", letter.X, letter.Y, sheet.Middle, detailLetter)
	return true
}

// markCut shows where the section across lies and which way it is seen, over and under the section along, and reports whether
// there was room: between two fins, as far to the right as nothing else stands.
func (c composer) markCut(x0 float64, n int) bool {
	s, axis := c.scales.Main, c.layout.centreY
	tip := c.finOD() / 2 * s
	if !c.reaches(tip) {
		return false
	}
	wide := 0.7 + sheet.TextWidth(cutLetter)
	for k := n - 1; k > 0; k-- {
		x := x0 + float64(k)*c.pitch*s
		free := true
		for _, dir := range []float64{-1, 1} {
			near, far := axis+dir*(tip+cutFrom), axis+dir*(tip+cutFrom+cutStroke)
			free = free && c.Free(ink.At(x-cutArrow, min(near, far)), ink.At(x+wide, max(near, far)))
		}
		if !free {
			continue
		}
		for i, dir := range []float64{-1, 1} {
			near, far := axis+dir*(tip+cutFrom), axis+dir*(tip+cutFrom+cutStroke)
			c.Line(ink.Thick, ink.At(x, near), ink.At(x, far))
			c.Arrow(ink.AtEnd, ink.At(x, far), ink.At(x-cutArrow, far))
			c.Write([]string{"cut-over", "cut-under"}[i], "mark", x+0.7, max(near, far), sheet.Start, cutLetter)
		}
		return true
	}
	return false
}
