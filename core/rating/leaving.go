package rating

import (
	"finwright/core/fluid"
	"finwright/core/inside"
	"finwright/core/message"
)

// gasInside reports whether the stream in the tubes is a gas that stays one.
func (in *Input) gasInside() bool { return in.Process.Fluid == OwnFluid && in.Process.Gas }

// InsideVelocity returns the velocities at which such a stream usually runs.
func (in *Input) InsideVelocity() inside.Usual {
	if in.gasInside() {
		return inside.UsualGas
	}
	return inside.UsualLiquid
}

// NoInsideLoss says why a stream that is rated has no loss in the tubes.
func (in *Input) NoInsideLoss() message.Message {
	if in.Process.Fluid == Steam {
		return message.New("absent.condensing")
	}
	return message.New("absent.no_pressure_left")
}

// Leaving is the state of pressure in which a liquid or a gas leaves the tubes.
type Leaving struct {
	Pressure float64         // [Pa] absolute
	Vapour   float64         // [Pa] at which it boils there
	NoVapour message.Message // why that is not known
}

// Leaving returns the pressure [Pa] at the outlet, or why it is not known.
//
// Valid: t of Rate.
// Source: inlet pressure less inside.PressureDrop; steam tables for water.
func (t *Thermal) Leaving(in *Input) (l Leaving, why message.Message) {
	switch {
	case t.InsideLoss == nil:
		return l, in.NoInsideLoss()
	case !in.Process.Pressure.Stated:
		return l, message.New("absent.no_pressure")
	case t.InsideLoss.Total >= in.Process.Pressure.SI:
		return l, message.New("absent.no_pressure_left")
	}
	l.Pressure = in.Process.Pressure.SI - t.InsideLoss.Total
	l.Vapour, l.NoVapour = in.vapourPressure(t.Duty.ProcessOut)
	return l, message.Message{}
}

// vapourPressure returns the pressure [Pa] at which the stream boils at a temperature [C], or why it is not known.
func (in *Input) vapourPressure(celsius float64) (p float64, why message.Message) {
	switch {
	case in.gasInside():
		return 0, message.New("absent.gas_inside")
	case in.Process.Fluid != OwnFluid:
		p, err := fluid.SaturationPressure(celsius + zeroCelsius)
		if err != nil {
			return 0, message.New("absent.no_vapour")
		}
		return p, message.Message{}
	case in.Process.Vapour.Stated:
		return in.Process.Vapour.SI, message.Message{}
	}
	return 0, message.New("absent.no_vapour")
}
