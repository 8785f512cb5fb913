package making

import (
	"math"
	"slices"
	"strings"
	"testing"

	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// stepped is the shop for hand calculations with a step of each sort.
func stepped() shop.Capability {
	c := plainShop()
	c.Steps = []shop.Step{
		{Name: "clean", Kind: shop.Clean, Used: true, When: shop.BeforeFinning, Of: shop.AnyTubes, Who: shop.ByCrew, PerTube: 40, PerOrder: 1200, CostTube: 0.25, CostOrder: 12},
		{Name: "eddy", Kind: shop.EddyCurrent, Used: true, When: shop.BeforeFinning, Of: shop.BoughtTubes, Who: shop.BySubLet, CostTube: 1.5, CostOrder: 160, Lead: 5, MarkUp: 0.1},
		{Name: "cap", Kind: shop.CapEnds, Used: true, When: shop.AfterFinning, Of: shop.AnyTubes, Who: shop.ByCrew, PerTube: 15, CostTube: 0.4},
		{Name: "deliver", Kind: shop.Deliver, Used: true, When: shop.AfterFinning, Of: shop.AnyTubes, Who: shop.BySubLet, CostTube: 0.2, CostOrder: 300},
		{Name: "off", Kind: shop.OtherStep, When: shop.AfterFinning, Of: shop.AnyTubes, Who: shop.ByCrew, PerTube: 1000},
		{Name: "other type", Kind: shop.OtherStep, Used: true, FinTypes: []string{"embedded"}, When: shop.AfterFinning, Of: shop.AnyTubes, Who: shop.ByCrew, PerTube: 1000},
		{Name: "other metal", Kind: shop.OtherStep, Used: true, Families: []string{"titanium"}, When: shop.AfterFinning, Of: shop.AnyTubes, Who: shop.ByCrew, PerTube: 1000},
		{Name: "free issue", Kind: shop.GaugeBore, Used: true, When: shop.BeforeFinning, Of: shop.FreeTubes, Who: shop.ByCrew, PerTube: 1000},
	}
	return c
}

// The steps of one order by hand, to the cent: 123 tubes before finning, 120 after.
func TestStepsByHand(t *testing.T) {
	bare, c, o := plainShop(), stepped(), footed()
	without := PlanOf(&bare, &bare.Lines[0], &o, nil)
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	var names []string
	for _, s := range p.Steps {
		names = append(names, s.Step.Name)
	}
	if !slices.Equal(names, []string{"clean", "eddy", "cap", "deliver"}) || p.Cost == nil {
		t.Fatalf("%v %v", names, p.Absent)
	}
	cent := func(name string, got units.Money, want float64) {
		t.Helper()
		if math.Abs(float64(got)-want) > 0.005 {
			t.Errorf("%s %.4f, by hand %.2f", name, got, want)
		}
	}
	// 123 x 40 s + 1200 s = 6120 s at 38 / 0.8 an hour: 80.75; 123 x 0.25 + 12 = 42.75.
	cent("cleaning", p.Steps[0].Cost, 123.50)
	// 123 x 1.50 + 160.
	cent("eddy current", p.Steps[1].Cost, 344.50)
	// 120 x 15 s = 1800 s: 23.75; 120 x 0.40 = 48.
	cent("caps", p.Steps[2].Cost, 71.75)
	cent("delivery", p.Steps[3].Cost, 324.00)
	cent("own steps", p.Cost.item("steps"), 195.25)
	cent("sub-let steps", p.Cost.item("sub_let"), 668.50)
	// A tenth more on 6120 + 1800 s of people: 104.50.
	cent("overhead", p.Cost.item("overhead")-without.Cost.item("overhead"), 10.45)
	cent("cost", p.Cost.Total-without.Cost.Total, 195.25+668.50+10.45)
	// 18 % on what is the shop's own, 10 % on the eddy current test, nothing on the delivery.
	cent("mark-up", p.Cost.MarkUp-without.Cost.MarkUp, 0.18*(195.25+10.45)+34.45)
	near(t, "hours", float64(p.Time.Steps), 7920, 1e-12)
	near(t, "people", float64(p.Time.Person-without.Time.Person), 7920/0.8, 1e-9)
	// Once: 20 min of cleaning at 47.50, 12, 160 and 300.
	cent("once", p.Cost.Once, 15.8333+12+160+300)
	once := float64(p.Cost.item("set_up")) + 487.8333
	cent("fixed", p.Cost.Fixed, once+(float64(p.Cost.Total)-once)/123)

	o.FreeIssue = true
	p = PlanOf(&c, &c.Lines[0], &o, nil)
	if names = nil; len(p.Steps) != 4 || p.Steps[3].Step.Name != "free issue" {
		t.Errorf("free issue: %+v", p.Steps)
	}
}

// A step that the shop does not do costs what it does not take.
func TestSwitchedOffStepsCostNothing(t *testing.T) {
	bare, c, o := plainShop(), stepped(), footed()
	for i := range c.Steps {
		c.Steps[i].Used = false
	}
	a, b := PlanOf(&bare, &bare.Lines[0], &o, nil), PlanOf(&c, &c.Lines[0], &o, nil)
	if len(b.Steps) > 0 || a.Cost.Price != b.Cost.Price || a.Time.Person != b.Time.Person {
		t.Errorf("%v costs %v, without steps %v", b.Steps, b.Cost.Price, a.Cost.Price)
	}
}

// A customer may ask for what the shop has and does not do by itself: it is planned once, in its place of the list, with its time and
// cost by hand. What the shop does anyway stays as it is, what it lacks is told.
func TestStepsAskedFor(t *testing.T) {
	c, o := stepped(), footed()
	c.Steps = append(c.Steps,
		shop.Step{Name: "test", Kind: shop.PressureTest, When: shop.AfterFinning, Of: shop.AnyTubes, Who: shop.ByCrew, PerTube: 80, PerOrder: 600, CostTube: 0.3},
		shop.Step{Name: "test of titanium", Kind: shop.PressureTest, Used: true, Families: []string{"titanium"}, When: shop.AfterFinning, Of: shop.AnyTubes, Who: shop.ByCrew})
	without := PlanOf(&c, &c.Lines[0], &o, nil)
	if got := without.Lacking(); got != nil {
		t.Errorf("lacking what nobody asks for: %v", got)
	}
	for _, k := range []shop.StepKind{shop.PressureTest, shop.EddyCurrent, shop.Certificate} {
		o.Asked.Steps.Put(k, true)
	}
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	var names, asked []string
	for _, s := range p.Steps {
		if names = append(names, s.Step.Name); s.Asked {
			asked = append(asked, s.Step.Name)
		}
	}
	if !slices.Equal(names, []string{"clean", "eddy", "cap", "deliver", "test"}) || !slices.Equal(asked, []string{"eddy", "test"}) {
		t.Fatalf("%v, asked for %v", names, asked)
	}
	if got := p.Lacking(); !slices.Equal(got, []shop.StepKind{shop.Certificate}) {
		t.Errorf("lacking: %v", got)
	}
	// 120 x 80 s + 600 s = 10,200 s at 38 / 0.8 an hour: 134.58; 120 x 0.30 = 36. A tenth of the people's money besides.
	near(t, "time", float64(p.Steps[4].Time), 10200, 1e-12)
	near(t, "cost", float64(p.Steps[4].Cost), 134.5833+36, 1e-6)
	near(t, "cost of the order", float64(p.Cost.Total-without.Cost.Total), 1.1*134.5833+36, 1e-6)
	near(t, "hours", float64(p.Time.Steps-without.Time.Steps), 10200, 1e-9)
	// Of tubes that come finned, what is done before finning cannot be asked for.
	c.BoughtIn = []shop.BoughtIn{{Type: tube.Extruded, OD: shop.Range[units.Length]{Low: 0.02, High: 0.03}, PerMetre: 30, Days: 40}}
	o.Tube.Fin.Type, o.Tube.Fin.Sleeve = tube.Extruded, 0.0005
	p = PlanOf(&c, &c.Lines[0], &o, nil)
	if got := p.Lacking(); !slices.Equal(got, []shop.StepKind{shop.EddyCurrent, shop.Certificate}) {
		t.Errorf("bought in, lacking: %v", got)
	}
}

// What must be heeded stands with its step, by the metal of the tube and the fin type.
func TestCautionsOfSteps(t *testing.T) {
	for _, x := range []struct {
		kind  shop.StepKind
		when  shop.StepTime
		metal string
		order func() Order
		want  []string
	}{
		{shop.Clean, shop.BeforeFinning, "ti2", footed, []string{"solvent_titanium"}},
		{shop.Clean, shop.BeforeFinning, "tp316", footed, []string{"solvent_stainless"}},
		{shop.OilOut, shop.BeforeFinning, "2205", footed, []string{"solvent_stainless"}},
		{shop.Clean, shop.BeforeFinning, "cs", footed, nil},
		{shop.Clean, shop.AfterFinning, "cs", embedded, []string{"jet"}},
		{shop.PressureTest, shop.AfterFinning, "cs", footed, []string{"drain", "pneumatic"}},
		{shop.PressureTest, shop.AfterFinning, "tp304", footed, []string{"chloride_water", "drain", "pneumatic"}},
		{shop.PressureTest, shop.BeforeFinning, "2205", footed, []string{"chloride_water", "drain", "pneumatic"}},
		{shop.Identify, shop.BeforeFinning, "cs", footed, []string{"bundle"}},
		{shop.MarkTubes, shop.AfterFinning, "tp304", footed, nil},
	} {
		o := x.order()
		o.TubeMetal, _ = material.TubeMetal(x.metal)
		got := stepCautions(&shop.Step{Kind: x.kind, When: x.when}, &o)
		if !slices.Equal(got, x.want) {
			t.Errorf("%s %s of %s: %v, want %v", x.kind, x.when, x.metal, got, x.want)
		}
		for _, id := range got {
			if !message.English().Has("caution." + id) {
				t.Errorf("no text of %s", id)
			}
		}
	}
	for _, k := range shop.StepKinds {
		if !message.English().Has("shop.choice." + string(k)) {
			t.Errorf("no text of %s", k)
		}
	}
}

// What stands with a step is not said again of the whole order.
func TestCautionOfAStepIsSaidOnce(t *testing.T) {
	c, o := stepped(), embedded()
	ids := func() (out []string) {
		p := PlanOf(&c, &c.Lines[0], &o, nil)
		for _, k := range p.Cautions() {
			out = append(out, k.ID)
		}
		return out
	}
	c.Lines[0].Types[0].Type = tube.Embedded
	if got := ids(); !slices.Contains(got, "pneumatic") || !slices.Contains(got, "bundle") || !slices.Contains(got, "grooved_scrap") || !slices.Contains(got, "heat_treatment") {
		t.Errorf("%v", got)
	}
	c.Steps[0].Kind, c.Steps[2].Kind = shop.Identify, shop.PressureTest
	if got := ids(); slices.Contains(got, "pneumatic") || slices.Contains(got, "bundle") {
		t.Errorf("said twice: %v", got)
	}
}

// What first-off checks are to find, by hand: 10 fins to the inch are 39.37 over 100 mm, 39 as they are counted; fins of 15.875 mm on 25.4 mm are 57.15 mm;
// 2.16 N for each of 25.4 mm are 54.9 N.
func TestFirstOffChecks(t *testing.T) {
	c, o := plainShop(), embedded()
	c.Lines[0].Types[0].Type = tube.Embedded
	c.Lines[0].Types[0].Growth, c.Lines[0].Types[0].Scatter = 0.001, 0.0005
	c.Checks = []shop.Check{
		{Kind: shop.CountShort, Fins: 1},
		{Kind: shop.CountLong, Fins: 4},
		{Kind: shop.FinODCheck, Off: 0.001},
		{Kind: shop.PlainEnds, Off: 0.003},
		{Kind: shop.TurnByHand, FinTypes: []string{"footed"}},
		{Kind: shop.PullTest, FinTypes: []string{"embedded"}},
		{Kind: shop.EndSecurity},
		{Kind: shop.GrowthCheck},
	}
	said := func(o Order) map[shop.CheckKind]string {
		out := map[shop.CheckKind]string{}
		p := PlanOf(&c, &c.Lines[0], &o, nil)
		for _, k := range p.Checks(&c) {
			out[k.Check.Kind] = message.English().Render(k.Find, units.SI)
		}
		return out
	}
	got := said(o)
	for kind, want := range map[shop.CheckKind]string{
		shop.CountShort: "39 fins, 1 more or fewer, over 100 mm", shop.CountLong: "394 fins, 4 more or fewer, over 1000 mm", shop.FinODCheck: "57.15 mm or up to 1 mm less, never more",
		shop.PlainEnds: "38 mm and 38 mm", shop.PullTest: "54.9 N", shop.EndSecurity: "2 ends, each", shop.GrowthCheck: "6.027 mm longer",
	} {
		if !strings.Contains(got[kind], want) {
			t.Errorf("%s: %q does not say %q", kind, got[kind], want)
		}
	}
	if _, ok := got[shop.TurnByHand]; ok {
		t.Error("an embedded fin is turned by hand")
	}
	o.TubeMetal, _ = material.TubeMetal("tp304")
	if text := said(o)[shop.PullTest]; !strings.Contains(text, "ask the customer") {
		t.Errorf("stainless: %q", text)
	}
	for _, k := range shop.CheckKinds {
		if !message.English().Has("check." + string(k)) {
			t.Errorf("no text of %s", k)
		}
	}
	o.Tube.PlainA = 7 // no programme
	if p := PlanOf(&c, &c.Lines[0], &o, nil); p.Checks(&c) != nil {
		t.Error("a tube that cannot be laid out is checked")
	}
}

// By hand: 90 % of strip of 1.2 mm are 1.08 mm.
func TestWeldIsCutThrough(t *testing.T) {
	c, o := shop.House(), welded()
	p := PlanOf(&c, &c.Lines[2], &o, nil)
	for _, k := range p.Checks(&c) {
		if k.Check.Kind == shop.WeldSection {
			if text := message.English().Render(k.Find, units.SI); !strings.Contains(text, "1.08 mm wide") || !strings.Contains(text, "170 MPa") {
				t.Errorf("a weld: %q", text)
			}
			return
		}
	}
	t.Error("a weld is not cut through")
}
