package design

import (
	"math"
	"slices"
	"testing"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/rating"
)

// Of a new bank the face and the clearance are held and the mass flow, of a retube the pitch and the tubes and the drop; flow and
// inlet in both. What is named is held in either.
func TestUsualHolds(t *testing.T) {
	for _, c := range []struct {
		entries []string
		want    rating.Holds
	}{
		{nil, rating.Holds{Space: rating.Face, Air: rating.HoldMass, Process: rating.HoldInlet}},
		{[]string{"job_kind", "retube"}, rating.Holds{Space: rating.Tubes, Air: rating.HoldDrop, Process: rating.HoldInlet}},
		{[]string{"job_kind", "retube", "hold_space", "depth", "hold_air", "fan_power", "hold_process", "duty"}, rating.Holds{Space: rating.Depth, Air: rating.HoldPower, Process: rating.HoldDuty}},
	} {
		if got := read(t, c.entries...).Holds; got != c.want {
			t.Errorf("%v: %v", c.entries, got)
		}
	}
}

// More tubes at one mass flow run slower: what a question answers carries the duty when it is entered with what followed.
func TestQuestionsKeepToWhatIsHeld(t *testing.T) {
	want := 1300e3
	ask := func(entries ...string) (field.Input, rating.Thermal) {
		in := read(t, append(entries, "duty_wanted", "1300 kW", "tube_length", "20 ft")...)
		return in, rate(t, in).Thermal
	}
	in, th := ask("hold_air", "drop")
	n, why, _ := in.RowsFor(want, &th)
	if !why.None() {
		t.Fatal(why)
	}
	// As many rows at the drop of the four: the air slows down until it has it.
	drop := in.DropJudged(&th)
	in.Bank.Rows = n
	v, why, _ := in.VelocityFor(drop, 0.2, 30, &th)
	if !why.None() || v >= 3 {
		t.Fatal(v, why)
	}
	in.Air.Velocity = v
	if q := math.Abs(rate(t, in).Thermal.Duty.Heat); q < want*(1-1e-6) {
		t.Errorf("%d rows carry %g W at %g m/s", n, q, v)
	}
	fast, th := ask("hold_air", "velocity")
	if m, why, _ := fast.RowsFor(want, &th); !why.None() || m >= n {
		t.Errorf("%d rows at the velocity, %d at the drop", m, n)
	}
	// With the outlet held more tubes take more of the stream; a held duty is what the question varies.
	ends, th := ask("hold_process", "outlet")
	flow, same := read(t, "duty_wanted", "1300 kW", "tube_length", "20 ft"), read(t, "duty_wanted", "1300 kW", "tube_length", "20 ft", "hold_process", "duty")
	a, _, _ := ends.TubesFor(want, &th)
	b, _, _ := flow.TubesFor(want, &th)
	c, _, _ := same.TubesFor(want, &th)
	if a == 0 || a >= b || b != c {
		t.Errorf("%d tubes at the outlet, %d at the flow, %d at the duty", a, b, c)
	}
	if f, _ := evaluate(t, read(t, "duty_wanted", "1300 kW", "hold_space", "tubes")).Find("tubes_wanted"); f.Absent.Key != "absent.tubes_held" {
		t.Errorf("tubes are held, and yet %v", f)
	}
}

// Maps and curves of the surface rest on a film that follows the gas: at one mass flow a wider face is blown at more slowly, and
// its fins are used better; at one drop taller fins, which leave the air more room, faster.
func TestSurfaceFollowsTheGas(t *testing.T) {
	eta := func(air string) float64 {
		in := read(t, "hold_space", "clearance", "hold_air", air)
		th := rate(t, in).Thermal
		return Grid(in, &th, "fin_height", []float64{0.025}, "fin_pitch", []float64{394}, rating.Efficiency)[0]
	}
	velocity := eta("velocity")
	if mass, drop, power := eta("mass_flow"), eta("drop"), eta("fan_power"); mass <= velocity || drop >= velocity || power == velocity {
		t.Errorf("efficiency %g at the velocity, %g at the mass flow, %g at the drop, %g at the power", velocity, mass, drop, power)
	}
}

// By hand: 30 tubes at 25.4 + 2 x 15.875 + 6.35 = 63.5 mm along 6.016 m are 11.46 m2; fins of 18 mm take 67.75 mm, and 12.23 m2
// at one velocity. A pitch that is stated stays, and the clearance gives way.
func TestFollowed(t *testing.T) {
	was := doc(t, "plain_end_a", "40 mm", "plain_end_b", "40 mm", "tube_length", "6096 mm")
	find := func(list []Followed, name string) *Followed {
		for i := range list {
			if string(list[i].Name) == name {
				return &list[i]
			}
		}
		return nil
	}
	change := func(d document.Document, id, text string) document.Document {
		out, err := document.Edit(d, document.Command{Op: "set", Values: []document.Value{{Field: id, Text: &text}}})
		if err != nil {
			t.Fatal(err)
		}
		return out
	}
	list := Follow(was, change(was, "fin_height", "18 mm"))
	face, gas := find(list, "figure.face_area"), find(list, "followed.gas")
	if face == nil || math.Abs(face.Was-30*0.0635*6.016) > 1e-9 || math.Abs(face.Now-30*0.06775*6.016) > 1e-9 {
		t.Errorf("the face: %+v", face)
	}
	if gas == nil || math.Abs(gas.Now/gas.Was-0.06775/0.0635) > 1e-9 || find(list, "field.tip_clearance") != nil {
		t.Errorf("%+v", list)
	}
	pitched := change(was, "tube_pitch", "70 mm")
	if list := Follow(pitched, change(pitched, "fin_height", "18 mm")); len(list) != 2 || find(list, "field.tip_clearance") == nil || find(list, "figure.bank_depth") == nil {
		t.Errorf("at a stated pitch: %+v", list)
	}
	if list := Follow(was, change(was, "tube_pitch", "70 mm")); find(list, "field.tube_pitch") != nil || find(list, "figure.face_area") == nil {
		t.Errorf("what is entered itself followed: %+v", list)
	}
	for _, text := range []string{"no number", "1 m"} {
		if list := Follow(was, change(was, "fin_height", text)); list != nil {
			t.Errorf("%s: %+v", text, list)
		}
	}
}

