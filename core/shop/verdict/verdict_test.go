package verdict

import (
	"maps"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"sync"
	"testing"

	"finwright/core/figure"
	"finwright/core/internal/sample"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/tube"
	"finwright/core/units"
)

func verdict(t testing.TB, list []Verdict, rule string) Verdict {
	t.Helper()
	i := slices.IndexFunc(list, func(v Verdict) bool { return v.Rule.ID == rule })
	if i < 0 {
		t.Fatalf("no verdict of rule %s", rule)
	}
	return list[i]
}

func TestUsualTubePasses(t *testing.T) {
	c, o := shop.House(), footed()
	on, verdicts := Choose(&c, &o)
	line := on.Line
	if judged := Judge(&c, line, &o); !reflect.DeepEqual(verdicts, judged) {
		t.Errorf("chosen by %+v, judged %+v", verdicts, judged)
	}
	for _, v := range verdicts {
		if v.State != figure.Good && v.State != figure.Plain {
			t.Errorf("%s: %s, %s", v.Rule.ID, v.State, message.English().Render(v.Why, units.SI))
		}
	}
}

// given is an order and the shop that is asked for it, on the line that makes its type unless a case says another.
type given struct {
	making.Order
	shop shop.Capability
	line *shop.Line
}

// ruleCase is an order that a rule has something to say of.
type ruleCase struct {
	name   string
	start  func() making.Order
	change func(*given)
	rule   string
	state  figure.State
	margin float64
	to     []Setting
}

// given sets up the case in the shop that ships.
func (k *ruleCase) given() *given {
	g := &given{Order: k.start(), shop: shop.House()}
	g.shop.BoughtIn = nil
	g.line = &g.shop.Lines[0]
	if g.Tube.Fin.Type == tube.Embedded {
		g.line = &g.shop.Lines[1]
	}
	k.change(g)
	return g
}

// widened are the settings that make so many bare spans as wide.
func widened(spans int, width float64) (list []Setting) {
	for i := range spans {
		list = append(list, Setting{"span_width", i, units.Distance, width, ""})
	}
	return list
}

func told(si float64) rating.Optional { return rating.Optional{SI: si, Stated: true} }

func celsius(t units.Temperature) *units.Temperature { return &t }

