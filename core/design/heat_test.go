package design

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"sync/atomic"
	"testing"

	"finwright/core/document"
	"finwright/core/exchanger"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/rating"
	"finwright/core/tube"
	"finwright/core/units"
)

func TestDutyBalances(t *testing.T) {
	for name, pairs := range map[string][]string{
		"water": nil,
		"steam": {"inside_fluid", "steam", "inside_in", "120 °C"},
		"oil":   {"inside_fluid", "own", "inside_in", "110 °C"},
		"cold":  {"inside_in", "5 °C", "air_in", "35 °C"},
		"gas":   {"gas", "own", "air_in", "300 °C", "inside_in", "120 °C", "inside_flow", "60 kg/s", "inside_pressure", "4000 kPa", "fin_type", "welded", "fin_metal", "cs1010"},
	} {
		in := read(t, pairs...)
		h := rate(t, in)
		if !h.Absent.None() {
			t.Fatalf("%s: %s", name, message.English().Render(h.Absent, units.SI))
		}
		balance(t, name, in, h.Thermal)
	}
}

// balance holds the heat against both streams to 1e-9.
func balance(t testing.TB, name string, in field.Input, th rating.Thermal) {
	t.Helper()
	d := th.Duty
	rise := d.AirOut - float64(in.Air.In)
	air := th.Flow.FaceMassVelocity * th.Bank.FaceArea() * th.Gas.HeatCapacity * rise
	if math.Abs(air-d.Heat) > 1e-9*math.Abs(d.Heat) {
		t.Errorf("%s: %g W given, %g W taken up", name, d.Heat, air)
	}
	if in.Process.Fluid == rating.Steam {
		if d.ProcessOut != float64(in.Process.In) {
			t.Errorf("%s: steam leaves at %g", name, d.ProcessOut)
		}
		return
	}
	capacity := th.Flow.FaceMassVelocity * th.Bank.FaceArea() * th.Gas.HeatCapacity / d.Ratio
	if given := capacity * (float64(in.Process.In) - d.ProcessOut); math.Abs(given-d.Heat) > 1e-9*math.Abs(d.Heat) {
		t.Errorf("%s: %g W, the process gives %g W", name, d.Heat, given)
	}
}

// Random designs, each also with inputs halved and doubled: whatever passes is finite and balanced.
func TestRandomBanksBalance(t *testing.T) {
	var rated atomic.Int64
	count := proof.Proof{Share: 60, Full: 3500, Seed: 7}.Run(t, func(c *proof.Case) {
		between := func(lo, hi float64) float64 { return lo * math.Pow(hi/lo, c.Rand.Float64()) }
		v := map[string]float64{
			"tube_od": between(12, 60), "fin_height": between(4, 22), "strip_thickness": between(0.25, 1.2), "fin_pitch": between(80, 430),
			"face_velocity": between(0.5, 12), "rows": math.Round(between(1, 10)), "tubes_per_row": math.Round(between(2, 120)),
			"inside_flow": between(0.5, 200), "tube_length": between(1000, 14000),
		}
		for _, times := range []float64{1, 0.5, 2} {
			key := []string{"tube_od", "fin_height", "strip_thickness", "fin_pitch", "face_velocity", "inside_flow", "tube_length"}[c.Rand.IntN(7)]
			pairs := []string{"passes", "1", "air_in", fmt.Sprintf("%.3g", between(5, 60)), "inside_in", fmt.Sprintf("%.3g", between(70, 170))}
			for k, x := range v {
				if k == key {
					x *= times
				}
				pairs = append(pairs, k, fmt.Sprintf("%.6g", x))
			}
			in, h, err := ReadAndRate(doc(c, pairs...), nil)
			if err != nil {
				continue
			}
			if !h.Absent.None() {
				c.Fatalf("%v: %s", pairs, message.English().Render(h.Absent, units.SI))
			}
			rated.Add(1)
			if h.Thermal.Rounds > rating.MostRounds/2 {
				c.Errorf("%v: settles in %d rounds of %d", pairs, h.Thermal.Rounds, rating.MostRounds)
			}
			balance(c, strings.Join(pairs, " "), in, h.Thermal)
			for q, a := range rating.Answers(&in.Input, &h.Thermal) {
				if math.IsNaN(a.Value) || math.IsInf(a.Value, 0) || a.Value <= 0 {
					c.Fatalf("%v: %s = %g", pairs, q, a.Value)
				}
			}
		}
	})
	if n := int(rated.Load()); 21*n < 16*3*count {
		t.Errorf("only %d of %d were valid", n, 3*count)
	}
}