// What is held of the stream inside and was not stated is said at the field that holds it.
func TestWhatIsHeldUnstatedIsSaid(t *testing.T) {
	for name, c := range map[string]struct {
		entries []string
		key     string
	}{
		"flow and inlet":    {nil, ""},
		"outlet, untold":    {[]string{"hold_process", "outlet"}, "notice.hold_outlet"},
		"outlet, told":      {[]string{"hold_process", "outlet", "inside_out", "80 °C"}, ""},
		"duty, untold":      {[]string{"hold_process", "duty"}, "notice.hold_duty"},
		"duty, told":        {[]string{"hold_process", "duty", "duty_wanted", "500 kW"}, ""},
		"steam has neither": {[]string{"hold_process", "outlet", "inside_fluid", "steam"}, ""},
	} {
		r := evaluate(t, read(t, c.entries...))
		var said string
		for _, n := range r.Notices {
			if n.Field == "hold_process" {
				said = n.Message.Key
				if process, _ := r.Find("process_out"); n.Message.Key == "notice.hold_outlet" && n.Message.Arg("outlet") != celsius(process.SI) {
					t.Errorf("%s: %v held, found %g", name, n.Message.Arg("outlet"), process.SI)
				}
			}
		}
		if said != c.key {
			t.Errorf("%s: %q, want %q", name, said, c.key)
		}
	}
}

// Of a retube pitch, count and length are the customer's: another is refused at its field.
func TestRetubeKeepsToWhatStands(t *testing.T) {
	stands := []string{"job_kind", "retube", "tube_pitch", "63.5 mm", "old_pitch", "63.5 mm", "old_tubes", "120", "old_length", "18 ft"}
	for name, c := range map[string]struct {
		entries    []string
		field, key string
	}{
		"as it stands": {nil, "", ""},
		"wider":        {[]string{"tube_pitch", "65 mm"}, "tube_pitch", "notice.old_pitch"},
		"grown":        {[]string{"tube_pitch", "", "fin_height", "16 mm"}, "tube_pitch", "notice.old_pitch"},
		"more":         {[]string{"tubes_per_row", "31"}, "tubes_per_row", "notice.old_tubes"},
		"two bundles":  {[]string{"bundles", "2"}, "tubes_per_row", "notice.old_tubes"},
		"longer":       {[]string{"tube_length", "6.1 m"}, "tube_length", "notice.old_length"},
		"in mm":        {[]string{"tube_length", "5486.4 mm"}, "", ""},
		"untold":       {[]string{"tube_pitch", "", "old_pitch", ""}, "tube_pitch", "notice.old_pitch_missing"},
		"a new bank":   {[]string{"job_kind", "new", "tube_pitch", "70 mm", "tube_length", "5 m"}, "", ""},
	} {
		found := standing(evaluate(t, read(t, append(slices.Clone(stands), c.entries...)...)))
		switch {
		case c.key == "" && len(found) == 0:
		case len(found) != 1, found[0].Field != c.field, found[0].Message.Key != c.key, (found[0].State == figure.No) != (name != "untold"):
			t.Errorf("%s: %+v", name, found)
		}
	}
}

// standing are the remarks on what stands.
func standing(r Result) (out []Notice) {
	for _, n := range r.Notices {
		switch n.Message.Key {
		case "notice.old_pitch", "notice.old_pitch_missing", "notice.old_tubes", "notice.old_length":
			out = append(out, n)
		}
	}
	return out
}

// "At least the old U x A, at most the old drop" is answered with both beside what is asked.
func TestRetubeIsAnswered(t *testing.T) {
	r := evaluate(t, read(t, "job_kind", "retube", "tube_pitch", "63.5 mm", "old_ua", "20 kW/K", "drop_allowed", "90 Pa", "fin_od_most", "60 mm"))
	states := map[string]figure.State{}
	for _, p := range r.Pairs {
		if p.Over.Stated {
			states[p.Figure] = p.State
		}
	}
	if states["ua"] != figure.Good || states["air_drop"] != figure.No {
		t.Errorf("%v", states)
	}
	if f, _ := r.Find("fin_od"); f.State != figure.Good || f.Tests.Key != "tests.most" {
		t.Errorf("fin OD %s, %v", f.State, f.Tests)
	}
}
