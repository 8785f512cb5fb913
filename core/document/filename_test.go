package document

import (
	"strings"
	"testing"
)

func TestFileName(t *testing.T) {
	for name, want := range map[string]string{
		"Oil cooler":              "Oil-cooler-2026-11-27.x.json",
		"":                        "tube-2026-11-27.x.json",
		"../../etc/passwd":        "etc-passwd-2026-11-27.x.json",
		`C:\con<>:"|?*`:           "C-con-2026-11-27.x.json",
		"con":                     "con-2026-11-27.x.json",
		"  …  ":                   "tube-2026-11-27.x.json",
		"Kühler 1½ in, 90°\x00":   "Kühler-1-in-90-2026-11-27.x.json",
		strings.Repeat("ab ", 90): strings.Repeat("ab-", 19) + "ab-" + "2026-11-27.x.json",
	} {
		got, ok := FileName(name, "tube", "2026-11-27", ".x.json")
		if !ok || got != strings.ReplaceAll(want, "--", "-") {
			t.Errorf("%q: %q, want %q", name, got, want)
		}
	}
	for _, date := range []string{"", "today", "2026-1-1", "2026-11-27/../x"} {
		if got, ok := FileName("a", "b", date, ".json"); ok {
			t.Errorf("date %q makes %q", date, got)
		}
	}
}
