package making

import (
	"math"
	"testing"

	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/core/units"
)

// Common practice, no source: a hexagonal mill bundle of 91 tubes of 1 or 1.25 in
// OD, 11 across, fits 15.5 in wide by 13 in high.
func TestMillBundle(t *testing.T) {
	opening := shop.Opening{Width: 15.5 * units.Inch, Height: 13 * units.Inch}
	for _, od := range []units.Length{1 * units.Inch, 1.25 * units.Inch} {
		b := Hexagon(od, 5)
		if b.Tubes != 91 || b.Across != 11 || !b.Fits(opening) {
			t.Errorf("%v in: %+v", od.Inches(), b)
		}
	}
	if b, ok := LargestHexagon(1.25*units.Inch, opening, 1000); !ok || b.Tubes != 91 {
		t.Errorf("the largest of 1.25 in: %+v", b)
	}
	if _, ok := LargestHexagon(0.5, opening, 1000); ok {
		t.Error("a tube of half a metre passes")
	}
	for tubes, want := range map[int]int{1: 1, 6: 1, 7: 7, 18: 7, 19: 19, 90: 61, 91: 91, 400: 91} {
		if b, _ := LargestHexagon(1.25*units.Inch, opening, tubes); b.Tubes != want {
			t.Errorf("of %d tubes a bundle has %d, want %d", tubes, b.Tubes, want)
		}
	}
}

// The count of a hexagon by walking its ranks: from k + 1 tubes up to 2 k + 1 and back.
func TestHexagonByRanks(t *testing.T) {
	for k := range 12 {
		n := 2*k + 1
		for rank := k + 1; rank <= 2*k; rank++ {
			n += 2 * rank
		}
		if got := Hexagon(0.0254, k); got.Tubes != n {
			t.Errorf("%d rings: %d tubes, ranks give %d", k, got.Tubes, n)
		}
	}
}

// Hand calculation: fins of 57.15 mm in a crate 1100 x 900 mm. Nineteen lie side
// by side (1085.85 mm) and a shifted layer loses one, as 14.15 mm are spare. Nested, the
// step is 49.49 mm: 18 layers; with 4 mm separators it is 61.15 mm: 14 layers.
func TestCrateByHand(t *testing.T) {
	k := shop.House().Crate
	nested := k
	nested.Separator = 0
	for _, c := range []struct {
		crate  shop.Crate
		layers int
		tubes  int
	}{{nested, 18, 9*19 + 9*18}, {k, 14, 14 * 19}} {
		layers := fill(&c.crate, 0.05715)
		n := 0
		for _, l := range layers {
			n += l.Tubes
		}
		if len(layers) != c.layers || n != c.tubes {
			t.Errorf("%d layers with %d tubes, want %d with %d", len(layers), n, c.layers, c.tubes)
		}
	}
}

// Fins of 50 mm, four across: 30 mm to spare give a shifted layer room for all, 20 mm do not.
func TestShiftedLayerLosesOneOnlyIfItMust(t *testing.T) {
	for width, want := range map[units.Length]int{0.23: 4, 0.22: 3} {
		if got := fill(&shop.Crate{Width: width, Height: 0.2}, 0.05)[1].Tubes; got != want {
			t.Errorf("crate %v m wide: %d tubes in the second layer, want %d", width, got, want)
		}
	}
}

func TestPackedTubesDoNotOverlap(t *testing.T) {
	proof.Proof{Share: 30, Full: 3000, Seed: 15}.Run(t, func(t *proof.Case) {
		r := t.Rand
		k := shop.House().Crate
		k.Separator = units.Length(r.IntN(2)) * 0.004
		k.Width, k.Height = units.Length(0.2+r.Float64()), units.Length(0.2+r.Float64())
		df := units.Length(0.02 + 0.08*r.Float64())
		type point struct{ x, y float64 }
		var all []point
		for _, l := range fill(&k, df) {
			for i := range l.Tubes {
				p := point{float64(l.First + units.Length(i)*df), float64(l.Level)}
				if p.x < float64(df)/2-1e-9 || p.x > float64(k.Width-df/2)+1e-9 || p.y > float64(k.Height-df/2)+1e-9 {
					t.Fatalf("a tube at %v leaves the crate %v x %v", p, k.Width, k.Height)
				}
				for _, q := range all[max(0, len(all)-80):] {
					if math.Hypot(p.x-q.x, p.y-q.y) < float64(df)*(1-1e-9) {
						t.Fatalf("tubes at %v and %v overlap", p, q)
					}
				}
				all = append(all, p)
			}
		}
	})
}

