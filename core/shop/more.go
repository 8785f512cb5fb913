package shop

import (
	"encoding/json"
	"slices"
	"strconv"
	"strings"

	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

// blank returns, as JSON, the first item of a list that the shipped shop has nothing in, by the list's key.
//
// Source: engineering judgement, to be replaced by the reader's own.
func blank(key string) string {
	switch key {
	case "measured":
		return `{"type": "embedded", "cut": "6000 mm", "finned": "5900 mm", "finished": "6006 mm"}`
	case "quotes":
		return `{"metal": "cs", "bought": "cut", "od": "25.4 mm", "wall": "2.11 mm", "up_to": "6.5 m", "quoted": "2.75 per m", "dated": "undated"}`
	case "preheat":
		return `{"preheated": "t22", "preheat_time": "4 min", "preheat_cost": "1.2"}`
	case "edge":
		return `{"metal": "cs1010", "strip": "1.2 mm", "speed": "1.6 m/s"}`
	case "tubes_on_hand":
		return `{"metal": "cs", "od": "25.4 mm", "wall": "2.11 mm", "each_long": "6.4 m", "pieces": 12, "heat_number": "H1", "worth": "15 each"}`
	case "strip_on_hand":
		return `{"metal": "al1060", "strip_width": "17.8 mm", "strip": "0.4 mm", "mass_on_hand": "42 kg", "heat_number": "H2", "worth_mass": "4 /kg", "remark": "rack 3"}`
	case "bought_in":
		return `{"finned_type": "extruded", "lead_od": {"low": "16 mm", "high": "32 mm"}, "per_metre": "30 per m", "days": 40, "dated": "undated"}`
	case "holidays":
		return `"2026-12-24"`
	case "fin_types":
		return `"footed"`
	case "tube_families":
		return `"carbon_steel"`
	}
	return ""
}

// More returns the capability with one more item in the list at path: a copy of
// its last one, to be changed, or a first one. Where that is a line's way of making, it
// is of a type that the line does not make yet, as is usual of it.
func (c Capability) More(path string) (Capability, []Fault) {
	steps := strings.Split(path, "/")
	list, _ := c.at(steps).([]any)
	item, ok := another(list, steps)
	if !ok {
		return c, []Fault{{Path: path, Why: message.New("shop.file.no_such")}}
	}
	text, err := json.Marshal(item)
	if err != nil {
		panic("shop: " + err.Error())
	}
	return c.Add(path, string(text))
}

// Copy returns the capability with the n-th item of the list at path once more, behind it.
func (c Capability) Copy(path string, n int) (Capability, []Fault) {
	return c.relist(path, func(list []any) ([]any, bool) {
		if n < 0 || n >= len(list) {
			return nil, false
		}
		return slices.Insert(list, n+1, cloned(list[n])), true
	})
}

// another returns one more item of a list: a copy of its last, or its first.
func another(list []any, steps []string) (item any, ok bool) {
	if len(list) == 0 {
		return first(steps)
	}
	item = cloned(list[len(list)-1])
	if m, isObject := item.(map[string]any); isObject {
		delete(m, "note") // said of the other
	}
	if way, isWay := item.(map[string]any); isWay && steps[len(steps)-1] == "types" {
		asUsual(way, list)
	}
	return item, true
}

// first returns the first item of an empty list: as the shipped shop has it, with nothing in the lists of its own.
func first(steps []string) (item any, ok bool) {
	var node any = House().file()
	for _, step := range steps {
		if _, err := strconv.Atoi(step); err == nil {
			step = "0"
		}
		node = child(node, step)
	}
	if list, _ := node.([]any); len(list) > 0 {
		return emptied(cloned(list[0])), true
	}
	return item, json.Unmarshal([]byte(blank(steps[len(steps)-1])), &item) == nil
}

// emptied takes all out of the lists in a tree, but for the first of what a shop cannot be without, and all remarks.
func emptied(node any) any {
	m, ok := node.(map[string]any)
	if !ok {
		return node
	}
	delete(m, "note")
	for key, value := range m {
		list, ok := value.([]any)
		switch {
		case !ok:
			m[key] = emptied(value)
		case key == "lines" || key == "coils":
			m[key] = []any{emptied(list[0])}
		case key == "work_days": // as anywhere
		default:
			m[key] = []any{}
		}
	}
	return node
}

// Begin returns a shop to be described from scratch, under a name: one line, with the least that it needs. Its figures are the
// invented ones of the shop that ships, until they are replaced.
func Begin(name string) Capability {
	tree := emptied(cloned(House().file())).(map[string]any)
	tree["name"] = name
	c, faults := Open(Capability{tree: tree}.Save())
	if faults != nil {
		panic("shop: " + faults[0].Path)
	}
	return c
}

// asUsual makes a copied way of making that of the first type which none of the others is of, as
// far as something is usual of it. What the type does not say stays as copied.
func asUsual(way map[string]any, others []any) {
	for _, f := range tube.Fixings {
		taken := slices.ContainsFunc(others, func(o any) bool { return child(o, "type") == string(f.Type) })
		if u := f.Usual; !taken && u != (tube.Usual{}) {
			way["type"] = string(f.Type)
			way["growth"], way["growth_scatter"] = units.Echo(units.Percent, u.Growth, units.SI), units.Echo(units.Percent, u.Scatter, units.SI)
			way["strip_ratio"] = units.Echo(units.Factor, u.StripRatio, units.SI)
			way["least_wall"] = units.Echo(units.Wall, float64(u.LeastWall), units.SI)
			way["spindle"] = units.Echo(units.Spin, float64(u.Spindle), units.SI)
			delete(way, "knurl")
			delete(way, "weld")
			if f.Section == tube.WeldSection {
				way["weld"] = map[string]any{"power": "100 kW", "heat": "50 J/mm2", "edge": []any{}} // engineering judgement; speeds are the shop's to say
			}
			if u.Knurl > 0 {
				way["knurl"] = units.Echo(units.Height, float64(u.Knurl), units.SI)
			}
			return
		}
	}
}
