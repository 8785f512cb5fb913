package material

import (
	"math"
	"strings"
	"testing"

	"finwright/core/message"
	"finwright/core/units"
)

func TestNewOwn(t *testing.T) {
	m, faults := NewOwn("  Alloy of the house ", 150, 2700, 22e-6)
	if faults != nil {
		t.Fatalf("faults: %v", faults)
	}
	if got := message.English().Render(m.Name(), units.SI); got != "Alloy of the house" {
		t.Errorf("name %q", got)
	}
	for _, at := range []units.Temperature{-50, 20, 333, 600} {
		k, kKnown := m.ConductivityAt(at)
		alpha, alphaKnown := m.ExpansionTo(at)
		if k != 150 || alpha != 22e-6 || !kKnown || !alphaKnown {
			t.Errorf("at %g C: k %g (%v), expansion %g (%v)", float64(at), float64(k), kKnown, float64(alpha), alphaKnown)
		}
	}
	if m.ID != Own || m.Family != OtherMetal || m.Density.SI != 2700 || m.Density.Status != Judgement {
		t.Errorf("%+v", m)
	}
	if m.Yield.Known() || m.Elongation.Known() || m.Limit.Known() {
		t.Error("the user said nothing of yield, elongation or limit")
	}
}

func TestNewOwnFaults(t *testing.T) {
	long := strings.Repeat("x", longestName+1)
	for _, c := range []struct {
		why           string
		name          string
		k, rho, alpha float64
		want          []Property
	}{
		{"no name", " ", 150, 2700, 22e-6, []Property{NameProperty}},
		{"long name", long, 150, 2700, 22e-6, []Property{NameProperty}},
		{"conductivity of an insulator", "a", 0.04, 2700, 22e-6, []Property{ConductivityProperty}},
		{"density in g/cm3", "a", 150, 2.7, 22e-6, []Property{DensityProperty}},
		{"expansion in 1e-6/K", "a", 150, 2700, 22, []Property{ExpansionProperty}},
		{"not a number", "a", math.NaN(), 2700, 22e-6, []Property{ConductivityProperty}},
		{"everything", "", 0, 0, 0, []Property{NameProperty, ConductivityProperty, DensityProperty, ExpansionProperty}},
	} {
		m, faults := NewOwn(c.name, units.Conductivity(c.k), units.Density(c.rho), units.Expansion(c.alpha))
		if m.ID != "" || len(faults) != len(c.want) {
			t.Errorf("%s: metal %+v, faults %v", c.why, m, faults)
			continue
		}
		for i, f := range faults {
			text := message.English().Render(f.Why, units.SI)
			if f.Property != c.want[i] || text == "" || strings.ContainsAny(text, "{}") {
				t.Errorf("%s: fault %s %q, want field %s", c.why, f.Property, text, c.want[i])
			}
		}
	}
}

// Every shipped metal must be inside the bounds of a user's own.
func TestBoundsHoldShippedMetals(t *testing.T) {
	for _, m := range shipped() {
		k, _ := m.ConductivityAt(20)
		alpha, _ := m.ExpansionTo(100)
		if _, faults := NewOwn(m.ID, k, units.Density(m.Density.SI), alpha); faults != nil {
			t.Errorf("%s: %v", m.ID, faults)
		}
	}
}
