package making

import (
	"slices"
	"testing"

	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// By hand: coils of 100 m give 98 m, and 97.5 m where they are joined on; a tube takes 420 turns of 0.1 m, the last 20 of which are
// stripped back. The joints come after 98, 195.5, 293 and 390.5 m: 140, 275 and 125 turns from a tube's beginning, and one among
// the turns that go.
func TestJointsOnTubes(t *testing.T) {
	w := work(100, 40, 2, 10, 1)
	one := Programme{Zones: []Zone{{Kind: PlainEnd, Finished: Interval{0, 0.1}}, {Kind: Finned, Finished: Interval{0.1, 4.1}, Turns: 400, Run: ZoneRun{RunDown: 20}}}}
	got := w.JointsOn(&one, 0.01, 1.3)
	if got.Looked != 4 || got.Near != 3 || got.Nearest != 0 || got.Back != 0 {
		t.Errorf("%+v", got)
	}
	near(t, "room", float64(got.Room), 2, 1e-12)
	if far := w.JointsOn(&one, 0.01, 0); far.Near != 0 {
		t.Errorf("%+v", far)
	}
	w.stand(&one, 1.3)
	near(t, "from", float64(w.Places[0].From), 13, 1e-12)
	near(t, "to", float64(w.Places[0].To), 27, 1e-12)
	// 14 m into the third tube: it stays. 195.5 m are 27.5 m into the fifth: half a metre off. 292.5 and 376.5 m are 40.5 m into a
	// tube: 13.5 m off each.
	got = w.JointsOn(&one, 0.01, 1.3)
	if got.Looked != 4 || got.Near != 3 {
		t.Errorf("%+v", got)
	}
	near(t, "nearest", float64(got.Nearest), 1.3, 1e-9)
	near(t, "most cut off a coil", float64(got.Back), 13.5, 1e-9)
	l := w.Account()
	near(t, "cut back", float64(l.CutBack), 27.5, 1e-9)
	near(t, "bought", float64(l.OnGood+l.Scrap()+l.Remainder), 500, 1e-12)
	if l.Cut != 3 || l.Jointed != 4 || l.Coils != 5 {
		t.Errorf("%+v", l)
	}

	// With a support in the middle, a joint stands from 8 to 12 m and from 29 to 33 m of a tube's strip. After 98 m, at 14, 2 m go;
	// after 193.5, 277.5 and 361.5 m, at 25.5, it is 13.5 m each.
	two := Programme{Zones: []Zone{
		{Kind: Finned, Finished: Interval{0, 2}, Turns: 200, Run: ZoneRun{RunDown: 10}},
		{Kind: BareSpan, Finished: Interval{2, 2.1}},
		{Kind: Finned, Finished: Interval{2.1, 4.1}, Turns: 200, Run: ZoneRun{RunDown: 10}},
	}}
	w.stand(&two, 0.8)
	got = w.JointsOn(&two, 0.01, 0.8)
	near(t, "room of each half", float64(got.Room), 1, 1e-12)
	if l = w.Account(); got.Looked != 4 || got.Near != 4 || l.Cut != 4 {
		t.Errorf("%+v: %+v", got, l)
	}
	near(t, "cut back about a support", float64(l.CutBack), 2+3*13.5, 1e-9)

	// Where no finned length holds a joint, each coil winds two tubes and is cut back to the end of the second: 14 m, four times.
	w.stand(&two, 1.1)
	got = w.JointsOn(&two, 0.01, 1.1)
	if l = w.Account(); len(w.Places) != 0 || got.Looked != 1 || got.Near != 1 || l.Jointed != 0 || l.Cut != 4 || l.Coils != 5 {
		t.Errorf("%+v: %+v", got, l)
	}
	near(t, "cut back between tubes", float64(l.CutBack), 56, 1e-9)
	near(t, "left on the last", float64(l.Remainder), 15, 1e-9)
}

// stand lets joints stand so far off the edges of a programme whose pitch is 10 mm.
func (w *Winding) stand(p *Programme, clear units.Length) {
	w.Places, w.Placed = p.JointPlaces(w.Strip.PerTube(), 0.01, clear), true
}

// Strip that is cut back is bought, and is in the price: of a tube of 12 m on which a joint must stand 2 m off its ends and its support.
func TestStripCutBackIsPaidFor(t *testing.T) {
	c, o := plainShop(), footed()
	o.Tube.Length, o.Tube.Spans = 12, []tube.Span{{Centre: 6, Width: 0.1}}
	c.Buying.StripLeft = shop.StripIsStored
	c.Lines[0].Coils[0].Mass = 30
	at := func(clear units.Length) Plan {
		c.Lines[0].Types = slices.Clone(c.Lines[0].Types)
		c.Lines[0].Types[0].Joints.Clear = clear
		return PlanOf(&c, &c.Lines[0], &o, nil)
	}
	a, p := at(0), at(2)
	if a.Ledger.Cut != 0 || a.Ledger.CutBack != 0 || p.Ledger.Cut < 10 || p.Ledger.CutBack <= 0 {
		t.Fatalf("%+v and %+v", a.Ledger, p.Ledger)
	}
	s := p.Strip()
	strip := float64(s.Mass(p.Ledger.Paid()-a.Ledger.Paid())) * 4.2
	scrap := float64(s.Mass(p.Ledger.Scrap()-a.Ledger.Scrap())) * 4.2 * 0.35
	near(t, "strip", float64(p.Cost.item("strip")-a.Cost.item("strip")), strip, 1e-9)
	near(t, "scrap", float64(p.Cost.item("scrap")-a.Cost.item("scrap")), -scrap, 1e-9)
	// What is paid for more is what is cut back, and what further coils lose at their ends and joints.
	more := func(x, y units.Length) float64 { return float64(y - x) }
	near(t, "paid for", more(a.Ledger.Paid(), p.Ledger.Paid()),
		float64(p.Ledger.CutBack)+more(a.Ledger.CoilEnds, p.Ledger.CoilEnds)+more(a.Ledger.Joints, p.Ledger.Joints)+more(a.Ledger.Stranded, p.Ledger.Stranded), 1e-9)
	if p.Cost.Total <= a.Cost.Total {
		t.Errorf("cost %v, was %v", p.Cost.Total, a.Cost.Total)
	}
}

// A coil that ends with a tube leaves no joint.
func TestCoilThatEndsWithATube(t *testing.T) {
	w := work(44, 40, 2, 3, 1)
	w.Losses.Joint = 0
	one := Programme{Zones: []Zone{{Kind: Finned, Finished: Interval{0, 4}, Turns: 400, Run: ZoneRun{RunDown: 20}}}}
	if got := w.JointsOn(&one, 0.01, 1); got.Looked != 0 || got.Near != 0 {
		t.Errorf("%+v", got)
	}
}
