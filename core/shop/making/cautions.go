package making

import (
	"slices"

	"finwright/core/material"
	"finwright/core/shop"
	"finwright/core/tube"
)

// Caution is what may hurt somebody or spoil a tube in the making of an order.
type Caution struct {
	ID    string // its text is "caution.<ID>"
	About string // the text that names the part of the work
}

// Cautions returns what holds for this order, type and coil, in the order of the work. What holds in a step stands with the step.
//
// Source: common practice, no source.
func (p *Plan) Cautions() []Caution {
	var out []Caution
	grooved := p.Practice != nil && p.Order.Tube.Fin.Type.Grooved()
	if p.Bundle != nil && !p.warned("bundle") {
		out = append(out, Caution{"bundle", "shop.field.mill_bundle"})
	}
	if p.Winding != nil {
		form := "pancake"
		if p.Winding.Coil.Form == shop.Traverse {
			form = "traverse"
		}
		out = append(out, Caution{form, "figures.coil"})
	}
	if p.Speeds != nil {
		out = append(out, Caution{"lock_out", "figures.speeds"}, Caution{"spindle", "figures.speeds"})
	}
	if grooved {
		out = append(out, Caution{"grooved_scrap", "figures.tubes"}, Caution{"jet", "choice.fin_type.embedded"})
	}
	out = append(out, p.welding()...)
	if p.Practice != nil && p.Order.FinMetal.Family == material.Aluminium {
		out = append(out, Caution{"heat_treatment", "field.fin_metal"})
	}
	if holdsPressure := p.Practice != nil && (p.Order.LeastWall > 0 || grooved); holdsPressure && !p.warned("pneumatic") {
		out = append(out, Caution{"pneumatic", "shop.rule.wall_left"})
	}
	if len(out) > 0 {
		out = append(out, Caution{"codes", "page.caution_word"})
	}
	return out
}

// welding returns what holds where fins are welded on.
func (p *Plan) welding() []Caution {
	if p.Practice == nil || p.Order.Tube.Fin.Type.Fixing().Section != tube.WeldSection {
		return nil
	}
	var out []Caution
	for _, id := range []string{"weld_field", "weld_eyes", "weld_fume", "weld_strip", "weld_off", "weld_trial", "weld_qualified"} {
		out = append(out, Caution{id, "choice.fin_type.welded"})
	}
	if p.preheat().Time > 0 {
		out = append(out, Caution{"weld_preheat", "choice.fin_type.welded"})
	}
	return out
}

// warned reports whether a caution stands with a step.
func (p *Plan) warned(id string) bool {
	return slices.ContainsFunc(p.Steps, func(s StepWork) bool { return slices.Contains(s.Cautions, id) })
}
