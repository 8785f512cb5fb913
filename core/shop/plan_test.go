package shop

import (
	"math"
	"math/rand/v2"
	"testing"

	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/tube"
	"finwright/core/units"
)

// possible returns an order that a line of the house can make.
func possible(r *rand.Rand, c *Capability) (Order, *Line) {
	between := func(a, b float64) float64 { return a + (b-a)*r.Float64() }
	for {
		o := footed()
		l := &c.Lines[r.IntN(len(c.Lines))]
		m := &l.Types[r.IntN(len(l.Types))]
		o = o.With(Setting{Field: "fin_metal", Choice: m.FinMetals[r.IntN(len(m.FinMetals))]},
			Setting{Field: "tube_metal", Choice: m.TubeMetals[r.IntN(len(m.TubeMetals))]})
		t := &o.Tube
		t.Fin.Type = m.Type
		t.OD = l.Sizes[r.IntN(len(l.Sizes))]
		t.Wall = units.Length(between(float64(m.LeastWall), 0.0035))
		height := within(t.OD, m.Height, m.HeightByOD)
		t.Fin.Height = units.Length(between(float64(height.Low), float64(height.High)))
		count := within(t.OD, m.Count, m.CountByOD)
		t.Fin.Count = units.PerLength(between(float64(count.Low), float64(count.High)))
		t.Fin.Strip = units.Length(between(float64(m.Strip.Low), float64(m.Strip.High)))
		t.Fin.Groove = 0.25 * units.Millimetre
		t.Length = units.Length(between(1.6, 14.5))
		t.PlainA, t.PlainB = units.Length(between(0.04, 0.15)), units.Length(between(0.04, 0.15))
		n := r.IntN(4)
		for i := range n {
			t.Spans = append(t.Spans, tube.Span{Centre: t.Length * units.Length(i+1) / units.Length(n+1), Width: units.Length(between(0.05, 0.09))})
		}
		o.Quantity, o.FreeIssue, o.Spares = 1+r.IntN(120), r.IntN(4) == 0, 10
		if worst := Judge(c, l, &o); refused(worst) == "" {
			return o, l
		}
	}
}

func refused(list []Verdict) string {
	for _, v := range list {
		if v.State == "no" {
			return v.Rule
		}
	}
	return ""
}

// Over 10,000 random valid orders: tube cut + growth = finished zones + end trims,
// kerf charged to stock; strip bought = on good tubes + scrap (rejected tubes
// included) + remainder, to the millimetre; hours and money add up; nothing is NaN.
func TestOrdersAreConserved(t *testing.T) {
	c := House()
	const millimetre = 0.001
	proof.Proof{Share: 400, Full: 10000, Seed: 19}.Run(t, func(t *proof.Case) {
		r := t.Rand
		o, l := possible(r, &c)
		var now *Setup
		if t.Index%3 == 0 {
			s := SetupOf(&o)
			now = &s
		}
		p := Make(&c, l, &o, now)
		if len(p.Absent) > 0 && !(o.FreeIssue && len(p.Absent) == 1) {
			t.Fatalf("%+v: absent %v", o.Tube, p.Absent)
		}
		var zones, trims units.Length
		for _, z := range p.Programme.Zones {
			if z.Kind == Trim {
				trims += z.Finished.Length()
			} else {
				zones += z.Finished.Length()
			}
		}
		if math.Abs(float64(zones-o.Tube.Length)) > millimetre/1000 {
			t.Fatalf("zones add up to %v of %v", zones, o.Tube.Length)
		}
		grown := growthByZones(p.Programme)
		if math.Abs(float64(p.Programme.CutLength+grown-zones-trims)) > millimetre/1000 || math.Abs(float64(grown-p.Programme.Grown)) > 1e-9 {
			t.Fatalf("cut %v and growth %v against zones %v and trims %v", p.Programme.CutLength, grown, zones, trims)
		}
		if s := p.Sawing; s != nil {
			if math.Abs(float64(s.Bought()-s.Kerf-s.Offcut-p.Programme.CutLength*units.Length(p.Winding.Made()))) > millimetre {
				t.Fatalf("stock %+v", s)
			}
		}
		w, d := p.Winding, p.Ledger
		strip := float64(p.Strip().Kept)*float64(o.Quantity) + float64(d.Scrap()+d.Remainder)
		if math.Abs(strip-float64(d.Bought)) > millimetre {
			t.Fatalf("strip bought %v, accounted for %v", d.Bought, strip)
		}
		if rejected := float64(w.Rejected) * float64(w.Strip.PerTube()); math.Abs(rejected-float64(d.Rejected)) > millimetre || w.Rejected < 1 {
			t.Fatalf("rejected tubes: %v of %v", d.Rejected, rejected)
		}
		var hours units.Duration
		s, _ := p.Schedule(&c, math.MaxInt)
		for _, b := range s.Blocks {
			hours += b.To - b.From
		}
		if math.Abs(float64(hours-p.Time.Clock)) > 1e-3 {
			t.Fatalf("schedule of %v s, clock of %v", hours, p.Time.Clock)
		}
		var money units.Money
		for _, item := range p.Cost.Items {
			money += item.Amount
		}
		if math.Abs(float64(money+p.Cost.Margin-p.Cost.Price)) > 1e-6 || math.Abs(float64(p.Cost.PerTube)*float64(o.Quantity)-float64(p.Cost.Price)) > 1e-6 {
			t.Fatalf("cost %+v", p.Cost)
		}
		finite(t, "plan", p)
	})
}

