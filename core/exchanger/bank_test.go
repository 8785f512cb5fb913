package exchanger

import (
	"math"
	"testing"

	"finwright/core/fin"
	"finwright/core/internal/published"
	"finwright/core/proof"
)

// The independent vector of a 1 in footed tube with water inside (computed outside this
// project from the series formula): resistances on the bare area, to the digits given.
func TestOverallVector(t *testing.T) {
	// 940.0 W/m2K is the whole air side on the bare area.
	p := Path{
		OD: 0.0254, ID: 0.021184, InsideFilm: 3000, InsideFouling: 1.8e-4, WallConductivity: 58, Bond: 5e-5,
		AreaRatio: 21.509, SurfaceEfficiency: 1, OutsideFilm: 940.0 / 21.509,
	}
	u := OverallU(p)
	for i, want := range []struct {
		layer Layer
		r     float64
	}{{InsideFilm, 3.997e-4}, {InsideFouling, 2.158e-4}, {TubeWall, 3.974e-5}, {Joint, 5e-5}, {OutsideFouling, 0}, {OutsideFilm, 1.0638e-3}} {
		got := u.Resistances[i]
		if got.Layer != want.layer || math.Abs(got.OnBare-want.r) > 0.5e-7 {
			t.Errorf("%s: %.5g m2K/W, want %s %.5g", got.Layer, got.OnBare, want.layer, want.r)
		}
	}
	near(t, "U on bare", u.OnBare, 565.27, 0.005/565.27)
	near(t, "U on total", u.OnTotal, 26.281, 0.0005/26.281)
	near(t, "U A is the same inside", u.OnInside*p.ID, u.OnBare*p.OD, 1e-14)
	sum := 0.0
	for _, r := range u.Resistances {
		sum += r.Share
	}
	near(t, "shares", sum, 1, 1e-14)
}

func cooler() (Bank, Overall) {
	b := Bank{Arrangement: Arrangement{Rows: 4, Passes: 2}, TubesPerRow: 40, TransversePitch: 0.0635, EdgePitches: 0.5, FinnedLength: 9, OD: 0.0254}
	return b, OverallU(Path{
		OD: 0.0254, ID: 0.021184, InsideFilm: 2000, InsideFouling: 1.8e-4, WallConductivity: 58,
		Bond: 5e-5, OutsideFilm: 45, AreaRatio: 21.5, SurfaceEfficiency: 0.86,
	})
}

func TestBankGeometry(t *testing.T) {
	b, _ := cooler()
	near(t, "face area", b.FaceArea(), 0.0635*40.5*9, 1e-15)
	near(t, "bare area", b.BareArea(), math.Pi*0.0254*9*160, 1e-15)
	// GPSA data book, air-cooler sizing example, from memory: 15e6 Btu/h, Ux 4.2, CMTD 71.3 F,
	// APF 5.58 ft2/ft, 30 ft tubes: 50 090 ft2 and 299 tubes, to the digits of its arithmetic.
	surface := 15e6 / (4.2 * 71.3)
	near(t, "GPSA surface", surface, 50090, 1e-3)
	near(t, "GPSA tubes", surface/(5.58*30), 299, 1e-3)
}

func TestFanPower(t *testing.T) {
	near(t, "fan", FanPower(70, 150, 0.7), 15000, 1e-15) // 70 m3/s x 150 Pa = 10.5 kW of air power
}

func balanced(t testing.TB, name string, d Duty, air, process Stream) {
	t.Helper()
	gained := air.Capacity * (d.AirOut - air.In)
	given := process.Capacity * (process.In - d.ProcessOut)
	if math.IsInf(process.Capacity, 1) {
		given = d.Heat
		if d.ProcessOut != process.In {
			t.Errorf("%s: a condensing fluid leaves at %g, enters at %g", name, d.ProcessOut, process.In)
		}
	}
	// A temperature is kept to 1e-16 of itself, so heat is no better than that times the capacity.
	rounding := 4e-16 * (air.Capacity*(273+math.Abs(air.In)) + min(process.Capacity, 1e12)*(273+math.Abs(process.In)))
	if math.Abs(gained-given) > 1e-9*math.Abs(d.Heat)+rounding || math.Abs(gained-d.Heat) > 1e-9*math.Abs(d.Heat)+rounding {
		t.Errorf("%s: air takes %.12g W, process gives %.12g W, heat %.12g W", name, gained, given, d.Heat)
	}
}

