// Package sheet is what drawings are laid out on: lines, dimensions, writing, and the grips by which a page pulls
// them. What of it is painted is package ink; it knows no canvas.
//
// A Scene is in sheet millimetres, x to the right and y down. Dimensions follow ISO 129-1.
package sheet

import "finwright/core/drawing/ink"

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
	Width  float64 `json:"width"`  // of the room that it has along its line
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

// Scales are the scales of the sections and of the detail, and the fin on which
// the pitch's grip lies, counted from the left; below 0: any. A page that pulls a grip sends
// back those at which it took hold, so that the drawing stays under the pointer.
type Scales struct {
	Main   float64 `json:"main"`
	Detail float64 `json:"detail"`
	Fin    int     `json:"fin"`
}

// Scene is a sheet. Its artwork travels packed as Ink, see ink.Pack, or while something is pulled as Traces.
type Scene struct {
	ink.Artwork `json:"-"`

	Width   float64 `json:"width"`
	Height  float64 `json:"height"`
	Letters float64 `json:"letters"` // height of the texts
	Views   []View  `json:"views"`
	Ink     []byte  `json:"ink,omitempty"`
	Texts   []Text  `json:"texts"`
	Grips   []Grip  `json:"grips"`
	Scales  Scales  `json:"scales"`

	Traces []ink.Trace `json:"traces,omitempty"`
}

// TextHeight is the height of letters on paper and screen [mm], the same at any zoom.
const TextHeight = 3.3
