package making

import (
	"math"
	"slices"
	"strings"
	"testing"

	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/core/units"
)

// dated is the shop for hand calculations with a calendar of its own.
func dated() shop.Capability {
	c := stepped()
	c.Calendar = shop.Calendar{
		WorkDays: []string{"mon", "tue", "wed", "thu", "fri"}, Shifts: 1, Holidays: []string{"2026-12-24", "2026-12-25", "2027-01-01"}, Approval: 7, Queue: 3,
		TubeLeads:  []shop.TubeLead{{Metal: "cs", Way: shop.CutToLength, OD: shop.Range[units.Length]{Low: 0.02, High: 0.03}, Days: 10}, {Metal: "cs", Way: shop.StockLengths, OD: shop.Range[units.Length]{Low: 0.02, High: 0.03}, Days: 5}},
		StripLeads: []shop.StripLead{{Metal: "al1060", Form: shop.Pancake, Days: 14}, {Metal: "al1060", Form: shop.Traverse, Days: 30}},
	}
	return c
}

func day(t testing.TB, text string) shop.Day {
	t.Helper()
	d, ok := shop.ParseDay(text)
	if !ok {
		t.Fatalf("no day %s", text)
	}
	return d
}

// By hand: ordered on Friday 27 November 2026. Strip comes after 14 days, later than tubes (10) and drawing (7): 11 December. Five
// days at the eddy current test: 16 December, a Wednesday. Three working days later is Monday the 21st. The line takes
// (4800 + 900 + 24,346.7) / 0.8 s, and saw, steps and packing (9600 + 7920 + 5400) / 0.8 s: 66,208 s or 2.3 shifts of 8 h, so three
// days: until the 23rd. The delivery takes no days, so the order is ready that day.
func TestPromiseByHand(t *testing.T) {
	c, o := dated(), footed()
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	got, why := p.Promise(&c, day(t, "2026-11-27"))
	if !why.None() {
		t.Fatal(why)
	}
	near(t, "hours", float64(got.Hours), (4800+900+24346.7)/0.8+(9600+7920+5400)/0.8, 1e-5)
	if got.Gates[got.Governs] != (Gate{"strip", 14}) || got.In != day(t, "2026-12-16") || got.Turn != day(t, "2026-12-21") || got.Work != 3 || got.Done != day(t, "2026-12-23") || got.Day != got.Done {
		t.Errorf("%+v: in %s, turn %s, done %s, ready %s", got, got.In, got.Turn, got.Done, got.Day)
	}
	// A delivery of one day more ends on Christmas Eve: the next working day is Monday the 28th.
	c.Steps[3].Lead = 1
	if got, _ = p.Promise(&c, day(t, "2026-11-27")); got.Day != day(t, "2026-12-28") {
		t.Errorf("ready %s", got.Day)
	}
	// The customer's tubes are there; the eddy current test is of bought tubes alone.
	o.FreeIssue = true
	p = PlanOf(&c, &c.Lines[0], &o, nil)
	if got, _ = p.Promise(&c, day(t, "2026-11-27")); slices.ContainsFunc(got.Gates, func(g Gate) bool { return g.ID == "tubes" }) || got.In != day(t, "2026-12-11") {
		t.Errorf("%+v", got)
	}
}

// By hand: what says when it was ordered counts from that day, whatever the day is. A drawing that is approved on Friday 8 January 2027
// holds the order: five days at the eddy current test until the 13th, three working days later is Monday the 18th, three days of work
// end on the 20th. One that was approved before the order is not waited for.
func TestPromiseStartsAtTheOrder(t *testing.T) {
	c, o := dated(), footed()
	at := func(today string) Promise {
		p := PlanOf(&c, &c.Lines[0], &o, nil)
		got, why := p.Promise(&c, day(t, today))
		if !why.None() {
			t.Fatal(why)
		}
		return got
	}
	want := at("2026-11-27")
	o.Ordered = day(t, "2026-11-27")
	if got := at("2027-05-03"); got.Day != want.Day || got.Ordered != o.Ordered || got.In != want.In {
		t.Errorf("ready %s, in %s; want %s, %s", got.Day, got.In, want.Day, want.In)
	}
	o.Approved = day(t, "2027-01-08")
	got := at("2026-12-02")
	if got.Gates[got.Governs] != (Gate{"drawing", 42}) || got.In != day(t, "2027-01-13") || got.Turn != day(t, "2027-01-18") || got.Day != day(t, "2027-01-20") {
		t.Errorf("%+v: in %s, turn %s, ready %s", got, got.In, got.Turn, got.Day)
	}
	o.Approved = day(t, "2026-11-02")
	if got = at("2026-12-02"); got.Gates[len(got.Gates)-1] != (Gate{"drawing", 0}) || got.Day != want.Day {
		t.Errorf("%+v: ready %s, want %s", got, got.Day, want.Day)
	}
}

// What governs is the latest: tooling that is bought, or the drawing.
func TestPromiseWaitsForTheLatest(t *testing.T) {
	c, o := dated(), footed()
	governs := func() string {
		p := PlanOf(&c, &c.Lines[0], &o, nil)
		got, why := p.Promise(&c, 20000)
		if !why.None() {
			return why.Key
		}
		return got.Gates[got.Governs].ID
	}
	c.Lines[0].Tooling = shop.Tooling{Rolls: 2000, RollsDays: 40}
	if got := governs(); got != "tooling" { // the line has no rolls at all
		t.Errorf("%s governs", got)
	}
	c.Calendar.Approval = 60
	if got := governs(); got != "drawing" {
		t.Errorf("%s governs", got)
	}
	o.Tube.OD = 0.0381
	if got := governs(); got != "making.no_lead" {
		t.Errorf("%s governs without a lead time for the diameter", got)
	}
	o, c.Calendar.StripLeads = footed(), nil
	if got := governs(); got != "making.no_lead" {
		t.Errorf("%s governs without a lead time of strip", got)
	}
	o.Tube.PlainA = 7
	if got := governs(); got != "shop.why.zones" {
		t.Errorf("%s governs what cannot be made", got)
	}
}

