package rating

import (
	"finwright/core/airside"
	"finwright/core/fin"
	"finwright/core/material"
	"finwright/core/tube"
	"finwright/core/units"
)

// Surface holds the numbers of the finned surface; a sweep makes thousands, so it allocates nothing.
type Surface struct {
	Areas        tube.Areas
	Film         units.FilmCoefficient // that the fin meets: under its dirt, where there is some
	Conductivity units.Conductivity    // of the fin
	FinAt        units.Temperature     // where that is read
	Fin          fin.Result
	SurfaceEta   float64             // [-]
	Used         units.AreaPerLength // total area times surface efficiency
}

// Surface evaluates the finned surface of in: areas [m2/m], film [W/(m2 K)], efficiencies [-]. The film comes from the gas
// stream of near, the bank as rated or one close by; near may be nil where the film is given.
//
// Valid: an Input that has been checked.
// Source: tube.Tube.Areas, fin.Solve, fin.SurfaceEfficiency.
func (in *Input) Surface(near *Thermal) Surface {
	t := &in.Tube
	_, at := in.MetalTemperatures(near)
	k, h := in.conductivity(&in.FinMetal, at), in.dirty(in.filmNear(near))
	s := Surface{Areas: t.Areas(), Conductivity: units.Conductivity(k), FinAt: units.Temperature(at), Film: units.FilmCoefficient(h), Fin: fin.Solve(Disc(t, k), h)}
	s.SurfaceEta = fin.SurfaceEfficiency(float64(s.Areas.Fin()), float64(s.Areas.Total()), s.Fin.Efficiency)
	s.Used = s.Areas.Total() * units.AreaPerLength(s.SurfaceEta)
	return s
}

// UniformEta returns the efficiency [-] that fins of one thickness would have on t.
//
// Valid: s of Surface for t.
// Source: fin.Solve.
func (s *Surface) UniformEta(t *tube.Tube) float64 {
	flat := Disc(t, float64(s.Conductivity))
	flat.Profile = fin.Uniform
	return fin.Solve(flat, float64(s.Film)).Efficiency
}

// MetalTemperatures returns the temperatures [C] at which the conductivities of tube and fin are read: what the user gave, or the
// middle of the wall and the mean of a fin in the bank as rated; of a bank that could not be, the middle of the inlets.
//
// Valid: an Input that has been checked; near may be nil.
// Source: the resistances and the fin's efficiency, see settling.move.
func (in *Input) MetalTemperatures(near *Thermal) (tube, fin float64) {
	switch {
	case in.Air.Metal.Stated:
		return in.Air.Metal.SI, in.Air.Metal.SI
	case near != nil && near.Overall.OnBare > 0:
		return near.state.tube, near.state.fin
	}
	middle := float64(in.Air.In+in.Process.In) / 2
	return middle, middle
}

// conductivity returns that of a metal [W/(m K)] at the temperature that the user gave, or else at one that the bank finds [C].
func (in *Input) conductivity(m *material.Metal, found float64) float64 {
	if in.Air.Metal.Stated {
		found = in.Air.Metal.SI
	}
	k, _ := m.ConductivityAt(units.Temperature(found))
	return float64(k)
}

// dirty returns the coefficient [W/(m2 K)] that a fin meets under its dirt.
//
//	h' = 1/(1/h + Ro)
func (in *Input) dirty(film float64) float64 {
	if in.Air.Fouling == 0 {
		return film
	}
	return 1 / (1/film + in.Air.Fouling)
}

// filmNear returns the film coefficient in force [W/(m2 K)]: the one given, or that of
// the correlation in use in the stream of near.
func (in *Input) filmNear(near *Thermal) float64 {
	if in.Air.FilmGiven {
		return float64(in.Air.Film)
	}
	crossing := airside.Cross(in.Pitches(), near.Flow)
	return airside.FilmMethods[in.Pair().Film].Compute(&crossing).Coefficient
}

// Disc returns the fin of t as heat conduction sees it, k in W/(m K). The tip
// is adiabatic: the edge's area counts at the efficiency of the faces.
func Disc(t *tube.Tube, k float64) fin.Fin {
	root := t.RootOD() / 2
	return fin.Fin{
		Profile:       profileOf(t),
		RootRadius:    float64(root),
		TipRadius:     float64(t.FinOD()) / 2,
		RootThickness: float64(t.Thickness(root)),
		TipThickness:  float64(t.TipThickness()),
		Conductivity:  k,
	}
}

func profileOf(t *tube.Tube) fin.Profile {
	switch t.Profile() {
	case tube.Rolled:
		return fin.RolledTaper
	case tube.Linear:
		return fin.LinearTaper
	}
	return fin.Uniform
}
