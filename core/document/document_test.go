package document

import (
	"encoding/json"
	"errors"
	"fmt"
	"reflect"
	"regexp"
	"strings"
	"testing"

	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/units"
)

func text(s string) *string { return &s }

func number(x float64) *float64 { return &x }

func edited(t *testing.T, d Document, c Command) Document {
	t.Helper()
	out, err := Edit(d, c)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func TestEditLeavesTheOldDocument(t *testing.T) {
	a := New()
	b := edited(t, a, Command{Op: "set", Values: []Value{{Field: "tube_od", Text: text("1 1/4 in")}}})
	b = edited(t, b, Command{Op: "add_span"})
	if !reflect.DeepEqual(a, New()) {
		t.Error("the document given was changed: undo would lose it")
	}
	if got := b.Fields["tube_od"]; got != (Entry{"1 1/4 in", Assumed}) {
		t.Errorf("tube_od = %v", got)
	}
	if len(b.Spans) != 1 {
		t.Errorf("%d spans", len(b.Spans))
	}
}

func TestTextsAreKeptAsTyped(t *testing.T) {
	for _, c := range []struct{ in, want string }{
		{"14 BWG", "14 BWG"},
		{"2.11", "2.11 mm"}, // a bare number takes the unit of the day with it
		{"two", "two"},      // a wrong text is kept for its owner to mend
		{"2,108", "2,108"},
	} {
		d := edited(t, New(), Command{Op: "set", Values: []Value{{Field: "tube_wall", Text: text(c.in)}}})
		if got := d.Fields["tube_wall"].Text; got != c.want {
			t.Errorf("%q is kept as %q, want %q", c.in, got, c.want)
		}
	}
}

func TestNumbersFromGripsAndPlots(t *testing.T) {
	for _, c := range []struct {
		sys   units.System
		value Value
		want  string
	}{
		{units.SI, Value{Field: "fin_height", Number: number(12.3456), Unit: "mm"}, "12.3 mm"},
		{units.US, Value{Field: "fin_height", Number: number(12.7), Unit: "mm"}, "1/2 in"},
		{units.US, Value{Field: "fin_pitch", Number: number(2.54), Unit: "mm"}, "10 fins/in"},
		{units.SI, Value{Field: "fin_pitch", Number: number(400), Unit: "fins/m"}, "400 fins/m"},
		{units.SI, Value{Field: "fin_pitch", Steps: 2}, "396 fins/m"},
		{units.SI, Value{Field: "tube_wall", Steps: -1}, "2.1 mm"},
	} {
		d := edited(t, New(), Command{Op: "units", System: c.sys})
		d = edited(t, d, Command{Op: "set", Values: []Value{c.value}})
		if got := d.Fields[c.value.Field].Text; got != c.want {
			t.Errorf("%s: %q, want %q", c.value.Field, got, c.want)
		}
	}
}

// So many supports of a width are ordinary bare spans, as far from one another as from the tube's ends.
func TestEvenSpans(t *testing.T) {
	d := edited(t, New(), Command{Op: "set", Values: []Value{{Field: "tube_length", Text: text("6000 mm")}}})
	d = edited(t, d, Command{Op: "add_span"})
	for _, c := range []struct {
		typed  string
		width  Entry
		centre []string
	}{
		{"2 x 80 mm", Entry{"80 mm", Assumed}, []string{"2000 mm", "4000 mm"}},
		{" 3×2.5 in ", Entry{"2.5 in", Assumed}, []string{"1500 mm", "3000 mm", "4500 mm"}},
		{"1", Entry{"60 mm", House}, []string{"3000 mm"}},
		{"1 * 75", Entry{"75 mm", Assumed}, []string{"3000 mm"}},
	} {
		got := edited(t, d, Command{Op: "even_spans", Text: c.typed})
		var want []Span
		for _, centre := range c.centre {
			want = append(want, Span{Centre: Entry{centre, Assumed}, Width: c.width})
		}
		if !reflect.DeepEqual(got.Spans, want) {
			t.Errorf("%q: %v, want %v", c.typed, got.Spans, want)
		}
	}
	if got := edited(t, d, Command{Op: "even_spans", Text: " "}); !reflect.DeepEqual(got, d) {
		t.Error("an empty text changes something")
	}
	for _, typed := range []string{"0", "41", "x 60 mm", "-2", "60 mm", "3 x wide", "3 x 60 kg", strings.Repeat("9", 400), "2 x 1,234"} {
		got, err := Edit(d, Command{Op: "even_spans", Text: typed})
		var refused *OpenError
		if !errors.As(err, &refused) || refused.Key != "error.even_spans" || len(got.Spans) != len(d.Spans) {
			t.Errorf("%q: %v, %d spans", typed, err, len(got.Spans))
		}
	}
}

func TestEditRefusesNonsense(t *testing.T) {
	for _, c := range []Command{
		{Op: "explode"},
		{Op: "set", Values: []Value{{Field: "no_such", Text: text("1")}}},
		{Op: "set", Values: []Value{{Field: "tube_od", Number: number(1), Unit: "kg"}}},
		{Op: "set", Values: []Value{{Field: "tube_od"}}},
		{Op: "set", Values: []Value{{Field: "fin_type", Number: number(1), Unit: "mm"}}},
		{Op: "units", System: "cgs"},
		{Op: "origin", Field: "tube_od", Origin: "gossip"},
		{Op: "remove_span", Index: 3},
		{Op: "span", Index: -1, Part: "centre"},
	} {
		if _, err := Edit(New(), c); err == nil {
			t.Errorf("%+v was accepted", c)
		}
	}
}

func TestOriginOfAllAssumed(t *testing.T) {
	d := edited(t, New(), Command{Op: "set", Values: []Value{{Field: "tube_od", Text: text("30 mm")}}})
	d = edited(t, d, Command{Op: "origin", Origin: Customer})
	if d.Fields["tube_od"].Origin != Customer || d.Fields["tube_wall"].Origin != House {
		t.Error("marking what was assumed as the customer's touched the wrong fields")
	}
}

func TestLongTextIsCut(t *testing.T) {
	d := edited(t, New(), Command{Op: "title", Text: strings.Repeat("é", 1000)})
	if len(d.Title) > maxText || !json.Valid([]byte(`"`+d.Title+`"`)) {
		t.Errorf("title of %d bytes", len(d.Title))
	}
}

func TestLongNumberCanStillBeSaved(t *testing.T) {
	d := edited(t, New(), Command{Op: "set", Values: []Value{{Field: "tube_od", Text: text(strings.Repeat("1", 300))}}})
	if err := Check(d); err != nil {
		t.Error(err)
	}
}

// listOf is a file of a version that held a list of whole designs.
func listOf(version int, designs ...Document) string {
	text, err := json.Marshal(map[string]any{"format": Format, "version": version, "designs": designs})
	if err != nil {
		panic(err)
	}
	return string(text)
}

func TestEnvelopeRoundTrip(t *testing.T) {
	d := edited(t, New(), Command{Op: "add_span"})
	saved, err := Save([]Document{d, New()})
	if err != nil {
		t.Fatal(err)
	}
	got, err := Open(saved)
	if err != nil || !reflect.DeepEqual(got, []Document{d, New()}) {
		t.Errorf("opened %v, %v", got, err)
	}
}

func TestOpenRefuses(t *testing.T) {
	saved, _ := Save([]Document{New()})
	good := string(saved)
	version := fmt.Sprintf(`"version": %d`, Version)
	for name, c := range map[string]struct{ text, key string }{
		"not json":      {"<html>", "open.not_json"},
		"other json":    {`{"a":1}`, "open.not_design"},
		"newer":         {strings.Replace(good, version, `"version": 999`, 1), "open.newer"},
		"no designs":    {`{"format":"finwright-design","version":1,"designs":[]}`, "open.count"},
		"items of old":  {`{"format":"finwright-design","version":2,"items":[{}]}`, "open.count"},
		"unknown field": {strings.Replace(good, `"tube_od"`, `"tube_of"`, 1), "open.shape"},
		"missing field": {`{"format":"finwright-design","version":1,"designs":[{"title":"","units":"si","fields":{},"spans":[]}]}`, "open.shape"},
		"bad origin":    {strings.Replace(good, `"origin": "house"`, `"origin": "rumour"`, 1), "open.shape"},
		"bad units":     {strings.Replace(good, `"units": "si"`, `"units": "cgs"`, 1), "open.shape"},
		"extra key":     {strings.Replace(good, `"title"`, `"macro":"x","title"`, 1), "open.shape"},
	} {
		_, err := Open([]byte(c.text))
		var oe *OpenError
		if !errors.As(err, &oe) || oe.Key != c.key {
			t.Errorf("%s: %v, want %s", name, err, c.key)
		}
	}
}

// An older file is lifted one version at a time, then checked like any other.
func TestMigrationRunsInOrder(t *testing.T) {
	old := strings.Replace(listOf(1, New()), `"tube_od"`, `"od"`, 1)
	rename := func(from, to string) func(map[string]any) {
		return func(raw map[string]any) {
			fields := raw["fields"].(map[string]any)
			fields[to] = fields[from]
			delete(fields, from)
		}
	}
	steps := []func(map[string]any){rename("od", "outside"), rename("outside", "tube_od")}
	got, err := open([]byte(old), 3, steps)
	if err != nil || !reflect.DeepEqual(got.Job.Designs(), []Document{New()}) {
		t.Errorf("migrated to %v, %v", got, err)
	}
	if len(migrations) != Version-1 {
		t.Errorf("version %d needs %d migrations, there are %d", Version, Version-1, len(migrations))
	}
}

// A design of version 1 had no heat: it keeps its own film coefficient and takes the house's bank.
func TestVersionOneKeepsItsFilm(t *testing.T) {
	d := New()
	for _, f := range field.Fields {
		if f.Since == 2 {
			delete(d.Fields, f.ID)
		}
	}
	got, err := Open([]byte(listOf(1, d)))
	if err != nil || got[0].Fields["film_source"].Text != "given" || got[0].Fields["rows"].Text == "" {
		t.Errorf("opened %v, %v", got, err)
	}
}

// saved are files for a fuzzer to change: this version's and older ones, and of one, two and no spans.
var saved = func() (files []string) {
	plain, spanned := New(), New()
	spanned.Units = units.US
	for range 2 {
		spanned.Spans = append(spanned.Spans, nextSpan(spanned))
	}
	for version := 1; version <= Version; version++ {
		for _, designs := range [][]Document{{plain}, {spanned, plain}} {
			if version < itemsSince {
				files = append(files, listOf(version, designs...))
				continue
			}
			text, err := Save(designs)
			if err != nil {
				panic(err)
			}
			files = append(files, string(text))
		}
	}
	return append(files, "{}", "[]", `{"format":"finwright-shop","version":1}`, "<html>", "a;b\n1;2")
}()

// decoders are words of those who read JSON, not of those who read the page.
var decoders = regexp.MustCompile(`json|invalid character|unmarshal|struct|Go |document\.|EOF|\{|%!`)

// openable holds a text to this: it is refused in words for people, or it is designs that are whole and save to the same.
func openable(t testing.TB, text string) {
	f, err := OpenFile([]byte(text))
	if err != nil {
		var why *OpenError
		if !errors.As(err, &why) {
			t.Fatalf("%v: %s", err, text)
		}
		said := message.English().Render(why.Message, units.SI)
		if name, _ := why.Arg("what").(message.Message); name.Arg("name") == nil && decoders.MatchString(said) {
			t.Errorf("%q is said of %s", said, text)
		}
		return
	}
	designs := f.Job.Designs()
	for _, d := range designs {
		if err := Check(d); err != nil {
			t.Errorf("opens a design that does not check: %v", err)
		}
	}
	again, err := SaveJob(f.Job)
	if err != nil {
		t.Fatal(err)
	}
	if same, err := Open(again); err != nil || !reflect.DeepEqual(same, designs) {
		t.Errorf("saved and opened again it is another: %v", err)
	}
}

func TestAnyFileIsOpenedOrRefused(t *testing.T) {
	proof.Proof{Share: 500, Full: 2_000_000, Seed: 4}.Run(t, func(c *proof.Case) { openable(c, proof.Text(c.Rand, saved...)) })
}

func FuzzOpen(f *testing.F) {
	for _, text := range saved {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) { openable(t, text) })
}

