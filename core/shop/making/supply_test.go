package making

import (
	"math"
	"slices"
	"testing"

	"finwright/core/shop"
	"finwright/core/units"
)

// plainShop is a shop with a figure of its own for all that an order of the footed tube costs, so that it can be worked by hand.
func plainShop() shop.Capability {
	c := shop.House()
	l := shop.Line{
		Name: "By hand", StripSpeed: 100, Drive: 1e8, RunUp: 2, RunDown: 0.5, Jog: 0.1, FirstOff: 1,
		Coils: []shop.Coil{{Form: shop.Pancake, OD: 3, ID: 0.3, Mass: 150, Fill: 1, Change: 300}},
		Racks: shop.Racks{Tubes: 40, Change: 480}, Times: shop.Times{Load: 30, Secure: 12, Check: 900},
		ChangeOver: shop.ChangeOver{OD: 4800},
		Types:      []shop.Practice{{Type: "footed", Spindle: 20, StripRatio: 1.01, Joints: shop.Joints{Short: 1, Long: 2, Until: 6, Apart: 3}}},
	}
	c.Lines = []shop.Line{l}
	c.Losses = shop.Losses{CoilStart: 1.5, CoilEnd: 1, Joint: 0.1, Rejects: 0.01}
	c.Cutting = shop.Cutting{Stock: []units.Length{6.096, 12.192, 15.24, 18.288}, Kerf: 0.0025, TrimA: 0.01, TrimB: 0.015, Step: 0.001, Time: 40}
	c.Buying = shop.Buying{Tubes: shop.CutToLength, Tolerance: 0.003, Extra: 0.04, Coils: shop.CheaperCoil, StripLeft: shop.StripIsScrap, Spoilt: shop.CustomerBears}
	c.Crate = shop.Crate{
		Width: 1.1, Height: 0.9, Length: 15, Clearance: 0.15, Separator: 0.004, Mass: 2500, Crane: 3000, Tare: 0.12, Payload: 24000, Time: 5400, Cost: 280, PerMetre: 12,
	}
	c.Crew = shop.Crew{People: 2, Shift: 28800, Efficiency: 0.8}
	c.Rates = shop.Rates{
		Line: 65.0 / 3600, Person: 38.0 / 3600, TubeMetals: []shop.Price{{Metal: "cs", Price: 1.9}},
		FinMetals: []shop.StripPrice{{Metal: "al1060", Price: 4.2, Scrap: 0.35}}, Overhead: 0.1, Freight: 0.06, MarkUp: 0.18,
	}
	c.Steps, c.Checks = nil, nil
	return c
}

// The price of one order, worked by hand line by line to the cent.
func TestPriceByHand(t *testing.T) {
	c, o := plainShop(), footed()
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	if p.Cost == nil {
		t.Fatal(p.Absent)
	}
	cent := func(name string, got units.Money, want float64) {
		t.Helper()
		if math.Abs(float64(got)-want) > 0.005 {
			t.Errorf("%s %.4f, by hand %.2f", name, got, want)
		}
	}
	items := map[string]units.Money{}
	for _, i := range p.Cost.Items {
		items[i.ID] = i.Amount
	}
	// 120 good, 1 first-off, 2 rejects. 6096 mm and trims of 10 and 15 mm: cut 6121 mm, bought 3 mm longer.
	// 123 x 6.124 m x 1.210868 kg/m = 912.089 kg; at 1.90 and 4 % for the cutting.
	cent("tubes", items["tube"], 1802.29)
	// 6.020 m of fins x 393.7008 /m = 2370.079 turns of pi 25.4 mm x 1.01: 191.0151 m stay; 5 turns of the run-down: 0.4030 m.
	// 123 x 191.4181 m = 23,544.4 m. A coil of 150 kg at 17.8 x 0.4 mm x 2705 = 19.2596 g/m is 7788.32 m, less 2.5 m at its ends:
	// three joined on, four bought, 600 kg at 4.20.
	cent("strip", items["strip"], 2520.00)
	// 120 x 191.0151 m x 19.2596 g/m = 441.465 kg ship, 158.535 kg are scrap at 35 % of 4.20.
	cent("scrap", items["scrap"], -233.05)
	// Line and two people: (65 + 2 x 38) / 0.8 = 176.25 an hour. 80 min to set, 15 min to check.
	cent("set-up", items["set_up"], 279.06)
	// A tube: 2 s up to 20 turns a second (20 turns), 2350.079 / 20 s, 0.5 s down, 101 mm bare at 0.1 m/s, two ends of 12 s, load 30 s:
	// 175.014 s x 123. Three coil changes of 300 s, four racks of 480 s: 24,346.7 s.
	cent("finning", items["finning"], 1191.97)
	// 240 end cuts of 40 s at 38 / 0.8.
	cent("saw", items["saw"], 126.67)
	// One crate: 1.5 h at 47.50, 280, and 6.246 m at 12.
	cent("packing", items["packing"], 71.25+280+74.95)
	// A tenth of 279.0625 + 1191.9745 + 126.6667 + 71.25.
	cent("overhead", items["overhead"], 166.90)
	// At the heavy side a wall of 2.3188 mm and 3 % more strip: 120 x (8.04611 kg + 1.03 x 3.65131 kg) x 1.12 = 1586.86 kg at 0.06.
	cent("freight", items["freight"], 95.21)
	cent("cost", p.Cost.Total, 6375.25)
	cent("mark-up of 18 %", p.Cost.MarkUp, 1147.55)
	cent("price", p.Cost.Price, 7522.80)
	cent("price of a tube", p.Cost.PerTube, 62.69)
	near(t, "margin", p.Cost.Margin, 0.18/1.18, 1e-12)

	c.Rates.Least = 8000
	p = PlanOf(&c, &c.Lines[0], &o, nil)
	cent("least charge", p.Cost.Price, 8000)
	near(t, "margin at the least charge", p.Cost.Margin, 1-6375.25/8000, 1e-5)
}

