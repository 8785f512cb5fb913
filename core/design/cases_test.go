package design

import (
	"math"
	"testing"

	"finwright/core/document"
	"finwright/testdata/cases"
)

func plantCases(t *testing.T, pairs ...string) map[string]PlantCase {
	t.Helper()
	in := read(t, pairs...)
	byID := map[string]PlantCase{}
	for _, c := range PlantCases(in, rate(t, in)) {
		byID[c.ID] = c
	}
	return byID
}

// Every case is the bank as it would be rated were it the normal one.
func TestPlantCases(t *testing.T) {
	base := []string{
		"air_summer", "41 °C", "air_winter", "-18 °C", "turndown", "40 %", "start_up", "112 °C", "upset", "118 °C", "air_upset", "35 °C",
		"fouling_outside", "0.0002 m²K/W", "inside_pressure", "1500 kPa",
	}
	got := plantCases(t, base...)
	if len(got) != 8 {
		t.Fatalf("%d cases", len(got))
	}
	flow := read(t).Process.Flow
	for id, alone := range map[string][]string{
		"normal":   nil,
		"fouled":   nil,
		"summer":   {"air_in", "41 °C"},
		"winter":   {"air_in", "-18 °C"},
		"clean":    {"fouling_inside", "0 m²K/W", "fouling_outside", "0 m²K/W"},
		"turndown": {"inside_flow", "6 kg/s"},
		"start_up": {"inside_in", "112 °C"},
		"upset":    {"inside_in", "118 °C", "air_in", "35 °C"},
	} {
		want := rate(t, read(t, append(append([]string{}, base...), alone...)...)).Thermal
		c := got[id]
		if !c.Absent.None() || math.Abs(c.Duty-math.Abs(want.Duty.Heat)) > 1e-6*c.Duty || math.Abs(c.Drop.SI-want.UsedDrop.Answer.Total) > 1e-6*c.Drop.SI ||
			math.Abs(c.Coldest-want.Duty.Coldest.Celsius) > 1e-5 || math.Abs(c.Hottest-want.Duty.Hottest.Celsius) > 1e-5 {
			t.Errorf("%s: %+v, want %g W, %g to %g C (flow %g)", id, c, want.Duty.Heat, want.Duty.Coldest.Celsius, want.Duty.Hottest.Celsius, flow)
		}
	}
	if !(got["winter"].Coldest < got["normal"].Coldest && got["summer"].Duty < got["normal"].Duty && got["clean"].Duty > got["fouled"].Duty &&
		got["turndown"].Duty < got["normal"].Duty && got["upset"].Hottest > got["start_up"].Hottest) {
		t.Errorf("the cases do not differ as they should: %+v", got)
	}
}

// What nobody told has a reason instead of figures, and so has what cannot be rated.
func TestPlantCasesUntold(t *testing.T) {
	got := plantCases(t, "fouling_inside", "0 m²K/W", "upset", "400 °C", "inside_pressure", "1000 kPa")
	for id, key := range map[string]string{
		"summer": "absent.case_untold", "turndown": "absent.case_untold", "start_up": "absent.case_untold",
		"clean": "absent.no_dirt", "fouled": "absent.no_dirt", "upset": "error.process_beyond",
	} {
		if got[id].Absent.Key != key {
			t.Errorf("%s: %q, want %q", id, got[id].Absent.Key, key)
		}
	}
	if steam := plantCases(t, "inside_fluid", "steam", "inside_in", "130 °C", "turndown", "40 %"); steam["turndown"].Absent.None() {
		t.Error("a flow that condensing steam makes for itself was turned down")
	}
}

// A case of an example is remarked on as soon as the inlet that it was stated for is another, until it is confirmed.
func TestCasesAreCarriedSeen(t *testing.T) {
	for _, c := range cases.List() {
		d := c.Document()
		if found := Carried(d); len(found) > 0 {
			t.Errorf("%s as it ships: %v", c.ID, found)
		}
		typed := func(id, text string) document.Document {
			next, err := document.Edit(d, document.Command{Op: "set", Values: []document.Value{{Field: id, Text: &text}}})
			if err != nil {
				t.Fatal(err)
			}
			return next
		}
		d = typed("inside_in", "71.5 °C")
		if found := Carried(d); len(found) != 2 || found[0].Field != "start_up" || found[1].Field != "upset" {
			t.Errorf("%s with another inlet: %v", c.ID, found)
		}
		d = typed("start_up", "73.5 °C")
		if found := Carried(d); len(found) != 1 || found[0].Field != "upset" {
			t.Errorf("%s with a start-up of its own: %v", c.ID, found)
		}
	}
}
