package rating

import (
	"fmt"
	"math"
	"testing"

	"finwright/core/tube"
	"finwright/core/units"
)

// standing is a bank of 10 tubes of 57.15 mm fins at 63.5 mm: a face of 635 mm by 6 m at 3 m/s.
func standing(holds Holds) *Input {
	in := Input{Holds: holds, Tube: tube.Tube{OD: 25.4 * units.Millimetre, Length: 6}}
	in.Tube.Fin.Height, in.Air.Velocity = 15.875*units.Millimetre, 3
	in.Bank.Clearance, in.Bank.TubesPerRow, in.Bank.Rows = 6.35*units.Millimetre, 10, 4
	return &in
}

// Fins of 10 mm (45.4 mm over them) in place of 15.875, by hand: at one clearance the pitch is 51.75 mm; over the same face
// 635/51.75 = 12.27, so 12 tubes and 621 mm; the same flow then runs at 3 x 635/621 m/s.
func TestWhatIsHeld(t *testing.T) {
	for _, c := range []struct {
		holds           Holds
		pitch, velocity float64
		tubes           int
	}{
		{Holds{Space: AsEntered, Air: HoldVelocity}, 0.05175, 3, 10},
		{Holds{Space: Pitch, Air: HoldVelocity}, 0.0635, 3, 10},
		{Holds{Space: Clearance, Air: HoldVelocity}, 0.05175, 3, 10},
		{Holds{Space: Face, Air: HoldVelocity}, 0.05175, 3, 12},
		{Holds{Space: Clearance, Air: HoldMass}, 0.05175, 3 * 635 / 517.5, 10},
		{Holds{Space: Face, Air: HoldMass}, 0.05175, 3 * 635.0 / 621, 12},
	} {
		in := standing(c.holds)
		kept := in.Keep(nil)
		in.Tube.Fin.Height = 10 * units.Millimetre
		kept.Follow(in, "fin_height")
		if p := float64(in.TubePitch()); math.Abs(p-c.pitch) > 1e-9 || in.Bank.TubesPerRow != c.tubes || math.Abs(in.Air.Velocity-c.velocity) > 1e-9 {
			t.Errorf("%v: pitch %g, %d tubes, %g m/s", c.holds, p, in.Bank.TubesPerRow, in.Air.Velocity)
		}
	}
}

// Of a stated pitch the clearance is what it leaves; an entry that is varied itself is left alone.
func TestVariedEntryIsLeftAlone(t *testing.T) {
	in := standing(Holds{Space: Clearance, Air: HoldMass})
	in.Bank.TubePitch = 70 * units.Millimetre
	kept := in.Keep(nil)
	in.Tube.Fin.Height = 10 * units.Millimetre
	kept.Follow(in, "fin_height")
	if got := float64(in.TubePitch()); math.Abs(got-(0.0454+0.01285)) > 1e-9 {
		t.Errorf("pitch %g", got)
	}
	fast := standing(Holds{Space: Face, Air: HoldMass})
	kept = fast.Keep(nil)
	fast.Air.Velocity = 5
	kept.Follow(fast, "face_velocity")
	wide := standing(Holds{Space: Face, Air: HoldMass})
	kept = wide.Keep(nil)
	wide.Bank.TubesPerRow = 20
	kept.Follow(wide, "tubes_per_row")
	if fast.Air.Velocity != 5 || wide.Bank.TubesPerRow != 20 || math.Abs(wide.Air.Velocity-1.5) > 1e-12 {
		t.Errorf("%g m/s, %d tubes, %g m/s", fast.Air.Velocity, wide.Bank.TubesPerRow, wide.Air.Velocity)
	}
}

// Fins of 10 mm again: rows stand at 51.75 x 0.8660 = 44.82 mm, so that 222.1 mm of depth take (222.1 - 45.4)/44.82 + 1 = 4.94,
// five rows. 40 tubes are 8 in each of 5 rows, or 7 (5.7 rows, 6) in a row of 7, at their pitch of 63.5 mm.
func TestWholeRowsAndTubes(t *testing.T) {
	in := standing(Holds{Space: Depth})
	kept := in.Keep(nil)
	in.Tube.Fin.Height = 10 * units.Millimetre
	kept.Follow(in, "fin_height")
	if in.Bank.Rows != 5 || in.Bank.TubesPerRow != 10 {
		t.Errorf("%d rows of %d", in.Bank.Rows, in.Bank.TubesPerRow)
	}
	in = standing(Holds{Space: Tubes})
	kept = in.Keep(nil)
	in.Tube.Fin.Height, in.Bank.Rows = 10*units.Millimetre, 5
	kept.Follow(in, "rows")
	if in.Bank.TubesPerRow != 8 || math.Abs(float64(in.TubePitch())-0.0635) > 1e-9 {
		t.Errorf("%d in a row, pitch %g", in.Bank.TubesPerRow, in.TubePitch())
	}
	in.Bank.TubesPerRow = 7
	if kept.Follow(in, "tubes_per_row"); in.Bank.Rows != 6 {
		t.Errorf("%d rows", in.Bank.Rows)
	}
}

