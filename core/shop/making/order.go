// Package making plans an order on a line of a shop: strip, coils, growth, the finning
// programme, speeds, time, sawing, packing and cost.
package making

import (
	"finwright/core/material"
	"finwright/core/tube"
	"finwright/core/units"
)

// Order is what is to be made.
type Order struct {
	Tube      tube.Tube
	TubeMetal material.Metal
	FinMetal  material.Metal
	Quantity  int
	FreeIssue bool               // the customer supplies the tubes
	Spares    int                // further tubes that the customer supplies
	LeastWall units.Length       // below groove or knurl, for pressure and corrosion; 0 if not stated
	Hottest   *units.Temperature // of the metal in any case, nil if not stated
}
