package design

import (
	"errors"
	"math"
	"testing"

	"finwright/core/figure"
)

// remarked returns the gravest state that is remarked of a figure, and the keys of what is said.
func remarked(r Result, id string) (state figure.State, keys []string) {
	for _, n := range r.Notices {
		if n.Figure == id {
			if state != figure.No {
				state = n.State
			}
			keys = append(keys, n.Message.Key)
		}
	}
	return state, keys
}

// What the stream in the tubes does is held against usual velocities, the drop allowed and its pressure. The 20.67 m/s and
// 4,821 kPa of 1,000 that once read "usual" are refused.
func TestStreamInsideIsJudged(t *testing.T) {
	for name, c := range map[string]struct {
		entries []string
		figure  string
		state   figure.State
		key     string
	}{
		"usual":            {[]string{"inside_flow", "30 kg/s"}, "inside_velocity", "", ""},
		"too fast":         {[]string{"inside_flow", "80 kg/s"}, "inside_velocity", figure.Watch, "notice.inside_fast"},
		"too slow":         {[]string{"inside_flow", "5 kg/s"}, "inside_velocity", figure.Watch, "notice.inside_slow"},
		"all lost":         {[]string{"inside_flow", "400 kg/s", "passes", "4"}, "inside_loss", figure.No, "notice.no_pressure_left"},
		"drop kept":        {[]string{"inside_drop_allowed", "70 kPa"}, "inside_loss", "", ""},
		"drop not kept":    {[]string{"inside_drop_allowed", "1 kPa"}, "inside_loss", figure.No, "notice.inside_drop_over"},
		"flashing":         {[]string{"inside_in", "150 °C", "inside_pressure", "480 kPa", "inside_flow", "120 kg/s"}, "outlet_pressure", figure.No, "notice.flashing"},
		"not judged":       {[]string{"inside_in", "150 °C", "inside_pressure", "", "inside_flow", "120 kg/s"}, "outlet_pressure", "", ""},
		"own boils":        {[]string{"inside_fluid", "own", "own_fluid_pressure", "300 kPa", "own_fluid_vapour", "290 kPa"}, "outlet_pressure", figure.No, "notice.flashing"},
		"own not judged":   {[]string{"inside_fluid", "own", "own_fluid_pressure", "300 kPa"}, "outlet_pressure", "", ""},
		"gas loses much":   {gas("5 kg/s", "220 kPa"), "outlet_pressure", figure.Watch, "notice.gas_drop_watch"},
		"gas loses most":   {gas("5 kg/s", "120 kPa"), "outlet_pressure", figure.No, "notice.gas_drop_most"},
		"gas loses all":    {gas("20 kg/s", "120 kPa"), "inside_loss", figure.No, "absent.no_pressure_left"},
		"gas not judged":   {gas("20 kg/s", ""), "outlet_pressure", "", ""},
		"gas loses little": {gas("5 kg/s", "900 kPa"), "outlet_pressure", "", ""},
	} {
		r := evaluate(t, read(t, c.entries...))
		state, keys := remarked(r, c.figure)
		if state != c.state || c.key != "" && (len(keys) != 1 || keys[0] != c.key) {
			f, _ := r.Find(c.figure)
			t.Errorf("%s: %q %q, want %q %q (%g, %v)", name, state, keys, c.state, c.key, f.SI, f.Absent)
		}
	}
}

func gas(flow, pressure string) []string {
	return []string{
		"inside_fluid", "own", "own_fluid_phase", "gas", "own_fluid_density", "6 kg/m³", "own_fluid_heat", "1100 J/kg·K",
		"own_fluid_viscosity", "0.02 mPa·s", "own_fluid_conductivity", "0.03 W/m·K", "inside_flow", flow, "own_fluid_pressure", pressure,
	}
}

// Without a pressure nothing is judged by one, and it says so where the figure stands.
func TestPressureNotGivenIsNotJudged(t *testing.T) {
	for _, c := range []struct{ entries, figure, why string }{
		{"inside_pressure", "outlet_pressure", "absent.no_pressure"},
		{"inside_pressure", "boiling_ratio", "absent.no_pressure"},
	} {
		f, _ := evaluate(t, read(t, c.entries, "")).Find(c.figure)
		if f.Absent.Key != c.why || f.State != figure.Plain {
			t.Errorf("%s: %v, %s", c.figure, f.Absent, f.State)
		}
	}
	own, _ := evaluate(t, read(t, "inside_fluid", "own", "own_fluid_pressure", "500 kPa")).Find("boiling_ratio")
	if own.Absent.Key != "absent.no_vapour" {
		t.Errorf("a liquid of unknown vapour pressure: %v", own.Absent)
	}
}

