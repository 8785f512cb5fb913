package material

import (
	"fmt"
	"math"
	"testing"

	"finwright/core/internal/published"
	"finwright/core/message"
	"finwright/core/units"
)

// No check of the values: the table repeats what the code holds, so that a slip of the hand shows.
func TestMetalsRepeated(t *testing.T) {
	lists := map[string]func(string) (Metal, bool){"tube": TubeMetal, "fin": FinMetal}
	sizes := map[string]int{}
	for _, row := range published.Read(t, published.Repeated, "metals") {
		list := row.Text("list")
		sizes[list]++
		m, ok := lists[list](row.Text("id"))
		if !ok {
			t.Errorf("%s: no %s metal %q", row.Where(), list, row.Text("id"))
			continue
		}
		row.Check("density_kg_m3", m.Density.SI, 1e-12)
		_, hottest := m.Conductivity.Range()
		for _, at := range []units.Temperature{20, 100, 200, 300, 400} {
			column := fmt.Sprintf("k_%.0fC", float64(at))
			k, inRange := m.ConductivityAt(at)
			if inRange != row.Has(column) || inRange != (at <= hottest) {
				t.Errorf("%s: %s in range: %v", row.Where(), column, inRange)
			}
			if row.Has(column) {
				row.Check(column, float64(k), 1e-12)
			}
		}
		for column, at := range map[string]units.Temperature{"alpha_20_100_1e-6_K": 100, "alpha_20_200_1e-6_K": 200, "alpha_20_300_1e-6_K": 300} {
			mean, inRange := m.ExpansionTo(at)
			if row.Has(column) && !inRange || !row.Has(column) && inRange && at != 200 { // between 100 and 300 it may be interpolated
				t.Errorf("%s: %s in range: %v", row.Where(), column, inRange)
			}
			if row.Has(column) {
				row.Check(column, float64(mean)*1e6, 1e-12)
			}
		}
		if known := row.Has("A50_low_percent"); known != m.Elongation.Known() {
			t.Errorf("%s: elongation known: %v", row.Where(), m.Elongation.Known())
		} else if known {
			row.Check("A50_low_percent", m.Elongation.Low*100, 1e-12)
			row.Check("A50_high_percent", m.Elongation.High*100, 1e-12)
		}
		if known := row.Has("tip_limit_C"); known != m.Limit.Known() || !known && m.Limit.SI != 0 {
			t.Errorf("%s: limit of the tip %+v", row.Where(), m.Limit)
		} else if known {
			row.Check("tip_limit_C", m.Limit.SI, 0)
		}
	}
	if sizes["tube"] != len(TubeMetals) || sizes["fin"] != len(FinMetals) {
		t.Errorf("the table has %v metals, the lists %d and %d", sizes, len(TubeMetals), len(FinMetals))
	}
}

// Values printed in books and standards, all from memory and so to be verified, in the units of the source. A row whose
// tolerance is wider than its printed digits says why.
func TestMetalsPublished(t *testing.T) {
	perUnit := map[string]float64{
		"kg/m3": 1, "g/cm3": 1000, "lb/in3": 0.45359237 / (0.0254 * 0.0254 * 0.0254),
		"W/(m K)": 1, "Btu/(h ft F)": 1055.05585262 / 3600 / 0.3048 * 1.8, "1e-6/K": 1e-6, "1e-6/F": 1.8e-6,
	}
	lists := map[string]func(string) (Metal, bool){"tube": TubeMetal, "fin": FinMetal}
	for _, row := range published.Read(t, published.Book, "metals") {
		m, ok := lists[row.Text("list")](row.Text("id"))
		unit, known := perUnit[row.Text("unit")]
		if !ok || !known {
			t.Fatalf("%s: no %s metal %q, or no unit %q", row.Where(), row.Text("list"), row.Text("id"), row.Text("unit"))
		}
		var si float64
		switch row.Text("property") {
		case "density":
			si = m.Density.SI
		case "k":
			k, _ := m.ConductivityAt(units.Temperature(row.Float("t_C")))
			si = float64(k)
		case "alpha":
			mean, _ := m.ExpansionTo(units.Temperature(row.Float("t_C")))
			si = float64(mean)
		default:
			t.Fatalf("%s: no property %q", row.Where(), row.Text("property"))
		}
		if row.Has("rtol") != row.Has("why") {
			t.Errorf("%s: a tolerance without its reason", row.Where())
		}
		if row.Has("rtol") {
			row.Check("want", si/unit, row.Float("rtol"))
		} else {
			row.CheckPrinted("want", si/unit)
		}
	}
}

func shipped() []Metal { return append(append([]Metal{}, TubeMetals...), FinMetals...) }

