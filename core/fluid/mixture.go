package fluid

import (
	"math"

	"finwright/core/figure"
	"finwright/core/units"
)

// Shares are mole fractions [-] by species, volume shares of ideal gases.
type Shares [speciesCount]float64

const (
	mixtureColdest = zeroCelsius - 40   // [K]
	mixtureHottest = zeroCelsius + 1200 // [K]
)

// Mixture is a gas of which the shares are known.
type Mixture struct {
	shares Shares
	mass   float64     // [g/mol]
	gases  []Species   // that there are
	beside [][]another // by place in gases
}

// another is one gas beside another, as far as no temperature changes it.
type another struct {
	root, scale float64 // of Wilke's weight
	pair        *fit    // viscosity of the one among the other; nil: not known
	masses      float64 // 2 Mj/(Mi + Mj), which goes with it
	heat        float64 // by how much heat is hindered more than momentum
}

// NewMixture makes a mixture of shares [-], which it scales to a sum of one.
//
// Valid: shares of nought and more, not all nought.
// Source: ideal gases.
func NewMixture(shares Shares) Mixture {
	sum := 0.0
	for _, x := range shares {
		sum += x
	}
	if !(sum > 0) {
		panic("fluid: a mixture of nothing")
	}
	m := Mixture{gases: make([]Species, 0, speciesCount)}
	for i, x := range shares {
		if x < 0 {
			panic("fluid: negative share")
		}
		m.shares[i] = x / sum
		m.mass += m.shares[i] * pure[i].mass
		if x > 0 {
			m.gases = append(m.gases, Species(i))
		}
	}
	flat := make([]another, len(m.gases)*len(m.gases))
	for i, a := range m.gases {
		row := flat[i*len(m.gases) : (i+1)*len(m.gases)]
		for j, b := range m.gases {
			ma, mb := pure[a].mass, pure[b].mass
			row[j] = another{
				root: math.Sqrt(math.Sqrt(mb / ma)), scale: 1 / math.Sqrt(8*(1+ma/mb)), pair: pairOf(a, b), masses: 2 * mb / (ma + mb),
				heat: 1 + 2.41*(ma-mb)*(ma-0.142*mb)/((ma+mb)*(ma+mb)),
			}
		}
		m.beside = append(m.beside, row)
	}
	return m
}

// Share returns the mole fraction of a species [-].
//
// Valid: any species.
// Source: what the mixture was made of.
func (m *Mixture) Share(s Species) float64 { return m.shares[s] }

// MolarMass returns the mean molar mass [g/mol].
//
// Valid: any mixture.
// Source: molar masses of the species, see pure.
func (m *Mixture) MolarMass() float64 { return m.mass }

