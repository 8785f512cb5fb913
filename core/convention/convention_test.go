package convention

import (
	"math"
	"slices"
	"strconv"
	"testing"

	"finwright/core/design"
	"finwright/core/material"
	"finwright/core/proof"
	"finwright/core/rating"
	"finwright/core/tube"
	"finwright/core/units"
	"finwright/testdata/cases"
)

func footed(height, fpi float64) *Design {
	return &Design{Input: &rating.Input{
		FinMetal: material.Metal{Family: material.Aluminium},
		Tube: tube.Tube{
			OD: 0.0254, Wall: 0.0021, Length: 9, PlainA: 0.1, PlainB: 0.1, Density: 7850,
			Fin: tube.Fin{
				Type: tube.Footed, Height: units.Length(height) * units.Inch, Strip: 0.016 * units.Inch, Count: units.PerLength(fpi / 0.0254),
				Profile: tube.AsMade, Root: tube.FromTube, Density: 2705,
			},
		},
	}}
}

func read(t *testing.T, id, text string, d *Design) []Reading {
	t.Helper()
	q, ok := Find(id)
	if !ok {
		t.Fatal(id)
	}
	p, err := q.ReadPrinted(text, units.US)
	if err != nil {
		t.Fatal(err)
	}
	return q.Read(d, p)
}

// A handbook's areas of 1 in tubes come out with the tip rolled thin and counted, as this program has them; its ratio of 21.4 is
// not its own area over pi d, which is 21.3, and nothing but an area over the foot or its like comes to it.
//
// Source: GPSA data book, figure of finned-tube surfaces for 1 in tubes, from memory.
func TestHandbooksAreas(t *testing.T) {
	for _, c := range []struct {
		height, fpi float64
		area        string
	}{{0.5, 9, "3.80 ft2/ft"}, {0.625, 10, "5.58 ft2/ft"}, {0.625, 10, "5.58"}} {
		got := read(t, "surface", c.area, footed(c.height, c.fpi))
		if len(got) == 0 || !got[0].Fits || len(got[0].Choices) != 0 {
			t.Errorf("%s: %+v", c.area, got)
		}
	}
	if own := read(t, "ratio", "21.4", footed(0.625, 10))[0]; own.Fits && len(own.Choices) == 0 {
		t.Errorf("21.4 is no area over pi d: %+v", own)
	}
}

// A maker's table: 25 x 2.5 mm tube, fins to 50 mm, pitch 4 mm, 1 mm thick, the full tip counted: fins 0.775, ratio 10.62 with
// digits cut off.
//
// Source: as TestMakersTableFullTip of package tube.
func TestMakersTable(t *testing.T) {
	d := &Design{Input: &rating.Input{Tube: tube.Tube{
		OD: 0.025, Wall: 0.0025, Length: 6, Density: 7850,
		Fin: tube.Fin{Type: tube.Welded, Height: 0.0125, Strip: 0.001, Count: 250, Profile: tube.Uniform, Density: 7850},
	}}}
	fins := read(t, "surface", "0.775 m2/m", d)
	if !fins[0].Fits || !slices.Equal(fins[0].Choices, []Choice{{"surface", "fins"}, {"digits", "cut"}}) {
		t.Errorf("%+v", fins)
	}
	if r := read(t, "ratio", "10.62", d); !r[0].Fits || len(r[0].Choices) > 1 {
		t.Errorf("%+v", r)
	}
}

// What is printed by any set of conventions, in either unit, is read as a set that gives it; with digits enough as the very same value.
func TestWhatIsPrintedIsRead(t *testing.T) {
	examples := make([]*Design, 0, 3)
	for _, c := range cases.List() {
		in, h, err := design.ReadAndRate(c.Document(), nil)
		if err != nil {
			t.Fatal(err)
		}
		examples = append(examples, &Design{&in.Input, &h.Thermal})
	}
	proof.Proof{Share: 60, Full: 5_000, Seed: 61}.Run(t, func(c *proof.Case) {
		d := *examples[c.Rand.IntN(len(examples))]
		in := *d.Input
		d.Input = &in
		in.Tube.Fin.Height *= units.Length(0.7 + 0.6*c.Rand.Float64())
		in.Tube.Fin.Count *= units.PerLength(0.7 + 0.5*c.Rand.Float64())
		q := &Quantities[c.Rand.IntN(len(Quantities))]
		said := map[string]string{}
		for _, a := range q.asks(&d) {
			said[a.ask] = a.answers[c.Rand.IntN(len(a.answers))]
		}
		value, unit, factor := q.of(&d, func(ask string) string { return said[ask] }), "", 1.0
		if len(q.Units) > 0 {
			unit = q.Units[c.Rand.IntN(len(q.Units))]
			factor = q.factor(unit)
		}
		for _, digits := range []int{3, 4, 9} {
			number := strconv.FormatFloat(value/factor, 'g', digits, 64)
			p, err := q.ReadPrinted(number+" "+unit, units.SI)
			if err != nil {
				c.Fatal(number, err)
			}
			got := q.Read(&d, p)
			if len(got) == 0 || !got[0].Fits {
				c.Fatalf("%s %s: %s by %v is not read: %+v", q.ID, number, unit, said, got)
			}
			if digits == 9 && math.Abs(got[0].SI/value-1) > 1e-8 {
				c.Errorf("%s %s %s: %g by %v, read as %+v", q.ID, number, unit, value, said, got[0])
			}
			for _, r := range got[1:] {
				if len(r.Choices) < len(got[0].Choices) {
					c.Errorf("%s %s: fewer departures come later: %+v", q.ID, number, got)
				}
			}
		}
	})
}

// Where no convention comes to it, the nearest are told with their miss, and none is said to fit.
func TestNearestIsTold(t *testing.T) {
	got := read(t, "surface", "9.90 ft2/ft", footed(0.625, 10))
	if len(got) == 0 {
		t.Fatal("nothing is told")
	}
	for i, r := range got {
		if r.Fits || i > 0 && math.Abs(r.Miss) < math.Abs(got[i-1].Miss) {
			t.Errorf("%+v", got)
		}
	}
}

// The last digit says how near: none is made up.
func TestLastPlace(t *testing.T) {
	for text, want := range map[string][2]float64{
		"1.70 m2/m": {1.7, 0.005}, "1.700": {1.7, 0.0005}, "1700": {1700, 0.5}, "0,85 kg/m": {0.85, 0.005}, "1,234,567": {1234567, 0.5}, "3/4 lb/ft": {0, 0}, "1 3/4": {0, 0},
	} {
		if n, half := lastPlace(text); n != want[0] && math.Abs(n/want[0]-1) > 1e-12 || math.Abs(half-want[1]) > 1e-12 {
			t.Errorf("%s: %g, %g", text, n, half)
		}
	}
}
