package making_test

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"finwright/core/internal/sample"
	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/shop/verdict"
	"finwright/core/tube"
	"finwright/core/units"
)

// possible returns an order that a line of the house can make.
func possible(r *rand.Rand, c *shop.Capability) (making.Order, *shop.Line) {
	between := func(a, b float64) float64 { return a + (b-a)*r.Float64() }
	for {
		ofTube, ofFin := sample.Metals()
		o := making.Order{Tube: sample.Footed(), TubeMetal: ofTube, FinMetal: ofFin}
		l := &c.Lines[r.IntN(len(c.Lines))]
		m := &l.Types[r.IntN(len(l.Types))]
		o = verdict.With(o, verdict.Setting{Field: "fin_metal", Choice: m.FinMetals[r.IntN(len(m.FinMetals))]},
			verdict.Setting{Field: "tube_metal", Choice: m.TubeMetals[r.IntN(len(m.TubeMetals))]})
		t := &o.Tube
		t.Fin.Type = m.Type
		t.OD = l.Sizes[r.IntN(len(l.Sizes))]
		t.Wall = units.Length(between(float64(m.LeastWall), 0.0035))
		height := m.HeightOn(t.OD)
		t.Fin.Height = units.Length(between(float64(height.Low), float64(height.High)))
		count := m.CountOn(t.OD)
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
		if worst := verdict.Judge(c, l, &o); refused(worst) == "" {
			return o, l
		}
	}
}

func refused(list []verdict.Verdict) string {
	for _, v := range list {
		if v.State == "no" {
			return v.Rule.ID
		}
	}
	return ""
}

