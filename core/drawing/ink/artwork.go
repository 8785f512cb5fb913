// Package ink is the artwork of a drawing: what is painted of it, how that is packed for its way to a canvas, and the
// triangles that it is painted with. It knows neither what is drawn nor what is written on it, and imports the standard
// library alone: a program that only paints carries nothing else of ours.
//
// Artwork is in sheet millimetres, x to the right and y down. Line weights, sections and break lines follow ISO 128.
package ink

// Point is a place on the sheet [mm].
type Point struct{ X, Y float64 }

// At returns the point x, y.
func At(x, y float64) Point { return Point{x, y} }

// Class says what a shape is made of.
type Class string

// Classes of shape.
const (
	TubeMetal Class = "tube"
	FinMetal  Class = "fin"
	WeldMetal Class = "weld"
)

// Shape is metal that the section plane cuts.
type Shape struct {
	Class  Class
	Loops  [][]Point // closed; the last point is joined to the first; inside is even-odd
	Edges  [][]Point // the part of the outline that is a real edge, not a cut for want of paper
	Narrow float64   // narrowest thickness [mm]: a section too narrow to hatch is filled
	Hatch  Hatching
}

// Hatching is the angle [degrees, counter-clockwise from x] and the spacing [mm
// on screen or paper] of a metal's section lines. Spacing 0: none, since tints
// show the metal's temperature.
type Hatching struct{ Angle, Spacing float64 }

// Tint is metal of one step of temperature, in convex pieces.
type Tint struct {
	Step   int       // of HeatSteps, from the coldest
	Narrow float64   // narrowest thickness of its shape [mm]
	Loops  [][]Point // closed
}

// Stroke says how a line is drawn.
type Stroke string

// Strokes.
const (
	Thick   Stroke = "thick"
	Thin    Stroke = "thin"
	Hidden  Stroke = "hidden"
	Centre  Stroke = "centre"
	Measure Stroke = "dim"
	Break   Stroke = "break"
	Ghost   Stroke = "ghost" // the outline of something else at the same place
)

// Arrows says at which ends of a line arrowheads are.
type Arrows string

// Arrowheads.
const (
	NoArrows Arrows = "none"
	AtBoth   Arrows = "both"
	AtStart  Arrows = "start"
	AtEnd    Arrows = "end"
)

// Polyline is an open path.
type Polyline struct {
	Stroke Stroke
	Points []Point
	Arrows Arrows
}

// Artwork is what is painted, in this order.
type Artwork struct {
	Tints  []Tint
	Shapes []Shape
	Lines  []Polyline
}

// Sizes on paper and screen [mm], the same at any zoom.
const (
	ArrowLength = 2.4
	arrowWidth  = ArrowLength / 3
	PxPerMM     = 96 / 25.4 // CSS pixels
)
