package finned

import (
	"math"
	"testing"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

// besides draws a tube with outlines behind, and returns these.
func besides(t *testing.T, ghosts ...Ghost) (sheet.Scene, [][]ink.Point) {
	t.Helper()
	s := Compose(example(tube.Footed), Options{System: units.SI, WidthPx: 700, HeightPx: 360, Text: message.English(), Ghosts: ghosts})
	var lines [][]ink.Point
	for _, l := range s.Lines {
		if l.Stroke == ink.Ghost {
			lines = append(lines, l.Points)
		}
	}
	return s, lines
}

// All are drawn at one scale: it is that which a larger one needs, and its circle is as large as it says.
func TestGhostsAreAtOneScale(t *testing.T) {
	alone, none := besides(t)
	own := example(tube.Footed)
	same, alike := besides(t, Ghost{own.OD.Millimetres(), own.FinOD().Millimetres()})
	if len(none)+len(alike) > 0 || same.Scales != alone.Scales {
		t.Errorf("%d and %d lines of what is like the tube", len(none), len(alike))
	}
	const larger = 120
	s, lines := besides(t, Ghost{own.OD.Millimetres(), larger})
	if s.Scales.Main >= alone.Scales.Main {
		t.Errorf("the scale stays %g", s.Scales.Main)
	}
	across := s.Views[0]
	reach := 0.0
	for _, line := range lines {
		for _, p := range line {
			if p.X < across.X+across.Width {
				reach = max(reach, math.Abs(p.X-(across.X+across.Width/2)))
			}
		}
	}
	if math.Abs(reach-larger/2*s.Scales.Main) > 0.05 {
		t.Errorf("its radius is %g on the sheet, want %g", reach, larger/2*s.Scales.Main)
	}
}

// What is written stays legible: no outline runs through it, and no writing goes for it.
func TestGhostsGiveWayToWriting(t *testing.T) {
	for _, over := range []float64{40, 50, 60, 66, 70} {
		s, lines := besides(t, Ghost{30, over})
		held := s.Scales
		bare := Compose(example(tube.Footed), Options{System: units.SI, WidthPx: 700, HeightPx: 360, Text: message.English(), Hold: held})
		if len(lines) == 0 || len(bare.Texts) != len(s.Texts) {
			t.Errorf("over %g: %d lines, %d texts of %d", over, len(lines), len(s.Texts), len(bare.Texts))
		}
		for _, text := range s.Texts {
			lo, hi := text.Box()
			for _, line := range lines {
				for _, p := range line {
					if p.X > lo.X && p.X < hi.X && p.Y > lo.Y && p.Y < hi.Y {
						t.Fatalf("over %g: an outline runs through %q", over, text.Text)
					}
				}
			}
		}
	}
}
