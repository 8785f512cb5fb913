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
	FreeIssue bool // the customer supplies the tubes
	Spares    int  // further tubes supplied by the customer
}

// Limits are the temperatures [C] that the tube must bear beyond the normal one.
type Limits struct {
	StartUp, Upset rating.Optional // of the process
	House          rating.Optional // the house's own limit, where it is not the shipped one
	TubeMetal      rating.Optional // the most that the tube's metal may reach
}

// Cases returns the process temperature [C] of each stated case.
func (in *Input) Cases() map[exchanger.Case]float64 {
	cases := map[exchanger.Case]float64{exchanger.Normal: float64(in.Process.In)}
	if l := &in.Limits; l.StartUp.Stated {
		cases[exchanger.StartUp] = l.StartUp.SI
	}
	if l := &in.Limits; l.Upset.Stated {
		cases[exchanger.Upset] = l.Upset.SI
	}
	return cases
}

// Wish is what the order states of its making, over what the shop does otherwise.
type Wish struct {
	Line      string          // by its name; empty: the one that suits best
	LeastWall units.Length    // below groove or knurl, for pressure and corrosion; 0: none stated
	Tolerance rating.Optional // [m] of a zone's edge
	Joints    rating.Optional // of the strip, on one tube
	Margin    rating.Optional // on cost [-]
}
