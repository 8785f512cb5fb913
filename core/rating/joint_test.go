package rating

import (
	"fmt"
	"math"
	"sync/atomic"
	"testing"

	"finwright/core/exchanger"
	"finwright/core/internal/sample"
	"finwright/core/proof"
	"finwright/core/tube"
	"finwright/core/units"
)

// hotByHand is a footed tube of aluminium on carbon steel in so much gas of constant properties, with so much in it, that neither
// stream changes its temperature: 20 C outside and 200 C inside everywhere.
func hotByHand(t testing.TB) Input {
	t.Helper()
	in := byHand(t)
	in.Tube = sample.Footed()
	in.TubeMetal, in.FinMetal = sample.Metals()
	in.Air.In, in.Air.Velocity, in.Process.In = 20, 3e9, 200
	in.Process.Own.HeatCapacity = 1e15
	in.Process.Bond = Optional{5e-5, true}
	in.Beyond.FlowLost = FlowExcluded
	return in
}

// Between two streams of one temperature each the opened joint is one equation. By hand, with what the closed bank has before
// (a) and behind (b) the joint on the bare area:
//
//	T = 20 + 180 b/(a + R + b),  e = (af - at)(T - 20) - 0.001,  g = 12.7 mm e,  R = (g + j g/(g + j))/0.0275 + 5e-5
//
// with 24.4 and 12.7e-6 at 200 C, 23.6 and 12.1e-6 at 100 C and straight lines between, and j of 1.1 kg/m3, 1.95e-5 Pa s and
// Pr 0.71405 at 101,325 Pa: l = 1.95e-5 sqrt(pi/(2 x 101325 x 1.1)) = 7.3205e-8 m, j = 7/3 x 1.1/0.9 x l/Pr = 2.9238e-7 m.
// Halving finds R; the joint of the rating is found by the search, in the bank.
func TestOpenedByHand(t *testing.T) {
	in := hotByHand(t)
	th := rated(t, &in)
	closed := in
	closed.Strain = math.Inf(1)
	u := rated(t, &closed).Overall
	a, b := u.UpTo(exchanger.TubeWall), 1/u.OnBare-u.UpTo(exchanger.Joint)
	root := func(r float64) float64 { return 20 + 180*b/(a+r+b) }
	low, high := 5e-5, 1e-2
	for range 100 {
		r := (low + high) / 2
		at := root(r)
		mismatch := (23.6-12.1)*1e-6 + ((24.4-12.7)-(23.6-12.1))*1e-6*(at-100)/100
		g := 0.0127 * (mismatch*(at-20) - 0.001)
		const j = 2.9238e-7
		if g > 0 && (g+j*g/(g+j))/0.0275+5e-5 > r {
			low = r
		} else {
			high = r
		}
	}
	near(t, "joint", th.Joint.Resistance, low, 1e-5)
	near(t, "root", th.Duty.HottestRoot.Celsius, root(low), 1e-6)
	near(t, "jump", th.Joint.Jump, 2.9238e-7, 1e-4)
	near(t, "U", th.Overall.OnBare, 1/(a+low+b), 1e-6)
	if th.Joint.Case != exchanger.Normal || !(low > 1e-4) {
		t.Errorf("opened by %q to %g", th.Joint.Case, low)
	}
	f, err := in.MetalField(th)
	if err != nil {
		t.Fatal(err)
	}
	if g, err := closed.MetalField(rated(t, &closed)); err != nil || !(f.Root < g.Root-5) {
		t.Errorf("the metal's field has its root at %g C, closed at %g C (%v)", f.Root, g.Root, err)
	}
}

// What an upset opens stays open in normal running, as wide; gas that is hotter than the stream opens it by the bank with the joint closed.
func TestOpenedByOtherCases(t *testing.T) {
	in := hotByHand(t)
	in.Process.In = 80
	if j := rated(t, &in).Joint; j.Gap != 0 || j.Resistance != 5e-5 {
		t.Fatalf("open at 80 C: %+v", j)
	}
	in.Beyond.StartUp, in.Beyond.Upset = Optional{150, true}, Optional{250, true}
	th := rated(t, &in)
	ends := Ends{Process: 250, Gas: 20}
	w, _ := in.Winding()
	if th.Joint.Case != exchanger.Upset {
		t.Errorf("opened by %q", th.Joint.Case)
	}
	near(t, "root in the upset", th.Joint.Root, ends.At(th.PartsAt(&in, ends).Root), exact)
	near(t, "gap", th.Joint.Gap, w.Gap(th.Joint.Root), exact)

	in.Beyond = Cases{FlowLost: FlowPossible, GasUpset: Optional{300, true}}
	in.Process.In, in.Air.In = 20, 60
	th = rated(t, &in)
	if th.Joint.Case != exchanger.FlowLost || th.Joint.Root != 300 {
		t.Errorf("without a stream in gas of 300 C: %+v", th.Joint)
	}
	in.Beyond.FlowLost, in.Process.Fouling = FlowExcluded, 2e-3 // whose wall is hot
	closed := in
	closed.Strain = math.Inf(1)
	ends = Ends{Process: 20, Gas: 300}
	near(t, "root in hot gas", rated(t, &in).Joint.Root, ends.At(rated(t, &closed).PartsAt(&in, ends).Root), exact)
}

