package tube

import (
	"math"

	"finwright/core/units"
)

// Tube is one finned tube as ordered.
type Tube struct {
	OD      units.Length
	Wall    units.Length // as stated; see Basis
	Basis   WallBasis
	Length  units.Length // overall
	PlainA  units.Length // unfinned end at the left of the drawing
	PlainB  units.Length // unfinned end at the right
	Spans   []Span       // unfinned stretches between the ends
	Density units.Density
	Fin     Fin
}

// Span is a bare stretch of tube at a support.
type Span struct {
	Centre units.Length // from end A
	Width  units.Length
}

// Fin is the fin on it.
type Fin struct {
	Type     FinType
	Height   units.Length    // above the bare tube surface
	Strip    units.Length    // thickness at the tube: the strip as bought
	Count    units.PerLength // fins per metre
	Profile  Profile
	TipGiven units.Length // measured tip thickness, for Linear
	Groove   units.Length // depth, where there is one
	Lap      units.Length // foot lap, for the lapped types; 0 means by rule
	Foot     Foot         // how the shop cuts strip for a foot
	Sleeve   units.Length // muff thickness between fins, where there is one
	Root     RootBasis
	Density  units.Density
}

// FinOD returns d + 2 hf [m].
//
// Valid: any type: the height counts from the bare tube.
// Source: plane geometry.
func (t *Tube) FinOD() units.Length { return t.OD + 2*t.Fin.Height }

// Pitch returns the distance from fin to fin [m].
//
// Valid: a positive count.
// Source: definition.
func (t *Tube) Pitch() units.Length { return t.Fin.Count.Spacing() }

// Gap returns the clear gap between fins at the tube [m], p - t.
//
// Valid: strip thinner than the pitch.
// Source: plane geometry.
func (t *Tube) Gap() units.Length { return t.Pitch() - t.Fin.Strip }

// FootThickness returns what lies on the tube between fins [m]: the foot's layers or the muff.
//
// Valid: feet as thick as the strip bought.
// Source: as FinType.FootLayers.
func (t *Tube) FootThickness() units.Length {
	if !t.Fin.Type.Wound() {
		return t.Fin.Sleeve
	}
	return units.Length(t.Fin.Type.FootLayers()) * t.Fin.Strip
}

// RootOD returns the diameter [m] from which the fin is counted: the tube, the
// outside of the foot if so chosen, and always the outside of an extruded muff.
//
// Valid: as FootThickness.
// Source: plane geometry. Handbooks' tables count from the bare tube (from memory).
func (t *Tube) RootOD() units.Length {
	if !t.Fin.Type.Wound() || t.Fin.Root == FromFoot {
		return t.OD + 2*t.FootThickness()
	}
	return t.OD
}

// Profile returns the thickness law in force, AsMade resolved.
func (t *Tube) Profile() Profile {
	if t.Fin.Profile != AsMade {
		return t.Fin.Profile
	}
	if t.Fin.Type.Tapers() {
		return Rolled
	}
	return Uniform
}

// TurnOD returns the diameter [m] of a turn of strip along its neutral line: the tube where it is rolled to a taper. Of strip
// that is bent on edge the line lies between the tube and the fin's mid-height, and this is the latter, the heavier reading:
// it is what must be bought and lifted, until the shop has measured its own ratio.
//
// Valid: wound types.
// Source: common practice, no source; mid-height is where bending on edge without rolling has its neutral line.
func (t *Tube) TurnOD() units.Length {
	if t.Fin.Type.Tapers() || t.Profile() == Rolled {
		return t.OD
	}
	return t.OD + t.Fin.Height
}

// Thickness returns the fin's thickness [m] at radius r [m].
//
// The neutral line of rolled strip lies at the tube surface, so the volume of
// each ring is kept where t(r) = t d/2r.
// Valid: tube surface <= r <= fin tip.
// Source: volume conservation; the tip value t d/Df is common practice, no source.
func (t *Tube) Thickness(r units.Length) units.Length {
	switch t.Profile() {
	case Rolled:
		return t.Fin.Strip * t.OD / (2 * r)
	case Linear:
		root, tip := t.RootOD()/2, t.FinOD()/2
		return t.Fin.Strip + (t.Fin.TipGiven-t.Fin.Strip)*(r-root)/(tip-root)
	}
	return t.Fin.Strip
}

// TipThickness returns the thickness at the fin tip [m].
//
// Valid: as Thickness.
// Source: as Thickness.
func (t *Tube) TipThickness() units.Length { return t.Thickness(t.FinOD() / 2) }

// MeanThickness returns the thickness [m] averaged over the fin's height, as a
// tube bank's free area needs it. For the rolled taper it is t d ln(Df/Dr)/(Df - Dr).
//
// Valid: as Thickness.
// Source: mean of Thickness over the radius, derived here.
func (t *Tube) MeanThickness() units.Length {
	root, tip := float64(t.RootOD()), float64(t.FinOD())
	switch t.Profile() {
	case Rolled:
		return t.Fin.Strip * t.OD * units.Length(math.Log(tip/root)/(tip-root))
	case Linear:
		return (t.Fin.Strip + t.Fin.TipGiven) / 2
	}
	return t.Fin.Strip
}

// HelixAngle returns the lead angle [rad] of the fin at the tube, atan(p/(pi d)).
//
// Valid: one start.
// Source: plane geometry.
func (t *Tube) HelixAngle() units.Angle {
	return units.Angle(math.Atan(float64(t.Pitch()) / (math.Pi * float64(t.OD))))
}

// Obstruction returns the width that a tube presents to a crossing stream, per
// metre of tube, fins included [m2/m]: Dr + 2 n (fin height) (mean thickness).
//
// Valid: as MeanThickness.
// Source: plane geometry.
func (t *Tube) Obstruction() units.Length {
	n := t.Fin.Count.PerMetre()
	return t.RootOD() + units.Length(n)*(t.FinOD()-t.RootOD())*t.MeanThickness()
}

// Stretch returns Df/d [-], by which the strip's outer edge is longer than its inner.
//
// Valid: wound types.
// Source: plane geometry; the neutral line lies at the tube, common practice, no source.
func (t *Tube) Stretch() float64 { return float64(t.FinOD() / t.OD) }
