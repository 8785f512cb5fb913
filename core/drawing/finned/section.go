package finned

import (
	"math"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/tube"
	"finwright/core/units"
)

// section is the cut through one side of a finned tube, in real millimetres:
// x along the tube from the middle of fin 0, y outwards from the bare tube surface.
type section struct {
	tube                                   tube.Tube
	shape                                  tube.Section
	od, wall, height, pitch, strip, foot   float64
	groove, lap, tooth, toothPitch, radius float64
}

// Shapes that no order states, for looks only. Engineering judgement.
const (
	toothDepth  = 0.12 // mm, of a knurl
	toothLength = 0.9  // mm along the tube, about
	filletLeg   = 0.6  // of the strip's thickness, a weld's fillet
	lipWidth    = 0.8  // of the strip's thickness, metal rolled up beside a groove
	lipHeight   = 0.35 // of the groove's depth
	bladeSteps  = 8    // chords of a curved fin face
)

func newSection(t tube.Tube) section {
	s := section{
		tube: t, shape: t.Fin.Type.Fixing().Section, od: t.OD.Millimetres(), wall: t.MeanWall().Millimetres(), height: t.Fin.Height.Millimetres(),
		pitch: t.Pitch().Millimetres(), strip: t.Fin.Strip.Millimetres(), foot: t.FootThickness().Millimetres(),
	}
	// The inner bend of a foot: half a thickness, less where there is no room.
	s.radius = s.strip / 2 * min(1, (s.pitch-s.strip)/(2*s.strip), s.height/(6*s.strip))
	if t.Fin.Type.Grooved() {
		s.groove = min(t.Fin.Groove.Millimetres(), s.wall*0.9)
	}
	if t.Fin.Type.Knurled() {
		s.tooth = min(toothDepth, s.strip/3)
		s.toothPitch = s.pitch / max(2, math.Round(s.pitch/toothLength))
	}
	if t.Fin.Type.Lapped() {
		s.lap = max(0, min(t.FootLap().Millimetres(), s.pitch-3*s.strip))
	}
	return s
}

// half returns half the fin's thickness at y.
func (s section) half(y float64) float64 {
	r := units.Length(s.od/2+max(y, 0)) * units.Millimetre
	return s.tube.Thickness(r).Millimetres() / 2
}

// face returns the right face of a fin from y0 to y1, as its middle is at 0.
func (s section) face(y0, y1 float64) []ink.Point {
	n := 1
	if s.tube.Profile() == tube.Rolled {
		n = bladeSteps
	}
	p := make([]ink.Point, n+1)
	for i := range p {
		y := y0 + (y1-y0)*float64(i)/float64(n)
		p[i] = ink.At(s.half(y), y)
	}
	return p
}

// blade returns a fin on edge from y0 to the tip.
func (s section) blade(y0 float64) []ink.Point {
	right := s.face(max(y0, 0), s.height)
	if y0 < 0 {
		right = append([]ink.Point{ink.At(s.half(0), y0)}, right...)
	}
	return append(right, mirror(right)...)
}

// mirror returns points reflected at x = 0, in reverse.
func mirror(p []ink.Point) []ink.Point {
	out := make([]ink.Point, len(p))
	for i, q := range p {
		out[len(p)-1-i] = ink.At(-q.X, q.Y)
	}
	return out
}

// fin returns the outline of one turn: the blade and, as far as there is one, its foot.
func (s section) fin() []ink.Point {
	switch s.shape {
	case tube.FootSection:
		return s.footed()
	case tube.GrooveSection:
		return s.blade(-s.groove)
	case tube.EdgeSection, tube.WeldSection, tube.MuffSection:
		return s.blade(s.foot)
	}
	panic("finned: no section " + string(s.shape))
}

// footed returns an L: up the right face, over the tip, down the left, round the heel and along the foot to its toe.
// A lapped foot first lies on its neighbour's toe and then steps down by one thickness.
func (s section) footed() []ink.Point {
	t, r := s.strip, s.radius
	raised := 0.0
	if s.tube.Fin.Type.Lapped() {
		raised = t
	}
	top, bend, outer := raised+t, raised+t+r, t+r
	toe := s.pitch - t/2 + s.lap
	step := -t/2 + max(s.lap, outer)
	inner := ink.At(s.half(bend)+r, bend)
	p := []ink.Point{ink.At(toe, 0), ink.At(toe, t)}
	if raised > 0 {
		crest := max(step+0.4*t, inner.X) // 0.4 = tan(45 degrees/2): as thick in the step as beside it
		p = append(p, ink.At(crest+t, t), ink.At(crest, top))
	}
	p = append(p, sheet.Arc(inner, r, 3*math.Pi/2, math.Pi, 5)...)
	right := s.face(bend, s.height)
	p = append(p, right[1:]...)
	p = append(p, mirror(s.face(raised+outer, s.height))...)
	heel := ink.At(outer-s.half(raised+outer), raised+outer)
	p = append(p, sheet.Arc(heel, outer, math.Pi, 3*math.Pi/2, 6)[1:]...)
	if raised > 0 {
		p = append(p, ink.At(max(step, heel.X), t), ink.At(max(step, heel.X)+t, 0))
	}
	from := p[len(p)-1].X
	return append(p, s.teeth(from, toe)...)
}

