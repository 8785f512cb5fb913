package tube

import (
	"math"
	"testing"

	"finwright/core/units"
)

// footed is a 1 in tube of 14 BWG wall with 5/8 in fins of 0.4 mm aluminium, 10 to the inch.
func footed() Tube {
	return Tube{
		OD: 25.4 * units.Millimetre, Wall: 2.108 * units.Millimetre, Basis: AverageWall, Length: 6.096, Density: 7850,
		PlainA: 38 * units.Millimetre, PlainB: 38 * units.Millimetre,
		Fin: Fin{
			Type: Footed, Height: 15.875 * units.Millimetre, Strip: 0.4 * units.Millimetre,
			Count: 10 * finPerInch, Profile: AsMade, Density: 2705, Root: FromTube,
		},
	}
}

func with(change func(*Tube)) *Tube {
	t := footed()
	change(&t)
	return &t
}

func embedded(t *Tube)  { t.Fin.Type, t.Fin.Groove = Embedded, 0.25*units.Millimetre }
func edgeWound(t *Tube) { t.Fin.Type = EdgeWound }
func uniform(t *Tube)   { t.Fin.Profile = Uniform }
func elevenFPI(t *Tube) { t.Fin.Count = 11 * finPerInch }

func near(t testing.TB, name string, got, want, rtol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= rtol*math.Abs(want)) {
		t.Errorf("%s = %.9g, want %.9g within %.1g", name, got, want, rtol)
	}
}

// Hand calculation of a 25.4 x 2.108 mm steel tube, carried to the digits shown.
func TestHandCalculation(t *testing.T) {
	const five = 1e-5 // half a unit in the fifth digit, or better
	a, b := footed(), with(elevenFPI)
	near(t, "fins per metre", a.Fin.Count.PerMetre(), 393.701, five)
	near(t, "pitch", a.Pitch().Millimetres(), 2.54, five)
	near(t, "gap", a.Gap().Millimetres(), 2.14, five)
	near(t, "fin OD", a.FinOD().Millimetres(), 57.15, five)
	near(t, "tip", a.TipThickness().Millimetres(), 0.177778, five)
	near(t, "bare", float64(a.Areas().Bare), 0.079796, five)
	near(t, "side", float64(a.Areas().Side), 1.62087, five)
	near(t, "tip area", float64(a.Areas().Tip), 0.012566, 4e-5)
	near(t, "between", float64(a.Areas().Between), 0.067230, five)
	near(t, "total", float64(a.Areas().Total()), 1.70066, five)
	near(t, "ratio", a.Areas().Ratio(), 21.3125, five)
	near(t, "total at 11", float64(b.Areas().Total()), 1.86275, five)
	near(t, "ratio at 11", b.Areas().Ratio(), 23.3438, five)
	near(t, "uniform total", float64(with(uniform).Areas().Total()), 1.71637, five)
	near(t, "uniform ratio", with(uniform).Areas().Ratio(), 21.5094, five)
	near(t, "counted from the foot", float64(with(func(t *Tube) { t.Fin.Root = FromFoot }).Areas().Total()), 1.67725, five)
	near(t, "helix", float64(a.HelixAngle())*180/math.Pi, 1.823, 3e-4)
	near(t, "obstruction", float64(a.Obstruction()), 0.028644, 2e-5)
	near(t, "uniform obstruction", float64(with(uniform).Obstruction()), 0.0304, five)
	near(t, "width", a.StripWidth().Millimetres(), 17.843, 3e-5)
	near(t, "width at 11", b.StripWidth().Millimetres(), 17.612, 3e-5)
	near(t, "strip", a.StripPerMetre(), 31.4159, five)
	near(t, "footed fin mass", float64(a.FinMass()), 0.60653, five)
	near(t, "footed fin mass at 11", float64(b.FinMass()), 0.65855, five)
	near(t, "edge-wound fin mass", float64(with(edgeWound).FinMass()), 0.53962, five)
	near(t, "embedded fin mass", float64(with(embedded).FinMass()), 0.54812, five)
	near(t, "tube mass", float64(a.TubeMass()), 1.21087, five)
}

// GPSA data book, figure of finned-tube surfaces for 1 in tubes; values from
// memory, reproduced by 0.016 in strip with a tapered tip.
func TestPublishedAreaTable(t *testing.T) {
	for _, c := range []struct {
		height, fpi, apf, ratio float64
	}{
		{0.5, 9, 3.80, 14.5},
		{0.625, 10, 5.58, 21.4},
	} {
		tb := footed()
		tb.Fin.Height = units.Length(c.height) * units.Inch
		tb.Fin.Count = units.PerLength(c.fpi) * finPerInch
		tb.Fin.Strip = 0.016 * units.Inch
		apf := float64(tb.Areas().Total()) / 0.3048
		if math.Abs(apf-c.apf) > 0.005 {
			t.Errorf("%g in x %g: %.4f ft2/ft, table %.2f", c.height, c.fpi, apf, c.apf)
		}
		if r := tb.Areas().Ratio(); math.Abs(r-c.ratio) > 0.1 {
			// The table's ratio of 21.4 is not its own 5.58 over pi d, which is 21.3.
			t.Errorf("%g in x %g: ratio %.3f, table %.1f", c.height, c.fpi, r, c.ratio)
		}
	}
}

