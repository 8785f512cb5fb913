package compare

import (
	"math"
	"slices"
	"strconv"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// with is a design with other entries.
func with(d document.Document, pairs ...string) document.Document {
	d = d.With(document.Differences{})
	for i := 0; i < len(pairs); i += 2 {
		d.Fields[pairs[i]] = document.Entry{Text: pairs[i+1], Origin: document.Customer}
	}
	return d
}

// beside compares designs with the house's, which is the base: 30 tubes in each of 4 rows, of 57.15 mm over fins of 10 to the inch, at
// 63.5 mm and 3 m/s.
func beside(t *testing.T, held Held, others ...document.Document) Table {
	t.Helper()
	c := shop.House()
	return Of(append([]document.Document{document.New()}, others...), 0, held, "", &c)
}

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if math.Abs(got/want-1) > within {
		t.Errorf("%s: %g, want %g", what, got, want)
	}
}

// value is a figure of a column that has it.
func (t *Table) value(test *testing.T, i int, id string) float64 {
	test.Helper()
	at := slices.IndexFunc(Figures(), func(f design.RowFigure) bool { return f.ID == id })
	c := t.Columns[i]
	if !c.Refused.None() || !c.Row.Cells[at].Absent.None() {
		test.Fatalf("column %d has no %s: %v", i, id, c.Refused)
	}
	return c.Row.Cells[at].SI
}

func velocityOf(t *testing.T, d document.Document) float64 {
	t.Helper()
	in, err := design.Read(d)
	if err != nil {
		t.Fatal(err)
	}
	return in.Air.Velocity
}

// By hand: the box is 30 x 63.5 = 1905 mm wide and 3 x 63.5 x 0.8660 + 57.15 = 222.1 mm deep. Fins of 10 mm are 45.4 mm over, stand at
// 51.75 mm and in rows at 44.82 mm: 36 of 36.8 in a row, 1905 - 36 x 51.75 = 42 mm unused, and 4 of (222.1 - 45.4)/44.82 + 1 = 4.9
// rows. The same flow then runs at 3 x 1905/1863 m/s.
func TestSameBoxByHand(t *testing.T) {
	tab := beside(t, Box, with(document.New(), "fin_height", "10 mm"))
	d := tab.Columns[1].Document
	if d.Text("tubes_per_row") != "36" || d.Text("rows") != "4" || d.Text("tube_length") != "18 ft" {
		t.Errorf("%s tubes, %s rows", d.Text("tubes_per_row"), d.Text("rows"))
	}
	near(t, "velocity", velocityOf(t, d), 3*1905/1863.0, 1e-5)
	said := tab.Columns[1].Followed
	if len(said) != 2 || said[0].Arg("count") != 36 || said[1].Arg("count") != 4 {
		t.Fatalf("%v", said)
	}
	near(t, "unused", said[0].Arg("unused").(message.Amount).SI, 0.042, 1e-9)
}

// By hand: fins 11 to the inch in place of 10 have at one velocity 5.45 % more drop, which goes about as the velocity to the power
// 1.8: 3 x 1.0545^(-1/1.8) = 2.914 m/s has the old one. Tubes, rows, pitch and length are those that stand, whatever else was entered.
func TestSameTubesByHand(t *testing.T) {
	tab := beside(t, Tubes, with(document.New(), "fin_pitch", "11 fpi"), with(document.New(), "rows", "6", "tubes_per_row", "20", "tube_length", "4 m", "fin_height", "12 mm"))
	d := tab.Columns[1].Document
	near(t, "velocity", velocityOf(t, d), 2.914, 1e-3)
	if len(tab.Columns[1].Moved) != 1 {
		t.Errorf("of itself %v moved", tab.Columns[1].Moved)
	}
	for i := range tab.Columns {
		in, h, err := design.ReadAndRate(tab.Columns[i].Document, nil)
		if err != nil {
			t.Fatal(err)
		}
		if in.Bank.Rows != 4 || in.Bank.TubesPerRow != 30 || math.Abs(float64(in.TubePitch())-0.0635) > 1e-9 || math.Abs(float64(in.Tube.Length)-5.4864) > 1e-9 {
			t.Errorf("column %d: %d rows of %d at %g, %g long", i, in.Bank.Rows, in.Bank.TubesPerRow, in.TubePitch(), in.Tube.Length)
		}
		base, b, _ := design.ReadAndRate(document.New(), nil)
		near(t, "drop", in.DropJudged(&h.Thermal), base.DropJudged(&b.Thermal), 1e-5)
	}
}

