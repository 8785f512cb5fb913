package units

import (
	"math"
	"strings"
	"testing"
)

func TestFigure(t *testing.T) {
	for _, c := range []struct {
		kind Kind
		si   float64
		sys  System
		want string
	}{
		{Diameter, 0.05715, SI, "57.15 mm"},
		{Diameter, 0.05715, US, "2.250 in"},
		{SurfacePerMetre, 1.70066, SI, "1.701 m²/m"},
		{SurfacePerMetre, 1.70066, US, "5.580 ft²/ft"}, // GPSA data book prints 5.58, from memory
		{WeightPerMetre, 0.60653, SI, "0.6065 kg/m"},
		{Distance, 6.096, SI, "6096 mm"},
		{Distance, 12.192, SI, "12\u202f192 mm"},
		{Distance, 6.096, US, "20 ft"},
		{Distance, 0.0254 * 246.5, US, "20 ft 6 1/2 in"},
		{Distance, 0, US, "0 in"},
		{Distance, 0.0254 * 1.5625, US, "1 9/16 in"},
		{Distance, 0.04, US, "1.57 in"}, // 1 9/16 in is 39.69 mm
		{Distance, -0.04, US, "-1.57 in"},
		{Distance, 6.016, US, "19 ft 8.85 in"},
		{Distance, 0.30479, US, "1 ft 0.00 in"},
		{FinCount, 1 / 0.00254, US, "10.00 fins/in"},
		{FinCount, 1 / 0.00254, SI, "393.7 fins/m"},
		{Film, 9999.96, SI, "10\u202f000 W/m²K"},
		{Factor, 0.99996, SI, "1.000"},
		{Lead, 0.031817, SI, "1.823°"},
		{Running, 4, US, "13.1 ft/s"},
		{Feed, 2.54 / 60, SI, "2.54 m/min"},
		{Spin, 1000.0 / 60, SI, "1000 rpm"},
		{Cost, 12345.5, SI, "12\u202f345.50"},
	} {
		if got := Plain.Figure(c.kind, c.si, c.sys).String(); got != c.want {
			t.Errorf("Figure(%s, %v, %s) = %q, want %q", c.kind, c.si, c.sys, got, c.want)
		}
	}
}

func TestEcho(t *testing.T) {
	for _, c := range []struct {
		kind Kind
		si   float64
		sys  System
		want string
	}{
		{Diameter, 0.0254, SI, "25.4 mm"},
		{Diameter, 0.03175, US, "1 1/4 in"},
		{Height, 0.015875, US, "5/8 in"},
		{Height, 0.015875, SI, "15.875 mm"},
		{Thickness, 0.0004064, US, "0.016 in"},
		{Wall, 0.0021082, SI, "2.108 mm"},
		{Wall, 0.0021082, US, "0.083 in"},
		{FinCount, 1 / 0.00254, US, "10 fins/in"},
		{FinCount, 1 / 0.00254, SI, "393.7 fins/m"},
		{Distance, 6.096, US, "20 ft"},
		{Distance, 0.04, US, "1.575 in"},
		{Distance, 0.0381, US, "1 1/2 in"},
		{Distance, 6.016, US, "19 ft 8.85 in"},
		{Distance, 0.3048 + 0.00004, US, "1 ft 0.002 in"},
		{Count, 120, SI, "120"},
	} {
		if got := Echo(c.kind, c.si, c.sys); got != c.want {
			t.Errorf("Echo(%s, %v, %s) = %q, want %q", c.kind, c.si, c.sys, got, c.want)
		}
	}
}

// In a sentence a quantity has the digits that a person would type: those that it was typed with, or few where it comes from another unit,
// to the side on which it does.
func TestSaid(t *testing.T) {
	for _, c := range []struct {
		kind Kind
		si   float64
		sys  System
		side Side
		want string
	}{
		{Gap, 0.005, US, Nearest, "0.1969 in"},
		{Gap, 0.005, US, Down, "0.1968 in"},
		{Gap, 0.005, US, Up, "0.1969 in"},
		{Gap, 0.00003, US, Down, "0.00118 in"},
		{Gap, 0.005, SI, Down, "5 mm"},
		{Height, 0.015875, SI, Nearest, "15.875 mm"},
		{Height, 0.015875, US, Nearest, "5/8 in"},
		{Distance, 0.1, US, Nearest, "3.94 in"},
		{Distance, 1, US, Nearest, "3 ft 3.37 in"},
	} {
		if got := Plain.SayBeside(c.kind, c.si, Beside{Side: c.side}, c.sys); got != c.want {
			t.Errorf("%s %v in %s to %v is said %q, want %q", c.kind, c.si, c.sys, c.side, got, c.want)
		}
	}
}

// A length in feet and inches that bears a fraction is that length: what no sixteenth holds has decimals, and reads back within
// the last of them.
func TestFractionsOfAnInchAreExact(t *testing.T) {
	for mm := 1; mm <= 700; mm++ {
		si := float64(mm) / 1000
		for text, off := range map[string]float64{Plain.Figure(Distance, si, US).String(): 0.005, Echo(Distance, si, US): 0.0005} {
			p, err := Parse(Distance, text, US)
			if strings.Contains(text, "/") {
				off = 1e-6
			}
			if err != nil || math.Abs(p.SI-si) > (off+1e-9)*0.0254 {
				t.Errorf("%d mm is shown as %s, which is %.3f mm: %v", mm, text, 1000*p.SI, err)
			}
		}
	}
}
