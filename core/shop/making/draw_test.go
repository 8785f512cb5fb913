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
