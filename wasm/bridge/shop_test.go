package bridge

import (
	"encoding/json"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/report"
	"finwright/testdata/cases"
)

type made struct {
	Document document.Document
	View     struct {
		Making *report.MakingSection
		Groups []struct {
			ID, Section string
			Figures     []report.ShownFigure
		}
	}
}

func askMaking(t *testing.T, d document.Document, shop string) made {
	t.Helper()
	var got made
	args := map[string]any{"document": d, "commands": nil, "sheet": area, "section": "making", "shop": shop, "room": map[string]any{"wide": 1100, "card": 270}}
	if e := ask(t, "edit", args, &got); e != "" {
		t.Fatal(e)
	}
	return got
}

// Judging and planning belong to the section Making alone: elsewhere nobody pays for them.
func TestOnlyMakingIsPlanned(t *testing.T) {
	got := askMaking(t, cases.First(), "")
	if got.View.Making == nil || len(got.View.Making.Verdicts) < 20 || len(got.View.Making.Pictures) != 5 {
		t.Errorf("%+v", got.View.Making)
	}
	for _, section := range []string{"", "surface", "heat"} {
		var got made
		if e := ask(t, "edit", map[string]any{"document": cases.First(), "commands": nil, "sheet": area, "section": section}, &got); e != "" {
			t.Fatal(e)
		}
		if got.View.Making != nil {
			t.Errorf("section %q is planned", section)
		}
		for _, g := range got.View.Groups {
			if g.Section == "making" {
				t.Errorf("section %q has the figures %s", section, g.ID)
			}
		}
	}
}

// The day comes from the page: a day later nothing is ready earlier, without one nothing is promised, and a price that has grown
// old by then is told.
func TestPromiseStartsOnThePagesDay(t *testing.T) {
	promise := func(day string) (ready, budget string, old bool) {
		var got made
		args := map[string]any{"document": cases.First(), "commands": nil, "sheet": area, "section": "making", "room": map[string]any{"wide": 1100, "card": 270}, "day": day}
		if e := ask(t, "edit", args, &got); e != "" {
			t.Fatal(e)
		}
		m := got.View.Making
		for _, c := range m.Cautions {
			old = old || strings.Contains(strings.Join(c.Texts, " "), "ask again")
		}
		if rows := m.Promise.Rows; len(rows) > 0 {
			ready = rows[len(rows)-1].Day
		}
		return ready, m.Budget, old
	}
	a, budget, old := promise("2026-11-27")
	if len(a) != len("2026-11-27") || a < "2026-12-20" || !strings.Contains(budget, "not an offer. It holds until 2026-12-27") || old {
		t.Errorf("ready %q; %s; old %v", a, budget, old)
	}
	if b, _, old := promise("2027-03-28"); b < "2027-04-20" || !old {
		t.Errorf("ready %q, old %v", b, old)
	}
	for _, none := range []string{"", "today", "2026-13-27"} {
		if c, budget, _ := promise(none); c != "" || !strings.Contains(budget, "for 30 days") {
			t.Errorf("on %q: ready %q; %s", none, c, budget)
		}
	}
}

// The shop that comes with a call decides; the engine keeps none.
func TestShopComesWithTheCall(t *testing.T) {
	var edited struct{ Shop string }
	change := func(path, text string) {
		t.Helper()
		if e := ask(t, "shop_edit", map[string]any{"shop": edited.Shop, "command": entering(path, text)}, &edited); e != "" {
			t.Fatal(e)
		}
	}
	change("currency", "CHF")
	change("rates/mark_up", "0 %")
	price := func(shop string) report.ShownFigure {
		for _, g := range askMaking(t, cases.First(), shop).View.Groups {
			for _, f := range g.Figures {
				if f.ID == "price_tube" {
					return f
				}
			}
		}
		t.Fatal("no price")
		return report.ShownFigure{}
	}
	before := price("")
	own := price(edited.Shop)
	if own.Unit != "CHF" || own.Value == before.Value || before.Unit != "EUR" {
		t.Errorf("%v %v and %v %v", before.Value, before.Unit, own.Value, own.Unit)
	}
	if after := price(""); after != before {
		t.Errorf("the shipped shop was %v and is %v", before, after)
	}
	var w report.Working
	if e := ask(t, "working", map[string]any{"document": cases.First(), "figure": "price", "section": "making", "shop": edited.Shop, "sheet": nil}, &w); e == "" {
		t.Error("an unknown argument was taken")
	}
	if e := ask(t, "working", map[string]any{"document": cases.First(), "figure": "price", "section": "making", "shop": edited.Shop}, &w); e != "" || !strings.HasSuffix(w.Result, "CHF") {
		t.Errorf("%s %s", w.Result, e)
	}
}

