package design

import (
	"errors"
	"math"
	"testing"
)

// A pressure over that of the air about is one at the altitude: 0.8870 of the standard atmosphere at 1000 m (trade table).
func TestGaugePressureCountsFromTheAltitude(t *testing.T) {
	in := read(t, "inside_pressure", "7 bar(g)", "altitude", "1000 m")
	if got, want := in.Process.Pressure.SI, 7e5+0.8870*101325; math.Abs(got-want) > 10 {
		t.Errorf("%g Pa, want %g", got, want)
	}
	// An own gas outside leaves the altitude asked for, since the pressure hangs on it.
	high := read(t, "inside_pressure", "100 psig", "altitude", "1000 m", "gas", "own")
	if got, want := high.Process.Pressure.SI, 689475.729+0.8870*101325; math.Abs(got-want) > 10 {
		t.Errorf("%g Pa, want %g", got, want)
	}
}

// Steam by its pressure: 170.41 C at 0.8 MPa and 99.61 C at 0.1 MPa (steam tables, IAPWS-IF97 table 36 within 0.01 K).
func TestSteamByPressure(t *testing.T) {
	for pressure, want := range map[string]float64{"800 kPa": 170.41, "1 bar": 99.61, "698.675 kPa(g)": 170.41} {
		in := read(t, "inside_fluid", "steam", "steam_by", "pressure", "inside_pressure", pressure)
		if got := float64(in.Process.In); math.Abs(got-want) > 0.006 {
			t.Errorf("%s: %.3f C, want %g", pressure, got, want)
		}
	}
	for pressure, field := range map[string]string{"": "inside_pressure", "19 MPa(g)": "", "25 MPa": "inside_pressure"} {
		_, err := Read(doc(t, "inside_fluid", "steam", "steam_by", "pressure", "inside_pressure", pressure))
		var wrong FieldErrors
		if errors.As(err, &wrong); (field == "") != (err == nil) || field != "" && !wrong.Has(field) {
			t.Errorf("%q: %v", pressure, err)
		}
	}
}

// A volume is taken in the state of the inlet: water at 90 C and 1 MPa has 965.72 kg/m3 (IAPWS-95, rounded).
func TestVolumeFlow(t *testing.T) {
	in := read(t, "inside_flow", "50 m³/h", "inside_in", "90 °C", "inside_pressure", "1000 kPa")
	if got, want := in.Process.Flow, 965.72*50/3600; math.Abs(got/want-1) > 1e-5 {
		t.Errorf("%g kg/s, want %g", got, want)
	}
	own := read(t, "inside_flow", "10 l/s", "inside_fluid", "own", "own_fluid_density", "800 kg/m³")
	if own.Process.Flow != 8 {
		t.Errorf("%g kg/s, want 8", own.Process.Flow)
	}
	_, err := Read(doc(t, "inside_flow", "0.001 l/h"))
	var wrong FieldErrors
	if !errors.As(err, &wrong) || !wrong.Has("inside_flow") {
		t.Errorf("a trickle: %v", err)
	}
}

// Without a pressure water is taken as liquid; its properties hardly change.
func TestWaterWithoutPressure(t *testing.T) {
	with, without := rate(t, read(t)), rate(t, read(t, "inside_pressure", ""))
	if a, b := with.Thermal.Duty.Heat, without.Thermal.Duty.Heat; math.Abs(a/b-1) > 2e-3 {
		t.Errorf("%g W with 1 MPa, %g W without a pressure", a, b)
	}
	if _, err := Rate(read(t, "inside_pressure", "", "inside_in", "180 °C")); err != nil {
		t.Errorf("hot water: %v", err)
	}
}
