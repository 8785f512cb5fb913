package units

import (
	"errors"
	"maps"
	"math"
	"slices"
	"strings"
	"testing"

	"finwright/core/proof"
)

func TestParseReadsWhatPeopleType(t *testing.T) {
	for _, c := range []struct {
		kind Kind
		text string
		sys  System
		want float64 // SI
	}{
		{Diameter, `1"`, SI, 0.0254},
		{Diameter, "1 in", SI, 0.0254},
		{Diameter, "25.4", SI, 0.0254},
		{Diameter, "1", US, 0.0254},
		{Diameter, "25.4 mm", US, 0.0254},
		{Diameter, "5/8 in", SI, 0.015875},
		{Diameter, `1 1/4"`, SI, 0.03175},
		{Diameter, `1-1/4"`, SI, 0.03175},
		{Diameter, "1¼ in", SI, 0.03175},
		{Diameter, "⅝″", SI, 0.015875},
		{Diameter, "9/16 in", SI, 0.0142875},
		{Thickness, `0.016"`, SI, 0.0004064},
		{Thickness, "16 mil", SI, 0.0004064},
		{Thickness, "0,4 mm", SI, 0.0004},
		{Thickness, ".4", SI, 0.0004},
		{Wall, "14 BWG", SI, 0.0021082},
		{Wall, "bwg 12", US, 0.0027686},
		{FinCount, "10 fpi", SI, 1 / 0.00254},
		{FinCount, "394 /m", US, 394},
		{FinCount, "394 fins/m", US, 394},
		{FinCount, "2.54 mm pitch", SI, 1 / 0.00254},
		{FinCount, "2,54 mm", SI, 1 / 0.00254},
		{FinCount, "11", US, 11 / 0.0254},
		{Distance, "20 ft", SI, 6.096},
		{Distance, `20'`, SI, 6.096},
		{Distance, `20' 6 1/2"`, SI, 6.2611},
		{Distance, "20 ft 6.5 in", SI, 6.2611},
		{Distance, "6 096 mm", SI, 6.096},
		{Distance, "6\u202f096", SI, 6.096},
		{Distance, "1,234.5", SI, 1.2345},
		{Distance, "1.234,5 mm", SI, 1.2345},
		{Distance, "-12,345.678 mm", SI, -12.345678},
		{Distance, "1,234,567.25 mm", SI, 1234.56725},
		{Distance, "1,234.5e1 mm", SI, 12.345},
		{Weight, "1,234,567 kg", SI, 1234567},
		{Count, "1.234.567", SI, 1234567},
		{Distance, "12.2 m", US, 12.2},
		{Film, "50 W/m²K", US, 50},
		{Film, "10 Btu/h·ft²·°F", SI, 56.7826334},
		{Conduct, "100 Btu/h·ft·°F", SI, 173.0734666},
		{Temp, "212 °F", SI, 100},
		{Temp, "373.15 K", SI, 100},
		{Dense, "2.705 g/cm3", SI, 2705},
		{Expand, "23.6", SI, 23.6e-6},
		{Count, "120", SI, 120},
		{Count, "120 off", SI, 120},
		{Running, "4 m/s", US, 4},
		{Running, "13 ft/s", SI, 3.9624},
		{Feed, "2.54 m/min", SI, 2.54 / 60},
		{Spin, "1000 rpm", SI, 1000.0 / 60},
		{Time, "7 1/2 h", SI, 27000},
		{Time, "25 s", SI, 25},
		{Drop, "10 mmH2O", SI, 98.0665},
		{Drop, "10 mm WG", SI, 98.0665},
		{MassRate, "36 t/h", US, 10},
		{Duty, "3.412141633 MMBtu/h", SI, 1e6},
		{Duty, "859845.227859 kcal/h", SI, 1e6},
		{Duty, "1 Gcal/h", SI, 1.163e6},
		{VolumeRate, "36 m3/h", SI, 0.01},
		{VolumeRate, "10 l/s", US, 0.01},
		{VolumeRate, "158.5032314 gpm", SI, 0.01},
		{VolumeRate, "100 m³/h", US, 1.0 / 36},
		{Gauge, "7 barg", SI, 7e5},
		{Gauge, "7 bar(g)", US, 7e5},
		{Gauge, "100 psig", SI, 689475.729},
		{Film, "1 kcal/h·m²·°C", SI, 1.163},
		{Resist, "0.0002 m²·h·°C/kcal", SI, 0.0002 / 1.163},
		{Transfer, "31 kW/K", US, 31e3},
		{Transfer, "1000 Btu/h·°F", SI, 527.5279264},
		{Drive, "20 hp", SI, 14913.9974316},
		{Work, "100 MPa", US, 1e8},
		{Pull, "10 lbf", SI, 44.48221615},
		{Cost, "12.50", SI, 12.5},
		{CostPerTime, "36 /h", SI, 0.01},
		{CostPerWeight, "1 /lb", SI, 2.204622622},
		{CostPerRun, "3.048 per m", US, 3.048},
		{CostEach, "22.40 each", SI, 22.4},
	} {
		got, err := Parse(c.kind, c.text, c.sys)
		if err != nil || math.Abs(got.SI-c.want) > 1e-9*math.Abs(c.want) {
			t.Errorf("Parse(%s, %q, %s) = %v, %v; want %v", c.kind, c.text, c.sys, got.SI, err, c.want)
		}
	}
}

