package design

import (
	"errors"
	"math"
	"testing"

	"finwright/core/figure"
	"finwright/core/rating"
)

// oil is a stream of 10 kg/s and 2 kJ/(kg K) from 100 C: 400 kW in 20 K, by hand.
func oil(more ...string) []string {
	return append([]string{"inside_fluid", "own", "own_fluid_heat", "2000 J/kg·K", "inside_in", "100 °C", "inside_flow", "10 kg/s"}, more...)
}

// Any two of flow, outlet and duty give the third.
func TestTwoGiveTheThird(t *testing.T) {
	flow := read(t, oil("inside_flow", "", "inside_out", "80 °C", "duty_wanted", "400 kW")...)
	if got := flow.Process.Flow; math.Abs(got-10) > 1e-9 || flow.Process.Third != rating.ThirdFlow {
		t.Errorf("flow %g kg/s", got)
	}
	duty := read(t, oil("inside_out", "80 °C")...)
	if got := duty.Bank.DutyWanted; math.Abs(got-4e5) > 1e-6 || duty.Process.Third != rating.ThirdDuty {
		t.Errorf("duty %g W", got)
	}
	out := read(t, oil("duty_wanted", "400 kW")...)
	if got := out.Process.Out.SI; math.Abs(got-80) > 1e-9 || out.Process.Third != rating.ThirdOut {
		t.Errorf("outlet %g C", got)
	}
	// Water from 90 to 70 C has 4.196 kJ/(kg K) at 80 C (steam tables, rounded): 15 kg/s give 1,259 kW.
	if got := read(t, "inside_out", "70 °C").Bank.DutyWanted; math.Abs(got/1.259e6-1) > 1e-3 {
		t.Errorf("water: %g W", got)
	}
	// In hot gas the stream is warmed.
	if got := read(t, oil("air_in", "200 °C", "duty_wanted", "400 kW")...).Process.Out.SI; math.Abs(got-120) > 1e-9 {
		t.Errorf("warmed to %g C", got)
	}
	for name, entries := range map[string][]string{
		"nothing but the inlet": oil("inside_flow", ""),
		"no flow, no duty":      oil("inside_flow", "", "inside_out", "80 °C"),
		"no flow, no outlet":    oil("inside_flow", "", "duty_wanted", "400 kW"),
	} {
		_, err := Read(doc(t, entries...))
		var wrong FieldErrors
		if !errors.As(err, &wrong) || !wrong.Has("inside_flow") {
			t.Errorf("%s: %v", name, err)
		}
	}
	for _, at := range []string{"100 °C", "110 °C", "20 °C"} { // the air comes at 30 C
		_, err := Read(doc(t, oil("inside_out", at)...))
		var wrong FieldErrors
		if !errors.As(err, &wrong) || !wrong.Has("inside_out") {
			t.Errorf("an outlet of %s: %v", at, err)
		}
	}
}

// Flow, outlet and duty agree within 1 %, or the contradiction is told with both duties.
func TestContradictionIsTold(t *testing.T) {
	for duty, told := range map[string]bool{"400 kW": false, "403.9 kW": false, "396.1 kW": false, "405 kW": true, "395 kW": true} {
		r := evaluate(t, read(t, oil("inside_out", "80 °C", "duty_wanted", duty)...))
		_, keys := remarked(r, "process_out")
		if got := len(keys) == 1 && keys[0] == "notice.contradiction"; got != told {
			t.Errorf("%s: %q", duty, keys)
		}
	}
}

// Found and wanted stand side by side, with the surplus clean and fouled. A clean bank does more than a fouled one, and no
// dirt means no difference.
func TestFoundBesideWanted(t *testing.T) {
	pair := func(r Result, id string) Asked {
		for _, p := range r.Pairs {
			if p.Figure == id {
				return p
			}
		}
		t.Fatalf("no pair %s", id)
		return Asked{}
	}
	r := evaluate(t, read(t, "duty_wanted", "1000 kW", "drop_allowed", "300 Pa", "inside_drop_allowed", "1 kPa"))
	fouled, clean := pair(r, "duty"), pair(r, "duty_clean")
	surplus, _ := r.Find("surplus")
	if fouled.Wanted.SI != 1e6 || clean.Found <= fouled.Found || math.Abs(surplus.SI-(fouled.Found/1e6-1)) > 1e-12 || fouled.Over.SI != surplus.SI {
		t.Errorf("fouled %+v, clean %+v, surplus %g", fouled, clean, surplus.SI)
	}
	bare := rate(t, read(t, "fouling_inside", "0"))
	if math.Abs(clean.Found/bare.Thermal.Duty.Heat-1) > 1e-9 {
		t.Errorf("clean %g W, and without dirt %g W", clean.Found, bare.Thermal.Duty.Heat)
	}
	if p := pair(r, "process_out"); !p.Wanted.Stated || p.Over.Stated {
		t.Errorf("outlet %+v", p)
	}
	if p := pair(r, "inside_loss"); p.State != figure.No || p.Over.SI <= 0 {
		t.Errorf("loss %+v", p)
	}
	if _, there := evaluate(t, read(t)).Find("duty_clean"); there {
		t.Error("a clean bank without a duty to hold it against")
	}
}
