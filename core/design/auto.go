package design

import (
	"finwright/core/field"
	"finwright/core/message"
)

// Auto returns what stands in for each entry that may be left empty, beside those that hang on the plan of the making.
func Auto(in *field.Input) map[string]message.Quantity {
	out := map[string]message.Quantity{}
	for i := range field.Fields {
		f := &field.Fields[i]
		if f.StandIn == nil {
			continue
		}
		if si, ok := f.StandIn(in); ok {
			out[f.ID] = message.Quantity{Kind: f.Kind, SI: si}
		}
	}
	return out
}
