package rating

import (
	"math"
	"testing"

	"finwright/core/airside"
	"finwright/core/fluid"
	"finwright/core/inside"
	"finwright/core/internal/sample"
	"finwright/core/material"
	"finwright/core/tube"
	"finwright/core/units"
)

// byHand is one row of 20 tubes in one pass between streams of constant properties, so that it is worked out on paper:
// uniform fins on edge, the film outside given.
//
// Its values below were computed apart from this code, with 20 digits, from: the annular fin in Bessel functions (Gardner, Trans.
// ASME 67 (1945) 621), Petukhov's friction and Gnielinski's Nusselt number, resistances in series, and one row across which
// the stream in the tubes is mixed: P = (1 - exp(-R (1 - exp(-NTU))))/R (Kays and London, Compact Heat Exchangers, from memory).
func byHand(t testing.TB) Input {
	t.Helper()
	metal := func(k units.Conductivity) material.Metal {
		m, faults := material.NewOwn("by hand", k, 2700, 23e-6)
		if faults != nil {
			t.Fatal(faults)
		}
		return m
	}
	tb := sample.Footed()
	tb.Fin.Type, tb.Fin.Profile, tb.Fin.Density = tube.EdgeWound, tube.Uniform, 2700
	tb.Length, tb.PlainA, tb.PlainB = 6, 0, 0
	return Input{
		Tube: tb, TubeMetal: metal(50), FinMetal: metal(200),
		Air: Air{
			FilmGiven: true, Film: 40, Metal: Optional{60, true}, Kind: OwnGas, In: 30, Velocity: 3,
			Gas: fluid.Properties{Density: 1.1, HeatCapacity: 1007, Viscosity: 1.95e-5, Conductivity: 0.0275},
		},
		Bank: Bank{Layout: airside.Staggered, Clearance: 6.35 * units.Millimetre, Rows: 1, TubesPerRow: 20, Passes: 1},
		Process: Process{
			Fluid: OwnFluid, In: 80, Flow: 20, Bond: Optional{1e-5, true},
			Own: fluid.Properties{Density: 990, HeatCapacity: 4180, Viscosity: 5.5e-4, Conductivity: 0.64},
		},
	}
}

func rated(t testing.TB, in *Input) *Thermal {
	t.Helper()
	out, hindered := Rate(in)
	if hindered != nil {
		t.Fatalf("hindered: %+v", *hindered)
	}
	return &out
}

func near(t testing.TB, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance*math.Abs(want)) {
		t.Errorf("%s: %.12g, want %.12g within %g of it", what, got, want, tolerance)
	}
}

const exact = 1e-9 // what is left of printed digits

func TestRateByHand(t *testing.T) {
	in := byHand(t)
	th := rated(t, &in)
	near(t, "film inside", th.Inside.Coefficient, 14387.43492863, exact)
	near(t, "surface efficiency", th.Eta, 0.893539563912, exact)
	near(t, "U on bare", th.Overall.OnBare, 694.345654317704, exact)
	near(t, "NTU", th.Duty.TransferUnits, 0.262568229261616, exact)
	near(t, "duty", th.Duty.Heat, 282384.787158768, exact)
	near(t, "air out", th.Duty.AirOut, 41.1517471692730, exact)
	near(t, "stream out", th.Duty.ProcessOut, 76.6221915411630, exact)
	near(t, "air at the face", th.FaceFlow, 3*7.62, exact)
	near(t, "loss inside", th.InsideLoss.Total, 28464.8987219753, exact)
	near(t, "velocity inside", th.InsideLoss.Velocity, 2.86588651206028, exact)
	near(t, "hottest root", th.Duty.HottestRoot.Celsius, 75.742420132828, 1e-6)
	near(t, "its tip", th.Tip(), 69.942956294533, 1e-6)
	parts := th.PartsAt(&in, in.Ends())
	near(t, "its share", parts.Root, 0.914848402656559, 1e-6)
	near(t, "its tip", in.Ends().At(parts.Tip), 69.942956294533, 1e-6)
	near(t, "its mean", in.Ends().At(parts.Mean), 71.341766649, 1e-6) // of the gas at 36.0255 C and the root, by the efficiency 0.8892
	perKilogram, perFace := th.Yield(&in.Tube)
	near(t, "fin metal", th.FinMetal(&in.Tube), 64.6351272549564, exact) // n pi d t w, the strip as wide as the fin is high
	near(t, "heat per kilogram", perKilogram, 4368.90587443093, exact)
	near(t, "heat per face", perFace, 37058.3710182112, exact)
}

