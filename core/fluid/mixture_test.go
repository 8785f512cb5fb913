package fluid

import (
	"math"
	"testing"

	"finwright/core/internal/published"
)

func mixed(shares Shares) *Mixture {
	m := NewMixture(shares)
	return &m
}

// A table that is often printed. Its density is 0.9 % off that of ideal gases at 1,000 C. Its conductivity from 500 C on is
// not held: it is more than the molar mean of the pure gases, the highest that any rule of mixing has for those without water.
func TestFlueGasTabulated(t *testing.T) {
	m := mixed(Shares{CarbonDioxide: 0.13, WaterVapour: 0.11, Nitrogen: 0.76})
	for _, row := range published.Read(t, published.Book, "flue_gas") {
		at := row.Float("t_C") + zeroCelsius
		got, err := m.At(at, StandardPressure)
		if err != nil {
			t.Fatal(err)
		}
		row.Check("rho_kg_m3", got.Density, 0.010)
		row.Check("cp_J_kgK", got.HeatCapacity, 0.010)
		row.Check("mu_Pa_s", got.Viscosity, 0.035)
		if row.Has("k_W_mK") {
			row.Check("k_W_mK", got.Conductivity, 0.035)
			continue
		}
		mean := 0.0
		for _, s := range m.gases {
			_, k := s.transport(at, math.Log(at))
			mean += m.shares[s] * k
		}
		if table := row.Float("k_too_high"); table < 1.1*mean || table < 1.1*got.Conductivity {
			t.Errorf("%s: conductivity %g is no longer far above %g, the mean of the gases: hold it", row.Where(), table, mean)
		}
	}
}

// A second source that shares neither coefficients nor rules of mixing, but the share of the molecules.
func TestFlueGasByKineticTheory(t *testing.T) {
	for _, row := range published.Read(t, published.Computed, "flue_gas") {
		m := mixed(Shares{CarbonDioxide: row.Float("co2"), WaterVapour: row.Float("h2o"), Oxygen: row.Float("o2"), Nitrogen: row.Float("n2")})
		got, err := m.At(row.Float("t_C")+zeroCelsius, StandardPressure)
		if err != nil {
			t.Fatal(err)
		}
		row.Check("rho_kg_m3", got.Density, 1e-4)
		row.Check("cp_J_kgK", got.HeatCapacity, 0.004)
		row.Check("mu_Pa_s", got.Viscosity, 0.052) // 17 % of water at 100 C; the mixture that tables have 4.0 %
		row.Check("k_W_mK", got.Conductivity, 0.05)
	}
}

// Air mixed of its gases against the equations for air, Lemmon et al. 2000 and 2004: another source with the same rules of mixing.
func TestMixtureOfAir(t *testing.T) {
	m := mixed(dryAirShares)
	for _, celsius := range []float64{-40, 25, 200, 400, 600, 800, 1000, 1200} {
		got, err := m.At(celsius+zeroCelsius, StandardPressure)
		if err != nil {
			t.Fatal(err)
		}
		air, err := DryAir(celsius+zeroCelsius, StandardPressure)
		if err != nil {
			t.Fatal(err)
		}
		for name, pair := range map[string][3]float64{
			"density": {got.Density, air.Density, 3e-4}, "heat capacity": {got.HeatCapacity, air.HeatCapacity, 3e-4},
			"viscosity": {got.Viscosity, air.Viscosity, 3e-3}, "conductivity": {got.Conductivity, air.Conductivity, 0.035},
		} {
			if math.Abs(pair[0]/pair[1]-1) > pair[2] {
				t.Errorf("%s at %g C: %g, of air %g", name, celsius, pair[0], pair[1])
			}
		}
	}
}

// Heat capacities of the gases at 1,000 K as the JANAF tables print them [J/(mol K)] (from memory), argon by theory; the
// dioxide of sulphur is 0.36 % off, the others 0.01 %.
func TestHeatCapacityOfSpecies(t *testing.T) {
	for s, want := range map[Species]float64{
		CarbonDioxide: 54.308, WaterVapour: 41.268, Nitrogen: 32.697, Oxygen: 34.870, SulphurDioxide: 54.484, Argon: 2.5 * gasConstant,
	} {
		if got := s.heatCapacity(1000); math.Abs(got/want-1) > 4e-3 {
			t.Errorf("species %d: %g J/(mol K), want %g", s, got, want)
		}
	}
}

// No property steps where two pieces of a fit meet, nor at the ends of the blend.
func TestMixtureIsSmooth(t *testing.T) {
	m := mixed(Shares{CarbonDioxide: 0.1, WaterVapour: 0.2, Nitrogen: 0.6, Oxygen: 0.05, SulphurDioxide: 0.04, Argon: 0.01})
	values := func(at float64) [4]float64 {
		p, err := m.At(at, StandardPressure)
		if err != nil {
			t.Fatal(err)
		}
		return [4]float64{p.Density, p.HeatCapacity, p.Viscosity, p.Conductivity}
	}
	for at := 240.0; at < 1470; at += 0.5 {
		before, here, after := values(at-0.5), values(at), values(at+0.5)
		for i := range here {
			if bend := math.Abs(after[i]-2*here[i]+before[i]) / here[i]; bend > 2e-5 {
				t.Errorf("property %d bends by %g at %g K", i, bend, at)
			}
		}
	}
}

func TestWaterDewPoint(t *testing.T) {
	for _, c := range []struct {
		name          string
		vapour, want  float64
		toleranceInKs float64
	}{
		{"boiling point, IAPWS-IF97", StandardPressure, 373.124, 0.001},
		{"triple point", 611.657, 273.16, 0.001},
		{"ice at 230 K, IAPWS R14-08 table 3", 8.94735, 230, 0.0005},
	} {
		got, err := WaterDewPoint(c.vapour)
		if err != nil || math.Abs(got-c.want) > c.toleranceInKs {
			t.Errorf("%s: %g K, %v; want %g", c.name, got, err, c.want)
		}
	}
	if _, err := WaterDewPoint(0); err == nil {
		t.Error("a dew point without vapour")
	}
}

// An engineering text on the web works 93.44 mmHg of water and ln(pSO3) = -6 to 1000/T = 2.489, 402 K, with rounded logarithms.
func TestAcidDewPoint(t *testing.T) {
	const mmHg = 101325.0 / 760
	got, err := AcidDewPoint(93.44*mmHg, 0.0024917*mmHg)
	if err != nil || math.Abs(got-402) > 1 {
		t.Errorf("%g K, %v; want 402", got, err)
	}
	drier, _ := AcidDewPoint(40*mmHg, 0.0024917*mmHg)
	less, _ := AcidDewPoint(93.44*mmHg, 0.001*mmHg)
	if drier >= got || less >= got {
		t.Errorf("less water %g or less acid %g condense no colder than %g", drier, less, got)
	}
}
