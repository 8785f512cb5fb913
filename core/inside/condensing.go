package inside

import (
	"math"

	"finwright/core/figure"
	"finwright/core/fluid"
	"finwright/core/units"
)

const gravity = 9.80665 // [m/s2]

// Condensing is a saturated vapour that enters a tube and leaves it as liquid: nothing else is mixed in, it comes in neither
// superheated nor wet, and its condensate leaves at saturation.
//
// Valid: Flux and MassVelocity positive.
type Condensing struct {
	fluid.Saturated
	CriticalPressure float64 // [Pa]
	Bore             float64 // [m]
	MassVelocity     float64 // [kg/(m2 s)]
	Flux             float64 // [W/m2] mean heat flux on the inside area
}

// Regime is how vapour and condensate lie in a level tube, by the words "figure.vapour_<id>".
type Regime string

// Regimes.
const (
	Stratified Regime = "stratified" // the film runs down the wall
	Between    Regime = "between"
	Sheared    Regime = "sheared" // the vapour drives the film along
)

// Edges of the dimensionless vapour velocity [-] between the regimes.
//
// Source: Breber, Palen and Taborek, J. Heat Transfer 102 (1980) 471, from memory.
const (
	slowVapour = 0.5
	fastVapour = 1.5
)

// VapourVelocity returns the dimensionless velocity jg* [-] of the vapour where a share x [-] of the stream is vapour.
//
//	jg* = x G/sqrt(g di rho_v (rho_l - rho_v))
//
// Valid: 0 <= x <= 1.
// Source: Wallis, as Breber, Palen and Taborek, J. Heat Transfer 102 (1980) 471, have it; from memory.
func (c Condensing) VapourVelocity(x float64) float64 {
	return x * c.MassVelocity / math.Sqrt(gravity*c.Bore*c.Vapour.Density*(c.Liquid.Density-c.Vapour.Density))
}

// Regime returns the regime at the inlet.
func (c Condensing) Regime() Regime {
	switch j := c.VapourVelocity(1); {
	case j <= slowVapour:
		return Stratified
	case j < fastVapour:
		return Between
	}
	return Sheared
}

// asLiquid returns the Reynolds number [-] if all of the stream were liquid.
func (c *Condensing) asLiquid() float64 { return c.MassVelocity * c.Bore / c.Liquid.Viscosity }

// Chato1962 returns the film coefficient [W/(m2 K)] of slow vapour in a horizontal tube,
// whose condensate runs down the wall and along the bottom.
//
//	h = 0.456 [g rho_l (rho_l - rho_v) k^3 h'/(mu q di)]^(1/3);  h' = h_fg + 3/8 cp q/h
//
// This is 0.555 [...h'/(mu dT di)]^(1/4) with the difference across the condensate, dT = q/h, put in: nothing is divided
// by a difference, and the metal behind the dirt has no part in it. Liquid properties throughout.
//
// Valid: Reynolds number of the vapour at the inlet up to 35 000; tube level or
// falling a little along the flow, and drained.
// Source: Chato, ASHRAE J. 4 (1962) 52, after Nusselt (1916), from memory.
func Chato1962(c Condensing) float64 {
	l := &c.Liquid
	fall := gravity * l.Density * (l.Density - c.Vapour.Density) * l.Conductivity * l.Conductivity * l.Conductivity / (l.Viscosity * c.Flux * c.Bore)
	factor := math.Pow(0.555, 4.0/3)
	h := factor * math.Cbrt(fall*c.LatentHeat)
	for range subcoolings {
		h = factor * math.Cbrt(fall*(c.LatentHeat+0.375*l.HeatCapacity*c.Flux/h))
	}
	return h
}

// subcoolings is how often the heat of the film's own cooling is put in anew: each round leaves a hundredth of the error, and
// all of it is a few per cent.
const subcoolings = 5

// shahLiquid returns the film coefficient [W/(m2 K)] if all of the stream were liquid.
//
//	Nu = 0.023 Re^0.8 Pr^0.4
//
// Valid: as Shah1979At.
// Source: Dittus and Boelter (1930) as Shah 1979 has it.
func shahLiquid(c *Condensing) float64 {
	l := &c.Liquid
	return 0.023 * math.Pow(c.asLiquid(), 0.8) * math.Pow(l.Prandtl(), 0.4) * l.Conductivity / c.Bore
}

// Shah1979At returns the film coefficient [W/(m2 K)] of fast vapour, which drives its condensate along, where a share x [-]
// of the stream is still vapour.
//
//	h = h_lo [(1 - x)^0.8 + 3.8 x^0.76 (1 - x)^0.04/pr^0.38]
//
// Valid: pressure over critical 0.002 to 0.44; 10.8 to 210.6 kg/(m2 s); Reynolds number of
// all as liquid 100 to 63 000; Pr of the liquid 1 to 13; bore 7 to 40 mm; from memory, as handbooks give it; 0 <= x <= 1.
// Source: Shah, Int. J. Heat Mass Transfer 22 (1979) 547; as the open library ht carries it.
func Shah1979At(c Condensing, x float64) float64 {
	return shahLiquid(&c) * shahShape(x, c.reduced())
}

