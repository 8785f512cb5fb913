package finned

import (
	"math"
	"testing"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/proof"
	"finwright/core/units"
)

// With larger letters the sheet is as large as before, its scales are usual ones, and the disc is drawn to the one that is stated.
func TestLargerLetters(t *testing.T) {
	proof.Proof{Share: 20, Full: 500, Seed: 14}.Run(t, func(c *proof.Case) {
		tb, wh := anyTube(c), roomy[c.Index%len(roomy)]
		o := options(units.SI, wh[0], wh[1])
		o.Letters = 1 + c.Rand.Float64()
		s := Compose(tb, o)
		if got := s.Letters / sheet.TextHeight; math.Abs(got-o.Letters) > 1e-9 {
			c.Errorf("letters are %.3f times as high, want %.3f", got, o.Letters)
		}
		least := leastWidthPx * o.Letters // on which the texts find room
		if got, want := s.Width*ink.PxPerMM, max(wh[0], least); math.Abs(got-want) > 1e-6 {
			c.Errorf("the sheet is %.2f px wide, want %.2f", got, want)
		}
		for _, scale := range []float64{s.Scales.Main, s.Scales.Detail} {
			if usual := snapScale(scale * (1 + 1e-12)); math.Abs(usual/scale-1) > 1e-9 {
				c.Errorf("%g is no usual scale", scale)
			}
		}
		for _, v := range s.Views {
			if want := scaleText(o.Text, map[bool]float64{true: s.Scales.Detail, false: s.Scales.Main}[v.ID == "detail"]); v.ScaleText != want {
				c.Errorf("%s says %s and is %s", v.ID, v.ScaleText, want)
			}
		}
		far := 0.0
		l := arrange(s.Width/o.Letters, s.Height/o.Letters, false)
		m := ink.At((l.across.x+l.across.w/2)*o.Letters, l.centreY*o.Letters)
		for _, line := range s.Lines {
			if line.Stroke != ink.Thick || len(line.Points) < 40 {
				continue
			}
			for _, p := range line.Points {
				far = max(far, ink.Distance(p, m))
			}
		}
		if want := tb.FinOD().Millimetres() / 2 * s.Scales.Main; math.Abs(far-want) > 0.01 {
			c.Errorf("the disc reaches %.3f mm, to scale it were %.3f", far, want)
		}
		again := o
		again.Hold = s.Scales
		if held := Compose(tb, again).Scales; math.Abs(held.Main/s.Scales.Main-1) > 1e-9 || math.Abs(held.Detail/s.Scales.Detail-1) > 1e-9 {
			c.Errorf("held at %+v it is drawn at %+v", s.Scales, held)
		}
	})
}
