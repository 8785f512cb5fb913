// Package making plans an order on a line of a shop: strip, coils, growth, the finning
// programme, speeds, time, sawing, packing and cost.
package making

import (
	"finwright/core/field"
	"finwright/core/material"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// Order is what is to be made.
type Order struct {
	Tube      tube.Tube
	TubeMetal material.Metal
	FinMetal  material.Metal
	Quantity  int
	FreeIssue bool         // the customer supplies the tubes
	Spares    int          // further tubes that the customer supplies
	LeastWall units.Length // below groove or knurl, for pressure and corrosion; 0 if not stated
	Asked     field.Asked
	Ordered   shop.Day           // 0: on the day that is asked about
	Approved  shop.Day           // of the drawing; 0: in the shop's usual time
	Hottest   *units.Temperature // of the metal in any case, nil if not stated
}

// OrderOf is a design as the shop sees it.
func OrderOf(in *field.Input, hottest *units.Temperature) *Order {
	return &Order{
		Tube: in.Tube, TubeMetal: in.TubeMetal, FinMetal: in.FinMetal, Quantity: in.Job.Quantity,
		FreeIssue: in.Job.FreeIssue, Spares: in.Job.Spares, LeastWall: in.Wish.LeastWall, Asked: in.Wish.Asked,
		Ordered: in.Wish.Ordered, Approved: in.Wish.Approved, Hottest: hottest,
	}
}

// Input is what the order says of its design, for the fields to change it.
func (o *Order) Input() field.Input {
	return field.Input{
		Input: rating.Input{Tube: o.Tube, TubeMetal: o.TubeMetal, FinMetal: o.FinMetal},
		Job:   field.Job{Quantity: o.Quantity, FreeIssue: o.FreeIssue, Spares: o.Spares},
		Wish:  field.Wish{LeastWall: o.LeastWall, Asked: o.Asked, Ordered: o.Ordered, Approved: o.Approved},
	}
}