// growthByZones adds up what the finished zones are longer than their bare tube.
func growthByZones(p *Programme) units.Length {
	var sum units.Length
	for _, z := range p.Zones {
		sum += z.Finished.Length() - z.Cut.Length()
	}
	return sum
}

// Without a margin an order breaks even at its own quantity: the price per tube
// is then the cost per tube. With one it breaks even earlier.
func TestBreakEven(t *testing.T) {
	c, o := House(), footed()
	c.Rates.Margin = 0
	if p := Make(&c, &c.Lines[0], &o, nil); p.Cost.BreakEven != o.Quantity {
		t.Errorf("breaks even at %d of %d", p.Cost.BreakEven, o.Quantity)
	}
	c.Rates.Margin = 0.18
	p := Make(&c, &c.Lines[0], &o, nil)
	n := units.Money(p.Cost.BreakEven)
	if p.Cost.BreakEven >= o.Quantity || p.Cost.Fixed+n*p.Cost.Variable > n*p.Cost.PerTube || p.Cost.Fixed+(n-1)*p.Cost.Variable < (n-1)*p.Cost.PerTube {
		t.Errorf("break-even at %d: %+v", p.Cost.BreakEven, p.Cost)
	}
	if now := SetupOf(&o); Make(&c, &c.Lines[0], &o, &now).Cost.Fixed != 0 {
		t.Error("an order that follows its like has a fixed cost")
	}
}

// By hand, at prices of one thing only: 120 tubes, 2 first-off or rejected on top.
func TestCostByHand(t *testing.T) {
	c, o := House(), footed()
	c.Rates = Rates{Line: 3600.0 / 3600, Person: 0, FinMetals: []Price{{"al1060", 0}}, TubeMetals: []Price{{"cs", 0}}}
	c.Crate.Cost = 0
	p := Make(&c, &c.Lines[0], &o, nil)
	near(t, "line at 1 a second", float64(p.Cost.Total), float64(p.Time.Clock), 1e-12)
	c.Rates.Line, c.Rates.Person, c.Rates.Margin = 0, 1, 0.18
	p = Make(&c, &c.Lines[0], &o, nil)
	near(t, "people at 1 a second", float64(p.Cost.Total), 2*float64(p.Time.Clock)+float64(p.Time.Saw+p.Time.Pack)/0.8, 1e-12)
	near(t, "price", float64(p.Cost.Price), 1.18*float64(p.Cost.Total), 1e-12)
	near(t, "per metre", float64(p.Cost.PerMetre)*6.096*120, float64(p.Cost.Price), 1e-12)
	near(t, "slings", float64(p.Packing.Slings.From), 0.21*6.096, 1e-12)
	near(t, "slings", float64(p.Packing.Slings.To), 0.25*6.096, 1e-12)
	c.Rates = Rates{FinMetals: []Price{{"al1060", 0}}, TubeMetals: []Price{{"cs", 1}}}
	p = Make(&c, &c.Lines[0], &o, nil)
	// Each 20 ft tube needs 25 mm of trim, so it is cut from a longer mill tube: 50 ft
	// give two, 40 ft only one; 123 pieces take 62 mill tubes.
	if p.Winding.Made() != 120+1+2 || p.Sawing.PerTube != 2 || p.Sawing.Stock != 15.24 || p.Sawing.Tubes != 62 {
		t.Errorf("made %d, sawing %+v", p.Winding.Made(), p.Sawing)
	}
	near(t, "saw", float64(p.Time.Saw), (123+2*120)*40, 1e-12)
	near(t, "tube at 1 a kilogram", float64(p.Cost.Total), float64(p.Sawing.Bought())*1.21087, 1e-5)
}

