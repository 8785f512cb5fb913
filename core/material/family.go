package material

// Family is a family of metals. Drawings hatch by it and forming depends on it.
type Family string

// Families.
const (
	Aluminium    Family = "aluminium"
	Copper       Family = "copper"
	Brass        Family = "brass"
	CopperNickel Family = "copper_nickel"
	CarbonSteel  Family = "carbon_steel"
	LowAlloy     Family = "low_alloy" // chromium-molybdenum steels
	Stainless    Family = "stainless" // ferritic, austenitic and duplex
	Titanium     Family = "titanium"
	NickelAlloy  Family = "nickel"
	OtherMetal   Family = "other" // a user's own
)

// Forming is what strip or fin metal must bear on its way onto the tube.
type Forming string

// Formings.
const (
	Foot   Forming = "foot"   // bent to a foot, plain or knurled
	Groove Forming = "groove" // wound into a groove
	Edge   Forming = "edge"   // wound on edge
	Weld   Forming = "weld"   // wound on edge and welded
	Muff   Forming = "muff"   // extruded from a thick sleeve
)

// Suit is how well a metal bears a forming.
type Suit string

// Suits.
const (
	Usual      Suit = "usual"
	Special    Suit = "special" // done, not usual: ask
	Unsuitable Suit = "unsuitable"
)

var suits = map[Forming]map[Family]Suit{
	Foot:   {Aluminium: Usual, Copper: Usual},
	Groove: {Aluminium: Usual, Copper: Usual, CarbonSteel: Usual, Stainless: Special},
	Edge:   {Aluminium: Usual, Copper: Usual, CarbonSteel: Usual, Stainless: Usual},
	Weld:   {CarbonSteel: Usual, Stainless: Usual},
	Muff:   {Aluminium: Usual},
}

// Suits returns how well fin metal of this family bears a forming. A user's own metal
// is always Special: nothing is known of it.
//
// Valid: fin metals.
// Source: aluminium and copper for feet, steel too hard for them: common practice, no
// source; grooves, edge winding, welding and muffs: from memory and judgement.
func (k Family) Suits(f Forming) Suit {
	if k == OtherMetal {
		return Special
	}
	if s, ok := suits[f][k]; ok {
		return s
	}
	return Unsuitable
}