func TestAboveALimitNamesCaseAndLimit(t *testing.T) {
	for name, c := range map[string]struct {
		pairs  []string
		figure string
		state  figure.State
		words  []string
	}{
		"normal":  {[]string{"inside_in", "150 °C", "inside_pressure", "2000 kPa"}, "tested_normal", figure.No, []string{"normal", "130"}},
		"upset":   {[]string{"upset", "230 °C"}, "tested_upset", figure.No, []string{"at upset", "130"}},
		"start":   {[]string{"start_up", "260 °C", "fin_type", "knurled_footed"}, "tested_start_up", figure.No, []string{"at start-up", "200"}},
		"house":   {[]string{"house_limit", "80 °C"}, "tested_normal", figure.Watch, []string{"80"}},
		"unasked": {nil, "tested_start_up", figure.Watch, []string{"start-up"}},
	} {
		f, ok := evaluate(t, read(t, c.pairs...)).Find(c.figure)
		if !ok || f.State != c.state {
			t.Errorf("%s: state %s, want %s", name, f.State, c.state)
			continue
		}
		var text strings.Builder
		for _, m := range f.Why {
			text.WriteString(message.English().Render(m, units.SI) + " ")
		}
		for _, w := range c.words {
			if !strings.Contains(strings.ToLower(text.String()), w) {
				t.Errorf("%s: %q does not say %q", name, text.String(), w)
			}
		}
	}
	all := evaluate(t, read(t, "start_up", "90 °C", "upset", "95 °C"))
	for _, id := range []string{"tested_normal", "tested_start_up", "tested_upset"} {
		if f, _ := all.Find(id); f.State != figure.Kept || f.Tests.Arg("limit").(message.Amount).SI != 130 {
			t.Errorf("%s: within a limit that is only remembered, yet %q against %v", id, f.State, f.Tests)
		}
	}
}

// With hot gas outside the hottest root and its tip in normal running lie between water
// and gas, as the drawing shows them; only a tube whose stream fails gets as hot as the gas.
func TestHotGasOutside(t *testing.T) {
	gas := []string{"gas", "own", "air_in", "340 °C", "inside_in", "105 °C", "inside_pressure", "15000 kPa", "fin_type", "welded", "fin_metal", "cs1010"}
	hot := func(pairs ...string) Result { return evaluate(t, read(t, slices.Concat(gas, pairs)...)) }
	in := read(t, gas...)
	res := hot("start_up", "105 °C", "upset", "360 °C")
	rows := res.Heat.Thermal.Duty.HottestRoot.Celsius
	value := func(id string) float64 { f, _ := res.Find(id); return f.SI }
	root, tip := value("hottest_root"), value("hottest_tip")
	if root != rows || root <= 105 || root >= 250 || tip <= root || tip >= 340 {
		t.Errorf("root %g, tip %g; the rows say %g", root, tip, rows)
	}
	f, err := in.MetalField(&res.Heat.Thermal)
	if err != nil || math.Abs(f.Root-root) > 10 || math.Abs(f.Tip-tip) > 10 {
		t.Errorf("drawn from %g to %g, said to be %g and %g (%v)", f.Root, f.Tip, root, tip, err)
	}
	if math.Abs(value("root_start_up")-root) > 1e-9 || value("root_upset") != 360 {
		t.Errorf("%g and %g, want %g of normal running and 360, the bound of a stream that is then the hotter", value("root_start_up"), value("root_upset"), root)
	}
	res = hot("start_up", "105 °C", "air_upset", "370 °C", "flow_lost", "possible")
	if got := value("root_flow_lost"); got != 370 {
		t.Errorf("without a stream the metal is %g, want the 370 of the hottest gas", got)
	}
	if share := (root - 340) / (105 - 340); math.Abs(value("root_upset")-(370+share*(105-370))) > 1e-9 {
		t.Errorf("hotter gas at upset makes a root of %g", value("root_upset"))
	}

	// Heat into the tubes is as much a duty as heat out of them, and grows with the velocity.
	if duty, _ := res.Find("duty"); duty.SI != -res.Heat.Thermal.Duty.Heat || duty.Label != "duty_in" {
		t.Errorf("duty %g W, %q", duty.SI, duty.Label)
	}
	last := 0.0
	SweepBank(in, held(in), "face_velocity", []float64{2, 3, 4}, true, func(_ int, a map[rating.Quantity]rating.Answer) {
		if a[rating.Duty].Value <= last {
			t.Errorf("the duty falls from %g to %g W in faster gas", last, a[rating.Duty].Value)
		}
		last = a[rating.Duty].Value
	})

	said := func(res Result, key string) (message.Message, bool) {
		for _, n := range res.Notices {
			if n.Message.Key == key {
				return n.Message, true
			}
		}
		return message.Message{}, false
	}
	// The joint sees its root, which is hotter than the water that the form states.
	if why, ok := said(hot("fin_type", "knurled_footed", "inside_flow", "1 kg/s"), "limit.above_standard"); !ok || why.Arg("temperature").(message.Amount).SI <= 105 {
		t.Errorf("a root above the limit of its joint: %v", why)
	}
	if why, ok := said(hot("fin_type", "extruded", "fin_metal", "al1060", "flow_lost", "possible"), "limit.above_standard"); !ok || why.Arg("temperature").(message.Amount).SI != 340 {
		t.Errorf("a dry run in gas of 340 °C: %v", why)
	}
	if why, ok := said(hot("start_up", "105 °C", "upset", "105 °C"), "limit.above_metal"); ok {
		t.Errorf("steel fins in gas of 340 °C: %v", why)
	}
	// A tube that is not fed takes the gas temperature, so its metal does.
	if why, ok := said(hot("flow_lost", "possible", "tube_metal_limit", "320 °C"), "limit.above_tube_metal"); !ok || why.Arg("temperature").(message.Amount).SI != 340 {
		t.Errorf("a tube of 320 °C at most in gas of 340 °C: %v", why)
	}
}

