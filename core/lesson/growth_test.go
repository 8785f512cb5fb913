package lesson

import (
	"math"
	"testing"

	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// What growth does is drawn as the programme has it: each zone becomes longer when the head has passed it and not before, by what is wound on
// it, all beyond moves on by as much, and in the end the tube is longer by what the plan says, times the factor that is said.
func TestGrowthIsDrawnAsPlanned(t *testing.T) {
	house := shop.House()
	w := report.Writer{Texts: message.English(), System: units.SI}
	read := func(entries ...Entry) (*making.Programme, *TubeGrows) {
		d := document.New()
		put(&d, entries)
		r := ReadBriefly(d, &house)
		return r.Made.Plan.Programme, woundOf(w, r).Grows
	}
	p, g := read(Entry{"fin_type", "embedded"}, Entry{"tube_wall", "12 BWG"}, Entry{"tube_length", "6 m"}, Entry{SpanEntry("centre", 0), "2 m"}, Entry{SpanEntry("width", 0), "80 mm"})
	n := len(g.Zones)
	if n < 5 || len(g.Cut) != n+1 || len(g.States) != n+1 {
		t.Fatalf("%d zones, %d edges, %d states", n, len(g.Cut), len(g.States))
	}
	scale := g.Cut[n] / float64(p.CutLength)
	times := magnified(float64(p.Grown), float64(p.CutLength))
	close := func(what string, got, want float64) {
		t.Helper()
		if math.Abs(got-want) > 1e-9 {
			t.Errorf("%s: %g, want %g", what, got, want)
		}
	}
	close("the tube that comes off", g.States[n][n]-g.Cut[n], scale*times*float64(p.Grown))
	close("its end", g.States[n][n], growthWide)
	for head, state := range g.States {
		for i, zone := range g.Zones {
			grows := 0.0
			if i < head {
				grows = scale * times * float64(p.Zones[i].Finished.Length()-p.Zones[i].Cut.Length())
			}
			close(zone, state[i+1]-state[i]-(g.Cut[i+1]-g.Cut[i]), grows)
		}
	}
	if fins, all := g.States[n][3]-g.States[n][2]-(g.Cut[3]-g.Cut[2]), g.States[n][n]-g.Cut[n]; g.Zones[2] != "finned" || g.Zones[3] != "bare" || fins < 0.3*all {
		t.Errorf("the first finned length makes %g of %g: %q", fins, all, g.Zones)
	}
	if grown, length := times*float64(p.Grown), float64(p.CutLength); grown > length/6 || grown < length/6/2.5 {
		t.Errorf("%g m more are drawn on %g m", grown, length)
	}
	if _, g := read(); g != nil {
		t.Errorf("footed fins make it longer: %+v", g)
	}
}
