package verdict

import (
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/units"
)

var jointsRule = &Rule{ID: "joints_place", Field: "joints_allowed", Changes: []string{"tube_length"}, Judge: judgeJoints}

// judgeJoints keeps joints of the strip away from tube ends and supports. It looks at the places that the plan gives them, in
// the coil in use, where a coil is cut back so that its joint comes far enough off, as long as the strip then lasts; so a joint can
// be kept as far off as half of the longest finned length. Where that is too short, coils that wind a tube are changed between two; for
// others the change makes the last finned length long enough.
//
// Source: common practice, no source; its distance is the shop's.
func judgeJoints(p *Pair) Verdict {
	clear := p.Practice.Joints.Clear
	if clear <= 0 {
		return unknown("shop.why.joints_anywhere")
	}
	programme, ok := p.Programme()
	if !ok {
		return unknown("shop.why.zones")
	}
	_, coil := p.Coils()
	switch {
	case coil == nil:
		return unknown("shop.why.joints_no_coil")
	case coil.Ledger.Jointed == 0 && coil.Ledger.Cut == 0:
		return moot("shop.why.no_joints")
	}
	w := &coil.Winding
	at := w.JointsOn(programme, p.Order.Tube.Pitch(), clear)
	if at.Near == 0 {
		return atLeast(units.Distance, at.Nearest, clear)
	}
	wanted := message.Least(message.Of(units.Distance, clear))
	v := atLeast(units.Distance, at.Room, clear)
	switch {
	case w.Placed && len(w.Places) == 0:
		v = Verdict{State: figure.Good, Why: message.New("shop.why.joints_between", "longest", message.Of(units.Distance, 2*at.Room), "clear", wanted, "back", message.Of(units.Run, at.Back))}
	case v.State == figure.No:
		v.Why = message.New("shop.why.joints_room", "longest", message.Of(units.Distance, 2*at.Room), "clear", wanted)
		v.Change = p.longerForJoints(clear)
	case !w.Placed:
		v = atLeast(units.Distance, at.Nearest, clear)
		v.State = figure.Watch
		v.Why = message.New("shop.why.joints_short", "near", at.Near, "joints", at.Looked, "clear", wanted)
	default:
		v.Why = message.New("shop.why.joints_back", "near", at.Near, "joints", at.Looked, "clear", wanted, "back", message.Of(units.Run, at.Back))
	}
	return v
}

// longerForJoints lengthens the tube until its last finned length holds a joint; nil where the rule is not good then.
func (p *Pair) longerForJoints(clear units.Length) []Setting {
	t := &p.Order.Tube
	from := t.PlainA
	for _, s := range t.Spans {
		from = s.Centre + s.Width/2
	}
	change := Setting{Field: "tube_length", Kind: units.Distance, SI: float64(roundUp(from + 2*clear + t.PlainB))}
	if judgeJoints(p.with(change)).State != figure.Good {
		return nil
	}
	return []Setting{change}
}
