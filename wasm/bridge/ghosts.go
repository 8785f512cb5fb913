package bridge

import (
	"finwright/core/document"
	"finwright/core/drawing/finned"
)

// Sizes that an outline can have [mm].
const (
	leastOutline = 1.0
	mostOutline  = 2000.0
)

// ghosts are the outlines that a drawing can bear: what comes from outside may be anything.
func ghosts(list []finned.Ghost) []finned.Ghost {
	var out []finned.Ghost
	for _, g := range list {
		if g.OD >= leastOutline && g.FinOD >= g.OD && g.FinOD <= mostOutline && len(out) < document.MostKept {
			out = append(out, g)
		}
	}
	return out
}
