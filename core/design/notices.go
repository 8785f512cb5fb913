package design

import (
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/shop/making"
	"finwright/core/shop/verdict"
	"finwright/core/units"
)

// Thresholds of remarks. Engineering judgement: they warn and never block.
const (
	poorEta      = 0.70   // below it a third of the fin is idle
	narrowestGap = 0.0010 // m, below it dirt bridges the fins
)

// watched figures say "good" when nothing was remarked of them.
var watched = map[string]bool{"fin_efficiency": true, "gap": true, "conductivity": true, "strip_width": true, "film": true, "air_drop": true, "hottest_root": true, "root_start_up": true, "root_upset": true}

// notices remarks on a design that can be evaluated.
func notices(in *field.Input, s *rating.Surface, judged []verdict.Verdict) []Notice {
	var out []Notice
	t := &in.Tube
	add := func(state figure.State, field, fig, key string, pairs ...any) {
		out = append(out, Notice{State: state, Field: field, Figure: fig, Message: message.New(key, pairs...)})
	}
	quantity := func(k units.Kind, si float64) message.Amount { return message.Amount{Kind: k, SI: si} }
	switch in.FinMetal.Family.Suits(t.Fin.Type.Fixing().Forming) {
	case material.Unsuitable:
		add(figure.No, "fin_metal", "strip_width", "notice.metal_unsuitable", "metal", in.FinMetal.Name(), "type", message.Key("choice.fin_type."+string(t.Fin.Type)))
	case material.Special:
		add(figure.Watch, "fin_metal", "strip_width", "notice.metal_special", "metal", in.FinMetal.Name(), "type", message.Key("choice.fin_type."+string(t.Fin.Type)))
	}
	for _, v := range judged {
		if v.State == figure.Watch {
			out = append(out, Notice{State: v.State, Field: v.Rule.Field, Figure: v.Rule.Figure, Message: v.Why})
		}
	}
	if gap := float64(t.Gap()); gap < narrowestGap {
		add(figure.Watch, "fin_pitch", "gap", "notice.narrow_gap",
			"gap", quantity(units.Gap, gap), "limit", quantity(units.Gap, narrowestGap))
	}
	if s.Fin.Efficiency < poorEta {
		add(figure.Watch, "fin_height", "fin_efficiency", "notice.poor_eta",
			"eta", quantity(units.Factor, s.Fin.Efficiency), "limit", quantity(units.Factor, poorEta))
	}
	if _, inRange := in.FinMetal.ConductivityAt(in.Air.Metal); !inRange {
		low, high := in.FinMetal.Conductivity.Range()
		add(figure.Watch, "metal_temperature", "conductivity", "notice.conductivity_range",
			"metal", in.FinMetal.Name(), "low", quantity(units.Temp, float64(low)), "high", quantity(units.Temp, float64(high)))
	}
	return out
}

// judgeShape holds the fin against what its metal bears in the shop; nothing is judged without one. Making says the same of it.
func judgeShape(in *field.Input) []verdict.Verdict {
	if in.Shop == nil {
		return nil
	}
	return verdict.JudgeShape(in.Shop, making.OrderOf(in, nil))
}

// good reports whether a figure is fine unless something is remarked of it.
func good(id string, judged []verdict.Verdict) bool {
	for _, v := range judged {
		if v.Rule.Figure == id {
			return v.State == figure.Good
		}
	}
	return watched[id]
}

// mark sets f's state, good if it is judged at all, and from the notices that name it.
func mark(f *figure.Figure, good bool, notices []Notice) {
	if good && f.Absent.None() {
		f.State = figure.Good
	}
	for _, n := range notices {
		if n.Figure != f.ID {
			continue
		}
		if f.State != figure.No {
			f.State = n.State
		}
		f.Why = append(f.Why, n.Message)
	}
}
