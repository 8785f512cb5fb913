package finned

import (
	"math"
	"testing"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
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
		say := func(k units.Kind, l units.Length) string { return units.Plain.Figure(k, float64(l), system).Value }
		for id, want := range map[string]string{
			"dim-tube_od": "Ø" + say(units.Diameter, tb.OD), "dim-fin_od": "Ø" + say(units.Diameter, tb.FinOD()),
			"dim-tube_wall": say(units.Wall, tb.Wall), "dim-fin_height": say(units.Height, tb.Fin.Height),
			"dim-strip_thickness": say(units.Thickness, tb.Fin.Strip),
		} {
			if got := text(t, s, id); got != want {
				t.Errorf("%s: %q, want %q", id, got, want)
			}
		}
		if tb.Profile() != tube.Uniform {
			if got, want := text(t, s, "dim-tip_thickness"), say(units.Thickness, tb.TipThickness()); got != want {
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

// Where a grip is pulled to, it is found again in the drawing of the tube that results, at the scales it was taken at.
func TestGripsFollowThePointer(t *testing.T) {
	for _, typ := range tube.FinTypes() {
		for size, tb := range sizes(typ) {
			tb.Basis = tube.MinimumWall // drawn with its mean wall, pulled by its stated one
			o := options(units.SI, 760, 470)
			before := Compose(tb, o)
			o.Hold = before.Scales
			for _, g := range before.Grips {
				pull := -0.4 // mm of sheet, inwards: what grows may need another scale
				value := g.Value + pull*g.PerMM
				if g.ID == "wall" {
					pull, value = 0.4, g.Value+0.4*g.PerMM
				}
				after := Compose(changed(tb, g.Field, value), o)
				if after.Scales != before.Scales {
					t.Errorf("%s/%s %s: scales went from %v to %v", typ, size, g.ID, before.Scales, after.Scales)
				}
				x, y := g.X+pull*g.Axis[0], g.Y+pull*g.Axis[1]
				for _, h := range after.Grips {
					if h.ID != g.ID || g.ID == "pitch" && math.Abs(h.PerMM-g.PerMM) > 1e-9 {
						continue // another fin stands in the middle now
					}
					// Across its axis a grip may move: the strip's follows the taper's face.
					off := (h.X-x)*g.Axis[0] + (h.Y-y)*g.Axis[1]
					if math.Abs(off) > 0.12*math.Abs(pull) {
						t.Errorf("%s/%s %s: pulled by %g mm, off by %.3f", typ, size, g.ID, pull, off)
					}
				}
			}
		}
	}
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
	for _, c := range [][2]float64{{1.19, 1}, {1.2, 1.2}, {9.9, 8}, {10, 10}, {0.3, 1 / 4.0}, {0.99, 1 / 1.2}, {0.5, 0.5}, {0.07, 1 / 15.0}, {73, 60}} {
		near(t, "scale", snapScale(c[0]), c[1], 1e-9)
	}
}
