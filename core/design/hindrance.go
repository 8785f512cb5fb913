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
		if h.Range.Variable == "vapour_pressure" {
			return tooMoist(in, h.Range.High/h.Range.Value)
		}
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

// tooMoist says that air carries more water than is known of, by a share [-] of which it may carry as much as is.
func tooMoist(in *field.Input, share float64) FieldError {
	percent := func(x float64) message.Amount { return message.Amount{Kind: units.Percent, SI: x} }
	return FieldError{"air_humidity", message.New("error.air_moist", "air", message.Of(units.Temp, in.Air.In),
		"humidity", percent(in.Air.Humidity), "most", message.Most(percent(in.Air.Humidity*share)))}
}