// ruleCases holds one case of each rule at least.
var ruleCases = []ruleCase{
	{"thick tube", footed, func(o *given) { o.Tube.OD = 0.06 }, "tube_od", figure.No, 1 - 60/50.8, []Setting{{"tube_od", 0, units.Diameter, 0.0508, ""}}},
	{"odd size", footed, func(o *given) { o.Tube.OD = 0.026 }, "tube_size", figure.Watch, 0, []Setting{{"tube_od", 0, units.Diameter, 0.0254, ""}}},
	{"long tube", footed, func(o *given) { o.Tube.Length = 18 }, "tube_length", figure.No, 1 - 18.0/15, []Setting{{"tube_length", 0, units.Distance, 15, ""}}},
	// On a 1 in tube this line winds up to 5/8 in; on 19.05 mm up to 1/2 in.
	{"high fin", footed, func(o *given) { o.Tube.Fin.Height = 0.0175 }, "fin_height", figure.No, 1 - 17.5/15.875, []Setting{{"fin_height", 0, units.Height, 0.015875, ""}}},
	{"high fin on a thin tube", footed, func(o *given) { o.Tube.OD = 0.01905 }, "fin_height", figure.No, 1 - 15.875/12.7, []Setting{{"fin_height", 0, units.Height, 0.0127, ""}}},
	{"close fins", footed, func(o *given) { o.Tube.Fin.Count = 13 * fpi }, "fin_count", figure.No, 1 - 13.0/11, []Setting{{"fin_pitch", 0, units.FinCount, 11 / 0.0254, ""}}},
	{"thin strip", footed, func(o *given) { o.Tube.Fin.Strip = 0.0002 }, "strip", figure.No, -1.0 / 3, []Setting{{"strip_thickness", 0, units.Thickness, 0.0003, ""}}},
	{"steel foot", footed, func(o *given) { o.Order = With(o.Order, Setting{Field: "fin_metal", Choice: "cs1010"}) }, "fin_metal", figure.No, 0, []Setting{{Field: "fin_metal", Choice: "al3003"}}},
	{"copper tube in a groove", embedded, func(o *given) { o.Order = With(o.Order, Setting{Field: "tube_metal", Choice: "c12200"}) }, "tube_metal", figure.No, 0, []Setting{{Field: "tube_metal", Choice: "cs"}}},
	{"thin wall under rolls", embedded, func(o *given) { o.Tube.Wall = 0.0016 }, "wall", figure.No, 1.6/2.1 - 1, []Setting{{"tube_wall", 0, units.Wall, 0.083 * 0.0254, ""}}},
	// 12 BWG is practice so that 0.083 in is left below the groove (from memory): by 0.9 x 2.769 - 0.30 = 2.192 mm it is.
	{"12 BWG under a groove", embedded, func(o *given) { o.LeastWall = 0.083 * units.Inch }, "wall_left", figure.Good, 2.1921/2.1082 - 1, nil},
	{"14 BWG under a groove", embedded, func(o *given) { o.LeastWall, o.Tube.Wall = 0.083*units.Inch, 0.083*units.Inch }, "wall_left", figure.No, (0.9*2.1082-0.3)/2.1082 - 1, []Setting{{"tube_wall", 0, units.Wall, 0.109 * 0.0254, ""}}},
	{"no least wall under a groove", embedded, func(*given) {}, "wall_left", figure.Watch, 0, nil},
	{"no least wall", footed, func(*given) {}, "wall_left", figure.Plain, 0, nil},
	// The tool runs out over 20 of the 38 mm of end B, and 26 mm are rolled; as shipped it runs out over 9 mm.
	{"long run-out", embedded, func(o *given) { o.line.Groover.RunOut = 0.020 }, "groove_end", figure.No, 18.0/26 - 1, []Setting{{"plain_end_b", 0, units.Distance, 0.046, ""}}},
	{"short run-out", embedded, func(*given) {}, "groove_end", figure.Good, 29.0/26 - 1, nil},
	{"groove through the ends", embedded, func(o *given) { o.line.Groover.Lifts = false }, "groove_end", figure.No, 0, nil},
	{"run-out untold", embedded, func(o *given) { o.shop.Placing.RolledEnd = 0 }, "groove_end", figure.Plain, 0, nil},
	{"no groove", footed, func(o *given) { o.line.Groover.Lifts = false }, "groove_end", figure.Plain, 0, nil},
	// Of 60 mm the tool runs out over 25, and a support needs 40; as shipped it runs out over 9 mm.
	{"run-out in the spans", supported, func(o *given) { o.line.Groover.RunOut = 0.025 }, "groove_span", figure.Watch, 35.0/40 - 1, widened(6, 0.065)},
	{"clean spans", supported, func(*given) {}, "groove_span", figure.Good, 51.0/40 - 1, nil},
	{"groove through the spans", supported, func(o *given) { o.line.Groover.Lifts = false }, "groove_span", figure.Watch, 0, nil},
	{"ends that are only cleaned", embedded, func(o *given) { o.Asked.Rolled, o.line.Groover.Lifts = told(0), false }, "groove_end", figure.Good, 0, nil},
	{"long rolling", embedded, func(o *given) { o.Asked.Rolled = told(0.035) }, "groove_end", figure.No, 29.0/35 - 1, []Setting{{"plain_end_b", 0, units.Distance, 0.044, ""}}},
	// Six supports 1.74 m apart, and 1.752 m to the last end.
	{"supports far apart", supported, func(o *given) { o.Asked.Supports = told(1.75) }, "support_spacing", figure.No, 1 - 1.752/1.75, []Setting{{"span_centre", 5, units.Distance, 10.442, ""}}},
	{"supports near enough", supported, func(o *given) { o.Asked.Supports = told(1.76) }, "support_spacing", figure.Good, 1 - 1.752/1.76, nil},
	{"too few supports", supported, func(o *given) { o.Asked.Supports = told(1.7) }, "support_spacing", figure.No, 1 - 1.752/1.7, nil},
	{"farther than the house has them", supported, func(o *given) { o.shop.Placing.Supports = 1.7 }, "support_spacing", figure.Watch, 1 - 1.752/1.7, nil},
	{"supports that nobody asks for", supported, func(o *given) { o.shop.Placing.Supports = 0 }, "support_spacing", figure.Plain, 0, nil},
	{"supports without bare spans", footed, func(o *given) { o.Asked.Supports = told(1.8) }, "support_spacing", figure.Watch, 0, nil},
	{"a tube that needs no support", footed, func(o *given) { o.Asked.Supports = told(6.5) }, "support_spacing", figure.Good, 1 - 6.096/6.5, nil},
	// An even bow of 1 mm in 1 m is 4 mm in 2 m, of which line 1 takes 2.5 mm.
	{"bowed tubes", footed, func(o *given) { o.Asked.Bow, o.Asked.BowOver = told(0.001), told(1) }, "straightness", figure.No, 1 - 4/2.5, []Setting{{"tube_bow", 0, units.Gap, 0.62e-3, ""}}},
	{"straight tubes", footed, func(o *given) { o.Asked.Bow = told(0.002) }, "straightness", figure.Good, 1 - 2/2.5, nil},
	{"tubes to order straight", footed, func(*given) {}, "straightness", figure.Plain, 0, nil},
	{"the customer's tubes, straight or not", footed, func(o *given) { o.FreeIssue = true }, "straightness", figure.Watch, 0, nil},
	{"thick and thin tubes", footed, func(o *given) { o.Asked.ODOut = told(0.25e-3) }, "od_tolerance", figure.No, 1 - 0.25/0.2, []Setting{{"od_tolerance", 0, units.Gap, 0.2e-3, ""}}},
	{"round tubes", footed, func(o *given) { o.Asked.ODOut = told(0.1e-3) }, "od_tolerance", figure.Good, 0.5, nil},
	{"hard tube", embedded, func(o *given) { o.Asked.Hardness = told(230) }, "tube_hardness", figure.No, 1 - 230.0/210, []Setting{{"tube_hardness", 0, units.Hardness, 210, ""}}},
	{"soft tube", embedded, func(o *given) { o.Asked.Hardness = told(140) }, "tube_hardness", figure.Good, 1 - 140.0/210, nil},
	{"the customer's tubes, hard or not", embedded, func(o *given) { o.FreeIssue = true }, "tube_hardness", figure.Watch, 0, nil},
	{"hard tube under a foot", footed, func(o *given) { o.Asked.Hardness = told(900) }, "tube_hardness", figure.Plain, 0, nil},
	{"bead under the tool", embedded, func(o *given) { o.Asked.BeadOut = told(0.1e-3) }, "bead_outside", figure.No, -1, []Setting{{"bead_outside", 0, units.Gap, 0.05e-3, ""}}},
	{"seamless tube", embedded, func(o *given) { o.Asked.BeadOut = told(0) }, "bead_outside", figure.Good, 1, nil},
	{"bead in the bore", embedded, func(o *given) { o.Asked.BeadIn = told(0.3e-3) }, "bead_inside", figure.No, 1 - 0.3/0.25, []Setting{{"bead_inside", 0, units.Gap, 0.25e-3, ""}}},
	{"low bead in the bore", embedded, func(o *given) { o.Asked.BeadIn = told(0.2e-3) }, "bead_inside", figure.Good, 0.2, nil},
	{"ends held as the line cannot", embedded, func(o *given) { o.Asked.Security = string(shop.Staple) }, "end_security", figure.No, 0, []Setting{{Field: "end_security", Choice: string(shop.Peening)}}},
	{"ends held as the line can", embedded, func(o *given) { o.Asked.Security = string(shop.Band) }, "end_security", figure.Good, 0, nil},
	{"ends held as the shop does", embedded, func(*given) {}, "end_security", figure.Plain, 0, nil},
	{"a line that does not say", embedded, func(o *given) { o.Asked.Security, o.line.Securing = string(shop.Band), nil }, "end_security", figure.Plain, 0, nil},
	// Half of 6.02 m finned is nearer than 3.2 m; 6.4 m finned are enough.
	{"no joint has room", footed, func(o *given) { o.line.Types[0].Joints.Clear = 3.2 }, "joints_place", figure.Good, 0, nil},
	{"joints too near", footed, func(o *given) { // a coil of 155 m is less than a tube
		o.line.Types[0].Joints.Clear = 3.2
		for i := range o.line.Coils {
			o.line.Coils[i].Mass = 3
		}
	}, "joints_place", figure.No, 3.01/3.2 - 1, []Setting{{"tube_length", 0, units.Distance, 6.476, ""}}},
	{"joints far off", footed, func(o *given) { o.line.Types[0].Joints.Clear = 0.0001 }, "joints_place", figure.Good, 0, nil},
	{"joints cut back", footed, func(o *given) { o.line.Types[0].Joints.Clear = 1.5 }, "joints_place", figure.Good, 3.01/1.5 - 1, nil},
	{"joints anywhere", footed, func(o *given) { o.line.Types[0].Joints.Clear = 0 }, "joints_place", figure.Plain, 0, nil},
	{"one tube", footed, func(o *given) { o.Quantity = 1 }, "joints_place", figure.Plain, 0, nil},
	// Two coils of 98.5 m are hardly more than the tube takes, and meet where the support is.
	{"joint at the support", footed, func(o *given) {
		o.Tube.Spans, o.line.Types[0].Joints.Long = []tube.Span{{Centre: 3.05, Width: 0.06}}, 1
		for i := range o.line.Coils {
			o.line.Coils[i].Mass = 1.897
		}
	}, "joints_place", figure.Watch, 0, nil},
	{"no rolls", footed, func(o *given) { o.Tube.Fin.Height = 0.0135 }, "tool", figure.Watch, 0, []Setting{{"fin_height", 0, units.Height, 0.014, ""}}},
	{"stretched", footed, func(o *given) { o.Tube.OD = 0.0254 - 0.0004 }, "stretch", figure.Watch, 1 - (25+31.75)/25/2.25, []Setting{{"fin_height", 0, units.Height, 0.014, ""}}},
	{"thin tip, strip can be thicker", footed, func(o *given) { o.Tube.Fin.Strip = 0.0003 }, "tip", figure.Watch, 0.3/2.25/0.15 - 1, []Setting{{"strip_thickness", 0, units.Thickness, 0.0004, ""}}},
	// 23.6 against 12.1e-6/K and a strain of 0.001 over 20 to 200 degrees C: the hand calculation gives about 20 + 0.001/11.5e-6 = 107.
	{"loosens", footed, func(o *given) { o.Hottest = celsius(200) }, "expansion", figure.Watch, math.NaN(), []Setting{{Field: "fin_metal", Choice: "c12200"}}},
	{"keyed", embedded, func(o *given) { o.Hottest = celsius(200) }, "expansion", figure.Plain, 0, nil},
	// Line 1 makes no extruded fins, and the first of its types takes the rest of the order.
	{"type of another line", footed, func(o *given) { o.Tube.Fin.Type, o.Tube.Fin.Sleeve = tube.Extruded, 0.0005 }, "fin_type", figure.No, 0, []Setting{{Field: "fin_type", Choice: string(tube.Footed)}}},
	// 2.54 of foot and 25 of fin, less 3 x 0.4 and with pi/2 x 0.4 for the bend, are 26.97 mm; 24.03 mm of fin would do, and the next rolls are for 5/8 in.
	{"wide strip", footed, func(o *given) { o.Tube.Fin.Height = 0.025 }, "strip_width", figure.No, 1 - 26.9683/26, []Setting{{"fin_height", 0, units.Height, 0.015875, ""}}},
	{"long for the crate", footed, func(o *given) { o.Tube.Length = 15.5 }, "crate", figure.Watch, 0, nil},
	{"spans that meet", supported, func(o *given) { o.Tube.Spans[1].Centre = o.Tube.Spans[0].Centre }, "span_place", figure.No, -0.06/0.1 - 1, []Setting{{"span_centre", 1, units.Distance, 1.9, ""}}},
	// 1200 rpm stopped in 5 s wind 50 turns, 127 mm; 15 mm are trimmed off the end.
	{"narrow span", footed, func(o *given) { o.line.RunDown, o.Tube.Spans = 5, []tube.Span{{Centre: 2, Width: 0.126}} }, "span_width", figure.No, 126.0/127 - 1, []Setting{{"span_width", 0, units.Distance, 0.127, ""}}},
	{"short end", footed, func(o *given) { o.line.RunDown = 5 }, "plain_end_b", figure.No, 53.0/127 - 1, []Setting{{"plain_end_b", 0, units.Distance, 0.112, ""}}},
	// What a groove displaces could lengthen the tube by 0.25 x 0.4 mm x 393.7/m x 25.15 / (22.631 x 2.769) = 1.58 %.
	{"much growth", embedded, func(o *given) { o.line.Types[0].Growth = 0.02 }, "growth", figure.Watch, 1 - 0.02/0.015801, nil},
	// Student's 2.201 for a dozen tubes, their deviation of 0.7816 x 5 mm over 11.988 m and sqrt(13/12), a thousandth more by the growth, against 5 mm in 12.154 m.
	{"scattered growth", supported, func(o *given) { o.shop.Measured = sample.Measured(0.005) }, "position", figure.Watch, 1 - 7.475e-4/4.1139e-4, nil},
	{"short stock", footed, func(o *given) { o.shop.Buying.Tubes, o.shop.Cutting.Stock = shop.StockLengths, []units.Length{6} }, "stock", figure.No, 1 - 6.121/6, []Setting{{"tube_length", 0, units.Distance, 6.096 - 0.121 - 0.001, ""}}},
	// 2.4 kg of 17.8 x 0.4 mm are 124.61 m: one coil and two joined on give 366.14 m, and 4694 turns of 80.6 mm with five to run down take 378.75 m.
	{"short coils", footed, func(o *given) {
		o.Tube.Length = 12
		for i := range o.line.Coils {
			o.line.Coils[i].Mass = 2.4
		}
	}, "coil", figure.No, 1 - 378.754/366.140, []Setting{{"tube_length", 0, units.Distance, 11.60249, ""}}},
	// One first-off and 1 % of 120, rounded up.
	{"too few spares", footed, func(o *given) { o.FreeIssue, o.Spares = true, 1 }, "spares", figure.Watch, 1.0/3 - 1, []Setting{{"spares", 0, units.Count, 3, ""}}},
}

