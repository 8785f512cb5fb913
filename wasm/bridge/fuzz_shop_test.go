package bridge

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"strconv"
	"strings"
	"sync"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/tube"
	"finwright/core/units"
)

// strange are values that no shop has, and some that look like one's.
var strange = []any{
	"", "0", "0 mm", "-1 mm", "1e308 mm", "1e308", "1e-320 m", "1/0 in", "NaN", "Inf s", "5 kg", "10 fpi", "fast", "14 BWG", "2,108 mm", "al1060", "footed",
	nil, true, false, 0.0, -1.0, 2.5, 1e9, 1e308,
	[]any{},
	map[string]any{},
	[]any{[]any{}},
	strings.Repeat("9", 120), strings.Repeat("é", 2001),
}

// place is a value in the tree of a shop's file, with what holds it.
type place struct {
	parent any // an object or a list
	key    string
	index  int
}

func (p place) value() any {
	if m, ok := p.parent.(map[string]any); ok {
		return m[p.key]
	}
	return p.parent.([]any)[p.index]
}

func (p place) put(value any) {
	if m, ok := p.parent.(map[string]any); ok {
		m[p.key] = value
	} else {
		p.parent.([]any)[p.index] = value
	}
}

// wander goes from the top of a file down to a value.
func wander(r *rand.Rand, tree map[string]any) place {
	var at place
	var node any = tree
	for {
		switch n := node.(type) {
		case map[string]any:
			if len(n) == 0 {
				return at
			}
			keys := make([]string, 0, len(n))
			for key := range n {
				keys = append(keys, key)
			}
			least := keys[0] // without a sort, and the same whatever the order of the map
			pick, far := r.Uint64(), uint64(math.MaxUint64)
			for _, key := range keys {
				h := pick
				for i := range len(key) {
					h = (h ^ uint64(key[i])) * 1099511628211
				}
				if h < far {
					least, far = key, h
				}
			}
			at = place{parent: n, key: least}
		case []any:
			if len(n) == 0 || r.IntN(12) == 0 {
				return at
			}
			at = place{parent: n, index: r.IntN(len(n))}
		default:
			return at
		}
		node = at.value()
	}
}

// scaled returns a quantity's text with its number another, of the same unit.
func scaled(r *rand.Rand, text string) string {
	number, unit, _ := strings.Cut(text, " ")
	x, err := strconv.ParseFloat(number, 64)
	if err != nil {
		return text
	}
	return strings.TrimSpace(strconv.FormatFloat(x*math.Pow(10, 3*r.NormFloat64()), 'g', 1+r.IntN(12), 64) + " " + unit)
}

// change edits a file at one place: a value moved or made strange, an item doubled, many times over, or removed.
func change(r *rand.Rand, tree map[string]any) {
	at := wander(r, tree)
	if at.parent == nil || (at.key == "format" || at.key == "version") && r.IntN(20) > 0 {
		return
	}
	if list, ok := at.value().([]any); ok && len(list) > 0 {
		n := r.IntN(len(list))
		switch r.IntN(8) {
		case 0:
			at.put(append(list[:n:n], list[n+1:]...))
		case 1:
			copies := 1 + r.IntN(24)
			if _, leaf := list[n].(string); leaf {
				copies *= 10
			}
			for range copies {
				list = append(list, list[n])
			}
			at.put(list)
		case 2:
			at.put(list[:0])
		default:
			at.put(append(list[:len(list):len(list)], list[n]))
		}
		return
	}
	switch v := at.value().(type) {
	case string:
		if r.IntN(6) > 0 {
			at.put(scaled(r, v))
			return
		}
	case float64:
		if r.IntN(6) > 0 {
			at.put(min(1e300, math.Round(v*math.Pow(10, 2*r.NormFloat64()))))
			return
		}
	}
	if m, ok := at.parent.(map[string]any); ok && r.IntN(5) == 0 {
		delete(m, at.key)
		return
	}
	at.put(cloned(strange[r.IntN(len(strange))], math.MaxInt)) // its own: what is put may be changed next
}

