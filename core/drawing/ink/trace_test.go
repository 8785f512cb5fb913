package ink

import (
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// What is traced is what is painted: lines of the same length and width, metal of the same area.
func TestTracesAreWhatIsPainted(t *testing.T) {
	art := Artwork{
		Shapes: []Shape{
			{Class: FinMetal, Loops: [][]Point{{{10, 10}, {10.5, 10}, {10.5, 30}, {10, 30}}}, Narrow: 0.5, Hatch: Hatching{135, 1.1}},
			{Class: TubeMetal, Loops: [][]Point{{{20, 10}, {30, 10}, {30, 30}, {20, 30}}}, Edges: [][]Point{{{20, 10}, {30, 10}}}, Narrow: 10, Hatch: Hatching{45, 1.7}},
		},
		Lines: []Polyline{{Centre, []Point{{5, 5}, {60, 5}}, NoArrows}, {Measure, []Point{{5, 40}, {60, 42}}, AtBoth}},
	}
	for _, s := range []Screen{screen(1, 1), screen(2, 1.5)} {
		var m Mesh
		m.Paint(art, s)
		traced := 0.0
		for _, trace := range Traces(art, s) {
			for _, part := range subpaths(t, trace.Path) {
				if trace.Fill {
					traced += abs(Area(part))
				} else {
					traced += Length(part) * trace.Width
				}
			}
		}
		near(t, "ink", traced, ink(&m), 0.02*ink(&m)) // the painter's ends and heads fade
	}
}

func TestTracesAreFew(t *testing.T) {
	var art Artwork
	for i := range 200 {
		x := float64(i)
		art.Shapes = append(art.Shapes, Shape{Class: FinMetal, Loops: [][]Point{{{x, 10}, {x + 0.4, 10}, {x + 0.4, 30}, {x, 30}}}, Narrow: 0.4, Hatch: Hatching{135, 1.1}})
		art.Lines = append(art.Lines, Polyline{Thin, []Point{{x, 1}, {x, 4}}, NoArrows})
	}
	if n := len(Traces(art, screen(1, 1))); n != 2 {
		t.Errorf("%d paths", n)
	}
}

func TestHundredths(t *testing.T) {
	for x, want := range map[float64]string{0: "0", 1.5: "1.5", -0.25: "-0.25", 12.001: "12", 99.999: "100", -3.04: "-3.04", 0.1: "0.1"} {
		if got := string(appendHundredths(nil, x)); got != want {
			t.Errorf("%g is %s, want %s", x, got, want)
		}
	}
}

var corner = regexp.MustCompile(`[ML](-?[\d.]+) (-?[\d.]+)`)

// subpaths reads the corners of a path.
func subpaths(t *testing.T, path string) [][]Point {
	t.Helper()
	var out [][]Point
	for _, part := range strings.Split(path, "M")[1:] {
		var points []Point
		for _, found := range corner.FindAllStringSubmatch("M"+part, -1) {
			x, errX := strconv.ParseFloat(found[1], 64)
			y, errY := strconv.ParseFloat(found[2], 64)
			if errX != nil || errY != nil {
				t.Fatalf("corner %q", found[0])
			}
			points = append(points, Point{x, y})
		}
		out = append(out, points)
	}
	return out
}

func abs(x float64) float64 { return max(x, -x) }