// anyJoint is a bank of fins that tension holds, in heat that may open it.
func anyJoint(c *proof.Case) Input {
	in := anyBank(c)
	in.Tube.Fin.Type = []tube.FinType{tube.Footed, tube.OverlapFooted, tube.EdgeWound}[c.Rand.IntN(3)]
	maybe := func(low, high float64) Optional {
		return Optional{low + (high-low)*c.Rand.Float64(), c.Rand.IntN(3) == 0}
	}
	in.Beyond = Cases{StartUp: maybe(60, 250), Upset: maybe(60, 300), GasStartUp: maybe(-10, 60), GasUpset: maybe(-10, 300), FlowLost: FlowPossible}
	if in.Process.Fluid == OwnFluid {
		in.Process.In = units.Temperature(60 + 200*c.Rand.Float64())
	}
	if c.Rand.IntN(5) == 0 { // hot gas outside
		in.Air.Kind, in.Air.In = DryAir, units.Temperature(150+200*c.Rand.Float64())
		in.Process.Fluid, in.Process.In = Water, units.Temperature(20+60*c.Rand.Float64())
		in.Process.Flow, in.Process.Pressure = 1500*in.PassSection(), Optional{1.5e7, true}
	}
	in.Strain = []float64{0, 0.4e-3, 1.45e-3}[c.Rand.IntN(3)]
	return in
}

// An opened joint is what its own numbers say, and no case opens it wider. It carries no more than a closed one; more winding
// strain never carries less, and more dirt on either side never more.
func TestAnyJoint(t *testing.T) {
	var opened atomic.Int64
	count := proof.Proof{Share: 60, Full: 6000, Seed: 26}.Run(t, func(c *proof.Case) {
		in := anyJoint(c)
		th, hindered := Rate(&in)
		if hindered != nil {
			return
		}
		j, heat := th.Joint, math.Abs(th.Duty.Heat)
		for _, r := range th.Overall.Resistances {
			if r.Layer == exchanger.Joint && r.OnBare != j.Resistance {
				c.Errorf("a joint of %g in a path with one of %g", j.Resistance, r.OnBare)
			}
		}
		if j.Gap == 0 {
			return
		}
		opened.Add(1)
		w, _ := in.Winding()
		near(c, "gap", j.Gap, w.Gap(j.Root), exact)
		near(c, "resistance", j.Resistance, w.Resistance(j.Gap, j.Gas.Conductivity, j.Jump), 1e-6)
		for _, ends := range in.Cases() {
			if root := ends.At(th.PartsAt(&in, ends.Ends).Root); !ends.Hot() && w.Gap(root) > j.Gap*(1+1e-6) {
				c.Errorf("%s opens %g m, the widest is %g m", ends.Case, w.Gap(root), j.Gap)
			}
		}
		l, ok := in.Loosened(&th)
		if !ok {
			c.Fatal("no other joint can be rated")
		}
		last := 0.0
		for i, q := range []float64{math.Abs(l.Soft.Duty.Heat), heat, math.Abs(l.Hard.Duty.Heat), math.Abs(l.Closed.Duty.Heat)} {
			if q < last*(1-1e-8) {
				c.Errorf("duty %d of soft, stated, hard and closed is %g W after %g W", i, q, last)
			}
			last = q
		}
		if in.Ends().Hot() {
			return // where fins get hotter as they come loose, dirt may keep them cooler
		}
		for i := range 8 {
			dirt := 2e-5 * float64(i*i)
			inside, outside := in, in
			inside.Process.Fouling += dirt
			outside.Air.Fouling += dirt
			for what, dirty := range map[string]*Input{"inside": &inside, "outside": &outside} {
				if now, hindered := Rate(dirty); hindered == nil && math.Abs(now.Duty.Heat) > heat*(1+1e-8) {
					c.Errorf("%g m2K/W of dirt %s: %g W after %g W", dirt, what, math.Abs(now.Duty.Heat), heat)
				}
			}
		}
		briefly, hindered := RateBriefly(&in)
		if hindered != nil || briefly.Joint != th.Joint {
			c.Error("what is rated briefly has another joint")
		}
		var s settling
		if again, hindered := s.from(&in, l.Soft.state, fine); hindered == nil {
			near(c, "joint found from elsewhere", again.Joint.Resistance, j.Resistance, 1e-6)
		}
	})
	if n := int(opened.Load()); n < count/10 {
		t.Errorf("only %d of %d are open", n, count)
	}
}

// A joint that begins to open changes nothing at once, whatever opens it.
func TestJointOpensWithoutAStep(t *testing.T) {
	for what, open := range map[string]func(in *Input, celsius float64){
		"the stream": func(in *Input, celsius float64) { in.Process.In = units.Temperature(celsius) },
		"an upset":   func(in *Input, celsius float64) { in.Beyond.Upset = Optional{celsius, true} },
		"hot gas": func(in *Input, celsius float64) {
			in.Air.In, in.Process.In, in.Process.Fouling = 60, 20, 2e-3
			in.Beyond.GasUpset = Optional{celsius, true}
		},
	} {
		at := func(celsius float64) *Thermal {
			in := byHand(t)
			in.Tube = sample.Footed()
			in.TubeMetal, in.FinMetal = sample.Metals()
			open(&in, celsius)
			return rated(t, &in)
		}
		low, high := 80.0, 400.0
		for high-low > 1e-9 {
			if mid := (low + high) / 2; at(mid).Joint.Gap > 0 {
				high = mid
			} else {
				low = mid
			}
		}
		below, above := at(low), at(high)
		if below.Joint.Gap > 0 || above.Joint.Gap == 0 {
			t.Fatalf("%s: no opening between %g and %g C", what, low, high)
		}
		near(t, fmt.Sprint(what, ": U at ", high), above.Overall.OnBare, below.Overall.OnBare, 1e-7)
		near(t, what+": duty", above.Duty.Heat, below.Duty.Heat, 1e-7)
	}
}
