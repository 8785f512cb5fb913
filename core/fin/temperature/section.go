// Package temperature solves steady heat conduction in one pitch of a finned tube:
// tube wall, groove or foot, bond and fin together, round the axis of the tube.
//
// Everything is bare SI float64; temperatures are degrees Celsius. The helix is
// taken as discs, and the film coefficients and conductivities are constant.
package temperature

import "finwright/core/fin"

// Section is one pitch of the tube cut through its axis. x runs along the tube
// from the heel of the fin, so that the fin stands on 0 <= x <= Thickness.
//
// Valid: 0 < BoreRadius < TubeRadius - Groove; TubeRadius + Foot < FinRadius;
// Thickness < Pitch; Groove and Foot not both; every conductivity and film
// positive. Solve panics on anything else.
type Section struct {
	BoreRadius   float64     // [m]
	TubeRadius   float64     // [m]
	FinRadius    float64     // [m]
	Pitch        float64     // [m]
	Profile      fin.Profile // of the fin above the tube surface
	Thickness    float64     // [m] at the tube surface, and in the groove
	TipThickness float64     // [m] for fin.LinearTaper only

	Groove float64 // [m] depth to which the fin is let into the tube
	Foot   float64 // [m] thickness of the foot, or of a muff, on the tube between fins
	Slit   bool    // the foot's toe does not touch the next fin's heel

	TubeConductivity float64 // [W/(m K)]
	FinConductivity  float64 // [W/(m K)] fin and foot
	Bond             float64 // [m2 K/W] on the area in contact: see bond.OnContact

	InsideFilm  float64 // [W/(m2 K)] fouling included
	OutsideFilm float64 // [W/(m2 K)] on every wetted face, fouling included
}

// Fin returns the same fin as a one-dimensional one, with its edge wetted.
func (s Section) Fin() fin.Fin {
	return fin.Fin{
		Profile:       s.Profile,
		Tip:           fin.Convective,
		RootRadius:    s.TubeRadius,
		TipRadius:     s.FinRadius,
		RootThickness: s.Thickness,
		TipThickness:  s.TipThickness,
		Conductivity:  s.FinConductivity,
	}
}

// faces returns where the two faces of the fin lie [m] at radius r [m].
func (s Section) faces(r float64) (heel, toe float64) {
	t := s.Thickness
	if r > s.TubeRadius {
		t = s.Fin().ThicknessAt(r)
	}
	return (s.Thickness - t) / 2, (s.Thickness + t) / 2
}

// rootRadius returns the radius from which the fin stands free [m].
func (s Section) rootRadius() float64 { return s.TubeRadius + s.Foot }

func (s Section) wellFormed() bool {
	return s.BoreRadius > 0 && s.Groove >= 0 && s.Foot >= 0 && s.Groove*s.Foot == 0 &&
		s.BoreRadius < s.TubeRadius-s.Groove && s.rootRadius() < s.FinRadius &&
		s.Thickness > 0 && s.Thickness < s.Pitch &&
		(s.Profile != fin.LinearTaper || s.TipThickness > 0) &&
		s.TubeConductivity > 0 && s.FinConductivity > 0 && s.Bond >= 0 &&
		s.InsideFilm > 0 && s.OutsideFilm > 0
}
