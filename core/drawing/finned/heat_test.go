package finned

import (
	"maps"
	"math"
	"slices"
	"strings"
	"testing"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/proof"
	"finwright/core/tube"
	"finwright/core/units"
)

// synthetic is a field on the section's own rows and columns, as coarse as a page solves it, of any temperature [C] of
// radius and place along the tube [mm].
func synthetic(tb tube.Tube, temperature func(r, x float64) float64) *Temperatures {
	s := newSection(tb)
	h := &Temperatures{Low: math.Inf(1), High: math.Inf(-1)}
	slab := func(rows, columns int, y0, y1 float64, from, to func(y float64) float64) {
		first := len(h.Nodes)
		for j := range rows + 1 {
			y := y0 + (y1-y0)*float64(j)/float64(rows)
			for i := range columns + 1 {
				x := from(y) + (to(y)-from(y))*float64(i)/float64(columns)
				t := temperature(s.od/2+y, x)
				h.Nodes = append(h.Nodes, HeatNode{(s.od/2 + y) / 1e3, x / 1e3, t})
				h.Low, h.High = min(h.Low, t), max(h.High, t)
			}
		}
		at := func(j, i int) int { return first + j*(columns+1) + i }
		for j := range rows {
			for i := range columns {
				h.Quads = append(h.Quads, [4]int{at(j, i), at(j, i+1), at(j+1, i+1), at(j+1, i)})
			}
		}
	}
	at := func(x float64) func(float64) float64 { return func(float64) float64 { return x } }
	slab(12, 24, -s.wall, -s.groove, at(0), at(s.pitch))
	if s.groove > 0 {
		slab(6, 16, -s.groove, 0, at(s.strip), at(s.pitch))
		slab(6, 8, -s.groove, 0, at(0), at(s.strip))
	}
	if s.foot > 0 {
		slab(6, 24, 0, s.foot, at(0), at(s.pitch))
	}
	slab(28, 8, s.foot, s.height, func(y float64) float64 { return s.strip/2 - s.half(y) }, func(y float64) float64 { return s.strip/2 + s.half(y) })
	return h
}

// falling is hot at the bore and cool at the tip.
func falling(r, _ float64) float64 { return 200 - 4*r }

// warmed returns options with a field, and an alarm.
func warmed(tb tube.Tube, system units.System, w, h float64) Options {
	o := options(system, w, h)
	o.Heat, o.Alarm = synthetic(tb, falling), "Fin root above its limit"
	return o
}

// inside reports whether p is in loops, even-odd, or within reach of their edges.
func inside(p ink.Point, reach float64, loops ...[]ink.Point) bool {
	in := false
	for _, l := range loops {
		for i, a := range l {
			b := l[(i+1)%len(l)]
			if toSegment(p, a, b) <= reach {
				return true
			}
			if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(p.Y-a.Y)/(b.Y-a.Y)*(b.X-a.X) {
				in = !in
			}
		}
	}
	return in
}

// tintedShapes returns the shapes whose temperature is shown.
func tintedShapes(s sheet.Scene) (loops [][]ink.Point) {
	for _, shape := range s.Shapes {
		if shape.Hatch.Spacing == 0 {
			loops = append(loops, shape.Loops...)
		}
	}
	return loops
}

// Tints fill the sections and nothing else: all their corners lie in a shape, and their areas add up to the shapes'.
func TestTintsFillTheMetal(t *testing.T) {
	types := tube.FinTypes()
	names := slices.Sorted(maps.Keys(sizes(types[0])))
	proof.Proof{Share: 4, Full: len(types) * len(names)}.Run(t, func(c *proof.Case) {
		typ, size := types[c.Index%len(types)], names[c.Index/len(types)]
		name, tb := string(typ)+" "+size, sizes(typ)[size]
		fillsTheMetal(c, name, tb)
	})
}

// Fins that stand too close to be told apart are left out: what lies under them is tinted through, feet too.
func TestTintsFillWhatLiesUnderFins(t *testing.T) {
	for _, typ := range []tube.FinType{tube.KnurledOverlap, tube.Embedded} {
		tb := sizes(typ)["thick"]
		if c := (composer{Options: warmed(tb, units.SI, 760, 470), section: newSection(tb)}); !c.laidOut(760, 470).partly(99) {
			t.Fatalf("%s: no fin is left out", typ)
		}
		fillsTheMetal(t, string(typ), tb)
	}
}

// laidOut returns a composer with its layout and scales chosen.
func (c composer) laidOut(w, h float64) composer {
	c.Letters = 1
	c.layout = arrange(w/ink.PxPerMM, h/ink.PxPerMM, c.Heat != nil)
	c.scales = c.chooseScales()
	return c
}

