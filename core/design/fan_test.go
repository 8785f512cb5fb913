package design

import (
	"math"
	"testing"

	"finwright/core/figure"
)

// amount returns a figure that has to be there.
func amount(t *testing.T, r Result, id string) float64 {
	t.Helper()
	f, there := r.Find(id)
	if !there || !f.Absent.None() {
		t.Fatalf("no %s: %v", id, f.Absent)
	}
	return f.SI
}

// Standard air has 1.2 kg/m3, normal dry air 1.2922: 7.7 % apart (trade table). A velocity may be stated in either.
func TestFaceVelocityInThreeStates(t *testing.T) {
	dry := []string{"air_humidity", "0 %", "air_in", "38 °C"}
	r := evaluate(t, read(t, dry...))
	if got := amount(t, r, "face_standard") / amount(t, r, "face_normal"); math.Abs(got-1.0769) > 3e-4 {
		t.Errorf("standard over normal velocity %.4f", got)
	}
	// 38 C and 101,325 Pa: 101325/(287.05 x 311.15) = 1.1345 kg/m3, by hand.
	for basis, density := range map[string]float64{"actual": 1.1345, "standard": 1.2, "normal": 1.2922} {
		r := evaluate(t, read(t, append(dry, "velocity_basis", basis, "face_velocity", "3 m/s")...))
		if got := amount(t, r, "face_actual"); math.Abs(got-3*density/1.1345) > 1e-3 {
			t.Errorf("3 m/s %s is %.4f m/s", basis, got)
		}
		if got := amount(t, r, "face_"+basis); math.Abs(got-3) > 1e-12 {
			t.Errorf("3 m/s %s comes back as %g", basis, got)
		}
	}
	// At altitude a normal velocity is the same flow, and a higher actual one: 0.8870 of the pressure at 1000 m.
	high := evaluate(t, read(t, append(dry, "velocity_basis", "normal", "altitude", "1000 m")...))
	if got := amount(t, high, "face_actual"); math.Abs(got-3*1.2922/1.1345/0.8870) > 2e-3 {
		t.Errorf("at 1000 m %.4f m/s", got)
	}
}

// The same volume of air at -10 C takes 18 % more power than at 38 C (trade table: 311.15/263.15).
func TestColdestAirTakesMorePower(t *testing.T) {
	r := evaluate(t, read(t, "air_humidity", "0 %", "air_in", "38 °C", "coldest_air", "-10 °C"))
	if got := amount(t, r, "fan_power_cold") / amount(t, r, "fan_power"); math.Abs(got-311.15/263.15) > 2e-3 {
		t.Errorf("%.4f times the power", got)
	}
	if f, _ := evaluate(t, read(t)).Find("fan_power_cold"); f.Absent.Key != "absent.no_coldest" {
		t.Errorf("not stated: %v", f.Absent)
	}
}

// An induced fan moves the warmer air, and more of it; the allowance and the velocity pressure add up by hand.
func TestFanAddsUp(t *testing.T) {
	forced := evaluate(t, read(t, "fan_entry", "30 %", "fan_area", "8 m²", "drop_method", "robinson_briggs_1966"))
	induced := evaluate(t, read(t, "draught", "induced"))
	out := amount(t, forced, "air_out") + 273.15
	if got := amount(t, induced, "fan_volume") / amount(t, forced, "fan_volume"); math.Abs(got-out/303.15) > 2e-3 {
		t.Errorf("induced moves %.4f times the volume, from 30 to %.1f C", got, out-273.15)
	}
	bank, volume := amount(t, forced, "fan_bank"), amount(t, forced, "fan_volume")
	density := amount(t, forced, "face_standard") * 1.2 / amount(t, forced, "face_actual")
	pressure := 1.3*bank + density*math.Pow(volume/8, 2)/2
	if got := amount(t, forced, "fan_pressure"); math.Abs(got/pressure-1) > 1e-12 {
		t.Errorf("pressure %g Pa, want %g", got, pressure)
	}
	if got := amount(t, forced, "fan_power"); math.Abs(got/(volume*pressure/0.65)-1) > 1e-12 {
		t.Errorf("power %g W", got)
	}
	// Air that warms speeds up and takes more than friction, gas that cools less.
	if bank <= amount(t, forced, "air_drop") {
		t.Errorf("the bank takes %g Pa", bank)
	}
	hot := read(t, "air_in", "150 °C", "air_humidity", "0 %", "inside_fluid", "own", "drop_method", "robinson_briggs_1966")
	if r := evaluate(t, hot); amount(t, r, "fan_bank") >= amount(t, r, "air_drop") {
		t.Errorf("a cooled gas takes %g Pa", amount(t, r, "fan_bank"))
	}
}

// A drop is shown once: where the correlation has the acceleration in it, the fan's part does not repeat it under another name.
func TestADropIsShownOnce(t *testing.T) {
	for method, twice := range map[string]bool{"esdu_86022_drop": false, "robinson_briggs_1966": true} {
		r := evaluate(t, read(t, "fan_entry", "30 %", "drop_method", method))
		f, there := r.Find("fan_bank")
		if there != twice {
			t.Errorf("%s: with acceleration beside without %v, want %v", method, there, twice)
		}
		if drop := amount(t, r, "air_drop"); !there && math.Abs(amount(t, r, "fan_entry_drop")/drop-0.3) > 1e-12 || there && f.SI == drop {
			t.Errorf("%s: %g Pa, with acceleration %g", method, drop, f.SI)
		}
	}
}

// The temperature that an induced fan bears is asked for, and held against the gas that leaves.
func TestInducedFanIsAskedForItsTemperature(t *testing.T) {
	for bears, want := range map[string]struct {
		state figure.State
		key   string
	}{"": {figure.Watch, "notice.fan_bears_missing"}, "40 °C": {figure.No, "notice.fan_too_hot"}, "200 °C": {}} {
		state, keys := remarked(evaluate(t, read(t, "draught", "induced", "fan_bears", bears)), "fan_power")
		if state != want.state || want.key != "" && (len(keys) != 1 || keys[0] != want.key) {
			t.Errorf("%q: %s %q", bears, state, keys)
		}
	}
	if _, keys := remarked(evaluate(t, read(t)), "fan_power"); len(keys) > 0 {
		t.Errorf("of a forced fan: %q", keys)
	}
}
