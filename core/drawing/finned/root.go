package finned

import (
	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/tube"
)

// Sheet of a root [mm], and how far its metal reaches [mm real].
const (
	rootWide  = 30.0
	rootHigh  = 22.0
	rootTurns = 2.0  // of the fin
	rootWall  = 0.28 // of the sheet's height, at most
)

// Root draws how a tube holds its fins: the roots of two of them in section, cut off above and below, without a word.
//
// Valid: as Compose.
func Root(t tube.Tube) sheet.Scene {
	c := composer{Options: Options{Tube: tubeHatching, Fin: finHatching}, section: newSection(t), Sheet: &sheet.Sheet{Scene: sheet.Scene{Width: rootWide, Height: rootHigh}}}
	scale := rootWide / (rootTurns * c.pitch)
	a, b := -c.pitch/2, (rootTurns-0.5)*c.pitch
	wall := min(c.wall*scale, rootWall*rootHigh)
	surface := rootHigh - wall
	top := min(c.height, surface/scale)
	place := func(p ink.Point) ink.Point { return ink.At((p.X-a)*scale, surface-p.Y*scale) }
	for _, p := range c.parts(a, b) {
		c.cut(p, place, scale, halfPlane{-1, 0, -a}, halfPlane{1, 0, b}, halfPlane{0, -1, wall / scale}, halfPlane{0, 1, top})
	}
	return c.Scene
}
