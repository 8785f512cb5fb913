package fluid

import (
	"math"

	"finwright/core/figure"
	"finwright/core/units"
)

const (
	steamGasConstant = 461.526 // [J/(kg K)], IAPWS-IF97
	steamMolarMass   = 18.015257
	humidityMost     = 0.2 // [kg/kg]
)

// AirOverWater is the molar mass of dry air over that of water [-].
const AirOverWater = airMolarMass / steamMolarMass

// MoistAir returns the properties of air that carries w kilograms of water vapour
// a kilogram of dry air, at absolute temperature t [K] and pressure p [Pa].
//
// Density and heat capacity are those of a mixture of ideal gases, as good as
// DryAir. Viscosity and conductivity follow Wilke's rule, which its author found
// good to about 2 %; at 40 C saturation lowers them by 3.5 % and 2.5 %.
//
// Valid: 233.15 <= t <= 673.15 (-40 to 400 C), p as DryAir; 0 <= w <= 0.2; no liquid: relative humidity at most 1.
// Source: mixture of ideal gases; Wilke, J. Chem. Phys. 18 (1950) 517, with its
// weights used for conductivity too (Mason and Saxena 1958), both from memory.
func MoistAir(t, p, w float64) (Properties, error) {
	if err := check(temperature(t, airColdest, moistHottest), pressure(p, airThinnest, airDensest),
		figure.Limit{Variable: "humidity_ratio", Kind: units.Factor, Value: w, Low: 0, High: humidityMost}); err != nil {
		return Properties{}, err
	}
	air := dryAir(t, p)
	if w == 0 {
		return air, nil
	}
	molar := w * AirOverWater
	x := molar / (1 + molar) // mole fraction of vapour
	if saturation, ok := vapourPressure(t); ok {
		if err := check(figure.Limit{Variable: "relative_humidity", Kind: units.Factor, Value: x * p / saturation, Low: 0, High: 1}); err != nil {
			return Properties{}, err
		}
	}
	vapourCp := -steamGasConstant * idealSteam(t).tt
	vapourMu := steamViscosity(t, 0)
	vapourK := steamConductivity(t, 0)
	root := math.Sqrt(air.Viscosity / vapourMu)
	inAir := 1 - x + x*vapourHinders.weight(root)
	inVapour := x + (1-x)*airHinders.weight(1/root)
	return Properties{
		Density:      p / t * ((1-x)/airGasConstant + x/steamGasConstant),
		HeatCapacity: (air.HeatCapacity + w*vapourCp) / (1 + w),
		Viscosity:    (1-x)*air.Viscosity/inAir + x*vapourMu/inVapour,
		Conductivity: (1-x)*air.Conductivity/inAir + x*vapourK/inVapour,
	}, nil
}

// hinders is what of Wilke's weight, of how much one gas hinders another, hangs on their molar masses alone.
type hinders struct{ fourth, under float64 }

var vapourHinders, airHinders = hindersBy(airMolarMass, steamMolarMass), hindersBy(steamMolarMass, airMolarMass)

func hindersBy(of, by float64) hinders {
	return hinders{math.Pow(by/of, 0.25), 1 / math.Sqrt(8*(1+of/by))}
}

// weight takes the root of the viscosity of the gas over that of the other [-].
func (h hinders) weight(root float64) float64 {
	f := 1 + root*h.fourth
	return f * f * h.under
}

// HumidityRatio returns the water [kg/kg] that a kilogram of dry air carries at
// absolute temperature t [K], pressure p [Pa] and relative humidity [-], over ice
// below 0.01 C.
//
//	w = 0.62210 pv/(p - pv),  pv = relative psat(t)
//
// Valid: 233.15 <= t <= 673.15, 0 <= relative <= 1, result at most 0.2. The
// interaction of air and vapour, which raises w by about 0.4 %, is left out.
// Source: ideal gases; vapour pressure IAPWS-IF97 over water and IAPWS R14-08 over ice.
func HumidityRatio(t, p, relative float64) (float64, error) {
	if err := check(temperature(t, airColdest, moistHottest), pressure(p, airThinnest, airDensest),
		figure.Limit{Variable: "relative_humidity", Kind: units.Factor, Value: relative, Low: 0, High: 1}); err != nil {
		return 0, err
	}
	if relative == 0 {
		return 0, nil
	}
	saturation, ok := vapourPressure(t)
	if !ok {
		return 0, &OutOfRange{temperature(t, airColdest, criticalTemperature)}
	}
	vapour := relative * saturation
	most := p * humidityMost / (humidityMost + steamMolarMass/airMolarMass)
	if err := check(figure.Limit{Variable: "vapour_pressure", Kind: units.Pressure, Value: vapour, Low: 0, High: most}); err != nil {
		return 0, err
	}
	return steamMolarMass / airMolarMass * vapour / (p - vapour), nil
}

// vapourPressure returns the saturation pressure [Pa] over water or ice at t [K];
// ok is false above the critical temperature, where nothing saturates.
func vapourPressure(t float64) (p float64, ok bool) {
	switch {
	case t < tripleTemperature:
		return sublimationPressure(t), true
	case t <= criticalTemperature:
		return saturationPressure(t), true
	}
	return 0, false
}

// sublimationPressure returns the vapour pressure [Pa] over ice at t [K].
//
// Valid: 50 <= t <= 273.16.
// Source: IAPWS R14-08(2011), eq. 6.
func sublimationPressure(t float64) float64 {
	x := t / tripleTemperature
	return 611.657 * math.Exp((-21.2144006*math.Pow(x, 0.00333333333)+
		27.3203819*math.Pow(x, 1.20666667)-6.10598130*math.Pow(x, 1.70333333))/x)
}