func TestRules(t *testing.T) {
	for _, k := range ruleCases {
		g := k.given()
		v := verdict(t, Judge(&g.shop, g.line, &g.Order), k.rule)
		if v.State != k.state || len(v.Change) != len(k.to) {
			t.Errorf("%s: %s %v, want %s %v", k.name, v.State, v.Change, k.state, k.to)
			continue
		}
		if v.Measure != nil && k.margin != 0 && math.Abs(v.Measure.Margin-k.margin) > 1e-4 {
			t.Errorf("%s: margin %.5f, want %.5f", k.name, v.Measure.Margin, k.margin)
		}
		for i := range k.to {
			a, b := v.Change[i], k.to[i]
			if a.Field != b.Field || a.Choice != b.Choice || math.Abs(a.SI-b.SI) > 1e-9*math.Abs(b.SI)+1e-12 {
				t.Errorf("%s: change %+v, want %+v", k.name, a, b)
			}
		}
	}
}

// Each rule has a case in which it refuses or watches, and proposes a change if it ever does.
func TestEveryRuleHasACase(t *testing.T) {
	for _, r := range slices.Concat(LineRules, TypeRules) {
		if !slices.ContainsFunc(ruleCases, func(k ruleCase) bool {
			return k.rule == r.ID && (k.state == figure.No || k.state == figure.Watch) && (len(k.to) > 0) == (len(r.Changes) > 0)
		}) {
			t.Errorf("rule %s has no case of what it objects to and what it proposes", r.ID)
		}
	}
}

