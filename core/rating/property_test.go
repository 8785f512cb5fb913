package rating

import (
	"math"
	"slices"
	"sync/atomic"
	"testing"

	"finwright/core/airside"
	"finwright/core/fluid"
	"finwright/core/internal/sample"
	"finwright/core/proof"
	"finwright/core/tube"
	"finwright/core/units"
)

// anyBank is a bank of the size that is built: tubes of 16 to 50 mm, usual fins, air in, water, steam or an oil inside.
func anyBank(c *proof.Case) Input {
	between := func(low, high float64) float64 { return low + (high-low)*c.Rand.Float64() }
	mm := func(low, high float64) units.Length { return units.Length(between(low, high)) * units.Millimetre }
	tb := sample.Embedded()
	types := tube.FinTypes()
	tb.Fin.Type = types[c.Rand.IntN(len(types))]
	tb.OD, tb.Wall = mm(16, 50), mm(1.5, 3)
	tb.Fin.Height, tb.Fin.Strip, tb.Fin.Count = mm(6, 19), mm(0.3, 0.5), units.PerLength(between(200, 430))
	tb.Fin.Sleeve, tb.Length = 0.5*units.Millimetre, units.Length(between(2, 12))
	ofTube, ofFin := sample.Metals()
	rows := 1 + c.Rand.IntN(8)
	in := Input{
		Tube: tb, TubeMetal: ofTube, FinMetal: ofFin,
		Air: Air{
			Metal: Optional{80, true}, In: units.Temperature(between(-10, 45)), Humidity: c.Rand.Float64(), Altitude: units.Length(between(0, 2000)),
			Velocity: between(1, 6), Fouling: between(0, 1e-3), Fan: Fan{Efficiency: 0.6},
		},
		Bank: Bank{
			Layout: []airside.Layout{airside.Staggered, airside.InLine}[c.Rand.IntN(2)], Clearance: mm(2, 12),
			Rows: rows, TubesPerRow: 2 + c.Rand.IntN(60), Passes: 1 + c.Rand.IntN(rows),
		},
		Process: Process{Fluid: Water, In: units.Temperature(between(55, 170)), Fouling: between(0, 5e-4)},
	}
	in.Process.Flow = between(300, 2500) * in.PassSection() // [kg/(m2 s)] in the bores
	switch c.Rand.IntN(4) {
	case 0:
		in.Process.Fluid, in.Process.Flow = Steam, 0
	case 1:
		in.Process.Fluid = OwnFluid
		in.Process.Own = fluid.Properties{Density: 820, HeatCapacity: 2200, Viscosity: math.Pow(10, between(-3.3, -1.5)), Conductivity: 0.12}
	}
	if c.Rand.IntN(4) == 0 {
		in.Air.FilmGiven, in.Air.Film = true, units.FilmCoefficient(between(15, 90))
	}
	return in
}