func TestOutOfRangeIsNeverSilent(t *testing.T) {
	res := evaluate(t, read(t, "face_velocity", "0.3 m/s"))
	f, _ := res.Find("film")
	if f.State != figure.Outside || len(f.Why) == 0 {
		t.Errorf("film at a crawl is %s", f.State)
	}
	in := 0
	for _, m := range res.Heat.Methods {
		if m.InRange {
			in++
		} else if len(m.Why) == 0 {
			t.Errorf("%s is out of range and does not say why", m.ID)
		}
	}
	if in == len(res.Heat.Methods) {
		t.Error("every correlation claims to hold at 0.3 m/s")
	}
}

func TestTubesTooCloseAreRefused(t *testing.T) {
	_, err := Read(doc(t, "tube_pitch", "58 mm"))
	if errs, ok := err.(FieldErrors); !ok || !errs.Has("tube_pitch") {
		t.Errorf("tubes at 58 mm with fins of 57.15 mm: %v", err)
	}
	_, err = Read(doc(t, "row_pitch", "20 mm"))
	if errs, ok := err.(FieldErrors); !ok || !errs.Has("row_pitch") {
		t.Errorf("rows at 20 mm: %v", err)
	}
	h := rate(t, read(t, "tube_pitch", "58 mm", "film_source", "given"))
	if h.Absent.None() {
		t.Error("a bank that cannot be built was rated")
	}
}

func TestInverseQuestions(t *testing.T) {
	in := read(t)
	duty := rate(t, in).Thermal.Duty.Heat
	res := evaluate(t, read(t, "duty_wanted", fmt.Sprintf("%.6g W", duty*0.999), "drop_allowed", fmt.Sprintf("%.8g Pa", dropOf(t, in))))
	if f, ok := res.Find("tubes_wanted"); !ok || f.SI != 120 {
		t.Errorf("tubes for the duty of 120 tubes: %g", f.SI)
	}
	if f, ok := res.Find("velocity_allowed"); !ok || math.Abs(f.SI-3) > 1e-3 {
		t.Errorf("velocity for the drop at 3 m/s: %g", f.SI)
	}
}

