package design

import (
	"math"

	"finwright/core/field"
	"finwright/core/units"
)

// MoreFigures are what is told of a design beside RowFigures where it stands next to others: the bank as a whole, and what one
// tube carries of its duty, since whole tubes make steps. All but that one are figures of the full answer.
var MoreFigures = []RowFigure{
	{"ua", units.Transfer, atWork, func(s *sources) float64 { return UA(&s.heat.Thermal) }},
	{"duty_per_tube", units.Duty, atWork, func(s *sources) float64 {
		return math.Abs(s.heat.Thermal.Duty.Heat) / float64(s.heat.Thermal.Bank.Tubes())
	}},
	{"fan_power", units.Drive, dropped, func(s *sources) float64 { return s.heat.Thermal.Draught(&s.in.Input).Power }},
	{"bank_tubes", units.Count, always, func(s *sources) float64 { return float64(s.in.Bank.Rows * s.in.Bank.TubesPerRow) }},
	{"face_area", units.SurfacePerTube, atWork, func(s *sources) float64 { return s.heat.Thermal.Bank.FaceArea() }},
	{"mass_dry", units.Weight, always, func(s *sources) float64 {
		return float64(s.in.Bank.Rows*s.in.Bank.TubesPerRow) * float64(s.in.Tube.Weight())
	}},
}

// BesideOf is RowOf with the cells of MoreFigures behind, and all that is remarked on.
func BesideOf(in field.Input) (Row, []Notice, error) {
	var said []Notice
	row, s, err := rowOf(&workplace{in: in}, func(found []Notice) { said = append(said, found...) })
	if err != nil {
		return row, nil, err
	}
	row.read(s, MoreFigures)
	return row, said, nil
}
