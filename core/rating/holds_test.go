package rating

import (
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
		{Holds{AsEntered, HoldVelocity}, 0.05175, 3, 10},
		{Holds{Pitch, HoldVelocity}, 0.0635, 3, 10},
		{Holds{Clearance, HoldVelocity}, 0.05175, 3, 10},
		{Holds{Face, HoldVelocity}, 0.05175, 3, 12},
		{Holds{Clearance, HoldMass}, 0.05175, 3 * 635 / 517.5, 10},
		{Holds{Face, HoldMass}, 0.05175, 3 * 635.0 / 621, 12},
	} {
		in := standing(c.holds)
		kept := in.Keep()
		in.Tube.Fin.Height = 10 * units.Millimetre
		kept.Follow(in, "fin_height")
		if p := float64(in.TubePitch()); math.Abs(p-c.pitch) > 1e-9 || in.Bank.TubesPerRow != c.tubes || math.Abs(in.Air.Velocity-c.velocity) > 1e-9 {
			t.Errorf("%v: pitch %g, %d tubes, %g m/s", c.holds, p, in.Bank.TubesPerRow, in.Air.Velocity)
		}
	}
}

// Of a stated pitch the clearance is what it leaves; an entry that is varied itself is left alone.
func TestVariedEntryIsLeftAlone(t *testing.T) {
	in := standing(Holds{Clearance, HoldMass})
	in.Bank.TubePitch = 70 * units.Millimetre
	kept := in.Keep()
	in.Tube.Fin.Height = 10 * units.Millimetre
	kept.Follow(in, "fin_height")
	if got := float64(in.TubePitch()); math.Abs(got-(0.0454+0.01285)) > 1e-9 {
		t.Errorf("pitch %g", got)
	}
	fast := standing(Holds{Face, HoldMass})
	kept = fast.Keep()
	fast.Air.Velocity = 5
	kept.Follow(fast, "face_velocity")
	wide := standing(Holds{Face, HoldMass})
	kept = wide.Keep()
	wide.Bank.TubesPerRow = 20
	kept.Follow(wide, "tubes_per_row")
	if fast.Air.Velocity != 5 || wide.Bank.TubesPerRow != 20 || math.Abs(wide.Air.Velocity-1.5) > 1e-12 {
		t.Errorf("%g m/s, %d tubes, %g m/s", fast.Air.Velocity, wide.Bank.TubesPerRow, wide.Air.Velocity)
	}
}
