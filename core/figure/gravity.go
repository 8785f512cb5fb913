package figure

import (
	"cmp"
	"slices"
)

// gravity lists the states from that which decides to that which says least.
var gravity = []State{No, Watch, Outside, Kept, Good, Plain}

// ByGravity orders states, the gravest first.
func ByGravity(a, b State) int {
	return cmp.Compare(slices.Index(gravity, a), slices.Index(gravity, b))
}

// Graver reports whether s weighs more than t.
func (s State) Graver(t State) bool { return ByGravity(s, t) < 0 }
