// Package search looks through every design of a grid for those that hold what must hold and do best in what is wanted. The answer is
// exact: a design is left out unrated only where it is proved that it cannot be in the answer. It hangs on the grid alone, not on how it
// is cut into chunks, nor on who computes which.
package search

import "finwright/core/units"

// Measure is a number by which designs are held and compared. Its name is the text "search.measure.<measure>".
type Measure string

// Measures.
const (
	Duty        Measure = "duty"
	UA          Measure = "ua"
	AirDrop     Measure = "air_drop"
	InsideLoss  Measure = "inside_loss"
	FanPower    Measure = "fan_power"
	Mass        Measure = "mass_dry" // of the tubes of a bundle
	Width       Measure = "bank_width"
	Depth       Measure = "bank_depth"
	Length      Measure = "tube_length"
	Face        Measure = "face_area"
	Tubes       Measure = "order_bank" // of all bundles
	Price       Measure = "price"      // of all its tubes
	PerKilowatt Measure = "price_per_kw"
	Ready       Measure = "ready" // the day that is promised
	Miss        Measure = "miss"  // by how much, together, a design misses what must hold [-]: of the search for the nearest
)

// Meaning is what is said of a measure.
type Meaning struct {
	ID     Measure
	Kind   units.Kind
	More   bool // more of it is better, and what must hold is a least
	Wanted bool // it may be wanted
}

// Measures lists them; values of a design stand in this order.
var Measures = [...]Meaning{
	{Duty, units.Duty, true, true},
	{UA, units.Transfer, true, false},
	{AirDrop, units.Drop, false, false},
	{InsideLoss, units.Loss, false, false},
	{FanPower, units.Drive, false, true},
	{Mass, units.Weight, false, true},
	{Width, units.Distance, false, false},
	{Depth, units.Distance, false, false},
	{Length, units.Distance, false, false},
	{Face, units.SurfacePerTube, false, true},
	{Tubes, units.Count, false, true},
	{Price, units.Cost, false, true},
	{PerKilowatt, units.Cost, false, true},
	{Ready, units.Number, false, false},
	{Miss, units.Number, false, false},
}

// Places in Measures.
const (
	duty = iota
	transfer
	airDrop
	insideLoss
	fanPower
	mass
	width
	depth
	length
	face
	tubes
	price
	perKilowatt
	ready
	miss
	measureCount
)

// Place returns where a measure stands; ok is false where there is none of that name.
func (m Measure) Place() (at int, ok bool) {
	for i := range Measures {
		if Measures[i].ID == m {
			return i, true
		}
	}
	return 0, false
}

// Values are the numbers of a design [SI], by place in Measures. What is not known is nought and not marked.
type Values struct {
	SI    [measureCount]float64
	known uint32
}

// Known reports whether the number at a place is known.
func (v *Values) Known(at int) bool { return v.known>>at&1 == 1 }

// Set states the number at a place.
func (v *Values) Set(at int, si float64) {
	v.SI[at] = si
	v.known |= 1 << at
}