// What is asked of the bank is answered at the figure, at its field and in the list of remarks.
func TestWishesAreJudged(t *testing.T) {
	in := read(t)
	duty, drop := rate(t, in).Thermal.Duty.Heat, dropOf(t, in)
	times := func(x, by float64, unit string) string { return fmt.Sprintf("%.8g %s", x*by, unit) }
	for name, c := range map[string]struct {
		pairs         []string
		figure, field string
		state         figure.State
		words         string
	}{
		"no duty wanted": {nil, "duty", "", figure.Plain, ""},
		"carried":        {[]string{"duty_wanted", times(duty, 0.9, "W")}, "duty", "", figure.Good, ""},
		"prints as it":   {[]string{"duty_wanted", times(duty, 1.0004, "W")}, "duty", "", figure.Good, ""},
		"short":          {[]string{"duty_wanted", times(duty, 1.25, "W")}, "duty", "duty_wanted", figure.No, "20 % short"},
		"heats":          {[]string{"inside_in", "5 °C", "air_in", "35 °C", "duty_wanted", "1 kW"}, "duty", "", figure.Good, ""},
		"no drop":        {nil, "air_drop", "", figure.Good, ""},
		"kept":           {[]string{"drop_allowed", times(drop, 0.9996, "Pa")}, "air_drop", "", figure.Good, ""},
		"over":           {[]string{"drop_allowed", times(drop, 0.8, "Pa")}, "air_drop", "drop_allowed", figure.No, "25 % above"},
		"over, by guess": {[]string{"face_velocity", "0.3 m/s", "drop_allowed", "1 Pa"}, "air_drop", "drop_allowed", figure.No, "allowed"},
	} {
		res := evaluate(t, read(t, c.pairs...))
		f, _ := res.Find(c.figure)
		if f.State != c.state {
			t.Errorf("%s: %s is %q, want %q", name, c.figure, f.State, c.state)
		}
		said := ""
		for _, n := range res.Notices {
			if n.Figure == c.figure && n.State == figure.No && n.Field == c.field {
				said = message.English().Render(n.Message, units.SI)
			}
		}
		if !strings.Contains(said, c.words) || (said == "") != (c.words == "") {
			t.Errorf("%s: %q does not say %q", name, said, c.words)
		}
	}
}

func dropOf(t testing.TB, in field.Input) float64 {
	th := rate(t, in).Thermal
	return in.DropJudged(&th)
}

func TestHeatSweepPassesTheDesign(t *testing.T) {
	in := read(t)
	th := rate(t, in).Thermal
	now := rating.Answers(&in.Input, &th)
	SweepBank(in, held(in), "face_velocity", []float64{2, 3, 4}, true, func(i int, a map[rating.Quantity]rating.Answer) {
		if i != 1 {
			return
		}
		for q, want := range now {
			if math.Abs(a[q].Value-want.Value) > 1e-4*want.Value {
				t.Errorf("%s: %g on the curve, %g as a figure", q, a[q].Value, want.Value)
			}
		}
	})
}

// A curve keeps to the correlations of its design: faster air never cools less. Where they end it says so.
func TestHeatSweepKeepsItsCorrelations(t *testing.T) {
	in := read(t)
	th := rate(t, in).Thermal
	if !th.Films[th.Film].InRange {
		t.Fatal("the example is out of its correlation's range")
	}
	within := map[bool]bool{}
	last := map[rating.Quantity]float64{}
	SweepBank(in, held(in), "face_velocity", []float64{1, 1.25, 1.5, 1.75, 2, 2.5, 3, 4, 5}, true, func(i int, a map[rating.Quantity]rating.Answer) {
		within[a[rating.Film].InRange] = true
		for _, q := range []rating.Quantity{rating.Film, rating.AirDrop, rating.UBare, rating.Duty} {
			if a[q].Value <= last[q] {
				t.Errorf("%s falls from %g to %g at point %d", q, last[q], a[q].Value, i)
			}
			last[q] = a[q].Value
		}
	})
	if len(within) != 2 {
		t.Errorf("in range %v: the sweep was to cross the edge", within)
	}
}

// Heat for each kilogram of fin falls with height at one clearance, though heat for each metre keeps rising.
func TestTallerStopsPaying(t *testing.T) {
	var perWeight, perMetre []float64
	in := read(t, "hold_space", "clearance", "hold_air", "velocity")
	SweepBank(in, held(in), "fin_height", []float64{0.010, 0.013, 0.016, 0.019}, true, func(_ int, a map[rating.Quantity]rating.Answer) {
		perWeight = append(perWeight, a[rating.PerWeight].Value)
		perMetre = append(perMetre, a[rating.Duty].Value)
	})
	for i := 1; i < len(perWeight); i++ {
		if perWeight[i] >= perWeight[i-1] || perMetre[i] <= perMetre[i-1] {
			t.Errorf("per kilogram %v, in all %v", perWeight, perMetre)
			break
		}
	}
}

func TestCasesAreComplete(t *testing.T) {
	for _, in := range []field.Input{read(t), read(t, "gas", "dry_air", "air_in", "400 °C")} {
		for _, c := range exchanger.Cases {
			if _, ok := field.Find(caseField(&in, c)); !ok || caseField(&in, c) == caseField(&in, "") {
				t.Errorf("no field for case %s", c)
			}
		}
	}
}