// drawShop draws a shop: the shipped one, mostly with its lists cut short, changed at some places. Values that it refuses for their range are mostly put to
// the limit that it names, which it must take.
func drawShop(t testing.TB, r *rand.Rand) (text []byte, c shop.Capability, faults []shop.Fault) {
	most := math.MaxInt
	if r.IntN(20) > 0 {
		most = 1 + r.IntN(2)
	}
	tree := cloned(shipped(), most).(map[string]any)
	for range r.IntN(8) {
		change(r, tree)
	}
	for range 3 {
		var err error
		if text, err = json.Marshal(tree); err != nil {
			t.Fatal(err)
		}
		if c, faults = shop.Open(text); faults == nil || r.IntN(8) == 0 {
			return text, c, faults
		}
		for _, f := range faults {
			low, bounded := message.AmountOf(f.Why.Arg("low"))
			if !bounded {
				continue
			}
			limit := low
			if high, ok := message.AmountOf(f.Why.Arg("high")); ok && r.IntN(2) == 0 {
				limit = high
			}
			at := lead(tree, f.Path)
			if at.parent == nil {
				t.Fatalf("no value at %s", f.Path)
			}
			if limit.Kind == units.Count {
				at.put(limit.SI)
			} else {
				at.put(strings.TrimSpace(units.Plain.Full(limit.Kind, limit.SI, units.SI) + " " + limit.Kind.Unit(units.SI)))
			}
		}
	}
	c, faults = shop.Open(text)
	return text, c, faults
}

var shipped = sync.OnceValue(func() (tree any) {
	if err := json.Unmarshal(house().Save(), &tree); err != nil {
		panic(err)
	}
	return tree
})

// cloned copies a tree, of each list at most so many items.
func cloned(node any, most int) any {
	switch n := node.(type) {
	case map[string]any:
		out := make(map[string]any, len(n))
		for key, value := range n {
			out[key] = cloned(value, most)
		}
		return out
	case []any:
		out := make([]any, min(len(n), most))
		for i := range out {
			out[i] = cloned(n[i], most)
		}
		return out
	}
	return node
}

// lead follows a path.
func lead(tree map[string]any, path string) (at place) {
	var node any = tree
	for step := range strings.SplitSeq(path, "/") {
		switch n := node.(type) {
		case map[string]any:
			at = place{parent: n, key: step}
		case []any:
			i, err := strconv.Atoi(step)
			if err != nil || i >= len(n) {
				return place{}
			}
			at = place{parent: n, index: i}
		default:
			return place{}
		}
		node = at.value()
	}
	return at
}

// drawOrder draws a tube and an order of it, anywhere in the ranges of their entries; the film is mostly given, so that no
// bank must settle.
func drawOrder(r *rand.Rand) document.Document {
	d := document.New()
	set := func(id, text string) { d.Fields[id] = document.Entry{Text: text, Origin: document.House} }
	number := func(id string, k units.Kind, low, high float64) float64 {
		x := low * math.Pow(high/low, r.Float64())
		set(id, units.Echo(k, x, units.SI))
		return x
	}
	if r.IntN(10) > 0 {
		set("film_source", "given")
	}
	if r.IntN(3) > 0 {
		od := number("tube_od", units.Diameter, 0.006, 0.33)
		number("tube_wall", units.Wall, max(0.0003, od/50), min(0.03, od*0.45))
		strip := number("strip_thickness", units.Thickness, 0.0001, 0.006)
		number("fin_height", units.Height, 0.001, 0.06)
		number("fin_pitch", units.FinCount, 20, min(1700, 0.9/strip))
	}
	if r.IntN(2) == 0 {
		set("fin_type", string(tube.FinTypes()[r.IntN(len(tube.FinTypes()))]))
	}
	if r.IntN(2) == 0 {
		set("fin_metal", material.FinMetals[r.IntN(len(material.FinMetals))].ID)
		set("tube_metal", material.TubeMetals[r.IntN(len(material.TubeMetals))].ID)
	}
	length := 6.096
	if r.IntN(2) == 0 {
		length = number("tube_length", units.Distance, 0.1, 30)
		number("plain_end_a", units.Distance, 0.001, min(5, length))
		number("plain_end_b", units.Distance, 0.001, min(5, length))
	}
	if r.IntN(2) == 0 {
		set("quantity", fmt.Sprint(int(math.Pow(10, 6*r.Float64()))))
	}
	if r.IntN(3) == 0 {
		set("supply", "free_issue")
		set("least_wall", units.Echo(units.Wall, 0.0001+0.03*r.Float64(), units.SI))
		set("joints_allowed", fmt.Sprint(r.IntN(51)))
		set("margin", fmt.Sprintf("%d %%", r.IntN(900)))
	}
	for i, n := 0, r.IntN(3)*r.IntN(21); i < n; i++ {
		at := length * (float64(i+1) + 0.4*(r.Float64()-0.5)) / float64(n+1)
		d.Spans = append(d.Spans, document.Span{
			Centre: document.Entry{Text: fmt.Sprintf("%.6g mm", 1000*at), Origin: document.House},
			Width:  document.Entry{Text: fmt.Sprintf("%.6g mm", 1000*length/float64(n+1)*(0.01+0.5*r.Float64())), Origin: document.House},
		})
	}
	return d
}