// Sawn from stock: 6.121 m go twice into 50 ft and once into 40 ft, so 62 tubes of 15.24 m are bought, and 123 more cuts are made.
func TestStockByHand(t *testing.T) {
	c, o := plainShop(), footed()
	c.Buying.Tubes = shop.StockLengths
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	s := p.Supply
	if s.Way != shop.StockLengths || s.Stock != 15.24 || s.Tubes != 62 || s.PerTube != 2 || p.Other.Way != shop.CutToLength {
		t.Fatalf("%+v", s)
	}
	near(t, "tubes", float64(s.Paid), 62*15.24*1.2108683*1.9, 1e-7) // no extra
	near(t, "sawing before finning", float64(s.Work), 123*40/3600.0*47.5, 1e-12)
	near(t, "dearer than cut to length", float64(s.Cost()-p.Other.Cost()), 2173.84+64.92-1802.29, 1e-4)
	near(t, "all sawing", float64(p.Time.Saw), (123+240)*40, 1e-12)
	// 61 tubes leave 15.24 - 2 x 6.1235 m, the last one 15.24 - 6.1235 m.
	near(t, "offcuts", float64(s.Offcut), 61*2.993+9.1165, 1e-9)
	c.Buying.Offcuts = 0.4
	p = PlanOf(&c, &c.Lines[0], &o, nil)
	near(t, "offcuts credited", float64(p.Supply.Credit), 0.4*1.9*1.2108683*191.6895, 1e-6)
	if i := slices.IndexFunc(p.Cost.Items, func(i CostItem) bool { return i.ID == "offcut" }); i < 0 || p.Cost.Items[i].Amount != -p.Supply.Credit {
		t.Errorf("the credit is not in the cost: %+v", p.Cost.Items)
	}
	// With all of an offcut's price back, the stock of which the least stays counts no more: kerf and sawing alone do.
	c.Buying.Offcuts = 1
	if p = PlanOf(&c, &c.Lines[0], &o, nil); p.Supply.Stock != 12.192 && p.Supply.Stock != 6.096 && p.Supply.Kerf > s.Kerf {
		t.Errorf("%+v", p.Supply)
	}
	c.Cutting.Stock = []units.Length{6}
	if p = PlanOf(&c, &c.Lines[0], &o, nil); p.Supply != nil || p.Absent[TheSupply].None() || p.Cost != nil {
		t.Errorf("6.121 m are cut from 6 m: %+v", p.Supply)
	}
}

