package sheet

import "finwright/core/drawing/ink"

// most is how many times as high as usual texts get.
const most = 2

// LettersOf is how high texts are to be, of the usual, where a page has them so many times as large: nought where it does not say.
func LettersOf(times float64) float64 { return min(max(times, 1), most) }

// Enlarge takes a scene to a sheet that is larger, texts and all; lines stay as thin, hatching as close and arrowheads as small as they are.
// Valid: by > 0.
func (s *Scene) Enlarge(by float64) {
	s.Letters = TextHeight * by
	if by == 1 {
		return
	}
	s.Width, s.Height = s.Width*by, s.Height*by
	s.Scales.Main, s.Scales.Detail = s.Scales.Main*by, s.Scales.Detail*by
	for i := range s.Views {
		v := &s.Views[i]
		v.X, v.Y, v.Width, v.Height, v.Scale = v.X*by, v.Y*by, v.Width*by, v.Height*by, v.Scale*by
	}
	for i := range s.Texts {
		t := &s.Texts[i]
		t.X, t.Y, t.Width = t.X*by, t.Y*by, t.Width*by
	}
	for i := range s.Grips {
		g := &s.Grips[i]
		g.X, g.Y, g.PerMM = g.X*by, g.Y*by, g.PerMM/by
	}
	for i := range s.Tints {
		t := &s.Tints[i]
		t.Narrow, t.Loops = t.Narrow*by, enlarged(t.Loops, by)
	}
	for i := range s.Shapes {
		p := &s.Shapes[i]
		p.Narrow, p.Loops, p.Edges = p.Narrow*by, enlarged(p.Loops, by), enlarged(p.Edges, by)
	}
	for i := range s.Lines {
		l := &s.Lines[i]
		l.Points = along(l.Points, by)
	}
}

func enlarged(paths [][]ink.Point, by float64) [][]ink.Point {
	out := make([][]ink.Point, len(paths))
	for i, path := range paths {
		out[i] = along(path, by)
	}
	return out
}

// along returns a path anew: two shapes may share one.
func along(path []ink.Point, by float64) []ink.Point {
	out := make([]ink.Point, len(path))
	for i, p := range path {
		out[i] = ink.At(p.X*by, p.Y*by)
	}
	return out
}
