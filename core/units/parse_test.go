package units

import (
	"errors"
	"math"
	"testing"
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
		{Drive, "20 hp", SI, 14913.9974316},
		{Work, "100 MPa", US, 1e8},
		{Pull, "10 lbf", SI, 44.48221615},
		{Cost, "12.50", SI, 12.5},
		{CostPerTime, "36 /h", SI, 0.01},
		{CostPerWeight, "1 /lb", SI, 2.204622622},
		{CostPerRun, "3.048 per m", US, 3.048},
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
		{Diameter, "1.2.3", NotANumber},
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

func FuzzParse(f *testing.F) {
	for _, s := range []string{`1 1/4"`, "14 BWG", "10 fpi", "6 096 mm", "20' 6\"", "0,4", "-1e3 mm"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, k := range []Kind{Diameter, FinCount, Film, Count, Temp} {
			p, err := Parse(k, text, US)
			if err == nil && (math.IsNaN(p.SI) || math.IsInf(p.SI, 0)) {
				t.Fatalf("Parse(%s, %q) = %v", k, text, p.SI)
			}
		}
	})
}
