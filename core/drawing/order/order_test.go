package order

import (
	"math"
	"testing"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
)

// tubeWithSpans is finned between spans 60 mm wide, as at supports.
func tubeWithSpans(spans int) Whole {
	const length = 12192.0
	t := Whole{OD: 25.4, FinOD: 50.8, Finished: "Finished", AsCut: "As cut"}
	at := -10.0
	to := func(kind ZoneKind, end float64, edge bool) {
		z := WholeZone{Kind: kind, From: at, To: end, Cut: "12345", Label: "bare 60 mm", Brief: "12 turns"}
		if edge {
			z.Edge = "12345"
		}
		t.Zones, at = append(t.Zones, z), end
	}
	to(CutAway, 0, true)
	to(BareZone, 38, true)
	for i := range spans {
		centre := length * float64(i+1) / float64(spans+1)
		to(FinnedZone, centre-30, true)
		to(BareZone, centre+30, true)
	}
	to(FinnedZone, length-38, true)
	to(BareZone, length, true)
	to(CutAway, length+15, false)
	return t
}

// Every edge is stated in both rows, at any width of sheet, and no text covers another.
func TestWholeTubeStatesEveryEdge(t *testing.T) {
	for _, width := range []float64{340, 620, 1100, 1900} {
		for spans := range 7 {
			tube := tubeWithSpans(spans)
			s := ComposeWhole(tube, width)
			edges := 0
			var boxes [][4]float64
			for _, x := range s.Texts {
				w := sheet.TextWidth(x.Text)
				left := x.X - map[sheet.Anchor]float64{sheet.Middle: w / 2, sheet.End: w}[x.Anchor]
				b := [4]float64{left, x.Y - 0.75*sheet.TextHeight, left + w, x.Y}
				for _, o := range boxes {
					if b[0] < o[2] && o[0] < b[2] && b[1] < o[3] && o[1] < b[3] {
						t.Errorf("%v px, %d spans: %q covers another text", width, spans, x.Text)
					}
				}
				if b[0] < -1e-9 || b[2] > s.Width+1e-9 || b[3] > s.Height {
					t.Errorf("%v px, %d spans: %q leaves the sheet", width, spans, x.Text)
				}
				boxes = append(boxes, b)
				if x.ID == "edge" {
					edges++
				}
			}
			if want := 2*len(tube.Zones) - 1; edges != want {
				t.Errorf("%v px, %d spans: %d edges stated, want %d", width, spans, edges, want)
			}
		}
	}
}

// Each row of running dimensions begins at a ring: that of the finished tube at its end A, that of the tube as cut at the end of that.
func TestRunningDimensionsMarkTheirOrigin(t *testing.T) {
	tube := tubeWithSpans(2)
	s := ComposeWhole(tube, 1100)
	var rings []float64
	var outline []float64
	for _, l := range s.Lines {
		switch n := len(l.Points); {
		case l.Stroke == ink.Measure && n > 8:
			rings = append(rings, (l.Points[0].X+l.Points[(n-1)/2].X)/2)
		case l.Stroke == ink.Hidden && n == 2:
			outline = append(outline, l.Points[0].X)
		}
	}
	// The tube as cut is drawn over its row, from one end to the other.
	bars := 0
	for _, l := range s.Lines {
		if l.Stroke == ink.Thin && len(l.Points) == 6 && l.Points[2].X > 0.9*s.Width-10 {
			bars++
			if low, high := l.Points[3].X, l.Points[1].X; math.Abs(low-rings[1]) > 0.01 || high <= low {
				t.Errorf("the tube as cut is drawn from %v to %v", low, high)
			}
		}
	}
	if bars != 1 {
		t.Errorf("%d tubes as cut", bars)
	}
	if len(rings) != 2 || math.Abs(rings[0]-outline[1]) > 0.01 || math.Abs(rings[1]-outline[0]) > 0.01 {
		t.Errorf("rings at %v, ends at %v", rings, outline)
	}
}

// Zones are to scale along the tube.
func TestWholeTubeIsToScale(t *testing.T) {
	tube := tubeWithSpans(3)
	s := ComposeWhole(tube, 1100)
	var scales []float64
	n := 0
	for _, z := range tube.Zones {
		if z.Kind == FinnedZone {
			loop := s.Shapes[n].Loops[0]
			scales = append(scales, (loop[1].X-loop[0].X)/(z.To-z.From))
			n++
		}
	}
	for _, k := range scales {
		if math.Abs(k/scales[0]-1) > 1e-9 {
			t.Errorf("scales %v", scales)
		}
	}
}

// A hexagon of 13 across holds 127 tubes: 1 + 3 k (k + 1) with k = 6, plane geometry.
func TestBundleDrawsEveryTube(t *testing.T) {
	s := ComposeBundle(Bundled{OD: 25.4, Across: 13, WidthText: "330", HeightText: "289"}, 270, 216)
	rings := 0
	for _, l := range s.Lines {
		if l.Stroke == ink.Thin && len(l.Points) > 3 {
			rings++
		}
	}
	if rings != 127 {
		t.Errorf("%d tubes", rings)
	}
}

// Tubes in a crate touch and do not overlap, and stay within it.
func TestCrateIsToScale(t *testing.T) {
	c := Crated{Width: 300, Height: 200, OD: 25, FinOD: 50, Centres: []ink.Point{ink.At(25, 25), ink.At(75, 25), ink.At(275, 175)}, WidthText: "300", HeightText: "200"}
	s := ComposeCrate(c, 300, 240)
	crate := s.Lines[0].Points
	scale := (crate[2].X - crate[1].X) / c.Width
	n := 0
	for _, l := range s.Lines[1:] {
		if l.Stroke != ink.Thin || len(l.Points) < 4 {
			continue
		}
		for _, p := range l.Points {
			if p.X < crate[0].X-1e-9 || p.X > crate[2].X+1e-9 || p.Y > crate[1].Y+1e-9 {
				t.Errorf("a tube leaves the crate at %v", p)
			}
		}
		n++
	}
	if n != 6 || scale <= 0 {
		t.Errorf("%d circles of three finned tubes, scale %v", n, scale)
	}
}

// Bars of a chart are as long as their time.
func TestChartIsToScale(t *testing.T) {
	s := ComposeChart(Chart{Hours: 8, Rows: []string{"1"}, Unit: "h", Bars: []ChartBar{{From: 0, To: 2, Filling: Rising}, {From: 2, To: 8, Filling: Falling}}}, 270)
	width := func(i int) float64 { l := s.Shapes[i].Loops[0]; return l[1].X - l[0].X }
	if math.Abs(width(1)/width(0)-3) > 1e-9 {
		t.Errorf("6 h and 2 h are %v and %v mm", width(1), width(0))
	}
}

// A swing to a higher figure points to the right, in proportion.
func TestSwingsPointTheirWay(t *testing.T) {
	s := ComposeSwings(Swings{Base: 10, Rows: []Swing{{Label: "a", Low: 8, High: 12}, {Label: "b", Low: 11, High: 9}}}, 270)
	var axis float64
	for _, l := range s.Lines {
		if l.Stroke == ink.Centre {
			axis = l.Points[0].X
		}
	}
	bars := s.Shapes[len(s.Shapes)-4:]
	side := func(i int) float64 { l := bars[i].Loops[0]; return (l[0].X+l[1].X)/2 - axis }
	if !(side(0) < 0 && side(1) > 0 && side(2) > 0 && side(3) < 0) || math.Abs(side(1)/side(2)-2) > 1e-9 {
		t.Errorf("bars lie at %v %v %v %v", side(0), side(1), side(2), side(3))
	}
}
