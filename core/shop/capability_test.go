package shop

import (
	"math"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

func near(t testing.TB, name string, got, want, rtol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= rtol*math.Abs(want)) {
		t.Errorf("%s = %.9g, want %.9g within %.1g", name, got, want, rtol)
	}
}

// edit changes values of a capability by path, which must all be accepted.
func edit(t testing.TB, c Capability, changes ...string) Capability {
	t.Helper()
	for i := 0; i < len(changes); i += 2 {
		next, faults := c.With(changes[i], changes[i+1])
		if faults != nil {
			t.Fatalf("%s = %s: %v", changes[i], changes[i+1], faults)
		}
		c = next
	}
	return c
}

func TestSavedFileReadsBack(t *testing.T) {
	a, _ := Open(houseFile)
	b, faults := Open(House().Save())
	if faults != nil || !reflect.DeepEqual(a, b) {
		t.Errorf("the shipped file does not survive saving: %v", faults)
	}
}

func TestEditKeepsTextAsTyped(t *testing.T) {
	c := edit(t, House(), "lines/0/strip_speed", "13 ft/s", "crew/people", "3", "lines/0/types/0/oiler", "false")
	if got := float64(c.Lines[0].StripSpeed); got != 13*0.3048 {
		t.Errorf("strip speed %v", got)
	}
	if c.Crew.People != 3 || c.Lines[0].Types[0].Oiler || !strings.Contains(string(c.Save()), `"13 ft/s"`) {
		t.Error("an edit is lost")
	}
}

func TestListsGrowAndShrink(t *testing.T) {
	tube := `{"type": "embedded", "cut": "12 m", "finned": "11.9 m", "finished": "12.012 m"}`
	c, faults := House().Add("measured", tube)
	if faults != nil || len(c.Measured) != 1 || c.Measured[0].Finished != 12.012 {
		t.Fatalf("%v, %v", c.Measured, faults)
	}
	if c, faults = c.Remove("measured", 0); faults != nil || len(c.Measured) != 0 {
		t.Errorf("%v, %v", c.Measured, faults)
	}
	if c, faults = c.Add("lines/1/types/0/tools", `{"height": "3/4 in", "strip": "0.4 mm", "count": {"low": "5 fpi", "high": "9 fpi"}}`); faults != nil || len(c.Lines[1].Types[0].Tools) != 5 {
		t.Errorf("tools %v, %v", c.Lines[1].Types[0].Tools, faults)
	}
	for _, path := range []string{"lines/9/types", "name", "", "measured/0"} {
		if _, faults := c.Add(path, tube); faults == nil {
			t.Errorf("an item is added to %q", path)
		}
	}
	if _, faults := c.Remove("measured", 0); faults == nil {
		t.Error("an item is removed from an empty list")
	}
}

// The envelope that the issue of this step asks a file to be able to hold, as people write it.
func TestWideLineIsExpressible(t *testing.T) {
	c := edit(t, House(),
		"lines/0/tube_od/low", "9/16 in", "lines/0/tube_od/high", "50.8 mm",
		"lines/0/types/0/fin_height/low", "1/4 in", "lines/0/types/0/fin_height/high", "25.4 mm",
		"lines/0/types/0/fin_count/low", "4 fpi", "lines/0/types/0/fin_count/high", "13 fpi",
		"lines/0/strip_speed", "4 m/s", "lines/0/coils/1/mass", "1200 lb", "lines/0/coils/1/od", "36 in",
		"lines/1/types/0/fin_height_by_od/5/high", "1 1/8 in",
		"cutting/stock/1", "40 ft", "cutting/stock/2", "50 ft", "cutting/stock/3", "60 ft")
	l := c.Lines[0]
	near(t, "9/16 in", l.TubeOD.Low.Millimetres(), 14.2875, 1e-12)
	if got := units.Plain.Figure(units.Diameter, float64(l.TubeOD.Low), units.SI).String(); got != "14.29 mm" {
		t.Errorf("9/16 in shows as %s", got)
	}
	near(t, "4 m/s in ft/s", units.In(units.Running, float64(l.StripSpeed), units.US), 13, 0.5/13)
	near(t, "1200 lb", float64(l.Coils[1].Mass), 544.311, 1e-6)
	near(t, "embedded on one diameter", c.Lines[1].Types[0].HeightByOD[5].High.Millimetres(), 28.575, 1e-12)
	near(t, "60 ft", float64(c.Cutting.Stock[3]), 18.288, 1e-12)
}

