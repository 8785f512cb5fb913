package rating

import (
	"math"

	"finwright/core/airside"
	"finwright/core/units"
)

// TubePitch returns the pitch [m] across the stream: as given, or as close as the clearance allows.
//
// Valid: any bank.
// Source: plane geometry.
func (in *Input) TubePitch() units.Length {
	if in.Bank.TubePitch > 0 {
		return in.Bank.TubePitch
	}
	return in.Tube.FinOD() + in.Bank.Clearance
}

// RowPitch returns the pitch [m] along the stream: as given, equilateral where the
// rows are staggered, square in line.
//
// Valid: any bank.
// Source: plane geometry.
func (in *Input) RowPitch() units.Length {
	switch {
	case in.Bank.RowPitch > 0:
		return in.Bank.RowPitch
	case in.Bank.Layout == airside.Staggered:
		return in.TubePitch() * units.Length(math.Sqrt(3)/2)
	}
	return in.TubePitch()
}

// Pitches returns the tubes as the air sees them. Fins count from the diameter
// from which they spring.
func (in *Input) Pitches() airside.Bank {
	t := &in.Tube
	return airside.Bank{
		Layout:          in.Bank.Layout,
		OD:              float64(t.RootOD()),
		FinOD:           float64(t.FinOD()),
		FinPitch:        float64(t.Pitch()),
		RootThickness:   float64(t.Thickness(t.RootOD() / 2)),
		MeanThickness:   float64(t.MeanThickness()),
		AreaRatio:       t.Areas().Ratio(),
		TransversePitch: float64(in.TubePitch()),
		RowPitch:        float64(in.RowPitch()),
		Rows:            in.Bank.Rows,
		TubesPerRow:     in.Bank.TubesPerRow,
	}
}

// Between returns the least distance [m] between axes of neighbours, and whether the row pitch governs it.
//
// Valid: any bank.
// Source: plane geometry.
func (in *Input) Between() (least float64, byRow bool) {
	b := airside.Bank{TransversePitch: float64(in.TubePitch()), RowPitch: float64(in.RowPitch())}
	next := b.RowPitch
	if in.Bank.Layout == airside.Staggered {
		next = b.DiagonalPitch()
	}
	return min(b.TransversePitch, next), next < b.TransversePitch
}