func TestParseRefuses(t *testing.T) {
	for _, c := range []struct {
		kind Kind
		text string
		want Reason
	}{
		{Diameter, "", Empty},
		{Diameter, "   ", Empty},
		{Diameter, "about an inch", NotANumber},
		{Diameter, "25.4 kg", WrongUnit},
		{Diameter, "25.4 furlongs", UnknownUnit},
		{Duty, "1.7 MBtu/h", UnknownUnit}, // a thousand to some, a million to others
		{Diameter, "2,108 mm", TwoWays},
		{Count, "120,000", TwoWays},
		{Diameter, "1.2.3", NotANumber},
		{Diameter, "1,234.", NotANumber}, // the number is not at its end: what it is not is not proposed
		{Diameter, "1,234.5.6", NotANumber},
		{Diameter, "6,096,5", NotANumber},
		{Diameter, "12,34.5", NotANumber},
		{Diameter, "0,234.5", NotANumber},
		{Diameter, "1234,567.8", NotANumber},
		{Diameter, "1/0 in", DividesByNil},
		{Diameter, "1e999", NotANumber},
		{Diameter, "<script>", NotANumber},
		{FinCount, "1e-310 mm", NotANumber},
		{Wall, "40 BWG", NoSuchGauge},
		{FinCount, "10 W/m2K", WrongUnit},
		{FinCount, "0 mm", DividesByNil},
		{Count, "1.5", NotWhole},
		{Film, "50 mm", WrongUnit},
		{Diameter, "10 fpi", WrongUnit},
		{Distance, "20 ft 6 kg", UnknownUnit},
	} {
		_, err := Parse(c.kind, c.text, SI)
		var pe *ParseError
		if !errors.As(err, &pe) || pe.Reason != c.want {
			t.Errorf("Parse(%s, %q) = %v, want %s", c.kind, c.text, err, c.want)
		}
	}
}

func TestBareNumberGetsItsUnit(t *testing.T) {
	for _, c := range []struct {
		kind Kind
		text string
		sys  System
		want string
	}{
		{Diameter, "25.4", SI, "25.4 mm"},
		{FinCount, "10", US, "10 fins/in"},
		{FinCount, "10 pitch", US, "10 fins/in"},
		{FinCount, "2.54 mm Pitch", US, "2.54 mm"},
		{Wall, "14 BWG", US, "14 BWG"},
		{Count, "120", SI, "120"},
	} {
		got, err := Parse(c.kind, c.text, c.sys)
		if err != nil || got.Text != c.want {
			t.Errorf("Parse(%s, %q, %s).Text = %q, %v; want %q", c.kind, c.text, c.sys, got.Text, err, c.want)
		}
	}
}