// A quote for the size goes before the metal's price; the lowest that reaches the length holds.
func TestQuotes(t *testing.T) {
	c, o := plainShop(), footed()
	quote := func(way shop.TubeWay, upTo units.Length, price float64, per units.Kind) shop.Quote {
		return shop.Quote{Metal: "cs", Way: way, OD: 0.0254, Wall: 0.00211, Length: upTo, Price: price, Per: per} // 14 BWG is 2.108 mm
	}
	paid := func(quotes ...shop.Quote) float64 {
		c.Buying.Quotes = quotes
		return float64(PlanOf(&c, &c.Lines[0], &o, nil).Supply.Paid)
	}
	byMass := paid()
	near(t, "by length", paid(quote(shop.CutToLength, 6.5, 2.75, units.CostPerRun)), 123*6.124*2.75, 1e-12)
	near(t, "each", paid(quote(shop.CutToLength, 6.5, 22.5, units.CostEach)), 123*22.5, 1e-12)
	near(t, "by mass", paid(quote(shop.CutToLength, 6.5, 2, units.CostPerWeight)), 123*6.124*1.2108683*2, 1e-7)
	near(t, "the lowest", paid(quote(shop.CutToLength, 6.5, 22.5, units.CostEach), quote(shop.CutToLength, 6.5, 2.75, units.CostPerRun)), 123*6.124*2.75, 1e-12)
	other := quote(shop.CutToLength, 6.5, 1, units.CostPerRun)
	other.Metal = "tp304"
	thick := quote(shop.CutToLength, 6.5, 1, units.CostPerRun)
	thick.Wall = 0.00277
	near(t, "not for this tube", paid(other, thick, quote(shop.CutToLength, 6, 1, units.CostPerRun), quote(shop.StockLengths, 15.24, 1, units.CostPerRun)), byMass, 1e-12)
	c.Buying.Tubes = shop.StockLengths
	near(t, "stock each", paid(quote(shop.StockLengths, 15.24, 30, units.CostEach)), 62*30, 1e-12)
	c.Cutting.Stock = []units.Length{15.24, 18.288}
	near(t, "the cheaper stock", paid(quote(shop.StockLengths, 18.288, 20, units.CostEach)), 62*20, 1e-12)
}

// Strip that is left is paid for and sold as scrap, or goes back to stock and is not paid for.
func TestStripLeftOver(t *testing.T) {
	c, o := plainShop(), footed()
	scrap := PlanOf(&c, &c.Lines[0], &o, nil)
	c.Buying.StripLeft = shop.StripIsStored
	again := PlanOf(&c, &c.Lines[0], &o, nil)
	left := float64(scrap.Winding.Strip.Mass(scrap.Ledger.Left))
	if left <= 0 || scrap.Ledger.Left != again.Ledger.Remainder || scrap.Ledger.Remainder != 0 || again.Ledger.Left != 0 {
		t.Fatalf("%+v and %+v", scrap.Ledger, again.Ledger)
	}
	near(t, "what it costs", float64(scrap.Cost.Total-again.Cost.Total), left*4.2*(1-0.35), 1e-9)
}

// The customer sends what ships, first-off tubes and rejects; the spoilt ones cost the shop what three tubes cut to length cost, if
// it bears them.
func TestFreeIssue(t *testing.T) {
	c, o := plainShop(), footed()
	o.FreeIssue = true
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	if p.Winding.Made() != 120+1+2 || p.Supply != nil {
		t.Fatalf("%d made, %+v", p.Winding.Made(), p.Supply)
	}
	c.Buying.Spoilt = shop.ShopBears
	q := PlanOf(&c, &c.Lines[0], &o, nil)
	near(t, "spoilt", float64(q.Cost.Total-p.Cost.Total), 3*6.121*1.2108683*1.9*1.04, 1e-7)
	c.Rates.TubeMetals = nil
	if q = PlanOf(&c, &c.Lines[0], &o, nil); q.Cost != nil || q.Absent[TheCost].None() {
		t.Error("a spoilt tube without a price has one")
	}
	c.Buying.Spoilt = shop.CustomerBears
	if PlanOf(&c, &c.Lines[0], &o, nil).Cost == nil {
		t.Error("the customer's own tubes need a price")
	}
}

// The cheaper coil is used, or the first of the line's list that serves; that a few tubes are wound from a small coil and many
// from a large one comes of it.
func TestCoilChosen(t *testing.T) {
	c, o := plainShop(), footed()
	c.Lines[0].Coils = []shop.Coil{{Form: shop.Traverse, OD: 3, ID: 0.3, Width: 0.4, Mass: 600, Fill: 1, Change: 900}, {Form: shop.Pancake, OD: 3, ID: 0.3, Mass: 60, Fill: 1, Change: 300}}
	form := func(quantity int) shop.CoilForm {
		o.Quantity = quantity
		return PlanOf(&c, &c.Lines[0], &o, nil).Winding.Coil.Form
	}
	if few, many := form(5), form(2000); few != shop.Pancake || many != shop.Traverse {
		t.Errorf("5 tubes from a %s, 2000 from a %s", few, many)
	}
	c.Buying.Coils = shop.FirstCoil
	if got := form(5); got != shop.Traverse {
		t.Errorf("the first is not used but the %s", got)
	}
}
