// Package finned draws a finned tube: a section across it, one along it, and an enlarged detail of the fin roots, with
// dimensions and the grips by which a page pulls them.
//
// Views follow ISO 128 (line weights, sections, break lines).
package finned

import (
	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

// Options say for whom and on what the tube is drawn.
type Options struct {
	System   units.System
	WidthPx  float64 // CSS pixels of the sheet; taken as leastWidthPx where it is less, mostPx where it is more
	HeightPx float64 // the same with leastHeightPx, and the row of the temperatures' scale
	Letters  float64 // height of the texts, of the usual, as sheet.LettersOf takes it
	Text     message.Catalogue
	Tube     ink.Hatching  // zero: 45 degrees, coarse
	Fin      ink.Hatching  // zero: 135 degrees, finer
	Heat     *Temperatures // colours the cut metal by its temperature; nil: hatched
	Alarm    string        // a warning to set on the sheet; Valid: about 24 letters
	Hold     sheet.Scales  // scales to keep; zero: choose
	Ghosts   []Ghost       // of others, drawn as outlines at the same scale
	Traced   *ink.Screen   // what it is traced for, in place of being packed
}

// Sheets [CSS px] on which three views find room, and that a screen could have.
const (
	leastWidthPx  = 300
	leastHeightPx = 220.0 // of views side by side: stacked, they are on a sheet of that width or higher
	mostPx        = 10000
)

// Every metal has its own hatching, coarse to fine.
var (
	tubeHatching = ink.Hatching{Angle: 45, Spacing: 1.7}
	finHatching  = ink.Hatching{Angle: 135, Spacing: 1.1}
)

// Compose draws a tube. Where the sheet is narrow the views are stacked. For larger letters it is laid out on a sheet that is smaller
// by as much, and enlarged; the scales are those of the drawing as it is then.
// Valid: every dimension positive, the bore open, the strip thinner than the pitch.
func Compose(t tube.Tube, o Options) sheet.Scene {
	if o.Tube == (ink.Hatching{}) {
		o.Tube = tubeHatching
	}
	if o.Fin == (ink.Hatching{}) {
		o.Fin = finHatching
	}
	least := leastHeightPx
	if o.Heat != nil {
		least += legendRow * ink.PxPerMM
	}
	o.Letters = sheet.LettersOf(o.Letters)
	w, h := min(max(o.WidthPx/o.Letters, leastWidthPx), mostPx)/ink.PxPerMM, min(max(o.HeightPx/o.Letters, least), mostPx)/ink.PxPerMM
	o.Hold.Main, o.Hold.Detail = o.Hold.Main/o.Letters, o.Hold.Detail/o.Letters
	c := composer{Options: o, section: newSection(t), Sheet: &sheet.Sheet{Scene: sheet.Scene{Width: w, Height: h}}, marks: &marks{}}
	c.layout = arrange(w, h, o.Heat != nil)
	c.scales = c.chooseScales()
	if o.Heat != nil {
		c.ofTube, c.ofFin = c.bodies()
	}
	c.drawAlong() // first: what it marks of the other two, they name
	c.drawAcross()
	c.Scene.Views[0], c.Scene.Views[1] = c.Scene.Views[1], c.Scene.Views[0]
	c.gripPitch()
	c.drawDetail()
	c.drawScaleBars()
	c.noteUnit()
	if o.Heat != nil {
		c.drawLegend()
	}
	if o.Alarm != "" {
		c.drawAlarm()
	}
	c.Settle()
	c.drawGhosts()
	s := c.Sheet.Scene
	s.Scales = c.scales
	s.Enlarge(o.Letters)
	if o.Traced != nil {
		s.Traces = ink.Traces(s.Artwork, *o.Traced)
	} else {
		s.Ink = ink.Pack(s.Artwork)
	}
	return s
}

type composer struct {
	Options
	section
	*sheet.Sheet
	layout layout
	scales sheet.Scales

	ofTube, ofFin body // of the field, if there is one
	marks         *marks
}

// marks is what one view says of another: it is there, and named, or neither.
type marks struct {
	cut    bool // where the section across lies
	detail bool // what the detail enlarges
	parted bool // the foot of the sheet says that fins are left out along the tube
}

// print writes a length for a dimension: the number alone, since the sheet states the unit once. All have as many decimals,
// and one more where they are less than a millimetre.
func (c composer) print(mm float64) string {
	k := units.Diameter
	if mm < 1 {
		k = units.Thickness
	}
	return c.Text.Numbers.Figure(k, mm/1e3, c.System).Value
}

func (c composer) diameter(mm float64) string {
	return c.Text.Render(message.New("drawing.diameter", "value", c.print(mm)), c.System)
}

// finOD returns the fin's outside diameter [mm].
func (c composer) finOD() float64 { return c.od + 2*c.height }

// heading states a view's title and scale over it.
func (c composer) heading(id, title string, scale float64, at box) {
	text := scaleText(c.Text, scale*c.Letters)
	c.Scene.Views = append(c.Scene.Views, sheet.View{ID: id, Title: title, Scale: scale, ScaleText: text, X: at.x, Y: at.y, Width: at.w, Height: at.h})
	c.Write("title-"+id, "title", at.x, at.y+sheet.TextHeight, sheet.Start, title)
	if !c.layout.stacked {
		c.Write("scale-"+id, "scale", at.x, at.y+sheet.TextHeight+lineSpacing, sheet.Start, text)
		return
	}
	// The section across has the scale of the one along: if one line is too short for both, that one states it.
	x := at.x + sheet.TextWidth(title) + 1.5
	if id != "across" || x+sheet.TextWidth(text) < at.x+at.w {
		c.Write("scale-"+id, "scale", x, at.y+sheet.TextHeight, sheet.Start, text)
	}
}

// cut adds a piece of metal, placed on the sheet and cut off.
func (c composer) cut(p part, place func(ink.Point) ink.Point, scale float64, cuts ...halfPlane) {
	loop := p.loop
	for _, h := range cuts {
		if loop = h.clip(loop); len(loop) < 3 {
			return
		}
	}
	put := func(path []ink.Point) []ink.Point {
		out := make([]ink.Point, len(path))
		for i, q := range path {
			out[i] = place(q)
		}
		return out
	}
	s := ink.Shape{Class: p.class, Loops: [][]ink.Point{put(loop)}, Narrow: p.narrow * scale, Hatch: c.Tube}
	if p.class != ink.TubeMetal {
		s.Hatch = c.Fin
	}
	if c.Heat != nil {
		s.Hatch = ink.Hatching{}
	}
	for _, e := range edges(loop, cuts...) {
		s.Edges = append(s.Edges, put(e))
	}
	c.Scene.Shapes = append(c.Scene.Shapes, s)
}
