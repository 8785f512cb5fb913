// Package dxf writes drawings in true size as files that other programs of the trade open: the exchange format of release 12 (AC1009),
// in letters, in millimetres, x to the right and y up.
//
// Source: the reference of that release, from memory; a test holds the files to a reader that is not ours.
package dxf

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"finwright/core/drawing/ink"
)

// Layer is what a thing belongs to. A reader can hide it.
type Layer string

// Layers.
const (
	Tube   Layer = "TUBE"
	Fin    Layer = "FIN"
	Weld   Layer = "WELD"
	Hidden Layer = "HIDDEN"
	Centre Layer = "CENTRE"
	Dims   Layer = "DIMENSIONS"
	Notes  Layer = "NOTES"
	Crate  Layer = "CRATE"
)

// layers are all of them: colour of the usual palette, and line type.
var layers = []struct {
	name   Layer
	colour int
	line   string
}{{Tube, 7, solid}, {Fin, 5, solid}, {Weld, 1, solid}, {Hidden, 8, hidden}, {Centre, 3, centre}, {Dims, 2, solid}, {Notes, 7, solid}, {Crate, 6, solid}}

const (
	solid  = "CONTINUOUS"
	hidden = "HIDDEN"
	centre = "CENTER"
)

// Drawing is a drawing in the making, in millimetres.
type Drawing struct {
	entities strings.Builder
	blocks   strings.Builder
	dims     int
	lo, hi   ink.Point
	begun    bool
}

// put writes pairs of a code and a value.
func put(out *strings.Builder, pairs ...any) {
	for i := 0; i+1 < len(pairs); i += 2 {
		fmt.Fprintf(out, "%3d\r\n", pairs[i])
		switch v := pairs[i+1].(type) {
		case float64:
			out.WriteString(strconv.FormatFloat(math.Round(v*1e6)/1e6+0, 'f', -1, 64))
		case string:
			out.WriteString(v)
		case Layer:
			out.WriteString(string(v))
		case int:
			out.WriteString(strconv.Itoa(v))
		}
		out.WriteString("\r\n")
	}
}

// point writes a place by its first code.
func point(out *strings.Builder, code int, p ink.Point) {
	put(out, code, p.X, code+10, p.Y, code+20, 0.0)
}

func (d *Drawing) reach(points ...ink.Point) {
	for _, p := range points {
		if !d.begun {
			d.lo, d.hi, d.begun = p, p, true
		}
		d.lo, d.hi = ink.At(min(d.lo.X, p.X), min(d.lo.Y, p.Y)), ink.At(max(d.hi.X, p.X), max(d.hi.Y, p.Y))
	}
}

// Line draws a straight line.
func (d *Drawing) Line(l Layer, a, b ink.Point) {
	d.reach(a, b)
	line(&d.entities, l, a, b)
}

func line(out *strings.Builder, l Layer, a, b ink.Point) {
	put(out, 0, "LINE", 8, l)
	point(out, 10, a)
	point(out, 11, b)
}

// Circle draws a circle of a diameter.
func (d *Drawing) Circle(l Layer, c ink.Point, diameter float64) {
	r := diameter / 2
	d.reach(ink.At(c.X-r, c.Y-r), ink.At(c.X+r, c.Y+r))
	put(&d.entities, 0, "CIRCLE", 8, l)
	point(&d.entities, 10, c)
	put(&d.entities, 40, r)
}

// Outline draws a closed path.
func (d *Drawing) Outline(l Layer, path []ink.Point) {
	d.reach(path...)
	put(&d.entities, 0, "POLYLINE", 8, l, 66, 1)
	point(&d.entities, 10, ink.Point{})
	put(&d.entities, 70, 1)
	for _, p := range path {
		put(&d.entities, 0, "VERTEX", 8, l)
		point(&d.entities, 10, p)
	}
	put(&d.entities, 0, "SEQEND", 8, l)
}

