package ink

import (
	"math"
	"testing"
)

// Every step is lighter and yellower than the one before, by about as much: an order that holds without hue, for red-blind
// and green-blind eyes (which keep yellow from blue) and in grey. Each stands out from its paper.
func TestColoursAreInOrder(t *testing.T) {
	for _, dark := range []bool{false, true} {
		var last Oklab
		least, most := math.Inf(1), 0.0
		grey := -1.0
		for step := range HeatSteps {
			c := HeatColour(step, dark)
			lab := toOklab(c)
			if y := luminance(c); y <= grey {
				t.Errorf("step %d is no lighter than the one before", step)
			} else {
				grey = y
			}
			if step > 0 {
				if lab[0] <= last[0] || lab[2] <= last[2] {
					t.Errorf("step %d: %v after %v", step, lab, last)
				}
				d := math.Hypot(math.Hypot(lab[0]-last[0], lab[1]-last[1]), lab[2]-last[2])
				least, most = min(least, d), max(most, d)
			}
			last = lab
			paper, enough := RGBA{0xf2 / 255.0, 0xf5 / 255.0, 0xf4 / 255.0, 1}, 1.6
			if dark {
				enough = 3
				paper = RGBA{0x11 / 255.0, 0x19 / 255.0, 0x1e / 255.0, 1}
			}
			high, low := max(luminance(c), luminance(paper)), min(luminance(c), luminance(paper))
			if contrast := (high + 0.05) / (low + 0.05); contrast < enough {
				t.Errorf("step %d has contrast %.2f", step, contrast)
			}
		}
		if most > 1.5*least {
			t.Errorf("steps from %.3f to %.3f", least, most)
		}
	}
}

func linear(x float32) float64 {
	if x <= 0.04045 {
		return float64(x) / 12.92
	}
	return math.Pow((float64(x)+0.055)/1.055, 2.4)
}

// luminance is that of WCAG 2.
func luminance(c RGBA) float64 {
	return 0.2126*linear(c[0]) + 0.7152*linear(c[1]) + 0.0722*linear(c[2])
}

// toOklab is the other way, with the matrices that Ottosson gives for it.
func toOklab(c RGBA) Oklab {
	r, g, b := linear(c[0]), linear(c[1]), linear(c[2])
	l := math.Cbrt(0.4122214708*r + 0.5363325363*g + 0.0514459929*b)
	m := math.Cbrt(0.2119034982*r + 0.6806995451*g + 0.1073969566*b)
	s := math.Cbrt(0.0883024619*r + 0.2817188376*g + 0.6299787005*b)
	return Oklab{
		0.2104542553*l + 0.7936177850*m - 0.0040720468*s,
		1.9779984951*l - 2.4285922050*m + 0.4505937099*s,
		0.0259040371*l + 0.7827717662*m - 0.8086757660*s,
	}
}

// The screen shows the colours as meant: none is clipped.
func TestColoursAreOnScreen(t *testing.T) {
	for _, want := range []Oklab{{0.38, -0.01, -0.14}, {0.82, 0.015, 0.15}, {0.6, 0.1, 0.01}, {0.55, -0.01, -0.14}, {0.88, 0, 0.15}, {0.73, 0.09, 0.005}} {
		got := toOklab(want.RGBA())
		for i := range want {
			near(t, "colour", got[i], want[i], 2e-3)
		}
	}
}
