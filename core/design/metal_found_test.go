package design

import (
	"math"
	"testing"

	"finwright/core/exchanger"
)

// Conductivities are read at the middle of the wall and the mean of the fin, unless the user gives a temperature. Carbon steel
// has 60.4 W/mK at 20 C and 58 at 100 C (handbook values, from memory), a straight line between.
func TestConductivitiesAtTheMetalFound(t *testing.T) {
	in := read(t)
	th := rate(t, in).Thermal
	d, di := float64(in.Tube.OD), float64(in.Tube.InsideOD())
	wall := func(u exchanger.Overall) float64 { return d * math.Log(d/di) / (2 * u.Resistances[2].OnBare) }
	flux := th.Overall.OnBare * (th.Duty.MeanProcess - th.Duty.MeanAir)
	r := th.Overall.Resistances
	middle := th.Duty.MeanProcess - flux*(r[0].OnBare+r[1].OnBare+r[2].OnBare/2)
	if got, want := wall(th.Overall), 60.4-2.4*(middle-20)/80; math.Abs(got-want) > 1e-6 {
		t.Errorf("wall %g W/mK, at its %g C %g", got, middle, want)
	}
	root := th.Duty.MeanProcess - flux*(r[0].OnBare+r[1].OnBare+r[2].OnBare+r[3].OnBare)
	at := float64(in.Surface(&th).FinAt)
	if at >= root || at <= th.Duty.MeanAir {
		t.Errorf("the fin is read at %g C, root %g, air %g", at, root, th.Duty.MeanAir)
	}
	given := read(t, "metal_temperature", "100 °C")
	th = rate(t, given).Thermal
	if got := wall(th.Overall); math.Abs(got-58) > 1e-9 || given.Surface(&th).FinAt != 100 {
		t.Errorf("wall %g W/mK and fin at %g C, given 100 C", got, given.Surface(&th).FinAt)
	}
}

// A fin under dirt works in film and dirt together: at 80 W/m2K and 0.0075 m2K/W as at 50, where the rolled taper of the
// reference tube (25.4 x 57.15 x 0.4 mm, 215 W/mK) has 0.84310, computed outside this project.
func TestFinSeesItsDirt(t *testing.T) {
	tube := []string{"fin_metal", "own", "own_fin_conductivity", "215 W/m·K", "film_source", "given", "film_coefficient", "80 W/m²K"}
	for dirt, want := range map[string]float64{"0 m²K/W": 0.77351, "0.0075 m²K/W": 0.84310} {
		res := evaluate(t, read(t, append(tube, "fouling_outside", dirt)...))
		eta, _ := res.Find("fin_efficiency")
		if math.Abs(eta.SI-want) > 1e-5 {
			t.Errorf("dirt %s: efficiency %.5f, want %.5f", dirt, eta.SI, want)
		}
		if f, ok := res.Find("film_dirty"); ok && math.Abs(f.SI-50) > 1e-9 || ok == (want == 0.77351) {
			t.Errorf("dirt %s: film under it %g", dirt, f.SI)
		}
		th := res.Heat.Thermal
		outside := th.Overall.Resistances[4].OnBare + th.Overall.Resistances[5].OnBare
		s := res.Surface
		if got := 1 / (float64(s.Film) * s.Areas.Ratio() * s.SurfaceEta); math.Abs(outside/got-1) > 1e-9 {
			t.Errorf("dirt %s: the outside resists with %g, the surface says %g", dirt, outside, got)
		}
	}
}

// The working of the free area says which gap governs.
func TestFreeAreaSaysWhichGapGoverns(t *testing.T) {
	for pitch, want := range map[string]string{"": "notice.free_across", "35 mm": "notice.free_diagonal"} {
		f, _ := evaluate(t, read(t, "tube_pitch", "110 mm", "row_pitch", pitch)).Find("free_ratio")
		if len(f.Why) != 1 || f.Why[0].Key != want {
			t.Errorf("rows at %q: %v, want %s", pitch, f.Why, want)
		}
	}
	if f, _ := evaluate(t, read(t, "layout", "in_line")).Find("free_ratio"); len(f.Why) > 0 {
		t.Errorf("in line there is one gap, and yet %v", f.Why)
	}
}
