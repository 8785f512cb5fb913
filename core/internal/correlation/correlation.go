// Package correlation says what each air-side correlation must answer, worked out apart from core/airside, for tests: of the
// common bank, and of any bank the factor that its formula names without a working of its own.
package correlation

import "math"

// Want is what a correlation must answer.
type Want struct {
	// Vector is the film coefficient [W/(m2 K)] or the pressure drop of a row [Pa] of the cross-check vector, computed
	// independently of this project, to the digits printed.
	Vector float64
	Passes string               // the limits of its range that the vector passes, each after a space
	Factor func(b Bank) float64 // [-] that stands in its formula with no working of its own; nil: none does
}

// Bank is one in its stream, in [m] and [-]. Its root is the outside of the foot where the fin is counted from there.
type Bank struct {
	Root, Tip, Gap, Height, Across, Along, AreaRatio float64
	Rows                                             float64
	InLine                                           bool
	Reynolds, TemperatureRatio                       float64
}

// Films are the wants of film correlations. The vector: ESDU holds it; Briggs and Young had six rows and Re up to 8000; nobody
// welds ten thin fins to the inch; Schmidt states areas of at most twelve times the bare one.
var Films = map[string]Want{
	"briggs_young_1963":          {49.703, " reynolds rows", nil},
	"briggs_young_1963_high_fin": {48.757, " reynolds rows", nil},
	"esdu_86022":                 {48.962, "", nil},
	"ganguli_1985":               {52.697, "", ganguli},
	"schmidt_1963":               {39.25, " area_ratio", schmidt}, // by hand of the formula as remembered: 0.45 x 288.6 x 0.3164 x 0.8897 x 0.02727/0.0254
	"weierman_1976":              {60.15, " fin_count fin_thickness", colburn},
}

// Drops are the wants of pressure drop correlations. The vector: Robinson and Briggs had lower fins.
var Drops = map[string]Want{
	"esdu_86022_drop":      {20.75, "", esdu},
	"ganguli_1985_drop":    {21.50, "", ganguliFriction},
	"robinson_briggs_1966": {17.24, " fin_height", robinsonBriggs},
	"weierman_1976_drop":   {21.58, " fin_count fin_thickness", weierman},
}

func schmidt(b Bank) float64 {
	if b.InLine {
		return 0.30
	}
	return 0.45
}

// ganguli returns the constant of Ganguli, Tung and Taborek for layout and rows.
func ganguli(b Bank) float64 {
	rows := int(min(b.Rows, 4))
	if b.InLine {
		return [5]float64{0, 0.20, 0.20, 0.20, 0.22}[rows]
	}
	return [5]float64{0, 0.20, 0.33, 0.36, 0.38}[rows]
}

// fading is what Weierman's factors have of the rows, and of the pitches.
func fading(b Bank) (rows, pitches float64) {
	return math.Exp(-0.15 * b.Rows * b.Rows), b.Along / b.Across
}

// colburn returns Weierman's factor of heat transfer.
func colburn(b Bank) float64 {
	few, pitches := fading(b)
	return 0.091 * math.Pow(b.Reynolds, -0.25) * (0.35 + 0.65*math.Exp(-0.17*b.Height/b.Gap)) *
		(0.7 + (0.7-0.8*few)*math.Exp(-pitches)) * math.Pow(b.Tip/b.Root, 0.5) * math.Pow(b.TemperatureRatio, 0.25)
}

// The friction factors.

func esdu(b Bank) float64 {
	return 4.567 * math.Pow(b.Reynolds, -0.242) * math.Pow(b.AreaRatio, 0.504) * math.Pow(b.Across/b.Root, -0.376) * math.Pow(b.Along/b.Root, -0.546)
}

func robinsonBriggs(b Bank) float64 {
	return 9.465 * math.Pow(b.Reynolds, -0.316) * math.Pow(b.Across/b.Root, -0.927) * math.Pow(b.Across/math.Hypot(b.Along, b.Across/2), 0.515)
}

func ganguliFriction(b Bank) float64 {
	a, e := (b.Across-b.Tip)/b.Root, b.Reynolds*b.Gap/b.Height
	return (1 + 2*math.Exp(-a/4)/(1+a)) * (0.021 + 27.2/e + 0.29/math.Pow(e, 0.2))
}

func weierman(b Bank) float64 {
	few, pitches := fading(b)
	return (0.075 + 1.85/math.Pow(b.Reynolds, 0.3)) * 0.11 * math.Pow(0.05*b.Across/b.Root, -0.7*math.Pow(b.Height/b.Gap, 0.2)) *
		(1.1 + (1.8-2.1*few)*math.Exp(-2*pitches) - (0.7-0.8*few)*math.Exp(-0.6*pitches)) *
		math.Pow(b.Tip/b.Root, 0.5) * math.Pow(b.TemperatureRatio, -0.25)
}