// entering is the command that enters one text.
func entering(path, text string) map[string]any {
	return map[string]any{"op": "enter", "path": "", "entries": []any{map[string]any{"path": path, "text": text}}}
}

func TestShopListsGrowAndShrink(t *testing.T) {
	var got shopReply
	command := func(op, path string, index int) {
		t.Helper()
		if e := ask(t, "shop_edit", map[string]any{"shop": got.Shop, "command": map[string]any{"op": op, "path": path, "index": index}}, &got); e != "" {
			t.Fatal(e)
		}
	}
	if e := ask(t, "shop", map[string]any{"shop": ""}, &got); e != "" {
		t.Fatal(e)
	}
	shipped := got.Shop
	command("add", "measured", 0) // from nothing
	command("add", "measured", 0) // from the last
	if n := strings.Count(got.Shop, `"finned"`); n != 2 {
		t.Errorf("%d measured tubes", n)
	}
	command("remove", "measured", 0)
	command("remove", "measured", 0)
	if got.Shop != shipped {
		t.Error("what was added and removed leaves a trace")
	}
}

// What is wrong with a file is said at its path.
func TestFaultsOfAShopNameTheirPath(t *testing.T) {
	for name, c := range map[string]struct{ method, args, path string }{
		"last line":   {"shop_edit", `{"shop":"","command":{"op":"remove","path":"crate","index":0}}`, "crate"},
		"not a shop":  {"shop", `{"shop":"{}"}`, "format"},
		"no JSON":     {"shop", `{"shop":"od;wall"}`, ""},
		"in the edit": {"edit", "", "version"},
	} {
		args := c.args
		if args == "" {
			text, err := json.Marshal(map[string]any{"document": cases.First(), "commands": nil, "sheet": area, "section": "making", "shop": `{"format":"finwright-shop","version":99}`})
			if err != nil {
				t.Fatal(err)
			}
			args = string(text)
		}
		var reply struct {
			Error *struct {
				Message string
				Fields  []report.ShopFault
			}
		}
		if err := json.Unmarshal(Call(c.method, []byte(args)), &reply); err != nil {
			t.Fatal(err)
		}
		if reply.Error == nil || len(reply.Error.Fields) == 0 || reply.Error.Fields[0].Field != c.path || reply.Error.Fields[0].Message == "" {
			t.Errorf("%s: %+v", name, reply.Error)
		}
	}
}

// Of what is entered at once, what does not hold is refused at its path, and the rest is taken as one change.
func TestRefusedEntriesNameTheirPath(t *testing.T) {
	var got shopReply
	command := map[string]any{"op": "enter", "path": "", "entries": []any{
		map[string]any{"path": "rates/line", "text": "cheap"},
		map[string]any{"path": "rates/luck", "text": "1 /h"},
		map[string]any{"path": "currency", "text": "CHF"},
		map[string]any{"path": "lines/0/types/0/oiler", "text": "no"},
	}}
	if e := ask(t, "shop_edit", map[string]any{"shop": "", "command": command}, &got); e != "" {
		t.Fatal(e)
	}
	if !strings.Contains(got.Shop, `"CHF"`) || !strings.Contains(got.Shop, `"oiler": false`) {
		t.Error("what holds is not taken")
	}
	if len(got.Refused) != 2 || got.Refused[0].Field != "rates/luck" || got.Refused[1].Field != "rates/line" || got.Refused[1].Place != "Rates, Line per hour" || got.Refused[1].Message == "" {
		t.Errorf("refused %+v", got.Refused)
	}
}

