package ink

import "testing"

func TestParseColour(t *testing.T) {
	for text, want := range map[string]RGBA{
		"#ff8000": {1, 128.0 / 255, 0, 1}, "rgb(255, 0, 51)": {1, 0, 0.2, 1}, "rgba(0, 0, 255, 0.5)": {0, 0, 1, 0.5},
	} {
		if got, err := ParseColour(text); err != nil || got != want {
			t.Errorf("%s: %v %v", text, got, err)
		}
	}
	for _, text := range []string{"", "#ff", "#gggggg", "red", "rgb(1, 2)", "rgb(a, b, c)"} {
		if c, err := ParseColour(text); err == nil {
			t.Errorf("%q is %v", text, c)
		}
	}
}
