package finned

import (
	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/message"
	"finwright/core/units"
)

const (
	mostFins  = 100 // of which so few are drawn that they can be told apart
	cutBefore = 0.25
	// The cut lies a quarter of a pitch before a fin: as far from the fin above as from the one below, which
	// stands half a pitch further on the helix.
)

// finsAlong is how many fins stand in the section along, on one side.
func (c composer) finsAlong(scale float64) int {
	return int(min(mostFins, (c.layout.along.w-c.layout.left-c.layout.right)/(c.pitch*scale)))
}

// alongEnds returns where the section along begins and ends on the sheet, and how many fins stand in it.
func (c composer) alongEnds() (x0, x1 float64, n int) {
	x0, n = c.layout.along.x+c.layout.left, c.finsAlong(c.scales.Main)
	if n < 1 {
		return x0, x0 + c.layout.along.w - c.layout.left - c.layout.right, n
	}
	return x0, x0 + float64(n)*c.pitch*c.scales.Main, n
}

// Of fins that stand too close to be told apart some are drawn, at both ends of the section, and between them the line of
// their tips.
const (
	closest  = 1.1 // pitch [mm of sheet]: about four pixels, below which lines beat with those of a screen
	finsLeft = 3   // drawn at the left; the detail rings as many
	finsEnd  = 2   // at the right
)

// partly reports whether of n fins in the section along only some are drawn.
func (c composer) partly(n int) bool {
	return c.pitch*c.scales.Main < closest && n > finsLeft+finsEnd
}

// drawAlong draws the section through the axis, cut short at both ends.
func (c composer) drawAlong() {
	at, s := c.layout.along, c.scales.Main
	c.heading("along", c.Text.Text("drawing.along"), s, at)
	x0, x1, n := c.alongEnds()
	a := -cutBefore * c.pitch
	if n < 1 {
		a = -(x1 - x0) / s / 2
	}
	b := a + (x1-x0)/s
	axis, r := c.layout.centreY, c.od/2
	var pieces []piece
	if c.Heat != nil {
		pieces = c.pieces(s)
	}
	partly := c.partly(n)
	for _, side := range []struct{ dir, shift float64 }{{-1, 0}, {1, -c.pitch / 2}} {
		// Below, the section is moved along by half a pitch.
		left, right := a+side.shift, b+side.shift
		place := func(p ink.Point) ink.Point {
			return ink.At(x0+(p.X-left)*s, axis+side.dir*(r+p.Y)*s)
		}
		var cuts []halfPlane
		if !c.reaches((r + c.height) * s) {
			cuts = append(cuts, halfPlane{0, 1, c.layout.reachY/s - r})
			c.BreakLine(ink.At(x0, axis+side.dir*c.layout.reachY), ink.At(x1, axis+side.dir*c.layout.reachY))
		}
		draw := func(from, to float64) {
			stretch := append(cuts[:len(cuts):len(cuts)], halfPlane{-1, 0, -from}, halfPlane{1, 0, to})
			for _, p := range c.parts(from, to) {
				c.cut(p, place, s, stretch...)
			}
			c.tint(pieces, from, to, s, place, stretch...)
		}
		if !partly {
			draw(left, right)
			continue
		}
		from, to := left+finsLeft*c.pitch, right-finsEnd*c.pitch
		draw(left, from)
		c.drawUnder(from, to, place, cuts)
		draw(to, right)
		if tip := (r + c.height) * s; c.reaches(tip) {
			c.Line(ink.Thin, ink.At(x0+(from-left)*s, axis+side.dir*tip), ink.At(x0+(to-left)*s, axis+side.dir*tip))
		}
	}
	past := min((r+c.foot)*s+1.5, c.layout.reachY)
	c.BreakLine(ink.At(x0, axis-past), ink.At(x0, axis+past))
	c.BreakLine(ink.At(x1, axis-past), ink.At(x1, axis+past))
	c.Line(ink.Centre, ink.At(x0-overhang, axis), ink.At(x1+overhang, axis))
	c.dimensionAlong(x0, x1, n)
	c.marks.detail = c.markDetail(x0-a*s, n)
	c.marks.cut = c.markCut(x0, n)
	if partly {
		c.noteParted(x0, x1)
	}
}

