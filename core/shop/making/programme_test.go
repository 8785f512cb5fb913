package making

import (
	"math"
	"testing"

	"finwright/core/internal/sample"
	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// lineFor returns the first line that makes a type, and how.
func lineFor(t testing.TB, c *shop.Capability, typ tube.FinType) (*shop.Line, *shop.Practice) {
	t.Helper()
	for i := range c.Lines {
		if m, ok := c.Lines[i].Practice(typ); ok {
			return &c.Lines[i], m
		}
	}
	t.Fatalf("no line makes %s", typ)
	return nil, nil
}

func zones(t testing.TB, c *shop.Capability, o *Order) Programme {
	t.Helper()
	l, m := lineFor(t, c, o.Tube.Fin.Type)
	s := SpeedsOf(c, l, m, o)
	p, ok := ProgrammeOf(c, m, &s, o)
	if !ok {
		t.Fatal("no programme")
	}
	return p
}

// wind runs the programme turn by turn on a tube that grows by share, and returns
// the zones' edges on the finished tube, from its end A after trimming, the
// turns that stay on each finned zone, and the length before trimming.
func wind(p *Programme, pitch, share float64) (edges []float64, turns []int, length float64) {
	lead := pitch / (1 + p.Growth.Share) // set so that fins stand at the pitch after the growth expected
	cut, finished := 0.0, -float64(p.TrimA)
	turn := func() { cut, finished = cut+lead, finished+lead*(1+share) }
	bare := func(to float64) {
		if to > cut {
			finished += to - cut
			cut = to
		}
	}
	for _, z := range p.Zones {
		if z.Kind != Finned {
			continue
		}
		bare(float64(z.Cut.From))
		edges = append(edges, finished)
		n := 0
		for cut+lead/2 < float64(z.Cut.To) { // the stop comes at the turn nearest to it
			turn()
			n++
		}
		edges = append(edges, finished)
		turns = append(turns, n)
		for range int(math.Round(z.Run.RunDown)) {
			turn()
		}
	}
	bare(float64(p.CutLength))
	return edges, turns, finished + float64(p.TrimA)
}

func worstEdge(p *Programme, edges []float64) float64 {
	worst, i := 0.0, 0
	for _, z := range p.Zones {
		if z.Kind == Finned {
			worst = max(worst, math.Abs(edges[i]-float64(z.Finished.From)), math.Abs(edges[i+1]-float64(z.Finished.To)))
			i += 2
		}
	}
	return worst
}

func TestZonesLandWhereTheDrawingWantsThem(t *testing.T) {
	proof.Proof{Share: 30, Full: 3000, Seed: 5}.Run(t, func(t *proof.Case) {
		r := t.Rand
		c, o := shop.House(), supported()
		c.Lines[1].Types[0].Growth = 0.005 * r.Float64()
		o.Tube.PlainA = units.Length(0.02 + 0.2*r.Float64())
		for i := range o.Tube.Spans {
			o.Tube.Spans[i].Centre += units.Length(0.4 * (r.Float64() - 0.5))
		}
		o.Tube.Spans = o.Tube.Spans[:r.IntN(7)]
		p := zones(t, &c, &o)
		pitch := float64(o.Tube.Pitch())
		edges, turns, length := wind(&p, pitch, p.Growth.Share)
		// Whole turns put an edge out by half a pitch at most, and each run-down by half a turn's growth.
		if got := worstEdge(&p, edges); got > pitch {
			t.Fatalf("an edge lies %.2f mm off", got*1e3)
		}
		if math.Abs(length-float64(p.CutLength+p.Grown)) > pitch*0.005*8 {
			t.Fatalf("the tube becomes %.5f m, the programme says %.5f", length, p.CutLength+p.Grown)
		}
		i := 0
		for _, z := range p.Zones {
			if z.Kind == Finned {
				if math.Abs(float64(turns[i])-z.Turns) > 1 {
					t.Fatalf("%d turns wound, %.2f planned", turns[i], z.Turns)
				}
				i++
			}
		}
	})
}

// An error of growth as large as the programme tolerates leaves every edge within
// the position tolerance; half as much again does not.
func TestTolerableGrowthErrorIsWhatIsTolerated(t *testing.T) {
	c, o := shop.House(), supported()
	p := zones(t, &c, &o)
	pitch, tolerance := float64(o.Tube.Pitch()), float64(c.Placing.Tolerance)
	near(t, "tolerable", p.Tolerable, 0.0004, 0.05)
	for _, sign := range []float64{-1, 1} {
		edges, _, _ := wind(&p, pitch, p.Growth.Share+sign*p.Tolerable)
		if got := worstEdge(&p, edges); got > tolerance+pitch/2 {
			t.Errorf("error %+.5f puts an edge out by %.2f mm", sign*p.Tolerable, got*1e3)
		}
		edges, _, _ = wind(&p, pitch, p.Growth.Share+1.5*sign*p.Tolerable)
		if got := worstEdge(&p, edges); got < tolerance+pitch/2 {
			t.Errorf("error %+.5f leaves edges within %.2f mm", 1.5*sign*p.Tolerable, got*1e3)
		}
	}
}

func TestTrialTubeFirst(t *testing.T) {
	c, o := shop.House(), supported()
	if p := zones(t, &c, &o); !p.TrialFirst || len(p.Notes) != 1 {
		t.Error("a guess of 0.1 % with 0.25 % of scatter needs no trial tube")
	}
	for _, k := range []struct {
		spread float64 // m over 12 m
		trial  bool
	}{{0.0005, false}, {0.005, true}} {
		c.Measured = sample.Measured(k.spread)
		p := zones(t, &c, &o)
		if p.TrialFirst != k.trial || !p.Growth.Learned {
			t.Errorf("spread %g: trial %v, scatter %.5f against %.5f", k.spread, p.TrialFirst, p.Growth.Scatter, p.Tolerable)
		}
	}
}

// Tension-wound fins do not lengthen the tube: positions are the drawing's, shifted by the trim.
func TestFootedFinsDoNotGrow(t *testing.T) {
	c, o := shop.House(), footed()
	p := zones(t, &c, &o)
	if p.Grown != 0 || p.TrialFirst {
		t.Errorf("grown %v, trial %v", p.Grown, p.TrialFirst)
	}
	for _, z := range p.Zones {
		near(t, "shift", float64(z.Cut.From), float64(z.Finished.From+p.TrimA), 1e-12)
	}
	near(t, "finned", float64(p.Finned()), float64(o.Tube.FinnedLength()), 1e-12)
	near(t, "turns", p.Turns(), o.Tube.FinsPerTube(), 1e-12)
}

func TestSawWastesNothingSilently(t *testing.T) {
	const kerf = 0.0025
	s, ok := Saw(6.096, kerf, 6.096, 3)
	if !ok || s.PerTube != 1 || s.Tubes != 3 || s.Kerf != 0 || s.Offcut != 0 {
		t.Errorf("a stock length as wanted needs no cut: %+v", s)
	}
	if s, _ = Saw(12.192, kerf, 4, 7); s.PerTube != 3 || s.Tubes != 3 {
		t.Errorf("4 m: %+v", s)
	}
	if _, ok := Saw(12.192, kerf, 13, 1); ok {
		t.Error("13 m are cut from 12.192")
	}
	proof.Proof{Share: 400, Full: 20000, Seed: 7}.Run(t, func(t *proof.Case) {
		r := t.Rand
		cut, n := units.Length(0.3+11*r.Float64()), 1+r.IntN(300)
		s, ok := Saw(12.192, kerf, cut, n)
		if !ok {
			t.Fatalf("no stock for %v", cut)
		}
		near(t, "tube bought", float64(s.OnTubes+s.Kerf+s.Offcut), float64(s.Bought()), 1e-12)
		near(t, "pieces", float64(s.OnTubes), float64(cut)*float64(n), 1e-12)
		per := 0
		for units.Length(per+1)*cut+units.Length(per)*kerf <= 12.192*(1+shop.Slack) {
			per++
		}
		if s.PerTube != per || s.Tubes != (n+per-1)/per {
			t.Fatalf("%d of a tube, %+v", per, s)
		}
	})
}
