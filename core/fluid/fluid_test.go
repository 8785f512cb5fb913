package fluid

import (
	"errors"
	"math"
	"testing"

	"finwright/core/message"
	"finwright/core/units"
)

func near(t testing.TB, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance*math.Abs(want)) {
		t.Errorf("%s = %.9g, want %.9g within %.2g", what, got, want, tolerance)
	}
}

// Ratios recomputed from the formula of the US Standard Atmosphere 1976 (from memory).
func TestPressureAtAltitude(t *testing.T) {
	for _, c := range []struct{ z, ratio float64 }{{0, 1}, {500, .9421}, {1000, .8870}, {1500, .8345}, {2000, .7846}, {3000, .6919}} {
		p, err := PressureAtAltitude(c.z)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "pressure ratio", p/StandardPressure, c.ratio, 1e-4)
	}
}

// Saturation humidity ratio and volume of moist air at 101.325 kPa: ASHRAE
// Fundamentals, psychrometric table (from memory). Its values hold the interaction
// of air and vapour, which raises the ratio by up to 0.5 %.
func TestMoistAirSaturated(t *testing.T) {
	for _, c := range []struct{ celsius, ratio, volume float64 }{
		{-20, 0.0006373, 0.7173}, {0, 0.003790, 0.7782}, {20, 0.014758, 0.8498}, {30, 0.027329, 0.8962}, {40, 0.049141, 0.9568},
	} {
		kelvin := c.celsius + zeroCelsius
		w, err := HumidityRatio(kelvin, StandardPressure, 1)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "humidity ratio", w, c.ratio, 0.006)
		air, err := MoistAir(kelvin, StandardPressure, w)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "volume per kilogram of dry air", (1+w)/air.Density, c.volume, 0.0013)
	}
}

// Wilke's rule must return each pure gas at its end, and moist air is lighter,
// takes up more heat and is less viscous than dry air.
func TestMoistAirLimits(t *testing.T) {
	kelvin := 313.15
	dry, err := DryAir(kelvin, StandardPressure)
	if err != nil {
		t.Fatal(err)
	}
	trace, err := MoistAir(kelvin, StandardPressure, 1e-12)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "density of a trace of vapour", trace.Density, dry.Density, 1e-9)
	near(t, "viscosity of a trace of vapour", trace.Viscosity, dry.Viscosity, 1e-9)
	near(t, "conductivity of a trace of vapour", trace.Conductivity, dry.Conductivity, 1e-9)
	wet, err := MoistAir(kelvin, StandardPressure, 0.045)
	if err != nil {
		t.Fatal(err)
	}
	if !(wet.Density < dry.Density && wet.HeatCapacity > dry.HeatCapacity && wet.Viscosity < dry.Viscosity) {
		t.Errorf("moist air %+v against dry air %+v", wet, dry)
	}
	near(t, "viscosity at 40 C and near saturation", wet.Viscosity, dry.Viscosity, 0.035)
	near(t, "conductivity at 40 C and near saturation", wet.Conductivity, dry.Conductivity, 0.025)
}

func TestSaturationInverts(t *testing.T) {
	for kelvin := 273.16; kelvin < 647; kelvin += 7.3 {
		p, err := SaturationPressure(kelvin)
		if err != nil {
			t.Fatal(err)
		}
		back, err := SaturationTemperature(p)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "saturation temperature", back, kelvin, 1e-9)
	}
}

// The Clausius-Clapeyron equation ties the saturation line to the latent heat and the
// volumes, which come from three different equations.
func TestClausiusClapeyron(t *testing.T) {
	for kelvin := 280.0; kelvin < 620; kelvin += 20 {
		s, err := SaturatedWater(kelvin)
		if err != nil {
			t.Fatal(err)
		}
		slope := (saturationPressure(kelvin+0.01) - saturationPressure(kelvin-0.01)) / 0.02
		near(t, "latent heat", kelvin*slope*(1/s.Vapour.Density-1/s.Liquid.Density), s.LatentHeat, 5e-4)
	}
}

func TestSteamMeetsSaturation(t *testing.T) {
	s, err := SaturatedWater(453.15)
	if err != nil {
		t.Fatal(err)
	}
	vapour, err := Steam(453.15, s.Pressure)
	if err != nil || vapour != s.Vapour {
		t.Errorf("steam at saturation = %+v, %v; want %+v", vapour, err, s.Vapour)
	}
	liquid, err := Water(453.15, s.Pressure)
	if err != nil || liquid != s.Liquid {
		t.Errorf("water at saturation = %+v, %v; want %+v", liquid, err, s.Liquid)
	}
}

