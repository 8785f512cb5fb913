package order

import (
	"math"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
)

// Crated is a crate's section with tubes in it, in millimetres.
type Crated struct {
	Width, Height float64
	OD, FinOD     float64
	Centres       []ink.Point // of the tubes, from the lower left corner of the crate, y up; none: they are not drawn
	Separators    []float64   // levels of their undersides
	WidthText     string
	HeightText    string
	Title         string
}

// Bundled is a hexagon of plain tubes.
type Bundled struct {
	OD         float64
	Across     int  // tubes across the corners, odd
	Outline    bool // the hexagon alone, without its tubes
	WidthText  string
	HeightText string
	Title      string
}

// packRoom is what titles and dimensions take of a packing view [mm].
const packRoom = 3*sheet.TextHeight + 2

// roundness is the chords of a tube's circle: there are hundreds, and small.
const roundness = 14

// tubesInFins is up to how many tubes of a crate are drawn within their fins: each is another circle.
const tubesInFins = 400

func ring(c ink.Point, r float64) []ink.Point {
	return ink.Closed(sheet.Arc(c, r, 0, 6.283185307179586*(1-1.0/roundness), roundness-1))
}

// ComposeCrate draws a crate's section to scale.
//
// Valid: sizes above nought.
func ComposeCrate(c Crated, widthPx, heightPx float64) sheet.Scene {
	s, x, y, scale := packed(c.Width, c.Height, c.Title, widthPx, heightPx)
	at := func(p ink.Point) ink.Point { return ink.At(x+p.X*scale, y+(c.Height-p.Y)*scale) }
	s.Line(ink.Thick, at(ink.At(0, c.Height)), at(ink.At(0, 0)), at(ink.At(c.Width, 0)), at(ink.At(c.Width, c.Height)))
	for _, level := range c.Separators {
		s.Line(ink.Thin, at(ink.At(0, level)), at(ink.At(c.Width, level)))
	}
	for _, p := range c.Centres {
		s.Line(ink.Thin, ring(at(p), c.FinOD/2*scale)...)
	}
	// A tube in its fins, where it is large enough to be told from them and there are not too many.
	if c.OD/2*scale > 0.4 && len(c.Centres) <= tubesInFins {
		for _, p := range c.Centres {
			s.Line(ink.Thin, ring(at(p), c.OD/2*scale)...)
		}
	}
	s.measures(x, y, c.Width*scale, c.Height*scale, c.WidthText, c.HeightText)
	return s.Scene
}

// ComposeBundle draws a mill bundle to scale.
//
// Valid: an odd count across, OD above nought.
func ComposeBundle(b Bundled, widthPx, heightPx float64) sheet.Scene {
	const rise = 0.8660254037844386 // sqrt(3)/2
	rings := b.Across / 2
	width, height := float64(b.Across)*b.OD, (1+2*rise*float64(rings))*b.OD
	s, x, y, scale := packed(width, height, b.Title, widthPx, heightPx)
	if b.Outline {
		s.Line(ink.Thick, ink.Closed(sheet.Arc(ink.At(x+width/2*scale, y+height/2*scale), width/2*scale, 0, 2*math.Pi*5/6, 5))...)
		s.measures(x, y, width*scale, height*scale, b.WidthText, b.HeightText)
		return s.Scene
	}
	for row := -rings; row <= rings; row++ {
		n := b.Across - max(row, -row)
		for i := range n {
			p := ink.At(width/2+(float64(i)-float64(n-1)/2)*b.OD, height/2+float64(row)*rise*b.OD)
			s.Line(ink.Thin, ring(ink.At(x+p.X*scale, y+p.Y*scale), b.OD/2*scale)...)
		}
	}
	s.measures(x, y, width*scale, height*scale, b.WidthText, b.HeightText)
	return s.Scene
}

// packed starts a sheet with a title and room for two dimensions, and places a section on it.
func packed(width, height float64, title string, widthPx, heightPx float64) (s *picture, x, y, scale float64) {
	w, h := max(widthPx, 120)/ink.PxPerMM, max(heightPx, 120)/ink.PxPerMM
	s = newPicture(w, h)
	s.Write("title", "title", 0, sheet.TextHeight, sheet.Start, title)
	y = sheet.TextHeight + 2
	scale = min((w-packRoom)/width, (h-y-packRoom+sheet.TextHeight)/height)
	return s, (w - packRoom - width*scale) / 2, y, scale
}

// measures puts the width under a section and the height at its right.
func (s *picture) measures(x, y, width, height float64, widthText, heightText string) {
	s.Across(sheet.Measured{Name: "width", Text: widthText}, x, x+width, y+height+sheet.TextHeight+1.5, y+height, y+height)
	s.Upright(sheet.Measured{Name: "height", Text: heightText}, y+height, y, x+width+sheet.TextHeight+1.5, x+width, x+width)
}
