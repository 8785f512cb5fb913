package rating

import (
	"math"

	"finwright/core/exchanger"
	"finwright/core/fluid"
	"finwright/core/inside"
	"finwright/core/units"
)

// stream is what flows in the tubes, with what no round of settling changes and the flow of the last one.
type stream struct {
	tube      inside.Tube
	section   float64         // [m2] of the bores of a pass
	saturated fluid.Saturated // where it condenses
	flow      inside.Flow
	vapour    inside.Condensing
	shape     inside.Shape
	wetted    float64 // [m2] inside area of all tubes in the air
}

// stream returns what flows in the tubes, or why its inlet has no properties.
func (in *Input) stream() (s stream, _ *Hindrance) {
	s = stream{tube: inside.Tube{Bore: float64(in.Tube.InsideOD()), Length: float64(in.Tube.Length)}, section: in.PassSection()}
	if in.Process.Fluid != Steam {
		if _, err := in.liquid(float64(in.Process.In)); err != nil {
			return s, beyond(StreamBeyond, err)
		}
		return s, nil
	}
	if in.Process.In <= in.Air.In {
		return s, &Hindrance{Cause: NoCondensing}
	}
	var err error
	if s.saturated, err = fluid.SaturatedWater(float64(in.Process.In) + zeroCelsius); err != nil {
		return s, beyond(StreamBeyond, err)
	}
	s.vapour = inside.Condensing{Saturated: s.saturated, CriticalPressure: fluid.WaterCriticalPressure, Bore: s.tube.Bore}
	s.shape = inside.ShapeOf(s.vapour)
	s.wetted = math.Pi * s.tube.Bore * float64(in.Tube.FinnedLength()) * float64(in.Bank.Rows*in.Bank.TubesPerRow)
	return s, nil
}

// inside rates the stream in the tubes and returns it as the exchanger needs it, and what hinders.
func (s *stream) inside(t *Thermal, in *Input, at means) (exchanger.Stream, *Hindrance) {
	if in.Process.Fluid == Steam {
		s.condensing(t, at.heat)
		return exchanger.Stream{In: float64(in.Process.In), Capacity: math.Inf(1)}, nil
	}
	p, hindered := known(at.process, in.liquid)
	s.flow = inside.Flow{Properties: p, MassVelocity: in.Process.Flow / s.section}
	if in.thickens() {
		var cannot *Hindrance
		if s.flow.WallViscosity, cannot = known(at.wall, in.wallViscosity); cannot != nil {
			hindered = cannot
		}
	}
	t.Inside = inside.Convection(s.tube, s.flow)
	return exchanger.Stream{In: float64(in.Process.In), Capacity: in.Process.Flow * p.HeatCapacity}, hindered
}

// known asks for a property of the stream at a temperature [C], or at the nearest at which it is known, and says what hinders
// then: colder, hotter or boiling.
func known[P any](celsius float64, ask func(celsius float64) (P, error)) (p P, hindered *Hindrance) {
	for {
		var err error
		if p, err = ask(celsius); err == nil {
			return p, hindered
		}
		hindered = beyond(StreamBeyond, err)
		nearest := hindered.Range.Nearest()
		if hindered.Range.Variable == "pressure" {
			boils, err := fluid.SaturationTemperature(hindered.Range.Value)
			if err != nil {
				panic(err) // the inlet is liquid
			}
			nearest = boils - zeroCelsius
		}
		if nearest == celsius {
			panic(err) // the inlet has been asked
		}
		celsius = nearest
	}
}

// complete asks the film of the last round once more, with its range, and the loss of a liquid.
func (s *stream) complete(t *Thermal, in *Input) {
	if in.Process.Fluid == Steam {
		t.Inside, t.Vapour = inside.Condense(s.vapour), s.vapour
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
//
// Valid: a liquid or a gas within its properties.
// Source: the properties of the stream.
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
//
// Valid: any bank.
// Source: plane geometry.
func (in *Input) PassSection() float64 {
	bore := float64(in.Tube.InsideOD())
	return float64(in.Bank.Rows*in.Bank.TubesPerRow) / float64(in.Bank.Passes) * math.Pi / 4 * bore * bore
}

// condensing takes the flow that a heat [W] condenses: a first guess before there is one.
func (s *stream) condensing(t *Thermal, heat float64) {
	if heat == 0 {
		heat = firstFlux * s.section * s.saturated.LatentHeat
	}
	s.vapour.MassVelocity, s.vapour.Flux = heat/s.saturated.LatentHeat/s.section, heat/s.wetted
	t.Inside = inside.Condensation(s.vapour, &s.shape)
}

// firstFlux [kg/(m2 s)] starts the search for the condensing flow.
const firstFlux = 10
