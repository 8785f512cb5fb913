package fluid

import "math"

const (
	airGasConstant = 287.117            // [J/(kg K)]: 8.31451 J/(mol K) over 28.9586 g/mol
	airMolarMass   = 28.9586            // [g/mol]
	airCritical    = 132.6312           // [K] reducing temperature
	airReducing    = 10.4477 * 28.9586  // [kg/m3] reducing density
	airColdest     = zeroCelsius - 40   // [K]
	airHottest     = zeroCelsius + 1200 // [K] dry
	moistHottest   = zeroCelsius + 400  // [K] with water vapour
	airThinnest    = 20e3               // [Pa]
	airDensest     = 200e3              // [Pa]
)

// Logarithms [-] of the reducing temperature and of the energy of collision e/k = 103.3 K, over 1 K.
var logAirCritical, logAirEnergy = math.Log(airCritical), math.Log(103.3)

// DryAir returns the properties of dry air at absolute temperature t [K] and
// pressure p [Pa].
//
// Density is that of an ideal gas, heat capacity that of the dilute gas; viscosity
// and conductivity carry their small dependence on density. Against the equation
// of state at 101.325 kPa up to 400 C: density within 0.131 % (at -40 C), heat capacity
// 0.30 %, viscosity and conductivity 0.01 %, Prandtl number 0.30 %; the first two errors
// grow in proportion to pressure, and fade as the air is hotter.
//
// Valid: 233.15 <= t <= 1473.15 (-40 to 1200 C); 20e3 <= p <= 200e3.
// Source: Lemmon, Jacobsen, Penoncello and Friend, J. Phys. Chem. Ref. Data 29
// (2000) 331 (heat capacity); Lemmon and Jacobsen, Int. J. Thermophys. 25 (2004)
// 21 (viscosity, conductivity).
func DryAir(t, p float64) (Properties, error) {
	if err := check(temperature(t, airColdest, airHottest), pressure(p, airThinnest, airDensest)); err != nil {
		return Properties{}, err
	}
	return dryAir(t, p), nil
}

func dryAir(t, p float64) Properties {
	rho := p / (airGasConstant * t)
	s := transportAt(t, rho)
	return Properties{
		Density:      rho,
		HeatCapacity: airHeatCapacity(t),
		Viscosity:    s.viscosity(),
		Conductivity: s.conductivity(),
	}
}

// airHeatCapacity returns the ideal-gas heat capacity [J/(kg K)] at t [K].
//
// Valid: 60 <= t <= 2000.
// Source: Lemmon et al. 2000, equation for cp0.
func airHeatCapacity(t float64) float64 {
	vibration := func(theta float64) float64 {
		x := theta * airCritical / t
		e := math.Exp(x)
		return x * x * e / ((e - 1) * (e - 1))
	}
	w := 87.31279 * airCritical / t
	faint := 2.0 / 3 * math.Exp(-w)
	return airGasConstant * (3.490888032 +
		t*(2.395525583e-6+t*(7.172111248e-9-t*3.115413101e-13)) +
		0.223806688/(t*math.Sqrt(t)) +
		0.791309509*vibration(25.36365) + 0.212236768*vibration(16.90741) +
		0.197938904*w*w*faint/((1+faint)*(1+faint)))
}

// collision is the polynomial of the collision integral in ln(t/(e/k)).
var collision = [5]float64{0.431, -0.4623, 0.08406, 0.005341, -0.00331}

// residual is one term N tau^(t/20) delta^d exp(-delta^l) of a transport equation; l = 0 leaves
// the exponential out. The exponents t of the source are all twentieths.
type residual struct {
	n       float64
	t, d, l int
}

// transport is a state of air as the equations of viscosity and conductivity have it: both raise the same two numbers.
type transport struct {
	tau    powers // of the twentieth root of tau
	delta  powers
	faded  [3]float64 // exp(-delta^l) by l; 1 for 0
	dilute float64    // viscosity [uPa s] at zero density
}

// transportAt prepares them at t [K] and density rho [kg/m3].
func transportAt(t, rho float64) transport {
	log := math.Log(t)
	root := math.Exp((logAirCritical - log) / 20)
	s := transport{tau: wholePowers(root), delta: wholePowers(rho / airReducing), dilute: diluteAirViscosity(t, log)}
	s.faded = [...]float64{1, math.Exp(-s.delta.whole(1)), math.Exp(-s.delta.whole(2))}
	return s
}

func (s *transport) sum(terms []residual) float64 {
	sum := 0.0
	for i := range terms {
		r := &terms[i]
		sum += r.n * s.tau.whole(r.t) * s.delta.whole(r.d) * s.faded[r.l]
	}
	return sum
}

// diluteAirViscosity returns the viscosity [uPa s] of air at zero density, at t [K] with its logarithm.
func diluteAirViscosity(t, log float64) float64 {
	const size = 0.36 // [nm]
	x := log - logAirEnergy
	omega := math.Exp(collision[0] + x*(collision[1]+x*(collision[2]+x*(collision[3]+x*collision[4]))))
	return 0.0266958 * math.Sqrt(airMolarMass*t) / (size * size * omega)
}

var airViscosityTerms = []residual{
	{10.72, 4, 1, 0}, {1.122, 1, 4, 0}, {0.002019, 48, 9, 0}, {-8.876, 12, 1, 1}, {-0.02916, 72, 8, 1},
}

// viscosity returns the viscosity [Pa s].
//
// Valid: 60 <= t <= 2000, gas.
// Source: Lemmon and Jacobsen 2004, eqs 1 to 3.
func (s *transport) viscosity() float64 { return 1e-6 * (s.dilute + s.sum(airViscosityTerms)) }

var airConductivityTerms = []residual{
	{8.743, 2, 1, 0},
	{14.76, 0, 2, 0},
	{-16.62, 10, 3, 2},
	{3.793, 54, 7, 2},
	{-6.142, 6, 7, 2},
	{-0.3778, 26, 11, 2},
}

// conductivity returns the conductivity [W/(m K)], without the enhancement near the critical point.
//
// Valid: 60 <= t <= 2000, gas, far from the critical point.
// Source: Lemmon and Jacobsen 2004, eqs 4 to 6.
func (s *transport) conductivity() float64 {
	dilute := 1.308*s.dilute + 1.405*s.tau.whole(-22) - 1.036*s.tau.whole(-6)
	return 1e-3 * (dilute + s.sum(airConductivityTerms))
}