// The velocity is in its usual range or the range is named beside it; only a usual one is good.
func TestUsualVelocityIsNamed(t *testing.T) {
	for flow, want := range map[string]figure.State{"30 kg/s": figure.Good, "15 kg/s": figure.Plain, "80 kg/s": figure.Watch} {
		f, _ := evaluate(t, read(t, "inside_flow", flow)).Find("inside_velocity")
		if f.State != want || (len(f.Why) == 0) != (want == figure.Good) {
			t.Errorf("%s: %.2f m/s is %s, %v", flow, f.SI, f.State, f.Why)
		}
	}
}

// The outlet of water at 90 C, 15 kg/s: p1 less the loss, over the vapour pressure there by the IAPWS saturation line
// (70.18 kPa at 90 C, so that a cooler outlet gives a larger ratio).
func TestOutletPressureByHand(t *testing.T) {
	r := evaluate(t, read(t))
	loss, _ := r.Find("inside_loss")
	at, _ := r.Find("outlet_pressure")
	ratio, _ := r.Find("boiling_ratio")
	if math.Abs(at.SI-(1e6-loss.SI)) > 1e-6 || ratio.SI < at.SI/70182 {
		t.Errorf("outlet %g Pa after %g Pa, ratio %g", at.SI, loss.SI, ratio.SI)
	}
}

// A cooled oil is thicker at the wall: known at two temperatures, its laminar film is lower by the ratio of the viscosities
// to the power 0.14 (Sieder and Tate 1936). One temperature gives no such ratio, and the remark says so.
func TestOilAtTwoTemperatures(t *testing.T) {
	laminar := func(more ...string) []string {
		return append([]string{
			"inside_fluid", "own", "inside_flow", "12 kg/s", "inside_in", "90 °C", "own_fluid_at", "20 °C", "own_fluid_density", "870 kg/m³", "own_fluid_heat", "2000 J/kg·K",
			"own_fluid_viscosity", "200 mPa·s", "own_fluid_conductivity", "0.13 W/m·K", "own_fluid_at_2", "100 °C", "own_fluid_density_2", "870 kg/m³",
			"own_fluid_heat_2", "2000 J/kg·K", "own_fluid_viscosity_2", "10 mPa·s", "own_fluid_conductivity_2", "0.13 W/m·K",
		}, more...)
	}
	one := evaluate(t, read(t, laminar()...))
	two := evaluate(t, read(t, laminar("own_fluid_points", "2")...))
	if _, keys := remarked(one, "inside_film"); len(keys) != 1 || keys[0] != "notice.laminar_one" {
		t.Errorf("known at one temperature: %q", keys)
	}
	if _, keys := remarked(two, "inside_film"); len(keys) != 1 || keys[0] != "notice.laminar" {
		t.Errorf("known at two: %q", keys)
	}
	if _, keys := remarked(two, "coldest_metal"); len(keys) != 1 || keys[0] != "notice.pour_missing" {
		t.Errorf("without a pour point: %q", keys)
	}
	var ratio float64
	for _, l := range two.Heat.Thermal.Inside.Limits {
		if l.Variable == "viscosity_ratio" {
			ratio = l.Value
		}
	}
	if !(ratio < 0.9) {
		t.Errorf("viscosity in the stream over that at the wall: %g", ratio)
	}
	if a, b := one.Heat.Thermal.Inside.Coefficient, two.Heat.Thermal.Inside.Coefficient; b >= a {
		t.Errorf("film %g W/m²K with the wall, %g without", b, a)
	}
	if _, keys := remarked(evaluate(t, read(t, laminar("own_fluid_points", "2", "inside_in", "140 °C")...)), "inside_film"); len(keys) == 0 || keys[0] != "notice.own_beyond" {
		t.Errorf("beyond the temperatures: %q", keys)
	}
	// Points may come in any order.
	swapped := laminar("own_fluid_points", "2", "own_fluid_at", "100 °C", "own_fluid_viscosity", "10 mPa·s", "own_fluid_at_2", "20 °C", "own_fluid_viscosity_2", "200 mPa·s")
	if a, b := two.Heat.Thermal.Duty.Heat, rate(t, read(t, swapped...)).Thermal.Duty.Heat; math.Abs(a/b-1) > 1e-9 {
		t.Errorf("%g W, and %g W with the points the other way round", a, b)
	}
}

// The coldest metal is held against what freezes on it: water at 0 C, glycol later, oil at its pour point.
func TestFreezingIsJudged(t *testing.T) {
	cold := []string{"air_in", "-30 °C", "inside_in", "40 °C", "inside_flow", "40 kg/s", "tube_length", "3 m"}
	for name, c := range map[string]struct {
		entries []string
		key     string
	}{
		"water":          {[]string{"inside_in", "12 °C"}, "notice.freezes"},
		"glycol":         {[]string{"inside_fluid", "ethylene_glycol", "glycol_share", "40 %"}, ""},
		"little glycol":  {[]string{"inside_fluid", "propylene_glycol", "glycol_share", "3 %", "inside_in", "8 °C"}, "notice.freezes"},
		"oil that pours": {[]string{"inside_fluid", "own", "own_fluid_pour", "-40 °C"}, ""},
		"oil that stops": {[]string{"inside_fluid", "own", "own_fluid_pour", "30 °C"}, "notice.pours_no_more"},
	} {
		_, keys := remarked(evaluate(t, read(t, append(cold, c.entries...)...)), "coldest_metal")
		if got := len(keys) > 0 && keys[0] == c.key; got != (c.key != "") {
			t.Errorf("%s: %q, want %q", name, keys, c.key)
		}
	}
}

