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
					traced += Length(part) * trace.Width / Fine
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

func TestPathsAreWritten(t *testing.T) {
	if got := string(appendPath(nil, []Point{{1.26, 2}, {0.5, 2}, {0.5, 9.04}, {0.71, 9}}, true)); got != "M13 20l-8 0 0 70 2 0Z" {
		t.Error(got)
	}
	long := []Point{{0, 0}}
	for i := range 5000 { // each by less than a unit
		long = append(long, Point{float64(i+1) * 0.0333, float64(i%7) * -0.0449})
	}
	corners := subpaths(t, string(appendPath(nil, long, false)))[0]
	near(t, "far end", corners[5000].X, long[5000].X, 0.5/Fine+1e-9)
}

var number = regexp.MustCompile(`-?\d+`)

// subpaths reads the corners of a path [device px].
func subpaths(t *testing.T, path string) [][]Point {
	t.Helper()
	var out [][]Point
	for _, part := range strings.Split(path, "M")[1:] {
		var points []Point
		at := Point{}
		numbers := number.FindAllString(part, -1)
		for i := 0; i+1 < len(numbers); i += 2 {
			x, errX := strconv.Atoi(numbers[i])
			y, errY := strconv.Atoi(numbers[i+1])
			if errX != nil || errY != nil {
				t.Fatalf("corner %q", numbers[i:i+2])
			}
			at = Point{at.X + float64(x)/Fine, at.Y + float64(y)/Fine}
			points = append(points, at)
		}
		out = append(out, points)
	}
	return out
}

func abs(x float64) float64 { return max(x, -x) }
