package units

import "testing"

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
		{Count, 120, SI, "120"},
	} {
		if got := Echo(c.kind, c.si, c.sys); got != c.want {
			t.Errorf("Echo(%s, %v, %s) = %q, want %q", c.kind, c.si, c.sys, got, c.want)
		}
	}
}
