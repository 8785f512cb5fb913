package finned

import (
	"maps"
	"math"
	"slices"
	"testing"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/proof"
	"finwright/core/tube"
	"finwright/core/units"
)

// Every loop is whole and every outline and hatching can be made of it.
func TestShapesAreWhole(t *testing.T) {
	each(t, func(t testing.TB, s drawn) {
		for _, shape := range s.Shapes {
			for _, loop := range shape.Loops {
				if len(loop) < 3 || math.Abs(ink.Area(loop)) < 1e-6 {
					t.Fatalf("%s: loop of %d points, area %g", shape.Class, len(loop), ink.Area(loop))
				}
			}
			if len(shape.Edges) == 0 {
				t.Fatalf("%s without an edge", shape.Class)
			}
		}
	})
}

func text(t testing.TB, s sheet.Scene, id string) string {
	t.Helper()
	for _, x := range s.Texts {
		if x.ID == id {
			return x.Text
		}
	}
	t.Errorf("no text %s", id)
	return ""
}

// A dimension says what the tube's own methods and the units say.
func TestDimensionsSayWhatTheTubeSays(t *testing.T) {
	each(t, func(t testing.TB, d drawn) {
		tb, s, system := d.tube, d.Scene, d.system
		say := func(l units.Length) string {
			k := units.Diameter
			if l < units.Millimetre {
				k = units.Thickness // a decimal more
			}
			return units.Plain.Figure(k, float64(l), system).Value
		}
		for id, want := range map[string]string{
			"dim-tube_od": "Ø" + say(tb.OD), "dim-fin_od": "Ø" + say(tb.FinOD()),
			"dim-tube_wall": say(tb.Wall), "dim-fin_height": say(tb.Fin.Height),
			"dim-strip_thickness": say(tb.Fin.Strip),
		} {
			if got := text(t, s, id); got != want {
				t.Errorf("%s: %q, want %q", id, got, want)
			}
		}
		if tb.Profile() != tube.Uniform {
			if got, want := text(t, s, "dim-tip_thickness"), say(tb.TipThickness()); got != want {
				t.Errorf("tip: %q, want %q", got, want)
			}
		}
		switch tb.Fin.Type {
		case tube.Embedded:
			text(t, s, "dim-groove_depth")
		case tube.Extruded:
			text(t, s, "dim-sleeve_thickness")
		case tube.OverlapFooted, tube.KnurledOverlap:
			text(t, s, "dim-foot")
		}
	})
}

// On a low sheet the break of a fin is about as high as the thickness of its strip, which is stated all the same.
func TestStripIsStatedBesideABreak(t *testing.T) {
	for _, size := range []string{"on pipe", "thick"} {
		tb := sizes(tube.EdgeWound)[size]
		text(t, Compose(tb, warmed(tb, units.US, 376, 400)), "dim-strip_thickness")
	}
}

// The usual 1 in tube shows every dimension of the views at every size of sheet.
func TestUsualTubeIsFullyDimensioned(t *testing.T) {
	for _, typ := range tube.FinTypes() {
		for _, wh := range sheets {
			s := Compose(example(typ), options(units.SI, wh[0], wh[1]))
			text(t, s, "dim-fin_pitch")
			text(t, s, "dim-gap")
			if len(s.Grips) != 5 {
				t.Errorf("%s: %d grips", typ, len(s.Grips))
			}
		}
	}
}

// changed returns the tube with the field of a grip set to a value.
func changed(tb tube.Tube, field string, mm float64) tube.Tube {
	l := units.Length(mm) * units.Millimetre
	switch field {
	case "fin_height":
		tb.Fin.Height = l
	case "tube_od":
		tb.OD = l
	case "tube_wall":
		tb.Wall = l
	case "fin_pitch":
		tb.Fin.Count = units.PerLength(1 / float64(l))
	case "strip_thickness":
		tb.Fin.Strip = l
	}
	return tb
}

