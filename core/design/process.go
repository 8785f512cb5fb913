package design

import (
	"errors"

	"finwright/core/field"
	"finwright/core/fluid"
	"finwright/core/rating"
)

// process finds what hangs on several entries of the stream inside: a pressure over that of the air about, steam by its
// pressure, and a flow by its volume.
func (r *reader) process() {
	p := &r.in.Process
	if p.Gauge.Stated {
		about, err := fluid.PressureAtAltitude(float64(r.in.Air.Altitude))
		if err != nil {
			panic(err) // the field's range lies within
		}
		at := "inside_pressure"
		if p.Fluid == rating.OwnFluid {
			at = "own_fluid_pressure"
		}
		r.derive(at, p.Gauge.SI+about, nil)
	}
	if r.in.SteamByPressure {
		r.steamOf(p.Pressure)
	}
	if p.Volume.Stated {
		density, err := r.in.InletDensity()
		r.derive("inside_flow", p.Volume.SI*density, err)
	}
}

// steamOf finds the temperature of saturated steam from its pressure.
func (r *reader) steamOf(pressure rating.Optional) {
	if !pressure.Stated {
		r.errs.add("inside_pressure", "error.steam_pressure")
		return
	}
	if err := r.in.SaturateAt(pressure.SI); err != nil {
		r.beyond("inside_pressure", err)
	}
}

// derive states the number [SI] of a field that follows from others, held to the field's range.
func (r *reader) derive(id string, si float64, err error) {
	f := field.Must(id)
	switch {
	case err != nil:
		r.beyond(id, err)
	case !f.Within(si):
		r.outside(f, id, si)
	default:
		f.Set(&r.in, si)
	}
}

// beyond says at a field that a property has been asked for out of its range.
func (r *reader) beyond(id string, err error) {
	var out *fluid.OutOfRange
	errors.As(err, &out) // no other error is documented
	r.errs.add(id, "error.process_beyond", "why", out.Message())
}
