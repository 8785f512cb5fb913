package verdict

import (
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

var wallRule = &Rule{ID: "wall", Field: "tube_wall", Changes: []string{"tube_wall"}, Judge: judgeWall}

// judgeWall holds the stated wall to the least that bears the rolls. Where it is an average wall, and one as thin as the mill may
// deliver would not do, it says on which of them it was judged.
//
// Source: engineering judgement, editable.
func judgeWall(p *Pair) Verdict {
	w := p.Order.Tube.Wall
	v := atLeast(units.Wall, w, p.Practice.LeastWall)
	if v.State == figure.No {
		v.Why = message.New("shop.why.wall", "wall", message.Of(units.Wall, w), "least", message.Least(message.Of(units.Wall, p.Practice.LeastWall)))
		v.Change = []Setting{{Field: "tube_wall", Kind: units.Wall, SI: float64(wallAtLeast(p.Practice.LeastWall))}}
	} else if thin := w * (1 - averageUnder); p.Order.Tube.Basis == tube.AverageWall && thin < p.Practice.LeastWall {
		v.Why = message.New("shop.why.wall_average", "thin", message.Of(units.Wall, thin), "under", message.Amount{Kind: units.Percent, SI: averageUnder})
	}
	return v
}

// averageUnder is by how much an average wall may be thinner than stated.
//
// Source: usual minus tolerance, from memory.
const averageUnder = 0.10

// grooveOver is by how much a groove may be deeper than ordered [m].
//
// Source: ISO 13706 gives 0.25 +/- 0.05 mm, from memory.
const grooveOver = 0.05e-3

// taken returns how deep groove or knurl cut into the wall.
func taken(m *shop.Practice, t *tube.Tube) units.Length {
	switch {
	case t.Fin.Type.Grooved():
		return t.Fin.Groove + grooveOver
	case t.Fin.Type.Knurled():
		return m.Knurl
	}
	return 0
}

// wallLeft returns the least wall below groove or knurl.
//
//	left = w (1 - minus tolerance) - taken
//
// Source: ISO 13706 measures the wall of an embedded tube from the bottom of the groove, from memory.
func wallLeft(m *shop.Practice, t *tube.Tube) units.Length {
	w := t.Wall
	if t.Basis == tube.AverageWall {
		w *= 1 - averageUnder
	}
	return w - taken(m, t)
}

var wallLeftRule = &Rule{ID: "wall_left", Field: "least_wall", Changes: []string{"tube_wall"}, Judge: judgeWallLeft}

// judgeWallLeft holds what is left of the wall to the least that the user
// enters; the wall for pressure is not designed here. It is judged at the deepest groove or knurl, as if that ran along the whole
// tube: it stays where turns are stripped. Under a groove the least wall decides which tube is bought, so it is asked for.
//
// Source: a groove stays when its turns are stripped: common practice, no source.
func judgeWallLeft(p *Pair) Verdict {
	least := p.Order.LeastWall
	switch {
	case least <= 0 && p.Order.Tube.Fin.Type.Grooved():
		return ask("shop.why.ask_least_wall", "left", message.Of(units.Wall, wallLeft(p.Practice, &p.Order.Tube)))
	case least <= 0:
		return unknown("shop.why.no_least_wall")
	}
	left := wallLeft(p.Practice, &p.Order.Tube)
	v := atLeast(units.Wall, left, least)
	if v.State == figure.No {
		wall := least + taken(p.Practice, &p.Order.Tube)
		if p.Order.Tube.Basis == tube.AverageWall {
			wall /= 1 - averageUnder
		}
		v.Why = message.New("shop.why.wall_left", "left", message.Of(units.Wall, left), "least", message.Least(message.Of(units.Wall, least)))
		v.Change = []Setting{{Field: "tube_wall", Kind: units.Wall, SI: float64(wallAtLeast(wall))}}
	} else if deepest := taken(p.Practice, &p.Order.Tube); deepest > 0 {
		v.Why = message.New("shop.why.wall_deepest", "deepest", message.Of(units.Height, deepest))
	}
	return v
}
