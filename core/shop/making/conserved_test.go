package making_test

import (
	"math"
	"math/rand/v2"
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

// Over 10,000 random valid orders: tube cut + growth = finished zones + end trims,
// kerf charged to stock; strip bought = on good tubes + scrap (rejected tubes
// included) + remainder, to the millimetre; hours and money add up; nothing is NaN.
func TestOrdersAreConserved(t *testing.T) {
	c := shop.House()
	const millimetre = 0.001
	proof.Proof{Share: 400, Full: 10000, Seed: 19}.Run(t, func(t *proof.Case) {
		r := t.Rand
		o, l := possible(r, &c)
		var now *making.Setup
		if t.Index%3 == 0 {
			s := making.SetupOf(&o)
			now = &s
		}
		p := making.PlanOf(&c, l, &o, now)
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
		proof.Finite(t, "plan", p)
	})
}

// growthByZones adds up what the finished zones are longer than their bare tube.
func growthByZones(p *making.Programme) units.Length {
	var sum units.Length
	for _, z := range p.Zones {
		sum += z.Finished.Length() - z.Cut.Length()
	}
	return sum
}
