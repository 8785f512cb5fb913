package verdict

import (
	"slices"

	"finwright/core/field"
	"finwright/core/shop/making"
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

// With returns the order with settings made. It panics where there is no such field.
func With(o making.Order, settings ...Setting) making.Order {
	in := o.Input()
	in.Tube.Spans = slices.Clone(in.Tube.Spans)
	for _, s := range settings {
		switch s.Field {
		case field.SpanCentre.ID:
			in.Tube.Spans[s.Index].Centre = units.Length(s.SI)
		case field.SpanWidth.ID:
			in.Tube.Spans[s.Index].Width = units.Length(s.SI)
		default:
			set(&in, field.Must(s.Field), s)
		}
	}
	return *making.OrderOf(&in, o.Hottest)
}

func set(in *field.Input, f *field.Field, s Setting) {
	if f.Choice != nil {
		f.Choice(in, s.Choice)
	} else {
		f.Set(in, s.SI)
	}
}
