package inside

import (
	"math"
	"testing"

	"finwright/core/figure"
	"finwright/core/fluid"
	"finwright/core/internal/published"
	"finwright/core/message"
)

func near(t testing.TB, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance*math.Abs(want)) {
		t.Errorf("%s = %.9g, want %.9g within %.2g", what, got, want, tolerance)
	}
}

func TestTubeSidePublished(t *testing.T) {
	for _, row := range published.Read(t, published.Library, "tube_side") {
		re, pr := row.Float("Re"), row.Float("Pr")
		switch row.Text("function") {
		case "turbulent_Gnielinski_petukhov_fd":
			row.Check("fd_darcy", Petukhov1970(re), 1e-12)
			row.Check("Nu", Gnielinski1976(re, pr, Petukhov1970(re)), 1e-12)
		case "turbulent_Gnielinski":
			row.Check("Nu", Gnielinski1976(re, pr, row.Float("fd_darcy")), 1e-12)
			if row.Text("eD") != "" {
				row.Check("fd_darcy", Colebrook1939(re, row.Float("eD")), 1e-12)
			}
		case "laminar_entry_thermal_Hausen":
			row.Check("Nu", Hausen1943(re*pr*row.Float("Di_m")/row.Float("L_m")), 1e-12)
		case "turbulent_Dittus_Boelter":
			unit := Condensing{Bore: 1, MassVelocity: re}
			unit.Liquid = fluid.Properties{Viscosity: 1, HeatCapacity: pr, Conductivity: 1}
			row.Check("Nu", shahLiquid(&unit), 1e-12)
		default:
			t.Errorf("%s: no formula for %s", row.Where(), row.Text("function"))
		}
	}
}

var oneInch = Tube{Bore: 0.021184, Length: 6}

func water(t *testing.T, celsius float64) fluid.Properties {
	t.Helper()
	w, err := fluid.Water(celsius+273.15, 5e5)
	if err != nil {
		t.Fatal(err)
	}
	return w
}

// The film and the friction must not jump where the flow changes its kind, and each
// kind names its method.
func TestTransition(t *testing.T) {
	w := water(t, 30)
	at := func(re float64) Film {
		return SinglePhase(oneInch, Flow{Properties: w, MassVelocity: re * w.Viscosity / oneInch.Bore})
	}
	for _, edge := range []float64{laminarEnd, TurbulentFrom} {
		near(t, "film across the edge", at(edge*(1+1e-9)).Nusselt, at(edge*(1-1e-9)).Nusselt, 1e-6)
		near(t, "friction across the edge", Friction(edge*(1+1e-9), 0), Friction(edge*(1-1e-9), 0), 1e-6)
	}
	for re, want := range map[float64]string{1000: "hausen_1943", 3000: "gnielinski_2013", 10000: "gnielinski_1976"} {
		if got := at(re); got.Method != want || !got.InRange() {
			t.Errorf("Re %g: %s, limits %+v", re, got.Method, got.Limits)
		}
	}
	near(t, "middle of the line", at(3150).Nusselt, (at(2300).Nusselt+at(4000).Nusselt)/2, 1e-9)
}

// A long laminar tube tends to 3.657, the exact Nusselt number of a wall at one temperature.
func TestLongLaminarTube(t *testing.T) {
	near(t, "Nu", Hausen1943(1e-6), 3.657, 1e-3)
}

// Cooling water in a 1 in tube, against the dimensional equation of Eagle and Ferguson
// (1930), h = 4200 (1.35 + 0.02 T) u^0.8/di^0.2 with T in C and di in mm (from memory),
// which lies below Gnielinski's by about his scatter.
func TestWaterFilm(t *testing.T) {
	for _, celsius := range []float64{20, 40, 60} {
		w := water(t, celsius)
		const velocity = 1.5
		got := SinglePhase(oneInch, Flow{Properties: w, MassVelocity: velocity * w.Density})
		near(t, "water film", got.Coefficient, 4200*(1.35+0.02*celsius)*math.Pow(velocity, 0.8)/math.Pow(1000*oneInch.Bore, 0.2), 0.15)
	}
}