// gripPitch puts a grip on one of the fins over the axis.
func (c composer) gripPitch() {
	s, axis := c.scales.Main, c.layout.centreY
	x0, x1, n := c.alongEnds()
	k, from := float64(c.scales.Fin), cutBefore
	if n < 2 {
		from = 0.5
	}
	if n >= 1 || c.Hold.Fin >= 0 && c.Hold.Main > 0 { // what is pulled does not go under the hand
		c.grip(sheet.Grip{
			ID: "pitch", Field: "fin_pitch", X: min(x0+(k+from)*c.pitch*s, x1), Y: axis - c.upTo((c.od+c.height)/2*s), Axis: [2]float64{1, 0},
			PerMM: 1 / ((k + from) * s), Value: c.pitch, Min: c.strip * 1.2, Max: 50, Steps: -1,
		}, units.Gap, c.tube.Pitch())
		g := &c.Scene.Grips[len(c.Scene.Grips)-1]
		g.ValueText = c.Text.Render(message.New("drawing.pitch", "pitch", g.ValueText,
			"count", message.Fins(c.tube.Fin.Count)), c.System)
	}
}

// drawUnder draws what lies under the fins that are left out: the tube and, on it, a layer as thick as foot or muff.
func (c composer) drawUnder(from, to float64, place func(ink.Point) ink.Point, cuts []halfPlane) {
	s := c.scales.Main
	cuts = append(cuts[:len(cuts):len(cuts)], halfPlane{-1, 0, -from}, halfPlane{1, 0, to}, halfPlane{0, 1, c.foot})
	wall := []ink.Point{ink.At(from, 0), ink.At(to, 0), ink.At(to, -c.wall), ink.At(from, -c.wall)}
	c.cut(part{ink.TubeMetal, wall, c.wall}, place, s, cuts...)
	if c.foot > 0 {
		layer := []ink.Point{ink.At(from, 0), ink.At(to, 0), ink.At(to, c.foot), ink.At(from, c.foot)}
		c.cut(part{ink.FinMetal, layer, c.foot}, place, s, cuts[:len(cuts)-1]...)
	}
	if c.Heat != nil {
		c.tint(c.parted(s, c.under(), nil), from, to, s, place, cuts...)
	}
}

// dimensionAlong states heights and diameters on the right and the pitch below.
func (c composer) dimensionAlong(x0, x1 float64, n int) {
	s, axis := c.scales.Main, c.layout.centreY
	r, tip := c.od/2*s, c.finOD()/2*s
	height := sheet.Measured{Name: "fin_height", Text: c.print(c.height), Field: true}
	rank := x1 + 6
	top, surface := c.upTo(tip), c.upTo(r)
	switch {
	case surface == top: // broken off before the fins
	case sheet.TextWidth(height.Text) <= top-surface:
		c.Upright(c.open(height, r, tip), axis-surface, axis-top, rank, x1, x1)
	default:
		c.Upright(c.open(height, tip, r), axis-top, axis-surface, x0-4, x0, x0)
	}
	od := c.open(sheet.Measured{Name: "tube_od", Text: c.diameter(c.od), Field: true}, r, r)
	if od.Beyond = top - surface + 1; sheet.TextWidth(od.Text) <= 2*surface {
		c.Upright(od, axis+surface, axis-surface, rank, x1, x1)
	} else {
		c.Upright(od, axis-surface, axis+surface, rank, x1, x1) // below the fins, where no other dimension runs
	}
	c.Upright(c.open(sheet.Measured{Name: "fin_od", Text: c.diameter(c.finOD())}, tip, tip), axis+top, axis-top, rank+6.5, x1, x1)
	if n >= 2 {
		from := x0 + 0.75*c.pitch*s
		c.Across(sheet.Measured{Name: "fin_pitch", Text: c.print(c.pitch), Field: true}, from, from+c.pitch*s, axis+top+5, axis+top, axis+top)
	}
}
