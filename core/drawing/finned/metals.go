package finned

import "finwright/core/drawing/ink"

// spacings holds the hatching [mm] of each family of metals: the better it conducts heat, the finer, in steps of an eighth.
// Our own choice; ISO 128-50 leaves it free.
var spacings = map[string]float64{
	"copper": 0.8, "aluminium": 0.9, "brass": 1.0, "carbon_steel": 1.15, "low_alloy": 1.3,
	"copper_nickel": 1.5, "nickel": 1.7, "titanium": 1.9, "stainless": 2.15,
}

const otherSpacing = 2.4

// HatchingOf returns the hatching of a family of metals, by the name of its material.Family: every family has its own spacing,
// and strip leans the other way than tube, so that the two are told apart where one metal is both.
func HatchingOf(family string, strip bool) ink.Hatching {
	h := ink.Hatching{Angle: 45, Spacing: otherSpacing}
	if s, ok := spacings[family]; ok {
		h.Spacing = s
	}
	if strip {
		h.Angle = 135
	}
	return h
}
