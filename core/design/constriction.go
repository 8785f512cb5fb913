package design

import (
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/fin/temperature"
	"finwright/core/units"
)

// AddField solves the temperature of the metal in two dimensions and adds what it says of the fin's root to a result: by how much
// the resistances in series carry more. It is never taken off them, since the films come from tests that were read with such fins. What
// it returns is for a drawing; nil where there is none.
func (r *Result) AddField(in *field.Input) *temperature.Distribution {
	if !r.Heat.Absent.None() {
		return nil
	}
	t := &r.Heat.Thermal
	d, err := in.MetalField(t)
	if err != nil {
		return nil
	}
	od, pitch := float64(in.Tube.OD), float64(in.Tube.Pitch())
	for i := range r.Groups {
		if g := &r.Groups[i]; g.ID == "overall" {
			g.Figures = append(g.Figures, fig("root_constriction", units.Percent, d.Constriction(t.Overall.OnBare, od, pitch), figure.BareArea, "root_constriction",
				arg("U_b", units.Film, t.Overall.OnBare), arg("d", units.Diameter, od), arg("n", units.FinCount, float64(in.Tube.Fin.Count)), arg("K_2", units.Factor, d.Conductance)))
		}
	}
	return &d
}
