package shop

import (
	"encoding/json"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/units"
)

// complete is a file with every key that there is, none of its numbers zero, and one item in each list.
func complete(t testing.TB) Capability {
	t.Helper()
	c, faults := Open([]byte(short()))
	if faults != nil {
		t.Fatal(faults)
	}
	set := func(path, key, text string) { c.at(strings.Split(path, "/")).(map[string]any)[key] = text }
	set("lines/0/coils/0", "width", "400 mm")
	set("lines/0/types/0", "knurl", "0.5 mm")
	c.at(strings.Split("lines/0/types/0", "/")).(map[string]any)["weld"] = map[string]any{
		"power": "60 kW", "heat": "45 J/mm2", "restart": "20 s", "preheat": []any{map[string]any{"preheated": "t11", "preheat_time": "3 min", "preheat_cost": "2"}}, "edge": []any{map[string]any{"metal": "cs1010", "strip": "1.1 mm", "speed": "1.3 m/s"}},
	}
	set("checks/0", "size_out", "2 mm")
	for _, list := range []string{"measured", "buying/quotes", "buying/tubes_on_hand", "buying/strip_on_hand", "steps/0/fin_types", "checks/0/fin_types"} {
		if c, faults = c.More(list); faults != nil {
			t.Fatal(faults)
		}
	}
	c = edit(t, c, "rates/tube_metals/0/surcharge", "0.2 /kg", "rates/fin_metals/0/surcharge", "0.3 /kg")
	c = edit(t, c, "steps/0/cost_tube", "1.25", "steps/0/cost_order", "90", "steps/0/lead_days", "5", "steps/0/step_mark_up", "7 %")
	c = edit(t, c, "buying/offcut_share", "20 %", "crate/cost_metre", "12 per m", "rates/overhead", "10 %", "rates/freight", "0.1 /kg", "rates/least_charge", "400")
	return edit(t, c, "lines/0/types/0/growth", "0.1 %", "lines/0/types/0/growth_scatter", "0.1 %", "lines/0/types/0/oiler", "true")
}

// A full file fills every field, each value its own, in the order of the structs.
func TestEveryFieldIsRead(t *testing.T) {
	c := complete(t)
	var visit func(reflect.Value, string)
	visit = func(v reflect.Value, path string) {
		switch {
		case v.Kind() == reflect.Slice && v.Len() > 0:
			visit(v.Index(0), path)
		case v.Kind() == reflect.Struct:
			for i := range v.NumField() {
				if f := v.Type().Field(i); f.IsExported() {
					visit(v.Field(i), path+"."+f.Name)
				}
			}
		case v.IsZero():
			t.Errorf("nothing is read into %s", path)
		}
	}
	visit(reflect.ValueOf(c), "")
	inOrder(t, c, leaves(c))
}

// inOrder fails unless the numbers of a capability are those of its leaves, one after the other.
func inOrder(t testing.TB, c Capability, list []Leaf) {
	t.Helper()
	var typed, read []float64
	for _, l := range list {
		if x, ok := number(t, l); ok && x != 0 {
			typed = append(typed, x)
		}
	}
	var visit func(reflect.Value)
	visit = func(v reflect.Value) {
		x := 0.0
		switch v.Kind() {
		case reflect.Float64:
			x = v.Float()
		case reflect.Int:
			x = float64(v.Int())
		case reflect.Slice:
			for i := range v.Len() {
				visit(v.Index(i))
			}
		case reflect.Struct:
			for i := range v.NumField() {
				visit(v.Field(i))
			}
		}
		if x != 0 {
			read = append(read, x)
		}
	}
	visit(reflect.ValueOf(c))
	if !slices.Equal(typed, read) {
		t.Fatalf("typed %v, read %v", typed, read)
	}
}

func leaves(c Capability) []Leaf {
	list, _ := c.Contents()
	return list
}

// number returns what a leaf says; ok is false if it is no number.
func number(t testing.TB, l Leaf) (x float64, ok bool) {
	t.Helper()
	if l.Kind == "" {
		return 0, false
	}
	p, err := units.Parse(l.Kind, l.Text, units.SI)
	if err != nil {
		t.Fatalf("%s: %v", l.Path, err)
	}
	return p.SI, true
}

// pattern is a path without the numbers of list items.
func pattern(path string) string {
	steps := strings.Split(path, "/")
	return strings.Join(slices.DeleteFunc(steps, func(s string) bool { _, err := strconv.Atoi(s); return err == nil }), "/")
}

// bounds are what numbers may be and how many items lists may have, by pattern.
type bounds struct {
	numbers map[string]limits
	items   map[string]int
}

// stated returns the bounds of the file, as the reader states them of a number far out and of an endless list.
func stated(t testing.TB) bounds {
	t.Helper()
	c := complete(t)
	b := bounds{map[string]limits{}, map[string]int{}}
	for _, l := range leaves(c) {
		if l.Kind == "" {
			continue
		}
		_, faults := c.With(l.Path, strings.TrimSpace("1e30 "+l.Kind.Unit(units.SI)))
		if len(faults) == 0 || faults[0].Path != l.Path || faults[0].Why.Key != "error.range" {
			t.Fatalf("%s takes a number far out: %v", l.Path, faults)
		}
		low, high := message.Amount(faults[0].Why.Arg("low").(message.Least)), message.Amount(faults[0].Why.Arg("high").(message.Most))
		b.numbers[pattern(l.Path)] = limits{l.Kind, low.SI, high.SI, strings.HasSuffix(l.Path, "/low")}
	}
	var visit func(any, string)
	visit = func(node any, path string) {
		switch n := node.(type) {
		case map[string]any:
			for key, value := range n {
				visit(value, join(path, key))
			}
		case []any:
			_, faults := c.relist(path, func([]any) ([]any, bool) { return make([]any, 9999), true })
			at := slices.IndexFunc(faults, func(f Fault) bool { return f.Path == path && f.Why.Key == "shop.file.list_long" })
			if at < 0 {
				t.Fatalf("the list %s may be as long as it likes: %v", path, faults[:min(3, len(faults))])
			}
			b.items[pattern(path)] = faults[at].Why.Arg("most").(int)
			visit(n[0], nth(path, 0))
		}
	}
	visit(c.file(), "")
	return b
}

