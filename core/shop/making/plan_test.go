package making

import (
	"testing"

	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// Without a margin an order breaks even at its own quantity: the price per tube
// is then the cost per tube. With one it breaks even earlier.
func TestBreakEven(t *testing.T) {
	c, o := shop.House(), footed()
	c.Steps = nil
	c.Rates.MarkUp = 0
	if p := PlanOf(&c, &c.Lines[0], &o, nil); p.Cost.BreakEven != o.Quantity {
		t.Errorf("breaks even at %d of %d", p.Cost.BreakEven, o.Quantity)
	}
	c.Rates.MarkUp = 0.18
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	n := units.Money(p.Cost.BreakEven)
	if p.Cost.BreakEven >= o.Quantity || p.Cost.Fixed+n*p.Cost.Variable > n*p.Cost.PerTube || p.Cost.Fixed+(n-1)*p.Cost.Variable < (n-1)*p.Cost.PerTube {
		t.Errorf("break-even at %d: %+v", p.Cost.BreakEven, p.Cost)
	}
	if now := SetupOf(&o); PlanOf(&c, &c.Lines[0], &o, &now).Cost.Fixed != 0 {
		t.Error("an order that follows its like has a fixed cost")
	}
}

// By hand, at prices of one thing only: 120 tubes, 2 first-off or rejected on top.
func TestCostByHand(t *testing.T) {
	c, o := shop.House(), footed()
	c.Steps = nil
	c.Buying.Tubes = shop.StockLengths
	c.Cutting.Stock = []units.Length{6.096, 12.192, 15.24, 18.288}
	c.Rates = shop.Rates{Line: 3600.0 / 3600, Person: 0, FinMetals: []shop.StripPrice{{Metal: "al1060", Price: 0}}, TubeMetals: []shop.Price{{Metal: "cs", Price: 0}}}
	c.Crate.Cost = 0
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	near(t, "line at 1 a second", float64(p.Cost.Total), float64(p.Time.Clock), 1e-12)
	c.Rates.Line, c.Rates.Person, c.Rates.MarkUp = 0, 1, 0.18
	p = PlanOf(&c, &c.Lines[0], &o, nil)
	near(t, "people at 1 a second", float64(p.Cost.Total), 2*float64(p.Time.Clock)+float64(p.Time.Saw+p.Time.Pack)/0.8, 1e-12)
	near(t, "price", float64(p.Cost.Price), 1.18*float64(p.Cost.Total), 1e-12)
	near(t, "per metre", float64(p.Cost.PerMetre)*6.096*120, float64(p.Cost.Price), 1e-12)
	near(t, "slings", float64(p.Packing.Lifting.Slings.From), 0.21*(6.096+0.15), 1e-12)
	near(t, "slings", float64(p.Packing.Lifting.Slings.To), 0.25*(6.096+0.15), 1e-12)
	c.Rates = shop.Rates{FinMetals: []shop.StripPrice{{Metal: "al1060", Price: 0}}, TubeMetals: []shop.Price{{Metal: "cs", Price: 1}}}
	p = PlanOf(&c, &c.Lines[0], &o, nil)
	// Each 20 ft tube needs 25 mm of trim, so it is cut from a longer mill tube: 50 ft
	// give two, 40 ft only one; 123 pieces take 62 mill tubes.
	if p.Winding.Made() != 120+1+2 || p.Supply.PerTube != 2 || p.Supply.Stock != 15.24 || p.Supply.Tubes != 62 {
		t.Errorf("made %d, sawing %+v", p.Winding.Made(), p.Supply)
	}
	near(t, "saw", float64(p.Time.Saw), (123+2*120)*40, 1e-12)
	near(t, "tube at 1 a kilogram", float64(p.Cost.Total), float64(p.Supply.Bought())*1.21087, 1e-5)
}

// Strip at 1 a kilogram, its scrap at half: what stays on the last coil is not paid for.
func TestStripCostByHand(t *testing.T) {
	c, o := shop.House(), footed()
	c.Steps = nil
	c.Rates = shop.Rates{FinMetals: []shop.StripPrice{{Metal: "al1060", Price: 1, Scrap: 0.5}}, TubeMetals: []shop.Price{{Metal: "cs", Price: 0}}}
	c.Buying.StripLeft = shop.StripIsStored
	c.Crate.Cost = 0
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	perMetre := 0.0178 * 0.0004 * 2705
	want := (float64(p.Ledger.OnGood) + float64(p.Ledger.Scrap())/2) * perMetre
	near(t, "strip", float64(p.Cost.Total), want, 1e-9)
	// The one first-off tube is charged to the start, as one of the 123 made.
	near(t, "fixed", float64(p.Cost.Fixed), want/123, 1e-9)
}

func TestCostIsAbsentWithoutAPrice(t *testing.T) {
	c, o := shop.House(), footed()
	own, faults := material.NewOwn("Alloy", 200, 2700, 23e-6)
	if faults != nil {
		t.Fatal(faults)
	}
	o.FinMetal = own
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	if p.Cost != nil || p.Absent[TheCost].None() || p.Ledger == nil || p.Speeds.Power != nil || p.Speeds.Note.None() {
		t.Errorf("own metal: cost %v, absent %v", p.Cost, p.Absent)
	}
	o = embedded()
	p = PlanOf(&c, &c.Lines[0], &o, nil)
	if p.Programme != nil || p.Absent[TheProgramme].None() || p.Packing != nil {
		t.Error("a line plans a type that it does not make")
	}
	for _, why := range p.Absent {
		message.English().Render(why, units.SI)
	}
}

// One traverse-wound coil saves changes and hours over pancakes of the same order.
func TestTraverseSavesChanges(t *testing.T) {
	c, o := shop.House(), footed()
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	if len(p.Coils) != 2 || !p.Coils[0].Possible || !p.Coils[1].Possible {
		t.Fatalf("coils %+v", p.Coils)
	}
	pancake, traverse := &p.Coils[0], &p.Coils[1]
	changes, time := traverse.Saved(pancake)
	if changes != pancake.Ledger.Changes-traverse.Ledger.Changes || changes < 10 || traverse.Ledger.Changes > pancake.Ledger.Changes/10 {
		t.Errorf("saves %d changes: %d against %d", changes, traverse.Ledger.Changes, pancake.Ledger.Changes)
	}
	want := (float64(pancake.Ledger.Changes)*5 - float64(traverse.Ledger.Changes)*15) * 60 / 0.8
	near(t, "time saved", float64(time), want, 1e-9)
}

// What must cost more costs more.
func TestSensitivity(t *testing.T) {
	c, o := shop.House(), footed()
	price := PlanOf(&c, &c.Lines[0], &o, nil).Cost.PerTube
	before := c.Save()
	swings := Sensitivity(&c, &c.Lines[0], &o, nil, 0.1)
	if len(swings) != len(drivers) {
		t.Fatalf("%d swings of %d drivers", len(swings), len(drivers))
	}
	for _, s := range swings {
		cheaper := s.ID == "speed" || s.ID == "efficiency"
		if cheaper && !(s.High < price && price < s.Low) || !cheaper && !(s.Low <= price && price <= s.High && s.Low < s.High) && s.ID != "rejects" {
			t.Errorf("%s: %.3f, %.3f, %.3f", s.ID, s.Low, price, s.High)
		}
		if !message.English().Has("shop.driver." + s.ID) {
			t.Errorf("no name for %s", s.ID)
		}
	}
	if string(c.Save()) != string(before) || PlanOf(&c, &c.Lines[0], &o, nil).Cost.PerTube != price {
		t.Error("the drivers changed the capability itself")
	}
}

func TestEveryNameHasAText(t *testing.T) {
	var keys []string
	for _, a := range Activities {
		keys = append(keys, "shop.activity."+string(a))
	}
	for _, k := range []ZoneKind{Trim, PlainEnd, Finned, BareSpan} {
		keys = append(keys, "shop.zone."+string(k))
	}
	for _, k := range []string{"tube", "offcut", "spoilt", "strip", "scrap", "set_up", "finning", "saw", "packing", "overhead", "freight"} {
		keys = append(keys, "shop.cost."+k)
	}
	for _, k := range []string{"spindle", "strip_speed", "drive"} {
		keys = append(keys, "shop.speed."+k)
	}
	for _, k := range keys {
		if !message.English().Has(k) {
			t.Errorf("no text for %s", k)
		}
	}
}

func BenchmarkMake(b *testing.B) {
	c, o := shop.House(), footed()
	for b.Loop() {
		PlanOf(&c, &c.Lines[0], &o, nil)
	}
}