// A liquid that follows Andrade's law mu = A exp(B/t) is exact between the points.
func TestTable(t *testing.T) {
	mu := func(kelvin float64) float64 { return 1e-6 * math.Exp(2500/kelvin) }
	oil, err := NewTable(
		Point{300, Properties{900, 1900, mu(300), 0.13}},
		Point{400, Properties{830, 2300, mu(400), 0.12}},
		Point{500, Properties{760, 2700, mu(500), 0.11}},
	)
	if err != nil {
		t.Fatal(err)
	}
	got, err := oil.At(450)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "density", got.Density, 795, 1e-12)
	near(t, "heat capacity", got.HeatCapacity, 2500, 1e-12)
	near(t, "conductivity", got.Conductivity, 0.115, 1e-12)
	near(t, "viscosity", got.Viscosity, mu(450), 1e-12)
	constant, err := NewTable(Point{300, Properties{1, 2, 3, 4}})
	if err != nil {
		t.Fatal(err)
	}
	if got, err := constant.At(1234); err != nil || got != (Properties{1, 2, 3, 4}) {
		t.Errorf("constant fluid = %+v, %v", got, err)
	}
}

func TestOutOfRange(t *testing.T) {
	fails := func(what, variable string, err error) {
		t.Helper()
		var out *OutOfRange
		if !errors.As(err, &out) || out.Variable != variable || out.Value > out.Low && out.Value <= out.High {
			t.Errorf("%s: error %v, want %s out of range", what, err, variable)
		}
	}
	_, err := DryAir(1500, StandardPressure)
	fails("hot air", "temperature", err)
	_, err = DryAir(math.NaN(), StandardPressure)
	fails("air without a temperature", "temperature", err)
	_, err = DryAir(300, 1e6)
	fails("compressed air", "pressure", err)
	_, err = MoistAir(300, StandardPressure, 0.05)
	fails("fog", "relative_humidity", err)
	_, err = MoistAir(400, StandardPressure, 0.3)
	fails("wet air", "humidity_ratio", err)
	_, err = HumidityRatio(300, StandardPressure, 1.1)
	fails("fog", "relative_humidity", err)
	_, err = HumidityRatio(373, StandardPressure, 1)
	fails("boiling", "vapour_pressure", err)
	_, err = HumidityRatio(660, StandardPressure, 0.5)
	fails("humidity above the critical temperature", "temperature", err)
	_, err = PressureAtAltitude(12000)
	fails("stratosphere", "altitude", err)
	_, err = Water(400, StandardPressure)
	fails("boiled water", "pressure", err)
	_, err = Steam(300, StandardPressure)
	fails("condensed steam", "pressure", err)
	_, err = SaturatedWater(640)
	fails("near the critical point", "temperature", err)
	_, err = SaturationTemperature(30e6)
	fails("above the critical pressure", "pressure", err)
	_, err = NewTable()
	fails("no points", "points", err)
	_, err = NewTable(Point{300, Properties{1, 1, 1, 1}}, Point{300, Properties{1, 1, 1, 1}})
	fails("two points at one temperature", "temperature", err)
	_, err = NewTable(Point{300, Properties{1, 1, 0, 1}})
	fails("no viscosity", "viscosity", err)
	table, err := NewTable(Point{300, Properties{1, 1, 1, 1}}, Point{400, Properties{1, 1, 1, 1}})
	if err != nil {
		t.Fatal(err)
	}
	_, err = table.At(401)
	fails("beyond the table", "temperature", err)
}

// Every variable that an error may name has a text.
func TestTexts(t *testing.T) {
	for _, variable := range []string{
		"temperature", "pressure", "vapour_pressure", "humidity_ratio", "relative_humidity", "altitude",
		"points", "density", "heat_capacity", "viscosity", "conductivity", "trioxide_pressure",
	} {
		if !message.English().Has("limit." + variable) {
			t.Errorf("no text limit.%s", variable)
		}
	}
	_, err := DryAir(1500, StandardPressure)
	var out *OutOfRange
	if !errors.As(err, &out) {
		t.Fatal(err)
	}
	const want = "temperature 1226.85 °C is outside -40 °C to 1200 °C"
	if got := message.English().Render(out.Message(), units.SI); got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
