package rating

import (
	"math"

	"finwright/core/bond"
	"finwright/core/exchanger"
	"finwright/core/fluid"
	"finwright/core/numeric"
)

// Joint is how fin and tube meet in the bank as rated.
type Joint struct {
	Resistance float64          // [m2 K/W] in force, on the bare area
	Gap        float64          // [m] that the hottest case has opened; 0: closed in all
	Case       exchanger.Case   // that opened it
	Root       float64          // [C] at which it did
	Gas        fluid.Properties // in it, as hot as the hottest root in normal running
	Pressure   float64          // [Pa] of that
	Jump       float64          // [m] that the jump of its temperature at the two walls adds
}

// Winding returns the joint of a fin that tension holds [SI]; ok is false for others.
//
// Valid: an Input that has been checked.
// Source: strain as the shop states it, else bond.DefaultStrain; metals of the design.
func (in *Input) Winding() (w bond.Winding, ok bool) {
	strain := in.Strain
	if strain == 0 {
		strain = bond.DefaultStrain
	}
	return bond.Winding{OD: float64(in.Tube.OD), Strain: strain, Fin: &in.FinMetal, Tube: &in.TubeMetal, Metallic: in.Bond()}, in.Tube.Fin.Type.Fixing().Tension
}

// opened returns the widest gap [m] of all cases with the bank as it has settled: what one of them opened stays open. Where the
// gas is the hotter an open joint lets the fin get hotter and the gap wider yet, which is not followed: closed is the bank
// with the joint closed, whose roots count there.
func (t *Thermal) opened(in *Input, w *bond.Winding, closed *Thermal) Joint {
	var j Joint
	for _, c := range in.Cases() {
		bank := t
		if c.Hot() {
			bank = closed
		}
		root := c.At(bank.PartsAt(in, c.Ends).Root)
		if gap := w.Gap(root); gap > j.Gap {
			j.Gap, j.Case, j.Root = gap, c.Case, root
		}
	}
	return j
}

// loosen goes on from a bank that has settled with its joint closed: it opens the joint as far as it is open in the hottest case.
// A gap cools the fin that it stands off, so that the one unknown, the resistance, lies between that of the closed joint and
// that of the gap which the roots of the closed bank would open.
//
// Source: numeric.Descent.
func (s *settling) loosen(closed Thermal, tolerance float64) (Thermal, *Hindrance) {
	in := s.in
	w, held := in.Winding()
	closed.Joint = Joint{Resistance: w.Metallic}
	if !held {
		return closed, nil
	}
	t := closed
	j := t.opened(in, &w, &closed)
	if j.Gap == 0 {
		return closed, nil
	}
	// The coldest gas that there is conducts worst.
	side := numeric.Descent{Low: w.Metallic, High: 2 * s.resistance(&w, &j, min(float64(in.Air.In), float64(in.Process.In)))}
	for range MostRounds {
		now := t.Joint.Resistance
		found := s.resistance(&w, &j, t.Duty.HottestRoot.Celsius)
		wider := found - now
		if near := looseness * tolerance; math.Abs(wider) <= near || side.High-side.Low <= near {
			j.Resistance = now
			t.Joint = j
			return t, nil
		}
		s.path.Bond = side.Next(now, wider)
		var hindered *Hindrance
		if t, hindered = s.settle(t.state, tolerance); hindered != nil {
			return t, hindered
		}
		t.Joint.Resistance = s.path.Bond
		j = t.opened(in, &w, &closed)
	}
	return t, &Hindrance{Cause: NotSettled}
}

// looseness is to what resistance a joint is found [m2 K/W], by the kelvin to which the bank settles.
const looseness = 1e-5

// resistance returns that of a joint [m2 K/W] whose gas is as hot as the root [C], and notes what it follows from.
func (s *settling) resistance(w *bond.Winding, j *Joint, root float64) float64 {
	gas, _ := s.gas.near(root)
	j.Gas, j.Pressure, j.Jump = gas, s.gas.pressure, bond.JumpDistance(gas, s.gas.pressure)
	return w.Resistance(j.Gap, gas.Conductivity, j.Jump)
}

// Loosened is a bank with an open joint as it would be otherwise.
type Loosened struct {
	Closed     Thermal // were its joint closed
	Soft, Hard Thermal // with as little and as much winding strain as there may be
}

// Loosened rates a bank whose joint is open with other joints: U [W/(m2 K)], duty [W] and temperatures [C]. near is the bank as
// rated; ok is false where its joint is closed, or one of the others cannot be rated.
//
// Valid: as Rate.
// Source: as Rate; bond.SoftStrain and bond.HardStrain, or the shop's strain where it is beyond.
func (in *Input) Loosened(near *Thermal) (l Loosened, ok bool) {
	if near.Joint.Gap == 0 {
		return l, false
	}
	var s settling
	ok = true
	with := func(strain float64) Thermal {
		at := *in
		at.Strain = strain
		t, hindered := s.from(&at, near.state, fine)
		ok = ok && hindered == nil
		return t
	}
	w, _ := in.Winding()
	l.Closed = with(math.Inf(1)) // no heat opens what is wound so tight
	l.Soft, l.Hard = with(min(w.Strain, bond.SoftStrain)), with(max(w.Strain, bond.HardStrain))
	return l, ok
}
