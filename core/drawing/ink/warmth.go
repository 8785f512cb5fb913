package ink

import (
	"math"
	"strconv"
)

// HeatSteps is how many colours the temperatures' scale has.
const HeatSteps = 9

// HeatColour returns the colour of a step: dark blue for the coldest metal, over rose, to light amber for the hottest.
// Each step is lighter and yellower than the one before, so that they stay in order in grey and for a reader who does not
// tell red from green. On dark paper all of them stand out as marks must, 3 to 1 in contrast (WCAG 2.2, 1.4.11). The colours are our own choice.
func HeatColour(step int, dark bool) RGBA {
	cold, bend, hot := Oklab{0.38, -0.01, -0.14}, Oklab{0.60, 0.20, 0.01}, Oklab{0.82, 0.015, 0.15}
	if dark {
		cold, bend, hot = Oklab{0.55, -0.01, -0.14}, Oklab{0.73, 0.18, 0.01}, Oklab{0.88, 0, 0.15}
	}
	f := float64(step) / (HeatSteps - 1)
	var c Oklab
	for i := range c {
		c[i] = (1-f)*(1-f)*cold[i] + 2*f*(1-f)*bend[i] + f*f*hot[i]
	}
	return c.RGBA()
}

// Oklab is a lightness from 0 to 1 and two opponent axes, green to red and blue to yellow.
//
// Source: B. Ottosson, "A perceptual color space for image processing", 2020.
type Oklab [3]float64

// RGBA returns the colour of the screen, clipped to what it shows.
func (c Oklab) RGBA() RGBA {
	l := c[0] + 0.3963377774*c[1] + 0.2158037573*c[2]
	m := c[0] - 0.1055613458*c[1] - 0.0638541728*c[2]
	s := c[0] - 0.0894841775*c[1] - 1.2914855480*c[2]
	l, m, s = l*l*l, m*m*m, s*s*s
	return RGBA{
		encode(4.0767416621*l - 3.3077115913*m + 0.2309699292*s),
		encode(-1.2684380046*l + 2.6097574011*m - 0.3413193965*s),
		encode(-0.0041960863*l - 0.7034186147*m + 1.7076147010*s), 1,
	}
}

// encode turns a linear intensity into a screen's.
func encode(linear float64) float32 {
	linear = max(0, min(1, linear))
	if linear <= 0.0031308 {
		return float32(12.92 * linear)
	}
	return float32(1.055*math.Pow(linear, 1/2.4) - 0.055)
}

// Hex writes a colour as #rrggbb.
func (c RGBA) Hex() string {
	bits := uint64(1) // before the first digit, so that no nought is dropped
	for _, x := range c[:3] {
		bits = bits<<8 | uint64(math.Round(255*float64(x)))
	}
	return "#" + strconv.FormatUint(bits, 16)[1:]
}