// From 8 to the inch, rolls for 5 to 7 are nearer than rolls for 10 to 11.
func TestNearestRolls(t *testing.T) {
	c, o := shop.House(), footed()
	o.Tube.Fin.Count = 8 * fpi
	tools := []shop.Tool{
		{Height: 0.015875, Strip: 0.0004, Count: shop.Range[units.PerLength]{Low: 10 * fpi, High: 11 * fpi}},
		{Height: 0.015875, Strip: 0.0004, Count: shop.Range[units.PerLength]{Low: 5 * fpi, High: 7 * fpi}},
	}
	c.Lines[0].Types[0].Tools = tools
	v := verdict(t, Judge(&c, &c.Lines[0], &o), "tool")
	if v.State != figure.Watch || len(v.Change) != 1 || v.Change[0].SI != float64(7*fpi) {
		t.Errorf("%+v", v)
	}
}

// By hand, 23.6 against 12.1e-6/K: a strain of 0.001 is used up at 20 + 87 = 107 degrees C; at 60, 54 % of the way is left.
func TestLooseningMargin(t *testing.T) {
	c, o := shop.House(), footed()
	warm := units.Temperature(60)
	o.Hottest = &warm
	v := verdict(t, Judge(&c, &c.Lines[0], &o), "expansion")
	if v.State != figure.Good || math.Abs(v.Measure.Limit-107) > 0.5 || math.Abs(v.Measure.Margin-0.54) > 0.005 {
		t.Errorf("%+v", v.Measure)
	}
}

func TestCoilLostAtItsEnds(t *testing.T) {
	c, o := shop.House(), footed()
	for i := range c.Lines[0].Coils {
		c.Lines[0].Coils[i].Mass = 0.02 // about a metre
	}
	if v := verdict(t, Judge(&c, &c.Lines[0], &o), "coil"); v.State != figure.No || v.Why.Key != "shop.why.coil_lost" {
		t.Errorf("%+v", v)
	}
	if p := making.PlanOf(&c, &c.Lines[0], &o, nil); p.Ledger != nil || p.Absent[making.TheStrip].Key != "shop.why.coil_lost" {
		t.Errorf("strip from coils that are lost at their ends: %v", p.Absent[making.TheStrip])
	}
}

