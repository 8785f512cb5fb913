package finned

import (
	"math"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/units"
)

// drawAcross draws the section between two fins: tube and foot cut, the fin beyond as seen.
func (c composer) drawAcross() {
	at, s := c.layout.across, c.scales.Main
	c.heading("across", c.Text.Text("drawing.across"), s, at)
	m := ink.At(at.x+at.w/2, c.layout.centreY)
	ring := func(class ink.Class, outer, inner float64, h ink.Hatching) {
		loops := [][]ink.Point{sheet.Circle(m, outer*s), sheet.Circle(m, inner*s)}
		shape := ink.Shape{Class: class, Loops: loops, Narrow: (outer - inner) * s, Hatch: h}
		for _, l := range loops {
			shape.Edges = append(shape.Edges, ink.Closed(l))
		}
		c.Scene.Shapes = append(c.Scene.Shapes, shape)
	}
	r, bore := c.od/2, c.od/2-c.wall
	ring(ink.TubeMetal, r, bore, c.Tube)
	if c.foot > 0 {
		ring(ink.FinMetal, r+c.foot, r, c.Fin)
	}
	if c.groove > 0 {
		c.Line(ink.Hidden, ink.Closed(sheet.Circle(m, (r-c.groove)*s))...)
	}
	tip := c.finOD() / 2 * s
	c.Line(ink.Thick, ink.Closed(sheet.Circle(m, tip))...)
	c.Line(ink.Centre, ink.At(m.X-tip-overhang, m.Y), ink.At(m.X+tip+overhang, m.Y))
	c.Line(ink.Centre, ink.At(m.X, m.Y-tip-overhang), ink.At(m.X, m.Y+tip+overhang))
	c.dimensionWall(m, r*s, bore*s, tip)

	c.grip(sheet.Grip{
		ID: "tip", Field: "fin_height", X: m.X, Y: m.Y - tip, Axis: [2]float64{0, -1}, PerMM: 1 / s,
		Value: c.height, Min: 1, Max: 60, Steps: 1,
	}, units.Height, c.tube.Fin.Height)
	c.grip(sheet.Grip{
		ID: "tube", Field: "tube_od", X: m.X - r*s, Y: m.Y, Axis: [2]float64{-1, 0}, PerMM: 2 / s,
		Value: c.od, Min: 5, Max: 300, Steps: 1,
	}, units.Diameter, c.tube.OD)
	stated := c.tube.Wall.Millimetres()
	c.grip(sheet.Grip{
		ID: "wall", Field: "tube_wall", X: m.X + bore*s, Y: m.Y, Axis: [2]float64{-1, 0}, PerMM: stated / c.wall / s,
		Value: stated, Min: 0.3, Max: 0.45 * c.od, Steps: 1,
	}, units.Wall, c.tube.Wall)
}

// dimensionWall puts the wall at the end of a radius that leaves the disc at its lower right.
func (c composer) dimensionWall(m ink.Point, r, bore, tip float64) {
	text := c.print(units.Wall, c.tube.Wall.Millimetres())
	w := sheet.TextWidth(text)
	shelf := ink.At(m.X+tip*0.62, m.Y+tip+1.5)
	d := math.Hypot(shelf.X-m.X, shelf.Y-m.Y)
	on := func(at float64) ink.Point { return ink.Between(m, shelf, at/d) }
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
