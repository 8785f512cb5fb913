package fluid

import "math"

// Water returns the properties of liquid water at absolute temperature t [K] and
// pressure p [Pa].
//
// Against IAPWS-95 from 5 to 200 C and up to 10 MPa: density within 0.0015 %, heat
// capacity 0.08 %, viscosity and conductivity 0.01 %.
//
// Valid: 273.15 <= t <= 623.15; p from saturation to 100e6.
// Source: IAPWS-IF97 (R7-97(2012)), IAPWS R12-08 (viscosity), R15-11 (conductivity).
func Water(t, p float64) (Properties, error) {
	if err := checkLiquid(t, p); err != nil {
		return Properties{}, err
	}
	return waterProperties(t, liquidWater(t, p).at(t, p)), nil
}

// WaterViscosity returns the viscosity [Pa s] of liquid water at absolute temperature t [K] and
// pressure p [Pa], to the last bit that of Water: all that a film asks of the water at a wall.
//
// Valid: as Water.
// Source: as Water.
func WaterViscosity(t, p float64) (float64, error) {
	if err := checkLiquid(t, p); err != nil {
		return 0, err
	}
	return steamViscosity(t, 1/liquidVolume(t, p)), nil
}

func checkLiquid(t, p float64) error {
	if err := check(temperature(t, iceFree, saturatedHottest)); err != nil {
		return err
	}
	return check(pressure(p, saturationPressure(t), 100e6))
}

// Steam returns the properties of superheated steam at absolute temperature t [K]
// and pressure p [Pa].
//
// Valid: 273.15 <= t <= 863.15; p from 1e3 up to saturation, or above 623.15 K up
// to the boundary with dense steam (16.5 to 100 MPa).
// Source: IAPWS-IF97 (R7-97(2012)), IAPWS R12-08 (viscosity), R15-11 (conductivity).
func Steam(t, p float64) (Properties, error) {
	if err := check(temperature(t, iceFree, 863.15)); err != nil {
		return Properties{}, err
	}
	highest := 1e6 * (348.05185628969 + t*(-1.1671859879975+t*1.0192970039326e-3)) // eq. 5
	if t <= saturatedHottest {
		highest = saturationPressure(t)
	}
	if err := check(pressure(p, min(1e3, highest), highest)); err != nil {
		return Properties{}, err
	}
	return waterProperties(t, steam(t, p).at(t, p)), nil
}

func waterProperties(t float64, s state) Properties {
	rho := 1 / s.volume
	mu := steamViscosity(t, rho)
	return Properties{
		Density:      rho,
		HeatCapacity: s.cp,
		Viscosity:    mu,
		Conductivity: steamConductivity(t, rho) + enhancement(t, rho, mu, s),
	}
}

const waterReducing = 322.0 // [kg/m3] critical density

var viscosityTerms = []term{
	{0, 0, 0.520094},
	{1, 0, 0.0850895},
	{2, 0, -1.08374},
	{3, 0, -0.289555},
	{0, 1, 0.222531},
	{1, 1, 0.999115},
	{2, 1, 1.88797},
	{3, 1, 1.26613},
	{5, 1, 0.120573},
	{0, 2, -0.281378},
	{1, 2, -0.906851},
	{2, 2, -0.772479},
	{3, 2, -0.489837},
	{4, 2, -0.257040},
	{0, 3, 0.161913},
	{1, 3, 0.257399},
	{0, 4, -0.0325372},
	{3, 4, 0.0698452},
	{4, 5, 0.00872102},
	{3, 6, -0.00435673},
	{5, 6, -0.000593264},
}

var conductivityTerms = []term{
	{0, 0, 1.60397357},
	{0, 1, -0.646013523},
	{0, 2, 0.111443906},
	{0, 3, 0.102997357},
	{0, 4, -0.0504123634},
	{0, 5, 0.00609859258},
	{1, 0, 2.33771842},
	{1, 1, -2.78843778},
	{1, 2, 1.53616167},
	{1, 3, -0.463045512},
	{1, 4, 0.0832827019},
	{1, 5, -0.00719201245},
	{2, 0, 2.19650529},
	{2, 1, -4.54580785},
	{2, 2, 3.55777244},
	{2, 3, -1.40944978},
	{2, 4, 0.275418278},
	{2, 5, -0.0205938816},
	{3, 0, -1.21051378},
	{3, 1, 1.60812989},
	{3, 2, -0.621178141},
	{3, 3, 0.0716373224},
	{4, 0, -2.7203370},
	{4, 1, 4.57586331},
	{4, 2, -3.18369245},
	{4, 3, 1.1168348},
	{4, 4, -0.19268305},
	{4, 5, 0.012913842},
}