// Every key of the file has a label, which is also its documentation.
func TestEveryKeyHasALabel(t *testing.T) {
	for _, l := range leaves(complete(t)) {
		for step := range strings.SplitSeq(pattern(l.Path), "/") {
			if !message.English().Has("shop.field." + step) {
				t.Errorf("no label for %s", step)
			}
		}
		if l.Kind != "" && !message.English().Has("accepts."+string(l.Kind)) {
			t.Errorf("nothing says what is accepted for %s, key %s", l.Kind, l.Key)
		}
	}
}

// Every number of the file has a range, its own or that of the field around it, and every list a bound on its length.
func TestEveryNumberIsBounded(t *testing.T) {
	b := stated(t)
	for path, l := range b.numbers {
		if !(l.low < l.high) || l.low < 0 || math.IsInf(l.high, 0) {
			t.Errorf("%s lies between %v and %v", path, l.low, l.high)
		}
	}
	if len(b.numbers) < 80 || len(b.items) < 12 {
		t.Errorf("%d numbers and %d lists", len(b.numbers), len(b.items))
	}
}

// short is the shipped file with one item in each list.
func short() string {
	tree := cloned(House().file()).(map[string]any)
	var cut func(any) any
	cut = func(node any) any {
		switch n := node.(type) {
		case map[string]any:
			for key, value := range n {
				n[key] = cut(value)
			}
		case []any:
			if len(n) > 1 {
				n = n[:1]
			}
			for i := range n {
				n[i] = cut(n[i])
			}
			return n
		}
		return node
	}
	text, err := json.Marshal(cut(tree))
	if err != nil {
		panic(err)
	}
	return string(text)
}

// readable holds a text to what the reader promises: faults with a place and a reason, or values within their ranges that
// survive saving, and edits that are taken or refused likewise.
func readable(t testing.TB, r *rand.Rand, b bounds, text string) {
	c, faults := Open([]byte(text))
	for _, fault := range faults {
		if said := message.English().Render(fault.Why, units.SI); said == "" || len(said) > 400 {
			t.Fatalf("%s: %q", fault.Path, said)
		}
	}
	if faults != nil {
		return
	}
	ranged(t, c, b)
	c.from = 0 // saved, it is of this version
	if again, faults := Open(c.Save()); faults != nil || !reflect.DeepEqual(c, again) {
		t.Fatalf("does not survive saving: %v\n%s", faults, text)
	}
	if r.IntN(4) > 0 {
		return
	}
	fields := leaves(c)
	f := fields[r.IntN(len(fields))]
	if next, faults := c.With(f.Path, proof.Text(r, f.Text, "1 in", "20000 rpm")); faults == nil {
		ranged(t, next, b)
	}
	list, _, _ := strings.Cut(f.Path, "/")
	c.More(list)
	c.Remove(list, r.IntN(3)-1)
}

// ranged fails on a number of a capability outside of its range, or a list that is too long.
func ranged(t testing.TB, c Capability, b bounds) {
	t.Helper()
	list := leaves(c)
	inOrder(t, c, list)
	items := map[string]int{}
	for _, l := range list {
		if x, ok := number(t, l); ok && !b.numbers[pattern(l.Path)].hold(x) {
			t.Fatalf("%s is %v", l.Path, x)
		}
		at := ""
		for step := range strings.SplitSeq(l.Path, "/") {
			if i, err := strconv.Atoi(step); err == nil {
				items[at] = max(items[at], i+1)
			}
			at = join(at, step)
		}
	}
	for list, n := range items {
		if n > b.items[pattern(list)] {
			t.Fatalf("%s has %d items", list, n)
		}
	}
}

func TestAnyTextIsRead(t *testing.T) {
	brief, long, b := short(), string(House().Save()), stated(t)
	proof.Proof{Share: 500, Full: 2_000_000, Seed: 22}.Run(t, func(c *proof.Case) {
		sample := brief
		if c.Rand.IntN(50) == 0 {
			sample = long
		}
		readable(c, c.Rand, b, proof.Text(c.Rand, sample))
	})
}

func FuzzOpen(f *testing.F) {
	f.Add(string(House().Save()))
	f.Add(short())
	f.Add(`{"format":"finwright-shop","version":3,"lines":[{"types":[{}]}]}`)
	b := stated(f)
	f.Fuzz(func(t *testing.T, text string) { readable(t, rand.New(rand.NewPCG(1, uint64(len(text)))), b, text) })
}

func BenchmarkOpen(b *testing.B) {
	text := House().Save()
	for b.Loop() {
		Open(text)
	}
}

func BenchmarkContents(b *testing.B) {
	c := House()
	for b.Loop() {
		c.Contents()
	}
}
