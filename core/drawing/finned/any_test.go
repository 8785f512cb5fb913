package finned

import (
	"math"
	"testing"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/proof"
	"finwright/core/tube"
	"finwright/core/units"
)

// anyTube is a tube anywhere within the limits of its entries.
func anyTube(c *proof.Case) tube.Tube {
	between := func(low, high float64) float64 { return low * math.Pow(high/low, c.Rand.Float64()) }
	pick := func(list ...float64) float64 { return list[c.Rand.IntN(len(list))] }
	typ := tube.FinTypes()[c.Rand.IntN(len(tube.FinTypes()))]
	od := between(6, 330)
	wall := max(0.3, min(30, od*between(0.01, 0.49)))
	strip := between(0.1, 6)
	foot := strip * float64(typ.FootLayers())
	if typ == tube.Extruded {
		foot = between(0.1, 10)
	}
	height := min(60, max(1, foot*1.001)+pick(0, between(0.01, 59)))
	pitch := min(50, max(strip*pick(1.001, between(1.001, 100)), 0.5882))
	t := sized(typ, od, min(wall, 0.49*od), height, strip, 25.4/pitch)
	t.Fin.Sleeve = units.Length(foot) * units.Millimetre
	t.Fin.Groove = min(units.Length(between(0.1, 1))*units.Millimetre, t.Wall*0.99)
	t.Fin.Lap = units.Length(pick(0, between(0.1, 10))) * units.Millimetre
	t.Fin.Profile = []tube.Profile{tube.AsMade, tube.Uniform, tube.Linear}[c.Rand.IntN(3)]
	t.Fin.TipGiven = t.Fin.Strip * units.Length(pick(1, between(0.02, 1)))
	return t
}

// Whatever tube on whatever sheet, at whatever scales the page would keep: each number of the drawing is one, and no more is drawn
// than a sheet can show.
func TestAnyTubeIsDrawn(t *testing.T) {
	proof.Proof{Share: 60, Full: 3000, Seed: 6}.Run(t, func(c *proof.Case) {
		tb := anyTube(c)
		size := func() float64 {
			return []float64{0, 1, 60, 250, 320, 400, 800, 1500, 4000, 1e6}[c.Rand.IntN(10)] * (0.8 + 0.4*c.Rand.Float64())
		}
		system := []units.System{units.SI, units.US}[c.Rand.IntN(2)]
		o := options(system, size(), size())
		if c.Rand.IntN(3) == 0 {
			o = warmed(tb, system, o.WidthPx, o.HeightPx)
		}
		if c.Rand.IntN(3) == 0 {
			o.Hold = sheet.Scales{Main: math.Pow(10, 6*c.Rand.Float64()-3), Detail: math.Pow(10, 6*c.Rand.Float64()-3)}
		}
		s := Compose(tb, o)
		points := 0
		check := func(what string, values ...float64) {
			points++
			for _, v := range values {
				if math.IsNaN(v) || math.Abs(v) > 1e6 {
					c.Fatalf("%s at %g: %+v on %g x %g, holding %v", what, v, tb, o.WidthPx, o.HeightPx, o.Hold)
				}
			}
		}
		each := func(what string, path []ink.Point) {
			for _, p := range path {
				check(what, p.X, p.Y)
			}
		}
		for _, shape := range s.Shapes {
			for _, l := range shape.Loops {
				each(string(shape.Class), l)
			}
			for _, e := range shape.Edges {
				each("edge", e)
			}
		}
		for _, l := range s.Lines {
			each(string(l.Stroke), l.Points)
		}
		for _, x := range s.Texts {
			check(x.ID, x.X, x.Y, x.Rotate)
		}
		for _, g := range s.Grips {
			check(g.ID, g.X, g.Y, g.PerMM, g.Value, g.Min, g.Max)
		}
		check("scale", s.Scales.Main, s.Scales.Detail, 1/s.Scales.Main, 1/s.Scales.Detail)
		if points > 40000 {
			c.Errorf("%d points: %+v on %g x %g", points, tb, o.WidthPx, o.HeightPx)
		}
	})
}

// On the smallest sheets, about the shape from which views are stacked, there is room for a detail, with the temperatures' scale and without.
func TestSmallSheetsHaveRoom(t *testing.T) {
	for _, legend := range []bool{false, true} {
		least := leastHeightPx
		if legend {
			least += legendRow * ink.PxPerMM
		}
		for h := least; h < 800; h++ {
			for w := float64(leastWidthPx); w < 900; w += 3 {
				l := arrange(w/ink.PxPerMM, h/ink.PxPerMM, legend)
				if l.detail.h-l.head-detailTop-detailBottom <= 0 || l.disc <= 0 {
					t.Fatalf("%g x %g, scale of temperatures %v: %+v", w, h, legend, l)
				}
			}
		}
	}
}
