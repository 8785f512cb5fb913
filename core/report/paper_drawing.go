package report

import (
	"fmt"

	"finwright/core/drawing/dxf"
	"finwright/core/drawing/finned"
	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/drawing/svg"
	"finwright/core/message"
	"finwright/core/units"
)

// turnsDrawn is over how many turns the pitch profile goes.
const turnsDrawn = 4

// classes are the layers of what is cut.
var classes = map[ink.Class]dxf.Layer{ink.TubeMetal: dxf.Tube, ink.FinMetal: dxf.Fin, ink.WeldMetal: dxf.Weld}

// Exchange is the tube in true size, in millimetres whatever the reader's units, as other programs draw: across it, over some pitches,
// over its whole length from finished end A, and in its crate. Of a design that is refused it says so.
func (w *Papers) Exchange() string {
	var d dxf.Drawing
	t := &w.In.Tube
	od, tip, wall := t.OD.Millimetres(), t.FinOD().Millimetres(), t.MeanWall().Millimetres()
	letters := tip / 16

	// Across the tube, about its axis.
	origin := ink.Point{}
	d.Circle(dxf.Fin, origin, tip)
	d.Circle(dxf.Tube, origin, od)
	d.Circle(dxf.Tube, origin, od-2*wall)
	if foot := t.FootThickness().Millimetres(); foot > 0 {
		d.Circle(dxf.Fin, origin, od+2*foot)
	}
	reach := tip/2 + letters
	d.Line(dxf.Centre, ink.At(-reach, 0), ink.At(reach, 0))
	d.Line(dxf.Centre, ink.At(0, -reach), ink.At(0, reach))
	across := func(diameter, below float64) {
		y := -tip/2 - below*letters
		d.Dimension(ink.At(-diameter/2, 0), ink.At(diameter/2, 0), ink.At(0, y), false, letters, "Ø"+w.millimetres(diameter))
	}
	across(od, 2.5)
	across(tip, 5)
	d.Text(ink.At(-tip/2, tip/2+2*letters), letters, w.t("drawing.across"))

	// Over some pitches, outwards up.
	x := tip + 8*letters
	place := func(p ink.Point) ink.Point { return ink.At(x+p.X, p.Y) }
	pitch, height, strip := t.Pitch().Millimetres(), t.Fin.Height.Millimetres(), t.Fin.Strip.Millimetres()
	for _, shape := range finned.Profile(*t, turnsDrawn) {
		for _, loop := range shape.Loops {
			path := make([]ink.Point, len(loop))
			for i, p := range loop {
				path[i] = place(p)
			}
			d.Outline(classes[shape.Class], path)
		}
	}
	small := max(height/16, pitch/6)
	end := (turnsDrawn - 0.5) * pitch
	d.Dimension(place(ink.At(0, height)), place(ink.At(pitch, height)), place(ink.At(0, height+2*small)), false, small, "")
	d.Dimension(place(ink.At(end, 0)), place(ink.At(end-pitch/2, height)), place(ink.At(end+3*small, 0)), true, small, "")
	d.Dimension(place(ink.At(end, -wall)), place(ink.At(end, 0)), place(ink.At(end+3*small, 0)), true, small, "")
	d.Text(place(ink.At(-pitch/2, height+6*small)), small, w.say(message.New("paper.drawing.profile", "strip", message.Of(units.Thickness, units.Length(strip)*units.Millimetre))))

	w.packed(&d, max(reach+3*letters, height+8*small)+tip)
	w.wholeLength(&d, -3*tip)
	return d.String()
}

// packed draws a full crate in section, its lower left corner at the height y; nothing of tubes that are not packed.
func (w *Papers) packed(d *dxf.Drawing, y float64) {
	if w.Made == nil {
		return
	}
	c, ok := w.crated(w.Made)
	if !ok {
		return
	}
	at := func(p ink.Point) ink.Point { return ink.At(p.X, y+p.Y) }
	letters := c.Height / 40
	d.Outline(dxf.Crate, []ink.Point{at(ink.At(0, 0)), at(ink.At(c.Width, 0)), at(ink.At(c.Width, c.Height)), at(ink.At(0, c.Height))})
	for _, level := range c.Separators {
		d.Line(dxf.Crate, at(ink.At(0, level)), at(ink.At(c.Width, level)))
	}
	for _, p := range c.Centres {
		d.Circle(dxf.Crate, at(p), c.FinOD)
		d.Circle(dxf.Crate, at(p), c.OD)
	}
	d.Dimension(at(ink.At(0, c.Height)), at(ink.At(c.Width, c.Height)), at(ink.At(0, c.Height+2.5*letters)), false, letters, "")
	d.Dimension(at(ink.At(c.Width, 0)), at(ink.At(c.Width, c.Height)), at(ink.At(c.Width+2.5*letters, 0)), true, letters, "")
	d.Text(at(ink.At(0, c.Height+5*letters)), letters, c.Title)
}