// Fins 11 to the inch carry 2.5 % more heat: of the 30 tubes in a row 28 are left, at 3 x 30/28 m/s. Tried one by one, 28 carry the duty
// and 27 do not, both at one mass flow.
func TestSameJobByHand(t *testing.T) {
	tab := beside(t, Job, with(document.New(), "fin_pitch", "11 fpi"))
	d := tab.Columns[1].Document
	if d.Text("tubes_per_row") != "28" || d.Text("rows") != "4" {
		t.Fatalf("%s tubes in %s rows", d.Text("tubes_per_row"), d.Text("rows"))
	}
	near(t, "velocity", velocityOf(t, d), 3*30/28.0, 1e-5)
	heat := func(tubes, velocity string) float64 {
		_, h, err := design.ReadAndRate(with(document.New(), "fin_pitch", "11 fpi", "tubes_per_row", tubes, "face_velocity", velocity), nil)
		if err != nil {
			t.Fatal(err)
		}
		return duty(&h.Thermal)
	}
	want, enough, less := tab.value(t, 0, "duty"), heat("28", "3.2142857 m/s"), heat("27", "3.3333333 m/s")
	if enough < want || less >= want {
		t.Errorf("28 carry %g, 27 carry %g, wanted are %g", enough, less, want)
	}
	near(t, "duty", tab.value(t, 1, "duty"), enough, 1e-5)
	if said := tab.Columns[1].Followed; len(said) != 1 || said[0].Key != "compare.carries_tubes" {
		t.Errorf("%v", said)
	}
}

// By hand: fins 11 to the inch carry 2.1 % more heat at 18 ft, of one mass flow of gas. Of that gas, which passes slower the longer the tubes are, U A
// goes as about the 0.4th power of the length (the film outside, four fifths of the resistance, as the velocity to the power 0.7), and the heat as
// U A to the power 0.6 to 0.7 where the gas takes half of what it can: so the length goes as the heat to the power -1/0.27, and 18 ft are some 8 % too long.
// Between the heats at 4.9 and 5.4864 m, taken as a power of the length, lies what carries the duty; a millimetre less does not.
func TestSameJobByLengthByHand(t *testing.T) {
	tab := beside(t, Length, with(document.New(), "fin_pitch", "11 fpi", "rows", "6", "tubes_per_row", "20"))
	d := tab.Columns[1].Document
	if d.Text("tubes_per_row") != "30" || d.Text("rows") != "4" {
		t.Fatalf("%s tubes in %s rows", d.Text("tubes_per_row"), d.Text("rows"))
	}
	in, err := design.Read(d)
	if err != nil {
		t.Fatal(err)
	}
	const ends = 0.0762 // [m] bare, of the house's design
	heat := func(long float64) float64 {
		f := func(x float64, unit string) string { return strconv.FormatFloat(x, 'g', 9, 64) + unit }
		in, h, err := design.ReadAndRate(with(document.New(), "fin_pitch", "11 fpi", "tube_length", f(long, " m"), "face_velocity", f(3*(5.4864-ends)/(long-ends), " m/s")), nil)
		if err != nil {
			t.Fatal(err)
		}
		if bare := float64(in.Tube.Length) - float64(in.Tube.FinnedLength()); math.Abs(bare-ends) > 1e-9 {
			t.Fatalf("%g m are bare", bare)
		}
		return duty(&h.Thermal)
	}
	want, short, usual := tab.value(t, 0, "duty"), heat(4.9), heat(5.4864)
	byHand := 4.9 * math.Pow(5.4864/4.9, math.Log(want/short)/math.Log(usual/short))
	long := float64(in.Tube.Length)
	near(t, "length", long, byHand, 1e-3)
	near(t, "length against 18 ft", long/5.4864, math.Pow(usual/want, -1/0.27), 0.03)
	if mm := long * 1000; math.Abs(mm-math.Round(mm)) > 1e-6 {
		t.Errorf("it is cut at %g mm", mm)
	}
	if whole, less := heat(long), heat(long-0.001); whole < want*(1-2*all) || less >= want {
		t.Errorf("%g m carry %g, a millimetre less carries %g, wanted are %g", long, whole, less, want)
	}
	near(t, "velocity", velocityOf(t, d), 3*(5.4864-ends)/(long-ends), 1e-5)
	if said := tab.Columns[1].Followed; len(said) != 1 || said[0].Key != "compare.length_for" {
		t.Errorf("%v", said)
	}
	if none := beside(t, Length, with(document.New(), "fin_height", "1.5 mm", "fin_pitch", "1 fpi", "tube_pitch", "200 mm")); none.Columns[1].Refused.Key != "compare.no_length" {
		t.Errorf("%+v", none.Columns[1])
	}
}

