package design

import (
	"finwright/core/exchanger"
	"finwright/core/field"
)

// closestPitch names the entry that brings neighbours closest; an empty row pitch follows from the tube pitch.
func closestPitch(in *field.Input) string {
	if _, byRow := in.Between(); byRow && in.Bank.RowPitch > 0 {
		return "row_pitch"
	}
	return "tube_pitch"
}

func pitchFindings(in *field.Input) []exchanger.Finding {
	least, _ := in.Between()
	return exchanger.CheckPitch(least, float64(in.Tube.FinOD()), float64(in.Bank.Clearance))
}