func fillsTheMetal(t testing.TB, name string, tb tube.Tube) {
	t.Helper()
	s := Compose(tb, warmed(tb, units.SI, 760, 470))
	shapes := tintedShapes(s)
	want, got := 0.0, 0.0
	for _, l := range shapes {
		want += math.Abs(ink.Area(l))
	}
	legend := s.Height - margin - footHeight - legendTall
	for _, tint := range s.Tints {
		for _, l := range tint.Loops {
			if l[0].Y >= legend {
				continue
			}
			got += math.Abs(ink.Area(l))
			for i, p := range l {
				for _, q := range []ink.Point{p, ink.Between(p, l[(i+1)%len(l)], 0.5)} {
					in := false
					for _, shape := range shapes {
						in = in || inside(q, 2*slack, shape)
					}
					if !in {
						t.Fatalf("%s: step %d reaches %.3f, outside of the metal", name, tint.Step, q)
					}
				}
			}
		}
	}
	near(t, name, got, want, 0.01*want)
}

// A tint's step is that of the temperature at the place it lies: here the field is a function of radius, so in the detail
// the height over the tube says which.
func TestTintsShowTheTemperature(t *testing.T) {
	for _, typ := range tube.FinTypes() {
		tb := example(typ)
		o := warmed(tb, units.SI, 760, 470)
		s := Compose(tb, o)
		c := composer{Options: o, section: newSection(tb), Sheet: &sheet.Sheet{Scene: s}}
		c.layout, c.scales = arrange(s.Width, s.Height, true), s.Scales
		d := c.layDetail()
		checked := 0
		for _, tint := range s.Tints {
			for _, l := range tint.Loops {
				var m ink.Point
				for _, p := range l {
					m = ink.At(m.X+p.X/float64(len(l)), m.Y+p.Y/float64(len(l)))
				}
				if m.X < d.x0 || m.Y < d.surface-d.upto*d.scale || m.Y > d.floor {
					continue
				}
				want := falling(c.od/2+(d.surface-m.Y)/d.scale, 0)
				step := (o.Heat.High - o.Heat.Low) / ink.HeatSteps
				low, high := o.Heat.Low+step*float64(tint.Step), o.Heat.Low+step*float64(tint.Step+1)
				if want < low-0.1*step || want > high+0.1*step {
					t.Errorf("%s: %.1f C shown as %.1f to %.1f", typ, want, low, high)
				}
				checked++
			}
		}
		if checked < 20 {
			t.Errorf("%s: only %d pieces in the detail", typ, checked)
		}
	}
}

// Each body keeps its own temperature where they touch, each end of a pitch its own where the foot is slit, and beside the
// metal the nearest counts.
func TestFieldIsReadWhereTheMetalIs(t *testing.T) {
	tb := example(tube.Footed)
	s := newSection(tb)
	h := synthetic(tb, func(r, x float64) float64 { return r*100 + x })
	for i := range h.Nodes[:13*25] {
		h.Nodes[i].T += 1000 // the tube
	}
	c := composer{Options: Options{Heat: h}, section: s}
	ofTube, ofFin := c.bodies()
	p, r := s.pitch/1e3, s.od/2e3
	at := func(name string, got, want float64) {
		t.Helper()
		near(t, name, got, want, 1e-4) // the faces are straight within a cell
	}
	at("tube at its surface", ofTube.at(r, 0.5*p, p), s.od/2*100+0.5*s.pitch+1000)
	at("foot on it", ofFin.at(r, 0.5*p, p), s.od/2*100+0.5*s.pitch)
	at("heel", ofFin.at(r, 0, p), s.od/2*100)
	at("toe", ofFin.at(r, p, p), s.od/2*100+s.pitch)
	at("next pitch", ofFin.at(r, 1.25*p, p), s.od/2*100+0.25*s.pitch)
	at("in a tooth", ofTube.at(r+1e-5, 0.5*p, p), s.od/2*100+0.5*s.pitch+1000)
	y := 0.5 * s.height
	at("beside the fin", ofFin.at(r+y/1e3, -0.1*p, p), (s.od/2+y)*100+s.strip/2-s.half(y))
	at("between rows", ofFin.at(r+y/1e3, s.strip/2e3, p), (s.od/2+y)*100+s.strip/2)
}