// cooled is the bank by hand in four rows, with its film computed.
func cooled(t *testing.T, holds Holds) Input {
	in := byHand(t)
	in.Air.FilmGiven, in.Bank.Rows, in.Bank.Passes, in.Holds = false, 4, 2, holds
	in.Air.Fan.Efficiency = 0.65
	return in
}

// Each point of a curve is the answer of a design that can be entered, and holds what it is said to hold.
func TestCurvesHoldWhatTheySay(t *testing.T) {
	drop := func(in *Input, th *Thermal) float64 { return in.DropJudged(th) }
	power := func(in *Input, th *Thermal) float64 { return th.Draught(in).Power }
	mass := func(_ *Input, th *Thermal) float64 { return th.Flow.FaceMassVelocity * th.Bank.FaceArea() }
	outlet := func(_ *Input, th *Thermal) float64 { return th.Duty.ProcessOut }
	duty := func(_ *Input, th *Thermal) float64 { return math.Abs(th.Duty.Heat) }
	for _, c := range []struct {
		holds Holds
		held  []func(*Input, *Thermal) float64
	}{
		{Holds{Clearance, HoldDrop, HoldInlet}, []func(*Input, *Thermal) float64{drop}},
		{Holds{Face, HoldDrop, HoldEnds}, []func(*Input, *Thermal) float64{drop, outlet}},
		{Holds{Clearance, HoldPower, HoldDuty}, []func(*Input, *Thermal) float64{power, duty}},
		{Holds{Depth, HoldMass, HoldEnds}, []func(*Input, *Thermal) float64{mass, outlet}},
		{Holds{Face, HoldMass, HoldInlet}, []func(*Input, *Thermal) float64{mass}},
	} {
		in := cooled(t, c.holds)
		base := rated(t, &in)
		kept := in.Keep(base)
		for _, height := range []units.Length{14, 15.875, 19} {
			at := in
			at.Tube.Fin.Height = height * units.Millimetre
			kept.Follow(&at, "fin_height")
			var s settling
			found, ok, _ := s.following(&kept, &at, "fin_height", cold(&at), coarse)
			if !ok {
				t.Errorf("%v at %g mm: nothing found", c.holds, float64(height))
				continue
			}
			alone := rated(t, &at)
			near(t, "duty", found.Duty.Heat, alone.Duty.Heat, 1e-5)
			for i, held := range c.held {
				near(t, fmt.Sprint(c.holds, " at ", float64(height), " mm: ", i), held(&at, alone), held(&in, base), 1e-6)
			}
		}
	}
}

// Of an outlet that only a far smaller, laminar flow would hold, nothing is said: it is another stream. What cannot be held
// gives way, and says so.
func TestWhatCannotBeHeld(t *testing.T) {
	in := cooled(t, Holds{AsEntered, HoldVelocity, HoldEnds})
	in.Process.Flow, in.Process.Own.Viscosity = 12, 2e-3
	kept := in.Keep(rated(t, &in))
	var asked []float64
	for _, v := range []float64{3, 1.5, 0.5} {
		at := in
		at.Air.Velocity = v
		kept.Follow(&at, "face_velocity")
		var s settling
		if _, ok, _ := s.following(&kept, &at, "face_velocity", cold(&at), coarse); ok {
			asked = append(asked, at.Process.Flow)
		}
	}
	if len(asked) != 2 || math.Abs(asked[0]/12-1) > 1e-6 || asked[1] < 4 {
		t.Errorf("flows %v", asked)
	}
	none := cooled(t, Holds{Face, HoldDrop, HoldDuty})
	if kept := none.Keep(nil); kept.Holds() != (Holds{Face, HoldVelocity, HoldInlet}) {
		t.Errorf("of a bank that was not rated: %v", kept.Holds())
	}
}
