package making

import (
	"math"

	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// SlitStep is the step to which strip is slit.
//
// Source: slitting tolerance +/- 0.1 mm, from memory.
const SlitStep = 0.1 * units.Millimetre

// Strip is what is ordered from the strip mill, and what one tube takes of it.
type Strip struct {
	Width     units.Length // by the rule of the fin type; suits one pitch only
	Slit      units.Length // as ordered
	Thickness units.Length
	Density   units.Density
	Kept      units.Length // on one finished tube
	Lost      units.Length // in the run-downs of one tube
}

// PerTube returns the strip [m] that winding one tube takes.
//
// Valid: any strip.
// Source: addition.
func (s *Strip) PerTube() units.Length { return s.Kept + s.Lost }

// Mass returns the mass [kg] of a length of this strip as slit.
//
// Valid: any length.
// Source: StripMass.
func (s *Strip) Mass(length units.Length) units.Mass {
	return StripMass(length, s.Slit, s.Thickness, s.Density)
}

// StripOf returns the strip [m] of an order's tube: turns times a turn along the neutral
// line, times the ratio that the shop measures.
//
// Valid: wound types.
// Source: common practice, no source; the ratio of 1.00 to 1.02 is engineering judgement, editable.
func StripOf(t *tube.Tube, m *shop.Practice, p *Programme) Strip {
	turn := math.Pi * float64(t.TurnOD()) * m.StripRatio
	width := t.StripWidth()
	return Strip{
		Width: width, Slit: SlitStep * units.Length(math.Round(float64(width/SlitStep))),
		Thickness: t.Fin.Strip, Density: t.Fin.Density,
		Kept: units.Length(p.Turns() * turn), Lost: units.Length(p.LostTurns() * turn),
	}
}

// JointsAllowed returns how many joints a tube of this length may carry.
//
// Source: a public specification of embedded finning allows one up to 6 m and two above,
// 3 m apart; for other types engineering judgement, editable.
func JointsAllowed(j *shop.Joints, length units.Length) int {
	if length <= j.Until*(1+shop.Slack) {
		return j.Short
	}
	return j.Long
}
