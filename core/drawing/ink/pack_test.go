package ink

import (
	"math"
	"reflect"
	"testing"
)

// sample has one of everything. Its numbers are whole in float32, those of its tint in grains too.
func sample() Artwork {
	corner := [][]Point{{{0, 0}, {math.MaxUint16, 0}, {math.MaxUint16, 8}}}
	a := Artwork{Tints: []Tint{{Step: HeatSteps - 1, Narrow: 2, Loops: corner}}}
	for _, c := range classes {
		a.Shapes = append(a.Shapes, Shape{Class: c, Loops: corner, Edges: corner, Narrow: 0.5, Hatch: Hatching{45, 1.5}})
	}
	for _, s := range strokes {
		for _, at := range arrows {
			a.Lines = append(a.Lines, Polyline{s, corner[0], at})
		}
	}
	return a
}

func TestUnpackReadsWhatPackWrote(t *testing.T) {
	if got, err := Unpack(Pack(sample())); err != nil || !reflect.DeepEqual(got, sample()) {
		t.Errorf("%v, %v", got, err)
	}
}

func TestUnpackRefusesWhatMakesNoSense(t *testing.T) {
	ink := Pack(sample())
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
	f.Add(Pack(sample()))
	f.Fuzz(func(t *testing.T, ink []byte) {
		art, err := Unpack(ink)
		if err == nil && len(Pack(art)) != len(ink) {
			t.Errorf("%d bytes come back as %d", len(ink), len(Pack(art)))
		}
	})
}
