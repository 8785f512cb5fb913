package bridge

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/testdata/cases"
	"finwright/wasm/plots"
)

// ask calls a method and decodes its data into out; it returns the error message.
func ask(t testing.TB, name string, args, out any) string {
	t.Helper()
	text, err := json.Marshal(args)
	if err != nil {
		t.Fatal(err)
	}
	var reply struct {
		Data  json.RawMessage
		Error *struct{ Message, Key string }
	}
	if err := json.Unmarshal(Call(name, text), &reply); err != nil {
		t.Fatal(err)
	}
	if reply.Error != nil {
		return reply.Error.Message
	}
	if err := json.Unmarshal(reply.Data, out); err != nil {
		t.Fatal(err)
	}
	return ""
}

type answered struct {
	Document document.Document
	View     struct {
		Valid    bool
		Headline []struct{ ID, Value, Unit string }
		Fields   []struct{ ID, Text, Error, Beside, Unit string }
		Scene    *struct{ Width float64 }
		Plots    []struct{ ID string }
	}
	Job    document.Job
	Item   string
	Notice string
}

var area = map[string]any{"width": 760, "height": 470}

func TestEditAnswersWithAWholeView(t *testing.T) {
	var got answered
	d := cases.First()
	cmd := map[string]any{"op": "set", "values": []any{map[string]any{"field": "fin_height", "text": "1/2 in"}}}
	if e := ask(t, "edit", map[string]any{"document": d, "commands": []any{cmd}, "sheet": area, "quantity": "used_area"}, &got); e != "" {
		t.Fatal(e)
	}
	if got.Document.Fields["fin_height"].Text != "1/2 in" || !got.View.Valid || len(got.View.Headline) == 0 || got.View.Scene == nil || len(got.View.Plots) != 3 {
		t.Errorf("%+v", got)
	}
}

func TestWrongEntryLeavesFiguresOut(t *testing.T) {
	var got answered
	cmd := map[string]any{"op": "set", "values": []any{map[string]any{"field": "tube_od", "text": "wide"}}}
	if e := ask(t, "edit", map[string]any{"document": cases.First(), "commands": []any{cmd}, "sheet": area}, &got); e != "" {
		t.Fatal(e)
	}
	if got.View.Valid || got.View.Scene != nil || got.View.Headline != nil {
		t.Error("a wrong entry still has figures")
	}
}

func TestStart(t *testing.T) {
	saved := cases.List()[1].Document()
	text, err := document.Save([]document.Document{saved})
	if err != nil {
		t.Fatal(err)
	}
	for name, c := range map[string]struct {
		saved, title string
		notice       bool
	}{
		"empty browser": {"", cases.First().Title, false},
		"saved":         {string(text), saved.Title, false},
		"damaged":       {string(text)[:200], cases.First().Title, true},
	} {
		var got answered
		if e := ask(t, "start", map[string]any{"saved": c.saved, "sheet": area}, &got); e != "" {
			t.Fatal(e)
		}
		if got.Document.Title != c.title || (got.Notice != "") != c.notice {
			t.Errorf("%s: %q, notice %q", name, got.Document.Title, got.Notice)
		}
	}
}

// What was entered and not answered before the page went is taken again, in the design that was in hand.
func TestStartTakesWhatWasPending(t *testing.T) {
	list := cases.List()
	text, err := json.Marshal(map[string]any{
		"format": document.Format, "version": 3, "hand": 1, "looked": false, "time": "2026-11-27T02:40:00Z",
		"designs": []any{list[0].Document(), list[1].Document(), list[2].Document()},
	})
	if err != nil {
		t.Fatal(err)
	}
	set := map[string]any{"op": "set", "values": []any{map[string]any{"field": "fin_height", "text": "13 mm"}}}
	var got answered
	if e := ask(t, "start", map[string]any{"saved": string(text), "pending": []any{set}, "sheet": area}, &got); e != "" {
		t.Fatal(e)
	}
	if got.Document.Title != list[1].Title || got.Document.Fields["fin_height"].Text != "13 mm" {
		t.Errorf("in hand is %q with %v", got.Document.Title, got.Document.Fields["fin_height"])
	}
	if designs := got.Job.Designs(); got.Item != "2" || len(designs) != 3 || designs[0].Title != list[0].Title || designs[2].Title != list[2].Title {
		t.Errorf("item %s is in hand of %d", got.Item, len(designs))
	}

	// They are of no use to another design.
	if e := ask(t, "start", map[string]any{"saved": string(text)[:200], "pending": []any{set}, "sheet": area}, &got); e != "" {
		t.Fatal(e)
	}
	if got.Document.Fields["fin_height"].Text != cases.First().Fields["fin_height"].Text {
		t.Errorf("the first example has a fin height of %v", got.Document.Fields["fin_height"])
	}
}

