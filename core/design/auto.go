package design

import (
	"finwright/core/field"
	"finwright/core/message"
)

// Auto returns what stands in for each entry that may be left empty, beside those that hang on the plan of the making.
func Auto(in *field.Input) map[string]message.Amount {
	out := map[string]message.Amount{}
	for i := range field.Fields {
		f := &field.Fields[i]
		if f.StandIn == nil {
			continue
		}
		if si, ok := f.StandIn(in); ok {
			out[f.ID] = message.Amount{Kind: f.Kind, SI: si}
		}
	}
	return out
}