func shahShape(x, reduced float64) float64 {
	return math.Pow(1-x, 0.8) + 3.8*math.Pow(x, 0.76)*math.Pow(1-x, 0.04)/math.Pow(reduced, 0.38)
}

// reduced returns the pressure over the critical one [-].
func (c *Condensing) reduced() float64 { return c.Pressure / c.CriticalPressure }

// Shape is what a condensing film has of the quality and the pressure alone: Shah's form at each place that is asked.
type Shape [qualities]float64

// ShapeOf prepares a Shape [-] for a search that asks for one pressure many times.
//
// Valid: as Shah1979At.
// Source: as Shah1979At.
func ShapeOf(c Condensing) Shape {
	var s Shape
	for i := range s {
		s[i] = shahShape(quality(i), c.reduced())
	}
	return s
}

// Condensation returns the film coefficient [W/(m2 K)] of Condense without its Limits, for a search that asks many times.
//
// Valid: as Condense.
// Source: as Condense.
func Condensation(c Condensing, s *Shape) Film {
	slow, liquid := Chato1962(c), shahLiquid(&c)
	sum := 0.0
	for i, shape := range s {
		sum += weight(i) * higher(slow, liquid*shape)
	}
	return Film{Method: "chato_shah", Coefficient: sum, Nusselt: sum * c.Bore / c.Liquid.Conductivity, Reynolds: c.asLiquid()}
}

// higher returns the higher of two films [W/(m2 K)], made smooth where they are alike.
//
//	(a^6 + b^6)^(1/6)
func higher(a, b float64) float64 {
	if a < b {
		a, b = b, a
	}
	r := b / a
	r *= r
	return a * math.Cbrt(math.Sqrt(1+r*r*r))
}

// Condense returns the film coefficient [W/(m2 K)] from all vapour to all liquid: at 16 places over the quality the higher of
// Chato1962 and Shah1979At, made smooth, and the mean of these, as Shah's own mean is taken. Its Limits are those of
// the film that the regime at the inlet speaks for, and of both between.
//
//	h = mean over x of (h_slow^6 + h_fast^6)^(1/6)
//
// The mean of 1/h, which a tube of one flux would have, lies up to some per cent lower.
//
// Valid: as Chato1962 and Shah1979At; the answer's Limits say.
// Source: as named; the smooth higher: Churchill and Usagi, AIChE J. 18 (1972) 1121, exponent from memory.
func Condense(c Condensing) Film {
	s := ShapeOf(c)
	f := Condensation(c, &s)
	regime := c.Regime()
	if regime != Sheared {
		f.Limits = append(f.Limits, chatoLimit(&c))
	}
	if regime != Stratified {
		f.Limits = append(f.Limits, shahLimits(&c)...)
	}
	return f
}

// Breber1980 is the second opinion on a condensing film [W/(m2 K)]: the same two, with a straight line in the vapour's
// velocity between its edges, at the same places over the quality.
//
//	h = h_slow up to jg* 0.5, h_fast from 1.5, and between h_slow + (jg* - 0.5)(h_fast - h_slow)
//
// Valid: as Condense.
// Source: Breber, Palen and Taborek, J. Heat Transfer 102 (1980) 471, from memory.
func Breber1980(c Condensing) float64 {
	s := ShapeOf(c)
	slow, liquid := Chato1962(c), shahLiquid(&c)
	sum := 0.0
	for i, shape := range s {
		part := (c.VapourVelocity(quality(i)) - slowVapour) / (fastVapour - slowVapour)
		part = min(max(part, 0), 1)
		sum += weight(i) * (slow + part*(liquid*shape-slow))
	}
	return sum
}

func chatoLimit(c *Condensing) figure.Limit {
	return figure.Limit{Variable: "vapour_reynolds", Kind: units.Count, Value: c.MassVelocity * c.Bore / c.Vapour.Viscosity, Low: 0, High: 35e3}
}

func shahLimits(c *Condensing) []figure.Limit {
	return []figure.Limit{
		number("reduced_pressure", c.reduced(), 0.002, 0.44),
		number("mass_velocity", c.MassVelocity, 10.8, 210.6),
		{Variable: "liquid_reynolds", Kind: units.Count, Value: c.asLiquid(), Low: 100, High: 63e3},
		number("prandtl", c.Liquid.Prandtl(), 1, 13),
		{Variable: "bore", Kind: units.Diameter, Value: c.Bore, Low: 7e-3, High: 40e-3},
	}
}