// What the last entry does to the order, and what the number in focus would do, is the order's own price by each shop.
func TestEffectOfAnEntry(t *testing.T) {
	var edited shopReply
	if e := ask(t, "shop_edit", map[string]any{"shop": "", "command": entering("rates/line", "130 /h")}, &edited); e != "" {
		t.Fatal(e)
	}
	effect := func(path string) (got report.ShopEffect) {
		t.Helper()
		if e := ask(t, "shop_effect", map[string]any{"document": cases.First(), "shop": edited.Shop, "before": "", "path": path, "day": "2026-11-27"}, &got); e != "" {
			t.Fatal(e)
		}
		return got
	}
	price := func(shop string) string {
		for _, g := range askMaking(t, cases.First(), shop).View.Groups {
			for _, f := range g.Figures {
				if f.ID == "price_tube" {
					return f.Value
				}
			}
		}
		return ""
	}
	got := effect("rates/line")
	if want := []string{"Before", "Now", "10 % less", "10 % more"}; !slices.Equal(got.Columns, want) || len(got.Rows) != 4 {
		t.Fatalf("%+v", got)
	}
	cells := got.Rows[0].Cells
	more, faults := house().With("rates/line", "143 /h")
	if faults != nil {
		t.Fatal(faults)
	}
	if cells[0].Text != price("") || cells[1].Text != price(edited.Shop) || cells[3].Text != price(string(more.Save())) || !cells[0].Moved || cells[1].Moved || !cells[2].Moved {
		t.Errorf("prices %+v", cells)
	}
	if hours := got.Rows[1].Cells; hours[0].Moved || hours[3].Moved {
		t.Errorf("hours %+v", hours)
	}
	if day := effect("calendar/queue_days").Rows[2].Cells; len(day) != 4 || len(day[1].Text) != len("2027-01-07") || day[0].Moved || !(day[2].Text < day[1].Text && day[1].Text < day[3].Text) {
		t.Errorf("the day that is promised: %+v", day)
	}
	if got = effect("forming/3/work"); got.Note == "" || len(got.Columns) != 4 {
		t.Errorf("what moves nothing: %+v", got)
	}
	if got = effect("name"); got.Note != "" || len(got.Columns) != 2 {
		t.Errorf("a name: %+v", got)
	}
}

// A file that was kept before its values had ranges is refused with the place and what is allowed.
func TestKeptFileOutsideTheRangesNamesThePlace(t *testing.T) {
	text := strings.Replace(string(house().Save()), `"first_off": 1`, `"first_off": 1000000000`, 1)
	for method, args := range map[string]any{
		"shop": map[string]any{"shop": text},
		"edit": map[string]any{"document": cases.First(), "sheet": area, "section": "making", "shop": text},
	} {
		if got, want := ask(t, method, args, nil), "The capability file was not taken. Lines, 1, First-off tubes per set-up: 1000000000 is out of range: from 0 to 100."; got != want {
			t.Errorf("%s: %q, want %q", method, got, want)
		}
	}
}

// mostAllocated bounds what one answer takes of the memory [bytes].
const mostAllocated = 16 << 20

// allocated returns what a call takes of the memory [bytes], while nothing else runs.
func allocated(call func()) uint64 {
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	call()
	runtime.ReadMemStats(&after)
	return after.TotalAlloc - before.TotalAlloc
}

// The largest of everything that a shop's file and a design allow: openings and crates for hundreds of thousands of
// tubes, or just few enough to be drawn one by one, racks of one tube, a million tubes, forty bare spans.
func TestLargestMakingIsBounded(t *testing.T) {
	d := cases.First()
	for field, value := range map[string]string{"quantity": "1000000", "tube_od": "6 mm", "tube_wall": "0.5 mm", "fin_height": "1 mm", "tube_length": "15 m", "plain_end_a": "50 mm", "plain_end_b": "50 mm"} {
		d.Fields[field] = document.Entry{Text: value, Origin: document.House}
	}
	d.Spans = nil
	for i := range 40 {
		d.Spans = append(d.Spans, document.Span{Centre: document.Entry{Text: strconv.Itoa(350*(i+1)) + " mm", Origin: document.House}, Width: document.Entry{Text: "50 mm", Origin: document.House}})
	}
	for _, c := range []struct {
		bundle, crate [2]string // width and height
		undrawn       int       // pictures
	}{
		{[2]string{"20 m", "20 m"}, [2]string{"20 m", "20 m"}, 2},
		{[2]string{"190 mm", "165 mm"}, [2]string{"160 mm", "240 mm"}, 0}, // 721 in a bundle, 400 in a crate
		{[2]string{"190 mm", "165 mm"}, [2]string{"400 mm", "300 mm"}, 1}, // 1250 in a crate
	} {
		text := string(house().Save())
		for _, change := range [][2]string{
			{`"410 mm"`, `"` + c.bundle[0] + `"`},
			{`"320 mm"`, `"` + c.bundle[1] + `"`},
			{`"1100 mm"`, `"` + c.crate[0] + `"`},
			{`"900 mm"`, `"` + c.crate[1] + `"`},
			{`"mass": "2500 kg"`, `"mass": "10000 t"`},
			{`"crane": "3000 kg"`, `"crane": "10000 t"`},
			{`"payload": "24 t"`, `"payload": "10000 t"`},
			{`"tubes": 40`, `"tubes": 1`},
			{`"load": "30 s"`, `"load": "0.001 s"`},
			{`"shift": "8 h"`, `"shift": "168 h"`},
		} {
			if !strings.Contains(text, change[0]) {
				t.Fatalf("the shipped shop has no %s", change[0])
			}
			text = strings.Replace(text, change[0], change[1], 1)
		}
		args := mustMarshal(t, map[string]any{"document": d, "commands": nil, "sheet": area, "section": "making", "shop": text, "room": map[string]any{"wide": 1100, "card": 270}})
		var reply []byte
		if got := allocated(func() { reply = Call("edit", args) }); got > mostAllocated {
			t.Errorf("%v: %d bytes allocated", c, got)
		}
		if said := string(reply); strings.Count(said, "too many to draw") != c.undrawn || !strings.Contains(said, "Crate: ") || !strings.Contains(said, "shifts in all") {
			t.Errorf("%v: %.2000s", c, said)
		}
	}
}

