package message

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"finwright/core/units"
)

// with returns a catalogue of other texts in English.
func with(texts map[string]string) Catalogue {
	c := *English().language
	c.texts = texts
	return Catalogue{&c}
}

func TestRender(t *testing.T) {
	c := with(map[string]string{"too_small": "{name}: at least {limit}, {n} times", "name.od": "Tube outside diameter"})
	m := New("too_small", "name", Key("name.od"), "limit", Amount{units.Diameter, 0.03175}, "n", 2)
	for sys, want := range map[units.System]string{
		units.SI: "Tube outside diameter: at least 31.75 mm, 2 times",
		units.US: "Tube outside diameter: at least 1 1/4 in, 2 times",
	} {
		if got := c.Render(m, sys); got != want {
			t.Errorf("%s: %q, want %q", sys, got, want)
		}
	}
	if got := c.Render(Message{}, units.SI); got != "" {
		t.Errorf("no message renders %q", got)
	}
}

// Words go with their number, a text typed is not read as places, and each is filled once.
func TestRenderFillsPlaces(t *testing.T) {
	c := with(map[string]string{"left": "{n} {n|entry needs|entries need} {what}", "typed": "“{text}” is not {accepts}", "open": "a { b", "nought": "{n|one|more}"})
	for want, m := range map[string]Message{
		"1 entry needs care":            New("left", "n", 1, "what", "care"),
		"0 entries need care":           New("left", "n", 0, "what", "care"),
		"12 entries need care":          New("left", "n", Amount{units.Count, 12}, "what", "care"),
		"“{accepts}{text}” is not this": New("typed", "text", "{accepts}{text}", "accepts", "this"),
		"a { b":                         New("open"),
		"more":                          New("nought", "n", 0),
	} {
		if got := c.Render(m, units.SI); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// What is missing is told, and shows its name in the shipped program.
func TestMissingShowsItsName(t *testing.T) {
	old := Missing
	defer func() { Missing = old }()
	var told []string
	Missing = func(what string) { told = append(told, what) }
	c := with(map[string]string{"said": "{a} and {b}"})
	for want, m := range map[string]Message{"never_said": New("never_said"), "a and b": New("said", "b", Key("b"))} {
		if got := c.Render(m, units.SI); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	if len(told) != 3 {
		t.Errorf("told %q", told)
	}
}

func TestEnglishIsClean(t *testing.T) {
	for _, k := range English().Keys() {
		text := English().Text(k)
		if text == "" || strings.TrimSpace(text) != text || strings.Contains(text, "  ") {
			t.Errorf("%s: %q is empty or has loose spaces", k, text)
		}
		if strings.Count(text, "{") != strings.Count(text, "}") {
			t.Errorf("%s: unbalanced places in %q", k, text)
		}
	}
}

// Every language that lies here is one that the build and the engine read, and in the order of its keys.
func TestLanguagesAreReadAndInOrder(t *testing.T) {
	names, err := filepath.Glob("*.txt")
	if err != nil || !slices.Contains(names, "en.txt") {
		t.Fatalf("the languages are %q, %v", names, err)
	}
	for _, name := range names {
		file, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := Load(string(file)); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		last := ""
		for line := range strings.Lines(string(file)) {
			key, _, _ := strings.Cut(line, " ")
			if key <= last {
				t.Errorf("%s: %s stands after %s", name, key, last)
			}
			last = key
		}
	}
}

func TestLoadRefuses(t *testing.T) {
	for name, texts := range map[string]string{"a key alone": "page.title one\nb\n", "an empty line": "page.title one\n\npage.name two\n", "a key twice": "page.title one\npage.title two\n"} {
		if _, err := read(texts); err == nil {
			t.Errorf("%s is loaded", name)
		}
	}
}

// Samples are those that CLDR gives with its rules.
func TestPluralRules(t *testing.T) {
	for _, c := range []struct {
		rule    string
		in, out string
	}{
		{"i = 1 and v = 0", "1 -1", "0 2 1.0 1.5 11"},                                               // English, one
		{"i = 0,1", "0 1 0.0 1.5", "2 17 100"},                                                      // French, one, but for millions
		{"n % 10 = 1 and n % 100 != 11 or v = 2 and f % 100 = 11", "1 21 101 0.11", "11 2 0"},       // as in Latvian
		{"v = 0 and i % 10 = 2..4 and i % 100 != 12..14", "2 3 4 22 104", "0 1 5 12 13 14 112 2.0"}, // Polish, few
		{"n = 3..10,13..19", "3 10 13 19 3.0", "2 11 12 20 3.5"},                                    // Slovenian and Scottish sorts
		{"n % 100 = 11..99", "11 99 111", "10 100 1.1"},                                             // Arabic, many
		{"t != 0", "0.5 1.50", "1 1.0"},
	} {
		for _, number := range strings.Fields(c.in) {
			if holds, ok := rule(c.rule).holds(number); !holds || !ok {
				t.Errorf("%s: not of %s", c.rule, number)
			}
		}
		for _, number := range strings.Fields(c.out) {
			if holds, ok := rule(c.rule).holds(number); holds || !ok {
				t.Errorf("%s: of %s", c.rule, number)
			}
		}
	}
	for _, bad := range []string{"", "one", "n = ", "n == 1", "x = 1", "n % 0 = 1", "n = 1 und v = 0", "n = a..b"} {
		if _, ok := rule(bad).holds("1"); ok {
			t.Errorf("%q is a rule", bad)
		}
	}
}

// What another language leaves out is English; its numbers and plurals are its own.
func TestAnotherLanguage(t *testing.T) {
	c, err := Load("language.number.long 12.345,6\nlanguage.number.short 1.234,5\nlanguage.plural.few n = 2..4\nlanguage.plural.one n = 1\n" +
		"making.turns {turns} {turns|wen|weny|wens}\nerror.range {value}: {low} … {high}\n")
	if err != nil {
		t.Fatal(err)
	}
	turns := func(n float64) Message { return New("making.turns", "turns", Amount{units.Count, n}) }
	layers := func(n int) Message { return New("making.crate", "tubes", n, "layers", n) }
	long := Amount{units.Distance, 1.2345}
	for _, one := range []struct {
		m    Message
		want string
	}{
		{turns(1), "1 wen"},
		{turns(3), "3 weny"},
		{turns(5), "5 wens"},
		{layers(1), "Crate: 1 tube in 1 layer"},
		{layers(3), "Crate: 3 tubes in 3 layers"},
		{New("error.range", "value", Typed("2.5 mm"), "low", long, "high", Amount{units.Weight, 1234.5}), "2,5 mm: 1234,5 mm … 1234 kg"},
	} {
		if got := c.Render(one.m, units.SI); got != one.want {
			t.Errorf("%q, want %q", got, one.want)
		}
	}
	for name, text := range map[string]string{
		"an unknown text": "page.weather fine\n", "no numbers": "language.number.long many\n", "no rule": "language.plural.one once\n", "no text": "page.title\n",
	} {
		if _, err := Load(text); err == nil {
			t.Errorf("%s is loaded", name)
		}
	}
}
