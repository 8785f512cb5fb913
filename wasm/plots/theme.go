package plots

import "finwright/core/drawing/ink"

// Theme holds the colours of the page that plots use.
type Theme struct {
	Paper  string
	Ink    string
	Grey   string // axis text and the lines that are not the design's
	Faint  string // rules
	Accent string // what the user can move

	// Series holds a quantity's own colour by the id of its figure; the same in every plot.
	Series map[string]string
}

// The two themes: the page's own colours (site/css/tokens.css) and those of the quantities. Every colour of a line or
// text has a contrast of 4.5 or more on its paper.
var (
	Light = Theme{
		Paper: "#f2f5f4", Ink: "#15222b", Grey: "#55646d", Faint: "#c2ccd0", Accent: "#b3103f",
		Series: map[string]string{"area_ratio": "#1d5a8c", "fin_efficiency": "#735c00", "used_area": "#66489a"},
	}
	Dark = Theme{
		Paper: "#11191e", Ink: "#e2e9ea", Grey: "#98a7ae", Faint: "#33424a", Accent: "#ff869f",
		Series: map[string]string{"area_ratio": "#83baec", "fin_efficiency": "#d9bf58", "used_area": "#bfa9f2"},
	}
)

// Of is the colour of a figure.
func (t Theme) Of(figure string) string {
	if colour, ok := t.Series[figure]; ok {
		return colour
	}
	return t.Ink
}

// Steps returns n colours from light yellow to dark blue, evenly spaced in lightness, so that they stay in order for
// a reader who sees no hue. Valid: n >= 1.
//
// Source: the two ends are our own choice.
func Steps(n int) []string {
	light, dark := [3]float64{0.93, 0.002, 0.105}, [3]float64{0.33, -0.012, -0.085}
	colours := make([]string, n)
	for i := range colours {
		t := 0.0
		if n > 1 {
			t = float64(i) / float64(n-1)
		}
		var lab ink.Oklab
		for c := range lab {
			lab[c] = light[c] + t*(dark[c]-light[c])
		}
		colours[i] = lab.RGBA().Hex()
	}
	return colours
}
