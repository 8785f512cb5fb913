package rating

import (
	"math"

	"finwright/core/exchanger"
	"finwright/core/fluid"
	"finwright/core/inside"
)

// leastSubcooling [K] keeps a condensing film finite where the wall is as hot as the vapour.
const leastSubcooling = 0.01

// inside rates the stream in the tubes and returns it as the exchanger needs it.
func (t *Thermal) inside(in *Input, at means) (exchanger.Stream, *Hindrance) {
	bore := float64(in.Tube.InsideOD())
	tube := inside.Tube{Bore: bore, Length: float64(in.Tube.Length)}
	section := in.PassSection()
	if in.Process.Fluid == Steam {
		return t.condensing(in, at, bore, section)
	}
	p, err := in.liquid(at.process)
	if err != nil {
		return exchanger.Stream{}, beyond(StreamBeyond, err)
	}
	flow := inside.Flow{Properties: p, MassVelocity: in.Process.Flow / section}
	if in.Process.Fluid == Water {
		wall, err := in.liquid(at.wall)
		if err != nil {
			return exchanger.Stream{}, beyond(StreamBeyond, err)
		}
		flow.WallViscosity = wall.Viscosity
	}
	t.Inside = inside.SinglePhase(tube, flow)
	loss := inside.PressureDrop(tube, flow, in.Bank.Passes, inside.DefaultTurnLoss)
	t.InsideLoss = &loss
	return exchanger.Stream{In: float64(in.Process.In), Capacity: in.Process.Flow * p.HeatCapacity}, nil
}

// PassSection returns the bore area of the tubes side by side in one pass [m2], on
// average where rows do not divide evenly.
func (in *Input) PassSection() float64 {
	bore := float64(in.Tube.InsideOD())
	return float64(in.Bank.Rows*in.Bank.TubesPerRow) / float64(in.Bank.Passes) * math.Pi / 4 * bore * bore
}

func (in *Input) liquid(celsius float64) (fluid.Properties, error) {
	if in.Process.Fluid == OwnFluid {
		return in.Process.Own, nil
	}
	return fluid.Water(celsius+zeroCelsius, in.Process.Pressure)
}

// condensing takes the flow that the last round condensed: a first guess before there was one.
func (t *Thermal) condensing(in *Input, at means, bore, section float64) (exchanger.Stream, *Hindrance) {
	if in.Process.In <= in.Air.In {
		return exchanger.Stream{}, &Hindrance{Cause: NoCondensing}
	}
	s, err := fluid.SaturatedWater(float64(in.Process.In) + zeroCelsius)
	if err != nil {
		return exchanger.Stream{}, beyond(StreamBeyond, err)
	}
	subcooling := max(float64(in.Process.In)-at.wall, leastSubcooling)
	flux := at.condensed / section
	if flux <= 0 {
		flux = firstFlux
	}
	t.Inside = inside.Condense(inside.Condensing{
		Saturated: s, CriticalPressure: fluid.WaterCriticalPressure, Bore: bore, MassVelocity: flux, Subcooling: subcooling,
	})[0]
	return exchanger.Stream{In: float64(in.Process.In), Capacity: math.Inf(1)}, nil
}

// firstFlux [kg/(m2 s)] starts the search for the condensing flow.
const firstFlux = 10

// Latent returns the heat of condensation [J/kg] at the inlet temperature, which condensing has found to be in range.
func (t *Thermal) Latent(in *Input) float64 {
	s, err := fluid.SaturatedWater(float64(in.Process.In) + zeroCelsius)
	if err != nil {
		panic(err)
	}
	return s.LatentHeat
}
