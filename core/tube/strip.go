package tube

import (
	"math"

	"finwright/core/units"
)

// finPerInch is one fin per inch, by which the width rules of knurled and lapped feet step.
const finPerInch = units.PerLength(1 / 0.0254)

// FewerFins returns by how many fins per inch [-] fewer a foot is cut than wound: one for a
// knurl, and one for a lap unless the lap is given; none where the shop says how far its feet reach.
//
// Valid: fin types with a foot.
// Source: common practice, no source; the plain lapped rule is engineering judgement.
func (t *Tube) FewerFins() int {
	fewer := 0
	if t.developed() {
		return fewer
	}
	if t.Fin.Type.Knurled() {
		fewer++
	}
	if t.Fin.Type.Lapped() && t.Fin.Lap == 0 {
		fewer++
	}
	return fewer
}

// FootReach returns the length of strip [m] that a foot needs along the tube: the
// pitch for which it is cut, and a lap that is given. It is 0 for types without a foot.
//
// Valid: more fins per inch than FewerFins.
// Source: FewerFins.
func (t *Tube) FootReach() units.Length {
	if t.Fin.Type.FootLayers() == 0 {
		return 0
	}
	reach := (t.Fin.Count - units.PerLength(t.FewerFins())*finPerInch).Spacing()
	if t.developed() && t.Fin.Type.Knurled() {
		reach += t.Fin.Foot.Knurl
	}
	switch {
	case !t.Fin.Type.Lapped():
	case t.Fin.Lap > 0:
		reach += t.Fin.Lap
	case t.developed():
		reach += t.Fin.Foot.Lap
	}
	return reach
}

// FootLap returns by how much [m] a foot lies under its neighbour: what its reach adds to
// that of one that does not lap. It is 0 where the width rule has no meaning.
//
// Valid: as FootReach.
// Source: FewerFins.
func (t *Tube) FootLap() units.Length {
	single := *t
	single.Fin.Type = Footed
	if t.Fin.Type.Knurled() {
		single.Fin.Type = KnurledFooted
	}
	if lap := t.FootReach() - single.FootReach(); lap > 0 {
		return lap
	}
	return 0
}

// StripWidth returns the width of strip [m] to slit: with a foot as footWidth says,
// hf + groove when embedded, hf on edge. With a foot it suits one pitch only.
// It is 0 for an extruded fin, which is not made from strip.
//
// Valid: as footWidth and FootReach.
// Source: as footWidth; common practice, no source.
func (t *Tube) StripWidth() units.Length {
	switch t.Fin.Type.Fixing().Section {
	case MuffSection:
		return 0
	case FootSection:
		return t.footWidth()
	case GrooveSection:
		return t.Fin.Height + t.Fin.Groove
	}
	return t.Fin.Height
}

// StripPerMetre returns metres of strip per metre of finned length, n pi times TurnOD:
// the helix adds only 0.05 % [m/m].
//
// Valid: wound types; 1.00 to 1.02 times this is measured on lines, engineering judgement.
// Source: common practice, no source.
func (t *Tube) StripPerMetre() float64 {
	return t.Fin.Count.PerMetre() * math.Pi * float64(t.TurnOD())
}

// FinMass returns the fin's mass per metre of finned length [kg/m]: the strip's,
// strip per metre times w t rho, or the muff's when extruded.
//
// Valid: as StripWidth and FinVolume.
// Source: volume times density.
func (t *Tube) FinMass() units.MassPerLength {
	rho := float64(t.Fin.Density)
	if t.Fin.Type.Wound() {
		return units.MassPerLength(t.StripPerMetre() * float64(t.StripWidth()) * float64(t.Fin.Strip) * rho)
	}
	d, root := float64(t.OD), float64(t.RootOD())
	muff := math.Pi / 4 * (root*root - d*d)
	return units.MassPerLength((muff + t.Fin.Count.PerMetre()*t.FinVolume()) * rho)
}

// FinVolume returns the volume of one fin above its root [m3], the integral of 2 pi r t(r).
//
// Valid: as Thickness; a disc.
// Source: plane geometry.
func (t *Tube) FinVolume() float64 {
	root, tip := float64(t.RootOD())/2, float64(t.FinOD())/2
	s := float64(t.Fin.Strip)
	switch t.Profile() {
	case Rolled:
		return math.Pi * float64(t.OD) * s * (tip - root)
	case Linear:
		slope := (float64(t.Fin.TipGiven) - s) / (tip - root)
		return 2 * math.Pi * ((s-slope*root)*(tip*tip-root*root)/2 + slope*(tip*tip*tip-root*root*root)/3)
	}
	return math.Pi * s * (tip*tip - root*root)
}

// TubeMass returns the bare tube's mass per metre [kg/m], pi (d - w) w rho; the metal
// of a groove is displaced and still counts.
//
// Valid: mean wall up to half of OD.
// Source: plane geometry.
func (t *Tube) TubeMass() units.MassPerLength {
	d, w := float64(t.OD), float64(t.MeanWall())
	return units.MassPerLength(math.Pi * (d - w) * w * float64(t.Density))
}

// Weight returns the mass of one finned tube [kg].
//
// Valid: as TubeMass, FinMass and FinnedLength.
// Source: addition.
func (t *Tube) Weight() units.Mass {
	return units.Mass(float64(t.TubeMass())*float64(t.Length) + float64(t.FinMass())*float64(t.FinnedLength()))
}
