package rating

import "finwright/core/fluid"

// GasKind is what the gas outside is.
type GasKind string

// Kinds of gas.
const (
	MoistAir GasKind = "air"
	DryAir   GasKind = "dry_air"
	FlueGas  GasKind = "flue"
	OwnGas   GasKind = "own"
)

// Flue is flue gas as it is stated: by the shares of its volume, or by the fuel that it comes of.
type Flue struct {
	ByFuel bool
	Dry    bool // shares, or the oxygen left, are of the gas without its water

	CO2, H2O, O2, N2 float64  // [-] of the volume; H2O where it is wet
	SO2              Optional // [-]
	Water            Optional // [-] of the wet volume, where the shares are of the dry

	Fuel     fluid.Fuel
	Sulphur  Optional // [kg/kg] of the fuel
	ByOxygen bool     // the air is told by the oxygen left
	Excess   float64  // [-] air over what just suffices
	Left     float64  // [-] oxygen
	Humidity float64  // [kg/kg] of the air

	ToTrioxide float64 // [-] share of sulphur dioxide that has become trioxide
}

// FlueFault is why flue gas cannot be known; its text is "error.flue_<fault>".
type FlueFault string

// Faults.
const (
	SharesAmiss   FlueFault = "shares" // they do not add up to a hundred
	WaterUntold   FlueFault = "water"  // shares of dry gas say nothing of its water
	FuelAmiss     FlueFault = "fuel"   // its elements do not add up to a hundred
	FuelInert     FlueFault = "inert"  // it takes no oxygen
	OxygenTooRich FlueFault = "oxygen" // no amount of air leaves so much
)

// sumSlack is by how much shares may miss one [-] and be scaled: their last digits are rounded.
const sumSlack = 0.005

// Sum returns what the shares that are asked for add up to [-], or the elements of the fuel.
//
// Valid: any shares.
// Source: definition.
func (f *Flue) Sum() float64 {
	if f.ByFuel {
		e := f.elements()
		return e.Carbon + e.Hydrogen + e.Oxygen + e.Nitrogen + e.Sulphur
	}
	sum := f.CO2 + f.O2 + f.N2 + f.SO2.SI
	if !f.Dry {
		sum += f.H2O
	}
	return sum
}

func (f *Flue) elements() fluid.Fuel {
	e := f.Fuel
	e.Sulphur = f.Sulphur.SI
	return e
}

// SulphurTold reports whether it is said how much sulphur there is, be it none.
func (f *Flue) SulphurTold() bool {
	if f.ByFuel {
		return f.Sulphur.Stated
	}
	return f.SO2.Stated
}

// Burnt returns the combustion that the gas comes of, its shares in [-]; a fault is empty where there is none.
//
// Valid: elements that add up to one, give or take 0.005, to which they are scaled.
// Source: fluid.Fuel.
func (f *Flue) Burnt() (fluid.Burnt, FlueFault) {
	e := f.elements()
	sum := f.Sum()
	if sum < 1-sumSlack || sum > 1+sumSlack {
		return fluid.Burnt{}, FuelAmiss
	}
	e = fluid.Fuel{Carbon: e.Carbon / sum, Hydrogen: e.Hydrogen / sum, Oxygen: e.Oxygen / sum, Nitrogen: e.Nitrogen / sum, Sulphur: e.Sulphur / sum}
	if e.Stoichiometric() <= 0 {
		return fluid.Burnt{}, FuelInert
	}
	if !f.ByOxygen {
		return e.Burn(f.Excess, f.Humidity), ""
	}
	b, ok := e.BurnTo(f.Left, f.Dry, f.Humidity)
	if !ok {
		return b, OxygenTooRich
	}
	return b, ""
}

// Shares returns the shares [-] of the wet gas; a fault is empty where there is none.
//
// Valid: shares that add up to one, give or take 0.005.
// Source: definition of shares of dry gas.
func (f *Flue) Shares() (fluid.Shares, FlueFault) {
	if f.ByFuel {
		b, fault := f.Burnt()
		return b.Shares, fault
	}
	if sum := f.Sum(); sum < 1-sumSlack || sum > 1+sumSlack {
		return fluid.Shares{}, SharesAmiss
	}
	water := f.H2O
	if f.Dry {
		if !f.Water.Stated {
			return fluid.Shares{}, WaterUntold
		}
		water = f.Water.SI
	}
	rest := 1 - water // of the wet volume that the others have
	if !f.Dry {
		rest = 1
	}
	return fluid.Shares{
		fluid.CarbonDioxide: rest * f.CO2, fluid.WaterVapour: water, fluid.Nitrogen: rest * f.N2,
		fluid.Oxygen: rest * f.O2, fluid.SulphurDioxide: rest * f.SO2.SI,
	}, ""
}
