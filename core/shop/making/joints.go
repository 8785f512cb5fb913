package making

import (
	"math"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// JointPlaces says how near the joints of an order's strip come to the ends and supports of its tubes.
type JointPlaces struct {
	Looked  int          // joints that were looked at
	Near    int          // of them, those that come nearer than asked
	Nearest units.Length // the nearest of all
	Room    units.Length // as far off as a joint can be kept: half of the longest finned length
	Back    units.Length // of strip: the most that is cut off a coil so that its joint comes far enough off
}

// mostLooked bounds the joints that are looked at: a million tubes may have as many.
const mostLooked = 1000

// JointsOn places [m] the joints of a winding along its tubes, of which one is to be clear [m] off their ends and supports, with so
// much tube a turn [m]. Coils are taken to be as long as planned, so a place is that of the plan and not a promise. All runs of
// tubes from a fresh coil on are alike; what is left of a tube when a coil ends with it is no joint.
//
// Valid: Possible; a programme of ProgrammeOf.
// Source: own derivation.
func (w *Winding) JointsOn(p *Programme, pitch, clear units.Length) JointPlaces {
	turn := w.Strip.PerTube() / units.Length(p.Turns()+p.LostTurns())
	out := JointPlaces{Nearest: units.Length(math.Inf(1)), Back: p.cutBack(turn, pitch, clear)}
	for _, z := range p.Zones {
		if z.Kind == Finned {
			out.Room = max(out.Room, z.Finished.Length()/2)
		}
	}
	run := w.served(w.Made())
	for k := range min(w.joined(run), mostLooked) {
		x := float64((w.Usable() + units.Length(k)*w.Fresh()) / w.Strip.PerTube())
		within := x - math.Floor(x)
		if within < shop.Slack || within > 1-shop.Slack {
			continue
		}
		off := p.offEdges(within*(p.Turns()+p.LostTurns()), pitch)
		out.Looked++
		out.Nearest = min(out.Nearest, off)
		if off < clear*(1-shop.Slack) {
			out.Near++
		}
	}
	return out
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

// cutBack returns the most strip between two places at which a coil may be changed: more than clear off the edges of a zone, or
// between two tubes.
func (p *Programme) cutBack(turn, pitch, clear units.Length) (most units.Length) {
	var since units.Length
	for _, z := range p.Zones {
		if z.Kind != Finned {
			continue
		}
		kept, lost := turn*units.Length(z.Turns), turn*units.Length(z.Run.RunDown)
		if z.Finished.Length() < 2*clear*(1-shop.Slack) {
			since += kept + lost
			continue
		}
		edge := turn * clear / pitch
		most = max(most, since+edge)
		since = edge + lost
	}
	return max(most, since)
}

// WindingInUse returns the order's winding from the coil that the plan takes, and where its strip goes; nil where no coil serves.
//
// Valid: a line that makes the type and has a coil.
// Source: as PlanOf.
func WindingInUse(c *shop.Capability, l *shop.Line, m *shop.Practice, o *Order, programme *Programme) (*Winding, *Ledger) {
	p := Plan{Order: o, Line: l, Practice: m, Programme: programme, SetUp: l.ChangeOver.OD, Absent: map[Part]message.Message{}}
	p.wind(c)
	return p.Winding, p.Ledger
}
