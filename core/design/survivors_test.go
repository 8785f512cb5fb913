package design

import (
	"math"
	"testing"

	"finwright/core/document"
	"finwright/core/figure"
	"finwright/core/shop"
	"finwright/core/tube"
)

// produced judges and plans a document for the house's shop, with its changes tried.
func produced(t *testing.T, d document.Document) Production {
	t.Helper()
	c := shop.House()
	in, h, err := ReadAndRate(d, &c)
	if err != nil {
		t.Fatal(err)
	}
	m := Make(in, h)
	m.TryChanges(d)
	return m
}

// By the limits from memory, at 230 °C of an upset: G to 400 and extruded to 300 bear it; a knurled foot ends at 200, an
// overlapped one at 130 and strip on edge, by the house, at 100. Welded needs a metal that can be welded.
func TestSurvivorsAreNamed(t *testing.T) {
	d := document.New()
	setIn(t, &d, "start_up", "95 °C", "upset", "230 °C")
	m := produced(t, d)
	got := map[tube.FinType]Survivor{}
	for _, s := range m.Survivors(d) {
		got[s.Type] = s
		if !s.Outcome.Duty.Stated || s.Outcome.Price.Stated == (s.State == figure.No) {
			t.Errorf("%s: %+v by a line that says %s", s.Type, s.Outcome, s.State)
		}
	}
	if len(got) != 3 || got[tube.Embedded].State == figure.No || got[tube.Welded].Metal.None() || got[tube.Extruded].State == figure.No || !got[tube.Extruded].BoughtIn || got[tube.Embedded].BoughtIn {
		t.Errorf("%+v", got)
	}
	// What is said of one is what comes of it.
	e := got[tube.Embedded]
	taken, err := document.Edit(d, Command(e.Settings, d.Units))
	if err != nil {
		t.Fatal(err)
	}
	then := produced(t, taken)
	if duty := math.Abs(then.heat.Thermal.Duty.Heat); duty != e.Outcome.Duty.SI || float64(then.Plan.Cost.PerTube) != e.Outcome.Price.SI || then.Line.Name != e.Line {
		t.Errorf("said %+v, came to %g W on %s", e, duty, then.Line.Name)
	}
	if list := then.Survivors(taken); list != nil {
		t.Errorf("nothing refuses it, and yet %v are named", list)
	}
}

// The tip of 0.3 mm strip is too thin. Thicker strip is nearest; where the customer fixed the strip a lower fin is offered, and
// where he fixed both the strip, with the remark.
func TestOffersLeaveWhatTheCustomerFixed(t *testing.T) {
	for name, c := range map[string]struct {
		fixed []string
		field string
		said  bool
	}{
		"nothing fixed": {nil, "strip_thickness", false},
		"strip fixed":   {[]string{"strip_thickness"}, "fin_height", false},
		"both fixed":    {[]string{"strip_thickness", "fin_height"}, "strip_thickness", true},
	} {
		d := document.New()
		setIn(t, &d, "start_up", "95 °C", "upset", "95 °C", "strip_thickness", "0.3 mm")
		for _, id := range []string{"strip_thickness", "fin_height"} {
			e := d.Fields[id]
			e.Origin = document.House
			d.Fields[id] = e
		}
		for _, id := range c.fixed {
			e := d.Fields[id]
			e.Origin = document.Customer
			d.Fields[id] = e
		}
		m := produced(t, d)
		o, ok := m.Offers["tip"]
		if !ok || o.Settings[0].Field != c.field || o.Fixed != c.said {
			t.Errorf("%s: %+v", name, o)
			continue
		}
		next, err := document.Edit(d, Command(o.Settings, d.Units))
		if err != nil {
			t.Fatal(err)
		}
		if then := produced(t, next); then.outcome() != o.After || m.outcome() != o.Before || o.After == o.Before {
			t.Errorf("%s: from %+v to %+v, came to %+v", name, o.Before, o.After, then.outcome())
		}
	}
}

// Nothing is offered that leaves the tube refused by its temperature.
func TestNothingIsOfferedWhileHeatRefuses(t *testing.T) {
	d := document.New()
	setIn(t, &d, "start_up", "95 °C", "upset", "95 °C", "fin_height", "13.5 mm")
	if m := produced(t, d); len(m.Offers) == 0 {
		t.Error("nothing is offered for a height without rolls")
	}
	setIn(t, &d, "upset", "230 °C")
	m := produced(t, d)
	for rule, o := range m.Offers {
		if o.Settings[0].Field != "fin_type" && o.Settings[0].Field != "fin_metal" {
			t.Errorf("%s offers %+v while the temperature refuses", rule, o.Settings)
		}
	}
	if _, ok := m.Offers["tool"]; ok {
		t.Error("rolls are offered while the temperature refuses")
	}
}

// setIn enters texts in a document.
func setIn(t *testing.T, d *document.Document, pairs ...string) {
	t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		next, err := document.Edit(*d, document.Command{Op: "set", Values: []document.Value{{Field: pairs[i], Text: &pairs[i+1]}}})
		if err != nil {
			t.Fatal(err)
		}
		*d = next
	}
}
