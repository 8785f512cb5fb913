package design

import (
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

// Thresholds of remarks. Engineering judgement: they warn and never block.
const (
	thinnestTip   = 0.00015 // m, aluminium rolled thinner tends to tear
	poorEta       = 0.70    // below it a third of the fin is idle
	narrowestGap  = 0.0010  // m, below it dirt bridges the fins
	stretchOther  = 2.0     // Df/d of metals without an entry
	stretchMargin = 1e-9    // so that a limit met exactly passes
	tipMargin     = 0.5e-6  // m, so that a tip passes that prints as the limit
)

// stretchUsual is the greatest usual Df/d by fin metal.
//
// Source: engineering judgement from common combinations of height and diameter.
var stretchUsual = map[material.Kind]float64{
	material.Aluminium: 2.25, material.Copper: 2.2, material.CarbonSteel: 2.0, material.Stainless: 2.0,
}

// watched figures say "good" when nothing was remarked of them.
var watched = map[string]bool{"tip_thickness": true, "stretch": true, "fin_efficiency": true, "gap": true, "conductivity": true, "strip_width": true, "film": true, "air_drop": true, "hottest_root": true, "root_start_up": true, "root_upset": true}

// notices remarks on a design that can be evaluated.
func notices(in *Input, s *State) []Notice {
	var out []Notice
	t := &in.Tube
	add := func(state figure.State, field, fig, key string, pairs ...any) {
		out = append(out, Notice{state, field, fig, message.New(key, pairs...)})
	}
	quantity := func(k units.Kind, si float64) message.Quantity { return message.Quantity{Kind: k, SI: si} }
	switch in.FinMetal.Kind.Suits(forming(t.Fin.Type)) {
	case material.Unsuitable:
		add(figure.No, "fin_metal", "strip_width", "notice.metal_unsuitable", "metal", in.FinMetal.Name(), "type", message.Key("choice.fin_type."+string(t.Fin.Type)))
	case material.Special:
		add(figure.Watch, "fin_metal", "strip_width", "notice.metal_special", "metal", in.FinMetal.Name(), "type", message.Key("choice.fin_type."+string(t.Fin.Type)))
	}
	limit, known := stretchUsual[in.FinMetal.Kind]
	if !known {
		limit = stretchOther
	}
	if t.Fin.Type.Wound() && t.Stretch() > limit+stretchMargin {
		add(figure.Watch, "fin_height", "stretch", "notice.stretch",
			"stretch", quantity(units.Factor, t.Stretch()), "limit", quantity(units.Factor, limit),
			"height", quantity(units.Height, float64(t.OD)*(limit-1)/2))
	}
	if tt := float64(t.TipThickness()); tt < thinnestTip-tipMargin {
		add(figure.Watch, "strip_thickness", "tip_thickness", "notice.thin_tip",
			"tip", quantity(units.Thickness, tt), "limit", quantity(units.Thickness, thinnestTip))
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

// forming says what the fin's metal must bear.
func forming(t tube.FinType) material.Forming {
	switch {
	case t.FootLayers() > 0:
		return material.Foot
	case t == tube.Embedded:
		return material.Groove
	case t == tube.Welded:
		return material.Weld
	case t == tube.Extruded:
		return material.Muff
	}
	return material.Edge
}

// mark sets f's state from the notices that name it.
func mark(f *figure.Figure, notices []Notice) {
	if watched[f.ID] && f.Absent.None() {
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
