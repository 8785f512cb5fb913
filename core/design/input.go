// Package design combines the packages below it: it reads a document into an
// Input, checks it, evaluates it, and sweeps it over one or two of its numbers.
package design

import (
	"finwright/core/airside"
	"finwright/core/exchanger"
	"finwright/core/fin"
	"finwright/core/fluid"
	"finwright/core/material"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// Input is a design in SI, read and checked.
type Input struct {
	Job       Job
	Tube      tube.Tube
	TubeMetal material.Metal
	FinMetal  material.Metal
	Air       Air
	Bank      Bank
	Process   Process
	Limits    Limits
	Wish      Wish
	Shop      *shop.Capability // that is to make it; nil: what a shop can do is not judged

	// The gas stream and the correlation that Settle found, from which a sweep
	// takes the film of each of its designs.
	stream airside.Flow
	method int
	state  *means // the temperatures found, from which a rating starts
}

// Job is what was asked for.
type Job struct {
	Quantity  int
	FreeIssue bool // the customer supplies the tubes
	Spares    int  // further tubes supplied by the customer
}

// Air is the gas outside.
type Air struct {
	FilmGiven     bool
	Film          units.FilmCoefficient // on the whole outside surface; Settle computes it unless it is given
	Metal         units.Temperature     // at which conductivities are read
	OwnGas        bool
	Gas           fluid.Properties  // of the user's own gas, constant
	In            units.Temperature // where it meets the bank
	Humidity      float64           // relative [-]
	Altitude      units.Length
	Velocity      float64 // [m/s] at the face, in the state of the inlet
	Fouling       float64 // [m2 K/W] on the total area
	FanEfficiency float64 // [-]
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
	Water    Fluid = "water"
	Steam    Fluid = "steam" // saturated, condensing at the inlet temperature
	OwnFluid Fluid = "own"
)

// Process is the stream in the tubes.
type Process struct {
	Fluid    Fluid
	Own      fluid.Properties // constant
	In       units.Temperature
	Flow     float64 // [kg/s] in all tubes
	Pressure float64 // [Pa] absolute
	Fouling  float64 // [m2 K/W] on the inside area
	Bond     float64 // [m2 K/W] on the bare area
}

// Wish is what the order states of its making, over what the shop does otherwise.
type Wish struct {
	Line      string        // by its name; empty: the one that suits best
	LeastWall units.Length  // below groove or knurl, for pressure and corrosion; 0: none stated
	Tolerance *units.Length // of a zone's edge
	Joints    *int          // of the strip, on one tube
	Margin    *float64      // on cost [-]
}

// Limits are the temperatures that the tube must bear beyond the normal one.
type Limits struct {
	Cases map[exchanger.Case]float64 // [C] process temperature of each stated case
	House *float64                   // [C] the house's own limit, where it is not the shipped one
}

// State holds the numbers of one evaluated design; a sweep makes thousands, so it allocates nothing.
type State struct {
	Areas        tube.Areas
	Film         units.FilmCoefficient
	Conductivity units.Conductivity // of the fin
	Fin          fin.Result
	UniformEta   float64             // what a fin of one thickness would have [-]
	SurfaceEta   float64             // [-]
	Used         units.AreaPerLength // total area times surface efficiency
}

// Solve evaluates in.
//
// Valid: an Input that Read has passed.
func Solve(in Input) State { return solve(&in) }

func solve(in *Input) State {
	t := &in.Tube
	conductivity, _ := in.FinMetal.ConductivityAt(in.Air.Metal)
	k, h := float64(conductivity), in.film()
	s := State{Areas: t.Areas(), Conductivity: conductivity, Film: units.FilmCoefficient(h), Fin: fin.Solve(Disc(t, k), h)}
	s.UniformEta = s.Fin.Efficiency
	if t.Profile() != tube.Uniform {
		flat := Disc(t, k)
		flat.Profile = fin.Uniform
		s.UniformEta = fin.Solve(flat, h).Efficiency
	}
	s.SurfaceEta = fin.SurfaceEfficiency(float64(s.Areas.Fin()), float64(s.Areas.Total()), s.Fin.Efficiency)
	s.Used = s.Areas.Total() * units.AreaPerLength(s.SurfaceEta)
	return s
}

// film returns the film coefficient in force [W/(m2 K)]: the user's, or that of
// the correlation in use for the stream that Settle found.
func (in *Input) film() float64 {
	if in.Air.FilmGiven {
		return float64(in.Air.Film)
	}
	return airside.FilmMethods[in.method].Compute(in.bank(), in.stream).Coefficient
}

var profiles = map[tube.Profile]fin.Profile{tube.Rolled: fin.RolledTaper, tube.Uniform: fin.Uniform, tube.Linear: fin.LinearTaper}

// Disc returns the fin of t as heat conduction sees it, k in W/(m K). The tip
// is adiabatic: the edge's area counts at the efficiency of the faces.
func Disc(t *tube.Tube, k float64) fin.Fin {
	return fin.Fin{
		Profile:       profiles[t.Profile()],
		RootRadius:    float64(t.RootOD()) / 2,
		TipRadius:     float64(t.FinOD()) / 2,
		RootThickness: float64(t.Thickness(t.RootOD() / 2)),
		TipThickness:  float64(t.TipThickness()),
		Conductivity:  k,
	}
}
