// Package design combines the packages below it: it reads a document into an
// Input and checks it, rates it, and makes of that the figures, the remarks and
// the plan of its making.
package design

import (
	"finwright/core/exchanger"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/units"
)

// Input is a design in SI, read and checked.
type Input struct {
	rating.Input
	Job    Job
	Limits Limits
	Wish   Wish
	Shop   *shop.Capability // that is to make it; nil: what a shop can do is not judged
}

// Job is what was asked for.
type Job struct {
	Quantity  int
	FreeIssue bool // the customer supplies the tubes
	Spares    int  // further tubes supplied by the customer
}

// Wish is what the order states of its making, over what the shop does otherwise.
type Wish struct {
	Line      string        // by its name; empty: the one that suits best
	LeastWall units.Length  // below groove or knurl, for pressure and corrosion; 0: none stated
	Tolerance *units.Length // of a zone's edge
	Joints    *int          // of the strip, on one tube
	Margin    *float64      // on cost [-]
}

// Limits are the temperatures that the tube must bear beyond the normal one.
type Limits struct {
	Cases map[exchanger.Case]float64 // [C] process temperature of each stated case
	House *float64                   // [C] the house's own limit, where it is not the shipped one
}