// A file nearly as long as it may be, of eighteen lines and a hundred measured tubes, is planned with in no more memory.
// Laying it open takes a few times that, as each of its thousands of values goes with what may be typed and chosen.
func TestLargestFileIsBounded(t *testing.T) {
	var file map[string]any
	if err := json.Unmarshal(house().Save(), &file); err != nil {
		t.Fatal(err)
	}
	lines := file["lines"].([]any)
	for len(lines) < 18 {
		lines = append(lines, lines[0])
	}
	file["lines"] = lines
	measured := map[string]any{"type": "embedded", "cut": "6000 mm", "finned": "5900 mm", "finished": "6006 mm"}
	file["measured"] = slices.Repeat([]any{measured}, 100)
	text := string(mustMarshal(t, file))
	if n := len(text); n < 120<<10 {
		t.Fatalf("%d bytes are not much", n)
	}
	lately.Store(nil)
	for _, c := range []struct {
		method string
		args   map[string]any
		most   uint64
	}{
		{"edit", map[string]any{"document": cases.First(), "commands": nil, "sheet": area, "section": "making", "shop": text, "room": map[string]any{"wide": 1100, "card": 270}}, mostAllocated},
		{"shop", map[string]any{"shop": text}, 3 * mostAllocated},
		{"shop_edit", map[string]any{"shop": text, "command": entering("name", "Other")}, 3 * mostAllocated},
	} {
		asked := mustMarshal(t, c.args)
		if got := allocated(func() { Call(c.method, asked) }); got > c.most {
			t.Errorf("%s: %d bytes allocated", c.method, got)
		}
	}
}

func mustMarshal(t testing.TB, v any) []byte {
	t.Helper()
	text, err := json.Marshal(v)
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// Outside of Making a shop that cannot be read is no hindrance: what a metal bears is then not judged. In one that can,
// the limit is the same in every section.
func TestShopJudgesFormingInEverySection(t *testing.T) {
	remarked := func(section, text string) bool {
		t.Helper()
		reply := string(Call("edit", mustMarshal(t, map[string]any{"document": cases.First(), "commands": nil, "sheet": area, "section": section, "shop": text})))
		if !strings.Contains(reply, `"valid":true`) {
			t.Fatalf("%s: %.200s", section, reply)
		}
		return strings.Contains(reply, "edge is stretched to 2.25 times the tube; up to 1.5 is usual")
	}
	strict, faults := house().With("forming/0/stretch", "1.5")
	if faults != nil {
		t.Fatal(faults)
	}
	for _, section := range []string{"surface", "heat", "making"} {
		if !remarked(section, string(strict.Save())) || remarked(section, "") {
			t.Errorf("%s: the limit is not the shop's", section)
		}
	}
	if remarked("surface", "{}") {
		t.Error("judged by a shop that cannot be read")
	}
}

func BenchmarkMaking(b *testing.B) {
	args, err := json.Marshal(map[string]any{
		"document": cases.First(), "sheet": area, "section": "making", "commands": nil, "room": map[string]any{"wide": 1100}, // as while pulling
	})
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		Call("edit", args)
	}
}