func TestSurfaceByHand(t *testing.T) {
	in := byHand(t)
	s := in.Surface(nil)
	near(t, "efficiency", s.Fin.Efficiency, 0.889199517083353, exact)
	near(t, "that of uniform fins", s.UniformEta(&in.Tube), 0.889199517083353, exact)
	near(t, "tip over root", s.Fin.TipRatio, 0.853980006303051, exact)
	near(t, "area", float64(s.Areas.Total()), 1.71636987638061, exact)
	near(t, "surface efficiency", s.SurfaceEta, 0.893539563912312, exact)
	near(t, "used area", float64(s.Used), 1.53364439085336, exact)
	for q, want := range map[Quantity]float64{AreaRatio: 21.5093503937008, Efficiency: 0.889199517083353, UsedArea: 1.53364439085336} {
		near(t, string(q), q.Of(&s), want, exact)
	}

	f := Disc(&in.Tube, 200)
	near(t, "root radius", f.RootRadius, 0.0127, exact)
	near(t, "tip radius", f.TipRadius, 0.0127+0.015875, exact)
	near(t, "tip thickness", f.TipThickness, 0.0004, exact)
	in.Tube.Fin.Profile = tube.Rolled
	near(t, "rolled tip", Disc(&in.Tube, 200).TipThickness, 0.0004*25.4/57.15, exact) // t d/Df
	if s := in.Surface(nil); !(s.Fin.Efficiency < s.UniformEta(&in.Tube)) {
		t.Errorf("a fin that grows thinner has efficiency %g, one that does not %g", s.Fin.Efficiency, s.UniformEta(&in.Tube))
	}
}

// The fin serves all its area where metal conducts without bound, or where next to nothing leaves it.
func TestSurfaceAtItsLimits(t *testing.T) {
	in := byHand(t)
	in.Air.Film = 1e-6
	near(t, "with hardly a film", in.Surface(nil).SurfaceEta, 1, 1e-7)
	in = byHand(t)
	in.Tube.Fin.Height = units.Millimetre / 1000
	near(t, "without a height", in.Surface(nil).Fin.Efficiency, 1, 1e-6)
}

func TestPitchesByHand(t *testing.T) {
	in := byHand(t)
	near(t, "tube pitch", float64(in.TubePitch()), 0.0254+2*0.015875+0.00635, exact)
	near(t, "equilateral row pitch", float64(in.RowPitch()), 0.0635*0.866025403784439, exact)
	in.Bank.RowPitch = 0.040
	if least, byRow := in.Between(); !byRow || math.Abs(least-0.0510691932577753) > exact { // sqrt(31.75^2 + 40^2) mm
		t.Errorf("staggered, %g m between, by the row pitch: %v", least, byRow)
	}
	in.Bank.Layout = airside.InLine
	if least, byRow := in.Between(); !byRow || least != 0.040 {
		t.Errorf("in line, %g m between, by the row pitch: %v", least, byRow)
	}
	in.Bank.RowPitch = 0
	near(t, "square row pitch", float64(in.RowPitch()), 0.0635, exact)
	in.Bank.TubePitch = 0.070
	near(t, "tube pitch as given", float64(in.TubePitch()), 0.070, exact)
	b := in.Pitches()
	near(t, "fin pitch", b.FinPitch, 0.00254, exact)
	near(t, "area ratio", b.AreaRatio, 21.5093503937008, exact)
	if b.Rows != 1 || b.TubesPerRow != 20 || b.TransversePitch != 0.070 || b.OD != 0.0254 {
		t.Errorf("as the air sees them: %+v", b)
	}
}

// Steam tables (IAPWS-IF97, from memory): at 150 C water boils at 476.2 kPa, at 1 MPa it boils at 179.9 C; at 100 C it takes 2256 kJ/kg.
// Water of 80 C weighs 971.8 kg/m3.
func TestStreamByHand(t *testing.T) {
	in := byHand(t)
	near(t, "bores of a pass", in.PassSection(), 0.00704913475010460, exact) // 20 pi/4 (21.184 mm)^2
	in.Bank.Rows, in.Bank.Passes = 3, 2
	near(t, "on average", in.PassSection(), 1.5*0.00704913475010460, exact)
	near(t, "bond as stated", in.Bond(), 1e-5, 0)
	in.Process.Bond = Optional{}
	near(t, "bond of the type", in.Bond(), tube.EdgeWound.Fixing().Bond.SI, 0)

	if own, err := in.InletDensity(); err != nil || own != 990 {
		t.Errorf("own stream of %g kg/m3, %v", own, err)
	}
	in.Process.Fluid = Water
	water, err := in.InletDensity()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "water", water, 971.8, 1e-4)
	near(t, "pressure of water that cannot boil", in.StreamPressure(), 101325, 0)
	in.Process.In = 150
	near(t, "and a tenth more where it can", in.StreamPressure(), 1.1*476.2e3, 1e-3)
	in.Process.Pressure = Optional{9e5, true}
	near(t, "as stated", in.StreamPressure(), 9e5, 0)

	if err := in.SaturateAt(1e6); err != nil {
		t.Fatal(err)
	}
	near(t, "steam of 1 MPa", float64(in.Process.In), 179.9, 3e-4)

	in = byHand(t)
	if in.InsideVelocity() != inside.UsualLiquid {
		t.Error("a liquid runs as gases do")
	}
	if in.Process.Gas = true; in.InsideVelocity() != inside.UsualGas {
		t.Error("a gas runs as liquids do")
	}
	if why := in.NoInsideLoss(); why.Key != "absent.no_pressure_left" {
		t.Errorf("no loss: %s", why.Key)
	}
	if in.Process.Fluid = Steam; in.NoInsideLoss().Key != "absent.condensing" {
		t.Errorf("no loss of steam: %s", in.NoInsideLoss().Key)
	}
}

