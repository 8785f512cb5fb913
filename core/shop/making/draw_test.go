package making

import (
	"slices"
	"testing"

	"finwright/core/shop"
	"finwright/core/units"
)

// Tubes on hand are taken before any are bought, by hand: 123 pieces of 6.121 m. Twenty tubes of 6.3 m give one each; of 12.3 m each
// gives two; those that are short, of another wall or another metal stay.
func TestTubesOnHandAreTakenFirst(t *testing.T) {
	bare, c, o := plainShop(), plainShop(), footed()
	hand := func(metal string, wall, length units.Length, pieces int, worth units.Money) shop.TubesOnHand {
		return shop.TubesOnHand{Metal: metal, OD: 0.0254, Wall: wall, Length: length, Pieces: pieces, Heat: "4711", Worth: worth}
	}
	c.Buying.OnHand = []shop.TubesOnHand{
		hand("cs", 0.00211, 6.3, 20, 11), hand("cs", 0.00211, 6.1, 99, 1), hand("cs", 0.00277, 6.3, 99, 1), hand("tp304", 0.00211, 6.3, 99, 1), hand("cs", 0.00211, 12.3, 4, 20),
	}
	a, p := PlanOf(&bare, &bare.Lines[0], &o, nil), PlanOf(&c, &c.Lines[0], &o, nil)
	if len(p.Drawn) != 2 || p.Drawn[0].Tubes != 20 || p.Drawn[1].Tubes != 4 || p.Drawn[1].Pieces != 8 || p.Supply.Tubes != 123-28 {
		t.Fatalf("%+v, bought %+v", p.Drawn, p.Supply)
	}
	s := p.DrawnSums()
	near(t, "worth", float64(s.Worth), 20*11+4*20, 1e-12)
	// 20 x (6.3 - 6.121 - 0.0025) and 4 x (12.3 - 2 x 6.121 - 2 x 0.0025) go back; 20 + 8 kerfs of 2.5 mm are lost.
	near(t, "back to stock", float64(s.Left), 20*0.1765+4*0.053, 1e-9)
	near(t, "kerf", float64(s.Kerf), 28*0.0025, 1e-9)
	near(t, "tubes that are bought", float64(p.Supply.Paid), float64(a.Supply.Paid)*95/123, 1e-12)
	near(t, "sawing", float64(p.Time.Saw-a.Time.Saw), 28*40, 1e-12)
	near(t, "cost of tubes on hand", float64(p.Cost.item("on_hand")), 300, 1e-12)
	conservedWith(t, &p)

	c.Buying.OnHand[0].Pieces = 500
	p = PlanOf(&c, &c.Lines[0], &o, nil)
	if p.Bundle != nil || p.Absent[TheBundle].None() {
		t.Errorf("a bundle of no tubes: %+v", p.Bundle)
	}
	if p.Supply.Tubes != 0 || p.Cost == nil || p.Cost.item("tube") != 0 || p.Cost.item("on_hand") != 123*11 {
		t.Errorf("all are on hand: %+v %v", p.Supply, p.Absent)
	}
	conservedWith(t, &p)
	c.Buying.Tubes = shop.StockLengths
	p = PlanOf(&c, &c.Lines[0], &o, nil)
	if p.Supply.Tubes != 0 || p.Supply.Kerf != 0 || p.Cost == nil {
		t.Errorf("all are on hand, else stock: %+v", p.Supply)
	}
	conservedWith(t, &p)
	c.Calendar = dated().Calendar
	if got, why := p.Promise(&c, 20000); !why.None() || slices.ContainsFunc(got.Gates, func(g Gate) bool { return g.ID == "tubes" }) {
		t.Errorf("waits for tubes: %+v %v", got, why)
	}
	o.FreeIssue = true
	if p = PlanOf(&c, &c.Lines[0], &o, nil); len(p.Drawn) > 0 {
		t.Error("the customer's order takes the shop's tubes")
	}
}

// conservedWith fails unless what is bought and drawn is, to the millimetre, used, cut off, left over, spoilt or back in stock.
func conservedWith(t *testing.T, p *Plan) {
	t.Helper()
	s, d := p.Supply, p.DrawnSums()
	near(t, "tube", float64(s.Bought()+d.Length-d.Left), float64(s.Used+s.Trim+s.Offcut+s.Spoilt), 1e-12)
}

// A price that rises when the tubes on hand are used up says so.
func TestRiseWhenTubesOnHandAreUsedUp(t *testing.T) {
	c, o := plainShop(), footed()
	onlyTubes(&c, 61.5)
	c.Buying.Tubes, c.Rates.Breaks, o.Quantity = shop.CutToLength, []int{10, 40}, 10
	c.Buying.OnHand = []shop.TubesOnHand{{Metal: "cs", OD: 0.0254, Wall: 0.00211, Length: 6.3, Pieces: 11, Heat: "4711", Worth: 0.01}}
	if list := Breaks(&c, &c.Lines[0], &o, nil); list[1].Why.Key != "making.rise.on_hand" {
		t.Errorf("%+v", list)
	}
}

// stripHand is a coil on hand of the footed order's strip, 17.8 x 0.4 mm: a kilogram of it is 51.922 m.
func stripHand(mass units.Mass, worth units.MoneyPerMass) shop.StripOnHand {
	return shop.StripOnHand{Metal: "al1060", Width: 0.0178, Thickness: 0.0004, Mass: mass, Heat: "A9", Worth: worth}
}