// At returns the properties at absolute temperature t [K] and pressure p [Pa].
//
// Density is that of ideal gases, heat capacity the molar mean. Viscosity follows
// Wilke's rule; conductivity that of Wassiljewa with weights after Mason and Saxena
// from the viscosities of pairs. For 13 % CO2, 11 % H2O and 76 % N2 by volume, which
// tables often give, density and heat capacity are within 1 % of the table,
// viscosity within 3.5 %, and conductivity within 2 % at 100 C; above, the table's
// conductivity, up to 24 % higher, is more than that of any mean of its gases.
// Against kinetic theory with other coefficients all of that mixture are within 4.1 %
// from 0 to 1,200 C, and the viscosity of one with 17 % of water within 5.2 %.
//
// Valid: 233.15 <= t <= 1473.15 (-40 to 1200 C); 20e3 <= p <= 200e3; gas: no liquid is taken out.
// Source: species as pure and pairs say; Wilke, J. Chem. Phys. 18 (1950) 517; Wassiljewa, Phys. Z. 5 (1904) 737; Mason
// and Saxena, Phys. Fluids 1 (1958) 361, with the factor of Gordon and McBride, NASA RP-1311 (1994); the rules from memory.
func (m *Mixture) At(t, p float64) (Properties, error) {
	if err := check(temperature(t, mixtureColdest, mixtureHottest), pressure(p, airThinnest, airDensest)); err != nil {
		return Properties{}, err
	}
	var cp float64
	var mu, root, k [speciesCount]float64
	logT := math.Log(t)
	for i, s := range m.gases {
		cp += m.shares[s] * s.heatCapacity(t)
		mu[i], k[i] = s.transport(t, logT)
		root[i] = math.Sqrt(mu[i])
	}
	var among [speciesCount][speciesCount]float64 // viscosities of pairs [Pa s]
	for i := range m.gases {
		for j := range i {
			if f := m.beside[i][j].pair; f != nil {
				among[i][j] = 1e-7 * f.transport(t, logT)
				among[j][i] = among[i][j]
			}
		}
	}
	out := Properties{Density: p * m.mass / (1000 * gasConstant * t), HeatCapacity: 1000 * cp / m.mass}
	for i, s := range m.gases {
		slowed, heat := m.shares[s], m.shares[s]
		for j, other := range m.gases {
			if i == j {
				continue
			}
			b := &m.beside[i][j]
			f := 1 + root[i]/root[j]*b.root
			weight := f * f * b.scale
			slowed += m.shares[other] * weight
			if b.pair != nil {
				weight = mu[i] / among[i][j] * b.masses
			}
			heat += m.shares[other] * weight * b.heat
		}
		out.Viscosity += m.shares[s] * mu[i] / slowed
		out.Conductivity += m.shares[s] * k[i] / heat
	}
	return out, nil
}

// Limits of what dew points are known for.
const (
	leastVapour = 1.0   // [Pa]
	leastAcid   = 1e-4  // [Pa], a thousandth of a millionth of an atmosphere
	mostAcid    = 200.0 // [Pa]
)

// WaterDewPoint returns the temperature [K] at which water, or ice, falls out of a gas in which its vapour has a partial pressure [Pa].
//
// Valid: 1 <= vapour <= 22.064e6, down to -40 C or so; the result lies at 213 K and more.
// Source: IAPWS-IF97 over water, IAPWS R14-08 over ice; the pressure of the other gases is left out, which lowers the dew point
// by less than 0.1 K at one atmosphere.
func WaterDewPoint(vapour float64) (float64, error) {
	if err := check(figure.Limit{Variable: "vapour_pressure", Kind: units.Pressure, Value: vapour, Low: leastVapour, High: 22.064e6}); err != nil {
		return 0, err
	}
	if vapour >= saturationPressure(tripleTemperature) {
		return SaturationTemperature(vapour)
	}
	low, high := 190.0, tripleTemperature
	for range 60 {
		if mid := (low + high) / 2; sublimationPressure(mid) < vapour {
			low = mid
		} else {
			high = mid
		}
	}
	return (low + high) / 2, nil
}

// AcidDewPoint returns the temperature [K] at which sulphuric acid falls out of a gas in which water vapour and sulphur
// trioxide have these partial pressures [Pa].
//
//	1000/T = 2.276 - 0.0294 ln pH2O - 0.0858 ln pSO3 + 0.0062 ln pH2O ln pSO3,  pressures in mmHg
//
// Valid: water 100 to 50e3, trioxide 1e-4 to 200. How much of the dioxide becomes trioxide is the larger doubt.
// Source: Verhoeff and Banchero, Chem. Eng. Prog. 70(8) (1974) 71, as an engineering text on the web gives it.
func AcidDewPoint(water, trioxide float64) (float64, error) {
	if err := check(figure.Limit{Variable: "vapour_pressure", Kind: units.Pressure, Value: water, Low: 100, High: 50e3},
		figure.Limit{Variable: "trioxide_pressure", Kind: units.Pressure, Value: trioxide, Low: leastAcid, High: mostAcid}); err != nil {
		return 0, err
	}
	const mmHg = 101325.0 / 760 // [Pa]
	w, s := math.Log(water/mmHg), math.Log(trioxide/mmHg)
	return 1000 / (2.276 - 0.0294*w - 0.0858*s + 0.0062*w*s), nil
}