// A maker's table: 25 x 2.5 mm tube, fins to 50 mm, pitch 4 mm, 1 mm thick,
// the full tip counted: fin 0.775, tube between 0.0589, ratio 10.62; it cuts digits off
// rather than round, so that a whole unit of the last is allowed.
func TestMakersTableFullTip(t *testing.T) {
	tb := Tube{OD: 0.025, Wall: 0.0025, Fin: Fin{Type: Welded, Height: 0.0125, Strip: 0.001, Count: 250, Profile: Uniform}}
	a := tb.Areas()
	near(t, "fin", float64(a.Fin()), 0.775, 1e-3)
	near(t, "between", float64(a.Between), 0.0589, 1e-3)
	near(t, "ratio", a.Ratio(), 10.62, 1e-3)
}

func TestStripVolumeIsFinVolume(t *testing.T) {
	for _, n := range []float64{120, 250, 400} {
		for _, h := range []units.Length{0.005, 0.012, 0.02} {
			tb := with(edgeWound)
			tb.Fin.Count, tb.Fin.Height = units.PerLength(n), h
			strip := math.Pi * float64(tb.OD*tb.StripWidth()*tb.Fin.Strip)
			near(t, "edge-wound strip", strip, tb.FinVolume(), 1e-12)
			tb.Fin.Type = Footed
			foot := math.Pi * float64(tb.OD*tb.Fin.Strip*(tb.StripWidth()-tb.Fin.Height))
			strip = math.Pi * float64(tb.OD*tb.StripWidth()*tb.Fin.Strip)
			near(t, "footed strip less its foot", strip-foot, tb.FinVolume(), 1e-12)
		}
	}
}

// Fin volume by Simpson's rule over t(r), a second route to the closed forms.
func TestFinVolumeByQuadrature(t *testing.T) {
	for _, p := range []Profile{Rolled, Uniform, Linear} {
		tb := footed()
		tb.Fin.Profile, tb.Fin.TipGiven = p, 0.22*units.Millimetre
		r0, r1 := float64(tb.RootOD())/2, float64(tb.FinOD())/2
		const n = 200
		sum := 0.0
		for i := 0; i <= n; i++ {
			w := 2.0 + 2*float64(i%2)
			if i == 0 || i == n {
				w = 1
			}
			r := r0 + (r1-r0)*float64(i)/n
			sum += w * 2 * math.Pi * r * float64(tb.Thickness(units.Length(r)))
		}
		near(t, string(p), tb.FinVolume(), sum*(r1-r0)/(3*n), 1e-9)
	}
}

func TestRatioLimits(t *testing.T) {
	tb := with(uniform)
	tb.Fin.Height = 1e-9
	near(t, "no height leaves the tube and the tip", tb.Areas().Ratio(), 1, 1e-6)
	*tb = footed()
	tb.Fin.Count = 1e-6
	near(t, "no fins leave the tube", tb.Areas().Ratio(), 1, 1e-6)
	last := 0.0
	for h := 0.002; h < 0.025; h += 0.001 {
		tb := footed()
		tb.Fin.Height = units.Length(h)
		if r := tb.Areas().Ratio(); r <= last {
			t.Errorf("ratio does not rise at height %g", h)
		} else {
			last = r
		}
	}
}

func TestFootReach(t *testing.T) {
	for _, c := range []struct {
		typ  FinType
		lap  units.Length
		want float64 // mm
	}{
		{Footed, 0, 2.54},
		{KnurledFooted, 0, 25.4 / 9},
		{OverlapFooted, 0, 25.4 / 9},
		{OverlapFooted, 0.0007, 3.24},
		{KnurledOverlap, 0, 25.4 / 8},
		{Embedded, 0, 0},
	} {
		tb := footed()
		tb.Fin.Type, tb.Fin.Lap = c.typ, c.lap
		if got := tb.FootReach().Millimetres(); math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%s: reach %.4f mm, want %.4f", c.typ, got, c.want)
		}
	}
}

func TestLengthsAddUp(t *testing.T) {
	tb := footed()
	tb.Spans = []Span{{1.8, 0.06}, {3.6, 0.06}}
	near(t, "finned", float64(tb.FinnedLength()), 6.096-0.076-0.12, 1e-12)
	sum := float64(tb.FinnedSurface() + tb.PlainSurface())
	near(t, "surface", sum, float64(tb.Areas().Total())*5.9+float64(tb.Areas().Bare)*0.196, 1e-12)
	tb.Basis = MinimumWall
	near(t, "minimum wall weighs more", float64(tb.MeanWall()), 1.1*float64(tb.Wall), 1e-12)
}

