package design

import (
	"math"
	"testing"

	"finwright/core/figure"
	"finwright/core/rating"
)

// Rows times tubes per row times bundles against the quantity: any difference is said, and taken over at a press.
func TestOrderAndBankAreTied(t *testing.T) {
	for name, c := range map[string]struct {
		quantity, bundles string
		difference        float64
		told              bool
	}{
		"as many": {"120", "1", 0, false}, "two bundles": {"240", "2", 0, false}, "spares": {"124", "1", 4, true},
		"missing": {"119", "1", -1, true}, "a sample": {"1", "1", -119, false},
	} {
		r := evaluate(t, read(t, "quantity", c.quantity, "bundles", c.bundles))
		_, keys := remarked(r, "order_difference")
		if got := amount(t, r, "order_difference"); got != c.difference || (len(keys) == 1) != c.told {
			t.Errorf("%s: %g, %q", name, got, keys)
		}
	}
	for _, n := range evaluate(t, read(t, "quantity", "124")).Notices {
		if n.Figure == "order_difference" && (len(n.Change) != 1 || n.Change[0].SI != 120) {
			t.Errorf("offered %+v", n.Change)
		}
	}
}

// Four rows of 30 at 63.5 mm: 1905 mm wide, and 3 x 54.99 + 57.15 = 222.1 mm deep, by hand. The bore of 21.184 mm holds
// 0.35246 kg of water a metre: 1.9337 kg in 18 ft.
func TestBankDimensionsByHand(t *testing.T) {
	r := evaluate(t, read(t))
	if w, d := amount(t, r, "bank_width"), amount(t, r, "bank_depth"); math.Abs(w-1.905) > 1e-9 || math.Abs(d-(3*63.5*math.Sqrt(3)/2+57.15)/1000) > 1e-9 {
		t.Errorf("%g m wide, %g m deep", w, d)
	}
	dry, full, lifted := amount(t, r, "mass_dry"), amount(t, r, "mass_full"), amount(t, r, "mass_lifted")
	if math.Abs((full-dry)/120-1.9337) > 2e-4 || math.Abs(lifted/dry-1.4) > 1e-12 || math.Abs(dry/120-amount(t, r, "tube_weight")) > 1e-9 {
		t.Errorf("dry %g kg, full %g kg, lifted %g kg", dry, full, lifted)
	}
}

// What carries the duty wanted is offered at a press, tubes in a row or rows, and carries it; of a retube neither is.
func TestTubesForTheDutyAreTakenOver(t *testing.T) {
	offers := func(entries ...string) map[string]float64 {
		out := map[string]float64{}
		for _, n := range evaluate(t, read(t, append([]string{"duty_wanted", "1300 kW"}, entries...)...)).Notices {
			if n.Figure == "tubes_wanted" {
				out[n.Change[0].Field] = n.Change[0].SI
			}
		}
		return out
	}
	got := offers()
	if len(got) != 2 || got["tubes_per_row"] <= 30 || got["rows"] <= 4 {
		t.Fatalf("offered %v", got)
	}
	for field, n := range got {
		in := read(t, "duty_wanted", "1300 kW")
		if field == "rows" {
			in.Bank.Rows = int(n)
		} else {
			in.Bank.TubesPerRow = int(n)
		}
		if q := rate(t, in).Thermal.Duty.Heat; q < 1300e3*(1-2*wishMargin) {
			t.Errorf("%g %s carry %g W", n, field, q)
		}
	}
	if got := offers("duty_wanted", "1000 kW"); len(got) > 0 {
		t.Errorf("a bank that carries its duty is offered %v", got)
	}
	if got := offers("job_kind", "retube"); len(got) > 0 {
		t.Errorf("a retube is offered %v", got)
	}
}

// A retube is asked for at least the old U x A and at most the old drop, under the customer's ceiling.
func TestRetubeHasItsQuestion(t *testing.T) {
	new := evaluate(t, read(t))
	// U on the bare tube times pi d L times 120 tubes.
	now := amount(t, new, "ua")
	if want := amount(t, new, "u_bare") * math.Pi * 0.0254 * (18*0.3048 - 2*0.0381) * 120; math.Abs(now/want-1) > 1e-9 {
		t.Errorf("UA %g W/K, want %g", now, want)
	}
	for name, c := range map[string]struct {
		entries []string
		figure  string
		state   figure.State
		key     string
	}{
		"not stated":      {nil, "ua", figure.Watch, "notice.old_ua_missing"},
		"enough":          {[]string{"old_ua", "20 kW/K"}, "ua", "", ""},
		"short":           {[]string{"old_ua", "90 kW/K"}, "ua", figure.No, "notice.ua_short"},
		"drop not stated": {nil, "air_drop", figure.Watch, "notice.old_drop_missing"},
		"fin under":       {[]string{"fin_od_most", "57.15 mm"}, "fin_od", "", ""},
		"fin over":        {[]string{"fin_od_most", "57 mm"}, "fin_od", figure.No, "notice.fin_over"},
	} {
		state, keys := remarked(evaluate(t, read(t, append([]string{"job_kind", "retube"}, c.entries...)...)), c.figure)
		if state != c.state || c.key != "" && (len(keys) != 1 || keys[0] != c.key) {
			t.Errorf("%s: %s %q", name, state, keys)
		}
	}
	if _, keys := remarked(new, "ua"); len(keys) > 0 {
		t.Errorf("a new bank is asked %q", keys)
	}
}

// Curves and the tubes for a duty keep to what is held: with the mass flow held a wider row runs slower, and more tubes are needed.
func TestCurvesKeepToWhatIsHeld(t *testing.T) {
	duty := func(entries ...string) (low float64) {
		in := read(t, entries...)
		th := rate(t, in).Thermal
		kept := in.Keep(&th)
		SweepBank(in, &kept, "fin_height", []float64{0.010}, true, func(_ int, a map[rating.Quantity]rating.Answer) { low = a[rating.Duty].Value })
		return low
	}
	entered, face := duty("hold_space", "entered", "hold_air", "velocity"), duty("hold_space", "face", "hold_air", "velocity")
	if face <= entered { // lower fins stand closer: more tubes in the same face
		t.Errorf("%g W over the same face, %g W with as many tubes", face, entered)
	}
	if mass := duty("hold_space", "entered", "hold_air", "mass_flow"); mass <= entered { // a narrower face runs faster
		t.Errorf("%g W with the mass flow, %g W with the velocity", mass, entered)
	}
	tubes := func(entries ...string) float64 {
		return amount(t, evaluate(t, read(t, append(entries, "duty_wanted", "1300 kW")...)), "tubes_wanted")
	}
	if a, b := tubes("hold_air", "velocity"), tubes("hold_air", "mass_flow"); b <= a {
		t.Errorf("%g tubes with the velocity, %g with the mass flow", a, b)
	}
}
