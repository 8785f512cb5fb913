package rating

import "finwright/core/fluid"

// gas is the stream outside with what follows from its inlet alone.
type gas struct {
	own      bool
	in       float64          // [C]
	inlet    fluid.Properties // there
	pressure float64          // [Pa]
	carries  float64          // [kg/kg] water
}

// gas returns the stream outside; the errors are those of package fluid.
func (in *Input) gas() (gas, error) {
	g := gas{own: in.Air.OwnGas, in: float64(in.Air.In), inlet: in.Air.Gas}
	if g.own {
		return g, nil
	}
	var err error
	if g.pressure, err = fluid.PressureAtAltitude(float64(in.Air.Altitude)); err != nil {
		return g, err
	}
	if g.carries, err = fluid.HumidityRatio(g.in+zeroCelsius, g.pressure, in.Air.Humidity); err != nil {
		return g, err
	}
	g.inlet, err = fluid.MoistAir(g.in+zeroCelsius, g.pressure, g.carries)
	return g, err
}

// at returns the gas at a temperature [C].
func (g *gas) at(celsius float64) (fluid.Properties, error) {
	if g.own || celsius == g.in {
		return g.inlet, nil
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
	if g.own || metal >= g.in {
		return false
	}
	most, err := fluid.HumidityRatio(metal+zeroCelsius, g.pressure, 1)
	return err == nil && g.carries > most
}
