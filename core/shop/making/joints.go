package making

import (
	"math"

	"finwright/core/shop"
	"finwright/core/units"
)

// JointPlaces says how near the joints of an order's strip come to the ends and supports of its tubes.
type JointPlaces struct {
	Looked  int          // ends of coils that were looked at
	Near    int          // of them, those that come nearer than asked, before any is cut back
	Nearest units.Length // the nearest joint that is made
	Room    units.Length // as far off as a joint can be kept: half of the longest finned length
	Back    units.Length // of strip: the most that a coil is cut back
}

// JointPlaces returns the stretches of a tube's strip [m], as it is wound, in which a joint stands clear [m] off the ends and supports,
// of a tube with so much strip and so much length a turn.
//
// Valid: a programme of ProgrammeOf.
// Source: subtraction.
func (p *Programme) JointPlaces(perTube, pitch, clear units.Length) (out []Interval) {
	turn := perTube / units.Length(p.Turns()+p.LostTurns())
	edge := turn * clear / pitch
	var at units.Length
	for _, z := range p.Zones {
		if z.Kind != Finned {
			continue
		}
		kept := turn * units.Length(z.Turns)
		if kept >= 2*edge*(1-shop.Slack) {
			out = append(out, Interval{at + edge, at + max(edge, kept-edge)})
		}
		at += kept + turn*units.Length(z.Run.RunDown)
	}
	return out
}

// JointsOn says where the joints of a winding stand on its tubes, of which one is to be clear [m] off their ends and supports, with so
// much tube a turn [m]. Coils are taken to be as long as planned, so a place is that of the plan and not a promise. What is left of a
// tube's strip when a coil ends with it is no joint.
//
// Valid: Possible; a programme of ProgrammeOf.
// Source: own derivation.
func (w *Winding) JointsOn(p *Programme, pitch, clear units.Length) JointPlaces {
	out := JointPlaces{Nearest: units.Length(math.Inf(1))}
	for _, z := range p.Zones {
		if z.Kind == Finned {
			out.Room = max(out.Room, z.Finished.Length()/2)
		}
	}
	made := w.Made()
	own, again := w.runs(made)
	for _, r := range append(own, again) {
		tubes := min(made, r.tubes)
		for k := range min(r.joined(tubes), mostJoints) {
			at := r.end(k)
			if k < len(r.ends) {
				at = r.ends[k]
			}
			by := r.end(k) - at
			within := math.Mod(float64(at/w.Strip.PerTube()), 1)
			if by == 0 && (within < shop.Slack || within > 1-shop.Slack) {
				continue
			}
			off := p.offEdges(within*(p.Turns()+p.LostTurns()), pitch)
			out.looked(off < clear*(1-shop.Slack), by)
			out.Nearest = min(out.Nearest, off)
		}
		if made -= tubes; made > 0 && r.cut {
			out.looked(false, r.left(tubes))
		}
	}
	return out
}

// looked counts the end of a coil, near or cut back by so much strip.
func (j *JointPlaces) looked(near bool, by units.Length) {
	j.Looked++
	if near || by > 0 {
		j.Near++
	}
	j.Back = max(j.Back, by)
}

// offEdges returns how far off the nearer edge of its zone a turn lies, counted as wound; one that is stripped back lies at the edge.
func (p *Programme) offEdges(turns float64, pitch units.Length) units.Length {
	for _, z := range p.Zones {
		if turns < z.Turns {
			return pitch * units.Length(min(turns, z.Turns-turns))
		}
		if turns -= z.Turns + z.Run.RunDown; turns < 0 {
			break
		}
	}
	return 0
}
