package finned

import (
	"math"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/message"
	"finwright/core/units"
)

// drawAcross draws the section between two fins: tube and foot cut, the fin beyond as seen.
func (c composer) drawAcross() {
	at, s := c.layout.across, c.scales.Main
	title := c.Text.Text("drawing.across")
	if c.marks.cut {
		title = c.Text.Render(message.New("drawing.across_cut", "letter", cutLetter), c.System)
	}
	c.heading("across", title, s, at)
	m := ink.At(at.x+at.w/2, c.layout.centreY)
	cuts := c.layout.within(m, c.layout.reachY)
	ring := func(class ink.Class, outer, inner float64, h ink.Hatching) {
		shape := ink.Shape{Class: class, Narrow: (outer - inner) * s, Hatch: h}
		for _, r := range []float64{outer, inner} {
			loop, runs := seen(sheet.Circle(m, r*s), cuts)
			if loop != nil {
				shape.Loops = append(shape.Loops, loop)
			}
			shape.Edges = append(shape.Edges, runs...)
		}
		if len(shape.Edges) > 0 {
			c.Scene.Shapes = append(c.Scene.Shapes, shape)
		}
	}
	r, bore := c.od/2, c.od/2-c.wall
	ring(ink.TubeMetal, r, bore, c.Tube)
	if c.foot > 0 {
		ring(ink.FinMetal, r+c.foot, r, c.Fin)
	}
	if c.groove > 0 {
		_, runs := seen(sheet.Circle(m, (r-c.groove)*s), cuts)
		for _, run := range runs {
			c.Line(ink.Hidden, run...)
		}
	}
	tip := c.finOD() / 2 * s
	c.drawDisc(m)
	wide := min(tip+overhang, c.layout.reachX)
	c.Line(ink.Centre, ink.At(m.X-wide, m.Y), ink.At(m.X+wide, m.Y))
	c.Line(ink.Centre, ink.At(m.X, m.Y-min(tip+overhang, c.layout.riseY)), ink.At(m.X, m.Y+c.upTo(tip)+overhang))
	c.dimensionWall(m, r*s, bore*s, min(tip, c.layout.reachX, c.layout.reachY))

	// A grip whose line is broken off lies at the break.
	c.grip(sheet.Grip{
		ID: "tip", Field: "fin_height", X: m.X, Y: m.Y - min(tip, c.layout.riseY), Axis: [2]float64{0, -1}, PerMM: 1 / s,
		Value: c.height, Min: 1, Max: 60, Steps: 1,
	}, units.Height, c.tube.Fin.Height)
	c.grip(sheet.Grip{
		ID: "tube", Field: "tube_od", X: m.X - min(r*s, c.layout.reachX), Y: m.Y, Axis: [2]float64{-1, 0}, PerMM: 2 / s,
		Value: c.od, Min: 5, Max: 300, Steps: 1,
	}, units.Diameter, c.tube.OD)
	stated := c.tube.Wall.Millimetres()
	c.grip(sheet.Grip{
		ID: "wall", Field: "tube_wall", X: m.X + min(bore*s, c.layout.reachX), Y: m.Y, Axis: [2]float64{-1, 0}, PerMM: stated / c.wall / s,
		Value: stated, Min: 0.3, Max: 0.45 * c.od, Steps: 1,
	}, units.Wall, c.tube.Wall)
}

// dimensionWall puts the wall at the end of a radius that leaves the disc, as far as it is drawn, at its lower right.
func (c composer) dimensionWall(m ink.Point, r, bore, tip float64) {
	text := c.print(c.tube.Wall.Millimetres())
	w := sheet.TextWidth(text)
	shelf := ink.At(m.X+tip*0.62, m.Y+tip+1.5)
	d := math.Hypot(shelf.X-m.X, shelf.Y-m.Y)
	if r > d {
		return // broken off before the wall
	}
	on := func(at float64) ink.Point { return ink.Between(m, shelf, at/d) }
	c.Begin()
	c.Arrow(ink.AtStart, on(r), shelf, ink.At(shelf.X+w+sheet.Standoff, shelf.Y))
	c.Line(ink.Measure, on(r), on(bore))
	c.Arrow(ink.AtStart, on(bore), on(max(bore-sheet.Tail, 0)))
	c.Label(sheet.Measured{Name: "tube_wall", Text: text, Field: true}, ink.At(shelf.X+sheet.Standoff, shelf.Y-sheet.Standoff), 0, sheet.Start)
}

// grip adds a grip, worded.
func (c composer) grip(g sheet.Grip, k units.Kind, l units.Length) {
	g.Unit = "mm"
	g.Label = c.Text.Text("drawing.grip." + g.ID)
	g.ValueText = c.Text.Numbers.Figure(k, float64(l), c.System).String()
	c.Scene.Grips = append(c.Scene.Grips, g)
}
