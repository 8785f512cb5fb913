package making

import (
	"slices"
	"testing"

	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/tube"
)

// Each caution comes with what it is about, and with nothing else, and stands by a part of the work.
func TestCautionsComeWhereTheyApply(t *testing.T) {
	for name, c := range map[string]struct {
		order func(*Order)
		line  func(*shop.Line)
		at    int // line
		has   []string
	}{
		"footed":           {nil, nil, 0, []string{"bundle", "pancake", "lock_out", "spindle", "heat_treatment", "codes"}},
		"level-wound coil": {nil, func(l *shop.Line) { slices.Reverse(l.Coils) }, 0, []string{"bundle", "traverse", "lock_out", "spindle", "heat_treatment", "codes"}},
		"wall for pressure": {
			func(o *Order) { o.LeastWall = 0.001 }, nil, 0,
			[]string{"bundle", "pancake", "lock_out", "spindle", "heat_treatment", "pneumatic", "codes"},
		},
		"welded": {func(o *Order) { *o = welded() }, nil, 2, []string{
			"bundle", "pancake", "lock_out", "spindle", "weld_strip", "weld_qualified", "weld_field", "weld_eyes", "weld_fume", "weld_off", "weld_trial", "codes",
		}},
		"welded on a tube that is preheated": {func(o *Order) { *o = welded(); o.TubeMetal, _ = material.TubeMetal("t9") }, nil, 2, []string{ // bundles: with a step
			"pancake", "lock_out", "spindle", "weld_strip", "weld_qualified", "weld_field", "weld_eyes", "weld_fume", "weld_off", "weld_preheat", "weld_trial", "codes",
		}},
		"embedded": {func(o *Order) { *o = embedded() }, nil, 1, []string{"bundle", "traverse", "lock_out", "spindle", "grooved_scrap", "jet", "heat_treatment", "codes"}},
		"no line makes it": {
			func(o *Order) { o.Tube.Fin.Type, o.Tube.Fin.Sleeve = tube.Extruded, 0.0005 }, nil, 0,
			[]string{"bundle", "codes"},
		},
	} {
		house, o := shop.House(), footed()
		house.Buying.Coils, house.BoughtIn = shop.FirstCoil, nil
		if c.order != nil {
			c.order(&o)
		}
		if c.line != nil {
			c.line(&house.Lines[c.at])
		}
		p := PlanOf(&house, &house.Lines[c.at], &o, nil)
		var got []string
		for _, one := range p.Cautions() {
			got = append(got, one.ID)
			texts := []string{"caution." + one.ID}
			if one.About != "" {
				texts = append(texts, one.About)
			}
			if one.At != "" && one.At != AtSteps && one.At != AtChecks {
				texts = append(texts, "figures."+one.At)
			}
			for _, key := range texts {
				if !message.English().Has(key) {
					t.Errorf("no text %s", key)
				}
			}
			if (one.At == "") != (one.ID == "codes") {
				t.Errorf("%s stands at %q", one.ID, one.At)
			}
		}
		if !slices.Equal(got, c.has) {
			t.Errorf("%s: %v, want %v", name, got, c.has)
		}
	}
}