func BenchmarkRate(b *testing.B) {
	in, err := Read(document.New())
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		rate(b, in)
	}
}

// The field of every example carries within 4 % the heat that the resistances in
// series say: those know no constriction at the fin's root.
func TestMetalFieldAgreesWithTheSeries(t *testing.T) {
	for _, typ := range tube.FinTypes() {
		in := read(t, "fin_type", string(typ), "film_source", "computed")
		th := rate(t, in).Thermal
		f, err := in.MetalField(&th)
		if err != nil {
			t.Fatal(err)
		}
		series := th.Overall.OnBare * math.Pi * float64(in.Tube.OD) * float64(in.Tube.Pitch())
		if ratio := series / f.Conductance; ratio < 0.995 || ratio > 1.04 {
			t.Errorf("%s: series over field %.4f", typ, ratio)
		}
		res := evaluate(t, in)
		u := res.Heat.Thermal.Overall.OnBare
		res.AddField(&in)
		if x, ok := res.Find("root_constriction"); !ok || math.Abs(x.SI-(series/f.Conductance-1)) > 1e-12 || res.Heat.Thermal.Overall.OnBare != u {
			t.Errorf("%s: constriction %+v", typ, x)
		}
		if f.Tip >= f.Root || f.Hottest > float64(in.Process.In) {
			t.Errorf("%s: root %g, tip %g, hottest %g", typ, f.Root, f.Tip, f.Hottest)
		}
	}
}

// The working of the efficiency shows the film that was used, computed or given.
func TestWorkingShowsTheFilmInForce(t *testing.T) {
	for _, source := range []string{"computed", "given"} {
		res := evaluate(t, read(t, "film_source", source))
		f, _ := res.Find("fin_parameter")
		var h, k, strip, tip, root float64
		for _, a := range f.Args {
			switch a.Symbol {
			case "h":
				h = a.SI
			case "k":
				k = a.SI
			case "t":
				strip = a.SI
			case "D_f":
				tip = a.SI
			case "D_r":
				root = a.SI
			}
		}
		if got := math.Sqrt(2*h/(k*strip)) * (tip - root) / 2; math.Abs(got-f.SI) > 1e-12*f.SI {
			t.Errorf("%s: the numbers shown give mL %g, the figure says %g", source, got, f.SI)
		}
		eta, _ := res.Find("fin_efficiency")
		for _, a := range eta.Args {
			if a.SI == 0 {
				t.Errorf("%s: the working puts nought in for %s", source, a.Symbol)
			}
		}
	}
}

// A mark stands at the figure that was held against the limit: the stream of 150 °C is refused, not its root of less than 130.
func TestAMarkSaysWhatItTests(t *testing.T) {
	res := evaluate(t, read(t, "inside_in", "150 °C", "inside_pressure", "2000 kPa", "inside_flow", "1 kg/s", "start_up", "90 °C", "upset", "90 °C"))
	root, _ := res.Find("hottest_root")
	tested, _ := res.Find("tested_normal")
	if root.SI >= 130 || root.State != figure.Plain {
		t.Errorf("a root of %g °C reads %q", root.SI, root.State)
	}
	if tested.SI != 150 || tested.State != figure.No {
		t.Errorf("a stream of %g °C reads %q", tested.SI, tested.State)
	}
	for _, g := range res.Groups {
		for _, f := range g.Figures {
			if f.Tests.None() && f.State != figure.Plain && len(f.Why) == 0 {
				t.Errorf("%s is %s, and nothing says against what", f.ID, f.State)
			}
		}
	}
}

// A film in the tubes outside its range is remarked on too: a row and a full answer agree.
func TestInsideFilmOutsideItsRangeIsRemarkedOn(t *testing.T) {
	in := read(t, "inside_fluid", "own", "own_fluid_conductivity", "100 W/m·K", "own_fluid_viscosity", "0.05 mPa·s") // of Prandtl number 0.001, as liquid metals
	res := evaluate(t, in)
	f, _ := res.Find("inside_film")
	if res.Heat.Thermal.Inside.InRange() {
		t.Fatal("the film is in its range")
	}
	said := false
	for _, n := range res.Notices {
		said = said || n.Figure == "inside_film" && n.State == figure.Outside
	}
	if !said || f.State != figure.Outside {
		t.Errorf("%s, remarked on %v", f.State, said)
	}
}
