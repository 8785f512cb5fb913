package report

import (
	"fmt"
	"math"
	"testing"
)

// square samples f on n x n places over -1 to 1.
func square(n int, f func(x, y float64) float64) (values, at []float64) {
	for i := range n {
		at = append(at, -1+2*float64(i)/float64(n-1))
	}
	for _, y := range at {
		for _, x := range at {
			values = append(values, f(x, y))
		}
	}
	return values, at
}

// The contour of x^2 + y^2 is a circle; linear interpolation over a cell of side c errs by at most c^2 f”/8 in value.
func TestContourOfACone(t *testing.T) {
	const n, radius = 60, 0.7
	values, at := square(n, func(x, y float64) float64 { return x*x + y*y })
	lines := ContourLines(values, n, n, at, at, radius*radius)
	if len(lines) != 1 {
		t.Fatalf("%d lines, want one circle", len(lines))
	}
	circle := lines[0]
	if circle[0] != circle[len(circle)-1] {
		t.Error("the circle is open")
	}
	cell := 2.0 / (n - 1)
	length := 0.0
	for i, p := range circle {
		if off := math.Abs(math.Hypot(p[0], p[1]) - radius); off > cell*cell/4/radius {
			t.Errorf("(%g, %g) is %g off the circle", p[0], p[1], off)
		}
		if i > 0 {
			length += math.Hypot(p[0]-circle[i-1][0], p[1]-circle[i-1][1])
		}
	}
	if math.Abs(length/(2*math.Pi*radius)-1) > 1e-3 {
		t.Errorf("length %g, want %g", length, 2*math.Pi*radius)
	}
}

// A plane's contour is straight, runs from side to side, and linear interpolation finds it exactly.
func TestContourOfAPlane(t *testing.T) {
	values, at := square(9, func(x, y float64) float64 { return x + 0.3*y })
	lines := ContourLines(values, 9, 9, at, at, 0.1)
	if len(lines) != 1 {
		t.Fatalf("%d lines, want 1", len(lines))
	}
	for _, p := range lines[0] {
		if math.Abs(p[0]+0.3*p[1]-0.1) > 1e-14 {
			t.Errorf("(%g, %g) is not on the line", p[0], p[1])
		}
	}
	if a, b := lines[0][0], lines[0][len(lines[0])-1]; math.Abs(a[1]) != 1 || math.Abs(b[1]) != 1 || a[1] == b[1] {
		t.Errorf("runs from %v to %v, not from bottom to top", a, b)
	}
}

// A saddle x y has two branches of x y = level, in opposite quadrants, that never meet.
func TestContourOfASaddle(t *testing.T) {
	for _, level := range []float64{0.04, -0.04} {
		values, at := square(8, func(x, y float64) float64 { return x * y })
		lines := ContourLines(values, 8, 8, at, at, level)
		if len(lines) != 2 {
			t.Fatalf("level %g: %d lines, want 2", level, len(lines))
		}
		for _, line := range lines {
			for _, p := range line {
				if p[0]*line[0][0] < 0 {
					t.Errorf("level %g: a branch crosses the middle at %v", level, p)
				}
			}
		}
	}
}

func TestContourLeavesBlanksOut(t *testing.T) {
	values, at := square(21, func(x, y float64) float64 {
		if x > 0 {
			return math.NaN()
		}
		return y
	})
	lines := ContourLines(values, 21, 21, at, at, 0.05)
	if len(lines) != 1 {
		t.Fatalf("%d lines, want 1", len(lines))
	}
	for _, p := range lines[0] {
		if p[0] > 0 || math.IsNaN(p[1]) {
			t.Errorf("%v lies in the blank", p)
		}
	}
}

func TestFieldFill(t *testing.T) {
	f := Map{X: SampledAxis{From: 5, To: 25}, Y: SampledAxis{From: 200, To: 450}, Columns: 50, Rows: 40}
	var samples []float64
	for _, y := range f.Y.at(f.Rows) {
		for _, x := range f.X.at(f.Columns) {
			samples = append(samples, 1+x*y/1000)
		}
	}
	f.Fill(samples, func(v float64) string { return fmt.Sprint(v) })
	if len(f.Bands) != len(samples) || f.Bands[0] != 0 || int(f.Bands[len(samples)-1]) != len(f.Levels) {
		t.Fatalf("bands run from %d to %d over %d levels", f.Bands[0], f.Bands[len(f.Bands)-1], len(f.Levels))
	}
	labels := map[string]int{}
	for _, c := range f.Contours {
		if c.LabelAt == nil {
			continue
		}
		labels[c.Label]++
		if got := 1 + c.LabelAt.X*c.LabelAt.Y/1000; math.Abs(got-mustFloat(t, c.Label)) > 0.01 {
			t.Errorf("label %s stands at %g", c.Label, got)
		}
	}
	for _, v := range f.Levels {
		want := 1
		if v > 11.5 {
			want = 0 // the line is a snippet in the corner
		}
		if labels[fmt.Sprint(v)] != want {
			t.Errorf("level %g has %d labels", v, labels[fmt.Sprint(v)])
		}
	}
}

func mustFloat(t *testing.T, s string) (v float64) {
	t.Helper()
	if _, err := fmt.Sscan(s, &v); err != nil {
		t.Fatal(err)
	}
	return v
}

func BenchmarkContours(b *testing.B) {
	values, at := square(200, func(x, y float64) float64 { return math.Hypot(x+2, y+1.5) })
	levels := Levels(0.5, 4, MaxBands)
	for b.Loop() {
		for _, level := range levels {
			ContourLines(values, 200, 200, at, at, level)
		}
	}
}

// A label keeps clear of the ring, wherever on its line that stands, and stays as near to the middle as it can.
func TestLabelKeepsClearOfTheRing(t *testing.T) {
	var line [][2]float64
	for i := range 101 {
		line = append(line, [2]float64{float64(i) / 100, 0.5})
	}
	axis := SampledAxis{From: 0, To: 1}
	for _, c := range []struct {
		ring Point
		want float64
	}{
		{Point{0.5, 0.9}, 0.5},
		{Point{0.5, 0.5}, 0.5 - ringAcross},
		{Point{0.52, 0.55}, 0.52 - ringAcross},
		{Point{0.45, 0.45}, 0.45 + ringAcross},
		{Point{0.1, 0.5}, 0.5},
	} {
		got := labelled([][][2]float64{line}, axis, axis, c.ring, "20")[0].LabelAt
		if got == nil || math.Abs(got.X-c.want) > 0.011 {
			t.Errorf("with the ring at %v the label is at %v, want %g", c.ring, got, c.want)
		}
	}
	if got := labelled([][][2]float64{line[40:56]}, axis, axis, Point{0.48, 0.5}, "20")[0].LabelAt; got != nil {
		t.Errorf("where there is no room the label is at %v", got)
	}
}