func TestWallViscosity(t *testing.T) {
	w := water(t, 60)
	for re, exponent := range map[float64]float64{1500: 0.14, 20000: 0.11} {
		f := Flow{Properties: w, MassVelocity: re * w.Viscosity / oneInch.Bore}
		plain := SinglePhase(oneInch, f)
		f.WallViscosity = w.Viscosity / 0.7
		near(t, "correction", SinglePhase(oneInch, f).Nusselt/plain.Nusselt, math.Pow(0.7, exponent), 1e-12)
	}
}

func TestPressureDrop(t *testing.T) {
	w := water(t, 20)
	laminar := Flow{Properties: w, MassVelocity: 1000 * w.Viscosity / oneInch.Bore}
	// Hagen and Poiseuille: dp = 32 mu u L/d^2.
	got := PressureDrop(oneInch, laminar, 1, 0)
	near(t, "laminar drop", got.Total, 32*w.Viscosity*got.Velocity*oneInch.Length/(oneInch.Bore*oneInch.Bore), 1e-12)
	fast := Flow{Properties: w, MassVelocity: 1.5 * w.Density}
	one, four := PressureDrop(oneInch, fast, 1, DefaultTurnLoss), PressureDrop(oneInch, fast, 4, DefaultTurnLoss)
	near(t, "four passes", four.Total, 4*one.Total, 1e-12)
	near(t, "turns", one.Turns, DefaultTurnLoss*w.Density*1.5*1.5/2, 1e-12)
	rough := oneInch
	rough.Roughness = 45e-6
	if r := PressureDrop(rough, fast, 1, 0); !(r.Friction > one.Friction) {
		t.Errorf("rough tube %g, smooth %g", r.Friction, one.Friction)
	}
}

func TestOutOfRange(t *testing.T) {
	mercury := Flow{Properties: fluid.Properties{Density: 13500, HeatCapacity: 139, Viscosity: 1.5e-3, Conductivity: 8.7}, MassVelocity: 2000}
	got := SinglePhase(oneInch, mercury)
	if got.InRange() || figure.Worst(got.Limits) < 0.9 {
		t.Errorf("a liquid metal is in range: %+v", got.Limits)
	}
}

func TestTexts(t *testing.T) {
	w := water(t, 30)
	var films []Film
	for _, re := range []float64{1000, 3000, 10000} {
		films = append(films, SinglePhase(oneInch, Flow{Properties: w, MassVelocity: re * w.Viscosity / oneInch.Bore}))
	}
	for _, f := range append(films, Condense(steam(t, 150, 50))) {
		keys := []string{"inside." + f.Method, "source." + f.Method, "valid." + f.Method}
		for _, l := range f.Limits {
			keys = append(keys, "limit."+l.Variable)
		}
		for _, key := range keys {
			if !message.English().Has(key) {
				t.Errorf("no text %s", key)
			}
		}
	}
}

// A gas that would lose 18 kPa of 100 at its inlet density loses 20 at the mean of 90 kPa: 18/0.9, by hand. Half of the
// pressure takes all of it, and a little more is no answer.
func TestGasLosesAtItsMeanDensity(t *testing.T) {
	d, ok := Drop{Total: 18e3, Straight: 12e3, Turns: 6e3, Velocity: 27}.Expanding(100e3)
	if !ok || math.Abs(d.Total-20e3) > 1e-6 || math.Abs(d.Velocity-30) > 1e-9 || math.Abs(d.Straight+d.Turns-d.Total) > 1e-6 {
		t.Errorf("%+v %v", d, ok)
	}
	if all, ok := (Drop{Total: 50e3}).Expanding(100e3); !ok || math.Abs(all.Total-100e3) > 1e-6 {
		t.Errorf("at the end %+v %v", all, ok)
	}
	if _, ok := (Drop{Total: 50.001e3}).Expanding(100e3); ok {
		t.Error("more than there is was lost")
	}
	if d, _ := (Drop{Total: 1}).Expanding(1e9); math.Abs(d.Total-1) > 1e-8 {
		t.Errorf("a small loss changed to %g", d.Total)
	}
}
