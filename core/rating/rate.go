package rating

import (
	"math"

	"finwright/core/airside"
	"finwright/core/exchanger"
	"finwright/core/fluid"
	"finwright/core/tube"
)

// Rate rates a checked bank: films and U [W/(m2 K)], duty [W], temperatures [C]. Or it says what hinders.
//
// Valid: an Input that has been checked.
// Source: fixed point of the properties, see settle; exchanger.Bank.Rate.
func Rate(in *Input) (Thermal, *Hindrance) {
	var s settling
	t, hindered := s.from(in, cold(in), fine)
	if hindered == nil {
		s.complete(&t)
	}
	return t, hindered
}

// RateBriefly is Rate [SI] for one of many: of the correlations it asks those in use alone, and Films and Drops stay empty.
//
// Valid: as Rate.
// Source: as Rate.
func RateBriefly(in *Input) (Thermal, *Hindrance) {
	var s settling
	t, hindered := s.from(in, cold(in), fine)
	if hindered == nil {
		s.shorten(&t)
	}
	return t, hindered
}

// Roots returns the hottest fin root [C] of each case, of which the process temperature is given [C]: in normal running
// that of the rows, in another the same share of the difference of the inlets.
func (t *Thermal) Roots(in *Input, cases map[exchanger.Case]float64) map[exchanger.Case]float64 {
	air := float64(in.Air.In)
	out := map[exchanger.Case]float64{}
	for c, at := range cases {
		switch {
		case c == exchanger.Normal:
			out[c] = t.Duty.HottestRoot.Celsius
		case in.Unfed(at):
			out[c] = max(air, at)
		default:
			out[c] = air + t.RootShare(in)*(at-air)
		}
	}
	return out
}

// RootShare returns how much of the difference of the inlets the hottest root has [-].
//
// Valid: inlets that differ.
// Source: definition.
func (t *Thermal) RootShare(in *Input) float64 {
	return (t.Duty.HottestRoot.Celsius - float64(in.Air.In)) / float64(in.Process.In-in.Air.In)
}

// Unfed reports whether a case with the process at a temperature [C] is held to be one
// in which no stream cools the tube: the gas outside is the hotter, then or in normal running.
func (in *Input) Unfed(at float64) bool {
	return in.Process.In <= in.Air.In || at < float64(in.Air.In)
}

// Tip returns the tip [C] of the fin with the hottest root.
//
// Valid: t of Rate.
// Source: fin.Result.TipRatio.
func (t *Thermal) Tip() float64 {
	at := t.Duty.HottestRoot
	return at.Air + (at.Celsius-at.Air)*t.TipRatio
}

// Yield returns heat per kilogram of fin metal [W/kg] and per face area [W/m2].
//
// Valid: t of Rate.
// Source: definition.
func (t *Thermal) Yield(tb *tube.Tube) (perKilogram, perFace float64) {
	return math.Abs(t.Duty.Heat) / t.FinMetal(tb), math.Abs(t.Duty.Heat) / t.Bank.FaceArea()
}

// FinMetal returns the mass of all fins [kg].
//
// Valid: t of Rate.
// Source: tube.Tube.FinMass times the finned length.
func (t *Thermal) FinMetal(tb *tube.Tube) float64 {
	return float64(tb.FinMass()) * t.Bank.FinnedLength * float64(t.Bank.Tubes())
}

// Still returns one tube of the bank in gas at rest; ok is false where its metal is no warmer or colder than the gas, to
// what the bank settles within, or the gas is beyond its properties.
func (t *Thermal) Still(in *Input) (s airside.Still, ok bool) {
	mean := (float64(in.Air.In) + t.state.root) / 2
	var at fluid.Properties
	outside, err := in.gas()
	if err == nil {
		at, err = outside.at(mean)
	}
	excess := math.Abs(t.state.root - float64(in.Air.In))
	return airside.Still{
		Properties: at, FinOD: float64(in.Tube.FinOD()), Gap: float64(in.Tube.Gap()), Expansion: 1 / (mean + zeroCelsius), Excess: excess,
	}, err == nil && excess > fine
}
