package finned

import (
	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/message"
	"finwright/core/units"
)

const (
	mostFins  = 24 // in the section along: more would only blacken the sheet
	cutBefore = 0.25
	// The cut lies a quarter of a pitch before a fin: as far from the fin above as from the one below, which
	// stands half a pitch further on the helix.
)

// finsAlong is how many fins stand in the section along, on one side.
func (c composer) finsAlong(scale float64) int {
	room := c.layout.along.w - c.layout.left - c.layout.right
	return min(int(room/(c.pitch*scale)), mostFins)
}

// drawAlong draws the section through the axis, cut short at both ends.
func (c composer) drawAlong() {
	at, s := c.layout.along, c.scales.Main
	c.heading("along", c.Text.Text("drawing.along"), s, at)
	x0, room := at.x+c.layout.left, at.w-c.layout.left-c.layout.right
	n := c.finsAlong(s)
	a := -cutBefore * c.pitch
	b := a + float64(n)*c.pitch
	if n < 1 {
		a, b = -room/s/2, room/s/2
	}
	x1 := x0 + (b-a)*s
	axis, r := c.layout.centreY, c.od/2
	var pieces []piece
	if c.Heat != nil {
		pieces = c.pieces(s)
	}
	for _, side := range []struct{ dir, shift float64 }{{-1, 0}, {1, -c.pitch / 2}} {
		// Below, the section is moved along by half a pitch.
		left, right := a+side.shift, b+side.shift
		place := func(p ink.Point) ink.Point {
			return ink.At(x0+(p.X-left)*s, axis+side.dir*(r+p.Y)*s)
		}
		cuts := []halfPlane{{-1, 0, -left}, {1, 0, right}}
		if !c.reaches((r + c.height) * s) {
			cuts = append(cuts, halfPlane{0, 1, c.layout.reachY/s - r})
			c.BreakLine(ink.At(x0, axis+side.dir*c.layout.reachY), ink.At(x1, axis+side.dir*c.layout.reachY))
		}
		for _, p := range c.parts(left, right) {
			c.cut(p, place, s, cuts...)
		}
		c.tint(pieces, left, right, s, place, cuts...)
	}
	past := min((r+c.foot)*s+1.5, c.layout.reachY)
	c.BreakLine(ink.At(x0, axis-past), ink.At(x0, axis+past))
	c.BreakLine(ink.At(x1, axis-past), ink.At(x1, axis+past))
	c.Line(ink.Centre, ink.At(x0-overhang, axis), ink.At(x1+overhang, axis))
	c.dimensionAlong(x0, x1, n)
	c.markDetail(x0-a*s, n)

	k, from := float64(c.scales.Fin), cutBefore
	if n < 2 {
		from = 0.5
	}
	if n >= 1 || c.Hold.Fin >= 0 && c.Hold.Main > 0 { // what is pulled does not go under the hand
		c.grip(sheet.Grip{
			ID: "pitch", Field: "fin_pitch", X: min(x0+(k+from)*c.pitch*s, x1), Y: axis - c.upTo((r+c.height/2)*s), Axis: [2]float64{1, 0},
			PerMM: 1 / ((k + from) * s), Value: c.pitch, Min: c.strip * 1.2, Max: 50, Steps: -1,
		}, units.Gap, c.tube.Pitch())
		g := &c.Scene.Grips[len(c.Scene.Grips)-1]
		g.ValueText = c.Text.Render(message.New("drawing.pitch", "pitch", g.ValueText,
			"count", c.Text.Numbers.Figure(units.FinCount, float64(c.tube.Fin.Count), c.System).String()), c.System)
	}
}

// dimensionAlong states heights and diameters on the right and the pitch below.
func (c composer) dimensionAlong(x0, x1 float64, n int) {
	s, axis := c.scales.Main, c.layout.centreY
	r, tip := c.od/2*s, c.finOD()/2*s
	height := sheet.Measured{Name: "fin_height", Text: c.print(units.Height, c.height), Field: true}
	rank := x1 + 6
	top, surface := c.upTo(tip), c.upTo(r)
	switch {
	case surface == top: // broken off before the fins
	case sheet.TextWidth(height.Text) <= top-surface:
		c.Upright(c.open(height, r, tip), axis-surface, axis-top, rank, x1, x1)
	default:
		c.Upright(c.open(height, tip, r), axis-top, axis-surface, x0-4, x0, x0)
	}
	c.Upright(c.open(sheet.Measured{Name: "tube_od", Text: c.diameter(c.od), Field: true}, r, r), axis+surface, axis-surface, rank, x1, x1)
	c.Upright(c.open(sheet.Measured{Name: "fin_od", Text: c.diameter(c.finOD())}, tip, tip), axis+top, axis-top, rank+6.5, x1, x1)
	if n >= 2 {
		from := x0 + 0.75*c.pitch*s
		c.Across(sheet.Measured{Name: "fin_pitch", Text: c.print(units.Gap, c.pitch), Field: true}, from, from+c.pitch*s, axis+top+5, axis+top, axis+top)
	}
}

// detailLetter names the detail.
const detailLetter = "Z"

// markDetail rings the place that the detail enlarges; fin0 is where its first fin stands.
func (c composer) markDetail(fin0 float64, n int) {
	s, y := c.scales.Main, c.layout.centreY-c.od/2*c.scales.Main
	count := c.detailFins()
	radius := min(max(float64(count)*c.pitch*s*0.5+0.5, 2.5), c.od/2*s-sheet.TextHeight-2)
	if radius < 1.5 || !c.reaches(c.od/2*s) {
		return
	}
	first := max(0, (n-count)/2)
	m := ink.At(fin0+(float64(first)+float64(count-1)/2)*c.pitch*s, y)
	c.Line(ink.Thin, ink.Closed(sheet.Circle(m, radius))...)
	c.Write("detail-mark", "dim", m.X, m.Y+radius+sheet.TextHeight*0.75+0.6, sheet.Middle, detailLetter)
}

// drawScaleBar draws a round length at the sections' scale, and states the unit of all dimensions.
func (c composer) drawScaleBar() {
	const about = 24 // mm of sheet
	unit, note := units.Millimetre, "drawing.in_mm"
	if c.System == units.US {
		unit, note = units.Inch, "drawing.in_inches"
	}
	inUnit := about / c.scales.Main / unit.Millimetres()
	n := roundBelow(inUnit)
	x, y := margin, c.layout.footY-1
	end := x + n*unit.Millimetres()*c.scales.Main
	c.Line(ink.Thick, ink.At(x, y), ink.At(end, y))
	c.Line(ink.Thin, ink.At(x, y-1.2), ink.At(x, y+1.2))
	c.Line(ink.Thin, ink.At(end, y-1.2), ink.At(end, y+1.2))
	c.Write("scale-bar", "scale", end+1.2, c.layout.footY, sheet.Start, units.Text{Value: c.Text.Numbers.Write(shortest(n)), Unit: units.Distance.Unit(c.System)}.String())
	c.Write("unit", "scale", c.Scene.Width-margin, c.layout.footY, sheet.End, c.Text.Text(note))
}