// Who opens another file is told what it is.
func TestOtherFilesAreNamed(t *testing.T) {
	for text, want := range map[string]string{
		"":                            "empty",
		" \n":                         "empty",
		"\ufeff<!doctype html>":       "web page",
		"%PDF-1.7":                    "PDF",
		"PK\x03\x04…":                 "archive",
		"\x89PNG…":                    "picture",
		"od;wall\n1;2":                "plain text or a table",
		saved[0][:300]:                "breaks off",
		"nul":                         "plain text",
		"null":                        "of data",
		`{"format":"finwright-shop"}`: "capability file",
		`{"format":7}`:                "of data",
		strings.Repeat("[", 9000):     "damaged",
		`{"format":"finwright-design","version":1,"designs":[7]}`: "not put together",
		strings.Replace(saved[4], `"tube_od"`, `"tube_of"`, 1):    "“tube_of” is no entry",
		strings.Replace(saved[4], `"1 in"`, `1`, 1):               "not put together",
	} {
		_, err := Open([]byte(text))
		var why *OpenError
		if !errors.As(err, &why) {
			t.Errorf("%.40q opens: %v", text, err)
			continue
		}
		if said := message.English().Render(why.Message, units.SI); !strings.Contains(said, want) {
			t.Errorf("%.40q: %q does not say %q", text, said, want)
		}
	}
}