func TestPackKeepsItsLimits(t *testing.T) {
	proof.Proof{Share: 60, Full: 10000, Seed: 17}.Run(t, func(t *proof.Case) {
		r := t.Rand
		k, o := shop.House().Crate, footed()
		o.Tube.Length = units.Length(1 + 14*r.Float64())
		n := 1 + r.IntN(2000)
		p, why := Pack(&k, &o.Tube, n)
		if !why.None() {
			t.Fatalf("no packing: %v", why)
		}
		sum := 0
		for _, l := range p.Layers {
			sum += l.Tubes
		}
		if sum != p.PerCrate || p.Crates*(p.PerCrate-1)+p.Fuller != n || p.Fuller < 1 || p.Fuller > p.Crates {
			t.Fatalf("%d tubes: %+v", n, p)
		}
		if most := int(float64(min(k.Mass, k.Crane, k.Payload)) / (float64(p.One) * 1.12)); (p.Crates-1)*min(p.Room, most) >= n {
			t.Fatalf("%d tubes go into fewer crates: %+v", n, p)
		}
		if p.Gross > k.Mass || p.Gross+k.Tackle > k.Crane || p.NoTruck.None() && float64(p.Order) > float64(p.Trucks)*float64(k.Payload) {
			t.Fatalf("over a limit: %+v", p)
		}
		if p.NoTruck.None() != (p.Length <= k.Bed.Length*(1+shop.Slack)) || p.NoTruck.None() != (p.Trucks > 0) {
			t.Fatalf("on a bed of %v: %+v", k.Bed, p)
		}
		near(t, "order", float64(p.Order), float64(n)*float64(o.Tube.HeaviestWeight())*1.12, 1e-12)
		proof.Finite(t, "packing", p)
	})
}

// Hand calculation: 320 tubes in crates for 99 are four of 80, not three of 99 and one of 23; of 321 one has 81.
func TestLoadsAreEven(t *testing.T) {
	k, o := shop.House().Crate, footed()
	k.LayerLoad = 0
	k.Mass = 99.5 * o.Tube.HeaviestWeight() * units.Mass(1+k.Tare)
	k.Crane, k.Payload = k.Mass+k.Tackle, 100*k.Mass
	for tubes, want := range map[int][3]int{320: {4, 80, 4}, 321: {4, 81, 1}, 396: {4, 99, 4}, 397: {5, 80, 2}, 5: {1, 5, 1}} {
		if p, why := Pack(&k, &o.Tube, tubes); !why.None() || [3]int{p.Crates, p.PerCrate, p.Fuller} != want {
			t.Errorf("%d tubes: %d crates, %d of them with %d; want %v %v", tubes, p.Crates, p.Fuller, p.PerCrate, want, why)
		}
	}
}

// Hand calculation: a crate of 5 m stands on six bearers 1 m apart; slings at 21 and 25 % of it are 2.9 m apart at the outer end, and two
// that hang 60 degrees from upright are 1.674 m long and bear as much as the whole load each. One of 6.25 m hangs from a beam, half on each.
func TestLiftingByHand(t *testing.T) {
	k, o := shop.House().Crate, footed()
	k.Slings = shop.Range[float64]{Low: 0.21, High: 0.25}
	l := lift(&k, &o.Tube, 5, 1000)
	if l.Bearers != 6 || l.Spreader {
		t.Errorf("%+v", l)
	}
	near(t, "bearers", float64(l.Spacing), 1, 1e-12)
	near(t, "slings", float64(l.Slings.From), 1.05, 1e-12)
	near(t, "leg", float64(l.Leg), 2.9/2/(math.Sqrt(3)/2), 1e-12)
	near(t, "load of a leg", float64(l.PerLeg), 1000, 1e-12)
	l = lift(&k, &o.Tube, 6.25, 1000)
	if !l.Spreader || l.Leg != 0 || l.Bearers != 7 {
		t.Errorf("%+v", l)
	}
	near(t, "load with a beam", float64(l.PerLeg), 500, 1e-12)
}

// The most layers that the ranges allow: the lowest fin on the thinnest tube, nested in the highest crate.
func TestLayersAreCounted(t *testing.T) {
	k := shop.House().Crate
	k.Width, k.Height, k.Separator = 20, 20, 0
	if n := len(fill(&k, 0.008)); n != 1+int((20-0.008)/(0.008*math.Sqrt(3)/2)) {
		t.Errorf("%d layers", n)
	}
	if b, ok := LargestHexagon(0.006, shop.Opening{Width: 20, Height: 20}, math.MaxInt32); !ok || !b.Fits(shop.Opening{Width: 20, Height: 20}) || Hexagon(0.006, b.Across/2+1).Fits(shop.Opening{Width: 20, Height: 20}) {
		t.Errorf("%+v", b)
	}
}

// By a second route: mill tube by mill tube.
func TestSawByMillTubes(t *testing.T) {
	proof.Proof{Share: 500, Full: 20000, Seed: 21}.Run(t, func(c *proof.Case) {
		r := c.Rand
		stock, kerfs := units.Length(1+17*r.Float64()), units.Length(0.0025)
		if r.IntN(3) == 0 {
			stock = 12.0025 // whole pieces and their kerfs, and not one too many
		}
		piece, pieces := units.Length(0.5+5*r.Float64()), 1+r.IntN(3000)
		if r.IntN(3) == 0 {
			piece = 3.998333333333333
		}
		s, ok := Saw(stock, kerfs, piece, pieces)
		if !ok {
			if piece <= stock {
				c.Fatalf("nothing is cut from %v", stock)
			}
			return
		}
		var kerf, offcut units.Length
		tubes := 0
		for left := pieces; left > 0; tubes++ {
			rest := stock
			for n := 0; left > 0 && rest >= piece*(1-1e-9); n++ {
				rest -= piece
				left--
				taken := min(kerfs, max(0, rest))
				kerf, rest = kerf+taken, rest-taken
			}
			offcut += max(0, rest)
		}
		if tubes != s.Tubes || math.Abs(float64(kerf-s.Kerf)) > 1e-6 || math.Abs(float64(offcut-s.Offcut)) > 1e-6 {
			c.Fatalf("%v from %v: %d tubes, %v of kerf, %v left over; %+v", piece, stock, tubes, kerf, offcut, s)
		}
	})
}

