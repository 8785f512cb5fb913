package design

import (
	"finwright/core/exchanger"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/tube"
	"finwright/core/units"
)

// Hottest holds the hottest metal [C] by case.
type Hottest struct {
	Ends map[exchanger.Case]rating.Ends
	Root map[exchanger.Case]float64 // of a fin
	tip  map[exchanger.Case]float64 // of that fin
	mean map[exchanger.Case]float64 // over that fin

	joint map[exchanger.Case]float64 // what the limits of the fin type are held against
}

// hottestOf finds the metal of every case from the bank in normal running.
func hottestOf(in *field.Input, t *rating.Thermal) Hottest {
	h := Hottest{Ends: map[exchanger.Case]rating.Ends{}, Root: map[exchanger.Case]float64{}, tip: map[exchanger.Case]float64{}, mean: map[exchanger.Case]float64{}, joint: map[exchanger.Case]float64{}}
	for _, of := range in.Cases() {
		c, ends := of.Case, of.Ends
		h.Ends[c] = ends
		p := t.PartsAt(&in.Input, ends)
		h.Root[c], h.tip[c], h.mean[c] = ends.At(p.Root), ends.At(p.Tip), ends.At(p.Mean)
		if h.joint[c] = max(ends.Process, h.Root[c]); in.Tube.Fin.Type.Fixing().Tension {
			h.joint[c] = max(h.joint[c], h.mean[c])
		}
	}
	return h
}

// judgeCases holds the metal of every case against the limits of fin type, fin metal and tube metal. In hot gas a root may be
// hotter than the stream inside, a tip hotter than its root, and the mean of a fin hotter than the root that its strip was wound on.
func judgeCases(in *field.Input, limits tube.Limits, h Hottest) []exchanger.Finding {
	tube, fin, gas := map[exchanger.Case]float64{}, map[exchanger.Case]float64{}, map[exchanger.Case]float64{}
	for c, ends := range h.Ends {
		tube[c], fin[c], gas[c] = max(ends.Process, h.Root[c]), max(h.Root[c], h.tip[c]), ends.Gas
	}
	found := append(exchanger.CheckProcess(limits, h.joint), exchanger.CheckFinMetal(in.FinMetal, fin)...)
	found = append(found, exchanger.CheckTubeMetal(entered(in.Limits.TubeMetal), tube)...)
	if in.Air.Kind == rating.FlueGas && woundOnly(in.Tube.Fin.Type.Fixing()) {
		found = append(found, exchanger.CheckWoundInFlue(limits, gas)...)
	}
	return append(found, untold(in, h.Ends)...)
}

// Foreseen returns what is found of the limits of temperature whatever the bank does: the joint is at least as hot as the stream
// inside, and what is not stated stays so. A rated bank adds to these and takes none away.
func Foreseen(in *field.Input) []exchanger.Finding {
	h := Hottest{Ends: map[exchanger.Case]rating.Ends{}, Root: map[exchanger.Case]float64{}, tip: map[exchanger.Case]float64{}, joint: map[exchanger.Case]float64{}}
	for _, of := range in.Cases() {
		h.Ends[of.Case] = of.Ends
		h.Root[of.Case], h.tip[of.Case], h.joint[of.Case] = coldestKnown, coldestKnown, of.Process
	}
	return judgeCases(in, limitsOf(in), h)
}

// coldestKnown [C] is colder than any metal.
const coldestKnown = -273.15

// woundOnly reports whether a fin is held by winding, be it in a groove.
func woundOnly(f *tube.Fixing) bool { return f.Type.Wound() && f.Section != tube.WeldSection }

// untold says which inlet of a case that is half told is the one that counts, and what becomes of the metal without a stream.
func untold(in *field.Input, cases map[exchanger.Case]rating.Ends) []exchanger.Finding {
	var found []exchanger.Finding
	for _, c := range []exchanger.Case{exchanger.StartUp, exchanger.Upset} {
		if _, half := cases[c]; half && !in.Governs(c) {
			key := "limit.process_not_stated"
			if in.Ends().Hot() {
				key = "limit.gas_not_stated"
			}
			found = append(found, exchanger.Finding{Of: exchanger.OfJoint, Case: c, State: figure.Watch, Why: message.New(key, "case", message.Key("case."+string(c)))})
		}
	}
	if gas, hot := in.HottestGas(); hot && in.Beyond.FlowLost == rating.FlowUntold {
		found = append(found, exchanger.Finding{
			Of: exchanger.OfJoint, Case: exchanger.FlowLost, State: figure.Watch,
			Why: message.New("limit.flow_untold", "temperature", message.Amount{Kind: units.Temp, SI: gas}, "case", message.Key("case.flow_lost")),
		})
	}
	return found
}

// figureOf is the figure that a finding marks: the one whose value was held against the limit, if there is one.
func (h Heat) figureOf(f exchanger.Finding) string {
	_, rated := h.Case.Ends[f.Case]
	switch {
	case f.Case == exchanger.FlowLost && !rated:
		return "hottest_root"
	case f.Of != exchanger.OfFinMetal:
		return testedID(f.Case)
	case f.Case == exchanger.Normal:
		return "hottest_tip"
	}
	return rootOf(f.Case)
}

// rootOf is the figure of the hottest root of a case.
func rootOf(c exchanger.Case) string {
	if c != exchanger.Normal {
		return "root_" + string(c)
	}
	return "hottest_root"
}

// caseField is where each case is entered: at the inlet that is the hotter in normal running.
func caseField(in *field.Input, c exchanger.Case) string {
	switch hot := in.Ends().Hot(); {
	case c == exchanger.FlowLost:
		return "flow_lost"
	case c == exchanger.StartUp && hot:
		return "air_start_up"
	case c == exchanger.StartUp:
		return "start_up"
	case c == exchanger.Upset && hot:
		return "air_upset"
	case c == exchanger.Upset:
		return "upset"
	case c == exchanger.Normal && hot:
		return "air_in"
	case c == exchanger.Normal:
		return "inside_in"
	}
	return "fin_metal"
}