func TestLeavingByHand(t *testing.T) {
	in := byHand(t)
	says := func(want string) {
		t.Helper()
		if _, why := rated(t, &in).Leaving(&in); why.Key != want {
			t.Errorf("the pressure at the outlet is absent for %q, want %q", why.Key, want)
		}
	}
	says("absent.no_pressure")
	in.Process.Pressure = Optional{25e3, true} // less than the 28.5 kPa that are lost
	says("absent.no_pressure_left")
	in.Process.Pressure.SI = 3e5
	l, why := rated(t, &in).Leaving(&in)
	if !why.None() || l.NoVapour.Key != "absent.no_vapour" {
		t.Errorf("%q, and of its boiling %q", why.Key, l.NoVapour.Key)
	}
	near(t, "pressure left", l.Pressure, 3e5-28464.8987219753, exact)
	in.Process.Vapour = Optional{7e4, true}
	if l, _ := rated(t, &in).Leaving(&in); l.Vapour != 7e4 {
		t.Errorf("boils at %g Pa", l.Vapour)
	}
	in.Process.Fluid = Water
	l, _ = rated(t, &in).Leaving(&in)
	near(t, "water of 76.6 C", l.Vapour, 41.2e3, 5e-3) // steam tables, from memory: 41.25 kPa
	in.Process.Fluid = Steam
	in.Process.In = 110
	says("absent.condensing")
}

// Another case has the share of normal running while the same stream is the hotter. Where the gas becomes it, the coldest corner
// becomes the hottest, and it lies between the two; where the stream inside does, its inlet is the bound.
func TestPartsOfOtherCases(t *testing.T) {
	in := byHand(t)
	th := rated(t, &in)
	normal := th.PartsAt(&in, in.Ends())
	if got := th.PartsAt(&in, Ends{200, 30}); got != normal {
		t.Errorf("a hotter stream changed the share from %v to %v", normal, got)
	}
	hot := th.PartsAt(&in, Ends{80, 400})
	near(t, "the gas the hotter", hot.Root, (th.Duty.Coldest.Celsius-30)/50, exact)
	if root, tip := (Ends{80, 400}).At(hot.Root), (Ends{80, 400}).At(hot.Tip); !(root > 80 && root < tip && tip < 400) {
		t.Errorf("root %g, tip %g between stream and gas", root, tip)
	}
	in.Process.In, in.Air.In = 30, 80
	th = rated(t, &in)
	if got := th.PartsAt(&in, Ends{90, 80}); got != (Parts{1, 1, 1}) {
		t.Errorf("a stream that becomes the hotter bounds its metal: %v", got)
	}
	in.Process.In, in.Air.In = 50, 50
	th = rated(t, &in)
	if got := in.Ends().At(th.PartsAt(&in, in.Ends()).Root); got != 50 {
		t.Errorf("equal streams have a root of %g", got)
	}
}

func TestStillByHand(t *testing.T) {
	in := byHand(t)
	s, ok := rated(t, &in).Still(&in)
	if !ok {
		t.Fatal("no tube in still air")
	}
	// Metal is warmest where the stream enters and least so where it leaves.
	if !(s.Excess > 70-30 && s.Excess < 75.742420132828-30) {
		t.Errorf("the roots are %g K over the air on average", s.Excess)
	}
	near(t, "expansion", s.Expansion, 1/(303.15+s.Excess/2), exact)
	near(t, "gap", s.Gap, 0.00254-0.0004, exact)
	near(t, "diameter", s.FinOD, 0.05715, exact)
	in.Process.In = in.Air.In
	if _, ok := rated(t, &in).Still(&in); ok {
		t.Error("metal as cold as the air stirs it")
	}
}

