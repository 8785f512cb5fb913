package ink

import (
	"math"
	"testing"
)

var black = RGBA{0, 0, 0, 1}

func screen(k, ratio float64) Screen {
	return Screen{Width: 760 * ratio, Height: 470 * ratio, Ratio: ratio, Transform: Transform{K: k}, Theme: Theme{InkTone: black, GreyTone: black, FaintTone: black}}
}

// ink is the sum of coverage over the mesh: each triangle's area times its mean alpha [px2].
func ink(m *Mesh) float64 {
	sum := 0.0
	for i := range m.Batches {
		c, t := m.Batch(i)
		for j := 0; j < len(t); j += 3 {
			p, q, r := c[t[j]], c[t[j+1]], c[t[j+2]]
			twice := float64((q.X-p.X)*(r.Y-p.Y) - (r.X-p.X)*(q.Y-p.Y))
			sum += math.Abs(twice) / 2 * float64(p.RGBA[3]+q.RGBA[3]+r.RGBA[3]) / 3
		}
	}
	return sum
}

// A line's ink is its length times its width, whatever the zoom.
func TestLinesKeepTheirWidth(t *testing.T) {
	for _, k := range []float64{1, 3.7, 12} {
		for _, ratio := range []float64{1, 1.5, 2} {
			for stroke, width := range map[Stroke]float64{Thick: 2, Thin: 1} {
				var m Mesh
				m.Paint(Artwork{Lines: []Polyline{{stroke, []Point{{3, 4}, {6, 8}}, NoArrows}}}, screen(k, ratio))
				px := 5 * PxPerMM * k * ratio
				near(t, string(stroke), ink(&m), px*width*ratio, 1e-3*px)
			}
		}
	}
}

// A fin thinner than a pixel gets its share of ink.
func TestThinFinGetsItsShare(t *testing.T) {
	for _, width := range []float64{0.05, 0.2, 0.9} {
		fin := Shape{Class: FinMetal, Loops: [][]Point{{{10, 10}, {10 + width, 10}, {10 + width, 30}, {10, 30}}}, Narrow: width, Hatch: Hatching{135, 1.1}}
		var m Mesh
		m.Paint(Artwork{Shapes: []Shape{fin}}, screen(1, 1))
		want := width * PxPerMM * 20 * PxPerMM
		near(t, "ink", ink(&m), want, 0.02*want) // ends lie on whole pixels
	}
}

func TestNarrowSectionsAreFilledUntilTheyAreNear(t *testing.T) {
	bar := Shape{Class: FinMetal, Loops: [][]Point{{{10, 10}, {10.4, 10}, {10.4, 30}, {10, 30}}}, Narrow: 0.4, Hatch: Hatching{135, 1.1}}
	var far, close Mesh
	far.Paint(Artwork{Shapes: []Shape{bar}}, screen(2, 1))
	close.Paint(Artwork{Shapes: []Shape{bar}}, screen(4, 1))
	full := 0.4 * 20 * PxPerMM * PxPerMM
	near(t, "filled", ink(&far), 4*full, 0.1*full)
	if part := ink(&close) / (16 * full); part > 0.5 {
		t.Errorf("hatched covers %.2f", part)
	}
}

// shade is how dark a mesh leaves a pixel that was white, from its corners' alpha at the pixel's middle, one triangle over the other.
func shade(m *Mesh, x, y int) float64 {
	at, light := Point{float64(x) + 0.5, float64(y) + 0.5}, 1.0
	for i := range m.Batches {
		c, t := m.Batch(i)
		for j := 0; j < len(t); j += 3 {
			p, q, r := c[t[j]], c[t[j+1]], c[t[j+2]]
			side := func(a, b Corner) float64 {
				return float64(b.X-a.X)*(at.Y-float64(a.Y)) - float64(b.Y-a.Y)*(at.X-float64(a.X))
			}
			u, v, w := side(q, r), side(r, p), side(p, q)
			all := u + v + w
			if all == 0 || u/all < 0 || v/all < 0 || w/all < 0 {
				continue
			}
			light *= 1 - (u*float64(p.RGBA[3])+v*float64(q.RGBA[3])+w*float64(r.RGBA[3]))/all
		}
	}
	return 1 - light
}

// On a screen of one device pixel to a CSS pixel an arrowhead is a triangle three times as long as wide: each column of pixels has
// as much ink as the triangle there is wide, a level arrow is the same above and below, and it ends where its barbs are.
func TestArrowheadsAreSharp(t *testing.T) {
	var m Mesh
	m.Paint(Artwork{Lines: []Polyline{{Measure, []Point{{20 / PxPerMM, 10.5 / PxPerMM}, {60 / PxPerMM, 10.5 / PxPerMM}}, AtStart}}}, screen(1, 1))
	length, width := ArrowLength*PxPerMM, ArrowLength/3*PxPerMM
	for x := 20; x < 34; x++ {
		column := 0.0
		for y := 6; y < 16; y++ {
			column += shade(&m, x, y)
			if d := shade(&m, x, y) - shade(&m, x, 20-y); math.Abs(d) > 1e-3 {
				t.Errorf("column %d is not the same above and below: %.3f", x, d)
			}
		}
		want := 1.0 // the line that it stands on
		if along := float64(x) + 0.5 - 20; along < length {
			want = max(1, width*along/length)
		}
		near(t, "column", column, want, 0.35)
	}
}

func TestSnapIsCrisp(t *testing.T) {
	for _, c := range []struct{ width, fraction float64 }{{1, 0.5}, {2, 0}, {3, 0.5}} {
		p := snap([]Point{{3.3, 8.2}, {3.3, 20.7}}, c.width)
		_, f := math.Modf(p[0].X)
		near(t, "fraction", f, c.fraction, 1e-12)
		if p[0].Y != 8.2 || p[0].X != p[1].X {
			t.Errorf("snapped to %v", p)
		}
	}
	slant := []Point{{3.3, 8.2}, {5.1, 20.7}}
	if p := snap(slant, 1); p[0] != slant[0] || p[1] != slant[1] {
		t.Errorf("a slanting line moved to %v", p)
	}
}

func TestLongPathsAreParted(t *testing.T) {
	wave := make([]Point, 40000)
	for i := range wave {
		wave[i] = Point{float64(i) / 200, float64(i % 2)}
	}
	var m Mesh
	m.Paint(Artwork{Lines: []Polyline{{Thin, wave, NoArrows}}}, screen(1, 1))
	if len(m.Batches) < 3 {
		t.Errorf("%d batches for %d corners", len(m.Batches), len(m.Corners))
	}
	near(t, "corners", float64(len(m.Corners)), 4*40000, 20)
}
