package order

import (
	"math"
	"strconv"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
)

// bar is metal to nobody: the filled parts of a chart.
const bar ink.Class = "bar"

// Filling says how a bar of a chart is filled, so that it can be told from others without colour.
type Filling int

// Fillings.
const (
	Blank Filling = iota
	Rising
	Falling
	Solid
	HalfSolid
)

var fillHatch = map[Filling]ink.Hatching{Rising: {Angle: 45, Spacing: 1.1}, Falling: {Angle: 135, Spacing: 0.8}}

// box draws a bar with its corners.
func (s *picture) box(f Filling, x1, y1, x2, y2 float64) {
	if f == HalfSolid {
		y1 = (y1 + y2) / 2
	}
	loop := []ink.Point{ink.At(x1, y1), ink.At(x2, y1), ink.At(x2, y2), ink.At(x1, y2)}
	switch f {
	case Solid, HalfSolid:
		s.Scene.Shapes = append(s.Scene.Shapes, ink.Shape{Class: bar, Loops: [][]ink.Point{loop}, Hatch: fillHatch[Rising]})
		return
	case Rising, Falling:
		s.Scene.Shapes = append(s.Scene.Shapes, ink.Shape{Class: bar, Loops: [][]ink.Point{loop}, Narrow: 1e3, Hatch: fillHatch[f]})
	}
	s.Line(ink.Thin, ink.Closed(loop)...)
}

// Chart is work over shifts, one row a shift, in hours from its start.
type Chart struct {
	Hours   float64 // of a shift
	Rows    []string
	Bars    []ChartBar
	Legend  []ChartKey
	Unit    string // of the hours
	Ongoing string // said under the last row if the work goes on; else empty
}

// ChartBar is one activity in a row.
type ChartBar struct {
	Row      int
	From, To float64 // [h]
	Filling  Filling
	Text     string // shown where it fits
}

// ChartKey explains one filling.
type ChartKey struct {
	Filling Filling
	Text    string
}

const (
	barHeight = 5.0
	barGap    = 2.0
)

// ComposeChart draws work over shifts.
//
// Valid: hours above nought, bars within the rows.
func ComposeChart(c Chart, widthPx float64) sheet.Scene {
	w := max(widthPx, 220) / ink.PxPerMM
	s := newPicture(w, 0)
	y := s.legend(c.Legend)
	left := 1.5
	for _, r := range c.Rows {
		left = max(left, sheet.TextWidth(r)+1.5)
	}
	right := sheet.TextWidth(c.Unit) + 2
	scale := (w - left - right) / c.Hours
	for i, name := range c.Rows {
		top := y + float64(i)*(barHeight+barGap)
		s.Write("row", "scale", left-1.5, top+barHeight-1, sheet.End, name)
		s.Line(ink.Thin, ink.At(left, top+barHeight), ink.At(left+c.Hours*scale, top+barHeight))
	}
	for _, b := range c.Bars {
		top := y + float64(b.Row)*(barHeight+barGap)
		x1, x2 := left+b.From*scale, left+b.To*scale
		s.box(b.Filling, x1, top, x2, top+barHeight)
		if sheet.TextWidth(b.Text) < x2-x1-1 {
			s.Write("bar", "dim", (x1+x2)/2, top+barHeight-1.2, sheet.Middle, b.Text)
		}
	}
	y += float64(len(c.Rows)) * (barHeight + barGap)
	for h := 0.0; h <= c.Hours+1e-9; h += hourStep(c.Hours) {
		x := left + h*scale
		s.Line(ink.Thin, ink.At(x, y-1), ink.At(x, y))
		s.Write("hour", "scale", x, y+sheet.TextHeight, sheet.Middle, strconv.Itoa(int(h)))
	}
	s.Write("unit", "scale", w, y+sheet.TextHeight, sheet.End, c.Unit)
	s.Scene.Height = y + sheet.TextHeight + 1
	if c.Ongoing != "" {
		s.Write("ongoing", "dim", left, y+2*sheet.TextHeight+1.5, sheet.Start, c.Ongoing)
		s.Scene.Height += sheet.TextHeight + 1.5
	}
	return s.Scene
}

func hourStep(hours float64) float64 { return math.Max(1, math.Ceil(hours/8)) }

// legend sets out keys in as many lines as they need and returns the y below.
func (s *picture) legend(keys []ChartKey) float64 {
	const swatch = 5.0
	x, y := 0.0, 0.0
	for _, k := range keys {
		need := swatch + 1 + sheet.TextWidth(k.Text)
		if x > 0 && x+need > s.Scene.Width {
			x, y = 0, y+sheet.TextHeight+1.5
		}
		s.box(k.Filling, x+0.2, y+0.3, x+swatch, y+sheet.TextHeight)
		s.Write("key", "scale", x+swatch+1, y+sheet.TextHeight, sheet.Start, k.Text)
		x += need + 3
	}
	if len(keys) > 0 {
		y += sheet.TextHeight + 3
	}
	return y
}

// Swings is how one figure moves with each of several causes.
type Swings struct {
	Base float64
	Rows []Swing
	Down string // what a bar to the one hand means
	Up   string // and to the other
}

// Swing is one cause: the figure with the cause lower, and with it higher.
type Swing struct {
	Label     string
	Low, High float64
	Text      string // by how much, at the end of the row
}

// ComposeSwings draws swings about the base, the widest first as they come.
//
// Valid: at least one row.
func ComposeSwings(c Swings, widthPx float64) sheet.Scene {
	w := max(widthPx, 220) / ink.PxPerMM
	s := newPicture(w, 0)
	y := s.legend([]ChartKey{{Rising, c.Down}, {Solid, c.Up}})
	left, right, most := 0.0, 0.0, 0.0
	for _, r := range c.Rows {
		left, right = max(left, sheet.TextWidth(r.Label)+1.5), max(right, sheet.TextWidth(r.Text)+1.5)
		most = max(most, math.Abs(r.Low-c.Base), math.Abs(r.High-c.Base))
	}
	middle := (left + w - right) / 2
	scale := 0.0
	if most > 0 {
		scale = (w - left - right) / 2 / most
	}
	top := y
	for _, r := range c.Rows {
		side := func(f Filling, v float64) {
			if x := middle + (v-c.Base)*scale; math.Abs(x-middle) > 0.1 {
				s.box(f, min(x, middle), y, max(x, middle), y+sheet.TextHeight)
			}
		}
		side(Rising, r.Low)
		side(Solid, r.High)
		s.Write("swing", "dim", left-1.5, y+sheet.TextHeight-0.4, sheet.End, r.Label)
		s.Write("by", "scale", w, y+sheet.TextHeight-0.4, sheet.End, r.Text)
		y += sheet.TextHeight + 1.5
	}
	s.Line(ink.Centre, ink.At(middle, top-1), ink.At(middle, y))
	s.Scene.Height = y + 1
	return s.Scene
}
