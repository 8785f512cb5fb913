package bridge

import (
	"regexp"
	"strings"
	"testing"

	"finwright/core/field"
	"finwright/core/lesson"
	"finwright/core/proof/tongue"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// unread are members of an answer that no person reads: ids, commands, data, and symbols of units and formulas.
var unread = map[string]bool{
	"document": true, "steps": true, "id": true, "section": true, "state": true, "field": true, "figure": true, "origin": true, "rule": true,
	"command": true, "unit": true, "units": true, "symbols": true, "numbers": true, "result": true, "symbol": true, "shop": true, "path": true,
	"hatch": true, "class": true, "ink": true, "anchor": true, "colours": true, "bands": true, "quantity": true, "key": true, "fields": true,
	"how": true, "see": true, "term": true, "of_fields": true, "of_figures": true, "of_methods": true, "of_symbols": true,
	"svg": true, "kind": true, "grips": true, "at": true, "list": true,
}

// point is a number with a decimal point: in this language the point parts thousands.
var point = regexp.MustCompile(`\d\.(\d|\d\d|\d{4,})\b`)

// read visits every text of an answer that people read.
func read(node any, visit func(string)) {
	switch node := node.(type) {
	case string:
		visit(node)
	case []any:
		for _, one := range node {
			read(one, visit)
		}
	case map[string]any:
		id, _ := node["id"].(string)
		if f, ok := field.Find(id); ok && !f.IsNumber() {
			delete(node, "text") // a choice, or a name that was given
			delete(node, "typed")
		}
		if text, _ := node["text"].(string); node["sort"] != nil && !point.MatchString(text) {
			delete(node, "text") // of a cell: as typed, or the ID of a choice; of a number the decimal sign is the language's
		}
		for key, one := range node {
			if !unread[key] || key == "fields" && one != nil {
				read(one, visit)
			}
		}
	}
}

// Whatever the engine says, it says in the page's language: but for names that were given, and symbols of units.
func TestEveryAnswerIsInTheLanguage(t *testing.T) {
	speak(t, tongue.File())
	given := map[string]bool{"fins": true, "min": true, "per": true, "psi": true, "Btu": true, "MMBtu": true, "mPa": true, "kPa": true, "MPa": true, "ksi": true, "fpi": true, "inH": true}
	names := func(text string) {
		for _, word := range tongue.English(text) {
			given[word] = true
		}
	}
	for _, c := range cases.List() {
		names(c.Title)
	}
	house := shop.House()
	names(house.Name)
	names(house.Currency)
	names(house.Fingerprint())
	names("fast") // is entered below
	for _, l := range house.Lines {
		names(l.Name)
	}
	steps := map[string]bool{}
	for _, s := range house.Steps {
		names(s.Name)
		steps[s.Name] = true // with the number of a standard
	}
	leaves, _ := house.Contents()
	for _, l := range leaves {
		if l.Key == "note" {
			names(l.Text)
			steps[l.Text] = true
		}
	}
	held := func(method string, args map[string]any) map[string]any {
		t.Helper()
		var got map[string]any
		if e := ask(t, method, args, &got); e != "" {
			for _, word := range tongue.English(e) {
				t.Errorf("%s: %q in %q", method, word, e)
			}
		}
		read(got, func(text string) {
			if point.MatchString(text) && !steps[text] {
				t.Errorf("%s: a decimal point in %q", method, text)
			}
			for _, word := range tongue.English(strings.TrimPrefix(text, "{own|")) { // a style of the chart's
				if !given[word] {
					t.Errorf("%s: %q in %q", method, word, text)
				}
			}
		})
		return got
	}
	for i, c := range cases.List() {
		if i > 2 {
			break
		}
		for _, section := range []string{"surface", "heat", "making"} {
			args := map[string]any{"document": c.Document(), "commands": nil, "sheet": area, "section": section, "quantity": rating.AreaRatio, "room": map[string]any{"wide": 900, "card": 300}}
			view, _ := held("edit", args)["view"].(map[string]any)
			headline, _ := view["headline"].([]any)
			if len(headline) == 0 {
				t.Fatalf("%s: no figures", c.ID)
			}
			if i > 0 {
				continue
			}
			for _, f := range headline {
				held("working", map[string]any{"document": c.Document(), "section": section, "figure": f.(map[string]any)["id"]})
			}
		}
	}
	held("map", map[string]any{"document": cases.First(), "quantity": rating.AreaRatio})
	held("open", map[string]any{"text": "?", "sheet": area})
	held("terms", map[string]any{})
	held("lessons", map[string]any{"units": "si"})
	for _, x := range lesson.Exercises {
		args := map[string]any{"lesson": x.ID, "units": "si"}
		held("lesson_answer", args)
		held("lesson_guess", map[string]any{"lesson": x.ID, "units": "si", "guess": 0})
		held("lesson_check", map[string]any{"lesson": x.ID, "document": x.Document("", units.SI), "typed": "1"})
	}
	for _, s := range lesson.Stories {
		held("stories", map[string]any{"document": cases.First(), "story": s.ID})
	}
	held("shop_edit", map[string]any{"shop": "", "command": entering("rates/line", "fast")})
}
