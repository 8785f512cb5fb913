// Package tube is the finned tube itself: fin types, lengths, areas and masses.
// It knows no physics and no money, but says
// of each fin type all that the packages above take from it.
//
// Conventions, the same everywhere: fin height is measured from the bare tube
// surface, so the fin outside diameter is d + 2 hf for every type; the bare
// area is pi d L as if there were no fins; areas use discs, since the helicoid
// of a usual fin differs by 0.02 %.
package tube

// FinType is how the fin is held on the tube; Fixings lists them.
type FinType string

// Profile is the fin's thickness along its height.
type Profile string

// Profiles.
const (
	AsMade  Profile = "as_made" // Rolled if wound through taper rolls, else Uniform
	Rolled  Profile = "rolled"  // t(r) = t d/2r: rolled thinner outwards as it is wound
	Uniform Profile = "uniform" // one thickness
	Linear  Profile = "linear"  // straight taper to a measured tip
)

// RootBasis says from which diameter the fin is counted.
type RootBasis string

// Root bases.
const (
	FromTube RootBasis = "tube" // the bare tube, as handbook tables do
	FromFoot RootBasis = "foot" // the outside of the foot
)

// WallBasis says what the stated wall means.
type WallBasis string

// Wall bases.
const (
	AverageWall WallBasis = "average"
	MinimumWall WallBasis = "minimum"
)