// By hand: at one velocity the 5.45 % more drop are as much more power, which goes with the velocity to the power 2.8:
// 3 x 1.0545^(-1/2.8) = 2.944 m/s takes the old one.
func TestSameFanByHand(t *testing.T) {
	tab := beside(t, Fan, with(document.New(), "fin_pitch", "11 fpi"), with(document.New(), "fin_height", "10 mm"))
	near(t, "velocity", velocityOf(t, tab.Columns[1].Document), 2.944, 1e-3)
	for _, i := range []int{1, 2} {
		near(t, "power", tab.value(t, i, "fan_power"), tab.value(t, 0, "fan_power"), 1e-5)
	}
}

// Where nothing is held each column is the design as it was entered; whatever is held, one that is like the base is like it.
func TestWhatIsAlikeStays(t *testing.T) {
	other := with(document.New(), "fin_height", "10 mm", "tube_pitch", "60 mm")
	if tab := beside(t, Nothing, other); len(tab.Columns[1].Moved)+len(tab.Columns[1].Followed)+len(tab.Columns[1].Room) > 0 || tab.Columns[1].Document.Text("tube_pitch") != "60 mm" {
		t.Errorf("%+v", tab.Columns[1].Moved)
	}
	for _, held := range Helds {
		tab := beside(t, held, document.New())
		if len(tab.Columns[1].Moved) > 0 || len(tab.Entries) > 0 || tab.value(t, 1, "duty") != tab.value(t, 0, "duty") {
			t.Errorf("%s: %v moved", held, tab.Columns[1].Moved)
		}
	}
}

// The order follows the bank where the base orders what its bank takes, and stays where it does not.
func TestOrderFollowsTheBank(t *testing.T) {
	for quantity, want := range map[string]string{"120": "144", "1": "1", "300": "300"} {
		base := with(document.New(), "quantity", quantity)
		tab := Of([]document.Document{base, with(base, "fin_height", "10 mm")}, 0, Box, "", nil)
		if got := tab.Columns[1].Document.Text("quantity"); got != want {
			t.Errorf("%s of 120 become %s of 144", quantity, got)
		}
	}
}

// All columns are rated by the methods of the base, also where the rule has others for their fin type or they name their own.
func TestOneMethodForAll(t *testing.T) {
	base := document.New()
	for name, other := range map[string]document.Document{
		"another rule":  with(base, "fin_type", "welded", "fin_metal", "cs1010"),
		"named":         with(base, "film_method", "schmidt_1963"),
		"a given film":  with(base, "film_source", "given", "film_coefficient", "80 W/m²K"),
		"another order": with(base, "layout", "in_line"),
	} {
		tab := beside(t, Nothing, other)
		in, _ := design.Read(base)
		here, err := design.Read(tab.Columns[1].Document)
		if err != nil || here.Pair() != in.Pair() || here.Air.FilmGiven {
			t.Errorf("%s: %v, %v", name, here.Pair(), err)
		}
	}
}

