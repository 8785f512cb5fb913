package making

import (
	"slices"

	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// TubeTime is what one tube takes on the line, productive time.
type TubeTime struct {
	Wind    units.Duration // run-up and run-down included
	Jog     units.Duration // over bare lengths
	Secure  units.Duration // two ends of each finned zone
	Load    units.Duration // and unload
	Preheat units.Duration // of a tube that is welded
}

// Total returns the sum [s].
//
// Valid: any.
// Source: addition.
func (t TubeTime) Total() units.Duration { return t.Wind + t.Jog + t.Secure + t.Load + t.Preheat }

// TimeTube adds up the time [s] of one tube's programme, with the ends of its fins held in a way.
//
// Valid: any programme.
// Source: engineering judgement, editable: 20 to 40 s to load and unload, 10 to 20 s to secure an end.
func TimeTube(l *shop.Line, p *Programme, way shop.SecuringWay) TubeTime {
	secure := l.SecureTime(way)
	t := TubeTime{Load: l.Times.Load}
	var bare units.Length
	for _, z := range p.Zones {
		if z.Kind == Finned {
			t.Wind += z.Run.Time
			t.Secure += 2 * secure
		} else {
			bare += z.Cut.Length()
		}
	}
	t.Jog = units.Duration(bare / units.Length(l.Jog))
	return t
}

// Setup is what a line must be set to. Orders of equal setups run together.
type Setup struct {
	Type   tube.FinType
	OD     units.Length
	Height units.Length
	Strip  units.Length
	Count  units.PerLength
	Metal  string // of the fin; another coil, no change of the line
}

// SetupOf returns the setup of an order, diameter in [m] and fins in [1/m].
//
// Valid: any order.
// Source: the order.
func SetupOf(o *Order) Setup {
	f := &o.Tube.Fin
	return Setup{f.Type, o.Tube.OD, f.Height, f.Strip, f.Count, o.FinMetal.ID}
}

// ChangeTime returns the time [s] to set the line from one setup to another: that of the
// deepest thing that differs.
//
// Valid: any setups.
// Source: engineering judgement, editable: pitch 15 to 40 min, tooling 30 to 90, diameter
// 45 to 120, fin type 2 to 4 h.
func ChangeTime(c *shop.ChangeOver, from, to Setup) units.Duration {
	switch {
	case from.Type != to.Type:
		return c.Type
	case from.OD != to.OD:
		return c.OD
	case from.Height != to.Height || from.Strip != to.Strip:
		return c.Tooling
	case from.Count != to.Count:
		return c.Pitch
	}
	return 0
}

// Activity is what the line does. Its name is the text "shop.activity.<activity>".
type Activity string

// Activities.
const (
	SettingUp  Activity = "set_up"
	Checking   Activity = "check" // first-off
	Finning    Activity = "finning"
	CoilChange Activity = "coil_change"
	RackChange Activity = "rack_change"
)

// Activities lists them in the order of a legend.
var Activities = []Activity{SettingUp, Checking, Finning, CoilChange, RackChange}

// LineTime is how long a line is at each of the Activities, in their order.
type LineTime [5]units.Duration

// Of returns the time [s] of one.
//
// Valid: an activity of the list.
// Source: the list.
func (t *LineTime) Of(a Activity) units.Duration { return t[slices.Index(Activities, a)] }

// OrderTime is what an order takes.
type OrderTime struct {
	Tube   TubeTime
	OnLine LineTime       // productive
	Clock  units.Duration // on the line, by the crew's efficiency
	Saw    units.Duration // beside the line
	Pack   units.Duration // beside the line
	Steps  units.Duration // beside the line, of the plan
	Person units.Duration // of all people, paid
	Shifts float64

	PerCoil  units.Duration // from one coil change to the next, by the clock
	PerShift float64        // tubes made in a shift without set-up
}

// Productive returns the sum over the line's activities [s].
//
// Valid: any.
// Source: addition.
func (o *OrderTime) Productive() units.Duration {
	var sum units.Duration
	for _, t := range o.OnLine {
		sum += t
	}
	return sum
}

// TimeOrder adds up the time [s] of an order on the line and beside it, with coils and joints as the
// ledger counts them. The crew stands by the line; saw and packing take one person.
//
// Valid: one tube or more; cuts and crates of 0 or more.
// Source: addition; efficiency of 75 to 85 %: engineering judgement, editable.
func TimeOrder(c *shop.Capability, l *shop.Line, w *Winding, tubeTime TubeTime, setUp units.Duration, k *Ledger, cuts, crates int) OrderTime {
	o := OrderTime{Tube: tubeTime, OnLine: LineTime{
		setUp,
		0,
		units.Duration(w.Made()) * tubeTime.Total(),
		units.Duration(k.Changes)*w.Coil.Change + units.Duration(k.Jointed)*w.Restart,
		units.Duration((w.Made()+l.Racks.Tubes-1)/l.Racks.Tubes) * l.Racks.Change,
	}}
	if setUp > 0 && w.FirstOff > 0 {
		o.OnLine[1] = l.Times.Check
	}
	e := units.Duration(c.Crew.Efficiency)
	o.Clock = o.Productive() / e
	o.Shifts = float64(o.Clock / c.Crew.Shift)
	o.PerCoil = (tubeTime.Total()*units.Duration(w.TubesPerCoil()) + w.Coil.Change) / e
	running := (o.Productive() - o.OnLine.Of(SettingUp) - o.OnLine.Of(Checking)) / e
	o.PerShift = float64(w.Made()) * float64(c.Crew.Shift/running)
	o.beside(c, cuts, crates, 0)
	return o
}

// beside puts in what is done beside the line, by one person, and adds up what all people are paid for.
func (o *OrderTime) beside(c *shop.Capability, cuts, crates int, steps units.Duration) {
	e := units.Duration(c.Crew.Efficiency)
	o.Saw, o.Pack, o.Steps = units.Duration(cuts)*c.Cutting.Time, units.Duration(crates)*c.Crate.Time, steps
	o.Person = o.Clock*units.Duration(c.Crew.People) + (o.Saw+o.Pack)/e + steps/e
}