// Heat that leaves the stream is in the air, nothing is hotter or colder than what comes in, and a whole is less than its parts.
func TestAnyBankBalances(t *testing.T) {
	var settled atomic.Int64
	count := proof.Proof{Share: 150, Full: 20000, Seed: 21}.Run(t, func(c *proof.Case) {
		in := anyBank(c)
		th, hindered := Rate(&in)
		if hindered != nil {
			return
		}
		settled.Add(1)
		d := &th.Duty
		air, process := float64(in.Air.In), float64(in.Process.In)
		gas, err := in.gas()
		if err != nil {
			c.Fatal(err)
		}
		capacity := gas.inlet.Density * in.Air.Velocity * th.Bank.FaceArea() * th.Gas.HeatCapacity
		near(c, "heat in the air", capacity*(d.AirOut-air), d.Heat, 1e-9)
		if in.Process.Fluid == Steam {
			near(c, "heat of the condensate", th.Condensed*th.Vapour.LatentHeat, d.Heat, 1e-9)
		} else {
			p, err := in.liquid((process + d.ProcessOut) / 2)
			if err != nil {
				c.Fatal(err)
			}
			near(c, "heat of the stream", in.Process.Flow*p.HeatCapacity*(process-d.ProcessOut), d.Heat, 1e-8)
		}
		for what, at := range map[string]float64{
			"air out": d.AirOut, "stream out": d.ProcessOut, "stream": d.MeanProcess, "air": d.MeanAir, "wall": th.state.wall, "root": th.state.root,
			"hottest metal": d.Hottest.Celsius, "coldest metal": d.Coldest.Celsius, "hottest root": d.HottestRoot.Celsius, "tip": th.Tip(),
		} {
			if !(at >= air-1e-9 && at <= process+1e-9) {
				c.Errorf("%s at %g C, streams come in with %g and %g C", what, at, air, process)
			}
		}
		if !(th.Overall.OnInside < th.Inside.Coefficient && th.Overall.OnTotal < th.OutsideFilm*th.Eta) {
			c.Errorf("U of %g on the inside and %g on the total area, films of %g and %g", th.Overall.OnInside, th.Overall.OnTotal, th.Inside.Coefficient, th.OutsideFilm)
		}
		if th.Rounds > MostRounds/2 {
			c.Errorf("settles in %d rounds", th.Rounds)
		}
		briefly, hindered := RateBriefly(&in)
		if hindered != nil || briefly.Duty != th.Duty || briefly.UsedFilm.Answer != th.UsedFilm.Answer || briefly.UsedDrop.Answer != th.UsedDrop.Answer {
			c.Error("what is rated briefly is another bank")
		}
	})
	if n := int(settled.Load()); n < count*9/10 {
		t.Errorf("only %d of %d could be rated", n, count)
	}
}

// anyOil is a bank with an oil inside that is ten times as thick cold as hot, between laminar and turbulent flow or near it:
// there the heat hangs on the temperatures as much as it can.
func anyOil(c *proof.Case) Input {
	in := anyBank(c)
	between := func(low, high float64) float64 { return low + (high-low)*c.Rand.Float64() }
	oil := fluid.Properties{Density: between(600, 1100), HeatCapacity: between(1500, 4200), Viscosity: between(5e-3, 2e-2), Conductivity: 0.13}
	hot := OwnPoint{At: 100, Properties: fluid.Properties{Density: 826, HeatCapacity: 2260, Viscosity: 2.1e-3, Conductivity: 0.127}}
	hotter := OwnPoint{At: 140, Properties: fluid.Properties{Density: 802, HeatCapacity: 2420, Viscosity: 1.2e-3, Conductivity: 0.124}}
	in.Process = Process{
		Fluid: OwnFluid, Own: oil, OwnAt: 60, More: [MostPoints - 1]OwnPoint{hot, hotter}, Points: 2 + c.Rand.IntN(2),
		In: units.Temperature(between(70, 180)), Fouling: in.Process.Fouling,
	}
	p, _ := in.own(float64(in.Process.In))
	in.Process.Flow = between(1000, 6000) * p.Viscosity / float64(in.Tube.InsideOD()) * in.PassSection() // of a Reynolds number
	return in
}

// An oil comes to one state, whichever the search sets out from, soon, and a billionth more of it comes to nearly the same.
func TestAnyOilComesToOneState(t *testing.T) {
	proof.Proof{Share: 600, Full: 20000, Seed: 25}.Run(t, func(c *proof.Case) {
		in := anyOil(c)
		th, hindered := Rate(&in)
		if hindered != nil {
			if hindered.Cause == NotSettled {
				c.Error("does not settle")
			}
			return
		}
		if th.Rounds > MostRounds/2 {
			c.Errorf("settles in %d rounds", th.Rounds)
		}
		start := th.state
		start.heat *= 0.5 + c.Rand.Float64()
		start.process, start.wall = float64(in.Process.In), float64(in.Air.In)
		var s settling
		other, hindered := s.from(&in, start, fine)
		if hindered != nil {
			c.Fatal("does not settle from another start")
		}
		near(c, "heat from another start", other.Duty.Heat, th.Duty.Heat, 1e-6)
		in.Process.Flow *= 1 + 1e-9
		more, hindered := Rate(&in)
		if hindered != nil {
			c.Fatal("a billionth more does not settle")
		}
		near(c, "heat of a billionth more", more.Duty.Heat, th.Duty.Heat, 1e-6)
	})
}

