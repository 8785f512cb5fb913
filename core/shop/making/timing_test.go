package making

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// Hand calculation: at 1000 rpm 5.9 m of 10-fpi tube wind in 2.32 min; run-up and
// run-down add half of their 2 s and 0.5 s each, less the turns that they wind.
func TestTubeTimeByHand(t *testing.T) {
	c, o := shop.House(), footed()
	c.Lines[0].Types[0].Spindle = 1000.0 / 60
	o.Tube.PlainA, o.Tube.PlainB = 0.098, 0.098
	p := zones(t, &c, &o)
	got := TimeTube(&c.Lines[0], &p, "")
	near(t, "winding", float64(got.Wind)/60, 2.32+(1+0.5)/60, 0.005/2.32)
	near(t, "secure", float64(got.Secure), 24, 1e-12)
	near(t, "jog", float64(got.Jog), (0.196+0.025)/0.1, 1e-9)
	near(t, "total", float64(got.Total()), float64(got.Wind)+24+2.21+30, 1e-6)
}

// By hand: a coil of 1002 m less 2 m at its ends winds 10 tubes of 100 m, in 10 x 5 + 5
// minutes at four fifths of the clock; 40 tubes of 5 min with 3 coil changes and one rack
// of 8 min take 223 min of work, a shift of 8 h has 384.
func TestTimePerCoilAndShift(t *testing.T) {
	c := shop.House()
	w := work(1002, 100, 0, 40, 0)
	w.Coil.Change = 300
	o := TimeOrder(&c, &c.Lines[0], &w, TubeTime{Wind: 300}, 3600, &Ledger{Changes: 3}, 0, 0)
	near(t, "tubes per coil", w.TubesPerCoil(), 10, 1e-12)
	near(t, "time per coil", float64(o.PerCoil)/60, 55/0.8, 1e-12)
	near(t, "tubes per shift", o.PerShift, 40*384.0/(200+3*5+8), 1e-12)
	w = work(1000, 298, 2, 10, 1)
	l := w.Account()
	near(t, "joints per tube", l.JointsPerTube(w.Made()), 0.3, 1e-12)
}

func TestSpansAddTwoSecuredEndsEach(t *testing.T) {
	c, o := shop.House(), supported()
	p := zones(t, &c, &o)
	near(t, "secure", float64(TimeTube(&c.Lines[1], &p, "").Secure), 7*2*12, 1e-12)
	near(t, "by a band", float64(TimeTube(&c.Lines[1], &p, shop.Band).Secure), 7*2*18, 1e-12)
	near(t, "as the line cannot", float64(TimeTube(&c.Lines[1], &p, shop.Staple).Secure), 7*2*12, 1e-12)
	o.Asked.Security = string(shop.Band)
	near(t, "in the plan", float64(PlanOf(&c, &c.Lines[1], &o, nil).Time.Tube.Secure), 7*2*18, 1e-12)
}

// randomWork returns a possible winding of some tubes on the first line.
func randomWork(r *rand.Rand) Winding {
	for {
		w := work(units.Length(500+2000*r.Float64()), units.Length(50+400*r.Float64()), 1, 1+r.IntN(150), r.IntN(3))
		w.FirstOff, w.Rejected, w.Coil.Change = r.IntN(3), r.IntN(4), 300
		w.Restart = units.Duration(r.IntN(2) * 35)
		draws(&w, r)
		if w.Possible() {
			return w
		}
	}
}

// Hours add up: the activities to the line's time, the blocks of the schedule to
// the clock, and what the events count to coils, racks and tubes.
func TestHoursAddUp(t *testing.T) {
	c := shop.House()
	l := &c.Lines[0]
	proof.Proof{Share: 60, Full: 5000, Seed: 11}.Run(t, func(t *proof.Case) {
		r := t.Rand
		w := randomWork(r)
		tt := TubeTime{Wind: units.Duration(60 + 300*r.Float64()), Load: 30}
		setUp := units.Duration(r.IntN(3)) * 3600
		ledger := w.Account()
		o := TimeOrder(&c, l, &w, tt, setUp, &ledger, 3*w.Made(), 2)
		near(t, "finning", float64(o.OnLine.Of(Finning)), float64(w.Made())*float64(tt.Total()), 1e-12)
		near(t, "coils", float64(o.OnLine.Of(CoilChange)), float64(ledger.Changes)*300+float64(ledger.Jointed)*float64(w.Restart), 1e-12)
		near(t, "racks", float64(o.OnLine.Of(RackChange)), math.Ceil(float64(w.Made())/40)*480, 1e-12)
		near(t, "set-up", float64(o.OnLine.Of(SettingUp)), float64(setUp), 1e-12)
		near(t, "people", float64(o.Person), 2*float64(o.Clock)+(40*3*float64(w.Made())+2*90*60)/0.8, 1e-12)

		s := ScheduleOf(&c, l, &w, tt, setUp, math.MaxInt)
		sum := map[Activity]units.Duration{}
		tubes := 0
		var at Block
		for _, b := range s.Blocks {
			if b.To <= b.From || b.To > c.Crew.Shift*(1+shop.Slack) {
				t.Fatalf("block %+v", b)
			}
			if b.Shift == at.Shift && math.Abs(float64(b.From-at.To)) > 1e-6 || b.Shift == at.Shift+1 && b.From != 0 || b.Shift > at.Shift+1 {
				t.Fatalf("block %+v does not follow %+v", b, at)
			}
			sum[b.Activity] += b.To - b.From
			tubes += b.Tubes
			at = b
		}
		for _, a := range Activities {
			near(t, "schedule of "+string(a), float64(sum[a]), float64(o.OnLine.Of(a))/0.8, 1e-6)
		}
		if tubes != w.Made() || s.Shifts != int(math.Ceil(o.Shifts*(1-1e-9))) || s.More {
			t.Fatalf("%d of %d tubes in %d shifts of %.3f", tubes, w.Made(), s.Shifts, o.Shifts)
		}
		if short := ScheduleOf(&c, l, &w, tt, setUp, 1); (o.Shifts > 1) != short.More && math.Abs(o.Shifts-1) > 1e-6 || len(short.Blocks) > len(s.Blocks) {
			t.Fatalf("one shift of %.3f: more %v", o.Shifts, short.More)
		}
	})
}