// Another day later is never ready earlier; every day is a working one, and none lies before the gates.
func TestPromisesKeepTheCalendar(t *testing.T) {
	proof.Proof{Share: 40, Full: 5000, Seed: 41}.Run(t, func(t *proof.Case) {
		r := t.Rand
		c, o := dated(), footed()
		c.Calendar.WorkDays = shop.WeekDays[r.IntN(4):][:1+r.IntN(3)]
		c.Calendar.Queue, c.Calendar.Approval, c.Calendar.Shifts = r.IntN(9), r.IntN(30), 1+r.IntN(3)
		o.Quantity = 1 + r.IntN(3000)
		p := PlanOf(&c, &c.Lines[0], &o, nil)
		order := shop.Day(20000 + r.IntN(800))
		a, why := p.Promise(&c, order)
		b, _ := p.Promise(&c, order+1)
		latest := 0
		for _, g := range a.Gates {
			latest = max(latest, g.Days)
		}
		switch {
		case !why.None():
			t.Fatalf("no promise: %v", why)
		case b.Day < a.Day || a.In != order+shop.Day(latest+a.Before) || a.Turn < a.In || a.Done < a.Turn || a.Day < a.Done:
			t.Fatalf("ordered %s: %+v; a day later %+v", order, a, b)
		case c.Calendar.Working(a.Day, 0) != a.Day || c.Calendar.Working(a.Turn, 0) != a.Turn:
			t.Fatalf("%s or %s is no working day", a.Turn, a.Day)
		case float64(a.Work)*float64(c.Calendar.Shifts)*float64(c.Crew.Shift) < float64(a.Hours)*(1-1e-9):
			t.Fatalf("%v in %d days", a.Hours, a.Work)
		}
	})
}

// Tooling, surcharges: each to the cent, and what is the same for any quantity counts as fixed.
func TestToolingAndSurchargeByHand(t *testing.T) {
	bare, c, o := plainShop(), plainShop(), footed()
	c.Lines[0].Tooling = shop.Tooling{Rolls: 2150, RollsDays: 40, Size: 720, SizeDays: 20}
	c.Lines[0].Sizes = []units.Length{0.025}
	c.Rates.TubeMetals[0].Surcharge, c.Rates.FinMetals[0].Surcharge = 0.11, 0.23
	a, p := PlanOf(&bare, &bare.Lines[0], &o, nil), PlanOf(&c, &c.Lines[0], &o, nil)
	cent := func(name string, got units.Money, want float64) {
		t.Helper()
		if math.Abs(float64(got)-want) > 0.005 {
			t.Errorf("%s %.4f, by hand %.2f", name, got, want)
		}
	}
	cent("tooling", p.Cost.item("tooling"), 2870)
	// 912.089 kg of tube at 0.11 and 600 kg of strip at 0.23.
	cent("surcharge", p.Cost.item("surcharge"), 100.33+138)
	cent("cost", p.Cost.Total-a.Cost.Total, 2870+238.33)
	cent("once", p.Cost.Once, 2870)
	if p.ToBuy.Days != 40 {
		t.Errorf("%+v", p.ToBuy)
	}
	c.Lines[0].Sizes = []units.Length{o.Tube.OD}
	c.Lines[0].Types[0].Tools = []shop.Tool{{Height: o.Tube.Fin.Height, Strip: o.Tube.Fin.Strip, Count: shop.Range[units.PerLength]{Low: 300, High: 400}}}
	if p = PlanOf(&c, &c.Lines[0], &o, nil); p.ToBuy != (ToBuy{}) || p.Cost.item("tooling") != 0 {
		t.Errorf("bought though it is there: %+v", p.ToBuy)
	}
	c.Buying.Quotes = []shop.Quote{{Metal: "cs", Way: shop.CutToLength, OD: 0.0254, Wall: 0.00211, Length: 6.5, Price: 2.75, Per: units.CostPerRun}}
	p = PlanOf(&c, &c.Lines[0], &o, nil)
	cent("a quote holds the surcharge", p.Cost.item("surcharge"), 138)
}

// A price is told when it is older than the shop lets it stand, and not on its last day.
func TestOldPricesAreTold(t *testing.T) {
	c, o := plainShop(), footed()
	c.Rates.TubeMetals[0].Dated, c.Rates.FinMetals[0].Dated, c.Buying.PriceDays = "2026-09-01", shop.Undated, 60
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	for on, want := range map[string]int{"2026-10-31": 0, "2026-11-01": 1} {
		got := p.OldPrices(&c, day(t, on))
		if len(got) != want {
			t.Errorf("%s: %v", on, got)
		}
		for _, m := range got {
			if said := message.English().Render(m, units.SI); !strings.Contains(said, "is of 2026-09-01, 61 days old; the shop lets prices stand for 60: ask again.") {
				t.Error(said)
			}
		}
	}
	c.Buying.PriceDays = 0
	if got := p.OldPrices(&c, day(t, "2036-11-01")); got != nil {
		t.Errorf("%v", got)
	}
}
