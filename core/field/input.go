package field

import (
	"finwright/core/exchanger"
	"finwright/core/material"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/units"
)

// Input is a design in SI, as its fields state it.
type Input struct {
	rating.Input
	OwnTube, OwnFin Alloy // what the user says of a metal of his own
	Job             Job
	Limits          Limits
	Wish            Wish
	SteamByPressure bool             // the pressure says how hot the steam is
	Shop            *shop.Capability // that is to make it; nil: what a shop can do is not judged
}

// MakeTubeOf and MakeFinOf set a metal, and the density that follows from it.
func (in *Input) MakeTubeOf(m material.Metal) {
	in.TubeMetal, in.Tube.Density = m, units.Density(m.Density.SI)
}

func (in *Input) MakeFinOf(m material.Metal) {
	in.FinMetal, in.Tube.Fin.Density = m, units.Density(m.Density.SI)
}

// Alloy is a metal as the user describes it, if one is chosen.
type Alloy struct {
	Chosen       bool
	Name         string
	Conductivity float64 // [W/(m K)]
	Density      float64 // [kg/m3]
	Expansion    float64 // [1/K]
}

// Job is what was asked for.
type Job struct {
	Quantity  int
	Retube    bool         // tubes for a bank that stands: pitch, count, length and the fins' ceiling are the customer's
	OldUA     float64      // [W/K] of the bank that stands; 0: not stated
	OldPitch  units.Length // of the tubes that stand; 0: not stated
	OldTubes  int          // that stand; 0: not stated
	OldLength units.Length // of a tube that stands; 0: not stated
	FinMost   units.Length // fin OD that the bank that stands takes; 0: not stated
	Bundles   int          // that the bank is made of, side by side
	Frame     float64      // of a bundle, beside its tubes, as a share of their mass [-]
	FreeIssue bool         // the customer supplies the tubes
	Spares    int          // further tubes supplied by the customer
}

// Limits are the temperatures [C] that the tube must bear beyond the normal one.
type Limits struct {
	StartUp, Upset rating.Optional // of the process
	GasStartUp     rating.Optional // of the gas outside
	GasUpset       rating.Optional
	FlowLost       FlowLost        // whether the stream inside can fail
	Summer, Winter rating.Optional // of the gas outside
	Turndown       rating.Optional // [-] of the flow inside
	House          rating.Optional // the house's own limit, where it is not the shipped one
	TubeMetal      rating.Optional // the most that the tube's metal may reach
}

// FlowLost says whether the stream inside can fail while hot gas flows outside.
type FlowLost string

// Answers.
const (
	FlowUntold   FlowLost = "untold"
	FlowPossible FlowLost = "possible"
	FlowExcluded FlowLost = "excluded"
)

// Cases returns the inlet temperatures of each case of which one is stated, in which the other is the normal one. A stream that
// can fail makes a case where gas is the hotter: the metal is then as hot as the hottest gas.
func (in *Input) Cases() map[exchanger.Case]rating.Ends {
	normal := in.Ends()
	cases := map[exchanger.Case]rating.Ends{exchanger.Normal: normal}
	for c, stated := range in.stated() {
		ends := normal
		if stated[0].Stated {
			ends.Process = stated[0].SI
		}
		if stated[1].Stated {
			ends.Gas = stated[1].SI
		}
		if stated[0].Stated || stated[1].Stated {
			cases[c] = ends
		}
	}
	if in.Limits.FlowLost != FlowPossible {
		return cases
	}
	if hottest, hot := HottestGas(cases); hot {
		cases[exchanger.FlowLost] = rating.Ends{Process: hottest, Gas: hottest}
	}
	return cases
}

// stated are the temperatures of process and gas by case.
func (in *Input) stated() map[exchanger.Case][2]rating.Optional {
	l := &in.Limits
	return map[exchanger.Case][2]rating.Optional{exchanger.StartUp: {l.StartUp, l.GasStartUp}, exchanger.Upset: {l.Upset, l.GasUpset}}
}

// Governs reports whether the inlet that is the hotter in normal running is stated for a case.
func (in *Input) Governs(c exchanger.Case) bool {
	stated := in.stated()[c]
	if in.Ends().Hot() {
		return stated[1].Stated
	}
	return stated[0].Stated
}

// HottestGas returns the hottest gas [C] of the cases, and whether gas is the hotter in any.
func HottestGas(cases map[exchanger.Case]rating.Ends) (celsius float64, hot bool) {
	celsius = cases[exchanger.Normal].Gas
	for _, ends := range cases {
		celsius, hot = max(celsius, ends.Gas), hot || ends.Hot()
	}
	return celsius, hot
}

// Wish is what the order states of its making, over what the shop does otherwise.
type Wish struct {
	Line      string          // by its name; empty: the one that suits best
	LeastWall units.Length    // below groove or knurl, for pressure and corrosion; 0: none stated
	Tolerance rating.Optional // [m] of a zone's edge
	Joints    rating.Optional // of the strip, on one tube
	Margin    rating.Optional // on cost [-]
}
