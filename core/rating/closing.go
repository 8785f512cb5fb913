package rating

import "math"

// Third is what follows of a stream's flow, its outlet and its duty from the other two.
type Third string

// Thirds; NoThird where less than two are stated, or all.
const (
	NoThird   Third = ""
	ThirdFlow Third = "flow"
	ThirdOut  Third = "outlet"
	ThirdDuty Third = "duty"
)

// closingRounds bounds the search for an outlet, in which the heat capacity is that at the mean temperature: each round
// takes the error down by the share in which the heat capacity changes.
const closingRounds = 20

// MeanHeat returns the heat capacity [J/(kg K)] of the stream half-way between its inlet and an outlet [C].
//
// Valid: a liquid or a gas, condensing steam not.
// Source: the properties of the stream.
func (in *Input) MeanHeat(out float64) (float64, error) {
	p, err := in.liquid((float64(in.Process.In) + out) / 2)
	return p.HeatCapacity, err
}

// FlowFor returns the flow [kg/s] that gives a duty [W] between the inlet and an outlet [C].
//
//	M = Q/(cp |T1 - T2|)
//
// Valid: an outlet that is not the inlet.
// Source: heat balance, heat capacity half-way.
func (in *Input) FlowFor(duty, out float64) (float64, error) {
	cp, err := in.MeanHeat(out)
	return duty / (cp * math.Abs(float64(in.Process.In)-out)), err
}

// DutyFor returns the duty [W] of the stated flow between the inlet and an outlet [C].
//
// Valid: as FlowFor.
// Source: as FlowFor.
func (in *Input) DutyFor(out float64) (float64, error) {
	cp, err := in.MeanHeat(out)
	return in.Process.Flow * cp * math.Abs(float64(in.Process.In)-out), err
}

// OutFor returns the outlet [C] at which the stated flow has given or taken a duty [W].
//
// Valid: as FlowFor; duties for which the stream stays within its properties.
// Source: as FlowFor.
func (in *Input) OutFor(duty float64) (float64, error) {
	inlet := float64(in.Process.In)
	out := inlet
	for range closingRounds {
		cp, err := in.MeanHeat(out)
		if err != nil {
			return 0, err
		}
		out = inlet + in.towards()*duty/(in.Process.Flow*cp)
	}
	return out, nil
}

// towards is 1 where the stream is warmed and -1 where it is cooled.
func (in *Input) towards() float64 {
	if in.Air.In > in.Process.In {
		return 1
	}
	return -1
}

// Gap returns by how much flow and outlet give another duty than the one wanted [-]; ok is false where one is missing.
//
// Valid: a stream of which flow, outlet and duty are stated.
// Source: heat balance.
func (in *Input) Gap() (gap float64, ok bool) {
	if !in.Process.Out.Stated || in.Bank.DutyWanted == 0 || in.Process.Fluid == Steam {
		return 0, false
	}
	duty, err := in.DutyFor(in.Process.Out.SI)
	return duty/in.Bank.DutyWanted - 1, err == nil
}

// Clean rates the bank without its dirt: U [W/(m2 K)], duty [W] and temperatures [C]. near is the bank as rated.
//
// Valid: as Rate.
// Source: as Rate, foulings nought.
func (in *Input) Clean(near *Thermal) (Thermal, *Hindrance) {
	var s settling
	at := *in
	at.Process.Fouling, at.Air.Fouling = 0, 0
	return s.from(&at, near.state, fine)
}
