package ink

// Tone is a colour by its part in the drawing; a theme gives it its value.
type Tone int

// Tones.
const (
	PaperTone Tone = iota
	InkTone        // outlines
	GreyTone       // dimensions and centre lines
	FaintTone      // hatching
	coldTone       // the coldest metal; the warmer steps follow
	tones     = coldTone + HeatSteps
)

// HeatTone is the tone of metal of one step of temperature.
func HeatTone(step int) Tone { return coldTone + Tone(step) }

// Pen is how a stroke looks, in mm of screen or paper whatever the zoom.
type Pen struct {
	Width float64
	Tone  Tone
	dash  []float64
}

// Line widths in the ratio 2 : 1 of ISO 128, 2 px and 1 px on a plain screen.
const (
	ThickWidth = 2 / PxPerMM
	ThinWidth  = 1 / PxPerMM
)

var pens = map[Stroke]Pen{
	Thick:   {ThickWidth, InkTone, nil},
	Thin:    {ThinWidth, InkTone, nil},
	Hidden:  {ThinWidth, InkTone, []float64{1.6, 0.8}},
	Centre:  {ThinWidth, GreyTone, []float64{6, 0.9, 0.5, 0.9}},
	Measure: {ThinWidth, GreyTone, nil},
	Break:   {ThinWidth, InkTone, nil},
	Ghost:   {ThinWidth, GreyTone, []float64{2.4, 1.2}},
}

// Pen returns the pen that a stroke is drawn with.
func (s Stroke) Pen() Pen { return pens[s] }

// Dashes returns the pattern of a line of that length [mm], or nil for one that is not broken.
func (p Pen) Dashes(length float64) []float64 {
	if p.dash == nil {
		return nil
	}
	return fitDash(p.dash, length)
}

// SolidBelow is the thickness [mm as seen] under which a section is filled and not hatched.
//
// Source: ISO 128-50, thin sections may be shown entirely black; the size is engineering judgement.
const SolidBelow = 1.2

// fitDash stretches a pattern so that a line of that length begins and ends with a whole dash.
func fitDash(pattern []float64, length float64) []float64 {
	period := 0.0
	for _, x := range pattern {
		period += x
	}
	n := float64(max(1, int((length-pattern[0])/period+0.5)))
	f := length / (n*period + pattern[0])
	out := make([]float64, len(pattern))
	for i, x := range pattern {
		out[i] = x * f
	}
	return out
}

// arrowhead returns the barbs and the tip of an arrow that points from p to tip.
func arrowhead(p, tip Point, length, width float64) []Point {
	d := Distance(p, tip)
	if d == 0 {
		return nil
	}
	ux, uy := (tip.X-p.X)/d, (tip.Y-p.Y)/d
	back := Point{tip.X - ux*length, tip.Y - uy*length}
	return []Point{tip, {back.X - uy*width/2, back.Y + ux*width/2}, {back.X + uy*width/2, back.Y - ux*width/2}}
}

// Heads returns the arrowheads of a path with so many of its units to a millimetre of screen or paper.
func (a Arrows) Heads(p []Point, unit float64) [][]Point {
	length, width := ArrowLength*unit, arrowWidth*unit
	var out [][]Point
	if n := len(p); n > 1 {
		if a == AtStart || a == AtBoth {
			out = append(out, arrowhead(p[1], p[0], length, width))
		}
		if a == AtEnd || a == AtBoth {
			out = append(out, arrowhead(p[n-2], p[n-1], length, width))
		}
	}
	return out
}