// Over 10,000 random valid orders: tube cut + growth = finished zones + end trims; tube
// bought either way = in what ships + cut off + offcuts + spoilt; strip bought and drawn from stock = on good tubes
// + scrap (rejected tubes and what is cut back included) + what goes back, to the millimetre; hours and money add up; nothing is NaN.
func TestOrdersAreConserved(t *testing.T) {
	cut := shop.House()
	stock := cut
	stock.Buying.Tubes, stock.Buying.StripLeft = shop.StockLengths, shop.StripIsStored
	stock.Buying.Offcuts, stock.Rates.Overhead, stock.Rates.Freight, stock.Rates.Least, stock.Buying.Spoilt = 0.3, 0.1, 0.05, 4000, shop.ShopBears
	stock.Rates.FinMetals = slices.Clone(stock.Rates.FinMetals)
	for i := range stock.Rates.FinMetals {
		stock.Rates.FinMetals[i].Surcharge = 0.4
	}
	stock.Steps = slices.Clone(stock.Steps)
	for i := range stock.Steps {
		s := &stock.Steps[i]
		s.FinTypes, s.Families, s.Of = nil, nil, shop.AnyTubes
		if i%3 == 0 {
			s.Who, s.CostTube, s.CostOrder, s.MarkUp = shop.BySubLet, 1.5, 90, 0.1
		}
	}
	const millimetre = 0.001
	proof.Proof{Share: 400, Full: 10000, Seed: 19}.Run(t, func(t *proof.Case) {
		r := t.Rand
		c := cut
		if t.Index%2 == 0 {
			c = stock
		}
		o, l := possible(r, &c)
		if t.Index%5 < 2 { // tubes of its size are on hand, some long enough
			c.Buying.OnHand = []shop.TubesOnHand{
				{Metal: o.TubeMetal.ID, OD: o.Tube.OD, Wall: o.Tube.Wall, Length: o.Tube.Length * units.Length(0.8+r.Float64()), Pieces: 1 + r.IntN(40), Worth: 12},
				{Metal: o.TubeMetal.ID, OD: o.Tube.OD, Wall: o.Tube.Wall, Length: o.Tube.Length * units.Length(1+2*r.Float64()), Pieces: 1 + r.IntN(60), Worth: 20},
			}
		}
		if t.Index%4 == 0 { // so are coils of its strip
			alone := making.PlanOf(&c, l, &o, nil)
			s := alone.Strip()
			for range r.IntN(4) {
				c.Buying.StripOnHand = append(c.Buying.StripOnHand, shop.StripOnHand{Metal: o.FinMetal.ID, Width: s.Slit, Thickness: s.Thickness, Mass: s.Mass(s.PerTube() * units.Length(8*r.Float64())), Worth: 2.5})
			}
		}
		for _, k := range shop.StepKinds {
			o.Asked.Steps.Put(k, t.Index%6 == 0 && r.IntN(2) == 0)
		}
		var now *making.Setup
		if t.Index%3 == 0 {
			s := making.SetupOf(&o)
			now = &s
		}
		p := making.PlanOf(&c, l, &o, now)
		if p.Supply != nil && p.Supply.Tubes == 0 { // all are on hand
			delete(p.Absent, making.TheBundle)
		}
		if len(p.Absent) > 0 && !(o.FreeIssue && len(p.Absent) == 1) {
			t.Fatalf("%+v: absent %v", o.Tube, p.Absent)
		}
		var zones, trims units.Length
		for _, z := range p.Programme.Zones {
			if z.Kind == making.Trim {
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
		if bare := float64(zones - grown); !o.FreeIssue {
			conserved(t, p.Supply, bare, &p)
			if p.Other != nil {
				conserved(t, p.Other, bare, &p)
			}
		}
		w, d := p.Winding, p.Ledger
		strip := float64(p.Strip().Kept)*float64(o.Quantity) + float64(d.Scrap()+d.Remainder+d.Returned)
		if math.Abs(strip-float64(d.Bought+d.Drawn)) > millimetre || d.Bought != w.Coil.Length*units.Length(d.ToBuy()) {
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
		var steps, subLet, markUps units.Money
		var work units.Duration
		for _, s := range p.Steps {
			if s.SubLet() {
				subLet, markUps = subLet+s.Cost, markUps+s.MarkUp
			} else {
				steps, work = steps+s.Cost, work+s.Time
			}
			if s.Tubes != o.Quantity && s.Tubes != w.Made() || s.Once > s.Cost {
				t.Fatalf("step %+v", s)
			}
		}
		sums, rest := p.StepSums(), float64(p.Time.Clock)*float64(c.Crew.People)+float64(p.Time.Saw+p.Time.Pack+work)/c.Crew.Efficiency
		if got := sums.Own + sums.SubLet - steps - subLet; math.Abs(float64(got)) > 1e-9 || math.Abs(float64(p.Time.Person)-rest) > 1e-6 || p.Cost.SubLet != subLet {
			t.Fatalf("steps cost %v and %v, take %v: %+v", steps, subLet, work, sums)
		}
		if want := (p.Cost.Total-subLet)*units.Money(c.Rates.MarkUp) + markUps; math.Abs(float64(want-p.Cost.MarkUp)) > 1e-6 {
			t.Fatalf("mark-up %v, want %v", p.Cost.MarkUp, want)
		}
		surcharge := float64(p.Strip().Mass(d.Bought-d.Remainder)) * float64(surchargeOf(c.Rates.FinMetals, o.FinMetal.ID))
		if p.Supply != nil {
			surcharge += float64(p.Supply.Bought()) * float64(o.Tube.TubeMass()) * float64(p.Supply.Price.Surcharge)
		}
		if got := itemOf(p.Cost, "surcharge"); math.Abs(float64(got)-surcharge) > 1e-6 || itemOf(p.Cost, "tooling") != p.ToBuy.Cost() || p.Cost.Once < p.ToBuy.Cost() {
			t.Fatalf("surcharge %v, want %v; tooling %v of %+v", got, surcharge, itemOf(p.Cost, "tooling"), p.ToBuy)
		}
		var hand units.Money
		for i := range d.Hand {
			hand += units.Money(w.Hand[i].From.Mass) * 2.5
		}
		if hand -= units.Money(w.Strip.Mass(d.Returned)) * 2.5; math.Abs(float64(itemOf(p.Cost, "strip_on_hand")-hand)) > 1e-6 {
			t.Fatalf("strip on hand %v, want %v", itemOf(p.Cost, "strip_on_hand"), hand)
		}
		var money units.Money
		for _, item := range p.Cost.Items {
			money += item.Amount
		}
		if math.Abs(float64(money+p.Cost.MarkUp+p.Cost.Raised-p.Cost.Price)) > 1e-6 || math.Abs(float64(p.Cost.PerTube)*float64(o.Quantity)-float64(p.Cost.Price)) > 1e-6 {
			t.Fatalf("cost %+v", p.Cost)
		}
		proof.Finite(t, "plan", p)
	})
}

func surchargeOf(list []shop.StripPrice, metal string) units.MoneyPerMass {
	for _, p := range list {
		if p.Metal == metal {
			return p.Surcharge
		}
	}
	return 0
}

func itemOf(k *making.Cost, id string) (amount units.Money) {
	for _, item := range k.Items {
		if item.ID == id {
			amount += item.Amount
		}
	}
	return amount
}

// conserved fails unless the tube that is bought one way is, to the millimetre, the bare tube in what ships, what is cut off it,
// offcuts and spoilt tubes.
func conserved(t *proof.Case, s *making.Supply, bare float64, p *making.Plan) {
	const millimetre = 0.001
	used, spoilt := bare*float64(p.Winding.Good), float64(p.Programme.CutLength)*float64(p.Winding.FirstOff+p.Winding.Rejected)
	if math.Abs(used-float64(s.Used)) > millimetre || math.Abs(spoilt-float64(s.Spoilt)) > millimetre {
		t.Fatalf("%s: used %v, spoilt %v; want %v, %v", s.Way, s.Used, s.Spoilt, used, spoilt)
	}
	d := p.DrawnSums()
	if math.Abs(float64(s.Bought()+d.Length-d.Left-s.Used-s.Trim-s.Offcut-s.Spoilt)) > millimetre || s.Trim < 0 || s.Offcut < 0 {
		t.Fatalf("%s: bought %v: %+v", s.Way, s.Bought(), s)
	}
}

// growthByZones adds up what the finished zones are longer than their bare tube.
func growthByZones(p *making.Programme) units.Length {
	var sum units.Length
	for _, z := range p.Zones {
		sum += z.Finished.Length() - z.Cut.Length()
	}
	return sum
}
