package verdict

import (
	"slices"

	"finwright/core/material"
	"finwright/core/shop/making"
	"finwright/core/tube"
	"finwright/core/units"
)

// Setting is one change to an order: a field of the document, and its new
// number or choice. Index counts the bare spans.
type Setting struct {
	Field  string
	Index  int
	Kind   units.Kind
	SI     float64
	Choice string
}

// With returns the order with settings made. It panics on a field that no rule proposes.
func With(o making.Order, settings ...Setting) making.Order {
	o.Tube.Spans = slices.Clone(o.Tube.Spans)
	for _, s := range settings {
		length := units.Length(s.SI)
		switch s.Field {
		case "tube_od":
			o.Tube.OD = length
		case "tube_wall":
			o.Tube.Wall = length
		case "tube_length":
			o.Tube.Length = length
		case "plain_end_a":
			o.Tube.PlainA = length
		case "plain_end_b":
			o.Tube.PlainB = length
		case "span_centre":
			o.Tube.Spans[s.Index].Centre = length
		case "span_width":
			o.Tube.Spans[s.Index].Width = length
		case "spares":
			o.Spares = int(s.SI)
		case "fin_height":
			o.Tube.Fin.Height = length
		case "fin_pitch":
			o.Tube.Fin.Count = units.PerLength(s.SI)
		case "strip_thickness":
			o.Tube.Fin.Strip = length
		case "fin_type":
			o.Tube.Fin.Type = tube.FinType(s.Choice)
		case "fin_metal":
			o.FinMetal, _ = material.FinMetal(s.Choice)
			o.Tube.Fin.Density = units.Density(o.FinMetal.Density.SI)
		case "tube_metal":
			o.TubeMetal, _ = material.TubeMetal(s.Choice)
			o.Tube.Density = units.Density(o.TubeMetal.Density.SI)
		default:
			panic("verdict: no setting " + s.Field)
		}
	}
	return o
}