// A design of version 2 said nothing of its making: the shop's own figures hold.
func TestVersionTwoTakesTheShopsMaking(t *testing.T) {
	d := New()
	for _, f := range field.Fields {
		if f.Since == 3 {
			delete(d.Fields, f.ID)
		}
	}
	got, err := Open([]byte(listOf(2, d)))
	if err != nil || !reflect.DeepEqual(got, []Document{New()}) {
		t.Errorf("opened %v, %v", got, err)
	}
}

// Several changes are one command, so that undo takes them back together.
func TestAllCommandsOrNone(t *testing.T) {
	one := Command{Op: "set", Values: []Value{{Field: "tube_od", Text: text("30 mm")}}}
	d := edited(t, New(), Command{Op: "add_span"})
	d = edited(t, d, Command{Op: "all", Commands: []Command{one, {Op: "span", Part: "width", Text: "80 mm"}}})
	if d.Fields["tube_od"].Text != "30 mm" || d.Spans[0].Width.Text != "80 mm" {
		t.Errorf("%v, %v", d.Fields["tube_od"], d.Spans[0])
	}
	for _, c := range []Command{{Op: "all", Commands: []Command{one, {Op: "remove_span", Index: 9}}}, {Op: "all", Commands: []Command{{Op: "all"}}}} {
		if _, err := Edit(New(), c); err == nil {
			t.Errorf("%+v was accepted", c)
		}
	}
}