// teeth returns the knurl between two places, without its ends. It repeats with the pitch, so tube and foot mesh.
func (s section) teeth(from, to float64) []ink.Point {
	if s.tooth == 0 {
		return nil
	}
	var p []ink.Point
	half := s.toothPitch / 2
	for n := int(math.Floor(from/half)) + 1; float64(n)*half < to; n++ {
		p = append(p, ink.At(float64(n)*half, -s.tooth*float64(n&1)))
	}
	return p
}

// surface returns the outside of the tube from a to b, with knurl or grooves.
func (s section) surface(a, b float64) []ink.Point {
	p := []ink.Point{ink.At(a, 0)}
	p = append(p, s.teeth(a, b)...)
	if s.groove > 0 {
		t, lip := s.strip/2, s.strip*(0.5+lipWidth)
		for _, k := range s.turns(a, b) {
			x, h := float64(k)*s.pitch, s.groove*lipHeight
			p = append(p, ink.At(x-lip, 0), ink.At(x-t, h), ink.At(x-t, -s.groove),
				ink.At(x+t, -s.groove), ink.At(x+t, h), ink.At(x+lip, 0))
		}
	}
	return append(p, ink.At(b, 0))
}

// turns lists the fins that stand between a and b.
func (s section) turns(a, b float64) []int {
	return s.from(int(math.Ceil(a/s.pitch)), b)
}

// from lists the fins from the n-th on that stand before b.
func (s section) from(n int, b float64) []int {
	var k []int
	for ; float64(n)*s.pitch <= b; n++ {
		k = append(k, n)
	}
	return k
}

// part is one piece of cut metal.
type part struct {
	class  ink.Class
	loop   []ink.Point
	narrow float64
}

// parts returns everything that the cut meets from a to b, before it is cut off at a and b.
func (s section) parts(a, b float64) []part {
	wall := append(s.surface(a, b), ink.At(b, -s.wall), ink.At(a, -s.wall))
	out := []part{{ink.TubeMetal, wall, s.wall}}
	if s.shape == tube.MuffSection {
		return append(out, part{ink.FinMetal, s.muff(a, b), s.strip})
	}
	for _, k := range s.reaching(a, b) {
		for _, p := range s.turn() {
			out = append(out, part{p.class, move(p.loop, float64(k)*s.pitch), p.narrow})
		}
	}
	return out
}

// reaching lists the fins of which something lies between a and b.
func (s section) reaching(a, b float64) []int {
	first := int(math.Ceil(a / s.pitch))
	if s.shape == tube.FootSection {
		first -= 2 // the foot of the turn before reaches in, and under a lap that of the turn before it
	}
	return s.from(first, b)
}

// turn returns what is wound or welded on in one turn.
func (s section) turn() []part {
	out := []part{{ink.FinMetal, s.fin(), s.strip}}
	if s.shape == tube.WeldSection {
		for _, f := range s.fillets() {
			out = append(out, part{ink.WeldMetal, f, 0})
		}
	}
	return out
}

// lining returns what goes on under the fins, over one pitch: the tube's wall and a muff.
func (s section) lining() []part {
	a := -s.pitch / 2
	if s.tooth > 0 {
		a = 0 // where a tooth begins
	}
	b := a + s.pitch
	out := []part{{ink.TubeMetal, append(s.surface(a, b), ink.At(b, -s.wall), ink.At(a, -s.wall)), s.wall}}
	if s.shape == tube.MuffSection {
		out = append(out, part{ink.FinMetal, []ink.Point{ink.At(b, 0), ink.At(a, 0), ink.At(a, s.foot), ink.At(b, s.foot)}, s.strip})
	}
	return out
}

// under is the same where fins are left out: their feet are a layer of one thickness.
func (s section) under() []part {
	out := s.lining()
	if s.shape == tube.MuffSection || s.foot == 0 {
		return out
	}
	wall := out[0].loop
	a, b := wall[0].X, wall[0].X+s.pitch
	loop := append([]ink.Point{ink.At(b, 0), ink.At(b, s.foot), ink.At(a, s.foot), ink.At(a, 0)}, s.teeth(a, b)...)
	return append(out, part{ink.FinMetal, loop, s.foot})
}

// fillets returns a weld's two beads beside the fin at x = 0.
func (s section) fillets() [][]ink.Point {
	leg := min(s.strip*filletLeg, s.height/3, (s.pitch-s.strip)/3)
	right := []ink.Point{ink.At(s.half(0), 0), ink.At(s.half(0)+leg, 0), ink.At(s.half(leg), leg)}
	return [][]ink.Point{right, mirror(right)}
}

// muff returns the sleeve and the fins raised from it as one piece.
func (s section) muff(a, b float64) []ink.Point {
	p := []ink.Point{ink.At(b, 0), ink.At(a, 0), ink.At(a, s.foot)}
	for _, k := range s.turns(a, b) {
		right := s.face(s.foot, s.height)
		p = append(p, move(append(mirror(reverse(right)), reverse(right)...), float64(k)*s.pitch)...)
	}
	return append(p, ink.At(b, s.foot))
}

func reverse(p []ink.Point) []ink.Point {
	out := make([]ink.Point, len(p))
	for i, q := range p {
		out[len(p)-1-i] = q
	}
	return out
}

func move(p []ink.Point, dx float64) []ink.Point {
	out := make([]ink.Point, len(p))
	for i, q := range p {
		out[i] = ink.At(q.X+dx, q.Y)
	}
	return out
}