// More air, a hotter stream and a better film carry more; dirt and a worse joint carry less.
func TestDutyGoesOneWay(t *testing.T) {
	proof.Proof{Share: 60, Full: 5000, Seed: 22}.Run(t, func(c *proof.Case) {
		in := anyBank(c)
		th, hindered := Rate(&in)
		if hindered != nil {
			return
		}
		for what, change := range map[string]struct {
			more bool
			by   func(*Input)
		}{
			"faster air":      {true, func(in *Input) { in.Air.Velocity *= 1.05 }},
			"a hotter stream": {true, func(in *Input) { in.Process.In += 2 }},
			"dirt outside":    {false, func(in *Input) { in.Air.Fouling += 1e-4 }},
			"dirt inside":     {false, func(in *Input) { in.Process.Fouling += 1e-4 }},
			"a worse joint":   {false, func(in *Input) { in.Process.Bond = Optional{in.Bond() + 5e-5, true} }},
		} {
			other := in
			change.by(&other)
			after, hindered := Rate(&other)
			if hindered != nil {
				continue
			}
			if rise := after.Duty.Heat - th.Duty.Heat; change.more && !(rise > 0) || !change.more && !(rise < 0) {
				c.Errorf("%s changes %g W by %g W", what, th.Duty.Heat, rise)
			}
		}
	})
}

// Where properties are constant, heat goes with the difference of the inlets, and back when they change places.
func TestHeatGoesWithTheDifference(t *testing.T) {
	in := byHand(t)
	in.Bank.Rows, in.Bank.Passes = 5, 2
	heat := rated(t, &in).Duty.Heat
	in.Process.In, in.Air.In = in.Air.In, in.Process.In
	near(t, "the other way", rated(t, &in).Duty.Heat, -heat, exact)
	in.Air.In = 30
	in.Process.In = 130
	near(t, "twice the difference", rated(t, &in).Duty.Heat, 2*heat, exact)
	in.Process.In = 30
	if q := rated(t, &in).Duty.Heat; q != 0 {
		t.Errorf("%g W between equals", q)
	}
}

// A stream that does not cool gives the air 1 - exp(-NTU) whatever the arrangement; without a film nothing passes.
func TestRateAtItsLimits(t *testing.T) {
	for rows := 1; rows <= 6; rows++ {
		in := byHand(t)
		in.Bank.Rows = rows
		in.Process.Own.HeatCapacity = 1e12
		in.Process.Own.Viscosity = 1e-3
		th := rated(t, &in)
		near(t, "effectiveness", th.Duty.Effectiveness, -math.Expm1(-th.Duty.TransferUnits), 1e-8)
		in = byHand(t)
		in.Air.Film = 1e-9
		if th := rated(t, &in); !(th.Duty.Heat >= 0 && th.Duty.Heat < 1e-2) {
			t.Errorf("%g W through no film", th.Duty.Heat)
		}
	}
}

// What hinders is named by its cause.
func TestHindrances(t *testing.T) {
	for what, c := range map[string]struct {
		change func(*Input)
		cause  Cause
	}{
		"air on a mountain that is none":    {func(in *Input) { in.Air.Kind, in.Air.Altitude = MoistAir, 1e5 }, GasBeyond},
		"air as hot as a flame":             {func(in *Input) { in.Air.Kind, in.Air.In = MoistAir, 2000 }, GasBeyond},
		"water colder than ice":             {func(in *Input) { in.Process.Fluid, in.Process.In, in.Air.In = Water, -60, -70 }, StreamBeyond},
		"steam past its critical point":     {func(in *Input) { in.Process.Fluid, in.Process.In = Steam, 500 }, StreamBeyond},
		"steam that is colder than the air": {func(in *Input) { in.Process.Fluid, in.Process.In = Steam, 20 }, NoCondensing},
	} {
		in := byHand(t)
		c.change(&in)
		_, hindered := Rate(&in)
		if hindered == nil || hindered.Cause != c.cause || (hindered.Range == nil) != (c.cause == NoCondensing) {
			t.Errorf("%s: %+v", what, hindered)
		}
	}
}

