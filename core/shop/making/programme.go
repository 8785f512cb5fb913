package making

import (
	"math"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// ZoneKind is what a stretch of tube is to be.
type ZoneKind string

// Kinds of zone; each has a text "shop.zone.<kind>".
const (
	Trim     ZoneKind = "trim" // cut off after finning
	PlainEnd ZoneKind = "plain_end"
	Finned   ZoneKind = "finned"
	BareSpan ZoneKind = "bare_span"
)

// Interval is a stretch along the tube.
type Interval struct{ From, To units.Length }

// Length returns To less From [m].
//
// Valid: From <= To.
// Source: subtraction.
func (i Interval) Length() units.Length { return i.To - i.From }

// Zone is one stretch of the programme.
type Zone struct {
	Kind     ZoneKind
	Finished Interval // on the drawing, from finished end A
	Cut      Interval // on the tube as cut, from its end A: where the head starts and stops
	Turns    float64  // that stay; need not be whole
	Run      ZoneRun  // of a finned zone
	Stripped Interval // finished tube beyond a finned zone from which the turns of the run-down are stripped back
}

// Programme is how one tube is cut and wound so that its zones land where the
// drawing wants them after growth.
type Programme struct {
	Zones      []Zone
	Growth     Growth
	CutLength  units.Length
	Grown      units.Length // by how much the tube lengthens
	TrimA      units.Length
	TrimB      units.Length // what the step of the saw adds included
	Reach      units.Length // from end A to the farthest edge of a zone
	Tolerable  float64      // [-] error of growth that puts that edge out by the tolerance
	TrialFirst bool         // the scatter is wider than that: fin and measure one tube before cutting the rest
	Notes      []message.Message
}

// Finned returns the finished finned length [m].
//
// Valid: a programme of ProgrammeOf.
// Source: sum over the zones.
func (p *Programme) Finned() units.Length {
	var sum units.Length
	for _, z := range p.Zones {
		if z.Kind == Finned {
			sum += z.Finished.Length()
		}
	}
	return sum
}

// ProgrammeOf plans the zones of an order's tube, places in [m].
//
// The tube grows where fins are wound, the turns of each run-down included, and
// nowhere else. So a stretch b of bare tube becomes b (1 + g) under fins, and zone by
// zone a position on the drawing gives one on the tube as cut.
// ok is false if zones overlap, have no length or no room for a turn.
//
// Valid: bare spans in order from end A.
// Source: own derivation; growth as Growth says.
func ProgrammeOf(c *shop.Capability, m *shop.Practice, s *Speeds, o *Order) (p Programme, ok bool) {
	p = Programme{Zones: drawn(c, o), Growth: LearnGrowth(c, m), TrimA: c.Cutting.TrimA}
	for i := range p.Zones {
		z := &p.Zones[i]
		length := z.Finished.Length()
		if length < 0 || length == 0 && z.Kind != PlainEnd && z.Kind != Trim {
			return Programme{}, false
		}
		if z.Kind == Finned {
			z.Turns = o.Tube.Fin.Count.PerMetre() * float64(length)
			if z.Turns < 1 {
				return Programme{}, false
			}
			z.Run = s.Wind(z.Turns)
		}
	}
	p.placeOnCut(o.Tube.Pitch(), c.Cutting.Step)
	p.Reach = o.Tube.Length - o.Tube.PlainB
	p.Tolerable = TolerableGrowthError(c.Placing.Tolerance, p.Reach)
	if p.TrialFirst = p.Growth.Scatter > p.Tolerable; p.TrialFirst {
		p.Notes = append(p.Notes, TrialFirst(p.Growth.Scatter, p.Reach, c.Placing.Tolerance))
	}
	return p, true
}

// TrialFirst says why a trial tube must be made: growth that varies [-] puts the farthest edge out by more than the tolerance.
func TrialFirst(scatter float64, reach, tolerance units.Length) message.Message {
	return message.New("shop.growth.trial", "scatter", message.Of(units.Percent, scatter), "off", message.Of(units.Gap, EdgeOff(scatter, reach)), "allowed", message.Of(units.Gap, tolerance))
}

// drawn lists the zones of the drawing, trims at both ends included.
func drawn(c *shop.Capability, o *Order) []Zone {
	t := &o.Tube
	at := -c.Cutting.TrimA
	zones := make([]Zone, 0, 2*len(t.Spans)+5)
	to := func(kind ZoneKind, end units.Length) {
		zones = append(zones, Zone{Kind: kind, Finished: Interval{at, end}})
		at = end
	}
	to(Trim, 0)
	to(PlainEnd, t.PlainA)
	for _, s := range t.Spans {
		to(Finned, s.Centre-s.Width/2)
		to(BareSpan, s.Centre+s.Width/2)
	}
	to(Finned, t.Length-t.PlainB)
	to(PlainEnd, t.Length)
	to(Trim, t.Length+c.Cutting.TrimB)
	return zones
}

// ShortestFinned returns the shortest finned length [m] of the drawing, negative where zones overlap.
//
// Valid: bare spans in order from end A.
// Source: subtraction.
func ShortestFinned(o *Order) units.Length {
	t := &o.Tube
	shortest, at := t.Length, t.PlainA
	for i := range t.Spans {
		s := &t.Spans[i]
		shortest, at = min(shortest, s.Centre-s.Width/2-at), s.Centre+s.Width/2
	}
	return min(shortest, t.Length-t.PlainB-at)
}

// placeOnCut fills in the positions on the tube as cut, and the cut itself.
func (p *Programme) placeOnCut(pitch, step units.Length) {
	grow := units.Length(1 + p.Growth.Share)
	var at, lost units.Length // lost is what is left of a run-down, as finished
	for i := range p.Zones {
		z := &p.Zones[i]
		length := z.Finished.Length()
		wound := min(lost, length)
		lost -= wound
		if z.Kind == Finned {
			wound, lost = length, pitch*units.Length(z.Run.RunDown)
			z.Stripped = Interval{z.Finished.To, z.Finished.To + lost}
		}
		z.Cut = Interval{at, at + wound/grow + length - wound}
		at = z.Cut.To
		p.Grown += wound - wound/grow
	}
	p.CutLength = step * units.Length(math.Ceil(float64(at/step)-shop.Slack))
	last := &p.Zones[len(p.Zones)-1]
	last.Finished.To += p.CutLength - at
	last.Cut.To = p.CutLength
	p.TrimB = last.Finished.Length()
}

// LostTurns returns the turns [-] wound in run-downs and stripped back.
//
// Valid: a programme of ProgrammeOf.
// Source: sum over the zones.
func (p *Programme) LostTurns() float64 {
	var sum float64
	for _, z := range p.Zones {
		sum += z.Run.RunDown
	}
	return sum
}

// Turns returns the turns [-] that stay on the tube.
//
// Valid: a programme of ProgrammeOf.
// Source: sum over the zones.
func (p *Programme) Turns() float64 {
	var sum float64
	for _, z := range p.Zones {
		sum += z.Turns
	}
	return sum
}
