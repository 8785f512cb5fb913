package inside

import (
	"math"

	"finwright/core/figure"
	"finwright/core/fluid"
	"finwright/core/units"
)

const gravity = 9.80665 // [m/s2]

// Condensing is a saturated vapour that enters a tube and leaves it as liquid.
//
// Valid: Subcooling positive.
type Condensing struct {
	fluid.Saturated
	CriticalPressure float64 // [Pa]
	Bore             float64 // [m]
	MassVelocity     float64 // [kg/(m2 s)]
	Subcooling       float64 // [K] of the wall below saturation
}

// asLiquid returns the Reynolds number [-] if all of the stream were liquid.
func (c Condensing) asLiquid() float64 { return c.MassVelocity * c.Bore / c.Liquid.Viscosity }

func (c Condensing) film(method string, h float64) Film {
	return Film{Method: method, Coefficient: h, Nusselt: h * c.Bore / c.Liquid.Conductivity, Reynolds: c.asLiquid()}
}

// Chato1962 returns the film coefficient [W/(m2 K)] of slow vapour in a horizontal tube,
// whose condensate runs down the wall and along the bottom.
//
//	h = 0.555 [g rho_l (rho_l - rho_v) k^3 h'/(mu dT di)]^(1/4);  h' = h_fg + 3/8 cp dT
//
// Liquid properties throughout.
// Valid: Reynolds number of the vapour at the inlet up to 35 000; tube level or
// falling a little along the flow, and drained.
// Source: Chato, ASHRAE J. 4 (1962) 52, after Nusselt (1916), from memory.
func Chato1962(c Condensing) Film {
	f := chato(&c)
	f.Limits = []figure.Limit{chatoLimit(&c)}
	return f
}

func chatoLimit(c *Condensing) figure.Limit {
	return figure.Limit{Variable: "vapour_reynolds", Kind: units.Count, Value: c.MassVelocity * c.Bore / c.Vapour.Viscosity, Low: 0, High: 35e3}
}

// chato is Chato1962 without its Limits.
func chato(c *Condensing) Film {
	l := c.Liquid
	latent := c.LatentHeat + 0.375*l.HeatCapacity*c.Subcooling
	h := 0.555 * math.Pow(gravity*l.Density*(l.Density-c.Vapour.Density)*math.Pow(l.Conductivity, 3)*latent/
		(l.Viscosity*c.Subcooling*c.Bore), 0.25)
	return c.film("chato_1962", h)
}

// shahLiquid returns the film coefficient [W/(m2 K)] if all of the stream were liquid.
//
//	Nu = 0.023 Re^0.8 Pr^0.4
//
// Valid: as Shah1979.
// Source: Dittus and Boelter (1930) as Shah 1979 has it.
func shahLiquid(c Condensing) float64 {
	l := c.Liquid
	return 0.023 * math.Pow(c.asLiquid(), 0.8) * math.Pow(l.Prandtl(), 0.4) * l.Conductivity / c.Bore
}

// Shah1979At returns the film coefficient [W/(m2 K)] where a share x [-] of the stream
// is still vapour.
//
//	h = h_lo [(1 - x)^0.8 + 3.8 x^0.76 (1 - x)^0.04/pr^0.38]
//
// Valid: as Shah1979, 0 <= x <= 1.
// Source: as Shah1979.
func Shah1979At(c Condensing, x float64) float64 {
	return shahLiquid(c) * (math.Pow(1-x, 0.8) + 3.8*math.Pow(x, 0.76)*math.Pow(1-x, 0.04)/math.Pow(c.reduced(), 0.38))
}

// Shah1979 returns the film coefficient [W/(m2 K)] of fast vapour, which drives its condensate
// along, averaged from all vapour to all liquid.
//
//	h = h_lo (0.55 + 2.09/pr^0.38)
//
// Valid: pressure over critical 0.002 to 0.44; 10.8 to 210.6 kg/(m2 s); Reynolds number of
// all as liquid 100 to 63 000; Pr of the liquid 1 to 13; bore 7 to 40 mm; any slope; as handbooks give it, from memory.
// Source: Shah, Int. J. Heat Mass Transfer 22 (1979) 547; local form as the open
// library ht carries it, mean from memory.
func Shah1979(c Condensing) Film {
	f, limits := shah(&c), shahLimits(&c)
	f.Limits = limits[:]
	return f
}

// shah is Shah1979 without its Limits.
func shah(c *Condensing) Film {
	return c.film("shah_1979", shahLiquid(*c)*(0.55+2.09/math.Pow(c.reduced(), 0.38)))
}

func shahLimits(c *Condensing) [5]figure.Limit {
	return [...]figure.Limit{
		number("reduced_pressure", c.reduced(), 0.002, 0.44),
		number("mass_velocity", c.MassVelocity, 10.8, 210.6),
		{Variable: "liquid_reynolds", Kind: units.Count, Value: c.asLiquid(), Low: 100, High: 63e3},
		number("prandtl", c.Liquid.Prandtl(), 1, 13),
		{Variable: "bore", Kind: units.Diameter, Value: c.Bore, Low: 7e-3, High: 40e-3},
	}
}

// reduced returns the pressure over the critical one [-].
func (c *Condensing) reduced() float64 { return c.Pressure / c.CriticalPressure }

// Condense returns both films [W/(m2 K)], the one to use first: Chato1962 where it holds, Shah1979
// where only that holds, and if neither does the one whose worst limit is passed by
// the least share, and the caller must say so.
//
// Valid: as the film's own Limits say.
// Source: as named.
func Condense(c Condensing) [2]Film {
	slow, fast := Chato1962(c), Shah1979(c)
	if c.drives() {
		return [2]Film{fast, slow}
	}
	return [2]Film{slow, fast}
}

// Condensation is the first film of Condense [W/(m2 K)] without its Limits, for a search that asks many times.
//
// Valid: as Condense.
// Source: as Condense.
func Condensation(c Condensing) Film {
	if c.drives() {
		return shah(&c)
	}
	return chato(&c)
}

// drives reports whether the vapour is fast enough for Shah1979 to come first.
func (c *Condensing) drives() bool {
	limits := shahLimits(c)
	return figure.Worst(limits[:]) < chatoLimit(c).Passed()
}
