package finned

import (
	"math"
	"testing"

	"finwright/core/drawing/ink"
	"finwright/core/tube"
	"finwright/core/units"
)

// profileArea is the integral of the thickness over the fin's height by Simpson's rule [mm2], a second route to
// the area of the polygon.
func profileArea(t tube.Tube, from, to float64) float64 {
	const n = 400
	sum := 0.0
	for i := 0; i <= n; i++ {
		w := 2.0 + 2*float64(i%2)
		if i == 0 || i == n {
			w = 1
		}
		y := from + (to-from)*float64(i)/n
		sum += w * t.Thickness(t.OD/2+units.Length(y)*units.Millimetre).Millimetres()
	}
	return sum * (to - from) / (3 * n)
}

func TestBladeHasTheProfilesArea(t *testing.T) {
	for _, profile := range []tube.Profile{tube.Rolled, tube.Uniform, tube.Linear} {
		for name, tb := range sizes(tube.EdgeWound) {
			tb.Fin.Profile, tb.Fin.TipGiven = profile, tb.Fin.Strip*0.6
			s := newSection(tb)
			// Chords of the rolled taper's hollow face: under 0.2 % too much.
			near(t, string(profile)+" "+name, math.Abs(ink.Area(s.blade(0))), profileArea(tb, 0, s.height), 2e-3*s.height*s.strip)
		}
	}
}

// A footed fin is the blade over the foot, and a foot of one thickness up to the next turn. A bend of radius r takes
// (1 - pi/4) r2 from the corner of its outside, or fills that much into its inside.
func TestFootHasTheStripsArea(t *testing.T) {
	for name, tb := range sizes(tube.Footed) {
		s := newSection(tb)
		outer, r := s.strip+s.radius, s.radius
		want := profileArea(tb, s.strip, s.height) + s.strip*s.pitch + (1-math.Pi/4)*(r*r-outer*outer)
		near(t, name, math.Abs(ink.Area(s.fin())), want, 4e-3*want)
	}
}

// The trapezoids that a fin is filled by are all of it, to the last corner of its foot.
func TestFillHasTheFinsArea(t *testing.T) {
	for _, typ := range tube.FinTypes() {
		for name, tb := range sizes(typ) {
			fin := newSection(tb).fin()
			sum := 0.0
			for _, q := range ink.Fill([][]ink.Point{fin}) {
				sum += math.Abs(ink.Area(q[:]))
			}
			want := math.Abs(ink.Area(fin))
			near(t, string(typ)+" "+name, sum, want, 1e-9*want)
		}
	}
}

func TestRootsOfEveryType(t *testing.T) {
	for _, typ := range tube.FinTypes() {
		s := newSection(example(typ))
		low, high := math.Inf(1), math.Inf(-1)
		for _, p := range s.fin() {
			low, high = min(low, p.Y), max(high, p.Y)
		}
		near(t, string(typ)+" tip", high, 15.875, 1e-9)
		want := map[tube.FinType]float64{tube.Embedded: -0.25, tube.Extruded: 0.5, tube.KnurledFooted: -s.tooth, tube.KnurledOverlap: -s.tooth}[typ]
		near(t, string(typ)+" foot of the fin", low, want, 1e-9)
	}
}

func TestClipKeepsTheAreaOfBothSides(t *testing.T) {
	for _, typ := range tube.FinTypes() {
		loop := newSection(example(typ)).fin()
		for _, x := range []float64{-0.1, 0, 0.15, 1, 2.4} {
			left, right := halfPlane{1, 0, x}.clip(loop), halfPlane{-1, 0, -x}.clip(loop)
			near(t, string(typ), math.Abs(ink.Area(left))+math.Abs(ink.Area(right)), math.Abs(ink.Area(loop)), 1e-9)
		}
	}
}

func TestEdgesLeaveOutTheCut(t *testing.T) {
	square := []ink.Point{ink.At(0, 0), ink.At(4, 0), ink.At(4, 4), ink.At(0, 4)}
	cut := halfPlane{1, 0, 3}
	runs := edges(cut.clip(square), cut)
	if len(runs) != 1 || len(runs[0]) != 4 {
		t.Fatalf("edges %v", runs)
	}
	near(t, "length", ink.Length(runs[0]), 10, 1e-12)
	if whole := edges(square, cut); len(whole) != 1 {
		t.Errorf("an uncut square has %d edges", len(whole))
	}
	bare := edges([]ink.Point{ink.At(1, 0), ink.At(3, 0), ink.At(3, 4), ink.At(1, 4)}, halfPlane{-1, 0, -1}, halfPlane{1, 0, 3})
	if len(bare) != 2 {
		t.Errorf("cut at both ends leaves %v", bare)
	}
}

// Fins so far apart that none stands in the window still have feet in it.
func TestCoarsePitch(t *testing.T) {
	for _, typ := range tube.FinTypes() {
		for _, fpi := range []float64{0.508, 1, 2} {
			for _, od := range []float64{16, 25.4, 100} {
				s := Compose(sized(typ, od, 1.5, 16, 0.4, fpi), options(units.SI, 760, 470))
				if len(s.Shapes) == 0 || typ.FootLayers() > 0 && len(s.Shapes) < 4 {
					t.Errorf("%s of %g mm at %g fpi: %d shapes", typ, od, fpi, len(s.Shapes))
				}
			}
		}
	}
}
