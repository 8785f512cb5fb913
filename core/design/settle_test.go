package design

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"sync/atomic"
	"testing"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/fluid"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/rating"
	"finwright/core/units"
)

// plausible draws a bank that somebody could ask for: any fluid, gas, fin type, arrangement and dirt.
func plausible(r *rand.Rand) map[string]string {
	between := func(low, high float64) string { return fmt.Sprintf("%.6g", low*math.Pow(high/low, r.Float64())) }
	evenly := func(low, high float64) string { return fmt.Sprintf("%.6g", low+(high-low)*r.Float64()) }
	one := func(of ...string) string { return of[r.IntN(len(of))] }
	rows := 1 + r.IntN(10)
	v := map[string]string{
		"tube_od": between(15, 60), "tube_wall": "2", "fin_height": between(5, 20), "strip_thickness": between(0.3, 1), "fin_pitch": between(100, 430),
		"fin_type": one("footed", "embedded", "extruded", "welded", "edge_wound", "knurled_footed"), "tip_clearance": between(3, 30), "tube_length": between(1000, 15000),
		"layout": one("staggered", "in_line"), "rows": fmt.Sprint(rows), "tubes_per_row": between(2, 150), "passes": fmt.Sprint(1 + r.IntN(rows)),
		"air_in": evenly(-20, 60), "air_humidity": evenly(0, 100), "altitude": evenly(0, 3000), "face_velocity": between(0.4, 12),
		"fouling_outside": one("0", "0", evenly(0, 2e-3)), "fouling_inside": one("0", "0.00018", evenly(0, 2e-3)),
		"inside_flow": between(0.05, 300), "inside_in": evenly(5, 180), "inside_pressure": "2000",
	}
	v["tubes_per_row"] = fmt.Sprint(2 + r.IntN(150))
	switch v["inside_fluid"] = one("water", "steam", "own", "ethylene_glycol", "propylene_glycol"); v["inside_fluid"] {
	case "steam":
		v["inside_in"] = evenly(70, 250)
	case "ethylene_glycol", "propylene_glycol":
		v["inside_in"] = evenly(-10, 95)
	case "own":
		v["inside_in"], v["own_fluid_viscosity"] = evenly(-20, 250), between(0.1, 300)
	}
	if r.IntN(5) == 0 { // hot gas outside
		v["gas"], v["air_in"] = one("own", "dry_air", "flue"), evenly(100, 390)
		if v["inside_fluid"] == "steam" {
			v["gas"], v["air_in"] = "air", "20"
		}
		v["inside_pressure"] = "15000"
	}
	return v
}

// set writes values, numbers without unit in that of the metric system, over a new document.
func set(t testing.TB, values map[string]string) document.Document {
	t.Helper()
	unit := map[string]string{"air_in": "°C", "inside_in": "°C", "air_humidity": "%", "inside_pressure": "kPa", "fin_pitch": "1/m"}
	var pairs []string
	for _, f := range field.Fields {
		if text, ok := values[f.ID]; ok {
			if u := unit[f.ID]; u != "" {
				text += " " + u
			}
			pairs = append(pairs, f.ID, text)
		}
	}
	return doc(t, pairs...)
}

// physical reports whether a bank has no answer because its streams have none: water that could freeze or boil, steam that is
// not hotter than the air, gas hotter, colder or wetter than is known of.
func physical(in *field.Input) bool {
	low, high := min(float64(in.Air.In), float64(in.Process.In)), max(float64(in.Air.In), float64(in.Process.In))
	if in.Air.Kind == rating.MoistAir {
		p, err := fluid.PressureAtAltitude(float64(in.Air.Altitude))
		_, wet := fluid.HumidityRatio(float64(in.Air.In)+273.15, p, in.Air.Humidity)
		if err != nil || wet != nil || low < -40 || high > 400 {
			return true
		}
	}
	switch in.Process.Fluid {
	case rating.Steam:
		return in.Process.In <= in.Air.In
	case rating.Ethylene, rating.Propylene:
		freezes, _ := in.Freezing()
		return low < freezes || high > 100 // known no further
	case rating.Water:
		boils, err := fluid.SaturationTemperature(in.Process.Pressure.SI)
		return err != nil || low < 0 || high > boils-273.15
	}
	return false
}

// Every plausible bank has an answer, and the same one by itself and on a curve.
func TestEveryBankSettles(t *testing.T) {
	var rated, refused, rounds, most atomic.Int64
	count := proof.Proof{Share: 150, Full: 20000, Seed: 71}.Run(t, func(c *proof.Case) {
		v := plausible(c.Rand)
		in, err := Read(set(c, v))
		if err != nil {
			return // a tube or bank that cannot be built
		}
		h, err := Rate(in)
		if err != nil {
			refused.Add(1)
			var errs FieldErrors
			if !errors.As(err, &errs) || errs.Has("not_settled") || !physical(&in) {
				c.Errorf("%v: %v", v, message.English().Render(errs[0].Message, units.SI))
			}
			return
		}
		th := h.Thermal
		rated.Add(1)
		rounds.Add(int64(th.Rounds))
		for n := int64(th.Rounds); n > most.Load(); {
			most.Store(n)
		}
		balance(c, fmt.Sprint(v), in, th)

		kept := in.Keep(nil)
		rating.SweepBank(1, func(int) *rating.Input { return &in.Input }, &kept, "fin_height", true, func(_ int, a map[rating.Quantity]rating.Answer) {
			apart := math.Abs(float64(in.Process.In - in.Air.In))
			if got, want := a[rating.Duty].Value, math.Abs(th.Duty.Heat); math.Abs(got-want) > 2e-3/apart*want+1e-9*want {
				c.Errorf("%v: %.9g W on a curve, %.9g W by itself", v, got, want)
			}
		})
	})
	n := rated.Load()
	t.Logf("%d of %d banks rated, %d refused by their streams; %.1f rounds each, %d at most", n, count, refused.Load(), float64(rounds.Load())/float64(n), most.Load())
	if 2*int(n) < count {
		t.Errorf("only %d of %d could be built", n, count)
	}
}