func TestStricterOfTwoRows(t *testing.T) {
	all := Range[units.Length]{1, 9}
	table := []ByOD[units.Length]{{OD: 10, Low: 2, High: 6}, {OD: 20, Low: 3, High: 8}}
	for _, c := range []struct {
		od   units.Length
		want Range[units.Length]
	}{{10, Range[units.Length]{2, 6}}, {20, Range[units.Length]{3, 8}}, {15, Range[units.Length]{3, 6}}, {5, all}, {25, all}} {
		if got := within(c.od, all, table); got != c.want {
			t.Errorf("od %v: %v, want %v", c.od, got, c.want)
		}
	}
}

func TestFaultsNameTheirPath(t *testing.T) {
	good := string(House().Save())
	for _, c := range []struct{ name, old, new, path, key string }{
		{"not JSON", good, "{", "", "shop.file.not_json"},
		{"another format", `"finwright-shop"`, `"other"`, "format", "shop.file.format"},
		{"a newer version", `"version": 3`, `"version": 4`, "version", "shop.file.version"},
		{"a wrong unit", `"2.5 m/s"`, `"2.5 mm"`, "lines/0/strip_speed", "error.wrong_unit"},
		{"a bare number", `"2.5 m/s"`, `2.5`, "lines/0/strip_speed", "shop.file.quantity"},
		{"nought", `"2.5 m/s"`, `"0 m/s"`, "lines/0/strip_speed", "error.range"},
		{"a fraction of nought", `"2.5 m/s"`, `"1e-9 m/s"`, "lines/0/strip_speed", "error.range"},
		{"a speed beyond any", `"2.5 m/s"`, `"1e12 m/s"`, "lines/0/strip_speed", "error.range"},
		{"a number that no one means", `"2.5 m/s"`, `"1e308 m/s"`, "lines/0/strip_speed", "error.not_a_number"},
		{"a limit next to nought", `"low": "16 mm"`, `"low": "1e-300 mm"`, "lines/0/tube_od/low", "error.range"},
		{"too many first-off tubes", `"first_off": 1`, `"first_off": 1e9`, "lines/0/first_off", "error.range"},
		{"fewer than none", `"first_off": 1`, `"first_off": -1`, "lines/0/first_off", "error.range"},
		{"a bundle as wide as a house", `"410 mm"`, `"30 m"`, "mill_bundle/width", "error.range"},
		{"a share above the whole", `"efficiency": "80 %"`, `"efficiency": "101 %"`, "crew/efficiency", "error.range"},
		{"a long name", `"EUR"`, `"` + strings.Repeat("E", 21) + `"`, "currency", "shop.file.text_long"},
		{"a long quantity", `"2.5 m/s"`, `"` + strings.Repeat("0", 101) + ` m/s"`, "lines/0/strip_speed", "shop.file.text_long"},
		{"a long remark", `"note": "An`, `"note": "` + strings.Repeat("n", 2000) + "An", "note", "shop.file.text_long"},
		{"too many mill lengths", `"stock": [`, `"stock": [` + strings.Repeat(`"20 ft",`, 97), "cutting/stock", "shop.file.list_long"},
		{"a book", good, strings.Repeat(" ", 256<<10) + good, "", "shop.file.long"},
		{"a well of brackets", good, strings.Repeat("[", 9000), "", "shop.file.deep"},
		{"an unknown key", `"currency": "EUR"`, `"currency": "EUR", "colour": "red"`, "colour", "shop.file.unknown"},
		{"a missing key", `"currency": "EUR",`, ``, "currency", "shop.file.missing"},
		{"a fraction", `"people": 2`, `"people": 2.5`, "crew/people", "shop.file.whole"},
		{"an unknown metal", `"al1060",`, `"unobtainium",`, "lines/0/types/0/fin_metals/0", "shop.file.metal"},
		{"an unknown type", `"type": "embedded"`, `"type": "glued"`, "lines/1/types/0/type", "shop.file.fin_type"},
		{"ranges the wrong way round", `"low": "19.05 mm"`, `"low": "60 mm"`, "lines/1/tube_od/high", "shop.file.range"},
		{"an unknown kind of step", `"kind": "clean"`, `"kind": "polish"`, "steps/1/kind", "shop.file.step_kind"},
		{"a step at no time", `"when": "before"`, `"when": "now"`, "steps/0/when", "shop.file.step_when"},
		{"a step by nobody", `"who": "crew_does"`, `"who": "nobody"`, "steps/0/who", "shop.file.step_who"},
		{"a step on no tubes", `"of_tubes": "any_tubes"`, `"of_tubes": "some"`, "steps/0/of_tubes", "shop.file.step_tubes"},
		{"an unknown family", `"low_alloy"`, `"wood"`, "steps/0/tube_families/0", "shop.file.family"},
		{"an unknown check", `"looked_at": "fin_od"`, `"looked_at": "colour"`, "checks/2/looked_at", "shop.file.check"},
		{"a check of no fin type", `"edge_wound"`, `"glued"`, "checks/6/fin_types/5", "shop.file.any_fin_type"},
		{"a price of no day", `"dated": "2026-10-05"`, `"dated": "last year"`, "rates/tube_metals/0/dated", "shop.file.dated"},
		{"a week without work", `"mon",`, `"someday",`, "calendar/work_days/0", "shop.file.week_day"},
		{"a holiday that is none", `"2026-12-24"`, `"2026-13-24"`, "calendar/holidays/0", "shop.file.day"},
		{"an idle drive", `"idle": "2 kW"`, `"idle": "20 kW"`, "lines/1/idle", "shop.file.idle"},
	} {
		if !strings.Contains(good, c.old) {
			t.Fatalf("%s: the shipped file has no %s", c.name, c.old)
		}
		_, faults := Open([]byte(strings.Replace(good, c.old, c.new, 1)))
		if !slices.ContainsFunc(faults, func(f Fault) bool { return f.Path == c.path && f.Why.Key == c.key }) {
			t.Errorf("%s: faults %v, want %s at %s", c.name, faults, c.key, c.path)
		}
		for _, f := range faults {
			message.English().Render(f.Why, units.SI)
		}
	}
}