// Strip at 1 a kilogram, its scrap at half: what stays on the last coil is not paid for.
func TestStripCostByHand(t *testing.T) {
	c, o := House(), footed()
	c.Rates = Rates{FinMetals: []Price{{"al1060", 1}}, TubeMetals: []Price{{"cs", 0}}, ScrapShare: 0.5}
	c.Crate.Cost = 0
	p := Make(&c, &c.Lines[0], &o, nil)
	perMetre := 0.0178 * 0.0004 * 2705
	want := (float64(p.Ledger.OnGood) + float64(p.Ledger.Scrap())/2) * perMetre
	near(t, "strip", float64(p.Cost.Total), want, 1e-9)
	// The one first-off tube is charged to the start, as one of the 123 made.
	near(t, "fixed", float64(p.Cost.Fixed), want/123, 1e-9)
}

func TestCostIsAbsentWithoutAPrice(t *testing.T) {
	c, o := House(), footed()
	own, faults := material.NewOwn("Alloy", 200, 2700, 23e-6)
	if faults != nil {
		t.Fatal(faults)
	}
	o.FinMetal = own
	p := Make(&c, &c.Lines[0], &o, nil)
	if p.Cost != nil || p.Absent[TheCost].None() || p.Ledger == nil || p.Speeds.Power != nil || p.Speeds.Note.None() {
		t.Errorf("own metal: cost %v, absent %v", p.Cost, p.Absent)
	}
	o = embedded()
	p = Make(&c, &c.Lines[0], &o, nil)
	if p.Programme != nil || p.Absent[TheProgramme].None() || p.Packing != nil {
		t.Error("a line plans a type that it does not make")
	}
	for _, why := range p.Absent {
		message.English().Render(why, units.SI)
	}
}

// One traverse-wound coil saves changes and hours over pancakes of the same order.
func TestTraverseSavesChanges(t *testing.T) {
	c, o := House(), footed()
	p := Make(&c, &c.Lines[0], &o, nil)
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
	c, o := House(), footed()
	price := Make(&c, &c.Lines[0], &o, nil).Cost.PerTube
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
	if string(c.Save()) != string(before) || Make(&c, &c.Lines[0], &o, nil).Cost.PerTube != price {
		t.Error("the drivers changed the capability itself")
	}
}

func TestEveryNameHasAText(t *testing.T) {
	var keys []string
	for _, r := range append(lineRules[:len(lineRules):len(lineRules)], typeRules...) {
		keys = append(keys, "shop.rule."+r.id)
	}
	for _, a := range Activities {
		keys = append(keys, "shop.activity."+string(a))
	}
	for _, k := range []ZoneKind{Trim, PlainEnd, Finned, BareSpan} {
		keys = append(keys, "shop.zone."+string(k))
	}
	for _, k := range []string{"tube", "strip", "scrap", "set_up", "finning", "saw", "packing"} {
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
	c, o := House(), footed()
	for b.Loop() {
		Make(&c, &c.Lines[0], &o, nil)
	}
}

func BenchmarkJudge(b *testing.B) {
	c, o := House(), footed()
	for b.Loop() {
		Judge(&c, &c.Lines[0], &o)
	}
}