// Coils on hand are taken before any are bought, by hand: 123 tubes of 191.4181 m. A coil of 40 kg is 2076.886 m, one of 120 kg
// 6230.658 m; at the ends of each 2.5 m are lost, at a joint 0.1 m. One of 3 kg, 155.8 m, is too short for a tube and stays, as do strip
// of another metal, width and thickness, and a coil that the line does not take; one of 10 kg more would save no coil.
func TestStripOnHandIsTakenFirst(t *testing.T) {
	bare, c, o := plainShop(), plainShop(), footed()
	other := func(change func(*shop.StripOnHand)) shop.StripOnHand {
		h := stripHand(40, 1)
		change(&h)
		return h
	}
	c.Buying.StripOnHand = []shop.StripOnHand{
		other(func(h *shop.StripOnHand) { h.Metal = "al1100" }), other(func(h *shop.StripOnHand) { h.Width = 0.0180 }),
		other(func(h *shop.StripOnHand) { h.Thickness = 0.00041 }), stripHand(3, 1), stripHand(151, 1), stripHand(40, 3), stripHand(120, 0), stripHand(10, 0),
	}
	a, p := PlanOf(&bare, &bare.Lines[0], &o, nil), PlanOf(&c, &c.Lines[0], &o, nil)
	l := p.Ledger
	if len(p.Winding.Hand) != 2 || p.Winding.Stay != 1 || l.Hand != 2 || l.ToBuy() != 2 || l.Coils != 4 || l.Jointed != 3 {
		t.Fatalf("%+v, hand %+v", l, p.Winding.Hand)
	}
	perMetre := 0.0178 * 0.0004 * 2705
	near(t, "drawn", float64(l.Drawn), 160/perMetre, 1e-12)
	near(t, "bought", float64(l.Bought), 2*150/perMetre, 1e-12)
	near(t, "conserved", float64(l.OnGood+l.Scrap()+l.Remainder+l.Returned), float64(l.Bought+l.Drawn), 1e-12)
	near(t, "strip on hand", float64(p.Cost.item("strip_on_hand")), 40*3, 1e-9)
	near(t, "strip that is bought", float64(p.Cost.item("strip")), 300*4.2, 1e-9)
	near(t, "as without", float64(a.Cost.item("strip")), 600*4.2, 1e-9)
	// 2074.386 + 6228.058 m leave 15,241.98 m of 23,544.43 to two coils of 7785.72 m each, where 2074.386 m alone leave 21,470 m to three.
	near(t, "left", float64(l.Left), 460/perMetre-123*191.4181-4*1.5-3*1-3*0.1, 1e-4)

	// Of a coil on hand that lasts, what is left goes back, is not paid for, and no strip is waited for.
	c.Buying.StripOnHand, o.Quantity = []shop.StripOnHand{stripHand(120, 3)}, 20
	p = PlanOf(&c, &c.Lines[0], &o, nil)
	l = p.Ledger
	if l.Hand != 1 || l.ToBuy() != 0 || l.Bought != 0 || l.Left != 0 || l.Remainder != 0 || p.Cost == nil {
		t.Fatalf("%+v", l)
	}
	near(t, "back to stock", float64(l.Returned), 120/perMetre-1.5-22*191.4181, 1e-5)
	near(t, "what it takes is worth", float64(p.Cost.item("strip_on_hand")), (1.5+22*191.4181)*perMetre*3, 1e-5)
	c.Calendar = dated().Calendar
	if got, why := p.Promise(&c, 20000); !why.None() || slices.ContainsFunc(got.Gates, func(g Gate) bool { return g.ID == "strip" }) {
		t.Errorf("waits for strip: %+v %v", got, why)
	}
}

// Coils on hand are joined as the joint rule lets them: without joints each winds whole tubes, and its rest is left over.
func TestCoilsOnHandAreJoinedByTheRule(t *testing.T) {
	c, o := plainShop(), footed()
	c.Buying.StripOnHand, o.Quantity = []shop.StripOnHand{stripHand(10, 0), stripHand(10, 0), stripHand(10, 0)}, 4
	c.Lines[0].FirstOff, c.Losses.Rejects = 0, 0
	// Each gives 516.7 m: 2.70 tubes. Two joined give 1033.3 m, enough for 5; without joints two tubes a coil.
	if l := PlanOf(&c, &c.Lines[0], &o, nil).Ledger; l.Hand != 2 || l.Jointed != 1 || l.Stranded != 0 {
		t.Errorf("joined: %+v", l)
	}
	c.Lines[0].Types = slices.Clone(c.Lines[0].Types)
	c.Lines[0].Types[0].Joints = shop.Joints{Until: 6}
	l := PlanOf(&c, &c.Lines[0], &o, nil).Ledger
	if l.Hand != 2 || l.Jointed != 0 {
		t.Errorf("not joined: %+v", l)
	}
	near(t, "left over", float64(l.Stranded), 519.221-2.5-2*191.4181, 1e-5)
	o.Quantity = 7
	if l = PlanOf(&c, &c.Lines[0], &o, nil).Ledger; l.Hand != 0 || l.ToBuy() != 1 {
		t.Errorf("a coil is bought for one tube more, and winds them all: %+v", l)
	}
}

// A price that rises when the strip on hand is used up says so.
func TestRiseWhenStripOnHandIsUsedUp(t *testing.T) {
	c, o := plainShop(), footed()
	onlyTubes(&c, 61.5)
	c.Buying.StripOnHand, c.Lines[0].FirstOff, c.Losses.Rejects = []shop.StripOnHand{stripHand(50, 0)}, 0, 0
	c.Rates.FinMetals = []shop.StripPrice{{Metal: "al1060", Price: 4.2}}
	c.Rates.TubeMetals, c.Rates.Breaks, o.Quantity = []shop.Price{{Metal: "cs", Price: 1e-6}}, []int{10, 40}, 10
	if list := Breaks(&c, &c.Lines[0], &o, nil); list[1].Why.Key != "making.rise.strip_on_hand" {
		t.Errorf("%+v", list)
	}
}
