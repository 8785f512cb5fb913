package shop

import (
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"

	"finwright/core/proof"
)

func pathsOf(faults []Fault) (paths []string) {
	for _, f := range faults {
		paths = append(paths, f.Path)
	}
	return paths
}

// Many texts are entered at once: what is wrong stays out with its reason, and takes nothing else with it.
func TestEntriesThatHoldAreTaken(t *testing.T) {
	c, faults := House().Enter([]Entered{{"rates/line", "91 /h"}, {"rates/person", "dear"}, {"crew/people", "3"}, {"nothing/here", "1"}, {"crew/shift", "9000 h"}})
	if c.Rates.Line != House().Rates.Line*91/65 || c.Crew.People != 3 || c.Rates.Person != House().Rates.Person {
		t.Errorf("%+v %+v", c.Rates, c.Crew)
	}
	if got := pathsOf(faults); !slices.Equal(got, []string{"nothing/here", "rates/person", "crew/shift"}) {
		t.Errorf("refused %v", got)
	}
}

// What is wrong only beside another value is said of the entry nearest to the place; together they may hold.
func TestEntriesAreHeldAgainstOneAnother(t *testing.T) {
	low := Entered{"lines/0/tube_od/low", "60 mm"}
	c, faults := House().Enter([]Entered{low, {"currency", "CHF"}})
	if got := pathsOf(faults); !slices.Equal(got, []string{low.Path}) || c.Currency != "CHF" {
		t.Errorf("refused %v", got)
	}
	if _, faults = c.Enter([]Entered{low, {"lines/0/tube_od/high", "80 mm"}}); faults != nil {
		t.Errorf("refused %v", pathsOf(faults))
	}
	if _, faults = c.Enter([]Entered{{"lines/0/change_over/pitch", "9 h"}, {"rates/line", "70 /h"}}); !slices.Equal(pathsOf(faults), []string{"lines/0/change_over/pitch"}) {
		t.Errorf("refused %v", pathsOf(faults))
	}
}

// Lists of values grow behind their last and shrink by an empty text; faults are said of the places before.
func TestListsOfValuesGrowAndShrink(t *testing.T) {
	c, faults := House().Enter([]Entered{{"cutting/stock/0", ""}, {"cutting/stock/2", "long"}, {"cutting/stock/4", "20 m"}, {"cutting/stock/5", "22 m"}, {"cutting/stock/9", ""}})
	if got := pathsOf(faults); !slices.Equal(got, []string{"cutting/stock/2"}) {
		t.Errorf("refused %v", got)
	}
	if got := c.Cutting.Stock; len(got) != 5 || got[0] != 9.5 || got[4] != 22 {
		t.Errorf("stock %v", got)
	}
	c, faults = House().Enter([]Entered{{"rates/breaks/1", ""}, {"rates/breaks/5", "2000"}})
	if !slices.Equal(c.Rates.Breaks, []int{1, 50, 100, 500, 2000}) || faults != nil {
		t.Errorf("%v, refused %v", c.Rates.Breaks, faults)
	}
	c, faults = House().Enter([]Entered{{"lines/0/types/0/fin_metals/=al1060", "false"}, {"lines/0/types/0/fin_metals/=cs1010", "true"}, {"lines/0/types/0/fin_metals/=wood", "true"}, {"lines/0/types/0/fin_metals/=al3003", "true"}})
	want := []string{"al1050a", "al1100", "al3003", "c11000", "c12200", "cs1010"}
	if got := c.Lines[0].Types[0].FinMetals; !slices.Equal(got, want) || len(faults) == 0 {
		if !slices.Contains(pathsOf(faults), "lines/0/types/0/fin_metals/=wood") {
			t.Errorf("%v, refused %v", got, pathsOf(faults))
		}
	}
}

// A place behind the end of a list of things begins one more; what may be missing comes and goes; what may not is said to be missing.
func TestEntriesBeginAndEnd(t *testing.T) {
	c, faults := House().Enter([]Entered{{"measured/0/type", "embedded"}, {"measured/0/cut", "6 m"}, {"measured/1/cut", "6001 mm"}, {"lines/0/types/0/knurl", "0.2 mm"}, {"lines/0/types/2/knurl", ""}, {"buying/quotes/0/od", ""}})
	if faults != nil || len(c.Measured) != 2 || c.Measured[1].Cut != 6.001 || c.Lines[0].Types[0].Knurl == 0 || c.Lines[0].Types[2].Knurl != 0 || len(c.Buying.Quotes) != 0 {
		t.Errorf("%+v, refused %v", c.Measured, faults)
	}
	_, faults = c.Enter([]Entered{{"rates/line", ""}})
	if len(faults) != 1 || faults[0].Why.Key != "shop.file.missing" {
		t.Errorf("%+v", faults)
	}
}

// An object that may be missing begins once all that it needs is entered, and ends with its last value.
func TestObjectsComeAndGo(t *testing.T) {
	power, heat := Entered{"lines/0/types/0/weld/power", "90 kW"}, Entered{"lines/0/types/0/weld/heat", "60 J/mm2"}
	c, faults := House().Enter([]Entered{power})
	if !slices.Equal(pathsOf(faults), []string{power.Path}) || faults[0].Of != heat.Path {
		t.Errorf("refused %+v", faults)
	}
	if c, faults = c.Enter([]Entered{power, heat, {"lines/0/types/0/weld/edge/0/speed", "1 m/s"}}); faults != nil || c.Lines[0].Types[0].Weld.Power != 90e3 || len(c.Lines[0].Types[0].Weld.Edge) != 1 {
		t.Errorf("%+v, refused %v", c.Lines[0].Types[0].Weld, faults)
	}
	if c, faults = c.Remove("lines/0/types/0/weld/edge", 0); faults != nil {
		t.Fatal(faults)
	}
	power.Text, heat.Text = "", ""
	if c, faults = c.Enter([]Entered{power, heat}); faults != nil || string(c.Save()) != string(House().Save()) {
		t.Errorf("it leaves a trace; refused %v", faults)
	}
}

