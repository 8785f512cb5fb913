package finned

import (
	"math"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

// Room around the detail, and what makes it worth drawing [mm].
const (
	detailLeft   = 10.0 // strip and tip thickness
	detailRight  = 8.0  // foot or groove
	detailTop    = 10.0 // tip thickness, and the gap where it does not fit
	detailBottom = 7.0  // lap
	legible      = 1.4  // least thickness of strip
	lonelyStrip  = 4.0  // thickness of strip where the pitch is too wide for two fins
	breakGap     = 3.0
	breakPast    = 1.5  // of a break line beyond the metal
	breakRise    = 0.4  // of its ends over its middle
	footShare    = 0.25 // of the detail's height, at most
	firstRank    = 4.5  // strip thickness over the foot
	secondRank   = 10.5
)

func (c composer) detailRoom() float64 { return c.layout.detail.w - detailLeft - detailRight }

// detailScale shows three fins, or two if the gap could not be read, or one where fins are far apart.
func (c composer) detailScale() float64 {
	room := c.detailRoom()
	low := c.layout.detail.h - c.layout.head - detailTop - detailBottom
	lowest := low * footShare / max(c.foot+c.radius, 1e-3)
	three, two := c.snap(min(lowest, room/(3*c.pitch))), c.snap(min(lowest, room/(2*c.pitch)))
	gapText := sheet.TextWidth(c.print(c.pitch - c.strip))
	switch {
	case three*c.strip >= legible && three*(c.pitch-c.strip) >= gapText:
		return three
	case two*c.strip >= legible:
		return two
	}
	return c.snap(min(lowest, lonelyStrip/c.strip))
}

// detailFins is how many fins stand in the detail: at most three.
func (c composer) detailFins() int {
	return max(1, min(3, int(c.detailRoom()/(c.pitch*c.scales.Detail)+1e-9)))
}

// detail is the enlarged view as laid out.
type detail struct {
	scale          float64
	a, b           float64 // from, to, along the tube [mm real]
	x0, x1         float64
	surface, floor float64 // tube surface and lowest metal shown
	tip            float64
	upto, from     float64 // the fins are broken between these heights [mm real]
	broken         bool
	fins           int
}

func (c composer) layDetail() detail {
	d := detail{scale: c.scales.Detail, fins: c.detailFins()}
	at, room := c.layout.detail, c.detailRoom()
	d.a, d.b = -c.pitch/2, (float64(d.fins)-0.5)*c.pitch
	if most := room / d.scale; d.b-d.a > most {
		d.a, d.b = -most/2, most/2
	}
	d.x0 = at.x + detailLeft + (room-(d.b-d.a)*d.scale)/2
	d.x1 = d.x0 + (d.b-d.a)*d.scale
	top, bottom := at.y+c.layout.head+detailTop, at.y+at.h-detailBottom
	wall := min(c.wall*d.scale, max(0.22*(bottom-top), c.groove*d.scale+2))
	tall := c.height * d.scale
	if spare := bottom - top - wall - tall; spare >= 0 {
		d.tip = top + spare/2
		d.surface = d.tip + tall
		d.upto, d.from = c.height, c.height
	} else {
		d.broken = true
		d.tip, d.surface = top, bottom-wall
		end := max(5, 0.2*(d.surface-d.tip))
		d.upto = (d.surface - d.tip - end - breakGap) / d.scale
		d.from = c.height - end/d.scale
	}
	d.floor = d.surface + wall
	return d
}

func (d detail) x(real float64) float64 { return d.x0 + (real-d.a)*d.scale }

// root places what is below the break, top what is above.
func (d detail) root(p ink.Point) ink.Point { return ink.At(d.x(p.X), d.surface-p.Y*d.scale) }

func (d detail) top(height float64) func(ink.Point) ink.Point {
	return func(p ink.Point) ink.Point { return ink.At(d.x(p.X), d.tip+(height-p.Y)*d.scale) }
}

// drawDetail draws the roots of a few fins enlarged.
func (c composer) drawDetail() {
	d := c.layDetail()
	title := c.Text.Text("drawing.detail_alone")
	if c.marks.detail {
		title = c.Text.Render(message.New("drawing.detail", "letter", detailLetter), c.System)
	}
	c.heading("detail", title, d.scale, c.layout.detail)
	left, right := halfPlane{-1, 0, -d.a}, halfPlane{1, 0, d.b}
	bottom := halfPlane{0, -1, (d.floor - d.surface) / d.scale}
	cuts := []halfPlane{left, right}
	shallow := d.floor-d.surface < c.wall*d.scale-1e-9
	if shallow {
		cuts = append(cuts, bottom)
	}
	for _, p := range c.parts(d.a, d.b) {
		if !d.broken {
			c.cut(p, d.root, d.scale, cuts...)
			continue
		}
		c.cut(p, d.root, d.scale, append(cuts[:len(cuts):len(cuts)], halfPlane{0, 1, d.upto})...)
		c.cut(p, d.top(c.height), d.scale, left, right, halfPlane{0, -1, -d.from})
	}
	if c.Heat != nil {
		pieces := c.pieces(d.scale)
		if !d.broken {
			c.tint(pieces, d.a, d.b, d.scale, d.root, cuts...)
		} else {
			c.tint(pieces, d.a, d.b, d.scale, d.root, append(cuts[:len(cuts):len(cuts)], halfPlane{0, 1, d.upto})...)
			c.tint(pieces, d.a, d.b, d.scale, d.top(c.height), left, right, halfPlane{0, -1, -d.from})
		}
	}
	c.breakDetail(d, shallow)
	c.dimensionFins(d)
	c.dimensionRoot(d)
}

func (c composer) breakDetail(d detail, shallow bool) {
	high := d.surface - c.foot*d.scale - breakPast
	c.BreakLine(ink.At(d.x0, high), ink.At(d.x0, d.floor+breakPast))
	c.BreakLine(ink.At(d.x1, high), ink.At(d.x1, d.floor+breakPast))
	if shallow {
		c.BreakLine(ink.At(d.x0-breakPast, d.floor), ink.At(d.x1+breakPast, d.floor))
	}
	if !d.broken {
		return
	}
	for _, k := range c.turns(d.a, d.b) {
		for _, p := range []ink.Point{d.root(ink.At(0, d.upto)), d.top(c.height)(ink.At(0, d.from))} {
			x, reach := p.X+float64(k)*c.pitch*d.scale, c.half(d.upto)*d.scale+breakPast
			c.Line(ink.Break, ink.At(x-reach, p.Y+breakRise), ink.At(x+reach, p.Y-breakRise))
		}
	}
}

// dimensionFins states strip, tip and gap.
func (c composer) dimensionFins(d detail) {
	base := d.surface - c.foot*d.scale
	lift := func(rank float64) (y, real float64) {
		y = max(base-rank, d.surface-d.upto*d.scale+1)
		return y, (d.surface - y) / d.scale
	}
	y, real := lift(firstRank)
	strip := sheet.Measured{Name: "strip_thickness", Text: c.print(c.strip), Field: true}
	if d.broken && y-sheet.Standoff-sheet.TextHeight < d.root(ink.At(0, d.upto)).Y+breakRise {
		strip.Beyond = breakPast + sheet.Standoff // clear of the break line, which is as high as the text
	}
	c.Across(strip, d.x(c.half(real)), d.x(-c.half(real)), y, y, y)
	c.grip(sheet.Grip{
		ID: "strip", Field: "strip_thickness", X: d.x(c.half(real)), Y: y, Axis: [2]float64{1, 0}, PerMM: c.strip / c.half(real) / d.scale,
		Value: c.strip, Min: 0.1, Max: c.pitch * 0.8, Steps: 1,
	}, units.Thickness, c.tube.Fin.Strip)
	if c.tube.Profile() != tube.Uniform {
		tip := sheet.Measured{Name: "tip_thickness", Text: c.print(c.tube.TipThickness().Millimetres()), Field: true}
		h := c.half(c.height)
		c.Across(tip, d.x(h), d.x(-h), d.tip-3, d.tip, d.tip)
	}
	if d.fins < 2 {
		return
	}
	y, real = lift(secondRank)
	k := float64(d.fins - 2)
	x1, x2 := d.x(k*c.pitch+c.half(real)), d.x((k+1)*c.pitch-c.half(real))
	gap := sheet.Measured{Name: "gap", Text: c.print(c.pitch - c.strip)}
	if x2-x1 >= sheet.TextWidth(gap.Text) {
		c.Across(gap, x1, x2, y, y, y)
		return
	}
	m := (x1 + x2) / 2
	c.Begin()
	c.Arrow(ink.AtBoth, ink.At(x1, y), ink.At(x2, y))
	c.Line(ink.Measure, ink.At(m, y), ink.At(m, d.tip-5.5))
	c.Label(gap, ink.At(m, d.tip-5.5-sheet.Standoff), 0, sheet.Middle)
}

// dimensionRoot states what holds the fin: foot, lap, groove or muff.
func (c composer) dimensionRoot(d detail) {
	last := float64(d.fins-1) * c.pitch
	rank := d.x1 + 5.5
	if c.groove > 0 {
		groove := sheet.Measured{Name: "groove_depth", Text: c.print(c.tube.Fin.Groove.Millimetres()), Field: true}
		c.Upright(groove, d.surface+c.groove*d.scale, d.surface, rank, d.x(last+c.strip/2), d.x1)
	}
	if !c.tube.Fin.Type.Wound() {
		sleeve := sheet.Measured{Name: "sleeve_thickness", Text: c.print(c.foot), Field: true}
		c.Upright(sleeve, d.surface, d.surface-c.foot*d.scale, rank, d.x1, d.x1)
	}
	if c.tube.Fin.Type.Lapped() {
		foot := sheet.Measured{Name: "foot", Text: c.print(c.foot)}
		c.Upright(foot, d.surface, d.surface-c.foot*d.scale, rank, d.x1, d.x(last+c.strip/2+c.radius))
	}
	if c.lap > 0 {
		fin := math.Min(1, float64(d.fins-1)) * c.pitch
		x1, x2 := d.x(fin-c.strip/2), d.x(fin-c.strip/2+c.lap)
		c.Across(sheet.Measured{Name: "foot_lap", Text: c.print(c.lap), Field: true}, x1, x2, d.floor+5, d.surface, d.surface)
	}
}
