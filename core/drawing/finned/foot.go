package finned

import (
	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/message"
	"finwright/core/units"
)

// longestBar is the length of a scale bar [mm of sheet], at most.
const longestBar = 16.0

// drawScaleBars puts a bar of a round length under each view.
func (c composer) drawScaleBars() {
	foot := func(at box) float64 { return at.y + at.h - 0.5 }
	across, along, detail := c.layout.across, c.layout.along, c.layout.detail
	y := [2]float64{c.layout.footY, c.layout.footY}
	if c.layout.stacked {
		y = [2]float64{foot(across), foot(along)}
	}
	c.scaleBar("across", across.x, y[0], c.scales.Main)
	c.scaleBar("along", along.x, y[1], c.scales.Main)
	c.scaleBar("detail", detail.x, c.layout.footY, c.scales.Detail)
}

func (c composer) scaleBar(view string, x, baseline, scale float64) {
	unit := units.Millimetre
	if c.System == units.US {
		unit = units.Inch
	}
	n := roundBelow(longestBar / scale / unit.Millimetres())
	y, end := baseline-1, x+n*unit.Millimetres()*scale
	c.Line(ink.Thick, ink.At(x, y), ink.At(end, y))
	c.Line(ink.Thin, ink.At(x, y-1.2), ink.At(x, y+1.2))
	c.Line(ink.Thin, ink.At(end, y-1.2), ink.At(end, y+1.2))
	c.Write("bar-"+view, "scale", end+1.2, baseline, sheet.Start, units.Text{Value: c.Text.Numbers.Write(shortest(n)), Unit: units.Distance.Unit(c.System)}.String())
}

// noteUnit states the unit of all dimensions, and that fins were left out.
func (c composer) noteUnit() {
	note := "drawing.in_mm"
	if c.System == units.US {
		note = "drawing.in_inches"
	}
	text, right, y := c.Text.Text(note), c.Scene.Width-margin, c.layout.footY
	if c.marks.parted {
		parted := c.Text.Text("drawing.parted")
		both := c.Text.Render(message.New("drawing.unit_noted", "unit", text, "note", parted), c.System)
		if c.Free(ink.At(right-sheet.TextWidth(both), y-0.74*sheet.TextHeight), ink.At(right, y)) {
			text = both
		} else {
			c.Write("parted", "scale", c.layout.along.x, y-lineSpacing, sheet.Start, parted)
		}
	}
	c.Write("unit", "scale", right, y, sheet.End, text)
}

// noteParted says in the bore that fins were left out, or beside the scale bar, or leaves that to the foot of the sheet.
func (c composer) noteParted(x0, x1 float64) {
	text := c.Text.Text("drawing.parted")
	half := sheet.TextWidth(text) / 2
	x, y := (x0+x1)/2, c.layout.centreY+(c.od/2-c.wall)*c.scales.Main/2+0.37*sheet.TextHeight
	bore := c.layout.centreY + c.upTo((c.od/2-c.wall)*c.scales.Main)
	if half*2 > x1-x0 || y > bore-0.5 || !c.Free(ink.At(x-half, y-0.74*sheet.TextHeight), ink.At(x+half, y)) {
		if c.layout.stacked { // there the page's presses stand at the foot of the sheet
			at := c.layout.along
			c.Write("parted", "scale", at.x+at.w, at.y+at.h-0.5, sheet.End, text)
		} else {
			c.marks.parted = true
		}
		return
	}
	c.Write("parted", "scale", x, y, sheet.Middle, text)
}