// Text writes a line of letters of a height, its left end on its place.
func (d *Drawing) Text(p ink.Point, height float64, text string) {
	d.reach(p, ink.At(p.X+float64(len(text))*height*0.6, p.Y+height))
	put(&d.entities, 0, "TEXT", 8, Notes)
	point(&d.entities, 10, p)
	put(&d.entities, 40, height, 1, plain(text), 7, "STANDARD")
}

// alike are letters that not every reader has, and what is written for them.
var alike = map[rune]string{
	'×': "x", '²': "2", '³': "3", '·': ".", '–': "-", '—': "-", '−': "-", '’': "'", '‘': "'", '“': "\"", '”': "\"", '…': "...", 'µ': "u", '½': "1/2", '¼': "1/4", '¾': "3/4", 'ß': "ss",
}

// plain writes a text in letters that every reader of the release has: the few signs of a drawing by its own codes, others by what is
// alike or by number.
func plain(text string) string {
	var out strings.Builder
	for _, r := range text {
		switch {
		case alike[r] != "":
			out.WriteString(alike[r])
		case r == 'Ø' || r == '⌀':
			out.WriteString("%%c")
		case r == '°':
			out.WriteString("%%d")
		case r == '±':
			out.WriteString("%%p")
		case r == '\u202f' || r == '\u00a0' || r == '\n' || r == '\r' || r == '\t':
			out.WriteByte(' ')
		case r < ' ':
		case r < 127:
			out.WriteRune(r)
		default:
			fmt.Fprintf(&out, "\\U+%04X", r)
		}
	}
	return out.String()
}

// String is the whole file.
func (d *Drawing) String() string {
	var out strings.Builder
	section := func(name string, write func()) {
		put(&out, 0, "SECTION", 2, name)
		write()
		put(&out, 0, "ENDSEC")
	}
	section("HEADER", func() {
		put(&out, 9, "$ACADVER", 1, "AC1009", 9, "$EXTMIN")
		point(&out, 10, d.lo)
		put(&out, 9, "$EXTMAX")
		point(&out, 10, d.hi)
		put(&out, 9, "$LUNITS", 70, 2, 9, "$LUPREC", 70, 3)
	})
	section("TABLES", func() { tables(&out) })
	section("BLOCKS", func() { out.WriteString(d.blocks.String()) })
	section("ENTITIES", func() { out.WriteString(d.entities.String()) })
	put(&out, 0, "EOF")
	return out.String()
}

func tables(out *strings.Builder) {
	table := func(name string, count int, write func()) {
		put(out, 0, "TABLE", 2, name, 70, count)
		write()
		put(out, 0, "ENDTAB")
	}
	table("LTYPE", 3, func() {
		put(out, 0, "LTYPE", 2, solid, 70, 0, 3, "Solid", 72, 65, 73, 0, 40, 0.0)
		put(out, 0, "LTYPE", 2, hidden, 70, 0, 3, "Hidden", 72, 65, 73, 2, 40, 4.5, 49, 3.0, 49, -1.5)
		put(out, 0, "LTYPE", 2, centre, 70, 0, 3, "Centre", 72, 65, 73, 4, 40, 15.0, 49, 10.0, 49, -2.0, 49, 1.0, 49, -2.0)
	})
	table("LAYER", len(layers)+1, func() {
		put(out, 0, "LAYER", 2, "0", 70, 0, 62, 7, 6, solid)
		for _, l := range layers {
			put(out, 0, "LAYER", 2, l.name, 70, 0, 62, l.colour, 6, l.line)
		}
	})
	table("STYLE", 1, func() {
		put(out, 0, "STYLE", 2, "STANDARD", 70, 0, 40, 0.0, 41, 1.0, 50, 0.0, 71, 0, 42, 3.5, 3, "txt", 4, "")
	})
	table("APPID", 1, func() { put(out, 0, "APPID", 2, "ACAD", 70, 0) })
	table("DIMSTYLE", 1, func() {
		put(out, 0, "DIMSTYLE", 2, "STANDARD", 70, 0, 40, 1.0, 41, 2.5, 42, 0.8, 43, 3.75, 44, 1.2, 140, 3.5, 147, 0.8, 73, 0, 74, 0, 77, 1)
	})
}
