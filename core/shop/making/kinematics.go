package making

import (
	"math"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// TubeFeed returns the speed [m/s] of the tube through the machine, spindle over fins per length.
//
// Valid: count > 0.
// Source: one turn of the spindle lays one fin.
func TubeFeed(spindle units.Rotation, count units.PerLength) units.Speed {
	return units.Speed(float64(spindle) / count.PerMetre())
}

// StripSpeed returns the speed [m/s] at which strip runs on, spindle times pi times the diameter of a turn.
//
// Valid: any.
// Source: as tube.Tube.TurnOD.
func StripSpeed(spindle units.Rotation, od units.Length) units.Speed {
	return units.Speed(float64(spindle) * math.Pi * float64(od))
}

// RollingPower returns what the drive must give [W] to roll strip at a speed.
//
//	P = idle + u w t v
//
// Valid: steady running.
// Source: work per volume u of strip: engineering judgement, editable.
func RollingPower(idle units.Power, work units.Stress, width, thickness units.Length, strip units.Speed) units.Power {
	return idle + units.Power(float64(work)*float64(width)*float64(thickness)*float64(strip))
}

// SpeedLimit is one thing that bounds the spindle. Its name is the text "shop.speed.<id>".
type SpeedLimit struct {
	ID      string // "spindle", "strip_speed", "drive", "weld_edge" or "generator"
	Spindle units.Rotation
}

// Speeds is how fast an order runs on a line in steady work.
type Speeds struct {
	Spindle units.Rotation
	Feed    units.Speed
	Strip   units.Speed
	Power   *units.Power // to roll; nil if nothing is known of the metal, or it is not rolled
	Limits  []SpeedLimit
	Binding string  // ID of the lowest limit
	RunUp   float64 // [turns/s2]
	RunDown float64 // [turns/s2]
	Note    message.Message
}

// SpeedsOf returns the speeds of an order, of the spindle [1/s] and of strip and tube [m/s]: the lowest of what its limits allow.
//
// Valid: the line makes the type.
// Source: common practice, no source, for the kinds of limit; their figures are the capability's.
func SpeedsOf(c *shop.Capability, l *shop.Line, m *shop.Practice, o *Order) Speeds {
	t := &o.Tube
	s := Speeds{RunUp: float64(m.Spindle) / float64(l.RunUp), RunDown: float64(m.Spindle) / float64(l.RunDown)}
	var f *shop.Forming
	if t.Fin.Type.Tapers() {
		f, _ = c.FormingOf(o.FinMetal.Family)
		s.rolled(l, m, o, f)
	} else {
		s.welded(l, m, o)
	}
	s.Spindle, s.Binding = s.Limits[0].Spindle, s.Limits[0].ID
	for _, limit := range s.Limits[1:] {
		if limit.Spindle < s.Spindle {
			s.Spindle, s.Binding = limit.Spindle, limit.ID
		}
	}
	s.Feed, s.Strip = TubeFeed(s.Spindle, t.Fin.Count), StripSpeed(s.Spindle, t.TurnOD())
	if f != nil {
		p := RollingPower(l.Idle, f.Work, t.StripWidth(), t.Fin.Strip, s.Strip)
		s.Power = &p
	}
	return s
}

// rolled lists what spindle, strip speed and drive allow, the first two cut back for a metal that winds slower. Of a metal that
// nothing is known of, f is nil.
func (s *Speeds) rolled(l *shop.Line, m *shop.Practice, o *Order, f *shop.Forming) {
	t := &o.Tube
	turn := math.Pi * float64(t.TurnOD())
	share := 1.0
	if f != nil {
		share = f.SpeedShare
	}
	s.Limits = append(make([]SpeedLimit, 0, 3),
		SpeedLimit{"spindle", m.Spindle * units.Rotation(share)},
		SpeedLimit{"strip_speed", units.Rotation(float64(l.StripSpeed) * share / turn)})
	if f == nil {
		s.Note = message.New("shop.why.no_forming", "metal", o.FinMetal.Name())
		return
	}
	perTurn := float64(RollingPower(0, f.Work, t.StripWidth(), t.Fin.Strip, units.Speed(turn))) // J
	s.Limits = append(s.Limits, SpeedLimit{"drive", units.Rotation(float64(l.Drive-l.Idle) / perTurn)})
}

// welded lists what spindle, strip speed, weld and generator allow. Strip that is welded is bent on edge and not rolled, so that
// the drive sets no limit.
func (s *Speeds) welded(l *shop.Line, m *shop.Practice, o *Order) {
	t := &o.Tube
	s.Limits = append(make([]SpeedLimit, 0, 4),
		SpeedLimit{"spindle", m.Spindle},
		SpeedLimit{"strip_speed", units.Rotation(float64(l.StripSpeed) / (math.Pi * float64(t.TurnOD())))})
	edge, ok := m.Weld.EdgeSpeed(o.FinMetal.ID, t.Fin.Strip)
	if !ok {
		s.Note = message.New("shop.why.no_weld", "metal", o.FinMetal.Name())
		return
	}
	s.Note = message.New("shop.why.not_rolled")
	turn := float64(shop.WeldTurn(t.OD))
	s.Limits = append(s.Limits,
		SpeedLimit{"weld_edge", units.Rotation(float64(edge) / turn)},
		SpeedLimit{"generator", units.Rotation(float64(m.Weld.GeneratorSpeed(t.Fin.Strip)) / turn)})
}

// ZoneRun is how the spindle runs up, winds one zone and runs down.
type ZoneRun struct {
	Peak    units.Rotation // reached
	Time    units.Duration
	RunDown float64 // [turns] wound after the zone's end and stripped back
}

// Wind returns how a zone of so many turns runs: time [s], speeds [1/s], turns lost [-]. The spindle runs up within the
// zone, its stop is given at the zone's end, and the turns of the run-down are lost.
//
//	peak = min(spindle, sqrt(2 up turns)); run-down = peak2/(2 down)
//
// Valid: turns > 0.
// Source: uniform acceleration.
func (s *Speeds) Wind(turns float64) ZoneRun {
	peak := min(float64(s.Spindle), math.Sqrt(2*s.RunUp*turns))
	steady := max(0, turns-peak*peak/(2*s.RunUp))
	return ZoneRun{
		Peak:    units.Rotation(peak),
		Time:    units.Duration(peak/s.RunUp + steady/peak + peak/s.RunDown),
		RunDown: peak * peak / (2 * s.RunDown),
	}
}