// What is refused has its reason and no figures, and the rest is compared all the same; beside a base that is refused nothing can be held.
func TestRefusedColumns(t *testing.T) {
	good, wide := with(document.New(), "fin_pitch", "11 fpi"), with(document.New(), "fin_height", "58 mm", "tube_od", "300 mm", "tube_wall", "8 mm", "rows", "30", "passes", "30")
	tab := beside(t, Box, with(document.New(), "fin_pitch", "what"), wide, good)
	if tab.Columns[1].Refused.None() || tab.Columns[2].Refused.Key != "compare.no_room" || !tab.Columns[3].Refused.None() {
		t.Errorf("%v, %v, %v", tab.Columns[1].Refused, tab.Columns[2].Refused, tab.Columns[3].Refused)
	}
	if len(tab.Points(1, true))+len(tab.Points(2, true)) > 0 || len(tab.Points(3, true)) == 0 || len(tab.Columns[1].Row.Cells) > 0 {
		t.Error("what is refused is told of as if it were not")
	}
	c := shop.House()
	broken := Of([]document.Document{with(document.New(), "fin_pitch", "what"), good}, 0, Box, "", &c)
	if broken.Held != Nothing || broken.Columns[0].Refused.None() || !broken.Columns[1].Refused.None() || len(broken.Points(1, true)) > 0 {
		t.Errorf("%+v", broken.Columns[0].Refused)
	}
	// A duty that the base has is out of reach for fins that hardly are there.
	if none := beside(t, Job, with(document.New(), "fin_height", "1.5 mm", "fin_pitch", "1 fpi", "tube_length", "0.4 m")); none.Columns[1].Refused.Key != "compare.no_count" {
		t.Errorf("%v", none.Columns[1].Refused)
	}
	// A base without a drop has none to hold.
	still := with(document.New(), "fin_type", "welded", "fin_metal", "cs1010", "layout", "in_line")
	if tab := Of([]document.Document{still, good}, 0, Tubes, "", nil); tab.Columns[1].Refused.Key != "compare.base_lacks" {
		t.Errorf("%v", tab.Columns[1].Refused)
	}
}

// The best of a line is that of the columns that are not refused, and of all within a per cent of it; where all are it says nothing.
func TestBest(t *testing.T) {
	tab := beside(t, Nothing, with(document.New(), "fin_pitch", "11 fpi"), with(document.New(), "fin_pitch", "11 fpi"), with(document.New(), "fin_pitch", "12 fpi", "upset", "500 °C"))
	if tab.Columns[3].Row.State != figure.No {
		t.Fatalf("the last is %s", tab.Columns[3].Row.State)
	}
	for id, want := range map[string][]int{"duty": {1, 2}, "air_drop": {0}, "bank_tubes": nil, "air_out": nil, "fin_efficiency": nil} {
		at := slices.IndexFunc(Figures(), func(f design.RowFigure) bool { return f.ID == id })
		if !slices.Equal(tab.Best[at], want) {
			t.Errorf("%s: %v, want %v", id, tab.Best[at], want)
		}
	}
	for _, id := range slices.Concat(larger, smaller) {
		if !slices.ContainsFunc(Figures(), func(f design.RowFigure) bool { return f.ID == id }) {
			t.Errorf("there is no figure %s", id)
		}
	}
}

