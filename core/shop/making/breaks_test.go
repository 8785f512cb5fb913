package making

import (
	"slices"
	"strings"
	"testing"

	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/core/units"
)

// Every quantity is planned anew: what is said of it is what an order of it costs.
func TestBreaksArePlannedAnew(t *testing.T) {
	c, o := plainShop(), footed()
	c.Rates.Breaks = []int{500, 1, 10, 120, 10}
	list := Breaks(&c, &c.Lines[0], &o, nil)
	var quantities []int
	for _, b := range list {
		quantities = append(quantities, b.Quantity)
		other := o
		other.Quantity = b.Quantity
		if want := PlanOf(&c, &c.Lines[0], &other, nil).Cost.Price; b.Cost == nil || b.Cost.Price != want || b.Ordered != (b.Quantity == 120) {
			t.Errorf("%d tubes: %+v, want %v", b.Quantity, b.Cost, want)
		}
	}
	if !slices.Equal(quantities, []int{1, 10, 120, 500}) {
		t.Errorf("quantities %v", quantities)
	}
	c.Rates.FinMetals = nil
	for _, b := range Breaks(&c, &c.Lines[0], &o, nil) {
		if b.Cost != nil || b.Why.None() {
			t.Errorf("%d tubes have a price without one of the strip", b.Quantity)
		}
	}
}

// A second crate for the 101st tube, a second coil of which most is scrap, another stock length, or a second stock tube of which
// most is left make each tube dearer.
func TestRiseNamesItsReason(t *testing.T) {
	for name, x := range map[string]struct {
		change func(c *shop.Capability)
		breaks []int
		key    string
	}{
		"crate": {func(c *shop.Capability) {
			c.Crate.Mass, c.Crate.Cost, c.Losses.Rejects = 100*1.12*11.81, 5000, 0
		}, []int{100, 101}, "making.rise.crate"},
		"strip": {func(c *shop.Capability) { c.Lines[0].Coils[0].Mass, c.Losses.Rejects = 330, 0 }, []int{86, 92}, "making.rise.strip"},
		"stock": {func(c *shop.Capability) {
			onlyTubes(c, 7, 61.5)
		}, []int{10, 11}, "making.rise.stock"},
		"offcut": {func(c *shop.Capability) {
			onlyTubes(c, 61.5)
		}, []int{10, 11}, "making.rise.offcut"},
	} {
		c, o := plainShop(), footed()
		x.change(&c)
		c.Rates.Breaks, o.Quantity = x.breaks, x.breaks[0]
		list := Breaks(&c, &c.Lines[0], &o, nil)
		last := list[len(list)-1]
		if last.Cost == nil || last.Why.Key != x.key {
			t.Errorf("%s: %v then %v: %+v", name, list[0].Cost, last.Cost, last.Why)
		}
	}
}

// onlyTubes has nothing cost anything but tubes out of stock lengths, none of them spoilt.
func onlyTubes(c *shop.Capability, stock ...units.Length) {
	c.Buying.Tubes, c.Cutting.Stock, c.Losses.Rejects, c.Lines[0].FirstOff = shop.StockLengths, stock, 0, 0
	c.Rates.Person, c.Rates.Line, c.Crate.Cost, c.Crate.PerMetre, c.Buying.StripLeft = 0, 0, 0, 0, shop.StripIsStored
}

// Whatever the quantities, a price that rises has a reason and one that falls has none.
func TestEveryRiseHasAReason(t *testing.T) {
	proof.Proof{Share: 60, Full: 3000, Seed: 29}.Run(t, func(t *proof.Case) {
		r := t.Rand
		c, o := shop.House(), footed()
		c.Buying.Tubes = shop.TubeWays[r.IntN(2)]
		c.Buying.StripLeft, c.Buying.Coils = shop.StripUses[r.IntN(2)], shop.CoilChoices[r.IntN(2)]
		o.Quantity, o.Tube.Length = 1+r.IntN(400), units.Length(1.5+10*r.Float64())
		c.Rates.Breaks = nil
		for range 10 {
			c.Rates.Breaks = append(c.Rates.Breaks, 1+r.IntN(1200))
		}
		list := Breaks(&c, &c.Lines[0], &o, nil)
		for i := 1; i < len(list); i++ {
			a, b := list[i-1], list[i]
			if a.Cost == nil || b.Cost == nil {
				t.Fatalf("no cost: %v %v", a.Why, b.Why)
			}
			rises := b.Cost.PerTube > a.Cost.PerTube*(1+shop.Slack)
			if said := message.English().Render(b.Why, units.SI); rises == b.Why.None() || rises && (!strings.Contains(said, "than") || strings.Contains(said, "{")) {
				t.Fatalf("%d tubes at %v, %d at %v: %q", a.Quantity, a.Cost.PerTube, b.Quantity, b.Cost.PerTube, said)
			}
		}
	})
}
