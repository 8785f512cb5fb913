package exchanger

import (
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

// Case is a state of the plant that the tube must survive. A bond that was lost in
// one hour of start-up stays lost.
type Case string

// Cases, in the order of a report; each has a text "case.<id>".
const (
	Normal  Case = "normal"
	StartUp Case = "start_up"
	Upset   Case = "upset"
	// FlowLost is hot gas outside with no stream inside: the metal is as hot as the gas.
	FlowLost Case = "flow_lost"
)

// Cases lists the cases: but for the last they are always asked for.
var Cases = []Case{Normal, StartUp, Upset, FlowLost}

// Subject is what a limit is of.
type Subject string

// Subjects.
const (
	OfJoint     Subject = "joint" // of fin and tube
	OfFinMetal  Subject = "fin_metal"
	OfTubeMetal Subject = "tube_metal"
	OfSpacing   Subject = "spacing" // of the tubes
)

// Finding is what one check says; Case is empty where it holds for all.
type Finding struct {
	Of    Subject
	Case  Case
	State figure.State
	Why   message.Message
}

// CheckProcess holds the process temperature [C] of every case, or its hottest root in
// gas that is hotter, against the limits of the fin type. Above the standard's is a no, above the house's a
// watch; so is a case that nobody stated.
func CheckProcess(l tube.Limits, process map[Case]float64) []Finding {
	var found []Finding
	for _, c := range Cases {
		t, stated := process[c]
		say := func(state figure.State, key string, limit material.Value) {
			found = append(found, Finding{OfJoint, c, state, message.New(key, "case", message.Key("case."+string(c)),
				"temperature", celsius(t), "limit", upTo(limit.SI), "source", message.Key(limit.Key))})
		}
		switch {
		case !stated && c == FlowLost:
		case !stated:
			found = append(found, Finding{OfJoint, c, figure.Watch, message.New("limit.not_stated", "case", message.Key("case."+string(c)))})
		case l.Standard.Known() && units.Above(t, l.Standard.SI):
			say(figure.No, "limit.above_standard", l.Standard)
		}
		if stated && l.House.Known() && units.Above(t, l.House.SI) {
			say(figure.Watch, "limit.above_house", l.House)
		}
	}
	if !l.Standard.Known() {
		found = append(found, Finding{Of: OfJoint, State: figure.Plain, Why: message.New("limit.no_standard")})
	}
	return found
}

// JudgedTo is the temperature [C] up to which a fin metal without a limit of its own needs none: the fin type's governs.
//
// Source: engineering judgement: strip of aluminium and copper is soft anyway, and above creeps.
const JudgedTo = 200

// CheckFinMetal holds the fin's hottest temperature [C] of every stated case, at
// the tip in hot gas and at the root in air, against the limit of its metal. One without a limit is not judged above JudgedTo.
func CheckFinMetal(m material.Metal, hottest map[Case]float64) []Finding {
	var found []Finding
	if !m.Limit.Known() {
		for _, c := range Cases {
			if t, stated := hottest[c]; stated && units.Above(t, JudgedTo) {
				found = append(found, Finding{OfFinMetal, c, figure.Watch, message.New("limit.metal_not_judged", "case", message.Key("case."+string(c)),
					"temperature", celsius(t), "limit", upTo(JudgedTo), "metal", m.Name())})
			}
		}
		if found == nil {
			found = append(found, Finding{Of: OfFinMetal, State: figure.Plain, Why: message.New("limit.no_metal_limit", "metal", m.Name())})
		}
		return found
	}
	for _, c := range Cases {
		if t, stated := hottest[c]; stated && units.Above(t, m.Limit.SI) {
			found = append(found, Finding{OfFinMetal, c, figure.No, message.New("limit.above_metal", "case", message.Key("case."+string(c)),
				"temperature", celsius(t), "limit", upTo(m.Limit.SI), "metal", m.Name(), "source", message.Key(m.Limit.Key))})
		}
	}
	return found
}

// CheckTubeMetal holds the hottest that the tube's metal may get [C] in every stated case, which is the hotter of stream
// and fin root, against the limit of its metal [C]. No limit is shipped: it is the user's, or not judged.
func CheckTubeMetal(limit material.Value, hottest map[Case]float64) []Finding {
	if !limit.Known() {
		return []Finding{{Of: OfTubeMetal, State: figure.Plain, Why: message.New("limit.no_tube_limit")}}
	}
	var found []Finding
	for _, c := range Cases {
		if t, stated := hottest[c]; stated && units.Above(t, limit.SI) {
			found = append(found, Finding{OfTubeMetal, c, figure.No, message.New("limit.above_tube_metal", "case", message.Key("case."+string(c)),
				"temperature", celsius(t), "limit", upTo(limit.SI))})
		}
	}
	return found
}

// CheckWoundInFlue refuses strip that is wound, not welded, in flue gas that gets hotter than the standard's limit of its type
// in any case: what holds there is the tube's temperature, and no buyer takes it.
func CheckWoundInFlue(l tube.Limits, gas map[Case]float64) []Finding {
	if !l.Standard.Known() {
		return nil
	}
	for _, c := range Cases {
		if t, stated := gas[c]; stated && units.Above(t, l.Standard.SI) {
			return []Finding{{OfJoint, c, figure.No, message.New("limit.wound_in_flue", "case", message.Key("case."+string(c)),
				"temperature", celsius(t), "limit", upTo(l.Standard.SI), "source", message.Key(l.Standard.Key))}}
		}
	}
	return nil
}

// HouseTipClearance is the least gap between the fin tips of neighbours [m]
// that ships: room to slide a tube in.
//
// Source: engineering judgement, editable.
const HouseTipClearance = 0.003

// CheckPitch refuses a bank whose tubes stand too close: leastPitch [m] is the
// smallest distance between neighbours, across or diagonal, finOD [m] the largest
// fin diameter with its tolerance, clearance [m] the house's gap between tips.
func CheckPitch(leastPitch, finOD, clearance float64) []Finding {
	least := finOD + clearance
	if leastPitch >= least-1e-9 { // a nanometre forgives converted inches
		return nil
	}
	return []Finding{{Of: OfSpacing, State: figure.No, Why: message.New("limit.pitch", "pitch", diameter(leastPitch), "least", message.Least(diameter(least)),
		"fin", diameter(finOD), "clearance", message.Amount{Kind: units.Gap, SI: clearance})}}
}

// Worst returns the gravest state among findings, Good if none says more.
func Worst(found []Finding) figure.State {
	worst := figure.Good
	for _, f := range found {
		if f.State.Worsens(worst) {
			worst = f.State
		}
	}
	return worst
}

func upTo(t float64) message.Most       { return message.Most(celsius(t)) }
func celsius(t float64) message.Amount  { return message.Amount{Kind: units.Temp, SI: t} }
func diameter(d float64) message.Amount { return message.Amount{Kind: units.Diameter, SI: d} }
