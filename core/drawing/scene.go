// Package drawing lays a finned tube out on a sheet: a section across the tube,
// one along it, and an enlarged detail of the fin roots, with dimensions and
// with the grips by which a page pulls them. It knows no canvas.
//
// A Scene is in sheet millimetres, x to the right and y down. Views follow
// ISO 128 (line weights, sections, break lines), dimensions ISO 129-1.
package drawing

// Point is a place on the sheet [mm].
type Point struct{ X, Y float64 }

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

// Line is an open polyline.
type Line struct {
	Stroke Stroke
	Points []Point
	Arrows Arrows
}

// Anchor says which part of a text lies at its place.
type Anchor string

// Anchors.
const (
	Start  Anchor = "start"
	Middle Anchor = "middle"
	End    Anchor = "end"
)

// Text is a line of writing; X, Y is on its baseline.
type Text struct {
	ID     string  `json:"id"`
	X      float64 `json:"x"`
	Y      float64 `json:"y"`
	Anchor Anchor  `json:"anchor"`
	Rotate float64 `json:"rotate"` // degrees, clockwise as on screen
	Class  string  `json:"class"`  // "title", "scale", "dim" or "alarm"
	Text   string  `json:"text"`
	Field  string  `json:"field,omitempty"` // the field that it states
}

// View is one projection on the sheet; X, Y is its upper left corner.
type View struct {
	ID        string  `json:"id"`
	Title     string  `json:"title"`
	Scale     float64 `json:"scale"`
	ScaleText string  `json:"scale_text"`
	X         float64 `json:"x"`
	Y         float64 `json:"y"`
	Width     float64 `json:"width"`
	Height    float64 `json:"height"`
}

// Grip is a place to pull: by s millimetres of sheet along Axis, the field
// becomes Value + s PerMM, in Unit. A key moves the field by Steps of its own steps.
type Grip struct {
	ID        string     `json:"id"`
	Field     string     `json:"field"`
	X         float64    `json:"x"`
	Y         float64    `json:"y"`
	Axis      [2]float64 `json:"axis"`
	Value     float64    `json:"value"`
	Unit      string     `json:"unit"`
	PerMM     float64    `json:"per_mm"`
	Min       float64    `json:"min"`
	Max       float64    `json:"max"`
	Steps     int        `json:"steps"`
	Label     string     `json:"label"`
	ValueText string     `json:"value_text"`
}

// Scales are the scales of the sections and of the detail. A page that pulls a
// grip sends back those at which it took hold, so that the drawing stays under
// the pointer.
type Scales struct {
	Main   float64 `json:"main"`
	Detail float64 `json:"detail"`
}

// Artwork is what is painted, in this order.
type Artwork struct {
	Tints  []Tint
	Shapes []Shape
	Lines  []Line
}

// Scene is a sheet. Its artwork travels packed as Ink, see Pack.
type Scene struct {
	Width   float64 `json:"width"`
	Height  float64 `json:"height"`
	Views   []View  `json:"views"`
	Artwork `json:"-"`
	Ink     []byte `json:"ink"`
	Texts   []Text `json:"texts"`
	Grips   []Grip `json:"grips"`
	Scales  Scales `json:"scales"`
}

// Sizes on paper and screen [mm], the same at any zoom.
const (
	TextHeight  = 3.3
	ArrowLength = 2.4
	ArrowWidth  = 0.8
	PxPerMM     = 96 / 25.4 // CSS pixels
)
