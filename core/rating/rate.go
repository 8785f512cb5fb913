package rating

import (
	"math"

	"finwright/core/airside"
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
		s.evaluate(&t)
		s.stream.complete(&t, in)
	}
	return t, hindered
}

// RateBriefly is Rate [SI] for one of many: of the correlations it asks those in use alone, and Films and Drops stay empty.
//
// Valid: as Rate.
// Source: as Rate.
func RateBriefly(in *Input) (Thermal, *Hindrance) { return rateBriefly(in, cold(in)) }

// RateNear is RateBriefly [SI] for a bank that is little else than one that has been rated: it begins as that one ended, which saves it
// rounds.
//
// Valid: as Rate; near that of Rate or RateBriefly.
// Source: as Rate.
func RateNear(in *Input, near *Thermal) (Thermal, *Hindrance) { return rateBriefly(in, near.state) }

func rateBriefly(in *Input, start means) (Thermal, *Hindrance) {
	var s settling
	t, hindered := s.from(in, start, fine)
	if hindered == nil {
		s.shorten(&t)
		s.stream.complete(&t, in)
	}
	return t, hindered
}

// Ends are the inlet temperatures of both streams [C].
type Ends struct{ Process, Gas float64 }

// Hot reports whether the gas outside is the hotter.
func (e Ends) Hot() bool { return e.Gas > e.Process }

// Ends returns the inlet temperatures [C] in normal running.
//
// Valid: any input.
// Source: what is stated.
func (in *Input) Ends() Ends { return Ends{float64(in.Process.In), float64(in.Air.In)} }

// Parts are how much of the difference of the inlets, from the gas on, the hottest root, the tip of its fin and the mean of
// that fin have [-].
//
// Valid: from 0 at the gas to 1 at the stream inside.
// Source: Thermal.PartsAt.
type Parts struct{ Root, Tip, Mean float64 }

// PartsAt returns them [-] for a case, which keeps the shares of normal running as long as the same stream is the hotter. Where
// the gas becomes the hotter, the coldest corner becomes the hottest; where the stream inside does, its inlet is the bound.
//
// Valid: t of Rate for in.
// Source: the bank's answer is linear in the inlets where films and properties stay; own derivation.
func (t *Thermal) PartsAt(in *Input, ends Ends) Parts {
	normal := in.Ends()
	at := t.Duty.HottestRoot
	if ends.Hot() != normal.Hot() {
		if !ends.Hot() {
			return Parts{1, 1, 1}
		}
		at = t.Duty.Coldest
	}
	if normal.Process == normal.Gas {
		return Parts{1, 1, 1}
	}
	part := func(ratio float64) float64 {
		return (at.Air + (at.Celsius-at.Air)*ratio - normal.Gas) / (normal.Process - normal.Gas)
	}
	return Parts{part(1), part(t.TipRatio), part(t.finEta)}
}

// At returns the temperature [C] that has a part [-] of the difference of the inlets.
//
// Valid: any part.
// Source: definition.
func (e Ends) At(part float64) float64 { return e.Gas + part*(e.Process-e.Gas) }

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