// What an order has not is no rule's to pass: each of these has nothing of what the rule is about.
func TestRuleWithoutObjectIsNotGood(t *testing.T) {
	for _, k := range []struct {
		rule   string
		start  func() making.Order
		change func(*given)
	}{
		{"span_place", footed, func(*given) {}},
		{"span_width", footed, func(*given) {}},
		{"groove_end", footed, func(*given) {}},
		{"groove_span", footed, func(*given) {}},
		{"groove_span", embedded, func(*given) {}},
		{"growth", footed, func(*given) {}},
		{"position", footed, func(*given) {}},
		{"expansion", embedded, func(*given) {}},
		{"stock", footed, func(*given) {}},
		{"spares", footed, func(*given) {}},
		{"spares", footed, func(g *given) { g.FreeIssue, g.line.FirstOff, g.shop.Losses.Rejects = true, 0, 0 }},
		{"joints_place", footed, func(g *given) { g.Quantity = 1 }},
	} {
		c := ruleCase{start: k.start, change: k.change}
		g := c.given()
		if v := verdict(t, Judge(&g.shop, g.line, &g.Order), k.rule); v.State != figure.Plain || !v.Moot || v.Why.None() {
			t.Errorf("%s: %+v", k.rule, v)
		}
	}
	for _, v := range JudgeShape(&shop.Capability{}, &making.Order{Tube: tube.Tube{Fin: tube.Fin{Type: tube.Extruded}}}) {
		if !v.Moot {
			t.Errorf("%s of an extruded fin: %+v", v.Rule.ID, v)
		}
	}
}

// A number that is its limit to the last digits has no margin to either side, whatever it is of.
func TestMarginAtTheLimitIsNone(t *testing.T) {
	for rule, change := range map[string]func(*given){
		"tube_od":     func(g *given) { g.Tube.OD = g.line.TubeOD.High },
		"tube_length": func(g *given) { g.Tube.Length = g.line.TubeLength.High },
		"fin_height":  func(g *given) { g.Tube.Fin.Height = 0.015875 },
		"fin_count":   func(g *given) { g.Tube.Fin.Count = 11 * fpi },
		"strip":       func(g *given) { g.Tube.Fin.Strip = g.line.Types[0].Strip.High },
		"strip_width": func(g *given) { g.line.StripWidth.High = g.Tube.StripWidth() },
		"wall":        func(g *given) { g.Tube.Wall = g.line.Types[0].LeastWall },
		"wall_left":   func(g *given) { g.LeastWall = g.Tube.Wall * (1 - averageUnder) },
		"stretch":     func(g *given) { g.shop.Forming[0].Stretch = g.Tube.Stretch() },
		"tip":         func(g *given) { g.shop.Forming[0].Tip = g.Tube.TipThickness() + tipMargin/2 },
		"span_width":  func(g *given) { g.Tube.Spans = []tube.Span{{Centre: 3, Width: g.shop.Placing.LeastBare}} },
		"span_place":  func(g *given) { g.Tube.Spans = []tube.Span{{Centre: 0.038 + 0.1 + 0.03, Width: 0.06}} },
		"plain_end_b": func(g *given) { g.line.RunDown, g.Tube.PlainB = 5, 0.112 },
		"groove_end": func(g *given) {
			g.Tube.Fin.Type, g.shop.Placing.RolledEnd = tube.KnurledFooted, g.Tube.PlainB-g.line.Groover.RunOut
		},
		"spares": func(g *given) { g.FreeIssue, g.Spares = true, 3 },
		"crate":  func(g *given) { g.shop.Crate.Mass = crated(g) },
	} {
		c := ruleCase{start: footed, change: change}
		g := c.given()
		if v := verdict(t, Judge(&g.shop, g.line, &g.Order), rule); v.State != figure.Good || v.Measure == nil || math.Abs(v.Measure.Margin) > shop.Slack {
			t.Errorf("%s at its limit: %s, %+v", rule, v.State, v.Measure)
		}
	}
}

// crated is what a full crate weighs.
func crated(g *given) units.Mass {
	packing, _ := making.Pack(&g.shop.Crate, &g.Tube, g.Quantity)
	return packing.Gross
}

// The plan gives the rule's reason: what coils give with the joints that are allowed.
func TestCoilTooShortIsOneReason(t *testing.T) {
	c, o := shop.House(), footed()
	for i := range c.Lines[0].Coils {
		c.Lines[0].Coils[i].Mass = 0.8 // about forty metres, and a tube takes a hundred and ninety
	}
	v := verdict(t, Judge(&c, &c.Lines[0], &o), "coil")
	p := making.PlanOf(&c, &c.Lines[0], &o, nil)
	if v.State != figure.No || !reflect.DeepEqual(p.Absent[making.TheStrip], v.Why) || p.Absent[making.TheStrip].Arg("coil") != message.Of(units.Run, v.Measure.Limit) {
		t.Errorf("%+v, %+v", v, p.Absent[making.TheStrip])
	}
}

// Of the same family first: 5Cr steel for 2.25Cr, though copper-nickel conducts more alike.
func TestNearestMetalIsOfTheFamily(t *testing.T) {
	c, o := shop.House(), With(footed(), Setting{Field: "tube_metal", Choice: "t22"})
	c.Lines[0].Types[0].TubeMetals = []string{"c71500", "t5", "cs"}
	v := verdict(t, Judge(&c, &c.Lines[0], &o), "tube_metal")
	if v.State != figure.No || v.Change[0].Choice != "t5" {
		t.Errorf("%+v", v)
	}
}

