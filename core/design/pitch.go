package design

import (
	"math"

	"finwright/core/airside"
	"finwright/core/exchanger"
	"finwright/core/units"
)

// tubePitch returns the pitch across the stream: as given, or as close as the clearance allows.
func (in *Input) tubePitch() units.Length {
	if in.Bank.TubePitch > 0 {
		return in.Bank.TubePitch
	}
	return in.Tube.FinOD() + in.Bank.Clearance
}

// rowPitch returns the pitch along the stream: as given, equilateral where the
// rows are staggered, square in line.
func (in *Input) rowPitch() units.Length {
	switch {
	case in.Bank.RowPitch > 0:
		return in.Bank.RowPitch
	case in.Bank.Layout == airside.Staggered:
		return in.tubePitch() * units.Length(math.Sqrt(3)/2)
	}
	return in.tubePitch()
}

// bank returns the tubes as the air sees them. Fins count from the diameter
// from which they spring.
func (in *Input) bank() airside.Bank {
	t := &in.Tube
	return airside.Bank{
		Layout:          in.Bank.Layout,
		OD:              float64(t.RootOD()),
		FinOD:           float64(t.FinOD()),
		FinPitch:        float64(t.Pitch()),
		RootThickness:   float64(t.Thickness(t.RootOD() / 2)),
		MeanThickness:   float64(t.MeanThickness()),
		AreaRatio:       t.Areas().Ratio(),
		TransversePitch: float64(in.tubePitch()),
		RowPitch:        float64(in.rowPitch()),
		Rows:            in.Bank.Rows,
		TubesPerRow:     in.Bank.TubesPerRow,
	}
}

// between returns the least distance between neighbours, and whether the row pitch governs it.
func (in *Input) between() (least float64, byRow bool) {
	b := in.bank()
	next := b.RowPitch
	if b.Layout == airside.Staggered {
		next = b.DiagonalPitch()
	}
	return min(b.TransversePitch, next), next < b.TransversePitch
}

// closestPitch names the entry that brings neighbours closest; an empty row pitch follows from the tube pitch.
func (in *Input) closestPitch() string {
	if _, byRow := in.between(); byRow && in.Bank.RowPitch > 0 {
		return "row_pitch"
	}
	return "tube_pitch"
}

func pitchFindings(in *Input) []exchanger.Finding {
	least, _ := in.between()
	return exchanger.CheckPitch(least, float64(in.Tube.FinOD()), float64(in.Bank.Clearance))
}
