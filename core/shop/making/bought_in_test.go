package making

import (
	"math"
	"testing"

	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// extruded is the footed tube with fins raised from a muff.
func extruded() Order {
	o := footed()
	o.Tube.Fin.Type, o.Tube.Fin.Sleeve = tube.Extruded, 0.0005
	return o
}

// Tubes that come finned, by hand: 120 of 6.096 m at 31.20 a metre, capped, delivered and packed; nothing is wound, set up or sawn.
func TestBoughtInByHand(t *testing.T) {
	c, o := dated(), extruded()
	c.BoughtIn = []shop.BoughtIn{
		{Type: tube.Extruded, OD: shop.Range[units.Length]{Low: 0.03, High: 0.04}, PerMetre: 50, Days: 20, Dated: shop.Undated},
		{Type: tube.Extruded, OD: shop.Range[units.Length]{Low: 0.02, High: 0.03}, PerMetre: 31.2, Days: 45, Dated: "2026-03-02"},
	}
	c.Buying.PriceDays = 100
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	if p.Cost == nil || p.Winding != nil || p.Absent[TheProgramme].None() || len(p.Steps) != 2 {
		t.Fatalf("%+v %v", p.Steps, p.Absent)
	}
	cent := func(name string, got units.Money, want float64) {
		t.Helper()
		if math.Abs(float64(got)-want) > 0.005 {
			t.Errorf("%s %.4f, by hand %.2f", name, got, want)
		}
	}
	cent("tubes", p.Cost.item("bought_in"), 22823.42)
	cent("caps", p.Cost.item("steps"), 71.75)
	cent("delivery", p.Cost.item("sub_let"), 324)
	crates := float64(p.Packing.Crates)
	packed := 71.25 * crates
	cent("packing", p.Cost.item("packing"), packed+crates*(280+6.246*12))
	cent("overhead", p.Cost.item("overhead"), 0.1*(packed+23.75))
	cent("freight", p.Cost.item("freight"), 0.06*float64(p.Packing.Order))
	var sum units.Money
	for _, item := range p.Cost.Items {
		sum += item.Amount
	}
	cent("cost", p.Cost.Total, float64(sum))
	cent("mark-up", p.Cost.MarkUp, 0.18*(float64(sum)-324))
	cent("price", p.Cost.Price, float64(p.Cost.Total+p.Cost.MarkUp))
	cent("a tube", p.Cost.PerTube, float64(p.Cost.Price)/120)
	cent("fixed", p.Cost.Fixed, 300)
	if got := p.OldPrices(&c, day(t, "2026-11-27")); len(got) != 1 {
		t.Errorf("old prices %v", got)
	}
	got, why := p.Promise(&c, day(t, "2026-11-27"))
	if !why.None() || got.Gates[got.Governs] != (Gate{"tubes", 45}) || got.Work != 1 {
		t.Errorf("%+v %v", got, why)
	}
	list := Breaks(&c, &c.Lines[0], &o, nil)
	for i, b := range list {
		if b.Cost == nil || i > 0 && b.Cost.PerTube > list[i-1].Cost.PerTube*(1+shop.Slack) == b.Why.None() {
			t.Errorf("%d: %+v", b.Quantity, b)
		}
	}
	o.Tube.OD = 0.05 // for which the shop has no price
	if p = PlanOf(&c, &c.Lines[0], &o, nil); p.BoughtIn != nil || p.Cost != nil {
		t.Errorf("%+v", p.Cost)
	}
	o.Tube.OD, o.Tube.Length = 0.0254, 20
	if p = PlanOf(&c, &c.Lines[0], &o, nil); p.Cost != nil || p.WhyNoCost().None() {
		t.Error("tubes that no crate takes have a price")
	}
}
