package making

import (
	"math"
	"math/rand/v2"
	"testing"

	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/core/units"
)

// The footed tube by hand: width 17.843 mm, 31.4159 m/m, 0.60653 kg/m; embedded 0.54812 kg/m.
func TestStripByHand(t *testing.T) {
	c, o := shop.House(), footed()
	p := zones(t, &c, &o)
	m, _ := c.Lines[0].Practice(o.Tube.Fin.Type)
	plain := *m
	plain.StripRatio = 1
	s := StripOf(&o.Tube, &plain, &p)
	near(t, "width", s.Width.Millimetres(), 17.843, 3e-5)
	near(t, "slit", s.Slit.Millimetres(), 17.8, 1e-12)
	finned := float64(o.Tube.FinnedLength())
	near(t, "strip", float64(s.Kept)/finned, 31.4159, 1e-5)
	near(t, "mass", float64(StripMass(s.Kept, s.Width, s.Thickness, s.Density))/finned, 0.60653, 1e-5)
	// 1200 rpm stopped in 0.5 s wind 5 turns.
	near(t, "run-down", float64(s.Lost), 5*math.Pi*0.0254, 1e-12)
	end := p.Zones[2].Stripped
	near(t, "stripped back from", float64(end.From), 6.096-0.038, 1e-12)
	near(t, "stripped back", end.Length().Millimetres(), 5*2.54, 1e-9)
	w := PlanOf(&c, &c.Lines[0], &o, nil).Winding
	near(t, "strip between joints", float64(w.Apart), 3*31.4159*1.01, 1e-5)
	near(t, "with the shop's ratio", float64(StripOf(&o.Tube, m, &p).Kept/s.Kept), 1.01, 1e-12)

	o = embedded()
	p = zones(t, &c, &o)
	m, _ = c.Lines[1].Practice(o.Tube.Fin.Type)
	s = StripOf(&o.Tube, m, &p)
	near(t, "embedded width", s.Width.Millimetres(), 16.125, 1e-9)
	near(t, "embedded mass", float64(StripMass(s.Kept, s.Width, s.Thickness, s.Density))/float64(p.Finned()), 0.54812, 1e-5)
}

// A public specification of embedded finning: one joint up to 6 m, two above, 3 m apart.
func TestJointRule(t *testing.T) {
	j := shop.House().Lines[1].Types[0].Joints
	for length, want := range map[units.Length]int{2: 1, 6: 1, 6.1: 2, 18: 2} {
		if got := JointsAllowed(&j, length); got != want {
			t.Errorf("%v m: %d joints, want %d", length, got, want)
		}
	}
}

// work is a winding in round numbers: 1 + 1 m lost at a coil's ends, half a metre at a joint.
func work(coil, kept, lost units.Length, good, joints int) Winding {
	return Winding{
		Strip: Strip{Kept: kept, Lost: lost, Slit: 0.018, Thickness: 0.0004, Density: 2705}, Coil: FilledCoil{Form: shop.Pancake, Length: coil},
		Losses: shop.Losses{CoilStart: 1, CoilEnd: 1, Joint: 0.5}, Joints: joints, Apart: 10, Good: good,
	}
}

func TestWholeTubesStrandTheRest(t *testing.T) {
	w := work(1000, 298, 2, 10, 0)
	if n, rest := w.WholeTubes(); n != 3 || math.Abs(float64(rest)-98) > 1e-9 {
		t.Errorf("%d tubes and %v m stranded, want 3 and 98", n, rest)
	}
	l := w.Account()
	// Ten tubes take four coils; three of them strand 98 m each, the last keeps 698 + 1 m.
	want := Ledger{Coils: 4, Bought: 4000, OnGood: 2980, RunDown: 20, CoilEnds: 7, Stranded: 294, Remainder: 699, Changes: 3}
	if l != want {
		t.Errorf("ledger %+v, want %+v", l, want)
	}
	length, ok := w.StrandlessCoil()
	if !ok || math.Abs(float64(length)-902) > 1e-9 {
		t.Errorf("coils of %v m strand nothing, want 902", length)
	}
	w.Coil.Length = length
	if l := w.Account(); l.Stranded > 1e-9 || l.Coils != 4 {
		t.Errorf("with coils of %v m: %+v", length, l)
	}
}

func TestJointsUseUpTheCoil(t *testing.T) {
	w := work(1000, 298, 2, 10, 1)
	l := w.Account()
	// Three joints of 0.5 m; 4 coils give 4 x 998 - 1.5 - 3000 = 990.5 m over, and the last end.
	want := Ledger{Coils: 4, Bought: 4000, OnGood: 2980, RunDown: 20, CoilEnds: 7, Joints: 1.5, Remainder: 991.5 - 0, Jointed: 3, Changes: 3}
	if math.Abs(float64(l.Remainder-want.Remainder)) > 1e-9 {
		t.Errorf("remainder %v, want %v", l.Remainder, want.Remainder)
	}
	l.Remainder = want.Remainder
	if l != want {
		t.Errorf("ledger %+v, want %+v", l, want)
	}
}

