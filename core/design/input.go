// Package design combines the packages below it: it reads a document into an
// Input, checks it, evaluates it, and sweeps it over one or two of its numbers.
package design

import (
	"finwright/core/fin"
	"finwright/core/material"
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
}

// Job is what was asked for.
type Job struct {
	Quantity  int
	FreeIssue bool // the customer supplies the tubes
	Spares    int  // further tubes supplied by the customer
}

// Air is what the outside is given until the heat step computes it.
type Air struct {
	Film  units.FilmCoefficient // on the whole outside surface
	Metal units.Temperature     // at which conductivities are read
}

// State holds the numbers of one evaluated design; a sweep makes thousands, so it allocates nothing.
type State struct {
	Areas        tube.Areas
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
	k, h := float64(conductivity), float64(in.Air.Film)
	s := State{Areas: t.Areas(), Conductivity: conductivity, Fin: fin.Solve(Disc(t, k), h)}
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
