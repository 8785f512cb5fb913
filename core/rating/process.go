package rating

import (
	"math"

	"finwright/core/exchanger"
	"finwright/core/fluid"
	"finwright/core/inside"
	"finwright/core/units"
)

// leastSubcooling [K] keeps a condensing film finite where the wall is as hot as the vapour.
const leastSubcooling = 0.01

// stream is what flows in the tubes, with what no round of settling changes and the flow of the last one.
type stream struct {
	tube      inside.Tube
	section   float64         // [m2] of the bores of a pass
	saturated fluid.Saturated // where it condenses
	beyond    error           // why it cannot
	flow      inside.Flow
	vapour    inside.Condensing
}

func (in *Input) stream() stream {
	s := stream{tube: inside.Tube{Bore: float64(in.Tube.InsideOD()), Length: float64(in.Tube.Length)}, section: in.PassSection()}
	if in.Process.Fluid == Steam {
		s.saturated, s.beyond = fluid.SaturatedWater(float64(in.Process.In) + zeroCelsius)
	}
	return s
}

// inside rates the stream in the tubes and returns it as the exchanger needs it.
func (s *stream) inside(t *Thermal, in *Input, at means) (exchanger.Stream, *Hindrance) {
	if in.Process.Fluid == Steam {
		return s.condensing(t, in, at)
	}
	p, err := in.liquid(at.process)
	if err != nil {
		return exchanger.Stream{}, beyond(StreamBeyond, err)
	}
	s.flow = inside.Flow{Properties: p, MassVelocity: in.Process.Flow / s.section}
	if in.thickens() {
		if s.flow.WallViscosity, err = in.wallViscosity(at.wall); err != nil {
			return exchanger.Stream{}, beyond(StreamBeyond, err)
		}
	}
	t.Inside = inside.Convection(s.tube, s.flow)
	return exchanger.Stream{In: float64(in.Process.In), Capacity: in.Process.Flow * p.HeatCapacity}, nil
}

// complete asks the film of the last round once more, with its range, and the loss of a liquid.
func (s *stream) complete(t *Thermal, in *Input) {
	if in.Process.Fluid == Steam {
		t.Inside = inside.Condense(s.vapour)[0]
		return
	}
	t.Inside = inside.SinglePhase(s.tube, s.flow)
	loss, left := inside.PressureDrop(s.tube, s.flow, in.Bank.Passes, inside.DefaultTurnLoss), true
	if in.gasInside() && in.Process.Pressure.Stated {
		loss, left = loss.Expanding(in.Process.Pressure.SI)
	}
	if left {
		t.InsideLoss = &loss
	}
}

// InletDensity returns the density [kg/m3] of the stream where it enters.
func (in *Input) InletDensity() (float64, error) {
	p, err := in.liquid(float64(in.Process.In))
	return p.Density, err
}

// SaturateAt takes the inlet temperature of steam from its pressure [Pa].
func (in *Input) SaturateAt(pressure float64) error {
	t, err := fluid.SaturationTemperature(pressure)
	in.Process.In = units.Temperature(t - zeroCelsius)
	return err
}

// PassSection returns the bore area of the tubes side by side in one pass [m2], on
// average where rows do not divide evenly.
func (in *Input) PassSection() float64 {
	bore := float64(in.Tube.InsideOD())
	return float64(in.Bank.Rows*in.Bank.TubesPerRow) / float64(in.Bank.Passes) * math.Pi / 4 * bore * bore
}

// condensing takes the flow that the last round condensed: a first guess before there was one.
func (s *stream) condensing(t *Thermal, in *Input, at means) (exchanger.Stream, *Hindrance) {
	if in.Process.In <= in.Air.In {
		return exchanger.Stream{}, &Hindrance{Cause: NoCondensing}
	}
	if s.beyond != nil {
		return exchanger.Stream{}, beyond(StreamBeyond, s.beyond)
	}
	s.vapour = inside.Condensing{
		Saturated: s.saturated, CriticalPressure: fluid.WaterCriticalPressure, Bore: s.tube.Bore,
		MassVelocity: at.condensed / s.section, Subcooling: max(float64(in.Process.In)-at.wall, leastSubcooling),
	}
	if s.vapour.MassVelocity <= 0 {
		s.vapour.MassVelocity = firstFlux
	}
	t.Inside = inside.Condensation(s.vapour)
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
