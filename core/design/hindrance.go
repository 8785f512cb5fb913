package design

import (
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// hindered says why a bank cannot be rated, at the field that hinders.
func hindered(in *field.Input, h *rating.Hindrance) FieldError {
	switch h.Cause {
	case rating.GasBeyond:
		return FieldError{"air_in", message.New("error.air_beyond", "why", h.Range.Message())}
	case rating.StreamBeyond:
		return FieldError{"inside_in", message.New("error.process_beyond", "why", h.Range.Message())}
	case rating.NoCondensing:
		temperature := func(t units.Temperature) message.Amount {
			return message.Amount{Kind: units.Temp, SI: float64(t)}
		}
		return FieldError{"inside_in", message.New("error.no_condensing", "steam", temperature(in.Process.In), "air", temperature(in.Air.In))}
	}
	return FieldError{"inside_in", message.New("error.not_settled")}
}
