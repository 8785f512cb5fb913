package design

import (
	"errors"

	"finwright/core/field"
	"finwright/core/fluid"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
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
	if p.Fluid != rating.Steam && len(r.errs) == 0 {
		r.close()
	}
}

// close finds which of flow, outlet and duty follows from the other two. All three are left as they stand: what they say
// of one another is a remark.
func (r *reader) close() {
	in, p := &r.in.Input, &r.in.Process
	inlet, gas, out := float64(p.In), float64(in.Air.In), p.Out.SI
	if p.Out.Stated && (out-inlet)*(out-gas) >= 0 {
		r.errs.add("inside_out", "error.outlet_wrong_way", "outlet", celsius(out), "inlet", celsius(inlet), "gas", celsius(gas))
		return
	}
	duty := in.Bank.DutyWanted
	switch {
	case p.Flow == 0 && p.Out.Stated && duty > 0:
		p.Third = rating.ThirdFlow
		flow, err := in.FlowFor(duty, out)
		r.derive("inside_flow", flow, err)
	case p.Flow == 0:
		r.errs.add("inside_flow", "error.flow_missing")
	case p.Out.Stated && duty == 0:
		p.Third = rating.ThirdDuty
		duty, err := in.DutyFor(out)
		r.derive("duty_wanted", duty, err)
	case !p.Out.Stated && duty > 0:
		// An outlet beyond the gas is no outlet; that the bank cannot do it is said of the duty.
		if out, err := in.OutFor(duty); err == nil && (out-inlet)*(out-gas) < 0 {
			p.Third, p.Out = rating.ThirdOut, rating.Optional{SI: out, Stated: true}
		}
	}
}

func celsius(t float64) message.Amount { return message.Amount{Kind: units.Temp, SI: t} }

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