// A copy stands behind what it is of.
func TestCopy(t *testing.T) {
	c, faults := House().Copy("forming", 1)
	if faults != nil || len(c.Forming) != 5 || c.Forming[1] != c.Forming[2] || c.Forming[3].Metal != "carbon_steel" {
		t.Errorf("%+v %v", c.Forming, faults)
	}
	for _, n := range []int{-1, 4} {
		if _, faults := House().Copy("forming", n); faults == nil {
			t.Errorf("item %d is copied", n)
		}
	}
}

// A shop that is begun has one line and nothing in its lists, and each list can be begun.
func TestBegunShop(t *testing.T) {
	c := Begin("Our works")
	if c.Name != "Our works" || len(c.Lines) != 1 || len(c.Lines[0].Types) != 0 || len(c.Rates.TubeMetals) != 0 || strings.Contains(string(c.Save()), `"note"`) {
		t.Errorf("%+v", c)
	}
	for range 3 { // lists within lists
		_, empty := c.Contents()
		for _, list := range empty {
			var faults []Fault
			if c, faults = c.More(list); faults != nil {
				t.Errorf("%s: %v", list, faults)
			}
		}
	}
	if len(c.Lines[0].Types) != 1 || len(c.Lines[0].Types[0].Tools) != 1 || c.Rates.FinMetals[0].Metal == "" {
		t.Errorf("%+v", c.Lines[0])
	}
}

// Whatever is entered, what is taken is a shop that opens, and of each entry that is refused is said why.
func TestAnyEntriesLeaveAShop(t *testing.T) {
	house := Begin("Any")
	before, places := string(house.Save()), house.Places()
	proof.Proof{Share: 20, Full: 100_000, Seed: 31}.Run(t, func(c *proof.Case) {
		var list []Entered
		for range 1 + c.Rand.IntN(5) {
			p := places[c.Rand.IntN(len(places))]
			list = append(list, Entered{otherPath(c.Rand, p.Path), proof.Text(c.Rand, p.Text, "", "1 in", "true", "60 mm", "al3003")})
		}
		next, faults := house.Enter(list)
		if _, wrong := Open(next.Save()); wrong != nil {
			c.Fatalf("%+v leaves a file with %v", list, wrong)
		}
		for _, f := range faults {
			if f.Why.None() || !slices.ContainsFunc(list, func(e Entered) bool { return e.Path == f.Path }) {
				c.Fatalf("%+v: refused %+v", list, f)
			}
		}
	})
	if string(house.Save()) != before {
		t.Error("the shop that it was entered in is changed")
	}
}

// otherPath is a path or one a little beside it.
func otherPath(r *rand.Rand, path string) string {
	steps := strings.Split(path, "/")
	switch r.IntN(6) {
	case 0:
		steps[r.IntN(len(steps))] = []string{"9", "0", "=al1060", "low", "x", "-1"}[r.IntN(6)]
	case 1:
		steps = append(steps, "0")
	}
	return strings.Join(steps, "/")
}

// What somebody noted of a thing is read, changed and taken away like any text, is offered where there is none, and does not go with a copy
// that is to become another thing.
func TestRemarksAreEntered(t *testing.T) {
	c := House()
	remark := func(c Capability, path string) (l Leaf, ok bool) {
		for _, p := range c.Places() {
			if p.Path == path {
				return p, true
			}
		}
		return Leaf{}, false
	}
	if l, ok := remark(c, "note"); !ok || l.Text == "" || l.Missing {
		t.Fatalf("the remark of the shop is %+v", l)
	}
	for path, offered := range map[string]bool{
		"rates/note": true, "lines/0/note": true, "lines/0/types/1/note": true, "steps/0/note": true,
		"lines/0/racks/note": false, "lines/0/types/0/tools/0/note": false,
	} {
		if l, ok := remark(c, path); ok != offered || ok && !l.Missing && l.Text == "" {
			t.Errorf("%s: %v, %+v", path, ok, l)
		}
	}
	const text = "Agreed with the foreman.\nTo be measured again."
	next, refused := c.Enter([]Entered{{"rates/note", text}, {"lines/0/note", "Old"}, {"note", ""}})
	if refused != nil {
		t.Fatal(refused)
	}
	if l, _ := remark(next, "rates/note"); l.Text != text {
		t.Errorf("entered, it is %q", l.Text)
	}
	if l, _ := remark(next, "note"); !l.Missing {
		t.Errorf("taken away, it is %+v", l)
	}
	more, faults := next.More("lines")
	if l, _ := remark(more, "lines/"+strconv.Itoa(len(c.Lines))+"/note"); faults != nil || !l.Missing {
		t.Errorf("a new line has the remark %q: %v", l.Text, faults)
	}
	if _, refused = c.Enter([]Entered{{"note", strings.Repeat("n", longestRemark+1)}}); len(refused) != 1 || refused[0].Why.Key != "shop.file.text_long" {
		t.Errorf("a flood: %v", refused)
	}
}
