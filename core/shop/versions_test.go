package shop

import (
	"os"
	"reflect"
	"strings"
	"testing"

	"finwright/core/message"
	"finwright/core/units"
)

func firstVersion(t *testing.T) string {
	t.Helper()
	text, err := os.ReadFile("../../testdata/samples/shop-1-edited.json")
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// What a file of version 1 took for granted is carried over by the values of its time, and told once.
func TestFirstVersionIsLifted(t *testing.T) {
	c, faults := Open([]byte(firstVersion(t)))
	if faults != nil {
		t.Fatal(faults)
	}
	want := Buying{Tubes: StockLengths, Coils: FirstCoil, Quotes: []Quote{}, OnHand: []TubesOnHand{}, StripOnHand: []StripOnHand{}, StripLeft: StripIsStored, Spoilt: CustomerBears}
	if !reflect.DeepEqual(c.Buying, want) {
		t.Errorf("buying %+v", c.Buying)
	}
	r := c.Rates
	if r.MarkUp != 0.21 || r.Overhead != 0 || r.Freight != 0 || r.Least != 0 || c.Crate.PerMetre != 0 || !reflect.DeepEqual(r.Breaks, []int{1, 10, 50, 100, 500}) {
		t.Errorf("rates %+v", r)
	}
	for _, m := range r.FinMetals {
		if m.Scrap != 0.42 {
			t.Errorf("scrap of %s fetches %v", m.Metal, m.Scrap)
		}
	}
	told := c.Lifted()
	if len(told) != 7 {
		t.Errorf("%d things are told", len(told))
	}
	for _, m := range told {
		if said := message.English().Render(m, units.SI); said == "" || strings.Contains(said, "{") {
			t.Errorf("%s: %q", m.Key, said)
		}
	}
	again, faults := Open(c.Save())
	if faults != nil || again.Lifted() != nil || again.Fingerprint() != c.Fingerprint() {
		t.Errorf("saved, it is lifted again: %v", faults)
	}
}

// A file of version 2 has neither steps nor checks.
func TestSecondVersionIsLifted(t *testing.T) {
	text, err := os.ReadFile("../../testdata/samples/shop-2-edited.json")
	if err != nil {
		t.Fatal(err)
	}
	c, faults := Open(text)
	if faults != nil || len(c.Steps) > 0 || len(c.Checks) > 0 {
		t.Errorf("%d steps, %d checks, %v", len(c.Steps), len(c.Checks), faults)
	}
}

// What is wrong with a file of version 1 is said of it, at its place in this version.
func TestFaultsOfFirstVersion(t *testing.T) {
	good := firstVersion(t)
	for _, c := range []struct{ old, new, path, key string }{
		{`"margin": "21 %"`, `"margin": "dear"`, "rates/mark_up", "error.not_a_number"},
		{`"margin": "21 %",`, ``, "rates/mark_up", "shop.file.missing"},
		{`"scrap_share": "42 %"`, `"scrap_share": "142 %"`, "rates/fin_metals/0/scrap", "error.range"},
		{`"margin": "21 %"`, `"margin": "21 %", "margins": "2 %"`, "rates/margins", "shop.file.unknown"},
		{`"version": 1`, `"version": 1.5`, "version", "shop.file.version"},
		{`"version": 1`, `"version": 0`, "version", "shop.file.version"},
		{`"version": 1`, `"version": "1"`, "version", "shop.file.version"},
	} {
		_, faults := Open([]byte(strings.Replace(good, c.old, c.new, 1)))
		if len(faults) == 0 || faults[0].Path != c.path || faults[0].Why.Key != c.key {
			t.Errorf("%s: %v, want %s at %s", c.new, faults, c.key, c.path)
		}
	}
	for _, broken := range []string{`{"format":"finwright-shop","version":1}`, `{"format":"finwright-shop","version":1,"rates":[],"crate":"","lines":{}}`, `{"format":"finwright-shop","version":1,"rates":{"fin_metals":{"a":1},"scrap_share":"1 %"}}`} {
		if _, faults := Open([]byte(broken)); len(faults) == 0 {
			t.Errorf("%s is taken", broken)
		}
	}
}

// What version 3 adds is off in a file of an earlier version.
func TestEarlierVersionsHaveTheNewRulesOff(t *testing.T) {
	for _, name := range []string{"shop-1-edited", "shop-2"} {
		text, err := os.ReadFile("../../testdata/samples/" + name + ".json")
		if err != nil {
			t.Fatal(err)
		}
		c, faults := Open(text)
		if faults != nil {
			t.Fatal(faults)
		}
		if c.Placing.RolledEnd != 0 || c.Placing.Supports != 0 {
			t.Errorf("%s: placing %+v", name, c.Placing)
		}
		for i := range c.Lines {
			l := &c.Lines[i]
			if l.Groover != (Groover{Lifts: true}) || l.Straight.Bow != 0 || l.ODOut != 0 || len(l.Securing) != 0 {
				t.Errorf("%s: %+v, %+v, %v, %v", name, l.Groover, l.Straight, l.ODOut, l.Securing)
			}
			for j := range l.Types {
				if k := &l.Types[j]; k.Joints.Clear != 0 || k.Hardest != 0 || k.BeadOut != 0 || k.BeadIn != 0 || k.Burr != 0 || len(k.Demands) != 0 {
					t.Errorf("%s: %+v", name, k)
				}
			}
		}
	}
}

// A price is by mass, by length or each, as its unit says; a bare number is by mass.
func TestQuotedPrices(t *testing.T) {
	c, faults := House().More("buying/quotes")
	if faults != nil {
		t.Fatal(faults)
	}
	for text, want := range map[string]Quote{
		"1.9 /kg": {Price: 1.9, Per: units.CostPerWeight}, "1.9": {Price: 1.9, Per: units.CostPerWeight}, "2.75 per m": {Price: 2.75, Per: units.CostPerRun},
		"0.3048 per ft": {Price: 1, Per: units.CostPerRun}, "22.5 each": {Price: 22.5, Per: units.CostEach},
	} {
		next := edit(t, c, "buying/quotes/0/quoted", text)
		if q := next.Buying.Quotes[0]; q.Price != want.Price || q.Per != want.Per {
			t.Errorf("%s: %v by %s", text, q.Price, q.Per)
		}
	}
	for path, text := range map[string]string{
		"buying/quotes/0/quoted": "cheap", "buying/quotes/0/metal": "wood", "buying/quotes/0/bought": "second-hand", "buying/quotes/0/wall": "12.7 mm",
		"buying/tubes_bought": "both", "buying/coil_used": "any", "buying/strip_left": "lost", "buying/spoilt": "nobody", "rates/breaks/0": "1.5",
	} {
		if _, faults := c.With(path, text); len(faults) != 1 || faults[0].Path != path {
			t.Errorf("%s = %s: %v", path, text, faults)
		}
	}
}

// Mark-up is on cost, margin of the price: 18 % of the one are 15.3 % of the other.
func TestMarkUpAndMargin(t *testing.T) { near(t, "margin", MarginOf(0.18), 0.153, 0.004) }
