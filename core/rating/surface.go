package rating

import (
	"finwright/core/airside"
	"finwright/core/fin"
	"finwright/core/tube"
	"finwright/core/units"
)

// Surface holds the numbers of the finned surface; a sweep makes thousands, so it allocates nothing.
type Surface struct {
	Areas        tube.Areas
	Film         units.FilmCoefficient
	Conductivity units.Conductivity // of the fin
	Fin          fin.Result
	UniformEta   float64             // what a fin of one thickness would have [-]
	SurfaceEta   float64             // [-]
	Used         units.AreaPerLength // total area times surface efficiency
}

// Surface evaluates the finned surface of in: areas [m2/m], film [W/(m2 K)], efficiencies [-]. The film comes from the gas
// stream of near, the bank as rated or one close by; near is not looked at where the film is given.
//
// Valid: an Input that has been checked.
// Source: tube.Tube.Areas, fin.Solve, fin.SurfaceEfficiency.
func (in *Input) Surface(near *Thermal) Surface {
	t := &in.Tube
	conductivity, _ := in.FinMetal.ConductivityAt(in.Air.Metal)
	k, h := float64(conductivity), in.filmNear(near)
	s := Surface{Areas: t.Areas(), Conductivity: conductivity, Film: units.FilmCoefficient(h), Fin: fin.Solve(Disc(t, k), h)}
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

// filmNear returns the film coefficient in force [W/(m2 K)]: the one given, or that of
// the correlation in use in the stream of near.
func (in *Input) filmNear(near *Thermal) float64 {
	if in.Air.FilmGiven {
		return float64(in.Air.Film)
	}
	return airside.FilmMethods[in.Pair().Film].Compute(in.Pitches(), near.Flow).Coefficient
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
