package design

import (
	"cmp"
	"math"
	"strings"
	"testing"

	"finwright/core/exchanger"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/units"
)

// noticed returns the state in which a result says something, if it does.
func noticed(res Result, key string) (state figure.State, field string) {
	for _, n := range res.Notices {
		if n.Message.Key == key {
			return n.State, n.Field
		}
	}
	return "", ""
}

// hotGas is dry air of 340 C about water of 105 C in welded steel, with every case told.
var hotGas = []string{
	"gas", "dry_air", "air_in", "340 °C", "inside_in", "105 °C", "inside_pressure", "15000 kPa", "fin_type", "welded", "fin_metal", "cs1010",
	"air_start_up", "340 °C", "air_upset", "340 °C", "flow_lost", "excluded",
}

func TestCasesOfHotGas(t *testing.T) {
	for name, c := range map[string]struct {
		change []string
		key    string
		state  figure.State // empty: it is not said
		field  string
	}{
		"all is told":                   {nil, "limit.not_stated", "", ""},
		"and nothing is lost":           {nil, "limit.flow_untold", "", ""},
		"nobody told of a loss of flow": {[]string{"flow_lost", "untold"}, "limit.flow_untold", figure.Watch, "flow_lost"},
		"nor of the gas":                {[]string{"air_upset", "", "upset", "110 °C"}, "limit.gas_not_stated", figure.Watch, "air_upset"},
		"nor of anything":               {[]string{"air_upset", ""}, "limit.not_stated", figure.Watch, "air_upset"},
		"the tip in hotter gas":         {[]string{"air_upset", "1100 °C"}, "limit.above_metal", figure.No, "air_upset"},
		"the metal without a stream":    {[]string{"air_upset", "470 °C", "flow_lost", "possible"}, "limit.above_metal", figure.No, "flow_lost"},
		"which is bearable":             {[]string{"flow_lost", "possible"}, "limit.above_metal", "", ""},
		"aluminium too hot to judge":    {[]string{"fin_type", "extruded", "fin_metal", "al1060", "inside_in", "190 °C"}, "limit.metal_not_judged", figure.Watch, "air_in"},
		"aluminium that is cool":        {[]string{"fin_type", "extruded", "fin_metal", "al1060", "inside_in", "50 °C", "air_in", "150 °C", "air_start_up", "150 °C", "air_upset", "150 °C"}, "limit.metal_not_judged", "", ""},
		"wound in hot air":              {[]string{"fin_type", "embedded", "air_upset", "450 °C"}, "limit.wound_in_flue", "", ""},
		"wound in flue gas":             {[]string{"gas", "flue", "fin_type", "embedded", "air_upset", "450 °C"}, "limit.wound_in_flue", figure.No, "air_upset"},
		"welded in flue gas":            {[]string{"gas", "flue", "air_upset", "450 °C"}, "limit.wound_in_flue", "", ""},
		"upset below normal":            {[]string{"air_upset", "300 °C"}, "notice.case_below", figure.Watch, "air_upset"},
		"start-up below normal":         {[]string{"start_up", "90 °C"}, "notice.case_below", figure.Watch, "start_up"},
		"hot flue gas radiates":         {[]string{"gas", "flue", "air_in", "520 °C"}, "notice.radiation", figure.Watch, "air_in"},
		"warm flue gas hardly":          {[]string{"gas", "flue", "air_in", "480 °C"}, "notice.radiation", "", ""},
		"air does not":                  {[]string{"air_in", "900 °C"}, "notice.radiation", "", ""},
		"acid on cold metal":            {[]string{"gas", "flue", "share_so2", "0.1 %"}, "notice.acid", figure.Watch, "to_trioxide"},
		"no acid without sulphur":       {[]string{"gas", "flue", "share_so2", "0 %"}, "notice.acid", "", ""},
	} {
		state, field := noticed(evaluate(t, read(t, append(append([]string{}, hotGas...), c.change...)...)), c.key)
		if state != c.state || field != c.field {
			t.Errorf("%s: %s is said as %q at %q, want %q at %q", name, c.key, state, field, c.state, c.field)
		}
	}
}

