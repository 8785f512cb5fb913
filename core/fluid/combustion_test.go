package fluid

import (
	"math"
	"testing"
)

var (
	methane = Fuel{Carbon: carbonMass / 16.04246, Hydrogen: 4 * hydrogenMass / 16.04246}
	octane  = Fuel{Carbon: 8 * carbonMass / 114.22852, Hydrogen: 18 * hydrogenMass / 114.22852}
	coal    = Fuel{Carbon: 0.80, Hydrogen: 0.05, Oxygen: 0.10, Nitrogen: 0.015, Sulphur: 0.035}
)

// Every element and the mass that goes in comes out.
func TestCombustionBalances(t *testing.T) {
	for name, f := range map[string]Fuel{"methane": methane, "octane": octane, "coal": coal} {
		for _, excess := range []float64{0, 0.15, 4} {
			for _, humidity := range []float64{0, 0.012} {
				b := f.Burn(excess, humidity)
				gas := molarMass(b.Shares)
				dry := b.Air / (1 + humidity) / molarMass(dryAirShares) // [kmol]
				water := dry * waterPerAir(humidity)
				out := func(s Species) float64 { return b.Gas / gas * b.Shares[s] }
				for element, pair := range map[string][2]float64{
					"mass":     {1 + b.Air, b.Gas},
					"carbon":   {f.Carbon/carbonMass + dry*dryAirShares[CarbonDioxide], out(CarbonDioxide)},
					"hydrogen": {f.Hydrogen/hydrogenMass + 2*water, 2 * out(WaterVapour)},
					"nitrogen": {f.Nitrogen/nitrogenMass + 2*dry*dryAirShares[Nitrogen], 2 * out(Nitrogen)},
					"sulphur":  {f.Sulphur / sulphurMass, out(SulphurDioxide)},
					"argon":    {dry * dryAirShares[Argon], out(Argon)},
					"oxygen": {
						f.Oxygen/oxygenMass + dry*(2*dryAirShares[Oxygen]+2*dryAirShares[CarbonDioxide]) + water,
						2*out(Oxygen) + 2*out(CarbonDioxide) + out(WaterVapour) + 2*out(SulphurDioxide),
					},
				} {
					if math.Abs(pair[0]-pair[1]) > 1e-9*max(1e-3, pair[0]) {
						t.Errorf("%s with %g excess: %s in %g, out %g", name, excess, element, pair[0], pair[1])
					}
				}
			}
		}
	}
}

// Thermodynamics texts give 17.2 kg of air a kilogram of methane and 15.1 of octane, and burnt methane as 9.5 % CO2, 19.0 %
// H2O and 71.5 % N2 (from memory); their air is 21 % oxygen, so that the last digit is left open.
func TestCombustionPublished(t *testing.T) {
	near := func(name string, got, want, tolerance float64) {
		t.Helper()
		if math.Abs(got-want) > tolerance {
			t.Errorf("%s: %g, want %g", name, got, want)
		}
	}
	m := methane.Burn(0, 0)
	near("air for methane", m.Air, 17.2, 0.08)
	near("air for octane", octane.Burn(0, 0).Air, 15.1, 0.08)
	near("CO2", m.Shares[CarbonDioxide], 0.095, 0.0005)
	near("H2O", m.Shares[WaterVapour], 0.190, 0.0005)
	near("N2 and argon", m.Shares[Nitrogen]+m.Shares[Argon], 0.715, 0.0005)
	near("no oxygen is left", m.Shares[Oxygen], 0, 0)
}

// What oxygen the gas of an excess has leads back to the excess.
func TestOxygenLeft(t *testing.T) {
	for _, excess := range []float64{0, 0.2, 3} {
		b := coal.Burn(excess, 0.01)
		wet, ok := coal.BurnTo(b.Shares[Oxygen], false, 0.01)
		dry, dryOK := coal.BurnTo(b.Shares[Oxygen]/(1-b.Shares[WaterVapour]), true, 0.01)
		if !ok || !dryOK || math.Abs(wet.Excess-excess) > 1e-9 || math.Abs(dry.Excess-excess) > 1e-9 {
			t.Errorf("excess %g came back as %g by wet gas and %g by dry", excess, wet.Excess, dry.Excess)
		}
	}
	if _, ok := coal.BurnTo(0.21, true, 0); ok {
		t.Error("air left more oxygen than it has")
	}
}
