package rating

import (
	"finwright/core/airside"
	"finwright/core/exchanger"
	"finwright/core/fluid"
)

// VelocityBasis is the state of the gas in which a face velocity is stated.
type VelocityBasis string

// Bases of a face velocity.
const (
	Actual   VelocityBasis = "actual"   // as it enters
	Standard VelocityBasis = "standard" // of StandardDensity, whatever the gas
	Normal   VelocityBasis = "normal"   // the gas at 0 C and 101.325 kPa
)

// StandardDensity is that of standard air [kg/m3].
//
// Source: common practice, no source.
const StandardDensity = 1.2

// basis returns the density [kg/m3] of the gas in which a face velocity is stated.
func (g *gas) basis(b VelocityBasis) float64 {
	switch b {
	case Standard:
		return StandardDensity
	case Normal:
		pressure := g.pressure
		if pressure == 0 {
			pressure = fluid.StandardPressure // an own gas has none
		}
		return g.inlet.Density * (g.in + zeroCelsius) / zeroCelsius * fluid.StandardPressure / pressure
	}
	return g.inlet.Density
}

// flux returns the mass flow over the face [kg/(m2 s)].
func (g *gas) flux(air *Air) float64 { return g.basis(air.Basis) * air.Velocity }

// FaceDensities returns the density [kg/m3] of the gas in each state in which a face velocity may be stated.
func (in *Input) FaceDensities() map[VelocityBasis]float64 {
	g, err := in.gas()
	if err != nil {
		return nil // then nothing is rated
	}
	return map[VelocityBasis]float64{Actual: g.inlet.Density, Standard: StandardDensity, Normal: g.basis(Normal)}
}

// Draught is what the fan has to do.
type Draught struct {
	Inlet, Outlet float64  // [kg/m3] of the gas before and behind the bank
	Friction      float64  // [Pa] in the bank
	Acceleration  float64  // [Pa] for a gas that leaves lighter than it came; negative where it leaves heavier
	Bank          float64  // [Pa] both
	Entry         float64  // [Pa] plenum, screen and louvre
	Density       float64  // [kg/m3] at the fan
	Volume        float64  // [m3/s] at the fan
	Head          float64  // [Pa] velocity pressure at the fan; 0 where its area is not stated
	Pressure      float64  // [Pa] all together
	Power         float64  // [W]
	Cold          Optional // [kg/m3] of the coldest gas, where it is stated and known
}

// Draught returns the pressure [Pa], the volume [m3/s] and the power [W] of the fan, for a bank whose drop is known.
//
//	dp = dp_friction + (1 + sigma^2) Gm^2/2 (1/rho_out - 1/rho_in)
//
// The drop of a correlation that counts entering and leaving already (Drop.Entry) is taken as it is.
// Valid: a bank with a drop, small beside the pressure of the gas.
// Source: acceleration after Kays and London, Compact Heat Exchangers (1964), from memory; a fan's power goes with the volume
// that it moves.
func (t *Thermal) Draught(in *Input) Draught {
	g, _ := in.gas() // a rated bank has one
	outlet := g.inlet.Density
	if out, err := g.at(t.Duty.AirOut); err == nil {
		outlet = out.Density
	}
	d := in.draught(in.Pitches(), t.Flow.FaceMassVelocity, t.UsedDrop.Answer, t.Bank.FaceArea(), g.inlet.Density, outlet)
	if cold := in.Air.Fan.Coldest; cold.Stated {
		if at, err := g.at(cold.SI); err == nil {
			d.Cold = Optional{SI: at.Density, Stated: true}
		}
	}
	return d
}

// draught is Draught for a mass flow over the face [kg/(m2 s)] of an area [m2], a drop, and densities [kg/m3] before and behind.
func (in *Input) draught(bank airside.Bank, flux float64, drop airside.Drop, face, inlet, outlet float64) Draught {
	d := Draught{Inlet: inlet, Outlet: outlet, Friction: drop.Total}
	if drop.Entry == 0 {
		sigma := bank.FreeRatio()
		throat := flux / sigma
		d.Acceleration = (1 + sigma*sigma) * throat * throat / 2 * (1/d.Outlet - 1/d.Inlet)
	}
	d.Bank = d.Friction + d.Acceleration
	d.Entry = in.Air.Fan.Entry * d.Bank
	if d.Density = d.Inlet; in.Air.Fan.Induced {
		d.Density = d.Outlet
	}
	d.Volume = flux * face / d.Density
	if area := in.Air.Fan.Area; area > 0 {
		v := d.Volume / area
		d.Head = d.Density * v * v / 2
	}
	d.Pressure = d.Bank + d.Entry + d.Head
	d.Power = exchanger.FanPower(d.Volume, d.Pressure, in.Air.Fan.Efficiency)
	return d
}