// By hand: 1200 rpm stopped in 5 s wind 50 turns, 127 mm at 10 fpi.
func TestSpanHoldsTheRunDown(t *testing.T) {
	c, o := shop.House(), footed()
	c.Lines[0].RunDown = 5
	o.Tube.Spans = []tube.Span{{Centre: 2, Width: 0.126}, {Centre: 4, Width: 0.128}}
	list := Judge(&c, &c.Lines[0], &o)
	v := verdict(t, list, "span_width")
	if v.State != figure.No || len(v.Change) != 1 || v.Change[0].Index != 0 || math.Abs(v.Change[0].SI-0.127) > 1e-9 {
		t.Errorf("%+v", v)
	}
	o.Tube.Spans = append(o.Tube.Spans, tube.Span{Centre: 5, Width: 0.1266})
	if v := verdict(t, Judge(&c, &c.Lines[0], &o), "span_width"); v.Why.Arg("number") != 1 || v.Measure.Value != 0.126 || len(v.Change) != 2 {
		t.Errorf("the narrowest of the spans is not named: %+v", v)
	}
	if v := verdict(t, list, "plain_end_b"); v.State != figure.No || math.Abs(v.Change[0].SI-0.112) > 1e-9 {
		t.Errorf("end B with 15 mm of trim: %+v", v)
	}
}

func TestTypeThatTheLineLacks(t *testing.T) {
	c, o := shop.House(), embedded()
	list := Judge(&c, &c.Lines[0], &o)
	v := verdict(t, list, "fin_type")
	if v.State != figure.No || len(v.Change) != 1 {
		t.Fatalf("verdict %+v", v)
	}
	if on, _ := Choose(&c, &o); on.Line != &c.Lines[1] {
		t.Error("the line for embedded fins is not chosen")
	}
	if slices.ContainsFunc(list, func(v Verdict) bool { return v.Rule.ID == "fin_height" }) {
		t.Error("a height is judged without a way of making the type")
	}
	changed := With(o, v.Change...)
	if Worst(Judge(&c, &c.Lines[0], &changed)) == figure.No {
		t.Error("the type that is offered is refused too")
	}

	// Steel is too hard for every type of the line: there is nothing to offer.
	o = With(o, Setting{Field: "fin_metal", Choice: "cs1010"})
	if v := verdict(t, Judge(&c, &c.Lines[0], &o), "fin_type"); v.State != figure.No || v.Change != nil {
		t.Errorf("a steel fin: %+v", v)
	}
}

// random returns any order, most of them beyond some limit.
func random(r *rand.Rand) making.Order {
	between := func(a, b float64) float64 { return a + (b-a)*r.Float64() }
	o := footed()
	tm := material.TubeMetals[r.IntN(len(material.TubeMetals))]
	fm := material.FinMetals[r.IntN(len(material.FinMetals))]
	o = With(o, Setting{Field: "tube_metal", Choice: tm.ID}, Setting{Field: "fin_metal", Choice: fm.ID})
	t := &o.Tube
	t.OD = units.Length(between(0.012, 0.06))
	t.Wall = units.Length(between(0.0008, 0.004))
	t.Length = units.Length(between(0.5, 20))
	t.Fin.Type = tube.FinTypes()[r.IntN(len(tube.FinTypes()))]
	t.Fin.Height = units.Length(between(0.004, 0.028))
	t.Fin.Strip = units.Length(between(0.00015, 0.0008))
	t.Fin.Count = units.PerLength(between(100, 560))
	t.Fin.Groove = units.Length(between(0.0001, 0.0004))
	t.Fin.Sleeve = 0.0005
	t.PlainA, t.PlainB = units.Length(between(0, 0.2)), units.Length(between(0, 0.2))
	for i := range r.IntN(4) {
		t.Spans = append(t.Spans, tube.Span{Centre: units.Length(i+1) * t.Length / 4, Width: units.Length(between(0.01, 0.3))})
		t.Spans[i].Centre += units.Length(between(-0.6, 0.6))
	}
	o.FreeIssue, o.Spares = r.IntN(3) == 0, r.IntN(5)
	o.LeastWall = units.Length(between(-0.001, 0.003))
	a := &o.Asked
	for i, to := range []*rating.Optional{&a.Supports, &a.Rolled, &a.Bow, &a.BowOver, &a.ODOut, &a.Hardness, &a.BeadOut, &a.BeadIn} {
		far := []float64{8, 0.2, 0.01, 5, 0.5e-3, 400, 0.2e-3, 0.6e-3}[i]
		*to = rating.Optional{SI: between(far/100, far), Stated: r.IntN(2) == 0}
	}
	o.Asked.Security = []string{"", string(shop.Band), string(shop.Staple), string(shop.SpotWeld)}[r.IntN(4)]
	if r.IntN(2) == 0 {
		hot := units.Temperature(between(20, 400))
		o.Hottest = &hot
	}
	return o
}

// What a rule proposes is put into the order and judged again: the rule must then be good; and a proposed number must be the
// nearest: a hundredth of the way back, the rule is not good again. The cases of the rules come first, so that each rule
// proposes whatever is drawn; of all the orders drawn in make long each must come too.
func TestNearestChangesPass(t *testing.T) {
	for _, k := range ruleCases {
		g := k.given()
		if came := checkChanges(t, &g.shop, g.line, &g.Order); came[k.rule] != (len(k.to) > 0) {
			t.Errorf("%s: %s proposed: %v", k.name, k.rule, came[k.rule])
		}
	}
	c := shop.House()
	c.BoughtIn = nil                  // what is bought in is judged by no line
	for i := range c.Lines[0].Coils { // small coils, so that the joint rule has work
		c.Lines[0].Coils[i].OD, c.Lines[0].Coils[i].Width = 0.4, 0.03
	}
	saws := shop.House() // buys from stock, on coils that hold less than a tube, and keeps joints far off
	saws.BoughtIn, saws.Buying.Tubes, saws.Cutting.Stock = nil, shop.StockLengths, []units.Length{6.1, 12.2}
	for i := range saws.Lines[0].Coils {
		saws.Lines[0].Coils[i].Mass = 1.5
	}
	for i := range saws.Lines[0].Types {
		saws.Lines[0].Types[i].Joints.Clear = 2
	}
	shops := []*shop.Capability{&c, &saws}
	var lock sync.Mutex
	proposed := map[string]bool{}
	proof.Proof{Share: 500, Full: 15000, Seed: 1}.Run(t, func(t *proof.Case) {
		o := random(t.Rand)
		c := shops[t.Index%len(shops)]
		for i := range c.Lines {
			came := checkChanges(t, c, &c.Lines[i], &o)
			lock.Lock()
			maps.Copy(proposed, came)
			lock.Unlock()
		}
	})
	for _, r := range slices.Concat(LineRules, TypeRules) {
		if may := len(r.Changes) > 0; proposed[r.ID] && !may || may && !proposed[r.ID] && proof.Long() {
			t.Errorf("rule %s may change %q, and proposed changes: %v", r.ID, r.Changes, proposed[r.ID])
		}
	}
}

