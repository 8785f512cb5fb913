package rating

import "finwright/core/fluid"

// gas is the stream outside with what follows from its inlet alone.
type gas struct {
	kind     GasKind
	in       float64          // [C]
	inlet    fluid.Properties // there
	pressure float64          // [Pa]
	carries  float64          // [kg/kg] water that moist air has
	mixture  fluid.Mixture    // that flue gas is
}

// gas returns the stream outside; the errors are those of package fluid.
func (in *Input) gas() (gas, error) {
	g := gas{kind: in.Air.Kind, in: float64(in.Air.In), inlet: in.Air.Gas}
	var err error
	g.pressure, err = fluid.PressureAtAltitude(float64(in.Air.Altitude))
	if g.kind == OwnGas {
		if err != nil {
			g.pressure = fluid.StandardPressure // of a place that is none
		}
		return g, nil
	}
	if err != nil {
		return g, err
	}
	switch g.kind {
	case DryAir:
		g.inlet, err = fluid.DryAir(g.in+zeroCelsius, g.pressure)
	case FlueGas:
		shares, fault := in.Air.Flue.Shares()
		if fault != "" {
			panic("rating: flue gas that was not checked: " + fault)
		}
		g.mixture = fluid.NewMixture(shares)
		g.inlet, err = g.mixture.At(g.in+zeroCelsius, g.pressure)
	default:
		if g.carries, err = fluid.HumidityRatio(g.in+zeroCelsius, g.pressure, in.Air.Humidity); err == nil {
			g.inlet, err = fluid.MoistAir(g.in+zeroCelsius, g.pressure, g.carries)
		}
	}
	return g, err
}

// at returns the gas at a temperature [C].
func (g *gas) at(celsius float64) (fluid.Properties, error) {
	switch {
	case g.kind == OwnGas || celsius == g.in:
		return g.inlet, nil
	case g.kind == DryAir:
		return fluid.DryAir(celsius+zeroCelsius, g.pressure)
	case g.kind == FlueGas: // below its dew point it is taken to keep its water, and there is a remark
		return g.mixture.At(celsius+zeroCelsius, g.pressure)
	}
	w := g.carries
	if celsius < g.in {
		// Cooled below its dew point air holds no more than this; the rest is water, and a remark.
		// Where it would hold more than is known of, it holds what it carries.
		if most, err := fluid.HumidityRatio(celsius+zeroCelsius, g.pressure, 1); err == nil {
			w = min(w, most)
		}
	}
	return fluid.MoistAir(celsius+zeroCelsius, g.pressure, w)
}

// near returns the gas at a temperature [C], or at the nearest at which it is known, and what hinders then.
func (g *gas) near(celsius float64) (fluid.Properties, *Hindrance) {
	p, err := g.at(celsius)
	if err == nil {
		return p, nil
	}
	hindered := beyond(GasBeyond, err)
	if p, err = g.at(hindered.Range.Nearest()); err != nil {
		p = g.inlet
	}
	return p, hindered
}

// wets reports whether the gas of the inlet drops water on metal of this temperature [C].
func (g *gas) wets(metal float64) bool {
	switch {
	case g.kind == FlueGas:
		dew, ok := g.waterDew()
		return ok && metal < dew
	case g.kind != MoistAir || metal >= g.in:
		return false
	}
	most, err := fluid.HumidityRatio(metal+zeroCelsius, g.pressure, 1)
	return err == nil && g.carries > most
}

// vapour returns the partial pressure of water [Pa].
func (g *gas) vapour() float64 {
	if g.kind == FlueGas {
		return g.mixture.Share(fluid.WaterVapour) * g.pressure
	}
	molar := g.carries * fluid.AirOverWater
	return molar / (1 + molar) * g.pressure
}

// waterDew returns the dew point of water [C]; ok is false where the gas has too little, or is not known.
func (g *gas) waterDew() (celsius float64, ok bool) {
	if g.kind == OwnGas || g.kind == DryAir {
		return 0, false
	}
	t, err := fluid.WaterDewPoint(g.vapour())
	return t - zeroCelsius, err == nil
}

// DewPoints are what falls out of the gas outside, and where.
type DewPoints struct {
	Water  Optional // [C]; not stated: none, or not known
	Vapour float64  // [Pa] partial pressure of water

	Acid     Optional // [C]
	Trioxide float64  // [Pa] partial pressure
	Untold   bool     // it is flue gas, and nobody says how much sulphur it has
}

// DewPoints returns them [C] for the gas at the inlet, which has been found to be in range.
//
// Valid: as fluid.WaterDewPoint and fluid.AcidDewPoint; what is outside has none.
// Source: package fluid; sulphur dioxide turned trioxide as it is stated.
func (in *Input) DewPoints() DewPoints {
	g, err := in.gas()
	if err != nil || g.kind == OwnGas || g.kind == DryAir {
		return DewPoints{}
	}
	d := DewPoints{Vapour: g.vapour()}
	d.Water.SI, d.Water.Stated = g.waterDew()
	if g.kind != FlueGas {
		return d
	}
	if !in.Air.Flue.SulphurTold() {
		d.Untold = true
		return d
	}
	d.Trioxide = in.Air.Flue.ToTrioxide * g.mixture.Share(fluid.SulphurDioxide) * g.pressure
	if t, err := fluid.AcidDewPoint(d.Vapour, d.Trioxide); err == nil {
		d.Acid = Optional{t - zeroCelsius, true}
	}
	return d
}

// Radiates reports whether the gas outside radiates to the tubes so much that leaving it out should be said: flue gas, or a
// gas of which nothing is known, at the inlet from RadiationFrom on.
func (in *Input) Radiates() bool {
	return (in.Air.Kind == FlueGas || in.Air.Kind == OwnGas) && float64(in.Air.In) >= RadiationFrom
}

// RadiationFrom is the gas temperature [C] from which radiation left out is said.
//
// Source: engineering judgement: between fins the gas is thin, and what it radiates there comes to a twentieth or so of convection at 500 C.
const RadiationFrom = 500
