package finned

import (
	"math"
	"strings"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/message"
	"finwright/core/units"
)

// Sizes of the legend and the alarm [mm].
const (
	legendBar  = 64.0 // at most
	legendTall = 2.6
	tickLength = 0.8
	alarmPad   = 1.0
	boldWidth  = 1.1 // of bold letters over others
)

// drawLegend sets the temperatures' scale over the scale bar: its ends beside it, round temperatures on it.
func (c composer) drawLegend() {
	low, high := c.Text.Numbers.Figure(units.Temp, c.Heat.Low, c.System), c.Text.Numbers.Figure(units.Temp, c.Heat.High, c.System)
	title := c.Text.Render(message.New("drawing.metal_temperature", "unit", low.Unit), c.System)
	x, y := margin, c.layout.footY-footHeight
	c.Write("heat-title", "scale", x, y, sheet.Start, title)
	x += sheet.TextWidth(title) + 2
	c.Write("heat-low", "scale", x, y, sheet.Start, low.Value)
	x += sheet.TextWidth(low.Value) + 1
	bar := min(legendBar, c.Scene.Width-margin-x-1-sheet.TextWidth(high.Value))
	c.Write("heat-high", "scale", x+bar+1, y, sheet.Start, high.Value)

	top, y := y-legendTall+0.1, y+0.1
	for i := range ink.HeatSteps {
		x1, x2 := x+bar*float64(i)/ink.HeatSteps, x+bar*float64(i+1)/ink.HeatSteps
		c.Scene.Tints = append(c.Scene.Tints, ink.Tint{Step: i, Narrow: legendTall, Loops: [][]ink.Point{{ink.At(x1, top), ink.At(x2, top), ink.At(x2, y), ink.At(x1, y)}}})
	}
	c.Frame(ink.Thin, x, top, x+bar, y)
	for _, t := range c.ticks(bar) {
		at := x + bar*(t-c.Heat.Low)/(c.Heat.High-c.Heat.Low)
		value := c.Text.Numbers.Figure(units.Temp, t, c.System).Value
		c.Line(ink.Thin, ink.At(at, top), ink.At(at, top-tickLength))
		c.Write("heat-"+value, "scale", at, top-tickLength-0.3, sheet.Middle, value)
	}
}

// ticks returns round temperatures [C] within the scale: at most four, and as many as there is room for on a bar of that width [mm].
func (c composer) ticks(bar float64) []float64 {
	low, high := units.In(units.Temp, c.Heat.Low, c.System), units.In(units.Temp, c.Heat.High, c.System)
	for step := 0.5; step < 10*(high-low); step = rounder(step) {
		var out []float64
		widest := 0.0
		for n := math.Ceil(low / step); n*step <= high; n++ {
			t := units.Out(units.Temp, n*step, c.System)
			out = append(out, t)
			widest = max(widest, sheet.TextWidth(c.Text.Numbers.Figure(units.Temp, t, c.System).Value))
			if len(out) > 4 {
				break
			}
		}
		if len(out) <= 4 && step/(high-low)*bar > widest+1 {
			return out
		}
	}
	return nil
}

// rounder returns the number after step in 0.5, 1, 2, 2.5, 5, 10, 20...: none more than twice the one before, so that at
// least two of four are left.
func rounder(step float64) float64 {
	decade := math.Pow(10, math.Floor(math.Log10(step)+1e-9))
	for _, m := range []float64{2, 2.5, 5} {
		if m*decade > step*(1+1e-9) {
			return m * decade
		}
	}
	return 10 * decade
}

// drawAlarm sets the warning in a frame at the upper right of the detail.
func (c composer) drawAlarm() {
	at := c.layout.detail
	taken := 0.0 // by title and scale
	for _, t := range c.Scene.Texts {
		if t.ID == "title-detail" || t.ID == "scale-detail" {
			taken = max(taken, t.X+sheet.TextWidth(t.Text))
		}
	}
	right := at.x + at.w - 0.5
	lines := wrap(c.Alarm, (right-taken-1-2*alarmPad)/boldWidth)
	w := 0.0
	for _, l := range lines {
		w = max(w, sheet.TextWidth(l)*boldWidth)
	}
	left, y := right-w-2*alarmPad, at.y+sheet.TextHeight
	for i, l := range lines {
		id := "alarm"
		if i > 0 {
			id = "alarm-" + string(rune('1'+i))
		}
		c.Write(id, "alarm", (left+right)/2, y+float64(i)*lineSpacing, sheet.Middle, l)
	}
	top, bottom := y-0.74*sheet.TextHeight-alarmPad, y+float64(len(lines)-1)*lineSpacing+alarmPad
	c.Frame(ink.Thick, left, top, right, bottom)
}

// wrap parts a text between words into lines of a width [mm], as far as words are short enough.
func wrap(text string, width float64) []string {
	var lines []string
	for _, word := range strings.Fields(text) {
		if n := len(lines); n > 0 && sheet.TextWidth(lines[n-1]+" "+word) <= width {
			lines[n-1] += " " + word
		} else {
			lines = append(lines, word)
		}
	}
	return lines
}
