package message

import (
	"strings"
	"testing"

	"finwright/core/units"
)

func TestRender(t *testing.T) {
	c := Catalogue{"too_small": "{name}: at least {limit}, {n} times", "name.od": "Tube outside diameter"}
	m := New("too_small", "name", Key("name.od"), "limit", Quantity{units.Diameter, 0.03175}, "n", 2)
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
	c := Catalogue{"left": "{n} {n|entry needs|entries need} {what}", "typed": "“{text}” is not {accepts}", "open": "a { b", "nought": "{n|one|more}"}
	for want, m := range map[string]Message{
		"1 entry needs care":            New("left", "n", 1, "what", "care"),
		"0 entries need care":           New("left", "n", 0, "what", "care"),
		"12 entries need care":          New("left", "n", Quantity{units.Count, 12}, "what", "care"),
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
	c := Catalogue{"said": "{a} and {b}"}
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
		text := English()[k]
		if text == "" || strings.TrimSpace(text) != text || strings.Contains(text, "  ") {
			t.Errorf("%s: %q is empty or has loose spaces", k, text)
		}
		if strings.Count(text, "{") != strings.Count(text, "}") {
			t.Errorf("%s: unbalanced places in %q", k, text)
		}
	}
}

func TestEnglishIsInOrder(t *testing.T) {
	last := ""
	for line := range strings.Lines(texts) {
		key, _, _ := strings.Cut(line, " ")
		if key <= last {
			t.Errorf("%s stands after %s", key, last)
		}
		last = key
	}
}

func TestLoadRefuses(t *testing.T) {
	for name, texts := range map[string]string{"a key alone": "a one\nb\n", "an empty line": "a one\n\nb two\n", "a key twice": "a one\na two\n"} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("%s is loaded", name)
				}
			}()
			mustLoad(texts)
		}()
	}
}