func TestPackRefuses(t *testing.T) {
	k, o := shop.House().Crate, footed()
	for _, c := range []struct {
		key    string
		change func(*shop.Crate, *Order)
	}{
		{"shop.why.crate_short", func(_ *shop.Crate, o *Order) { o.Tube.Length = 15.5 }},
		{"shop.why.crate_small", func(k *shop.Crate, _ *Order) { k.Width = 0.05 }},
		{"shop.why.crate_heavy", func(k *shop.Crate, _ *Order) { k.Crane = 10 }},
	} {
		k, o := k, o
		c.change(&k, &o)
		if _, why := Pack(&k, &o.Tube, 10); why.Key != c.key {
			t.Errorf("%q, want %s", why.Key, c.key)
		}
	}
	o.Tube.PlainB = 0.01
	if p, _ := Pack(&k, &o.Tube, 10); len(p.Warnings) != 1 {
		t.Error("no warning of a plain end too short for a saddle")
	}
}

// Hand calculation: on a bed of 13.5 m by 2.5 m stand, of crates 6 m long and 1.09 m wide over all, two by two, and as many on them;
// 24 t take nine of 2,500 kg. Of crates 14 m long it takes none.
func TestTrucksTakeWhatStandsOnThem(t *testing.T) {
	k, o := shop.House().Crate, footed()
	k.Width, k.Clearance, k.LayerLoad, k.Bed = 1, 0.1, 0, shop.Bed{Length: 13.5, Width: 2.5, Stack: 2}
	o.Tube.Length = 5.9
	k.Payload = 24e3
	for crates, want := range map[int]int{8: 1, 9: 2, 16: 2, 17: 3} {
		p, why := Pack(&k, &o.Tube, 1)
		if !why.None() || p.OnBed != 8 {
			t.Fatalf("%d on a bed %v", p.OnBed, why)
		}
		p.Crates, p.Gross = crates, 2500
		if p.load(&k); p.Trucks != want {
			t.Errorf("%d crates take %d trucks, want %d", crates, p.Trucks, want)
		}
	}
	k.Payload = 5e3 // two of 2,500 kg
	p, _ := Pack(&k, &o.Tube, 1)
	p.Crates, p.Gross = 8, 2500
	if p.load(&k); p.Trucks != 4 {
		t.Errorf("%d trucks by payload", p.Trucks)
	}
	o.Tube.Length = 13.9
	if p, why := Pack(&k, &o.Tube, 1); !why.None() || p.Trucks != 0 || p.NoTruck.Key != "shop.why.no_truck" {
		t.Errorf("a truck takes what is longer than its bed: %+v", p)
	}
	k.Bed = shop.Bed{Stack: 1}
	if p, _ := Pack(&k, &o.Tube, 1); p.Trucks != 1 || p.OnBed != 0 {
		t.Errorf("without a bed: %d trucks, %d stand", p.Trucks, p.OnBed)
	}
}

// Hand calculation: three layers of ten tubes of 3 kg/m put 6 kg/m on each of the lowest; where it may be 5, two layers stay. What is
// not stated is not judged, and says so.
func TestLayersAreCarried(t *testing.T) {
	k := shop.Crate{LayerLoad: 6}
	layers := []Layer{{Tubes: 10}, {Tubes: 10}, {Tubes: 10}}
	if got := len(carried(&k, layers, 3)); got != 3 {
		t.Errorf("%d layers at the limit", got)
	}
	k.LayerLoad = 5
	if got := len(carried(&k, layers, 3)); got != 2 {
		t.Errorf("%d layers", got)
	}
	if k.LayerLoad = 0; len(carried(&k, layers, 3)) != 3 {
		t.Error("judged by nothing")
	}
	house, o := shop.House().Crate, footed()
	house.LayerLoad = 0
	p, _ := Pack(&house, &o.Tube, 100)
	if len(p.Warnings) != 1 || p.Warnings[0].Key != "shop.why.layers_unjudged" {
		t.Errorf("not said: %v", p.Warnings)
	}
}

// The tackle hangs on the hook with the crate.
func TestTackleIsTakenFromTheCrane(t *testing.T) {
	k := shop.Crate{Mass: 2500, Crane: 2000, Tackle: 150, Payload: 1e5}
	near(t, "heaviest crate", float64(k.Heaviest()), 1850, 0)
}