func TestCoilTooShortForATube(t *testing.T) {
	for _, c := range []struct {
		coil     units.Length
		joints   int
		apart    units.Length
		possible bool
	}{{200, 0, 10, false}, {200, 1, 10, true}, {120, 1, 10, false}, {120, 2, 10, true}, {120, 2, 200, false}, {1.5, 9, 0, false}, {302, 0, 10, true}} {
		w := work(c.coil, 298, 2, 5, c.joints)
		w.Apart = c.apart
		if fits := w.Strip.PerTube() <= w.Capacity()*(1+shop.Slack); w.Possible() != c.possible || w.Fresh() > 0 && fits != c.possible {
			t.Errorf("coil of %v m, %d joints %v m apart: possible %v", c.coil, c.joints, c.apart, w.Possible())
		}
	}
}

func TestTubesOfEachKind(t *testing.T) {
	w := work(1000, 88, 2, 200, 0)
	w.FirstOff, w.Rejected = 2, 7
	l := w.Account()
	if l.OnGood != 200*88 || l.RunDown != 200*2 || l.FirstOff != 2*90 || l.Rejected != 7*90 {
		t.Errorf("%+v", l)
	}
	tubes := 0
	for range w.coils() {
		tubes++
	}
	if tubes != 209 {
		t.Errorf("%d tubes", tubes)
	}
}

// By a second route: a clerk notes what is left on the coil after each tube. Where a tube takes a whole number of
// coils almost exactly, the rest of a coil lasts for thousands of tubes.
func TestStripIsConserved(t *testing.T) {
	proof.Proof{Share: 1500, Full: 100000, Seed: 9}.Run(t, func(c *proof.Case) {
		r := c.Rand
		w := work(units.Length(100+2000*r.Float64()), units.Length(5+400*r.Float64()), units.Length(5*r.Float64()), 1+r.IntN(60), r.IntN(4))
		w.FirstOff, w.Rejected, w.Apart = r.IntN(3), r.IntN(4), units.Length(300*r.Float64())
		switch r.IntN(4) {
		case 0:
			w.Good = 1 + r.IntN(20000)
		case 1:
			w.Good, w.Apart = 1+r.IntN(20000), 0
			w.Strip.Kept = w.Fresh()*units.Length(1+r.IntN(3))*(1+units.Length(r.IntN(3)-1)*units.Length(math.Pow(10, -2-5*r.Float64()))) - w.Strip.Lost
		}
		draws(&w, r)
		if !w.Possible() {
			return
		}
		l := w.Account()
		out := l.OnGood + l.Scrap() + l.Remainder + l.Returned
		near(c, "strip accounted for", float64(out), float64(l.Bought+l.Drawn), 1e-12)
		if l.CutBack < 0 || (l.CutBack > 0) != (l.Cut > 0) || l.Cut > 0 && !w.Placed || l.Hand > len(w.Hand) || l.Returned > 0 && (l.ToBuy() > 0 || l.Remainder > 0) {
			c.Fatalf("%+v: %+v", w, l)
		}
		near(c, "strip on good tubes", float64(l.OnGood), float64(w.Good)*float64(w.Strip.Kept), 1e-12)
		if l.Remainder < -1e-6 || l.Remainder > w.Coil.Length || l.Stranded < -1e-6 {
			c.Fatalf("%+v: remainder %v, stranded %v", w, l.Remainder, l.Stranded)
		}
		got := clerk(&w)
		for i, pair := range [][2]units.Length{{got.Stranded, l.Stranded}, {got.CutBack, l.CutBack}, {got.Remainder, l.Remainder + l.Returned}, {got.Drawn, l.Drawn}} {
			if math.Abs(float64(pair[0]-pair[1])) > 0.0005 {
				c.Fatalf("%+v: %d: a clerk finds %+v, the ledger says %+v", w, i, got, l)
			}
		}
		if got.Coils != l.Coils || got.Jointed != l.Jointed || got.Cut != l.Cut || got.Hand != l.Hand {
			c.Fatalf("%+v: a clerk finds %+v, the ledger says %+v", w, got, l)
		}
		coils, joined := 0, 0
		for begun, within := range w.coils() {
			coils, joined = coils+begun, joined+within
		}
		if coils != l.Coils || joined != l.Jointed {
			c.Fatalf("%+v: %d coils begun of %d, %d joined of %d", w, coils, l.Coils, joined, l.Jointed)
		}
	})
}

