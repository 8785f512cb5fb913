package field

import (
	"finwright/core/material"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/tube"
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

// MadeBy names the shop that is to make it, nil for none: how tight it winds counts in the rating.
func (in *Input) MadeBy(c *shop.Capability) {
	in.Shop, in.Strain, in.Tube.Fin.Foot = c, 0, tube.Foot{}
	if c != nil {
		in.Strain, in.Tube.Fin.Foot = c.Placing.Strain, c.Foot
	}
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

// Limits are what metal and joint must not pass [C], and the seasons that are rated beside.
type Limits struct {
	Summer, Winter rating.Optional // of the gas outside
	Turndown       rating.Optional // [-] of the flow inside
	House          rating.Optional // the house's own limit, where it is not the shipped one
	TubeMetal      rating.Optional // the most that the tube's metal may reach
}

// Asked is what the customer asks of the tubes beyond their sizes, and says of tubes that are bare.
type Asked struct {
	Supports rating.Optional // [m] longest length between two supports
	Rolled   rating.Optional // [m] of a plain end, rolled or expanded; 0: it is only cleaned
	Bow      rating.Optional // [m] by which a bare tube may be out of straight
	BowOver  rating.Optional // [m] in which length
	ODOut    rating.Optional // [m] by which its outside diameter may be out
	Hardness rating.Optional // [HV] of the tube
	BeadOut  rating.Optional // [m] height of the tube's weld bead outside; 0: there is none
	BeadIn   rating.Optional // [m] and inside
	Security string          // how the ends of the fins are held; empty: as the shop does
	Steps    shop.StepSet    // that the shop may not do by itself
}

// Wish is what the order states of its making, over what the shop does otherwise.
type Wish struct {
	Line      string          // by its name; empty: the one that suits best
	LeastWall units.Length    // below groove or knurl, for pressure and corrosion; 0: none stated
	Tolerance rating.Optional // [m] of a zone's edge
	Joints    rating.Optional // of the strip, on one tube
	Margin    rating.Optional // on cost [-]
	Asked     Asked
	Ordered   shop.Day // 0: today
	Approved  shop.Day // of the drawing; 0: as long after the order as the shop is used to
}