// Glycol costs duty: at the same flow its film is lower than that of water.
func TestGlycolCostsDuty(t *testing.T) {
	last := rate(t, read(t, "inside_in", "85 °C")).Thermal.Inside.Coefficient
	for _, share := range []string{"20 %", "40 %", "60 %"} {
		now := rate(t, read(t, "inside_in", "85 °C", "inside_fluid", "ethylene_glycol", "glycol_share", share)).Thermal.Inside.Coefficient
		if now >= last {
			t.Errorf("%s: %g W/m²K after %g", share, now, last)
		}
		last = now
	}
}

// Two points of an own fluid close to each other say nothing of how its viscosity goes on: they are refused at their entry.
func TestPointsOfAFluidStandApart(t *testing.T) {
	own := func(at, second string) error {
		_, _, err := ReadAndRate(doc(t, "inside_fluid", "own", "own_fluid_points", "2", "own_fluid_at", at, "own_fluid_at_2", second,
			"own_fluid_viscosity", "1000 mPa·s", "own_fluid_viscosity_2", "1000 mPa·s"), nil)
		return err
	}
	for _, close := range [][2]string{{"60 °C", "60 °C"}, {"60 °C", "64.9 °C"}, {"64.9 °C", "60 °C"}} {
		var refused FieldErrors
		if err := own(close[0], close[1]); !errors.As(err, &refused) || refused[0].Field != "own_fluid_at_2" {
			t.Errorf("%v: %v", close, err)
		}
	}
	if err := own("60 °C", "65 °C"); err != nil {
		t.Error(err)
	}
}

// A liquid gets thinner as it gets warmer, at most by exp(-0.2) for each kelvin, a gas thicker, at most by exp(0.01): what was entered last is refused, with what it may be.
func TestViscosityGoesItsWay(t *testing.T) {
	for name, c := range map[string]struct {
		pairs []string
		wrong string
	}{
		"as they do":         {[]string{"own_fluid_at_2", "65 °C", "own_fluid_viscosity_2", "400 mPa·s"}, ""}, // ln 2.5 / 5 = 0.183
		"no thinner":         {[]string{"own_fluid_at_2", "65 °C", "own_fluid_viscosity_2", "1000 mPa·s"}, ""},
		"steep":              {[]string{"own_fluid_at_2", "65 °C", "own_fluid_viscosity_2", "360 mPa·s"}, "own_fluid_viscosity_2"}, // 0.204
		"thicker":            {[]string{"own_fluid_at_2", "65 °C", "own_fluid_viscosity_2", "1001 mPa·s"}, "own_fluid_viscosity_2"},
		"colder and thinner": {[]string{"own_fluid_at_2", "50 °C", "own_fluid_viscosity_2", "900 mPa·s"}, "own_fluid_viscosity_2"},
		"a gas":              {[]string{"own_fluid_at_2", "65 °C", "own_fluid_viscosity_2", "1050 mPa·s", "own_fluid_phase", "gas"}, ""}, // ln 1.05 / 5 = 0.0098
		"a steep gas":        {[]string{"own_fluid_at_2", "65 °C", "own_fluid_viscosity_2", "1052 mPa·s", "own_fluid_phase", "gas"}, "own_fluid_viscosity_2"},
		"a thinner gas":      {[]string{"own_fluid_at_2", "65 °C", "own_fluid_viscosity_2", "999 mPa·s", "own_fluid_phase", "gas"}, "own_fluid_viscosity_2"},
		"between two": {[]string{
			"own_fluid_points", "3", "own_fluid_at_2", "100 °C", "own_fluid_viscosity_2", "100 mPa·s", "own_fluid_at_3", "80 °C", "own_fluid_viscosity_3", "99 mPa·s",
		}, "own_fluid_viscosity_3"},
	} {
		pairs := append([]string{"inside_fluid", "own", "own_fluid_points", "2", "own_fluid_at", "60 °C", "own_fluid_viscosity", "1000 mPa·s"}, c.pairs...)
		_, _, err := ReadAndRate(doc(t, pairs...), nil)
		var refused FieldErrors
		if errors.As(err, &refused); c.wrong == "" && err != nil || c.wrong != "" && (len(refused) != 1 || refused[0].Field != c.wrong) {
			t.Errorf("%s: %v", name, err)
		}
	}
}