func TestExtrudedMuff(t *testing.T) {
	tb := with(func(t *Tube) { t.Fin.Type, t.Fin.Sleeve = Extruded, 0.5*units.Millimetre })
	near(t, "root", tb.RootOD().Millimetres(), 26.4, 1e-12)
	near(t, "no strip", float64(tb.StripWidth()), 0, 0)
	muff := math.Pi / 4 * (0.0264*0.0264 - 0.0254*0.0254) * 2705
	fins := 393.7007874 * math.Pi / 4 * (0.05715*0.05715 - 0.0264*0.0264) * 0.0004 * 2705
	near(t, "muff and fins", float64(tb.FinMass()), muff+fins, 1e-9)
}

// The plain lapped foot reaches one pitch at one fin per inch fewer: 25.4/9 - 25.4/10 mm more than the pitch.
// Source: engineering judgement; knurled: common practice, no source.
func TestFootLap(t *testing.T) {
	of := func(typ FinType) Tube { return *with(func(t *Tube) { t.Fin.Type = typ }) }
	within := func(name string, tb Tube, want float64) {
		if got := tb.FootLap().Millimetres(); math.Abs(got-want) > 1e-9 {
			t.Errorf("%s: lap %g mm, want %g", name, got, want)
		}
	}
	within("lapped", of(OverlapFooted), 25.4/9-2.54)
	within("knurled and lapped", of(KnurledOverlap), 25.4/8-25.4/9)
	within("not lapped", of(Footed), 0)
	within("knurled alone", of(KnurledFooted), 0)
	given := of(OverlapFooted)
	given.Fin.Lap = 0.7 * units.Millimetre
	within("given", given, 0.7)
	given.Fin.Type = KnurledOverlap
	within("given to a knurled one", given, 0.7)
	sparse := of(OverlapFooted)
	sparse.Fin.Count = finPerInch
	if l := sparse.FootLap(); math.IsNaN(float64(l)) || l < 0 {
		t.Errorf("one fin per inch: lap %g", float64(l))
	}
}

// A 50.8 mm tube with 19.05 x 1.27 mm steel fins, 5 to the inch: 5.97 kg/m of strip with the neutral line at the tube, 8.20 at
// mid-height. Computed independently.
func TestWeldedStripIsNotRolled(t *testing.T) {
	welded := Tube{OD: 50.8 * units.Millimetre, Wall: 0.004, Length: 6, Fin: Fin{
		Type: Welded, Height: 19.05 * units.Millimetre, Strip: 1.27 * units.Millimetre, Count: 5 * finPerInch, Profile: AsMade, Density: 7850,
	}}
	near(t, "heavier", float64(welded.FinMass()), 8.20, 0.005/8.20)
	near(t, "lighter", float64(welded.FinMass())*float64(welded.OD/welded.TurnOD()), 5.97, 0.005/5.97)
	if welded.Profile() != Uniform || welded.TipThickness() != welded.Fin.Strip {
		t.Errorf("profile %s, tip %v", welded.Profile(), welded.TipThickness())
	}
	rolled := welded
	rolled.Fin.Profile = Rolled
	near(t, "rolled after all", float64(rolled.FinMass()), 5.97, 0.005/5.97)
	for _, kind := range FinTypes() {
		other := footed()
		other.Fin.Type = kind
		if tapers := kind != Welded && kind != Extruded; (other.Profile() == Rolled) != tapers || (other.TurnOD() == other.OD) != (kind != Welded && kind.Wound()) && kind.Wound() {
			t.Errorf("%s: profile %s, turn %v", kind, other.Profile(), other.TurnOD())
		}
	}
}

// Strip by the foot unbent agrees with the rule of thumb within what slitting leaves open, +/- 0.1 mm, where bend, reach and lap
// are those of common practice. By hand, a plain foot with the neutral fibre at mid-thickness: 15.475 + 2.14 + pi/4 0.4 = 17.929 mm.
func TestFootUnbentAgreesWithFewerFins(t *testing.T) {
	fibre := Foot{By: NeutralFibre, Bend: 0.5, Knurl: 0.28 * units.Millimetre, Lap: 0.28 * units.Millimetre}
	for _, typ := range []FinType{Footed, KnurledFooted, OverlapFooted, KnurledOverlap} {
		rule := footed()
		rule.Fin.Type = typ
		unbent := rule
		unbent.Fin.Foot = fibre
		if by := unbent.StripWidth() - rule.StripWidth(); math.Abs(by.Millimetres()) > 0.1 {
			t.Errorf("%s: %.3f mm wider", typ, by.Millimetres())
		}
		if unbent.FewerFins() != 0 {
			t.Errorf("%s is cut for fewer fins", typ)
		}
	}
	plain := footed()
	plain.Fin.Foot = fibre
	near(t, "plain foot", plain.StripWidth().Millimetres(), 17.929, 3e-5)
	lapped := footed()
	lapped.Fin.Type, lapped.Fin.Foot = OverlapFooted, fibre
	near(t, "the shop's lap", lapped.FootLap().Millimetres(), 0.28, 1e-9)
	lapped.Fin.Lap = 0.6 * units.Millimetre
	near(t, "the order's lap", lapped.FootLap().Millimetres(), 0.6, 1e-9)
}
