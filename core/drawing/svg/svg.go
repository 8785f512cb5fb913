// Package svg writes a scene as a picture of the format of that name.
package svg

import (
	"bytes"
	"cmp"
	"fmt"
	"html"
	"math"
	"strconv"
	"strings"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
)

// Style names the colours and the letters of an SVG: any CSS value that an attribute takes.
type Style struct {
	Ink, Grey, Faint string // empty: the text colour of where the picture stands, and shares of it
	Font             string // empty: inherited
	Dark             bool   // the paper is dark
}

// Alone is for a picture that other programs show: black on white, in the page's letters where they are known, else in narrow ones.
var Alone = Style{Ink: "#000000", Grey: "#555555", Faint: "#8c8c8c", Font: "Barlow Semi Condensed" + ", " + "Arial Narrow" + ", sans-serif"}

// Write writes a scene as a picture that stands alone. It has neither script nor
// style elements and no style attributes, so a page with a strict policy can
// take it in; classes are there for a page that wants to restyle it.
func Write(s sheet.Scene, style Style) string {
	w := writer{tones: map[ink.Tone]string{}}
	w.Grow(letters * s.Corners())
	for step := range ink.HeatSteps {
		w.tones[ink.HeatTone(step)] = colour(ink.HeatColour(step, style.Dark).Hex(), "1")
	}
	w.tones[ink.InkTone] = colour(style.Ink, "1")
	w.tones[ink.GreyTone] = colour(style.Grey, "0.7")
	w.tones[ink.FaintTone] = colour(style.Faint, "0.45")
	font := ""
	if style.Font != "" {
		font = fmt.Sprintf(` font-family="%s"`, html.EscapeString(style.Font))
	}
	w.printf(`<svg xmlns="http://www.w3.org/2000/svg" class="scene" width="%smm" height="%smm" viewBox="0 0 %s %s" font-size="%s"%s fill="none" stroke-linejoin="round">`+"\n",
		short(s.Width), short(s.Height), short(s.Width), short(s.Height), short(cmp.Or(s.Letters, sheet.TextHeight)), font)
	for _, t := range s.Tints {
		tone := ink.HeatTone(t.Step)
		w.path("heat", t.Loops, true, fmt.Sprintf(w.tones[tone], "fill")+w.stroke(tone, seam))
	}
	for _, shape := range s.Shapes {
		w.shape(shape, s)
	}
	for _, l := range s.Lines {
		p := l.Stroke.Pen()
		w.path(string(l.Stroke), [][]ink.Point{l.Points}, false, w.stroke(p.Tone, p.Width)+dashes(p.Dashes(ink.Length(l.Points))))
		w.path("arrow", l.Arrows.Heads(l.Points, 1), true, fmt.Sprintf(w.tones[p.Tone], "fill"))
	}
	for _, t := range s.Texts {
		w.text(t)
	}
	w.printf("</svg>\n")
	return w.String()
}

// letters that a corner takes, about.
const letters = 16

// seam is the width of line [mm] that keeps paper from showing between tints.
const seam = 0.06

type writer struct {
	bytes.Buffer
	tones map[ink.Tone]string
}

func (w *writer) printf(format string, a ...any) { fmt.Fprintf(w, format, a...) }

// colour returns the attribute of a tone, with a place for "fill" or "stroke".
func colour(value, opacity string) string {
	if value != "" {
		return ` %[1]s="` + strings.ReplaceAll(html.EscapeString(value), "%", "%%") + `"`
	}
	if opacity == "1" {
		return ` %[1]s="currentColor"`
	}
	return ` %[1]s="currentColor" %[1]s-opacity="` + opacity + `"`
}

func (w *writer) stroke(t ink.Tone, width float64) string {
	return fmt.Sprintf(w.tones[t], "stroke") + ` stroke-width="` + short(width) + `"`
}

func (w *writer) shape(s ink.Shape, scene sheet.Scene) {
	tinted := s.Hatch.Spacing == 0
	if s.Narrow < ink.SolidBelow {
		if !tinted {
			w.path(string(s.Class)+" solid", s.Loops, true, fmt.Sprintf(w.tones[ink.InkTone], "fill")+` fill-rule="evenodd"`)
		}
		return
	}
	if !tinted {
		var lines [][]ink.Point
		for _, l := range ink.Hatch(s.Loops, s.Hatch, ink.Point{}, ink.Point{}, ink.At(scene.Width, scene.Height)) {
			lines = append(lines, l[:])
		}
		w.path(string(s.Class)+" hatch", lines, false, w.stroke(ink.FaintTone, ink.ThinWidth))
	}
	w.path(string(s.Class)+" outline", s.Edges, false, w.stroke(ink.InkTone, ink.ThickWidth))
}

func (w *writer) path(class string, paths [][]ink.Point, shut bool, attributes string) {
	if len(paths) == 0 {
		return
	}
	w.printf(`<path class="%s"%s d="`, class, attributes)
	for _, p := range paths {
		for i, q := range p { // thousands of them: no format
			command := byte('L')
			if i == 0 {
				command = 'M'
			}
			b := appendShort(append(w.AvailableBuffer(), command), q.X)
			w.Write(appendShort(append(b, ' '), q.Y))
		}
		if shut {
			w.WriteByte('Z')
		}
	}
	w.printf("\"/>\n")
}

func (w *writer) text(t sheet.Text) {
	turn := ""
	if t.Rotate != 0 {
		turn = fmt.Sprintf(` transform="rotate(%s %s %s)"`, short(t.Rotate), short(t.X), short(t.Y))
	}
	tone := ink.InkTone
	if t.Class == "scale" {
		tone = ink.GreyTone
	}
	bold := ""
	if t.Class == "alarm" {
		bold = ` font-weight="bold"`
	}
	w.printf(`<text class="%s" x="%s" y="%s" text-anchor="%s"%s%s%s>%s</text>`+"\n", t.Class, short(t.X), short(t.Y), t.Anchor,
		turn, bold, fmt.Sprintf(w.tones[tone], "fill"), html.EscapeString(t.Text))
}

func dashes(pattern []float64) string {
	if pattern == nil {
		return ""
	}
	var parts []string
	for _, x := range pattern {
		parts = append(parts, short(x))
	}
	return ` stroke-dasharray="` + strings.Join(parts, " ") + `"`
}

// short writes a coordinate to a micrometre.
func short(x float64) string { return string(appendShort(nil, x)) }

func appendShort(b []byte, x float64) []byte {
	return strconv.AppendFloat(b, math.Round(x*1e3)/1e3+0, 'f', -1, 64)
}