func TestDeepestChangeGoverns(t *testing.T) {
	c := shop.House().Lines[0].ChangeOver
	a := Setup{tube.Footed, 0.0254, 0.015, 0.0004, 393, "al1060"}
	for _, k := range []struct {
		change func(*Setup)
		want   units.Duration
	}{
		{func(*Setup) {}, 0},
		{func(s *Setup) { s.Metal = "al1100" }, 0},
		{func(s *Setup) { s.Count = 354 }, c.Pitch},
		{func(s *Setup) { s.Strip, s.Count = 0.0005, 354 }, c.Tooling},
		{func(s *Setup) { s.OD, s.Height = 0.03, 0.012 }, c.OD},
		{func(s *Setup) { s.Type, s.OD = tube.EdgeWound, 0.03 }, c.Type},
	} {
		b := a
		k.change(&b)
		if got := ChangeTime(&c, a, b); got != k.want {
			t.Errorf("%+v: %v, want %v", b, got, k.want)
		}
	}
}

// A schedule ends after 1,001 blocks, also where the last event goes on in the next shift: one tube a rack, each taking as long as the
// change of the rack, in shifts that end in the midst of one.
func TestScheduleEndsAtItsBlocks(t *testing.T) {
	c, o := shop.House(), footed()
	c.Crew.Efficiency = 1
	l := &c.Lines[0]
	l.Racks = shop.Racks{Tubes: 1, Change: 60}
	o.Quantity = 2000
	w := *PlanOf(&c, l, &o, nil).Winding
	w.FirstOff, w.Rejected = 0, 0
	w.Coil.Change = 1e-9
	for events := units.Duration(900.5); events < 1002; events++ { // changes of the coil are blocks too
		c.Crew.Shift = 60 * events
		if s := ScheduleOf(&c, l, &w, TubeTime{Load: 60}, 0, 12); len(s.Blocks) > mostBlocks+1 || !s.More {
			t.Errorf("shifts of %g events: %d blocks, more %v", float64(events), len(s.Blocks), s.More)
		}
	}
}

// What the weld line takes besides, by hand: 35 s to restart at each joint, a heating of 150 s and 1.30 of each tube that is made.
func TestRestartAndPreheatByHand(t *testing.T) {
	c, o := shop.House(), welded()
	c.Rates.Overhead, c.Steps = 0, nil
	l := &c.Lines[2]
	plan := func(restart units.Duration, heated ...shop.Preheat) Plan {
		l.Types = slices.Clone(l.Types)
		l.Types[0].Weld.Restart, l.Types[0].Weld.Preheat = restart, heated
		return PlanOf(&c, l, &o, nil)
	}
	a, p := plan(0), plan(35)
	if a.Ledger.Jointed < 1 {
		t.Fatalf("%+v", a.Ledger)
	}
	near(t, "restarts", float64(p.Time.OnLine.Of(CoilChange)-a.Time.OnLine.Of(CoilChange)), 35*float64(a.Ledger.Jointed), 1e-9)
	near(t, "as ever", float64(a.Time.OnLine.Of(CoilChange)), float64(a.Ledger.Changes)*float64(a.Winding.Coil.Change), 1e-12)
	var clock units.Duration
	s, _ := p.Schedule(&c, math.MaxInt)
	for _, b := range s.Blocks {
		clock += b.To - b.From
	}
	near(t, "in the schedule", float64(clock), float64(p.Time.Clock), 1e-9)

	other, p := plan(0, shop.Preheat{Metal: "t91", Time: 150, Cost: 1.3}), plan(0, shop.Preheat{Metal: o.TubeMetal.ID, Time: 150, Cost: 1.3})
	made := float64(p.Winding.Made())
	near(t, "heating", float64(p.Time.OnLine.Of(Finning)-a.Time.OnLine.Of(Finning)), 150*made, 1e-9)
	near(t, "what it uses up", float64(p.Cost.item("preheat")), 1.3*made, 1e-12)
	near(t, "line and crew", float64(p.Cost.item("finning")-a.Cost.item("finning")), 150*made*(65+2*38)/3600/0.8, 1e-9)
	if other.Cost.Total != a.Cost.Total {
		t.Error("a tube of another metal is heated")
	}
}