// dense returns exp(delta sum n (1/T-1)^i (delta-1)^j), by which density raises a
// transport property of water; vapour in air is as good as thin.
func dense(terms []term, reduced, delta float64) float64 {
	if delta == 0 {
		return 1
	}
	x, y := lowPowers(1/reduced-1), lowPowers(delta-1)
	sum := 0.0
	for i := range terms {
		c := &terms[i]
		sum += c.n * x[int(c.i)] * y[int(c.j)]
	}
	return math.Exp(delta * sum)
}

// steamViscosity returns the viscosity [Pa s] of water or steam at t [K] and
// density rho [kg/m3], without the enhancement near the critical point, as the
// release recommends for industrial use.
//
// Valid: 273.15 <= t <= 1173.15.
// Source: IAPWS R12-08, eqs 10 to 12.
func steamViscosity(t, rho float64) float64 {
	x := t / criticalTemperature
	dilute := 100e-6 * math.Sqrt(x) / (1.67752 + (2.20462+(0.6366564-0.241605/x)/x)/x)
	return dilute * dense(viscosityTerms, x, rho/waterReducing)
}

// steamConductivity returns the conductivity [W/(m K)] of water or steam at t [K]
// and density rho [kg/m3], less the enhancement near the critical point.
//
// Valid: 273.15 <= t <= 1173.15.
// Source: IAPWS R15-11, eqs 15 to 17.
func steamConductivity(t, rho float64) float64 {
	x := t / criticalTemperature
	dilute := 1e-3 * math.Sqrt(x) /
		(2.443221e-3 + (1.323095e-2+(6.770357e-3+(-3.454586e-3+4.096266e-4/x)/x)/x)/x)
	return dilute * dense(conductivityTerms, x, rho/waterReducing)
}

// referenceCompressibility is the polynomial of IAPWS R15-11 table 6, in reduced
// density, for densities up to the bound.
var referenceCompressibility = []struct {
	bound float64
	a     [6]float64
}{
	{0.310559006, [6]float64{6.53786807199516, -5.61149954923348, 3.39624167361325, -2.27492629730878, 10.2631854662709, 1.97815050331519}},
	{0.776397516, [6]float64{6.52717759281799, -6.30816983387575, 8.08379285492595, -9.82240510197603, 12.1358413791395, -5.54349664571295}},
	{1.242236025, [6]float64{5.35500529896124, -3.96415689925446, 8.91990208918795, -12.0338729505790, 9.19494865194302, -2.16866274479712}},
	{1.863354037, [6]float64{1.55225959906681, 0.464621290821181, 8.93237374861479, -11.0321960061126, 6.16780999933360, -0.965458722086812}},
	{math.Inf(1), [6]float64{1.11999926419994, 0.595748562571649, 9.88952565078920, -10.3255051147040, 4.66861294457414, -0.503243546373828}},
}

// enhancement returns what nearness to the critical point adds to the conductivity
// [W/(m K)] at t [K], density rho [kg/m3] and viscosity mu [Pa s].
//
// Valid: 273.15 <= t <= 863.15.
// Source: IAPWS R15-11, eqs 18 to 25, the form for industrial use.
func enhancement(t, rho, mu float64, s state) float64 {
	x, delta := t/criticalTemperature, rho/waterReducing
	i := 0
	for delta > referenceCompressibility[i].bound {
		i++
	}
	a := &referenceCompressibility[i].a
	reference := 1 / (a[0] + delta*(a[1]+delta*(a[2]+delta*(a[3]+delta*(a[4]+delta*a[5])))))
	slope := WaterCriticalPressure / waterReducing * rho * s.compressibility // d delta / d(p/pc)
	excess := delta * (slope - reference*1.5/x)
	if excess <= 0 {
		return 0
	}
	y := 0.13 / 0.4 * math.Pow(excess/0.06, 0.630/1.239)
	if y < 1.2e-7 {
		return 0
	}
	ratio := s.cv / s.cp
	z := 2 / (math.Pi * y) * ((1-ratio)*math.Atan(y) + ratio*y - (1 - math.Exp(-1/(1/y+y*y/(3*delta*delta)))))
	return 1e-3 * 177.8514 * delta * s.cp / steamGasConstant * x / (mu * 1e6) * z
}