// rated returns the temperatures of each row at its places too.
func rated(b Bank, u Overall, air, process Stream) (Duty, [][]local) {
	rows := make([][]local, b.Rows)
	d := b.rate(u, air, process, func(k, _ int, t local) { rows[k] = append(rows[k], t) })
	return d, rows
}

func TestRate(t *testing.T) {
	b, u := cooler()
	air, process := Stream{35, 80e3}, Stream{120, 60e3}
	d, rows := rated(b, u, air, process)
	balanced(t, "cooler", d, air, process)
	near(t, "U A F LMTD", u.OnBare*b.BareArea()*d.Factor*LogMean(120-d.AirOut, d.ProcessOut-35), d.Heat, 1e-12)
	f, absent := b.CorrectionFactor(d.Effectiveness, d.Ratio)
	if !absent.None() {
		t.Fatal(absent)
	}
	near(t, "F from the temperatures", d.Factor, f, 1e-10)
	// Hottest at the inside wall where the process enters, coldest at a root where it leaves into fresh air.
	first, last := rows[3], rows[0]
	if d.Hottest.AtRoot || d.Hottest.Row < 2 || d.Hottest.Place != 0 || d.Hottest.Celsius >= 120 || d.Hottest.Celsius < first[0].root {
		t.Errorf("hottest %+v", d.Hottest)
	}
	if !d.Coldest.AtRoot || d.Coldest.Row != 0 || d.Coldest.Place != 0 || d.Coldest.Celsius <= 35 || d.Coldest.Celsius > last[0].wall {
		t.Errorf("coldest %+v", d.Coldest)
	}
	root := math.Inf(-1)
	for k, row := range rows {
		for i, at := range row {
			root = max(root, at.root)
			if !(at.process > at.wall && at.wall > at.root && at.root > at.airIn && at.airOut > at.airIn) {
				t.Errorf("row %d at place %d: temperatures do not fall from process to air", k, i)
			}
		}
	}
	if d.HottestRoot.Celsius != root {
		t.Errorf("hottest root %g, of the rows %g", d.HottestRoot.Celsius, root)
	}
	if !(d.MeanProcess < process.In && d.MeanProcess > d.ProcessOut && d.MeanAir > air.In && d.MeanAir < d.AirOut) {
		t.Errorf("means of the streams %g and %g", d.MeanProcess, d.MeanAir)
	}
	if brief := b.Balance(u.OnBare, air, process); brief != (Balance{d.Heat, d.MeanProcess}) {
		t.Errorf("briefly %+v, in full %g W and %g C", brief, d.Heat, d.MeanProcess)
	}
}

// The local difference over each resistance must carry the local heat: the air's
// gain in a row, spread over the row's area, falls through the same shares.
func TestMetalTemperatures(t *testing.T) {
	b, u := cooler()
	air, process := Stream{35, 80e3}, Stream{120, 60e3}
	_, rows := rated(b, u, air, process)
	area := b.BareArea() / float64(b.Rows)
	inside := u.Resistances[0].OnBare + u.Resistances[1].OnBare
	for _, row := range rows {
		for _, at := range row {
			flux := air.Capacity * (at.airOut - at.airIn) / area
			near(t, "drop to the wall", at.process-at.wall, flux*inside, 1e-9)
		}
	}
}

func TestHeatedProcess(t *testing.T) {
	b, u := cooler()
	air, process := Stream{180, 80e3}, Stream{20, 60e3}
	d := b.Rate(u, air, process)
	balanced(t, "heater", d, air, process)
	if d.Heat >= 0 || d.ProcessOut <= 20 || d.AirOut >= 180 || d.Hottest.Celsius <= d.Coldest.Celsius {
		t.Errorf("heated process: %g W, %g C, %g C", d.Heat, d.ProcessOut, d.AirOut)
	}
}

func TestCondensing(t *testing.T) {
	b, u := cooler()
	air, process := Stream{35, 80e3}, Stream{120, math.Inf(1)}
	d := b.Rate(u, air, process)
	balanced(t, "condenser", d, air, process)
	near(t, "condenser", d.Effectiveness, 1-math.Exp(-d.TransferUnits), 1e-13)
	near(t, "condenser F", d.Factor, 1, 1e-12)
}

func finite(values ...float64) bool {
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return false
		}
	}
	return true
}

