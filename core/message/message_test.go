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

func TestEnglishIsClean(t *testing.T) {
	for _, k := range English.Keys() {
		text := English[k]
		if text == "" || strings.TrimSpace(text) != text || strings.Contains(text, "  ") {
			t.Errorf("%s: %q is empty or has loose spaces", k, text)
		}
		if strings.Count(text, "{") != strings.Count(text, "}") {
			t.Errorf("%s: unbalanced places in %q", k, text)
		}
	}
}