// What is said in parts of a sentence, and nothing of what differs by less than a per cent.
func TestPoints(t *testing.T) {
	keys := func(tab Table, i int) (out []string) {
		for _, m := range tab.Points(i, true) {
			out = append(out, m.Key)
		}
		return out
	}
	tab := beside(t, Box, with(document.New(), "fin_pitch", "11 fpi"), with(document.New(), "fin_pitch", "10.01 fpi"))
	if got := keys(tab, 1); !slices.Equal(got, []string{"compare.more.duty", "compare.more.air_drop", "compare.more.tube_weight", "compare.level.price_tube"}) {
		t.Errorf("%v", got)
	}
	if got := keys(tab, 2); slices.ContainsFunc(got, func(k string) bool { return k[:13] != "compare.level" }) || len(got) != 4 {
		t.Errorf("%v", got)
	}
	if m := tab.Instead(1); m.Key != "compare.more.ua" {
		t.Errorf("%v", m)
	}
	if m := tab.Instead(0); !m.None() || len(tab.Points(0, true)) > 0 {
		t.Error("the base is compared with itself")
	}
	if got := keys(beside(t, Job, with(document.New(), "fin_pitch", "11 fpi")), 1); got[0] != "compare.tubes_for" {
		t.Errorf("%v", got)
	}
}

// A ladder steps one entry over standard values and leaves it alone whatever is held; a rung that cannot be is refused with its reason.
func TestLadders(t *testing.T) {
	c := shop.House()
	for _, id := range Ladders {
		base := document.New()
		rungs := Rungs(base, id, &c)
		if len(rungs) < 1 || len(rungs) > MostRungs {
			t.Errorf("%s has %d rungs", id, len(rungs))
		}
		for _, held := range Helds {
			tab := Of(append([]document.Document{base}, rungs...), 0, held, id, &c)
			for i, r := range rungs {
				if got := tab.Columns[i+1].Document.Text(id); got != r.Text(id) {
					t.Errorf("%s, %s: the rung at %s stands at %s", id, held, r.Text(id), got)
				}
			}
			if !slices.Contains(tab.Entries, id) {
				t.Errorf("%s does not differ", id)
			}
		}
	}
	// By hand: 120 tubes are 60 in each of 2 rows, 20 in each of 6, 17 (17.1) in each of 7.
	tab := Of(append([]document.Document{document.New()}, Rungs(document.New(), "rows", nil)...), 0, Tubes, "rows", nil)
	for i, want := range []string{"60", "40", "24", "20", "17", "15"} {
		if got := tab.Columns[i+1].Document.Text("tubes_per_row"); got != want {
			t.Errorf("%s rows of %s, want %s", tab.Columns[i+1].Document.Text("rows"), got, want)
		}
	}
	heights := Rungs(document.New(), "fin_height", &c)
	if got := heights[0].Text("fin_height"); got != "9.525 mm" || len(heights) != 3 {
		t.Errorf("%d heights from %s", len(heights), got)
	}
	if len(Rungs(document.New(), "fin_height", nil)) > 0 {
		t.Error("without a shop there are heights in stock")
	}
}

// BenchmarkCompare is a table of six columns, and the longest of all: a ladder of which the tubes follow the duty.
func BenchmarkCompare(b *testing.B) {
	c := shop.House()
	base := document.New()
	b.Run("six", func(b *testing.B) {
		designs := []document.Document{base}
		for _, count := range []string{"8 fpi", "9 fpi", "11 fpi", "12 fpi", "13 fpi"} {
			designs = append(designs, with(base, "fin_pitch", count))
		}
		for b.Loop() {
			Of(designs, 0, Box, "", &c)
		}
	})
	b.Run("ladder", func(b *testing.B) {
		designs := append([]document.Document{base}, Rungs(base, "tube_wall", &c)...)
		for b.Loop() {
			Of(designs, 0, Job, "tube_wall", &c)
		}
	})
}

// A number alone is in the units of its own design, whatever those of the base are.
func TestUnitsStayTheirOwn(t *testing.T) {
	other := with(document.New(), "fin_height", "0.5")
	other.Units = units.US
	tab := beside(t, Nothing, other, with(document.New(), "fin_height", "12.7 mm"))
	if a, b := tab.value(t, 1, "fin_od"), tab.value(t, 2, "fin_od"); math.Abs(a-b) > 1e-9 {
		t.Errorf("half an inch makes %g, 12.7 mm make %g", a, b)
	}
	if tab := beside(t, Box, other); tab.Columns[1].Document.Text("tubes_per_row") != "33" {
		t.Errorf("%s tubes in a row", tab.Columns[1].Document.Text("tubes_per_row"))
	}
}