func TestEqualTemperaturesAreOneStep(t *testing.T) {
	tb := example(tube.Embedded)
	o := options(units.SI, 760, 470)
	o.Heat = synthetic(tb, func(float64, float64) float64 { return 80 })
	s := Compose(tb, o)
	for _, tint := range s.Tints[:len(s.Tints)-ink.HeatSteps] {
		if tint.Step != 0 {
			t.Errorf("step %d", tint.Step)
		}
	}
	if text(t, s, "heat-low") != "80.0" || text(t, s, "heat-high") != "80.0" {
		t.Error("the ends of the scale are not stated")
	}
}

// With no field nothing of it is on the sheet.
func TestNoFieldNoTints(t *testing.T) {
	s := Compose(example(tube.Footed), options(units.SI, 760, 470))
	if len(s.Tints) > 0 {
		t.Errorf("%d tints", len(s.Tints))
	}
	for _, x := range s.Texts {
		if strings.HasPrefix(x.ID, "heat") || x.Class == "alarm" {
			t.Errorf("%s %q", x.ID, x.Text)
		}
	}
	for _, shape := range s.Shapes {
		if shape.Hatch.Spacing == 0 {
			t.Errorf("%s is not hatched", shape.Class)
		}
	}
}

// The scale's ends and ticks are in the system's unit, ticks round and few.
func TestLegend(t *testing.T) {
	for _, c := range []struct {
		system    units.System
		low, high float64 // [C]
		want      string
	}{
		{units.SI, 41.3, 158.2, "41.3 158.2 50.0 100.0 150.0"},
		{units.US, 41.3, 158.2, "106.3 316.8 150.0 200.0 250.0 300.0"},
		{units.SI, -37.5, 12, "-37.5 12.0 -20.0 0.0"},
		{units.SI, 100, 104, "100.0 104.0 100.0 102.0 104.0"},
	} {
		tb := example(tube.Footed)
		o := options(c.system, 760, 470)
		o.Heat = synthetic(tb, falling)
		o.Heat.Low, o.Heat.High = c.low, c.high
		var got []string
		for _, x := range Compose(tb, o).Texts {
			if strings.HasPrefix(x.ID, "heat-") && x.ID != "heat-title" {
				got = append(got, x.Text)
			}
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("legend says %q, want %q", got, c.want)
		}
	}
}

func TestAlarmIsFramed(t *testing.T) {
	for _, wh := range sheets {
		var words []string
		var boxes []ink.Segment
		s := Compose(example(tube.Welded), warmed(example(tube.Welded), units.SI, wh[0], wh[1]))
		for _, x := range s.Texts {
			if x.Class == "alarm" {
				words = append(words, x.Text)
				lo, hi := x.Box()
				boxes = append(boxes, ink.Segment{lo, hi})
			}
		}
		if got := strings.Join(words, " "); got != "Fin root above its limit" {
			t.Fatalf("alarm says %q", got)
		}
		for _, box := range boxes {
			framed := false
			for _, l := range s.Lines {
				if l.Stroke == ink.Thick && len(l.Points) == 6 {
					a, b := l.Points[4], l.Points[2]
					framed = framed || a.X < box[0].X && a.Y < box[0].Y && b.X > box[1].X && b.Y > box[1].Y
				}
			}
			if !framed {
				t.Errorf("%v: no frame round %q", wh, words)
			}
		}
	}
}

func TestHatchingOfFamilies(t *testing.T) {
	seen := map[float64]string{}
	for _, family := range []string{"aluminium", "copper", "brass", "copper_nickel", "carbon_steel", "low_alloy", "stainless", "titanium", "nickel", "other"} {
		onTube, onFin := HatchingOf(family, false), HatchingOf(family, true)
		if onTube.Angle != 45 || onFin.Angle != 135 || onTube.Spacing != onFin.Spacing {
			t.Errorf("%s: %v on tube, %v on fin", family, onTube, onFin)
		}
		if other, taken := seen[onTube.Spacing]; taken {
			t.Errorf("%s is hatched as %s", family, other)
		}
		seen[onTube.Spacing] = family
	}
	if HatchingOf("unheard of", false) != HatchingOf("other", false) {
		t.Error("an unknown metal has a hatching of its own")
	}
}

func BenchmarkComposeWithHeat(b *testing.B) {
	tb := example(tube.Footed)
	o := warmed(tb, units.SI, 760, 470)
	var s sheet.Scene
	for b.Loop() {
		s = Compose(tb, o)
	}
	b.ReportMetric(float64(len(s.Ink)), "bytes")
}

func BenchmarkPaintWithHeat(b *testing.B) {
	tb := example(tube.Footed)
	s := Compose(tb, warmed(tb, units.SI, 760, 470))
	var m ink.Mesh
	for b.Loop() {
		m.Paint(s.Artwork, screen(1, 2))
	}
	b.ReportMetric(float64(len(m.Corners)), "corners")
}