// draws lets joints stand in some places alone, and puts coils on hand, each in some of the cases.
func draws(w *Winding, r *rand.Rand) {
	need := w.Strip.PerTube()
	if w.Placed = r.IntN(2) == 0; w.Placed {
		var at units.Length
		for range r.IntN(4) {
			from := at + units.Length(r.Float64())*(need-at)
			at = from + units.Length(r.Float64())*(need-from)
			w.Places = append(w.Places, Interval{from, at})
		}
		w.Placed = w.Possible()
	}
	for range r.IntN(4) {
		w.Hand = append(w.Hand, DrawnCoil{Length: need*units.Length(1+6*r.Float64()) + 2.5})
	}
}

// clerk winds the tubes one by one and notes what is left on the coil.
func clerk(w *Winding) Ledger {
	type notes struct {
		Ledger
		left  float64 // on the coil in work
		since int     // joints, since a coil was begun between two tubes
		own   bool    // that coil was on hand
	}
	var n notes
	need := float64(w.Strip.Kept + w.Strip.Lost)
	take := func(loss float64) {
		length := w.Coil.Length
		if n.Coils < len(w.Hand) {
			length = w.Hand[n.Coils].Length
			n.Drawn += length
			n.Hand++
		}
		n.Coils, n.left = n.Coils+1, float64(length)-2-loss
	}
	begin := func() {
		take(0)
		n.since, n.own = 0, n.Hand == n.Coils
	}
	wind := func() (failed string) {
		pos, joints := 0.0, 0
		for ; n.left < (need-pos)*(1-1e-9); joints++ {
			at := pos + n.left
			if w.Placed {
				end := at
				at = 0
				for _, p := range w.Places {
					if float64(p.From) <= end {
						at = math.Min(end, float64(p.To))
					}
				}
			}
			by := pos + n.left - at
			switch {
			case w.Placed && at <= pos+need*1e-9:
				return "place"
			case joints == w.Joints, joints > 0 && at-pos < float64(w.Apart)*(1-1e-9), (w.Placed || n.own) && n.since == mostJoints:
				return "rule"
			case by > need*1e-9:
				n.Cut, n.CutBack = n.Cut+1, n.CutBack+units.Length(by)
			}
			pos, n.Jointed, n.since = at, n.Jointed+1, n.since+1
			take(0.5)
		}
		n.left -= need - pos
		return ""
	}
	begin()
	for range w.Made() {
		before := n
		failed := wind()
		if failed == "" {
			continue
		}
		switch n = before; {
		case failed == "rule" || n.left <= need*1e-9:
			n.Stranded += units.Length(n.left)
		default:
			n.Cut, n.CutBack = n.Cut+1, n.CutBack+units.Length(n.left)
		}
		if begin(); wind() != "" {
			panic("a tube that a fresh coil does not wind")
		}
	}
	n.Remainder = units.Length(n.left + 1)
	return n.Ledger
}

// The largest order that a design may have is planned with no more work than a small one: what is asked of a winding,
// counted, grows by the digits of the order alone.
func TestLargeOrdersTakeNoMoreWork(t *testing.T) {
	c, o := shop.House(), footed()
	c.Buying.Coils = shop.FirstCoil
	allocated := func(quantity int) float64 {
		o.Quantity = quantity
		return testing.AllocsPerRun(5, func() { PlanOf(&c, &c.Lines[0], &o, nil) })
	}
	if small, large := allocated(100), allocated(1e6); large > small+2 {
		t.Errorf("%v allocations for a hundred tubes, %v for a million", small, large)
	}
	p := PlanOf(&c, &c.Lines[0], &o, nil)
	if p.Winding.Made() != 1e6+1e4+1 || p.Ledger.Coils < 1e5 || p.Cost == nil {
		t.Errorf("%+v", p.Ledger)
	}
	own := *p.Winding
	own.Coil.Length, own.Losses = own.Usable()+2, shop.Losses{CoilStart: 1, CoilEnd: 1, Joint: 0.5} // as the clerk has them
	if got, l := clerk(&own), own.Account(); got.Coils != l.Coils || got.Jointed != l.Jointed {
		t.Errorf("a clerk finds %+v, the ledger says %+v", got, l)
	}
	s, _ := p.Schedule(&c, 12)
	if !s.More || len(s.Blocks) > mostBlocks+1 || s.Shifts != 12 {
		t.Errorf("%d blocks in %d shifts", len(s.Blocks), s.Shifts)
	}
	p.Winding.Coil.Length *= 1e4
	listed := func(racks int) (tubes int) {
		c.Crew.Shift, c.Lines[0].Racks.Tubes = 168*3600, racks
		s, _ = p.Schedule(&c, 12)
		for _, b := range s.Blocks {
			tubes += b.Tubes
		}
		return tubes
	}
	if n := listed(100000); n > mostEvents || n < mostEvents/2 || !s.More {
		t.Errorf("%d tubes listed in racks of a hundred thousand", n)
	}
	if n := listed(1); len(s.Blocks) > mostBlocks+1 || n > mostBlocks || !s.More {
		t.Errorf("%d tubes listed in racks of one, in %d blocks", n, len(s.Blocks))
	}
}