func TestLink(t *testing.T) {
	linked := cases.List()[2].Document()
	link, err := document.Save([]document.Document{linked})
	if err != nil {
		t.Fatal(err)
	}
	var got answered
	if e := ask(t, "open", map[string]any{"text": string(link), "link": true}, &got); e != "" || got.Document.Title != linked.Title {
		t.Errorf("%q, %s", got.Document.Title, e)
	}
	for _, bad := range []string{"?", string(link)[:len(link)/2]} {
		if e := ask(t, "open", map[string]any{"text": bad, "link": true}, &got); !strings.Contains(e, "damaged or incomplete") {
			t.Errorf("a damaged link says %q", e)
		}
	}
}

func TestSaveAndOpen(t *testing.T) {
	d := cases.List()[1].Document()
	var file struct{ Text string }
	if e := ask(t, "save", map[string]any{"job": document.JobOf([]document.Document{d})}, &file); e != "" {
		t.Fatal(e)
	}
	var got answered
	if e := ask(t, "open", map[string]any{"text": file.Text, "sheet": area}, &got); e != "" || got.Document.Title != d.Title {
		t.Errorf("opened %q: %s", got.Document.Title, e)
	}
	if e := ask(t, "open", map[string]any{"text": "od;wall\n1;2", "sheet": area}, &got); !strings.Contains(e, "not a design file") {
		t.Errorf("a table opens with %q", e)
	}
}

func TestFilename(t *testing.T) {
	for _, c := range []struct{ kind, name, want string }{
		{"design", "Oil cooler 1/2", "Oil-cooler-1-2-2026-11-27.design.json"},
		{"design", "", "finned-tube-2026-11-27.design.json"},
		{"shop", "Our works", "Our-works-2026-11-27.shop.json"},
		{"page", "Oil cooler 1/2", "Oil-cooler-1-2-2026-11-27.html"},
	} {
		var got struct{ Filename string }
		if e := ask(t, "filename", map[string]any{"kind": c.kind, "name": c.name, "date": "2026-11-27"}, &got); e != "" || got.Filename != c.want {
			t.Errorf("%q, want %q (%s)", got.Filename, c.want, e)
		}
	}
	for _, args := range []map[string]any{{"kind": "recipe", "name": "", "date": "2026-11-27"}, {"kind": "shop", "name": "", "date": "today"}} {
		if ask(t, "filename", args, &struct{}{}) == "" {
			t.Errorf("%v makes a name", args)
		}
	}
}

// The first answer of a page comes before there is anything to draw on.
func TestNoSheetNoScene(t *testing.T) {
	var got answered
	if e := ask(t, "edit", map[string]any{"document": cases.First(), "commands": nil, "quantity": "used_area"}, &got); e != "" {
		t.Fatal(e)
	}
	if !got.View.Valid || len(got.View.Headline) == 0 || got.View.Scene != nil || got.View.Plots != nil {
		t.Errorf("%+v", got)
	}
}

func TestMap(t *testing.T) {
	var m struct {
		Columns, Rows int
		Bands         []byte
		Colours       []string
	}
	if e := ask(t, "map", map[string]any{"document": cases.First(), "quantity": "used_area"}, &m); e != "" || len(m.Bands) != m.Columns*m.Rows || len(m.Colours) > 7 {
		t.Errorf("map of %d x %d with %d cells: %s", m.Columns, m.Rows, len(m.Bands), e)
	}
	if e := ask(t, "map", map[string]any{"document": cases.First(), "quantity": "luck"}, &m); e == "" {
		t.Error("a map of luck")
	}
}

func TestWorkingAndSVG(t *testing.T) {
	var w struct{ Symbols, Numbers, Source string }
	if e := ask(t, "working", map[string]any{"document": cases.First(), "figure": "total_area"}, &w); e != "" || !strings.HasPrefix(w.Numbers, "A = 1.62") {
		t.Errorf("%+v %s", w, e)
	}
	var s struct{ SVG string }
	if e := ask(t, "svg", map[string]any{"document": cases.First(), "sheet": area}, &s); e != "" || !strings.HasPrefix(s.SVG, "<svg") {
		t.Errorf("%.40q %s", s.SVG, e)
	}
	for _, c := range cases.List() {
		var got answered
		if e := ask(t, "example", map[string]any{"id": c.ID, "sheet": area}, &got); e != "" || got.Document.Title != c.Title {
			t.Errorf("%s: %s", c.ID, e)
		}
	}
}

