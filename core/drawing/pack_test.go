package drawing

import (
	"math"
	"reflect"
	"testing"

	"finwright/core/tube"
	"finwright/core/units"
)

func TestPackAndUnpack(t *testing.T) {
	each(t, func(t *testing.T, _ tube.Tube, s Scene) {
		art, err := Unpack(s.Ink)
		if err != nil {
			t.Fatal(err)
		}
		rounded := Pack(art) // float32 is the only loss, so a second time there is none
		again, err := Unpack(rounded)
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
				if d := Distance(p, s.Lines[i].Points[j]); d > 1e-4 {
					t.Fatalf("line %d moved by %g mm", i, d)
				}
			}
		}
	})
}

func TestUnpackRefusesWhatMakesNoSense(t *testing.T) {
	ink := Compose(example(tube.Footed), options(units.SI, 640, 430)).Ink
	for name, bad := range map[string][]byte{
		"empty": nil, "cut short": ink[:len(ink)-4], "a byte over": append(ink[:len(ink):len(ink)], 0),
		"endless": Pack(Artwork{})[:4], "length": {0, 0, 0x80, 0x7f, 0, 0, 0, 0},
	} {
		if _, err := Unpack(bad); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

func FuzzUnpack(f *testing.F) {
	f.Add(Compose(example(tube.Welded), options(units.US, 640, 430)).Ink)
	f.Fuzz(func(t *testing.T, ink []byte) {
		art, err := Unpack(ink)
		if err == nil && len(Pack(art)) != len(ink) {
			t.Errorf("%d bytes come back as %d", len(ink), len(Pack(art)))
		}
	})
}

func TestCircleIsFlatEnough(t *testing.T) {
	for _, r := range []float64{0.5, 5, 50} {
		loop := circle(Point{}, r)
		for i, p := range loop {
			q := loop[(i+1)%len(loop)]
			near(t, "on the circle", math.Hypot(p.X, p.Y), r, 1e-9)
			if sagitta := r - math.Hypot((p.X+q.X)/2, (p.Y+q.Y)/2); sagitta > flatness {
				t.Fatalf("r = %g: chord %g mm inside", r, sagitta)
			}
		}
	}
}