// Where a grip is pulled to, it is found again in the drawing of the tube that results, at the scales it was taken at: also
// where the tube grows beyond its place, as long as its line is not broken off.
func TestGripsFollowThePointer(t *testing.T) {
	const w, h = 760, 470
	place := arrange(w/ink.PxPerMM, h/ink.PxPerMM, false)
	types := tube.FinTypes()
	names := slices.Sorted(maps.Keys(sizes(types[0])))
	all := len(types) * len(names)
	proof.Proof{Share: 12, Full: all}.Run(t, func(c *proof.Case) {
		at := c.Index * 1009 % all
		typ, size := types[at%len(types)], names[at/len(types)]
		tb := sizes(typ)[size]
		tb.Basis = tube.MinimumWall // drawn with its mean wall, pulled by its stated one
		o := options(units.SI, w, h)
		before := Compose(tb, o)
		o.Hold = before.Scales
		for _, g := range before.Grips {
			for _, asked := range []float64{-0.4, 0.4, 3, 12, 40} {
				value := min(g.Max, g.Value+asked*g.PerMM)
				if value < g.Min {
					continue
				}
				pull := (value - g.Value) / g.PerMM
				after := Compose(changed(tb, g.Field, value), o)
				if after.Scales.Main != before.Scales.Main || after.Scales.Detail != before.Scales.Detail {
					c.Errorf("%s/%s %s: scales went from %v to %v", typ, size, g.ID, before.Scales, after.Scales)
				}
				if len(after.Grips) != len(before.Grips) {
					c.Errorf("%s/%s %s: %d of %d grips are left", typ, size, g.ID, len(after.Grips), len(before.Grips))
				}
				x, y := g.X+pull*g.Axis[0], g.Y+pull*g.Axis[1]
				for _, now := range after.Grips {
					slack := 0.12
					switch {
					case now.ID != g.ID:
						continue
					case g.ID == "pitch" && after.Scales.Fin != before.Scales.Fin:
						continue // that fin is no longer in sight
					case g.ID == "tip":
						y = max(y, margin)
					case g.ID == "tube":
						x = max(x, place.across.x)
					case g.ID == "strip":
						slack = 0.4 // as the foot grows with the strip, it is lifted to where the fin is thinner
					}
					// Across its axis a grip may move: the strip's follows the taper's face.
					off := (now.X-x)*g.Axis[0] + (now.Y-y)*g.Axis[1]
					if math.Abs(off) > max(slack*math.Abs(pull), 1e-9) {
						c.Errorf("%s/%s %s: pulled by %g mm, off by %.3f", typ, size, g.ID, pull, off)
					}
					if now.X < 0 || now.Y < 0 || now.X > after.Width || now.Y > after.Height {
						c.Errorf("%s/%s %s: pulled by %g mm, it leaves the sheet", typ, size, g.ID, pull)
					}
				}
			}
		}
	})
}

