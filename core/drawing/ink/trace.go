package ink

import (
	"math"
	"strconv"
)

// Fine is how many units of a Trace make a device pixel.
const Fine = 10

// Trace is what of a drawing has one tone and one width of line, as a path of a picture. A drawing is some ten of them, so that
// a page that shows them anew with every move of a hand has little to do; whole numbers, and each corner by its way from the last,
// so that there is little to read.
type Trace struct {
	Tone  string  `json:"tone"`  // ink, grey or faint, which the page has colours for, or a colour as #rrggbb
	Fill  bool    `json:"fill"`  // filled, even-odd
	Width float64 `json:"width"` // of its line [device px / Fine]; 0: none
	Path  string  `json:"path"`  // [device px / Fine]
}

// Traces returns the artwork as Mesh.Paint would paint it, from back to front. Of the screen's theme only the temperatures
// are used: the page has the rest.
func Traces(a Artwork, s Screen) []Trace {
	t := tracer{view: viewOn(s), at: map[stroked]int{}}
	for _, x := range a.Tints {
		for _, l := range x.Loops {
			t.draw(HeatTone(x.Step), true, seam, t.place(l), true)
		}
	}
	for _, x := range a.Shapes {
		t.metal(x)
	}
	for _, l := range a.Lines {
		parts, heads, pen := t.strokes(l)
		for _, p := range parts {
			t.draw(pen.Tone, false, pen.Width, p, false)
		}
		for _, h := range heads {
			t.draw(pen.Tone, true, 0, h, true)
		}
	}
	out := make([]Trace, len(t.list))
	for i, l := range t.list {
		out[i] = Trace{s.Theme.named(l.tone), l.fill, math.Round(l.width*Fine*10) / 10, string(l.path)}
	}
	return out
}

// seam is the width of line [device px] that keeps paper from showing between tints.
const seam = 0.5

type stroked struct {
	tone  Tone
	fill  bool
	width float64
}

type tracer struct {
	view
	at   map[stroked]int // in list
	list []tracePath
}

type tracePath struct {
	stroked
	path []byte
}

func (t *tracer) metal(s Shape) {
	tinted := s.Hatch.Spacing == 0
	loops := make([][]Point, len(s.Loops))
	for i, l := range s.Loops {
		loops[i] = t.place(l)
	}
	if s.Narrow*t.Transform.K < SolidBelow {
		if !tinted {
			for _, l := range loops {
				t.draw(InkTone, true, 0, l, true)
			}
		}
		return
	}
	if !tinted {
		for _, l := range t.hatching(s, loops) {
			t.draw(FaintTone, false, ThinWidth*t.unit, l[:], false)
		}
	}
	for _, e := range s.Edges {
		t.draw(InkTone, false, ThickWidth*t.unit, snap(t.place(e), ThickWidth*t.unit), false)
	}
}

// draw adds a path to what has its tone and width.
func (t *tracer) draw(tone Tone, fill bool, width float64, path []Point, shut bool) {
	key := stroked{tone, fill, width}
	i, known := t.at[key]
	if !known {
		i = len(t.list)
		t.at[key] = i
		t.list = append(t.list, tracePath{stroked: key})
	}
	t.list[i].path = appendPath(t.list[i].path, path, shut)
}

// appendPath writes a path. Its corners are rounded where they are and not by their way from the last, so that nothing adds up.
func appendPath(b []byte, path []Point, shut bool) []byte {
	x, y := 0, 0
	for j, q := range path { // thousands of them: no format
		toX, toY := int(math.Round(q.X*Fine)), int(math.Round(q.Y*Fine))
		switch j {
		case 0:
			b = append(b, 'M')
		case 1:
			b = append(b, 'l')
		default:
			b = appendGap(b, toX-x)
		}
		b = strconv.AppendInt(b, int64(toX-x), 10)
		b = strconv.AppendInt(appendGap(b, toY-y), int64(toY-y), 10)
		x, y = toX, toY
	}
	if shut {
		b = append(b, 'Z')
	}
	return b
}

// appendGap parts two numbers, where the sign of the second does not.
func appendGap(b []byte, next int) []byte {
	if next < 0 {
		return b
	}
	return append(b, ' ')
}

func (t *Theme) named(tone Tone) string {
	switch tone {
	case InkTone:
		return "ink"
	case GreyTone:
		return "grey"
	case FaintTone:
		return "faint"
	}
	return t[tone].Hex()
}
