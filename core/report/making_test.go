package report

import (
	"encoding/xml"
	"errors"
	"io"
	"slices"
	"strings"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/shop/verdict"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// made evaluates and plans a document in the shipped shop.
func made(t *testing.T, d document.Document) (MakingSection, design.Result, design.Production) {
	t.Helper()
	house := shop.House()
	in, h, err := design.ReadAndRate(d, &house)
	if err != nil {
		t.Fatal(err)
	}
	res := design.Evaluate(in, h)
	m := design.Make(in, res.Heat)
	m.TryChanges(d)
	res.AddMaking(&m)
	return Writer{Texts: message.English(), System: d.Units}.Making(&m, Room{Wide: 1100, Card: 270}), res, m
}

func verdictOf(t *testing.T, m MakingSection, rule string) ShownVerdict {
	t.Helper()
	for _, v := range m.Verdicts {
		if v.Rule == rule {
			return v
		}
	}
	t.Fatalf("no verdict of %s", rule)
	return ShownVerdict{}
}

// Every nearest change that the page offers is applied as the page applies it, as
// texts in a document of either system, and its rule is then good. A change of the fin
// type may bring rules of its own, so it is held to its own rule like the others.
func TestOfferedChangesMakeTheirRuleGood(t *testing.T) {
	far := map[string][]string{
		"tube_od": {"tube_od", "60 mm", "tube_wall", "5 mm"}, "tube_size": {"tube_od", "27 mm"}, "tube_length": {"tube_length", "16 m"},
		"wall": {"tube_wall", "0.8 mm"}, "wall_left": {"least_wall", "2.1 mm"}, "fin_height": {"fin_height", "17 mm"}, "fin_count": {"fin_pitch", "14 fpi"},
		"strip": {"strip_thickness", "0.6 mm"}, "fin_metal": {"fin_metal", "cs1010"}, "tool": {"fin_height", "11 mm"}, "stretch": {"fin_height", "19 mm"},
		"spares": {"supply", "free_issue", "quantity", "400"}, "tip": {"strip_thickness", "0.3 mm"},
		"plain_end_b": {"plain_end_b", "0 mm"},
	}
	for rule, pairs := range far {
		for _, system := range []units.System{units.SI, units.US} {
			d := edited(t, pairs...)
			d.Units = system
			m, _, _ := made(t, d)
			v := verdictOf(t, m, rule)
			if v.State == figure.Good || v.Change == nil {
				if rule != "plain_end_b" { // the trim of the shipped shop may hold the run-down
					t.Errorf("%s in %s is %s, change %v", rule, system, v.State, v.Change)
				}
				continue
			}
			d, err := document.Edit(d, v.Change.Command)
			if err != nil {
				t.Fatal(err)
			}
			m, _, _ = made(t, d)
			if got := verdictOf(t, m, rule); got.State != figure.Good {
				t.Errorf("%s in %s after %q is %s: %s", rule, system, v.Change.Text, got.State, got.Why)
			}
		}
	}
}

// Bare spans that are too narrow are widened all in one command.
func TestSpansAreChangedTogether(t *testing.T) {
	d := document.New()
	for _, c := range []document.Command{
		{Op: "add_span"},
		{Op: "add_span"},
		{Op: "span", Index: 0, Part: "width", Text: "20 mm"},
		{Op: "span", Index: 1, Part: "width", Text: "25 mm"},
	} {
		var err error
		if d, err = document.Edit(d, c); err != nil {
			t.Fatal(err)
		}
	}
	m, _, _ := made(t, d)
	v := verdictOf(t, m, "span_width")
	if v.State != figure.No || v.Change == nil || len(v.Change.Command.Commands) != 2 {
		t.Fatalf("%+v", v)
	}
	d, err := document.Edit(d, v.Change.Command)
	if err != nil {
		t.Fatal(err)
	}
	m, _, _ = made(t, d)
	if got := verdictOf(t, m, "span_width"); got.State != figure.Good {
		t.Errorf("after %q: %+v", v.Change.Text, got)
	}
}

// What hinders stands first.
func TestVerdictsAreInOrder(t *testing.T) {
	m, _, _ := made(t, edited(t, "fin_height", "17 mm", "tube_od", "27 mm"))
	if !slices.IsSortedFunc(m.Verdicts, func(a, b ShownVerdict) int { return figure.ByGravity(a.State, b.State) }) {
		t.Errorf("out of order: %+v", m.Verdicts)
	}
	for _, v := range m.Verdicts {
		if v.State == figure.No && v.Why == "" {
			t.Errorf("%s refuses without a reason", v.Rule)
		}
	}
}

// A refusal stands before what is only to be watched, whatever was looked at first.
func TestRemarksAreInOrder(t *testing.T) {
	d := cases.List()[0].Document()
	height := "20.9 mm"
	d, _ = document.Edit(d, document.Command{Op: "set", Values: []document.Value{{Field: "fin_height", Text: &height}}})
	_, res, _ := made(t, d)
	v := Writer{Texts: message.English()}.View(d, nil, &res)
	if res.Notices[0].State != figure.Watch || v.Notices[0].State != figure.No {
		t.Fatalf("%s is said first, %s is shown first", res.Notices[0].State, v.Notices[0].State)
	}
	if !slices.IsSortedFunc(v.Notices, func(a, b ShownNotice) int { return figure.ByGravity(a.State, b.State) }) {
		t.Errorf("out of order: %+v", v.Notices)
	}
}

// Each picture is well-formed, without script or style, and states its dimensions.
func TestPicturesStandAlone(t *testing.T) {
	m, _, plan := made(t, edited(t, "quantity", "120"))
	w := Writer{Texts: message.English(), System: units.SI}
	want := map[string]string{
		"length": w.along(plan.Plan.Programme.CutLength), "schedule": "Shift 1", "crate": "1100", "bundle": w.along(plan.Plan.Bundle.Width), "swings": "Strip price",
	}
	if len(m.Pictures) != len(want) {
		t.Errorf("%d pictures", len(m.Pictures))
	}
	for _, p := range m.Pictures {
		if !strings.Contains(p.SVG, ">"+want[p.ID]+"<") || p.Alt == "" {
			t.Errorf("%s does not say %q", p.ID, want[p.ID])
		}
		for dec := xml.NewDecoder(strings.NewReader(p.SVG)); ; {
			token, err := dec.Token()
			if errors.Is(err, io.EOF) {
				break
			}
			if err != nil {
				t.Fatalf("%s: %v", p.ID, err)
			}
			start, ok := token.(xml.StartElement)
			if ok && (start.Name.Local == "script" || start.Name.Local == "style") {
				t.Errorf("%s holds a %s", p.ID, start.Name.Local)
			}
			for _, a := range start.Attr {
				if strings.Contains(a.Value, "NaN") || strings.Contains(a.Value, "Inf") || a.Name.Local == "style" {
					t.Errorf("%s: %s=%q", p.ID, a.Name.Local, a.Value)
				}
			}
		}
	}
}

// While a tube is pulled only its own drawing is made.
func TestPullDrawsTheTubeAlone(t *testing.T) {
	_, _, plan := made(t, document.New())
	got := Writer{Texts: message.English(), System: units.SI}.Making(&plan, Room{Wide: 900})
	if len(got.Pictures) != 1 || got.Pictures[0].ID != "length" {
		t.Errorf("%d pictures", len(got.Pictures))
	}
}

// Money carries the shop's currency.
func TestMoneyNamesItsCurrency(t *testing.T) {
	_, res, _ := made(t, document.New())
	w := Writer{Texts: message.English(), System: units.US, Currency: "EUR"}
	for id, want := range map[string]string{"price_tube": "EUR", "price_metre": "EUR per ft", "shifts": ""} {
		f, _ := res.Find(id)
		if got := w.Figure(f).Unit; got != want {
			t.Errorf("%s in %q, want %q", id, got, want)
		}
	}
}

// An order that names no line shows in the entry the one that was chosen.
func TestEmptyLineShowsTheChosenOne(t *testing.T) {
	_, res, m := made(t, document.New())
	v := Writer{Texts: message.English()}.View(document.New(), nil, &res)
	if got := fieldOf(v.Fields, "line"); got.Text != "" || got.Auto != m.Line.Name || got.Auto == "" {
		t.Errorf("the line shows %q for %q, want %q", got.Auto, got.Text, m.Line.Name)
	}
}

// A price that is worked out for a tube which the line refuses is marked.
func TestPriceOfARefusedTubeIsMarked(t *testing.T) {
	for height, want := range map[string]figure.State{"12 mm": figure.Plain, "20.9 mm": figure.No} {
		_, res, _ := made(t, edited(t, "fin_height", height, "quantity", "120"))
		price, ok := res.Find("price_tube")
		if !ok || price.State != want {
			t.Errorf("%s: the price is %q, want %q", height, price.State, want)
		}
	}
}

// A length in a picture bears no unit, but feet: 20 ft is not 20 in.
func TestLengthsInPictures(t *testing.T) {
	for _, c := range []struct {
		length units.Length
		system units.System
		want   string
	}{{6.096, units.SI, "6096"}, {6.096, units.US, "20 ft"}, {0.0381, units.US, "1 1/2"}, {0.04, units.US, "1.57"}} {
		if got := (Writer{Texts: message.English(), System: c.system}).along(c.length); got != c.want {
			t.Errorf("%g m in %s is %q, want %q", float64(c.length), c.system, got, c.want)
		}
	}
}

// A margin that is exactly at its limit says so; the schedule says what its numbers count, what is dangerous stands by the
// part that it is about, and a tornado begins with its widest.
func TestMakingSaysWhatAForemanAsks(t *testing.T) {
	m, _, plan := made(t, edited(t, "tube_length", "15 m", "fin_type", "footed"))
	if got := verdictOf(t, m, "tube_length").Margin; got != "at the limit" {
		t.Errorf("a tube as long as the line takes has the margin %q", got)
	}
	for _, p := range m.Pictures {
		if p.ID == "schedule" && !strings.Contains(p.SVG, "number of tubes") {
			t.Error("the numbers of the schedule have no name")
		}
	}
	if last := m.Cautions[len(m.Cautions)-1]; !strings.Contains(last.Texts[0], "Local codes") || !slices.ContainsFunc(m.Cautions, func(c ShownCaution) bool { return c.At == "speeds" }) {
		t.Errorf("cautions %v", m.Cautions)
	}
	w := Writer{Texts: message.English(), System: units.SI}
	picture, ok := w.swings(&plan, 400)
	if !ok || len(picture.Shapes) == 0 {
		t.Fatal("no tornado")
	}
	var reach []float64
	for _, s := range picture.Shapes {
		lo, hi := s.Loops[0][0].X, s.Loops[0][0].X
		for _, p := range s.Loops[0] {
			lo, hi = min(lo, p.X), max(hi, p.X)
		}
		reach = append(reach, hi-lo)
	}
	if bars := reach[2:]; bars[0]+1e-9 < slices.Max(bars) { // behind the two of the legend
		t.Errorf("the first bar of the tornado is not the widest: %v", bars)
	}
	_, _, long := made(t, edited(t, "fin_type", "embedded", "tube_wall", "12 BWG", "tube_length", "12 m"))
	if !slices.ContainsFunc(long.Verdicts, func(v verdict.Verdict) bool {
		return v.Rule.ID == "position" && strings.Contains(w.say(v.Why), "may be off by")
	}) {
		t.Error("an error of growth is not told in millimetres")
	}
}

// Of tubes that are bought in, the answer and the line among the figures that decide say so.
func TestBoughtInIsSaid(t *testing.T) {
	m, res, _ := made(t, edited(t, "fin_type", "extruded"))
	w := Writer{Texts: message.English(), System: units.SI}
	if got := w.line(&res).Value; got != "Bought in" || !strings.HasSuffix(m.Answer, "tubes are bought in finned, at the price by the metre for tubes of 12 mm to 27 mm: no line winds them.") || len(m.Promise.Title) > 0 {
		t.Errorf("%q, %q, %+v", got, m.Answer, m.Promise)
	}
	if m, _, _ = made(t, edited(t, "fin_type", "extruded", "tube_od", "60 mm")); strings.Contains(m.Answer, "bought in") || !strings.HasPrefix(m.Promise.Title, "No day can be promised.") {
		t.Errorf("%q, %+v", m.Answer, m.Promise)
	}
}

// A promise counts from the day that the design says it was ordered on, and says so; one that has passed is told.
func TestPromiseOfAnOrder(t *testing.T) {
	promised := func(today string, fields ...string) MakingPromise {
		_, _, plan := made(t, edited(t, fields...))
		plan.Day, _ = shop.ParseDay(today)
		return Writer{Texts: message.English(), System: units.SI}.promise(&plan)
	}
	today := promised("2026-11-27")
	later := promised("2026-12-03", "ordered", "2026-11-27")
	if !strings.Contains(today.Title, "if ordered today") || !strings.Contains(later.Title, "as ordered on 2026-11-27") || !slices.Equal(today.Rows, later.Rows) {
		t.Errorf("%+v and %+v", today, later)
	}
	if got := promised("", "ordered", "2026-11-27"); !slices.Equal(got.Rows, today.Rows) {
		t.Errorf("without today: %+v", got)
	}
	if got := promised("2027-11-27", "ordered", "2026-11-27"); !strings.Contains(got.Title, "It is 2027-11-27: that day has passed.") {
		t.Errorf("%+v", got)
	}
	waits := promised("2026-11-27", "drawing_approved", "2027-02-15")
	if !strings.Contains(waits.Title, "What holds it: Drawing approved") || !slices.ContainsFunc(waits.Rows, func(r PromisePart) bool { return r.ID == "drawing" && r.Day == "2027-02-15" }) {
		t.Errorf("%+v", waits)
	}
}

// A step that the customer asks for says so.
func TestStepAskedForSaysSo(t *testing.T) {
	m, _, _ := made(t, edited(t, "ask_pressure_test", "asked", "ask_inspect", "asked"))
	asked := 0
	for _, s := range m.Steps {
		if strings.Contains(s.Note, "Asked for by the customer.") {
			asked++
		}
	}
	if asked != 2 {
		t.Errorf("%d steps of 2: %+v", asked, m.Steps)
	}
}

// What is said of one part of the work stands under one head, and no head is said twice.
func TestCautionsStandUnderOneHead(t *testing.T) {
	m, _, _ := made(t, cases.List()[2].Document())
	heads := map[string]int{}
	for _, c := range m.Cautions {
		heads[c.At+" "+c.Head]++
		if c.Head == "" && len(c.Texts) != 1 || c.Head != "" && heads[c.At+" "+c.Head] > 1 {
			t.Errorf("%+v", c)
		}
		for _, text := range c.Texts {
			if c.Head != "" && strings.Contains(text, c.Head) {
				t.Errorf("%q is said again in %q", c.Head, text)
			}
		}
	}
	if heads["speeds Welding"] != 1 || heads["buy Order the strip"] != 1 || heads[" "] != 1 {
		t.Errorf("heads %v", heads)
	}
}

// A bow without the length in which it is measured is measured in the line's, which the empty entry shows.
func TestBowIsMeasuredInTheLinesLength(t *testing.T) {
	house := shop.House()
	d := edited(t, "tube_bow", "1 mm")
	_, res, _ := made(t, d)
	w := Writer{Texts: message.English(), System: units.SI}
	over := units.Echo(units.Distance, float64(house.Lines[0].Straight.Over), units.SI)
	if got := fieldOf(w.View(d, nil, &res).Fields, "tube_bow_over"); got.Text != "" || got.Auto != over {
		t.Errorf("the length of the bow shows %q for %q, want %q", got.Auto, got.Text, over)
	}
}

// What is taken of the strip on hand is told by its heat, what goes back and what stays too.
func TestStripOnHandIsTold(t *testing.T) {
	_, _, alone := made(t, edited(t, "quantity", "20"))
	s := alone.Plan.Strip()
	told := func(quantity string, masses ...units.Mass) string {
		t.Helper()
		house := shop.House()
		for _, m := range masses {
			house.Buying.StripOnHand = append(house.Buying.StripOnHand, shop.StripOnHand{Metal: "al1060", Width: s.Slit, Thickness: s.Thickness, Mass: m, Heat: "4711", Remark: "rack 3"})
		}
		in, h, err := design.ReadAndRate(edited(t, "quantity", quantity), &house)
		if err != nil {
			t.Fatal(err)
		}
		res := design.Evaluate(in, h)
		m := design.Make(in, res.Heat)
		res.AddMaking(&m)
		var all []string
		for _, c := range (Writer{Texts: message.English(), System: units.SI}).Making(&m, Room{Wide: 700}).Cautions {
			all = append(append(all, c.Head), c.Texts...)
		}
		return strings.Join(all, "\n")
	}
	if got := told("20", 105); !strings.Contains(got, "From stock: coil of 105 kg, heat 4711") || !strings.Contains(got, "(rack 3)") || !strings.Contains(got, "Back to stock:") || strings.Contains(got, "Order the strip") {
		t.Error(got)
	}
	if got := told("500", 5); !strings.Contains(got, "On hand stays 1 more coil of this strip") || strings.Contains(got, "heat 4711") {
		t.Error(got)
	}
}

// Paper says by whose prices, of when, and by which file an order is priced; steps stand under the time at which they are done.
func TestPaperSaysWhosePrices(t *testing.T) {
	w := Writer{Texts: message.English(), System: units.SI}
	house := shop.House()
	if got := w.Whose(&house, "1a2b"); got != "Shop "+house.Name+", prices of "+house.PricesOf()+", file 1a2b" {
		t.Error(got)
	}
	m, _, plan := made(t, cases.List()[1].Document())
	slices.Reverse(plan.Plan.Steps)
	for i, s := range w.steps(&plan) {
		if want := m.Steps[i].When; s.When != want || s.When == "" || strings.Contains(s.Note, s.When) {
			t.Errorf("step %d, %+v, is done %q, want %q", i, s, s.When, want)
		}
	}
}