// TestRandomBanks rates any bank a page could ask for, then the same with one
// input doubled or halved: all finite, balanced, between the inlets, F at most one.
func TestRandomBanks(t *testing.T) {
	proof.Proof{Share: 300, Full: 10000, Seed: 5}.Run(t, func(c *proof.Case) {
		random := c.Rand
		between := func(low, high float64) float64 { return low * math.Pow(high/low, random.Float64()) }
		od := between(0.006, 0.33)
		p := Path{
			OD: od, ID: od * (1 - between(0.02, 0.4)), InsideFilm: between(5, 3e4), InsideFouling: between(1e-6, 1e-3),
			WallConductivity: between(10, 400), Bond: between(1e-7, 1e-3), OutsideFilm: between(5, 500),
			OutsideFouling: between(1e-7, 1e-3), AreaRatio: between(1.5, 60), SurfaceEfficiency: between(0.2, 1),
		}
		rows := 1 + random.IntN(10)
		b := Bank{
			Arrangement: Arrangement{rows, 1 + random.IntN(rows), random.IntN(2) == 0}, TubesPerRow: 1 + random.IntN(200),
			TransversePitch: od * between(1.5, 4), FinnedLength: between(0.3, 15), OD: od,
		}
		// Streams about what the bank can carry: half a millidegree to forty transfer units of the air.
		ua := OverallU(p).OnBare * b.BareArea()
		air := Stream{-40 + 400*random.Float64(), ua / between(0.005, 40)}
		process := Stream{-40 + 900*random.Float64(), air.Capacity / between(1e-3, 30)}
		if random.IntN(8) == 0 {
			process.Capacity = math.Inf(1)
		}
		for _, change := range []float64{1, 2, 0.5} {
			p := p
			air := air
			switch random.IntN(4) {
			case 0:
				p.OutsideFilm *= change
			case 1:
				p.InsideFilm *= change
			case 2:
				air.Capacity *= change
			case 3:
				p.Bond *= change
			}
			u := OverallU(p)
			d := b.Rate(u, air, process)
			low, high := min(air.In, process.In)-1e-9, max(air.In, process.In)+1e-9
			factored := d.Spent && d.Factor == 0 && d.Ratio*d.TransferUnits > 34 || d.Factor > 0 && d.Factor <= 1+1e-9
			ok := factored && finite(d.Heat, d.AirOut, d.ProcessOut, d.Counterflow, d.Factor, d.Hottest.Celsius, d.Coldest.Celsius, u.OnBare, u.OnTotal) &&
				d.Effectiveness > 0 && d.Effectiveness <= 1+1e-12 &&
				d.AirOut >= low && d.AirOut <= high && d.ProcessOut >= low && d.ProcessOut <= high &&
				d.Coldest.Celsius >= low-1e-6 && d.Hottest.Celsius <= high+1e-6 && d.Coldest.Celsius <= d.Hottest.Celsius
			if !ok {
				c.Fatalf("%+v %+v %+v %+v: heat %g out %g %g F %g hottest %v coldest %v", b, u, air, process,
					d.Heat, d.AirOut, d.ProcessOut, d.Factor, d.Hottest, d.Coldest)
			}
			balanced(c, "random", d, air, process)
		}
	})
}

func BenchmarkRate(b *testing.B) {
	bank, u := cooler()
	for b.Loop() {
		bank.Rate(u, Stream{35, 80e3}, Stream{120, 60e3})
	}
}

// Against an independent two-dimensional solution the usual series of resistances, with
// the exact efficiency of the fin, is high by the crowding of heat at the fin
// root: a little to some 3 %.
func TestSeriesAgainstTwoDimensions(t *testing.T) {
	for _, row := range published.Read(t, published.Computed, "conduction_2d") {
		od, height, thickness, pitch := row.Float("tube_od_m"), row.Float("fin_height_m"), row.Float("fin_thickness_m"), row.Float("pitch_m")
		h := row.Float("h_outside_W_m2K")
		f := fin.Solve(fin.Fin{
			Tip: fin.Convective, RootRadius: od / 2, TipRadius: od/2 + height, RootThickness: thickness,
			Conductivity: row.Float("k_fin_W_mK"),
		}, h)
		bare, total := math.Pi*od*pitch, f.Area+math.Pi*od*(pitch-thickness)
		u := OverallU(Path{
			OD: od, ID: od - 2*row.Float("wall_m"), InsideFilm: row.Float("h_inside_W_m2K"),
			WallConductivity: row.Float("k_tube_W_mK"), OutsideFilm: h, AreaRatio: total / bare,
			SurfaceEfficiency: fin.SurfaceEfficiency(f.Area, total, f.Efficiency),
		})
		if high := u.OnBare*bare/row.Float("heat_per_pitch_per_K_W_K") - 1; high < 0.002 || high > 0.035 {
			t.Errorf("%s: series of resistances is %.2f %% high", row.Where(), 100*high)
		}
	}
}
