package rating

import "finwright/core/exchanger"

// Cases are the inlet temperatures [C] that the tube must bear beyond those of normal running.
type Cases struct {
	StartUp, Upset       Optional // of the stream inside
	GasStartUp, GasUpset Optional // of the gas outside
	FlowLost             FlowLost // whether the stream inside can fail
}

// FlowLost says whether the stream inside can fail while hot gas flows outside.
type FlowLost string

// Answers.
const (
	FlowUntold   FlowLost = "untold"
	FlowPossible FlowLost = "possible"
	FlowExcluded FlowLost = "excluded"
)

// CaseEnds are the inlets of one case.
type CaseEnds struct {
	Case exchanger.Case
	Ends
}

// Cases returns the inlet temperatures [C] of each case of which one is stated, in which the other is the normal one, in the order
// of exchanger.Cases. A stream that can fail makes a case where gas is the hotter: the metal is then as hot as the hottest gas.
//
// Valid: any input.
// Source: what is stated.
func (in *Input) Cases() []CaseEnds {
	normal := in.Ends()
	cases := append(make([]CaseEnds, 0, 4), CaseEnds{exchanger.Normal, normal})
	for _, c := range beyondNormal {
		if ends, told := in.endsIn(c); told {
			cases = append(cases, CaseEnds{c, ends})
		}
	}
	if in.Beyond.FlowLost != FlowPossible {
		return cases
	}
	if hottest, hot := in.HottestGas(); hot {
		cases = append(cases, CaseEnds{exchanger.FlowLost, Ends{Process: hottest, Gas: hottest}})
	}
	return cases
}

// beyondNormal are the cases that have inlets of their own.
var beyondNormal = [...]exchanger.Case{exchanger.StartUp, exchanger.Upset}

// endsIn returns the inlets in start-up or upset; what is not stated is as in normal running, and told says whether any is.
func (in *Input) endsIn(c exchanger.Case) (ends Ends, told bool) {
	ends = in.Ends()
	process, gas := in.stated(c)
	if process.Stated {
		ends.Process = process.SI
	}
	if gas.Stated {
		ends.Gas = gas.SI
	}
	return ends, process.Stated || gas.Stated
}

// stated are the temperatures of process and gas in start-up or upset.
func (in *Input) stated(c exchanger.Case) (process, gas Optional) {
	if c == exchanger.StartUp {
		return in.Beyond.StartUp, in.Beyond.GasStartUp
	}
	return in.Beyond.Upset, in.Beyond.GasUpset
}

// Governs reports whether the inlet that is the hotter in normal running is stated for start-up or upset.
func (in *Input) Governs(c exchanger.Case) bool {
	process, gas := in.stated(c)
	if in.Ends().Hot() {
		return gas.Stated
	}
	return process.Stated
}

// HottestGas returns the hottest gas [C] of normal running, start-up and upset, and whether gas is the hotter in any.
//
// Valid: any input.
// Source: what is stated.
func (in *Input) HottestGas() (celsius float64, hot bool) {
	normal := in.Ends()
	celsius, hot = normal.Gas, normal.Hot()
	for _, c := range beyondNormal {
		ends, _ := in.endsIn(c)
		celsius, hot = max(celsius, ends.Gas), hot || ends.Hot()
	}
	return celsius, hot
}
