package design

import (
	"finwright/core/message"
	"finwright/core/units"
)

// Auto returns what stands in for each optional entry that may be left empty.
func Auto(in Input) map[string]message.Quantity {
	out := map[string]message.Quantity{
		"tube_pitch":      of(units.Diameter, in.TubePitch()),
		"row_pitch":       of(units.Diameter, in.RowPitch()),
		"bond_resistance": {Kind: units.Resist, SI: in.Tube.Fin.Type.Fixing().Bond.SI},
	}
	if t := &in.Tube; t.Fin.Type.Lapped() {
		lapless := *t
		lapless.Fin.Lap = 0
		out["foot_lap"] = of(units.Height, lapless.FootReach()-lapless.Pitch())
	}
	if house := in.Tube.Fin.Type.Fixing().Limits.House; house.Known() {
		out["house_limit"] = message.Quantity{Kind: units.Temp, SI: house.SI}
	}
	return out
}