func TestEveryShownUnitReadsBack(t *testing.T) {
	for k := range specs {
		for _, s := range []System{SI, US} {
			for _, x := range []float64{1, 0.0254, 12.5} {
				text := Echo(k, x, s)
				if k == Count {
					text = Echo(k, math.Round(x), s)
				}
				if _, err := Parse(k, text, s); err != nil {
					t.Errorf("%s in %s prints %q, which does not read back: %v", k, s, text, err)
				}
			}
		}
	}
}

// typed are texts as people type them, for a fuzzer to change.
var typed = []string{
	`1 1/4"`, "14 BWG", "#12", "10 fpi", "6 096 mm", "20' 6\"", "20 ft 6 1/2 in", "0,4", "-1e3 mm", "2,108", "1,234.5", "1.234.567,8 mm", "5/8 in", "25.4", "2.54 mm pitch", "1½ in",
	"120000 lb/h", "0.00018 m²K/W", "50 Btu/h·ft²·°F", "-40 °F", "85 %", "12 µm/m·K", "1.7 MMBtu/h", "6\u202f096 mm", "1e-9 m", "7.5 h", "3.20 /kg", "50 m³/h", "7 bar(g)", "100 psig", "200 gpm",
}

// readable holds a text of any kind to this: it is refused with a reason, or it is a number that prints, and what is kept of it
// means the same in either system.
func readable(t testing.TB, k Kind, text string, s System) {
	p, err := parse(k, text, s)
	if err != nil {
		var why *ParseError
		if !errors.As(err, &why) || why.Reason == "" {
			t.Errorf("Parse(%s, %q): %v", k, text, err)
		}
		return
	}
	if !(math.Abs(p.SI) <= greatest) {
		t.Errorf("Parse(%s, %q) = %v", k, text, p.SI)
	}
	for _, other := range []System{SI, US} {
		if again, err := parse(k, p.Text, other); err != nil || again.SI != p.SI {
			t.Errorf("Parse(%s, %q) = %g is kept as %q, which reads as %g: %v", k, text, p.SI, p.Text, again.SI, err)
		}
		for _, out := range []string{Echo(k, p.SI, other), Plain.Figure(k, p.SI, other).String(), Plain.Full(k, p.SI, other)} {
			if strings.Contains(out, "NaN") || strings.Contains(out, "Inf") {
				t.Errorf("Parse(%s, %q) = %g prints as %q", k, text, p.SI, out)
			}
		}
	}
}

var allKinds = slices.Sorted(maps.Keys(specs))

func TestAnyTextIsReadable(t *testing.T) {
	proof.Proof{Share: 5000, Full: 2_000_000, Seed: 2}.Run(t, func(c *proof.Case) {
		text := proof.Text(c.Rand, typed...)
		readable(c, allKinds[c.Rand.IntN(len(allKinds))], text, []System{SI, US}[c.Rand.IntN(2)])
	})
}

func FuzzParse(f *testing.F) {
	for i, text := range typed {
		f.Add(i, text)
	}
	f.Fuzz(func(t *testing.T, kind int, text string) {
		readable(t, allKinds[uint(kind)%uint(len(allKinds))], text, US)
	})
}

// A number beyond any quantity is refused, and one that nobody means still prints in a line and reads back, in either system.
func TestHugeNumbers(t *testing.T) {
	for k := range specs {
		if k == Count || k.Money() {
			continue
		}
		for _, s := range []System{SI, US} {
			for _, x := range []float64{1e11, 3e12, -4.5e17, 1e59, -1e59} {
				text := Echo(k, x, s)
				p, err := Parse(k, text, s)
				if err != nil || math.Abs(p.SI/x-1) > 6e-3 || len(text) > 40 {
					t.Errorf("%s in %s: %g prints %q, read as %g: %v", k, s, x, text, p.SI, err)
				}
			}
		}
	}
	for _, text := range []string{"1e308 m", "-1e308", "1e61 ft", "1e307' 6\"", "1e-320 mm"} {
		for _, k := range []Kind{Distance, FinCount} {
			if p, err := Parse(k, text, US); err == nil && math.Abs(p.SI) > 1e60 {
				t.Errorf("%s is read as %g", text, p.SI)
			}
		}
	}
}