func TestStrictArguments(t *testing.T) {
	for name, text := range map[string]string{
		"edit":    `{"document":{},"commands":null,"sheet":{}}`, // no fields
		"working": `{"document":{},"figur":"x"}`,
		"nothing": `{}`,
		"start":   `[`,
	} {
		if got := string(Call(name, []byte(text))); !strings.HasPrefix(got, `{"error":`) {
			t.Errorf("%s %s: %.80s", name, text, got)
		}
	}
}

// Nothing that comes in makes a reader call itself without end: in a browser the stack is short.
func TestNestingIsRefused(t *testing.T) {
	deep := strings.Repeat("[", 9000)
	for name, args := range map[string]any{
		"open":      map[string]any{"text": deep},
		"start":     map[string]any{"saved": deep, "link": `{"format":` + deep},
		"shop":      map[string]any{"shop": `{"format":` + deep},
		"edit":      json.RawMessage(`{"document":` + deep + strings.Repeat("]", 9000) + `}`),
		"shop_edit": map[string]any{"shop": `{"format":` + deep, "command": entering("name", deep)},
	} {
		text, err := json.Marshal(args)
		if err != nil {
			t.Fatal(err)
		}
		got := string(Call(name, text))
		if strings.Contains(got, "error.fault") || name != "start" && !strings.HasPrefix(got, `{"error"`) {
			t.Errorf("%s: %.200s", name, got)
		}
	}
}

// A fault of the engine is told apart from a question that it does not know.
func TestCrashIsNamed(t *testing.T) {
	methods["crash"] = with[struct{}, drawn](func(struct{}) (drawn, error) { panic("on purpose") })
	methods["ungenerated"] = with[struct{}, int](func(struct{}) (int, error) { return 1, nil })
	methods["infinite"] = with[struct{}, plots.Map](func(struct{}) (plots.Map, error) { return plots.Map{Area: [4]float64{math.Inf(1)}}, nil })
	defer func() { delete(methods, "crash"); delete(methods, "infinite"); delete(methods, "ungenerated") }()
	for name, key := range map[string]string{"crash": "error.fault", "infinite": "error.fault", "ungenerated": "error.fault", "nothing": "error.not_known"} {
		if got := string(Call(name, []byte("{}"))); !strings.Contains(got, `"key":"`+key+`"`) {
			t.Errorf("%s: %s", name, got)
		}
	}
}

func FuzzCall(f *testing.F) {
	for name := range methods {
		f.Add(name, []byte(`{"document":{},"sheet":{"width":1e308,"height":-1}}`))
	}
	f.Add("edit", []byte(`{"document":null,"commands":[{"op":"set","values":[{"field":"tube_od","number":1e308,"unit":"ft"}]}]}`))
	f.Fuzz(func(t *testing.T, name string, args []byte) {
		if !json.Valid(Call(name, args)) {
			t.Fatal("not JSON")
		}
	})
}

func BenchmarkEdit(b *testing.B) {
	for _, section := range []string{"surface", "heat"} {
		args, err := json.Marshal(map[string]any{
			"document": cases.First(), "sheet": area, "section": section, "quantity": "used_area",
			"commands": []any{map[string]any{"op": "set", "values": []any{map[string]any{"field": "fin_height", "number": 14.2, "unit": "mm"}}}},
		})
		if err != nil {
			b.Fatal(err)
		}
		b.Run(section, func(b *testing.B) {
			for b.Loop() {
				Call("edit", args)
			}
		})
	}
}

// Each of several commands can be undone, though one answer shows what they give together.
func TestSeveralCommandsAreOneAnswer(t *testing.T) {
	height := func(text string) any {
		return map[string]any{"op": "set", "values": []any{map[string]any{"field": "fin_height", "text": text}}}
	}
	var got struct {
		answered
		Steps []document.Document
	}
	if e := ask(t, "edit", map[string]any{"document": cases.First(), "commands": []any{height("12 mm"), height("13 mm"), height("14 mm")}}, &got); e != "" {
		t.Fatal(e)
	}
	if len(got.Steps) != 2 || got.Steps[0].Fields["fin_height"].Text != "12 mm" || got.Steps[1].Fields["fin_height"].Text != "13 mm" || got.Document.Fields["fin_height"].Text != "14 mm" {
		t.Errorf("%+v", got.Steps)
	}
}