// Size of the drawing that leaves as a picture [CSS px], and the room of a line under it [mm].
const (
	pictureWide  = 1100
	pictureHigh  = 480
	underPicture = 1.6 * sheet.TextHeight
)

// Drawing is the tube as the page draws it, with what must be known of it under the views.
func (w *Papers) Drawing() string {
	s := w.Tube(pictureWide, pictureHigh)
	for i, line := range present(w.Card(*w.In, w.Result.Heat).Line, w.across(), w.t("paper.not_for_pressure"), w.Mark.String()) {
		s.Height += underPicture
		s.Texts = append(s.Texts, sheet.Text{ID: fmt.Sprint("note-", i), Class: "dim", X: underPicture, Y: s.Height - underPicture/2, Anchor: sheet.Start, Width: sheet.TextWidth(line), Text: line})
	}
	return svg.Write(s, svg.Style{})
}

// wholeLength draws the tube from finished end A to the right, its axis at y.
func (w *Papers) wholeLength(d *dxf.Drawing, y float64) {
	t := &w.In.Tube
	r, tip, bore, length := t.OD.Millimetres()/2, t.FinOD().Millimetres()/2, t.InsideOD().Millimetres()/2, t.Length.Millimetres()
	letters := max(length/200, t.FinOD().Millimetres()/16)
	box := func(l dxf.Layer, from, to, half float64) {
		d.Outline(l, []ink.Point{ink.At(from, y-half), ink.At(to, y-half), ink.At(to, y+half), ink.At(from, y+half)})
	}
	box(dxf.Tube, 0, length, r)
	for _, side := range []float64{-bore, bore} {
		d.Line(dxf.Hidden, ink.At(0, y+side), ink.At(length, y+side))
	}
	d.Line(dxf.Centre, ink.At(-2*letters, y), ink.At(length+2*letters, y))
	below := y - tip - 2.5*letters
	edges := []float64{0, t.PlainA.Millimetres()}
	for _, s := range t.Spans {
		edges = append(edges, (s.Centre - s.Width/2).Millimetres(), (s.Centre + s.Width/2).Millimetres())
	}
	edges = append(edges, length-t.PlainB.Millimetres(), length)
	for i := 1; i < len(edges)-2; i += 2 {
		box(dxf.Fin, edges[i], edges[i+1], tip)
	}
	for i := 0; i+1 < len(edges); i++ {
		if edges[i+1]-edges[i] > 1e-9 {
			d.Dimension(ink.At(edges[i], y-r), ink.At(edges[i+1], y-r), ink.At(0, below-letters*2.5*float64(i%2)), false, letters, "")
		}
	}
	d.Dimension(ink.At(0, y-r), ink.At(length, y-r), ink.At(0, below-letters*5.5), false, letters, "")
	lines := present(
		w.say(message.New("paper.foot", "title", w.title("datasheet"), "item", w.itemName())), w.across(), w.Card(*w.In, w.Result.Heat).Line, w.t("paper.datum"), w.t("paper.drawing.true"),
		w.say(message.New("paper.drawing.mass", "mass", message.Of(units.Weight, t.Weight()))), w.t("paper.not_for_pressure"), w.Mark.String(),
	)
	for _, c := range w.checks(w.Made) {
		lines = append(lines, c.Name+": "+c.Find)
	}
	for i, line := range lines {
		d.Text(ink.At(0, below-letters*(9+1.6*float64(i))), letters, line)
	}
}

// millimetres prints a length as it stands in a drawing that is in millimetres.
func (w *Papers) millimetres(mm float64) string {
	return w.Texts.Numbers.Figure(units.Diameter, mm/1e3, units.SI).Value
}