// The number of tubes carries the duty and one less does not; at the velocity found the drop is the one asked for.
func TestAskedTheOtherWay(t *testing.T) {
	proof.Proof{Share: 20, Full: 2000, Seed: 23}.Run(t, func(c *proof.Case) {
		in := anyBank(c)
		th, hindered := Rate(&in)
		if hindered != nil {
			return
		}
		wanted := th.Duty.Heat * (0.5 + c.Rand.Float64())
		if n, why, _ := in.TubesFor(wanted, &th); why.None() {
			duty := func(n int) float64 {
				other := in
				other.Bank.TubesPerRow = n
				t, hindered := Rate(&other)
				if hindered != nil {
					return 0
				}
				return t.Duty.Heat
			}
			if slack := 1e-5 * wanted; duty(n) < wanted-slack || n > 1 && duty(n-1) > wanted+slack {
				c.Errorf("%d tubes carry %g W, one less %g W, wanted %g W", n, duty(n), duty(n-1), wanted)
			}
		}
		if !th.HasDrop() {
			return
		}
		drop := th.UsedDrop.Answer.Total * (0.5 + c.Rand.Float64())
		v, why, _ := in.VelocityFor(drop, 0.3, 15, &th)
		if !why.None() {
			c.Fatalf("no velocity for %g Pa: %s", drop, why.Key)
		}
		in.Air.Velocity = v
		if th, hindered = Rate(&in); hindered == nil {
			near(c, "drop judged", in.DropJudged(&th), drop, 1e-4)
		}
	})
}

// The spread holds the bank between those of the lowest and the highest film in range.
func TestSpreadOfFilms(t *testing.T) {
	proof.Proof{Share: 60, Full: 2000, Seed: 24}.Run(t, func(c *proof.Case) {
		in := anyBank(c)
		th, hindered := Rate(&in)
		if hindered != nil {
			return
		}
		s := in.Spread(&th)
		if in.Air.FilmGiven {
			if s.Count != 0 {
				c.Errorf("%d films where one is given", s.Count)
			}
			return
		}
		films := 0
		for _, f := range th.Films {
			if f.InRange {
				films++
			}
		}
		if s.Count != films {
			c.Errorf("%d films of %d in range", s.Count, films)
		}
		if films > 0 && s.Low.Duty.Heat > s.High.Duty.Heat*(1+1e-9) {
			c.Errorf("%g W with the lowest film, %g W with the highest", s.Low.Duty.Heat, s.High.Duty.Heat)
		}
		if films > 0 && th.UsedFilm.InRange && (th.Duty.Heat < s.Low.Duty.Heat*(1-1e-6) || th.Duty.Heat > s.High.Duty.Heat*(1+1e-6)) {
			c.Errorf("%g W is not from %g to %g W", th.Duty.Heat, s.Low.Duty.Heat, s.High.Duty.Heat)
		}
	})
}

// A sweep says of each design what it says alone, and of one that cannot be nothing.
func TestSweeps(t *testing.T) {
	in := byHand(t)
	in.Air.FilmGiven, in.Bank.Rows, in.Bank.Passes = false, 4, 2
	th := rated(t, &in)
	counts := []float64{200, 0, 300, 400}
	at := func(i int) *Input {
		if counts[i] == 0 {
			return nil
		}
		other := in
		other.Tube.Fin.Count = units.PerLength(counts[i])
		return &other
	}
	var seen []int
	kept := in.Keep(th)
	SweepSurface(len(counts), at, &kept, th, func(i int, s Surface, ok bool) {
		seen = append(seen, i)
		if ok != (counts[i] > 0) {
			t.Errorf("surface %d: %v", i, ok)
		}
		if alone := at(i); ok && s != alone.Surface(th) {
			t.Errorf("surface %d is another alone", i)
		}
	})
	SweepBank(len(counts), at, &kept, "fin_pitch", true, func(i int, answers map[Quantity]Answer) {
		seen = append(seen, i)
		alone := at(i)
		if (answers == nil) != (alone == nil) {
			t.Errorf("bank %d: %v", i, answers)
		}
		if alone == nil {
			return
		}
		for q, want := range Answers(alone, rated(t, alone)) {
			near(t, string(q), answers[q].Value, want.Value, 1e-5)
		}
	})
	if !slices.Equal(seen, []int{0, 1, 2, 3, 0, 1, 2, 3}) {
		t.Errorf("visited %v", seen)
	}
}
