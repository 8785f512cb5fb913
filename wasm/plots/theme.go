package plots

import (
	"fmt"
	"math"
)

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

// series is the colour of a figure.
func (t Theme) series(figure string) string {
	if colour, ok := t.Series[figure]; ok {
		return colour
	}
	return t.Ink
}

// Steps returns n colours from light yellow to dark blue, evenly spaced in lightness, so that they stay in order for
// a reader who sees no hue. Valid: n >= 1.
//
// Source: the colour space is B. Ottosson, "A perceptual color space for image processing", 2020; the two ends are
// our own choice.
func Steps(n int) []string {
	light, dark := [3]float64{0.93, 0.002, 0.105}, [3]float64{0.33, -0.012, -0.085}
	colours := make([]string, n)
	for i := range colours {
		t := 0.0
		if n > 1 {
			t = float64(i) / float64(n-1)
		}
		var lab [3]float64
		for c := range lab {
			lab[c] = light[c] + t*(dark[c]-light[c])
		}
		colours[i] = hex(lab)
	}
	return colours
}

// hex turns a lightness and two opponent axes into a colour of the screen.
func hex(lab [3]float64) string {
	l := cube(lab[0] + 0.3963377774*lab[1] + 0.2158037573*lab[2])
	m := cube(lab[0] - 0.1055613458*lab[1] - 0.0638541728*lab[2])
	s := cube(lab[0] - 0.0894841775*lab[1] - 1.2914855480*lab[2])
	return fmt.Sprintf("#%02x%02x%02x",
		channel(4.0767416621*l-3.3077115913*m+0.2309699292*s),
		channel(-1.2684380046*l+2.6097574011*m-0.3413193965*s),
		channel(-0.0041960863*l-0.7034186147*m+1.7076147010*s))
}

func cube(x float64) float64 { return x * x * x }

// channel encodes a linear intensity, clipped to what a screen shows.
func channel(linear float64) byte {
	linear = math.Min(math.Max(linear, 0), 1)
	encoded := 12.92 * linear
	if linear > 0.0031308 {
		encoded = 1.055*math.Pow(linear, 1/2.4) - 0.055
	}
	return byte(math.Round(255 * encoded))
}
