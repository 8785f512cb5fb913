package finned

import (
	"fmt"
	"maps"
	"slices"
	"testing"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/tube"
	"finwright/core/units"
)

const finPerInch = units.PerLength(1 / 0.0254)

// example is a 1 in tube of 14 BWG wall with 5/8 in fins of 0.4 mm strip, 10 to the inch.
func example(typ tube.FinType) tube.Tube {
	return sized(typ, 25.4, 2.108, 15.875, 0.4, 10)
}

func sized(typ tube.FinType, od, wall, height, strip float64, fpi float64) tube.Tube {
	mm := units.Millimetre
	return tube.Tube{
		OD: units.Length(od) * mm, Wall: units.Length(wall) * mm, Basis: tube.AverageWall, Length: 6,
		Fin: tube.Fin{
			Type: typ, Height: units.Length(height) * mm, Strip: units.Length(strip) * mm, Count: units.PerLength(fpi) * finPerInch,
			Profile: tube.AsMade, Groove: 0.25 * mm, Sleeve: 0.5 * mm, Root: tube.FromTube,
		},
	}
}

func options(system units.System, w, h float64) Options {
	return Options{System: system, WidthPx: w, HeightPx: h, Text: message.English()}
}

var sheets = [][2]float64{{640, 430}, {760, 470}, {600, 360}, {360, 520}, {900, 560}, {330, 480}, {378, 500}, {376, 400}, {602, 275}, {602, 233}, {600, 220}}

func sizes(typ tube.FinType) map[string]tube.Tube {
	return map[string]tube.Tube{
		"usual":   example(typ),
		"small":   sized(typ, 10, 1, 5, 0.3, 13),
		"large":   sized(typ, 219, 8, 25, 2.8, 1),
		"dense":   sized(typ, 50.8, 2.5, 12.7, 0.4, 11),
		"low":     sized(typ, 31.75, 2.1, 6.35, 0.4, 9),
		"sparse":  sized(typ, 60.3, 3.9, 19, 1.27, 3),
		"thick":   sized(typ, 88.9, 5.5, 25, 1.65, 5),
		"on pipe": sized(typ, 168.3, 7.1, 19.05, 1.27, 6),
		"slender": sized(typ, 15.9, 1.2, 12.7, 0.35, 8),
	}
}

// drawn is one drawing of the tests, with what it was made of.
type drawn struct {
	name   string
	tube   tube.Tube
	system units.System
	sheet.Scene
}

// each tries a property on every fin type, size, sheet and system, and on every other sheet once with a field and an alarm.
func each(t *testing.T, check func(testing.TB, drawn)) {
	var all []func() drawn
	for j, typ := range tube.FinTypes() {
		named := sizes(typ)
		for _, size := range slices.Sorted(maps.Keys(named)) {
			tb := named[size]
			for i, wh := range sheets {
				name := fmt.Sprintf("%s/%s/%gx%g", typ, size, wh[0], wh[1])
				if (i+j)%2 == 0 {
					system := []units.System{units.SI, units.US}[i/2%2]
					all = append(all, func() drawn { return drawn{"warm/" + name, tb, system, Compose(tb, warmed(tb, system, wh[0], wh[1]))} })
				}
				for _, system := range []units.System{units.SI, units.US} {
					all = append(all, func() drawn { return drawn{name, tb, system, Compose(tb, options(system, wh[0], wh[1]))} })
				}
			}
		}
	}
	// A stride prime to the number of drawings spreads a share over all of them.
	proof.Proof{Share: 36, Full: len(all)}.Run(t, func(c *proof.Case) {
		d := all[c.Index*1009%len(all)]()
		c.In(d.name)
		check(c, d)
	})
}

// outlines shows each path that bounds metal or a fin's disc.
func (d drawn) outlines(show func([]ink.Point)) {
	for _, shape := range d.Shapes {
		for _, e := range shape.Edges {
			show(e)
		}
	}
	for _, l := range d.Lines {
		if l.Stroke == ink.Thick {
			show(l.Points)
		}
	}
}

func TestTextsKeepApartAndOnTheSheet(t *testing.T) {
	each(t, func(t testing.TB, s drawn) {
		for i, a := range s.Texts {
			lo, hi := a.Box()
			if lo.X < 0 || lo.Y < 0 || hi.X > s.Width || hi.Y > s.Height {
				t.Errorf("%s %q leaves the sheet: %.1f to %.1f", a.ID, a.Text, lo, hi)
			}
			for _, b := range s.Texts[i+1:] {
				lo2, hi2 := b.Box()
				if lo.X < hi2.X && lo2.X < hi.X && lo.Y < hi2.Y && lo2.Y < hi.Y {
					t.Errorf("%s %q lies on %s %q", a.ID, a.Text, b.ID, b.Text)
				}
			}
		}
	})
}

func TestNothingLeavesTheSheet(t *testing.T) {
	each(t, func(t testing.TB, s drawn) {
		check := func(what string, paths ...[]ink.Point) {
			for _, path := range paths {
				for _, p := range path {
					if !(p.X >= 0 && p.Y >= 0 && p.X <= s.Width && p.Y <= s.Height) {
						t.Fatalf("%s at %.2f", what, p)
					}
				}
			}
		}
		for _, shape := range s.Shapes {
			check(string(shape.Class), shape.Loops...)
		}
		for _, l := range s.Lines {
			check(string(l.Stroke), l.Points)
		}
	})
}

// No outline runs through a text.
func TestTextsKeepClearOfOutlines(t *testing.T) {
	each(t, func(t testing.TB, s drawn) {
		for _, text := range s.Texts {
			lo, hi := text.Box()
			clear := func(path []ink.Point) {
				for i := 0; i+1 < len(path); i++ {
					if crosses(path[i], path[i+1], lo, hi) {
						t.Errorf("an outline runs through %s %q", text.ID, text.Text)
						return
					}
				}
			}
			s.outlines(clear)
		}
	})
}

// crosses reports whether a segment meets the inside of a box.
func crosses(a, b, lo, hi ink.Point) bool {
	from, to := 0.0, 1.0
	for _, h := range []halfPlane{{-1, 0, -lo.X}, {1, 0, hi.X}, {0, -1, -lo.Y}, {0, 1, hi.Y}} {
		p, q := h.depth(a), h.depth(b)
		switch {
		case p > 0 && q > 0:
			return false
		case p > 0:
			from = max(from, p/(p-q))
		case q > 0:
			to = min(to, p/(p-q))
		}
	}
	return from < to
}