// At a held scale a higher fin is drawn higher, up to where its place ends, and nothing is drawn beyond.
func TestHeldScaleBreaksOffWhatDoesNotFit(t *testing.T) {
	types := tube.FinTypes()
	names := slices.Sorted(maps.Keys(sizes(types[0])))
	all := len(types) * len(names) * len(sheets)
	proof.Proof{Share: 24, Full: all}.Run(t, func(c *proof.Case) {
		at := c.Index * 1009 % all
		typ, size, wh := types[at%len(types)], names[at/len(types)%len(names)], sheets[at/len(types)/len(names)]
		tb := sizes(typ)[size]
		o := options(units.SI, wh[0], wh[1])
		o.Hold = Compose(tb, o).Scales
		place := arrange(wh[0]/ink.PxPerMM, wh[1]/ink.PxPerMM, false)
		last := 0.0
		for _, f := range []float64{1, 1.5, 3, 8} {
			grown := tb
			grown.Fin.Height *= units.Length(f)
			grown.OD *= units.Length(math.Sqrt(f))
			s := Compose(grown, o)
			reach := 0.0
			within := func(what string, path []ink.Point) {
				for _, p := range path {
					if p.X < 0 || p.Y < 0 || p.X > s.Width || p.Y > s.Height {
						c.Fatalf("%s/%s %v, %g times: %s at %.2f", typ, size, wh, f, what, p)
					}
				}
			}
			for _, l := range s.Lines {
				within(string(l.Stroke), l.Points)
				for _, p := range l.Points {
					if (l.Stroke == ink.Thick || l.Stroke == ink.Break) && p.X < place.across.x+place.across.w && p.Y < place.centreY {
						reach = max(reach, place.centreY-p.Y)
					}
				}
			}
			for _, shape := range s.Shapes {
				for _, l := range shape.Loops {
					within("metal", l)
				}
			}
			if full := place.reachY - 1; reach < min(last, full) {
				c.Errorf("%s/%s %v, %g times: drawn %.2f high, smaller %.2f", typ, size, wh, f, reach, last)
			}
			last = max(last, reach)
		}
	})
}

// Grips lie on what they move: on the outline of metal or of the fin's disc.
func TestGripsLieOnOutlines(t *testing.T) {
	each(t, func(t testing.TB, s drawn) {
		for _, g := range s.Grips {
			best := math.Inf(1)
			try := func(path []ink.Point) {
				for i := 0; i+1 < len(path); i++ {
					best = min(best, toSegment(ink.At(g.X, g.Y), path[i], path[i+1]))
				}
			}
			s.outlines(try)
			reach := 0.05
			if g.ID == "pitch" { // at the fin's middle, half a thickness from its face
				reach = 1
			}
			if best > reach {
				t.Errorf("%s is %.3f mm from any outline", g.ID, best)
			}
			if g.Value < g.Min || g.Value > g.Max || g.ValueText == "" || g.Label == "" {
				t.Errorf("%s: %g of %g to %g, %q %q", g.ID, g.Value, g.Min, g.Max, g.Label, g.ValueText)
			}
		}
	})
}

func toSegment(p, a, b ink.Point) float64 {
	d := ink.Distance(a, b)
	if d == 0 {
		return ink.Distance(p, a)
	}
	f := ((p.X-a.X)*(b.X-a.X) + (p.Y-a.Y)*(b.Y-a.Y)) / (d * d)
	return ink.Distance(p, ink.Between(a, b, min(1, max(0, f))))
}

// Scales come from the ladder, the sections share one, and the disc is drawn to it.
func TestScales(t *testing.T) {
	each(t, func(t testing.TB, s drawn) {
		if s.Views[0].Scale != s.Views[1].Scale {
			t.Errorf("sections at %g and %g", s.Views[0].Scale, s.Views[1].Scale)
		}
		for _, v := range s.Views {
			x := v.Scale
			if x < 1 {
				x = 1 / x
			}
			if d := below(x * (1 + 1e-6)); math.Abs(d-x) > 1e-6*x {
				t.Errorf("%s: %g is no usual scale", v.ID, v.Scale)
			}
		}
		var widest float64
		for _, l := range s.Lines {
			if l.Stroke == ink.Thick && len(l.Points) > 20 {
				widest = max(widest, l.Points[0].X-l.Points[len(l.Points)/2].X)
			}
		}
		near(t, "disc", widest, s.tube.FinOD().Millimetres()*s.Scales.Main, 0.01)
	})
}

func TestLadder(t *testing.T) {
	for _, c := range [][2]float64{{1, 1}, {1.99, 1}, {2, 2}, {9.9, 5}, {10, 10}, {0.3, 1 / 5.0}, {0.99, 1 / 2.0}, {0.5, 0.5}, {0.07, 1 / 20.0}, {73, 50}} {
		near(t, "scale", snapScale(c[0]), c[1], 1e-9)
	}
}
