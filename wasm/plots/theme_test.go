package plots

import (
	"math"
	"os"
	"regexp"
	"strconv"
	"testing"
)

// luminance is the relative luminance of "#rrggbb".
//
// Source: Web Content Accessibility Guidelines 2.2, definition of relative luminance.
func luminance(t *testing.T, colour string) float64 {
	t.Helper()
	n, err := strconv.ParseUint(colour[1:], 16, 32)
	if err != nil || len(colour) != 7 {
		t.Fatalf("%q is no colour", colour)
	}
	linear := func(v uint64) float64 {
		c := float64(v&255) / 255
		if c <= 0.04045 {
			return c / 12.92
		}
		return math.Pow((c+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(n>>16) + 0.7152*linear(n>>8) + 0.0722*linear(n)
}

func contrast(t *testing.T, a, b string) float64 {
	x, y := luminance(t, a), luminance(t, b)
	return (math.Max(x, y) + 0.05) / (math.Min(x, y) + 0.05)
}

// The bound for text is success criterion 1.4.3 of the same guidelines.
func TestContrast(t *testing.T) {
	for name, theme := range map[string]Theme{"light": Light, "dark": Dark} {
		colours := []string{theme.Ink, theme.Grey, theme.Accent}
		for _, c := range theme.Series {
			colours = append(colours, c)
		}
		for _, c := range colours {
			if got := contrast(t, c, theme.Paper); got < 4.5 {
				t.Errorf("%s: %s has a contrast of %.2f", name, c, got)
			}
		}
	}
	for figure := range Light.Series {
		if Dark.Series[figure] == "" {
			t.Errorf("%s has no colour on dark paper", figure)
		}
	}
}

// The page and its plots use the same inks.
func TestThemesAreThePages(t *testing.T) {
	css, err := os.ReadFile("../../site/css/tokens.css")
	if err != nil {
		t.Fatal(err)
	}
	for token, c := range map[string][2]string{
		"paper": {Light.Paper, Dark.Paper}, "ink": {Light.Ink, Dark.Ink}, "grey": {Light.Grey, Dark.Grey},
		"rule": {Light.Faint, Dark.Faint}, "move": {Light.Accent, Dark.Accent},
	} {
		found := regexp.MustCompile(`--` + token + `: light-dark\((#\w+), (#\w+)\)`).FindSubmatch(css)
		if found == nil || string(found[1]) != c[0] || string(found[2]) != c[1] {
			t.Errorf("--%s is %s in the page, %v in the plots", token, found, c)
		}
	}
}

// Lightness L* of CIE 1976 is another measure than the one the colours are made with.
func TestStepsAreEvenAndInOrder(t *testing.T) {
	for n := 2; n <= 7; n++ {
		steps := Steps(n)
		var lightness []float64
		for _, c := range steps {
			lightness = append(lightness, 116*math.Cbrt(luminance(t, c))-16)
		}
		mean := (lightness[0] - lightness[n-1]) / float64(n-1)
		for i := 1; i < n; i++ {
			if drop := lightness[i-1] - lightness[i]; math.Abs(drop/mean-1) > 0.15 {
				t.Errorf("%d steps: from %s to %s L* falls by %.1f, %.1f on average", n, steps[i-1], steps[i], drop, mean)
			}
		}
	}
	if one := Steps(1); len(one) != 1 {
		t.Errorf("one step has %d colours", len(one))
	}
}
