package making

import "testing"

// By hand: coils of 100 m give 98 m, and 97.5 m where they are joined on; a tube takes 420 turns of 0.1 m, the last 20 of which are
// stripped back. The joints come after 98, 195.5, 293 and 390.5 m: 140, 275 and 125 turns from a tube's beginning, and one among
// the turns that go.
func TestJointsOnTubes(t *testing.T) {
	w := work(100, 40, 2, 10, 1)
	one := Programme{Zones: []Zone{{Kind: PlainEnd, Finished: Interval{0, 0.1}}, {Kind: Finned, Finished: Interval{0.1, 4.1}, Turns: 400, Run: ZoneRun{RunDown: 20}}}}
	got := w.JointsOn(&one, 0.01, 1.3)
	if got.Looked != 4 || got.Near != 3 || got.Nearest != 0 {
		t.Errorf("%+v", got)
	}
	near(t, "room", float64(got.Room), 2, 1e-12)
	near(t, "strip cut off between two tubes", float64(got.Back), 13+13+2-13, 1e-12)
	if far := w.JointsOn(&one, 0.01, 0); far.Near != 0 {
		t.Errorf("%+v", far)
	}

	// With a support in the middle, the coil is changed before its near side: 13 m to it, the turns that go, 13 m behind it.
	two := Programme{Zones: []Zone{
		{Kind: Finned, Finished: Interval{0, 2}, Turns: 200, Run: ZoneRun{RunDown: 10}},
		{Kind: BareSpan, Finished: Interval{2, 2.1}},
		{Kind: Finned, Finished: Interval{2.1, 4.1}, Turns: 200, Run: ZoneRun{RunDown: 10}},
	}}
	got = w.JointsOn(&two, 0.01, 0.8)
	near(t, "room of each half", float64(got.Room), 1, 1e-12)
	near(t, "strip cut off about a support", float64(got.Back), 8+1+8, 1e-12)
	// After 98 m of the third tube: 140 turns, 60 from the support; 275 turns are 65 behind it, 125 turns 75 before it.
	if got.Looked != 4 || got.Near != 4 {
		t.Errorf("%+v", got)
	}
	near(t, "where no finned length holds a joint", float64(w.JointsOn(&two, 0.01, 1.1).Back), 42, 1e-12)
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
