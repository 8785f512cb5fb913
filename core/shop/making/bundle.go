package making

import (
	"math"

	"finwright/core/shop"
	"finwright/core/units"
)

// HexBundle is a bundle of plain tubes in a regular hexagon, as mills tie them.
type HexBundle struct {
	Across int // tubes across the corners, odd
	Tubes  int
	Width  units.Length // across the corners
	Height units.Length // across the flats
}

// Hexagon returns the hexagonal bundle of k rings about one tube, its sizes in [m].
//
//	tubes = 1 + 3 k (k + 1), width = (2 k + 1) d, height = (1 + sqrt(3) k) d
//
// Valid: k >= 0, equal tubes that touch.
// Source: plane geometry.
func Hexagon(od units.Length, k int) HexBundle {
	return HexBundle{
		Across: 2*k + 1, Tubes: 1 + 3*k*(k+1),
		Width: units.Length(2*k+1) * od, Height: od * units.Length(1+math.Sqrt(3)*float64(k)),
	}
}

// Fits reports whether the bundle passes an opening.
func (b HexBundle) Fits(in shop.Opening) bool {
	return b.Width <= in.Width*(1+shop.Slack) && b.Height <= in.Height*(1+shop.Slack)
}

// LargestHexagon returns the largest hexagonal bundle of at most so many tubes that passes an opening, its sizes in [m]; ok
// is false if not even one tube does.
//
// Valid: od > 0, tubes > 0.
// Source: Hexagon, ring by ring.
func LargestHexagon(od units.Length, in shop.Opening, tubes int) (HexBundle, bool) {
	width, height := float64(in.Width/od)*(1+shop.Slack), float64(in.Height/od)*(1+shop.Slack)
	if min(width, height) < 1 {
		return HexBundle{}, false
	}
	most := (math.Sqrt(float64(12*tubes-3)) - 3) / 6 // rings, of 1 + 3 k (k + 1) tubes
	return Hexagon(od, int(min((width-1)/2, (height-1)/math.Sqrt(3), most+shop.Slack))), true
}