func TestShippedMetalsAreSound(t *testing.T) {
	between := func(name string, v, low, high float64) {
		t.Helper()
		if !(v >= low && v <= high) {
			t.Errorf("%s = %g, not between %g and %g", name, v, low, high)
		}
	}
	for _, m := range shipped() {
		between(m.ID+" density", m.Density.SI, 2600, 9000)
		for _, p := range m.Conductivity.Points {
			between(m.ID+" conductivity", p.SI, 10, 400)
		}
		for _, p := range m.Expansion.Points {
			between(m.ID+" expansion", p.SI, 8e-6, 26e-6)
		}
		between(m.ID+" yield", m.Yield.SI, 20e6, 500e6)
		for _, c := range []Curve{m.Conductivity, m.Expansion} {
			for i := 1; i < len(c.Points); i++ {
				if c.Points[i].At <= c.Points[i-1].At {
					t.Errorf("%s: points out of order at %g C", m.ID, float64(c.Points[i].At))
				}
			}
		}
		for _, s := range []Source{m.Density.Source, m.Conductivity.Source, m.Expansion.Source, m.Yield.Source} {
			if s.Status != FromMemory {
				t.Errorf("%s: a property is %q, but every one is from memory", m.ID, s.Status)
			}
		}
	}
}

func TestEveryTextExists(t *testing.T) {
	for _, m := range shipped() {
		if message.English().Render(m.Name(), units.SI) == "" {
			t.Errorf("%s has no name", m.ID)
		}
	}
	for _, s := range []Source{handbook, minimum, soft, tipLimits, user} {
		if !message.English().Has(s.Key) {
			t.Errorf("no text for %s", s.Key)
		}
	}
	for _, s := range []Status{FoundInText, Computed, FromMemory, Judgement} {
		if key := "metal.status." + string(s); !message.English().Has(key) {
			t.Errorf("no text for %s", key)
		}
	}
}

func TestIDsAreUnique(t *testing.T) {
	for name, list := range map[string][]Metal{"tube": TubeMetals, "fin": FinMetals} {
		seen := map[string]bool{Own: true}
		for _, m := range list {
			if seen[m.ID] {
				t.Errorf("%s metal %s is listed twice", name, m.ID)
			}
			seen[m.ID] = true
		}
	}
	if _, ok := TubeMetal("unobtainium"); ok {
		t.Error("found a metal that is not listed")
	}
}

func TestInterpolation(t *testing.T) {
	cs, _ := TubeMetal("cs")
	for _, c := range []struct {
		name    string
		at      units.Temperature
		want    float64
		inRange bool
	}{
		{"first point", 20, 60.4, true},
		{"middle, by hand (60.4 + 58)/2", 60, 59.2, true},
		{"inner point", 200, 53.6, true},
		{"quarter, by hand 49.2 - 4.3/4", 325, 48.125, true},
		{"last point", 400, 44.9, true},
		{"below", -40, 60.4, false},
		{"above", 450, 44.9, false},
	} {
		k, inRange := cs.ConductivityAt(c.at)
		if math.Abs(float64(k)-c.want) > 1e-12 || inRange != c.inRange {
			t.Errorf("%s: %g W/(m K), in range %v; want %g, %v", c.name, float64(k), inRange, c.want, c.inRange)
		}
	}
	if alpha, inRange := cs.ExpansionTo(200); math.Abs(float64(alpha)-12.7e-6) > 1e-18 || !inRange {
		t.Errorf("mean expansion to 200 C is %g, want (12.1 + 13.3)/2 e-6", float64(alpha))
	}
}

func TestSuits(t *testing.T) {
	for _, c := range []struct {
		id      string
		forming Forming
		want    Suit
		source  string
	}{
		{"al1060", Foot, Usual, "common practice, no source"},
		{"c11000", Foot, Usual, "common practice, no source"},
		{"cs1010", Foot, Unsuitable, "steel is too hard to form the foot: common practice, no source"},
		{"ss304", Foot, Unsuitable, "steel is too hard to form the foot: common practice, no source"},
		{"cs1010", Groove, Usual, "from memory"},
		{"ss304", Groove, Special, "from memory"},
		{"al1100", Muff, Usual, "from memory"},
		{"c12200", Muff, Unsuitable, "from memory"},
		{"ss409", Weld, Usual, "engineering judgement"},
		{"al1060", Weld, Unsuitable, "engineering judgement"},
		{"ss409", Edge, Usual, "any metal: from memory"},
	} {
		m, _ := FinMetal(c.id)
		if got := m.Family.Suits(c.forming); got != c.want {
			t.Errorf("%s for %s: %s, want %s (%s)", c.id, c.forming, got, c.want, c.source)
		}
	}
	if OtherMetal.Suits(Foot) != Special {
		t.Error("nothing is known of a user's own metal")
	}
}