// measuring keeps others still while what one answer allocates is measured.
var measuring sync.RWMutex

// anyShop draws a shop's file and an order. What is refused says why, at a place; in what is taken the order is judged and
// planned, now and then as the page asks for it.
func anyShop(t testing.TB, r *rand.Rand) {
	text, c, faults := drawShop(t, r)
	for _, f := range writerIn(units.SI).Faults(faults) {
		if f.Message == "" || strings.Contains(f.Message, "{") || len(f.Message) > 500 {
			t.Fatalf("%s: %q", f.Field, f.Message)
		}
		writerIn(units.SI).Place(f.Field)
	}
	if faults != nil {
		return
	}
	d := drawOrder(r)
	if r.IntN(50) == 0 {
		askForMaking(t, d, text)
		return
	}
	measuring.RLock()
	defer measuring.RUnlock()
	in, err := design.Read(d)
	if err != nil {
		return
	}
	in.MadeBy(&c)
	var h design.Heat
	if !in.Air.FilmGiven {
		if h, err = design.Rate(in); err != nil {
			return
		}
	}
	m := design.Make(in, h)
	var res design.Result
	res.Auto = map[string]message.Amount{}
	res.AddMaking(&m)
	finite(t, "figures", reflect.ValueOf(res.Groups))
	for name, part := range map[string]any{"lines": m.Lines, "verdicts": m.Verdicts, "plan": m.Plan, "schedule": m.Schedule, "swings": m.Swings} {
		finite(t, name, reflect.ValueOf(part))
	}
	if m.Schedule != nil && (len(m.Schedule.Blocks) > 1001 || m.Schedule.Shifts > 12) {
		t.Fatalf("%d blocks in %d shifts", len(m.Schedule.Blocks), m.Schedule.Shifts)
	}
	if p := m.Plan.Packing; p != nil && len(p.Layers) > 3000 {
		t.Fatalf("%d layers", len(p.Layers))
	}
	for _, v := range m.Verdicts {
		if v.State != figure.Good && v.Why.None() {
			t.Fatalf("%s: %s without a reason", v.Rule.ID, v.State)
		}
	}
}

// askForMaking asks as the page does: for the answer of the section, pictures and trials included, and for the form.
func askForMaking(t testing.TB, d document.Document, text []byte) {
	args := mustMarshal(t, map[string]any{"document": d, "commands": nil, "sheet": area, "section": "making", "shop": string(text), "room": map[string]any{"wide": 1100, "card": 270}})
	var reply []byte
	measuring.Lock()
	got := allocated(func() { reply = Call("edit", args) })
	measuring.Unlock()
	if got > mostAllocated {
		t.Fatalf("%d bytes allocated: %s", got, args)
	}
	var said struct {
		Error *struct{ Message string }
		Data  *struct {
			View struct{ Making *report.MakingSection }
		}
	}
	if err := json.Unmarshal(reply, &said); err != nil || said.Error != nil || said.Data == nil {
		t.Fatalf("%v %.300s: %s", err, reply, args)
	}
	if reply = Call("shop", mustMarshal(t, map[string]any{"shop": string(text)})); strings.Contains(string(reply[:min(20, len(reply))]), `"error"`) {
		t.Fatalf("%.300s: %s", reply, text)
	}
}

// finite fails on any number in v that is not finite.
func finite(t testing.TB, path string, v reflect.Value) {
	switch v.Kind() {
	case reflect.Float64:
		if x := v.Float(); math.IsNaN(x) || math.IsInf(x, 0) {
			t.Fatalf("%s is %v", path, x)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.IsExported() && f.Type != reflect.TypeFor[*shop.Line]() && f.Type != reflect.TypeFor[*making.Order]() && f.Type != reflect.TypeFor[*shop.Practice]() {
				finite(t, path+"."+f.Name, v.Field(i))
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			finite(t, path, v.Index(i))
		}
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			finite(t, path, v.Elem())
		}
	case reflect.Map:
		for _, key := range v.MapKeys() {
			finite(t, path+"."+key.String(), v.MapIndex(key))
		}
	}
}

func TestAnyShopIsJudgedAndPlanned(t *testing.T) {
	proof.Proof{Share: 150, Full: 500_000, Seed: 7}.Run(t, func(c *proof.Case) { anyShop(c, c.Rand) })
}

func FuzzShop(f *testing.F) {
	f.Add([]byte("one shop"))
	f.Fuzz(func(t *testing.T, data []byte) { anyShop(t, proof.FromBytes(data)) })
}