// checkChanges judges an order on a line, checks every verdict and what it proposes, and says which rules proposed something.
func checkChanges(t testing.TB, c *shop.Capability, l *shop.Line, o *making.Order) (proposed map[string]bool) {
	t.Helper()
	proposed = map[string]bool{}
	for _, v := range Judge(c, l, o) {
		checkVerdict(t, v)
		if v.Change == nil {
			continue
		}
		proposed[v.Rule.ID] = true
		for _, s := range v.Change {
			if !slices.Contains(v.Rule.Changes, s.Field) {
				t.Fatalf("%s changes %s, which it does not state", v.Rule.ID, s.Field)
			}
		}
		if changed := With(*o, v.Change...); again(t, c, l, &changed, v.Rule.ID) != figure.Good {
			t.Fatalf("%s proposes %+v, which does not pass: %+v", v.Rule.ID, v.Change, o.Tube)
		}
		if len(v.Change) == 1 && v.Change[0].Choice == "" && v.Rule.ID != "tube_size" {
			checkNearest(t, c, l, o, v)
		}
	}
	return proposed
}

func again(t testing.TB, c *shop.Capability, l *shop.Line, o *making.Order, rule string) figure.State {
	t.Helper()
	return verdict(t, Judge(c, l, o), rule).State
}

func checkNearest(t testing.TB, c *shop.Capability, l *shop.Line, o *making.Order, v Verdict) {
	t.Helper()
	now, known := map[string]float64{
		"tube_od": float64(o.Tube.OD), "tube_wall": float64(o.Tube.Wall), "tube_length": float64(o.Tube.Length),
		"fin_height": float64(o.Tube.Fin.Height), "fin_pitch": float64(o.Tube.Fin.Count), "strip_thickness": float64(o.Tube.Fin.Strip),
		"plain_end_b": float64(o.Tube.PlainB),
	}[v.Change[0].Field]
	short := v.Change[0]
	if isStandard(l, short) {
		return // the next one of its kind, which is farther than the nearest
	}
	if slices.Contains([]string{"fin_height", "strip_thickness", "tube_wall"}, short.Field) && v.Measure.Limit != short.SI && short.SI < 0.3*units.Inch.Metres() {
		t.Fatalf("%s proposes %+v, which is no standard size", v.Rule.ID, short)
	}
	if !known || math.Abs(short.SI-now) < 200*grid && short.Field != "fin_pitch" || v.Rule.ID == "tool" || v.Rule.ID == "stock" {
		return // spans move together; rounding to the safe side may be more than a hundredth of the way, and rolls fit within a tolerance
	}
	short.SI += (now - short.SI) / 100
	if less := With(*o, short); again(t, c, l, &less, v.Rule.ID) == figure.Good {
		t.Fatalf("%s proposes %+v from %g, though less would do", v.Rule.ID, v.Change, now)
	}
}

// isStandard reports whether a proposed size is one that the line has rolls for, or of a usual series.
func isStandard(l *shop.Line, s Setting) bool {
	multiple := func(step float64) bool { return math.Abs(math.Remainder(s.SI, step)) < 1e-9 }
	of := func(size func(shop.Tool) units.Length) bool {
		return slices.ContainsFunc(l.Types, func(p shop.Practice) bool {
			return slices.ContainsFunc(p.Tools, func(t shop.Tool) bool { return float64(size(t)) == s.SI })
		})
	}
	switch s.Field {
	case "fin_height":
		return multiple(0.0254/16) || of(func(t shop.Tool) units.Length { return t.Height })
	case "strip_thickness":
		return multiple(0.05e-3) || of(func(t shop.Tool) units.Length { return t.Strip })
	case "tube_wall":
		for n := 1; n <= 24; n++ {
			if wall, _ := units.BWG(n); float64(wall) == s.SI {
				return true
			}
		}
	}
	return false
}

func checkVerdict(t testing.TB, v Verdict) {
	t.Helper()
	if v.State != figure.Good && v.Why.None() {
		t.Fatalf("%s: %s without a reason", v.Rule.ID, v.State)
	}
	if text := message.English().Render(v.Why, units.US); strings.Contains(text, "{") {
		t.Fatalf("%s: %q keeps an open place", v.Rule.ID, text)
	}
	if !message.English().Has("shop.rule." + v.Rule.ID) {
		t.Fatalf("rule %s has no name", v.Rule.ID)
	}
	proof.Finite(t, v.Rule.ID, v)
}

// A fin that is too high is for the line that makes its type, though the other
// line, where hardly a rule applies, refuses no more often.
func TestChoosePrefersTheLineOfTheType(t *testing.T) {
	c := shop.House()
	o := footed()
	o.Tube.Fin.Height = 17 * units.Millimetre
	if on, _ := Choose(&c, &o); on.Line.Name != "Line 1, tension-wound" {
		t.Errorf("chose %s", on.Line.Name)
	}
}

