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
	At    string // the part of the work by which it stands: a group of figures, AtSteps or AtChecks; empty: all of it
	About string // the text that names what it is about, where its place does not
}

// The parts of the work that have no figures.
const (
	AtSteps  = "steps"
	AtChecks = "checks"
)

// Cautions returns what holds for this order, type and coil, in the order of the work. What holds in a step stands with the step.
//
// Source: common practice, no source.
func (p *Plan) Cautions() []Caution {
	var out []Caution
	grooved := p.Practice != nil && p.Order.Tube.Fin.Type.Grooved()
	if p.Bundle != nil && !p.warned("bundle") {
		out = append(out, Caution{ID: "bundle", At: "packing"})
	}
	if p.Winding != nil {
		form := "pancake"
		if p.Winding.Coil.Form == shop.Traverse {
			form = "traverse"
		}
		out = append(out, Caution{ID: form, At: "coil"})
	}
	if p.Speeds != nil {
		out = append(out, Caution{ID: "lock_out", At: "speeds"}, Caution{ID: "spindle", At: "speeds"})
	}
	if grooved {
		out = append(out, Caution{ID: "grooved_scrap", At: "tubes"}, Caution{ID: "jet", At: AtSteps})
	}
	out = append(out, p.welding()...)
	if p.Practice != nil && p.Order.FinMetal.Family == material.Aluminium {
		out = append(out, Caution{ID: "heat_treatment", At: AtSteps})
	}
	if holdsPressure := p.Practice != nil && (p.Order.LeastWall > 0 || grooved); holdsPressure && !p.warned("pneumatic") {
		out = append(out, Caution{ID: "pneumatic", At: AtSteps})
	}
	if len(out) > 0 {
		out = append(out, Caution{ID: "codes"})
	}
	return out
}

// welding returns what holds where fins are welded on.
func (p *Plan) welding() []Caution {
	if p.Practice == nil || p.Order.Tube.Fin.Type.Fixing().Section != tube.WeldSection {
		return nil
	}
	out := []Caution{{ID: "weld_strip", At: AtSteps}}
	for _, id := range []string{"weld_qualified", "weld_field", "weld_eyes", "weld_fume", "weld_off"} {
		out = append(out, Caution{ID: id, At: "speeds", About: "shop.field.weld"})
	}
	if p.preheat().Time > 0 {
		out = append(out, Caution{ID: "weld_preheat", At: "speeds", About: "shop.field.weld"})
	}
	return append(out, Caution{ID: "weld_trial", At: AtChecks})
}

// warned reports whether a caution stands with a step.
func (p *Plan) warned(id string) bool {
	return slices.ContainsFunc(p.Steps, func(s StepWork) bool { return slices.Contains(s.Cautions, id) })
}
