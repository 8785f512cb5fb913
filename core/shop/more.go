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

// blank is the first item of a list that was empty, by the list's key.
//
// Source: engineering judgement, to be replaced by the reader's own.
var blank = map[string]string{
	"measured":         `{"type": "embedded", "cut": "6000 mm", "finned": "5900 mm", "finished": "6006 mm"}`,
	"fin_height_by_od": `{"od": "25.4 mm", "low": "6.35 mm", "high": "15.875 mm"}`,
	"fin_count_by_od":  `{"od": "25.4 mm", "low": "5 fpi", "high": "11 fpi"}`,
	"tools":            `{"height": "5/8 in", "strip": "0.4 mm", "count": {"low": "7 fpi", "high": "11 fpi"}}`,
	"tube_sizes":       `"25.4 mm"`,
	"stock":            `"20 ft"`,
	"fin_metals":       `"al1060"`,
	"tube_metals":      `"cs"`,
}

// More returns the capability with one more item in the list at path: a copy of
// its last one, to be changed, or a first one. Where that is a line's way of making, it
// is of a type that the line does not make yet, as is usual of it.
func (c Capability) More(path string) (Capability, []Fault) {
	steps := strings.Split(path, "/")
	item := blank[steps[len(steps)-1]]
	if list, ok := c.at(steps).([]any); ok && len(list) > 0 {
		next := cloned(list[len(list)-1])
		if way, ok := next.(map[string]any); ok && steps[len(steps)-1] == "types" {
			asUsual(way, list)
		}
		last, err := json.Marshal(next)
		if err != nil {
			panic("shop: " + err.Error())
		}
		item = string(last)
	}
	if item == "" {
		return c, []Fault{{Path: path, Why: message.New("shop.file.no_such")}}
	}
	return c.Add(path, item)
}

// asUsual makes a copied way of making that of the first type which none of the others is of, as
// far as something is usual of it. What the type does not say stays as copied.
func asUsual(way map[string]any, others []any) {
	for _, f := range tube.Fixings {
		taken := slices.ContainsFunc(others, func(o any) bool { return child(o, "type") == string(f.Type) })
		if u := f.Usual; !taken && u != (tube.Usual{}) {
			delete(way, "note") // said of the other
			way["type"] = string(f.Type)
			way["growth"], way["growth_scatter"] = units.Echo(units.Percent, u.Growth, units.SI), units.Echo(units.Percent, u.Scatter, units.SI)
			way["strip_ratio"] = units.Echo(units.Factor, u.StripRatio, units.SI)
			way["least_wall"] = units.Echo(units.Wall, float64(u.LeastWall), units.SI)
			way["spindle"] = units.Echo(units.Spin, float64(u.Spindle), units.SI)
			delete(way, "knurl")
			if u.Knurl > 0 {
				way["knurl"] = units.Echo(units.Height, float64(u.Knurl), units.SI)
			}
			return
		}
	}
}

// EmptyLists returns the paths of the lists that hold nothing, remarks aside.
func (c Capability) EmptyLists() []string {
	var out []string
	var walk func(node any, path string)
	walk = func(node any, path string) {
		switch n := node.(type) {
		case map[string]any:
			for key, value := range n {
				if key != "note" {
					walk(value, join(path, key))
				}
			}
		case []any:
			if len(n) == 0 {
				out = append(out, path)
			}
			for i, value := range n {
				walk(value, join(path, strconv.Itoa(i)))
			}
		}
	}
	walk(c.file(), "")
	slices.Sort(out)
	return out
}