// Of a fin wound under tension the mean counts too: in hot gas it is hotter than the root on which it was wound.
func TestMeanOfTensionWoundFins(t *testing.T) {
	in := read(t, append(append([]string{}, hotGas...), "fin_type", "footed", "fin_metal", "al1060")...)
	all := rate(t, in)
	h := all.Case
	found := judgeCases(&in, all.Limits, h)
	root, mean, tip := h.Root["normal"], h.mean["normal"], h.tip["normal"]
	if !(root < mean && mean < tip) {
		t.Fatalf("root %g, mean %g, tip %g", root, mean, tip)
	}
	for _, f := range found {
		if f.Why.Key == "limit.above_standard" && f.Case == exchanger.Normal {
			if got := f.Why.Arg("temperature").(message.Amount).SI; got != mean {
				t.Errorf("held against the limit: %g, want the mean of %g", got, mean)
			}
			return
		}
	}
	t.Errorf("the joint is not held against its limit: %v", found)
}

// The figures of what falls out: no acid point without a word on sulphur.
func TestDewPointFigures(t *testing.T) {
	value := func(change ...string) (water, acid figure.Figure) {
		res := evaluate(t, read(t, append(append([]string{}, hotGas...), change...)...))
		water, _ = res.Find("water_dew")
		acid, _ = res.Find("acid_dew")
		return water, acid
	}
	// 16.2 % of 101.325 kPa is 16.41 kPa, which steam tables put between 55 C (15.76 kPa) and 56 C (16.53 kPa) (from memory).
	water, acid := value("gas", "flue")
	if math.Abs(water.SI-55.85) > 0.05 || acid.Absent.Key != "absent.sulphur_untold" {
		t.Errorf("water %g C, acid %q", water.SI, acid.Absent.Key)
	}
	if _, acid = value("gas", "flue", "share_so2", "0 %"); acid.Absent.Key != "absent.no_sulphur" {
		t.Errorf("acid %q", acid.Absent.Key)
	}
	// By hand: 0.019 mmHg of trioxide and 123.0 of water, 1000/T = 2.276 - 0.1415 + 0.3402 - 0.1183.
	if _, acid = value("gas", "flue", "share_so2", "0.1 %"); math.Abs(acid.SI-151.2) > 0.2 {
		t.Errorf("acid at %g C", acid.SI)
	}
	if water, _ = value(); water.Absent.Key != "absent.no_water" {
		t.Errorf("dry air drops water at %g", water.SI)
	}
}

// What cannot be known of flue gas is asked for, at the field.
func TestFlueGasIsAskedFor(t *testing.T) {
	for name, c := range map[string]struct {
		change     []string
		field, key string
	}{
		"moist air that is hot":     {[]string{"gas", "air"}, "", ""},
		"moist air of 400 C":        {[]string{"gas", "air", "air_in", "400 °C"}, "air_in", "error.moist_air_hot"},
		"half a per cent amiss":     {[]string{"share_n2", "72.8 %"}, "", ""},
		"a per cent amiss":          {[]string{"share_n2", "73.4 %"}, "share_n2", "error.flue_shares"},
		"dry without its water":     {[]string{"flue_basis", "dry", "share_n2", "88.6 %"}, "flue_water", "error.flue_water"},
		"dry with it":               {[]string{"flue_basis", "dry", "share_n2", "88.6 %", "flue_water", "15 %"}, "", ""},
		"fuel":                      {[]string{"flue_by", "fuel"}, "", ""},
		"fuel amiss":                {[]string{"flue_by", "fuel", "fuel_carbon", "70 %"}, "fuel_carbon", "error.flue_fuel"},
		"fuel that is oxygen":       {[]string{"flue_by", "fuel", "fuel_carbon", "40 %", "fuel_hydrogen", "0 %", "fuel_oxygen", "58.8 %"}, "", ""},
		"fuel that is mostly inert": {[]string{"flue_by", "fuel", "fuel_carbon", "10 %", "fuel_hydrogen", "0 %", "fuel_oxygen", "60 %", "fuel_nitrogen", "30 %"}, "fuel_oxygen", "error.flue_inert"},
		"oxygen left":               {[]string{"flue_by", "fuel", "burnt_by", "oxygen"}, "", ""},
		"more than air has":         {[]string{"flue_by", "fuel", "burnt_by", "oxygen", "burning_air_water", "20 %", "oxygen_left", "20 %"}, "oxygen_left", "error.flue_oxygen"},
	} {
		change := append(append([]string{}, hotGas...), append([]string{"gas", "flue"}, c.change...)...)
		_, err := Read(doc(t, change...))
		errs, _ := err.(FieldErrors)
		switch {
		case c.key == "" && err != nil:
			t.Errorf("%s: %v", name, err)
		case c.key != "" && (len(errs) != 1 || errs[0].Field != c.field || errs[0].Message.Key != c.key):
			t.Errorf("%s: %v, want %s at %s", name, err, c.key, c.field)
		}
	}
}

