package rating

import (
	"finwright/core/bond"
	"finwright/core/fin/temperature"
)

// MetalField solves the temperature in one pitch of the tube where its fins
// are hottest, with the films and dirt of the bank as rated.
//
// Source: package temperature; the section is the row and place of the hottest root.
func (in *Input) MetalField(t *Thermal) (temperature.Distribution, error) {
	at := t.Duty.HottestRoot
	return temperature.Solve(section(in, t), at.Process, at.Air, temperature.Page)
}

// section is one pitch of the tube as the solver needs it; dirt counts with its film.
func section(in *Input, t *Thermal) temperature.Section {
	tb := &in.Tube
	wall, middle := in.MetalTemperatures(t)
	k, kw := in.conductivity(&in.FinMetal, middle), in.conductivity(&in.TubeMetal, wall)
	od := float64(tb.OD)
	groove := 0.0
	if tb.Fin.Type.Grooved() {
		groove = float64(tb.Fin.Groove)
	}
	contact := bond.ContactArea(tb.Fin.Type.Fixing().Contact, od, float64(tb.Fin.Count), float64(tb.Fin.Strip), groove)
	return temperature.Section{
		BoreRadius: float64(tb.InsideOD()) / 2, TubeRadius: od / 2, FinRadius: float64(tb.FinOD()) / 2, Pitch: float64(tb.Pitch()),
		Profile: profileOf(tb), Thickness: float64(tb.Fin.Strip), TipThickness: float64(tb.TipThickness()),
		Groove: groove, Foot: float64(tb.FootThickness()), Slit: tb.Fin.Type.FootLayers() == 1,
		TubeConductivity: kw, FinConductivity: k, Bond: bond.OnContact(t.Joint.Resistance, od, contact),
		InsideFilm:  1 / (1/t.Inside.Coefficient + in.Process.Fouling),
		OutsideFilm: in.dirty(t.OutsideFilm),
	}
}