// More dirt in a tube that steam condenses in never raises duty, U or condensate, however the film then lies.
func TestMoreFoulingNeverHelps(t *testing.T) {
	proof.Proof{Share: 40, Full: 4000, Seed: 72}.Run(t, func(c *proof.Case) {
		v := plausible(c.Rand)
		v["inside_fluid"], v["gas"], v["air_in"], v["inside_in"] = "steam", "air", "20", fmt.Sprintf("%.4g", 70+180*c.Rand.Float64())
		in, err := Read(set(c, v))
		if err != nil {
			return
		}
		var last rating.Thermal
		for i := range 12 {
			in.Process.Fouling = 2e-4 * float64(i*i) / 10
			h, err := Rate(in)
			if err != nil {
				c.Fatalf("%v: %v", v, err)
			}
			now := h.Thermal
			if i > 0 && (now.Duty.Heat > last.Duty.Heat*(1+1e-9) || now.Overall.OnBare > last.Overall.OnBare*(1+1e-7) || now.Condensed > last.Condensed*(1+1e-9)) {
				c.Errorf("%v, fouling %g: %g W, %g W/m2K, %g kg/s after %g, %g, %g", v, in.Process.Fouling,
					now.Duty.Heat, now.Overall.OnBare, now.Condensed, last.Duty.Heat, last.Overall.OnBare, last.Condensed)
			}
			last = now
		}
	})
}

// The film takes the difference across the condensate, and the viscosity at the wall that of the surface that the stream
// wets: both to the other side of the dirt.
func TestFilmSeesItsOwnWall(t *testing.T) {
	in := read(t, "inside_fluid", "steam", "inside_in", "110 °C", "rows", "1", "passes", "1", "tubes_per_row", "400", "face_velocity", "1 m/s")
	th := rate(t, in).Thermal
	bore := float64(in.Tube.InsideOD())
	flux := th.Overall.OnInside * (th.Duty.MeanProcess - th.Duty.MeanAir)
	s, err := fluid.SaturatedWater(110 + 273.15)
	if err != nil {
		t.Fatal(err)
	}
	film := func(flux float64) float64 {
		l := s.Liquid
		return 0.456 * math.Cbrt(9.80665*l.Density*(l.Density-s.Vapour.Density)*math.Pow(l.Conductivity, 3)*s.LatentHeat/(l.Viscosity*flux*bore))
	}
	// Slow steam, by hand in flux form without the film's own cooling, which adds 0.2 %.
	if got, want := th.Inside.Coefficient, film(flux); math.Abs(got/want-1) > 0.005 || got < want {
		t.Errorf("film %g W/m2K at %g W/m2, by hand %g", got, flux, want)
	}

	water := rate(t, read(t, "fouling_inside", "0.002")).Thermal
	wetted := water.Duty.MeanProcess - water.Overall.OnInside*(water.Duty.MeanProcess-water.Duty.MeanAir)/water.Inside.Coefficient
	mu := func(celsius float64) float64 {
		p, err := fluid.Water(celsius+273.15, 1e6)
		if err != nil {
			t.Fatal(err)
		}
		return p.Viscosity
	}
	want := mu((90+water.Duty.ProcessOut)/2) / mu(wetted)
	for _, l := range water.Inside.Limits {
		if l.Variable == "viscosity_ratio" && math.Abs(l.Value/want-1) > 1e-6 {
			t.Errorf("viscosity ratio %g, at the wetted surface %g", l.Value, want)
		}
	}
}

// Where the water would freeze in faster air, the curve ends: a drop beyond it has no velocity, with the reason, and is not
// read as reached.
func TestInverseSaysWhyTheCurveEnds(t *testing.T) {
	cold := []string{"air_in", "-30 °C", "inside_in", "10 °C", "inside_flow", "20 kg/s", "face_velocity", "0.5 m/s", "drop_allowed", "2000 Pa", "duty_wanted", "50 MW"}
	res := evaluate(t, read(t, cold...))
	velocity, _ := res.Find("velocity_allowed")
	said := message.English().Render(velocity.Absent, units.SI)
	if velocity.Absent.Key != "absent.curve_ends" || !strings.Contains(said, "0 °C") {
		t.Errorf("%s: %g m/s", said, velocity.SI)
	}
	if tubes, _ := res.Find("tubes_wanted"); tubes.Absent.Key != "exchanger.too_many" && tubes.Absent.Key != "absent.curve_ends" {
		t.Errorf("50 MW by %g tubes, %v", tubes.SI, tubes.Absent)
	}
}