// What is no air is called none: neither in the names of figures nor in the symbols and meanings that any gas shares.
func TestGasIsNotCalledAir(t *testing.T) {
	texts := message.English()
	for gas, air := range map[string]bool{"air": true, "dry_air": true, "flue": false, "own": false} {
		r := evaluate(t, read(t, append(append([]string{}, hotGas...), "gas", gas, "air_humidity", "0 %")...))
		for _, id := range []string{"air_out", "effectiveness"} {
			f, _ := r.Find(id)
			if label := texts.Text("figure." + cmp.Or(f.Label, f.ID)); strings.Contains(strings.ToLower(label), "air") != air {
				t.Errorf("%s of %s is %q", id, gas, label)
			}
			for _, a := range f.Args {
				if said := texts.Text("symbol." + a.Symbol); strings.Contains(said+" ", "air ") {
					t.Errorf("%s is the %s", a.Symbol, said)
				}
			}
		}
	}
	for _, key := range []string{"group.air", "layer.outside_film", "symbol.T_g", "symbol.Δp", "meaning.air_out", "meaning.share_outside_film"} {
		if said := texts.Text(key); strings.Contains(strings.ToLower(said)+" ", "air ") {
			t.Errorf("%s says %q", key, said)
		}
	}
}

// Hot air that is too moist is refused at its humidity, which may be typed as the message allows.
func TestAirTooMoist(t *testing.T) {
	try := func(text string) FieldErrors {
		in, err := Read(doc(t, "air_in", "95 °C", "air_humidity", text, "inside_in", "150 °C", "inside_pressure", "2000 kPa"))
		if err != nil {
			t.Fatal(err)
		}
		_, err = Rate(in)
		errs, _ := err.(FieldErrors)
		return errs
	}
	errs := try("50 %")
	if len(errs) != 1 || errs[0].Field != "air_humidity" {
		t.Fatalf("refused with %v", errs)
	}
	said := message.English().Render(errs[0].Message, units.SI)
	_, most, _ := strings.Cut(said, "state ")
	most, _, _ = strings.Cut(most, " or less")
	if !strings.Contains(said, "Air of 95 °C with a relative humidity of 50") {
		t.Error(said)
	}
	// By hand: 0.2 kg/kg at 101,325 Pa is 0.2/0.82210 x 101,325 = 24,650 Pa of 84,610 at 95 C, 29.1 %.
	if most != "29.1 %" {
		t.Errorf("at most %s: %s", most, said)
	}
	if errs := try(most); len(errs) > 0 {
		t.Errorf("%s is refused too: %v", most, errs)
	}
}

// What a metal's last point stands in for is marked: of conductivity at the metal temperature, of expansion where a joint is held by it.
func TestMetalDataHeld(t *testing.T) {
	for name, c := range map[string]struct {
		change []string
		field  string // empty: nothing is said
	}{
		"within":                       {nil, ""},
		"a tube beyond its table":      {[]string{"tube_metal", "c70600", "metal_temperature", "210 °C"}, "metal_temperature"},
		"expansion beyond its table":   {[]string{"tube_metal", "c71500", "upset", "140 °C"}, "tube_metal"},
		"which an embedded fin can do": {[]string{"tube_metal", "c71500", "upset", "140 °C", "fin_type", "embedded"}, ""},
	} {
		change := append([]string{"inside_in", "80 °C", "start_up", "80 °C", "upset", "80 °C", "inside_pressure", "1500 kPa"}, c.change...)
		if _, at := noticed(evaluate(t, read(t, change...)), "notice.metal_held"); at != c.field {
			t.Errorf("%s: said at %q, want %q", name, at, c.field)
		}
	}
}
