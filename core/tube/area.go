package tube

import (
	"math"

	"finwright/core/units"
)

// Areas holds the outside surface of one metre of finned tube.
type Areas struct {
	Bare    units.AreaPerLength // pi d, as if there were no fins
	Side    units.AreaPerLength // both faces of the fins
	Tip     units.AreaPerLength
	Between units.AreaPerLength // tube or foot between fins
}

// Fin returns the faces and the tip [m2/m].
//
// Valid: as Tube.Areas.
// Source: addition.
func (a Areas) Fin() units.AreaPerLength { return a.Side + a.Tip }

// Total returns all the outside surface [m2/m].
//
// Valid: as Tube.Areas.
// Source: addition.
func (a Areas) Total() units.AreaPerLength { return a.Fin() + a.Between }

// Ratio returns Total over Bare [-].
//
// Valid: as Tube.Areas.
// Source: definition.
func (a Areas) Ratio() float64 { return float64(a.Total() / a.Bare) }

// Areas returns the surface [m2/m] per metre of finned length.
//
//	side    = n (pi/2)(Df2 - Dr2)
//	tip     = n pi Df tt
//	between = pi Dr (1 - n t)
//
// Valid: n t < 1, Df > Dr.
// Source: plane geometry; the GPSA data book's table for 1 in tubes comes out
// with tt = t d/Df and Dr = d (values from memory, see the test).
func (t *Tube) Areas() Areas {
	n := t.Fin.Count.PerMetre()
	d, root, tip := float64(t.OD), float64(t.RootOD()), float64(t.FinOD())
	return Areas{
		Bare:    units.AreaPerLength(math.Pi * d),
		Side:    units.AreaPerLength(n * math.Pi / 2 * (tip*tip - root*root)),
		Tip:     units.AreaPerLength(n * math.Pi * tip * float64(t.TipThickness())),
		Between: units.AreaPerLength(math.Pi * root * (1 - n*float64(t.Fin.Strip))),
	}
}

// InsideOD returns the bore [m], the outside diameter less two mean walls.
//
// Valid: mean wall below half of OD.
// Source: plane geometry.
func (t *Tube) InsideOD() units.Length { return t.OD - 2*t.MeanWall() }

// InsideArea returns the bore's surface per metre [m2/m].
//
// Valid: as InsideOD.
// Source: plane geometry.
func (t *Tube) InsideArea() units.AreaPerLength {
	return units.AreaPerLength(math.Pi * float64(t.InsideOD()))
}

// minimumWallExcess is how much thicker than its minimum a minimum-wall tube
// is on average: the middle of a tolerance of 0/+20 %.
//
// Source: ASTM A450/A1016 allow 0/+18 to +22 %, from memory.
const minimumWallExcess = 0.10

// MeanWall returns the wall [m] that a tube has on average, for its mass and bore.
//
// Valid: as bought; a groove is not taken off.
// Source: the wall as stated, or minimumWallExcess over it.
func (t *Tube) MeanWall() units.Length {
	if t.Basis == MinimumWall {
		return t.Wall * (1 + minimumWallExcess)
	}
	return t.Wall
}
