package design

import (
	"testing"

	"finwright/core/message"
	"finwright/core/units"
)

// With a film of the user's own the surface stands though the bank cannot be rated: every figure that decides is there, or
// says why not, and the remark stands at the entry that hinders.
func TestUnratedBankSaysWhy(t *testing.T) {
	for name, c := range map[string]struct {
		pairs []string
		field string
	}{
		"boiling water":  {[]string{"inside_in", "120 °C", "inside_pressure", "101 kPa"}, "inside_in"},
		"freezing water": {[]string{"inside_in", "-5 °C"}, "inside_in"},
		"tubes touch":    {[]string{"tube_pitch", "30 mm"}, "tube_pitch"},
		"no clearance":   {[]string{"tube_pitch", "57 mm"}, "tube_pitch"},
		"rows touch":     {[]string{"tube_pitch", "70 mm", "row_pitch", "20 mm"}, "row_pitch"},
		"hot air":        {[]string{"air_in", "390 °C"}, "air_in"},
		"cold steam":     {[]string{"inside_fluid", "steam", "inside_in", "20 °C"}, "inside_in"},
	} {
		res := evaluate(t, read(t, append([]string{"film_source", "given"}, c.pairs...)...))
		if res.Heat.Absent.None() {
			t.Errorf("%s: is rated", name)
			continue
		}
		said := message.English().Render(res.Heat.Absent, units.SI)
		for _, id := range []string{"fin_od", "area_ratio", "fin_efficiency", "used_area", "u_bare", "duty", "air_drop", "metre_mass"} {
			f, found := res.Find(id)
			if !found {
				t.Errorf("%s: no figure %s", name, id)
			} else if want := id == "duty" || id == "u_bare" || id == "air_drop"; f.Absent.None() == want {
				t.Errorf("%s: %s is %v, absent %v", name, id, f.SI, f.Absent)
			}
		}
		if n := res.Notices[len(res.Notices)-1]; n.Field != c.field || message.English().Render(n.Message, units.SI) != said {
			t.Errorf("%s: the remark stands at %s: %v", name, n.Field, n.Message)
		}
	}
}

// A stream of next to nothing has no mean difference left: its factor is absent, and the work is bounded.
func TestFaintStream(t *testing.T) {
	res := evaluate(t, read(t, "inside_flow", "0.001 kg/s", "rows", "30", "passes", "30"))
	f, found := res.Find("factor")
	if !found || f.Absent.Key != "absent.spent" {
		t.Errorf("factor %v", f)
	}
	if heat := res.Heat.Thermal.Duty.Heat; heat < 240 || heat > 252 { // 0.001 kg/s of water from 90 to 30 C
		t.Errorf("a gram of water a second gives %g W", heat)
	}
}
