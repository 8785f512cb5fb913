package finned

import (
	"math"
	"reflect"
	"testing"

	"finwright/core/drawing/ink"
	"finwright/core/tube"
	"finwright/core/units"
)

func screen(k, ratio float64) ink.Screen {
	black := ink.RGBA{0, 0, 0, 1}
	return ink.Screen{Width: 760 * ratio, Height: 470 * ratio, Ratio: ratio, Transform: ink.Transform{K: k}, Theme: ink.Theme{ink.InkTone: black, ink.GreyTone: black, ink.FaintTone: black}}
}

func TestMeshIsSound(t *testing.T) {
	for _, typ := range tube.FinTypes() {
		s := Compose(example(typ), options(units.SI, 760, 470))
		for _, k := range []float64{1, 5, 12} {
			var m ink.Mesh
			m.Paint(s.Artwork, screen(k, 2))
			if len(m.Triangles)%3 != 0 || len(m.Corners) == 0 {
				t.Fatalf("%d places, %d corners", len(m.Triangles), len(m.Corners))
			}
			for i := range m.Batches {
				corners, triangles := m.Batch(i)
				if len(corners) > 1<<16 {
					t.Errorf("%d corners in a batch", len(corners))
				}
				for _, at := range triangles {
					if int(at) >= len(corners) {
						t.Fatalf("place %d of %d", at, len(corners))
					}
				}
			}
			for _, c := range m.Corners {
				if math.IsNaN(float64(c.X+c.Y)) || c.RGBA[3] < 0 || c.RGBA[3] > 1 {
					t.Fatalf("corner %v", c)
				}
			}
		}
	}
}

func TestPackAndUnpack(t *testing.T) {
	each(t, func(t testing.TB, s drawn) {
		art, err := ink.Unpack(s.Ink)
		if err != nil {
			t.Fatal(err)
		}
		rounded := ink.Pack(art) // float32 is the only loss, so a second time there is none
		again, err := ink.Unpack(rounded)
		if err != nil || !reflect.DeepEqual(art, again) {
			t.Fatalf("differs the second time (%v)", err)
		}
		if len(art.Tints) != len(s.Tints) || len(art.Shapes) != len(s.Shapes) || len(art.Lines) != len(s.Lines) {
			t.Fatalf("%d tints, %d shapes and %d lines of %d, %d and %d",
				len(art.Tints), len(art.Shapes), len(art.Lines), len(s.Tints), len(s.Shapes), len(s.Lines))
		}
		for i, x := range art.Tints {
			if x.Step != s.Tints[i].Step || len(x.Loops) != len(s.Tints[i].Loops) {
				t.Fatalf("tint %d: step %d with %d pieces", i, x.Step, len(x.Loops))
			}
		}
		for i, l := range art.Lines {
			if l.Stroke != s.Lines[i].Stroke || l.Arrows != s.Lines[i].Arrows {
				t.Fatalf("line %d: %v %v", i, l.Stroke, l.Arrows)
			}
			for j, p := range l.Points {
				if d := ink.Distance(p, s.Lines[i].Points[j]); d > 1e-4 {
					t.Fatalf("line %d moved by %g mm", i, d)
				}
			}
		}
	})
}

func BenchmarkCompose(b *testing.B) {
	for b.Loop() {
		Compose(example(tube.Footed), options(units.SI, 760, 470))
	}
}

func BenchmarkUnpack(b *testing.B) {
	packed := Compose(example(tube.Footed), options(units.SI, 760, 470)).Ink
	for b.Loop() {
		if _, err := ink.Unpack(packed); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkPaint(b *testing.B) {
	s := Compose(example(tube.Footed), options(units.SI, 760, 470))
	var m ink.Mesh
	for b.Loop() {
		m.Paint(s.Artwork, screen(1, 2))
	}
	b.ReportMetric(float64(len(m.Corners)), "corners")
}