func TestEditRefuses(t *testing.T) {
	for path, text := range map[string]string{"lines/0/strip_speed": "fast", "lines/9/name": "x", "colour": "red", "crew/people": "two"} {
		if _, faults := House().With(path, text); faults == nil {
			t.Errorf("%s = %s is accepted", path, text)
		}
	}
}

func TestRangesSpeakTheUnitOfTheValue(t *testing.T) {
	_, faults := House().With("lines/0/strip_speed", "3000 ft/s")
	if len(faults) != 1 || faults[0].System != units.US {
		t.Fatalf("%+v", faults)
	}
	if got := message.English().Render(faults[0].Why, faults[0].System); got != "3000 ft/s is out of range: from 0.00329 ft/s to 656 ft/s." {
		t.Error(got)
	}
}

func TestHouseMakesWoundTypes(t *testing.T) {
	c := House()
	for _, typ := range []tube.FinType{tube.Footed, tube.OverlapFooted, tube.KnurledFooted, tube.KnurledOverlap, tube.Embedded, tube.EdgeWound} {
		if !slices.ContainsFunc(c.Lines, func(l Line) bool { _, ok := l.Practice(typ); return ok }) {
			t.Errorf("no line makes %s", typ)
		}
	}
}

// The shop that ships makes each type as is usual of it.
func TestHouseMakesTypesAsUsual(t *testing.T) {
	c := House()
	for _, l := range c.Lines {
		for i := range l.Types {
			usual(t, &l.Types[i])
		}
	}
}

func usual(t *testing.T, p *Practice) {
	t.Helper()
	u := p.Type.Fixing().Usual
	for name, pair := range map[string][2]float64{
		"growth": {p.Growth, u.Growth}, "scatter": {p.Scatter, u.Scatter}, "strip ratio": {p.StripRatio, u.StripRatio},
		"least wall": {float64(p.LeastWall), float64(u.LeastWall)}, "knurl": {float64(p.Knurl), float64(u.Knurl)}, "spindle": {float64(p.Spindle), float64(u.Spindle)},
	} {
		if math.Abs(pair[0]-pair[1]) > 1e-12*math.Abs(pair[1]) {
			t.Errorf("%s: %s %g, usual is %g", p.Type, name, pair[0], pair[1])
		}
	}
}

// A way of making that is added is of a type which the line does not make, with that type's own figures; where all are
// made it is a copy.
func TestAddedWayOfMakingIsOfAnotherType(t *testing.T) {
	c := House()
	for i, want := range []tube.FinType{tube.Embedded, tube.Footed} {
		path := "lines/" + strconv.Itoa(i) + "/types"
		next, faults := c.More(path)
		if faults != nil {
			t.Fatal(faults)
		}
		made := next.Lines[i].Types
		if added := &made[len(made)-1]; len(made) != len(c.Lines[i].Types)+1 || added.Type != want {
			t.Errorf("line %d: %d ways of making, the last of %s, want %s", i, len(made), added.Type, want)
		} else {
			usual(t, added)
		}
	}
	full := c
	for range len(tube.Fixings) - len(c.Lines[0].Types) + 1 {
		var faults []Fault
		if full, faults = full.More("lines/0/types"); faults != nil {
			t.Fatal(faults)
		}
	}
	if types := full.Lines[0].Types; !reflect.DeepEqual(types[len(types)-1], types[len(types)-2]) {
		t.Error("with all types made, the last is not copied")
	}
}
