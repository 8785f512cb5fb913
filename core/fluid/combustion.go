package fluid

import "math"

// Atomic masses [g/mol], of which the molar masses of pure are made.
const (
	carbonMass   = 12.0107
	hydrogenMass = 1.00794
	oxygenMass   = 15.9994
	nitrogenMass = 14.0067
	sulphurMass  = 32.065
)

// Fuel is what burns, by mass [kg/kg]: what of it is hydrogen and oxygen includes its moisture, ash is left out.
type Fuel struct{ Carbon, Hydrogen, Oxygen, Nitrogen, Sulphur float64 }

// dryAirShares are the volume shares of the air that fuel is burnt with.
//
// Source: as the mixture "Air" of the NASA thermodynamic data file (Gordon 1982).
var dryAirShares = Shares{CarbonDioxide: 0.000319, Nitrogen: 0.78084, Oxygen: 0.209476, Argon: 0.009365}

// Burnt is complete combustion of a kilogram of fuel.
type Burnt struct {
	Shares Shares  // [-] of the wet gas by volume
	Air    float64 // [kg/kg] moist air a kilogram of fuel
	Gas    float64 // [kg/kg] flue gas a kilogram of fuel
	Excess float64 // [-] air over what just suffices, less one
}

// Stoichiometric returns how many kilomoles of oxygen [kmol/kg] a kilogram of fuel takes; not above nought, it does not burn.
//
// Valid: shares of the fuel from 0 to 1.
// Source: C to CO2, H to H2O, S to SO2, N to N2.
func (f Fuel) Stoichiometric() float64 {
	return f.Carbon/carbonMass + f.Hydrogen/(4*hydrogenMass) + f.Sulphur/sulphurMass - f.Oxygen/(2*oxygenMass)
}

// Burn returns the flue gas of a fuel burnt completely with excess air [-], the air carrying humidity [kg/kg dry air].
//
// Valid: fuel that takes oxygen, excess >= 0, humidity >= 0. Nothing is left unburnt, no nitrogen burns.
// Source: balance of the elements.
func (f Fuel) Burn(excess, humidity float64) Burnt {
	need := f.Stoichiometric()
	return f.burn((1+excess)*need/dryAirShares[Oxygen], humidity)
}

// BurnTo is Burn with what oxygen [-] is left in the flue gas, of its wet volume or of its dry.
// ok is false where no amount of this air leaves so much.
//
// Valid: fuel that takes oxygen, 0 <= oxygen, humidity >= 0.
// Source: balance of the elements.
func (f Fuel) BurnTo(oxygen float64, dry bool, humidity float64) (b Burnt, ok bool) {
	need := f.Stoichiometric()
	start := f.Carbon/carbonMass + f.Sulphur/sulphurMass + f.Nitrogen/(2*nitrogenMass) - need // [kmol/kg] of gas, less the air's
	perAir := 1.0                                                                             // [kmol] of gas a kilomole of dry air brings
	if !dry {
		start += f.Hydrogen / (2 * hydrogenMass)
		perAir += waterPerAir(humidity)
	}
	most := dryAirShares[Oxygen] - oxygen*perAir
	air := (need + oxygen*start) / most // [kmol/kg]
	if !(most > 0) || !(air > 0) || math.IsInf(air, 0) {
		return Burnt{}, false
	}
	return f.burn(air, humidity), true
}

// waterPerAir returns kilomoles of water a kilomole of dry air with humidity [kg/kg].
func waterPerAir(humidity float64) float64 {
	return humidity * molarMass(dryAirShares) / pure[WaterVapour].mass
}

// burn takes the dry air [kmol/kg of fuel].
func (f Fuel) burn(air, humidity float64) Burnt {
	need := f.Stoichiometric()
	var n Shares // [kmol/kg]
	for s, x := range dryAirShares {
		n[s] = air * x
	}
	n[WaterVapour] += air * waterPerAir(humidity)
	n[Oxygen] = max(0, n[Oxygen]-need) // rounding leaves none behind where there is no excess
	n[CarbonDioxide] += f.Carbon / carbonMass
	n[WaterVapour] += f.Hydrogen / (2 * hydrogenMass)
	n[Nitrogen] += f.Nitrogen / (2 * nitrogenMass)
	n[SulphurDioxide] += f.Sulphur / sulphurMass
	sum := 0.0
	for _, x := range n {
		sum += x
	}
	b := Burnt{Air: air * molarMass(dryAirShares) * (1 + humidity), Gas: molarMass(n), Excess: air*dryAirShares[Oxygen]/need - 1}
	for s, x := range n {
		b.Shares[s] = x / sum
	}
	return b
}

// molarMass returns the mass [g/mol] of what the amounts [mol] hold.
func molarMass(amounts Shares) float64 {
	sum := 0.0
	for s, x := range amounts {
		sum += x * pure[s].mass
	}
	return sum
}