// 0.5 % is within the bound of a usual tube, 2 % is not.
func TestGrowthAboveItsBound(t *testing.T) {
	c, o := shop.House(), embedded()
	for share, want := range map[float64]figure.State{0.005: figure.Good, 0.02: figure.Watch} {
		c.Lines[1].Types[0].Growth = share
		if v := verdict(t, Judge(&c, &c.Lines[1], &o), "growth"); v.State != want {
			t.Errorf("growth of %g: %s, want %s", share, v.State, want)
		}
	}
}

// Where the scatter of the growth asks for a trial tube, the rule of the position watches.
func TestPositionIsWatchedWhereATrialTubeIsFirst(t *testing.T) {
	c, o := shop.House(), supported()
	for _, k := range []struct {
		spread float64 // m over 12 m
		trial  bool
	}{{0.0005, false}, {0.005, true}} {
		c.Measured = sample.Measured(k.spread)
		want := figure.Good
		if k.trial {
			want = figure.Watch
		}
		if v := verdict(t, Judge(&c, &c.Lines[1], &o), "position"); v.State != want {
			t.Errorf("spread %g: %s, want %s", k.spread, v.State, want)
		}
	}
}

func TestOverlapHasNoProgramme(t *testing.T) {
	c, o := shop.House(), supported()
	o.Tube.Spans[1].Centre = o.Tube.Spans[0].Centre
	l := &c.Lines[1]
	m, _ := l.Practice(o.Tube.Fin.Type)
	s := making.SpeedsOf(&c, l, m, &o)
	if _, ok := making.ProgrammeOf(&c, m, &s, &o); ok {
		t.Error("overlapping spans have a programme")
	}
	v := verdict(t, Judge(&c, l, &o), "span_place")
	if v.State != figure.No || v.Change == nil {
		t.Fatalf("overlap: %+v", v)
	}
	// Fixing both rules of the spans gives a programme.
	changed := With(o, v.Change...)
	if v := verdict(t, Judge(&c, l, &changed), "span_width"); v.Change != nil {
		changed = With(changed, v.Change...)
	}
	if _, ok := making.ProgrammeOf(&c, m, &s, &changed); !ok {
		t.Error("the proposed changes give no programme")
	}
}

func TestFootedNeedsNoGroove(t *testing.T) {
	o := footed()
	if taken(&shop.Practice{Type: tube.Footed}, &o.Tube) != 0 {
		t.Error("a plain foot takes nothing from the wall")
	}
}

func BenchmarkJudge(b *testing.B) {
	c, o := shop.House(), footed()
	for b.Loop() {
		Judge(&c, &c.Lines[0], &o)
	}
}

// A wall that is enough as ordered, and might not be as delivered, says on which it was judged.
func TestWallSaysOnWhichItWasJudged(t *testing.T) {
	for _, c := range []struct {
		wall  units.Length
		basis tube.WallBasis
		why   string
	}{
		{0.083 * units.Inch, tube.AverageWall, "shop.why.wall_average"}, // 2.108 mm, 1.897 mm at the thinnest, beside 2.1 mm
		{0.083 * units.Inch, tube.MinimumWall, ""},
		{0.109 * units.Inch, tube.AverageWall, ""},
		{0.065 * units.Inch, tube.AverageWall, "shop.why.wall"},
	} {
		h, o := shop.House(), embedded()
		o.Tube.Wall, o.Tube.Basis = c.wall, c.basis
		v := verdict(t, Judge(&h, &h.Lines[1], &o), "wall")
		if v.Why.Key != c.why || (v.State == figure.No) != (c.why == "shop.why.wall") {
			t.Errorf("%.3f mm, %s: %s, %q", c.wall.Millimetres(), c.basis, v.State, v.Why.Key)
		}
	}
}

// Metals that grow within a hundredth alike give a limit of thousands of degrees, which is none.
func TestLimitBeyondUseIsAbsent(t *testing.T) {
	k := ruleCase{start: footed, change: func(*given) {}}
	g := k.given()
	own, faults := material.NewOwn("Alloy", 200, 2700, 12.2e-6)
	if faults != nil {
		t.Fatal(faults)
	}
	tubeMetal, faults := material.NewOwn("Other", 50, 7850, 12.1e-6)
	if faults != nil {
		t.Fatal(faults)
	}
	g.FinMetal, g.TubeMetal, g.Hottest = own, tubeMetal, celsius(200)
	v := verdict(t, Judge(&g.shop, g.line, &g.Order), "expansion")
	if v.State != figure.Good || v.Measure != nil || v.Why.Key != "shop.why.never_loosens" {
		t.Errorf("%+v", v)
	}
}

// A line has no say in tubes that are bought in finned, but for the crate that takes them; without a price the type is refused.
func TestBoughtInIsNoMatterOfTheLine(t *testing.T) {
	c, o := shop.House(), footed()
	o.Tube.Fin.Type, o.Tube.Fin.Sleeve, o.Tube.Length = tube.Extruded, 0.0005, 15.5
	on, list := Choose(&c, &o)
	l := on.Line
	if l == nil || len(list) != len(LineRules) || Worst(list) != figure.Watch {
		t.Fatalf("%+v", list)
	}
	for _, v := range list {
		if v.Rule == crateRule && v.State != figure.Watch || v.Rule != crateRule && (v.State != figure.Plain || v.Why.Key != "shop.why.bought_in") {
			t.Errorf("%s is %s: %v", v.Rule.ID, v.State, v.Why)
		}
	}
	c.BoughtIn = nil
	if _, list = Choose(&c, &o); Worst(list) != figure.No {
		t.Errorf("without a price: %+v", list)
	}
}
