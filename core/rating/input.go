// Package rating computes what a finned tube and a bank of such tubes do: SI in,
// SI out. It knows no document, no fields and no texts.
package rating

import (
	"finwright/core/airside"
	"finwright/core/fluid"
	"finwright/core/material"
	"finwright/core/tube"
	"finwright/core/units"
)

// Input is a tube, the bank that it stands in, and the streams on both sides.
type Input struct {
	Tube      tube.Tube
	TubeMetal material.Metal
	FinMetal  material.Metal
	Air       Air
	Bank      Bank
	Process   Process
	Beyond    Cases   // what the tube must bear beyond normal running
	Strain    float64 // [-] elastic, left in wound strip; 0: bond.DefaultStrain
	Holds     Holds
}

// Air is the gas outside.
type Air struct {
	FilmGiven  bool
	Film       units.FilmCoefficient // on the whole outside surface, if it is given; else it follows from the bank
	FilmError  float64               // [-] by which the film in force is taken to be off; no design has one
	FilmMethod string                // of airside.FilmMethods, or ByRule
	DropMethod string                // of airside.DropMethods, or ByRule
	Metal      Optional              // [C] at which conductivities are read; not stated: what the bank finds
	Kind       GasKind
	Gas        fluid.Properties // of the user's own gas, constant
	Flue       Flue
	In         units.Temperature // where it meets the bank
	Humidity   float64           // relative [-]
	Altitude   units.Length
	Velocity   float64 // [m/s] at the face, in the state that Basis names
	Basis      VelocityBasis
	Fouling    float64 // [m2 K/W] on the total area
	Fan        Fan
}

// Fan is what moves the gas, and through what besides the bank.
type Fan struct {
	Efficiency float64  // [-] of fan, drive and motor
	Induced    bool     // it stands behind the bank, and moves the gas as it leaves
	Entry      float64  // [-] drop of plenum, screen and louvre as a share of the bank's
	Area       float64  // [m2] of all fans; 0: not stated
	Coldest    Optional // [C] air in which it runs
	Bears      Optional // [C] that an induced fan bears
}

// Bank is how the tubes stand in the stream.
type Bank struct {
	Layout      airside.Layout
	Clearance   units.Length // least gap between fin tips of neighbours
	TubePitch   units.Length // across the stream; 0: as close as the clearance allows
	RowPitch    units.Length // along it; 0: equilateral, or square in line
	Rows        int
	TubesPerRow int
	Passes      int
	DutyWanted  float64 // [W]; 0: none
	DropAllowed float64 // [Pa]; 0: none
}

// Fluid is what the process stream is.
type Fluid string

// Fluids.
const (
	Water     Fluid = "water"
	Ethylene  Fluid = "ethylene_glycol"  // with water
	Propylene Fluid = "propylene_glycol" // with water
	Steam     Fluid = "steam"            // saturated, condensing at the inlet temperature
	OwnFluid  Fluid = "own"
)

// Process is the stream in the tubes.
type Process struct {
	Fluid       Fluid
	Glycol      float64          // share by mass [-], of a glycol with water
	Own         fluid.Properties // at OwnAt, or constant where Points is 1
	OwnAt       units.Temperature
	More        [MostPoints - 1]OwnPoint // of the same fluid at other temperatures
	Points      int                      // how many count, the first among them
	Pour        Optional                 // [C] below which an own liquid stops
	In          units.Temperature
	Flow        float64  // [kg/s] in all tubes
	Out         Optional // [C] wanted, mixed
	Third       Third    // which of flow, outlet and duty followed from the other two
	Volume      Optional // [m3/s] in all tubes, in the state of the inlet, where the flow is stated so
	Pressure    Optional // [Pa] absolute, at the inlet
	Gauge       Optional // [Pa] over the air about, where the pressure is stated so
	Vapour      Optional // [Pa] at which an own liquid boils where it is hottest
	Gas         bool     // an own fluid is one, of the density at the inlet pressure
	DropAllowed float64  // [Pa]; 0: none
	Fouling     float64  // [m2 K/W] on the inside area
	Bond        Optional // [m2 K/W] on the bare area; not stated: the default of the fin type
}

// StreamPressure returns the pressure [Pa] at which the properties of water are taken: the one stated, or one at
// which it stays liquid in all of the bank, since they hardly change with it.
//
// Valid: water.
// Source: a tenth over saturation where it would boil: engineering judgement.
func (in *Input) StreamPressure() float64 {
	if in.Process.Pressure.Stated {
		return in.Process.Pressure.SI
	}
	hottest, err := fluid.SaturationPressure(float64(max(in.Process.In, in.Air.In)) + zeroCelsius)
	if err != nil {
		return fluid.StandardPressure // the properties themselves say what is beyond them
	}
	return max(fluid.StandardPressure, 1.1*hottest)
}

// MostPoints is at how many temperatures an own fluid may be known.
const MostPoints = 3

// OwnPoint is an own fluid at one temperature.
type OwnPoint struct {
	At units.Temperature
	fluid.Properties
}

// Optional is a number that need not be stated.
type Optional struct {
	SI     float64
	Stated bool
}

// Bond returns the resistance of the joint between fin and tube [m2 K/W] on the bare area.
//
// Valid: any fin type.
// Source: stated, or tube.Fixing: engineering judgement, editable.
func (in *Input) Bond() float64 {
	if in.Process.Bond.Stated {
		return in.Process.Bond.SI
	}
	return in.Tube.Fin.Type.Fixing().Bond.SI
}
