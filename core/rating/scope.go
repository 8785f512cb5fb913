package rating

import (
	"math"

	"finwright/core/fluid"
	"finwright/core/material"
)

// Scope is what gas and stream can be in any bank with the inlets of an input: no bank has a temperature that is not between
// them (see settling.move), so what none of these states gives, no bank gives. A search asks it what a design cannot pass,
// before it is rated.
type Scope struct {
	low, high float64 // [C]
	gas       gas
	flux      float64 // [kg/(m2 s)] over the face at 1 m/s
	gasAt     [gasStates]fluid.Properties
	heat      float64 // [J/(kg K)] most of the gas
	dense     float64 // [kg/m3] most of the gas
	filmSlack float64 // [-] by which a film between two states of the gas may pass the nearer of both; and so on
	dropSlack float64
	heatSlack float64

	condenses bool
	streamAt  [streamStates]fluid.Properties
	thin      float64 // [Pa s] least viscosity of the stream, and most
	thick     float64
	warmth    float64 // [J/(kg K)] most of the stream
	films     [filmPlaces]struct {
		insideAsked
		film float64
	}
}

// States of the gas, those of them that are tried at the fin's root too, and states of the stream, evenly spaced between the inlets.
const (
	gasStates    = 9
	rootEvery    = 4
	streamStates = 9
)

// Powers of the absolute temperature of the gas by which film, drop and heat capacity change at most, and of that of the root by which
// film and drop do: films go with k^(2/3) and less of mu and cp, drops with 1/rho and little of mu.
//
// Source: engineering judgement; TestNoGasPassesItsSlack looks at every correlation in every gas.
const (
	steepestFilm = 1.0
	steepestDrop = 1.8
	steepestRoot = 0.3
	steepestHeat = 0.5
)

// rounding is what the last digits of an answer may add [-].
const rounding = 1e-9

// Scope returns it, properties in SI and temperatures in [C]; ok is false where a property is not known all the way, so that nothing can be said before a bank is rated: also
// for moist air that is cooled, which loses water on the way.
//
// Valid: a checked Input.
// Source: the properties of gas and stream.
func (in *Input) Scope() (b Scope, ok bool) {
	gas, err := in.gas()
	if err != nil || gas.kind == MoistAir && in.Process.In < in.Air.In {
		return b, false
	}
	b = Scope{low: float64(min(in.Process.In, in.Air.In)), high: float64(max(in.Process.In, in.Air.In)), gas: gas, flux: gas.basis(in.Air.Basis), thin: math.Inf(1)}
	for i := range b.gasAt {
		p, err := gas.at(b.state(i, gasStates))
		if err != nil {
			return b, false
		}
		b.gasAt[i] = p
		b.heat, b.dense = max(b.heat, p.HeatCapacity), max(b.dense, p.Density)
	}
	// Between two states no temperature is further from the nearer than half the step; ratios are largest where it is cold.
	cold := b.low + zeroCelsius
	half := math.Log1p((b.high-b.low)/cold/(gasStates-1)) / 2
	root := math.Log1p((b.high-b.low)*rootEvery/cold/(gasStates-1)) / 2
	b.filmSlack, b.dropSlack = math.Exp(steepestFilm*half+steepestRoot*root), math.Exp(steepestDrop*half+steepestRoot*root)
	b.heatSlack = math.Exp(steepestHeat * half)
	if b.condenses = in.Process.Fluid == Steam; b.condenses {
		return b, true
	}
	for i := range b.streamAt {
		p, err := in.liquid(b.state(i, streamStates))
		if err != nil {
			return b, false
		}
		b.streamAt[i] = p
		b.warmth, b.thin, b.thick = max(b.warmth, p.HeatCapacity), min(b.thin, p.Viscosity), max(b.thick, p.Viscosity)
	}
	return b, true
}

// state returns the temperature [C] of the i-th of n states.
func (b *Scope) state(i, n int) float64 { return b.low + (b.high-b.low)*float64(i)/float64(n-1) }

// conducts returns the most that a metal conducts [W/(m K)] between the inlets, or what it conducts where the user says.
//
// Its curve is made of straight lines, so the most lies at an end or at one of its points.
func (b *Scope) conducts(in *Input, m *material.Metal) float64 {
	most := max(in.conductivity(m, b.low), in.conductivity(m, b.high))
	for _, p := range m.Conductivity.Points {
		if at := float64(p.At); at > b.low && at < b.high {
			most = max(most, in.conductivity(m, at))
		}
	}
	return most
}
