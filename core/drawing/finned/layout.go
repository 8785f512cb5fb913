package finned

import "finwright/core/drawing/sheet"

// box is a rectangle on the sheet [mm].
type box struct{ x, y, w, h float64 }

// layout gives each view its place. It depends on the sheet alone, so that a
// dimension that is pulled moves nothing but what it measures.
type layout struct {
	across, along, detail box     // with headings and dimensions
	centreY               float64 // of across and along
	disc                  float64 // greatest fin diameter that is drawn whole
	reachX, reachY, riseY float64 // from the centre to the sides, down and up, to where a tube too large for a held scale is broken off
	left, right           float64 // columns beside the along view
	head                  float64 // title and scale over each view
	stacked               bool
	footY                 float64 // baseline of scale bar and note
}

// Distances on the sheet [mm].
const (
	margin      = 3.0
	lineSpacing = 4.6
	headHeight  = 11.0 // title over scale, over a view
	barHeight   = 4.6  // scale bar under a view, where views are stacked
	headLine    = 6.5  // title and scale on one line
	belowDisc   = 7.6  // pitch and wall dimensions under a view
	aboveTitle  = 1.5  // of the detail, where views are stacked
	footHeight  = 4.6  // scale bar and note
	legendRow   = 6.2  // the temperatures' scale over them
	alongLeft   = 6.0  // fin height, where it does not fit on the right
	alongRight  = 15.0 // two ranks of vertical dimensions
	overhang    = 2.0  // centre line past the outline
	stackBelow  = 1.15 // width over height under which views are stacked
)

func arrange(w, h float64, legend bool) layout {
	l := layout{left: alongLeft, right: alongRight, footY: h - margin, head: headHeight}
	inner := w - 2*margin
	bottom := h - margin - footHeight
	top := 0.48 * (bottom - margin) // where stacked
	views := h
	if legend {
		bottom, views = bottom-legendRow, h-legendRow
	}
	if w/views < stackBelow {
		l.head, l.stacked = headLine, true
		l.across = box{margin, margin, 0.475 * inner, top}
		l.along = box{margin + 0.475*inner, margin, 0.525 * inner, top}
		l.detail = box{margin, margin + top + aboveTitle, inner, bottom - margin - top - aboveTitle}
	} else {
		l.across = box{margin, margin, 0.376 * inner, bottom - margin}
		l.along = box{margin + 0.38*inner, margin, 0.14*inner + alongLeft + alongRight, bottom - margin}
		x := l.along.x + l.along.w + 2
		l.detail = box{x, margin, w - margin - x, bottom - margin}
	}
	clear := l.across.h - l.head - belowDisc
	if l.stacked {
		clear -= barHeight
	}
	l.disc = min(l.across.w-2*overhang, clear)
	l.reachX, l.reachY = l.across.w/2, clear/2
	l.centreY = l.across.y + l.head + clear/2
	l.riseY = l.centreY - margin
	return l
}

// Of a held scale to the one that fits: beyond, nothing of a tube would be seen.
const (
	largestHeld  = 100
	smallestHeld = 1e-3
)

// snap returns the greatest scale not above s that is a usual one when the sheet has been enlarged.
func (c composer) snap(s float64) float64 { return snapScale(s*c.Letters) / c.Letters }

// chooseScales fills the discs' place, and shows two or three fins in the detail. What is held stays, also where the tube
// does not fit: then it is broken off.
func (c composer) chooseScales() sheet.Scales {
	fits := c.layout.disc / c.widest()
	s := sheet.Scales{Main: c.snap(fits), Detail: c.detailScale()}
	if c.Hold.Main > smallestHeld*fits && c.Hold.Main < largestHeld*fits {
		s.Main = c.Hold.Main
	}
	if c.Hold.Detail > 0 {
		s.Detail = c.Hold.Detail
	}
	s.Fin = c.finInHand(s.Main)
	return s
}

// finInHand returns the fin at which the pitch is pulled: the one that is held as long as it is in sight, else one in the middle.
func (c composer) finInHand(scale float64) int {
	n := c.finsAlong(scale)
	if c.Hold.Main > 0 && c.Hold.Fin >= 0 {
		return max(0, min(c.Hold.Fin, n-1))
	}
	switch {
	case n < 2:
		return 0
	case c.pitch*scale < closest && n > finsLeft+finsEnd:
		return finsLeft - 1
	}
	return n / 2
}