// Two dimensions against one: the fin's root, the mean over its section where it stands free, within a share of the difference between
// the streams, and no heat lost in the metal.
func TestMetalFieldBesideTheRow(t *testing.T) {
	in := byHand(t)
	th := rated(t, &in)
	f, err := in.MetalField(th)
	if err != nil {
		t.Fatal(err)
	}
	at := th.Duty.HottestRoot
	near(t, "heat out", f.HeatOut, f.HeatIn, 1e-6)
	if off := math.Abs(f.Root - at.Celsius); off > 0.02*(at.Process-at.Air) {
		t.Errorf("root at %g C, %g C by resistances", f.Root, at.Celsius)
	}
	if !(f.Hottest < at.Process && f.Coldest > at.Air) {
		t.Errorf("metal from %g to %g C between streams of %g and %g C", f.Coldest, f.Hottest, at.Air, at.Process)
	}
}

func TestPair(t *testing.T) {
	in := byHand(t)
	if in.Pair() != airside.Rule(airside.Staggered, false) {
		t.Errorf("by rule %v", in.Pair())
	}
	in.Air.FilmMethod, in.Air.DropMethod = airside.FilmMethods[2].ID, ByRule
	if got := in.Pair(); got.Film != 2 || got.Drop != airside.Rule(airside.Staggered, false).Drop {
		t.Errorf("with a film named %v", got)
	}
	in.Air.DropMethod = airside.DropMethods[1].ID
	if got := in.Pair(); got.Drop != 1 {
		t.Errorf("with a drop named %v", got)
	}
	in.Tube.Fin.Type, in.Air.FilmMethod = tube.Welded, ""
	if got := in.Pair(); got.Film != airside.Rule(airside.Staggered, true).Film {
		t.Errorf("of welded fins %v", got)
	}
}

func TestQuantitiesHaveKinds(t *testing.T) {
	in := byHand(t)
	answers := Answers(&in, rated(t, &in))
	for q := range quantityKinds {
		if q.Kind().Unit(units.SI) == "" && q.Kind() != units.Factor {
			t.Errorf("%s has no unit", q)
		}
		if _, of := answers[q]; of == (q == AreaRatio || q == Efficiency || q == UsedArea) {
			t.Errorf("%s is of the surface and of the bank, or of neither", q)
		}
		if q.Spread() != (q == Film || q == AirDrop) {
			t.Errorf("%s: several correlations answer: %v", q, q.Spread())
		}
	}
	near(t, "film", answers[Film].Value, 40, 0)
	near(t, "U", answers[UBare].Value, 694.345654317704, exact)
	near(t, "duty", answers[Duty].Value, 282384.787158768, exact)
	near(t, "per weight", answers[PerWeight].Value, 4368.90587443093, exact)
	near(t, "per face", answers[PerFace].Value, 37058.3710182112, exact)
	if d := answers[AirDrop]; !(d.Low <= d.Value && d.Value <= d.High) && d.InRange {
		t.Errorf("the drop %g is not from %g to %g Pa", d.Value, d.Low, d.High)
	}
}

// 20 kg/s of 4180 J/(kg K) give 836 kW over 10 K.
func TestClosingByHand(t *testing.T) {
	in := byHand(t)
	in.Process.Own.HeatCapacity = 4180
	number := func(what string, want float64) func(float64, error) {
		return func(got float64, err error) {
			t.Helper()
			if err != nil {
				t.Fatalf("%s: %v", what, err)
			}
			near(t, what, got, want, exact)
		}
	}
	number("heat capacity", 4180)(in.MeanHeat(70))
	number("flow", 20)(in.FlowFor(836e3, 70))
	number("duty", 836e3)(in.DutyFor(70))
	number("outlet", 70)(in.OutFor(836e3))
	if _, ok := in.Gap(); ok {
		t.Error("a gap without an outlet")
	}
	in.Process.Out, in.Bank.DutyWanted = Optional{70, true}, 800e3
	if gap, ok := in.Gap(); !ok || math.Abs(gap-0.045) > exact {
		t.Errorf("a gap of %g, %v", gap, ok)
	}
	in.Air.In, in.Process.In = 90, 60
	number("outlet of what is warmed", 70)(in.OutFor(836e3))
}

func TestCleanIsRatedWithoutDirt(t *testing.T) {
	in := byHand(t)
	clean := rated(t, &in)
	in.Air.Fouling, in.Process.Fouling = 2e-4, 3e-4
	dirty := rated(t, &in)
	got, hindered := in.Clean(dirty)
	if hindered != nil {
		t.Fatal(*hindered)
	}
	near(t, "U", got.Overall.OnBare, clean.Overall.OnBare, exact)
	if !(dirty.Overall.OnBare < clean.Overall.OnBare) || in.Air.Fouling != 2e-4 {
		t.Errorf("U of %g dirty and %g clean", dirty.Overall.OnBare, clean.Overall.OnBare)
	}
}
