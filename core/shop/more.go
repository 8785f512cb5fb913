package shop

import (
	"encoding/json"
	"slices"
	"strings"

	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

// blank returns, as JSON, the first item of a list that was empty, by the list's key.
//
// Source: engineering judgement, to be replaced by the reader's own.
func blank(key string) string {
	switch key {
	case "measured":
		return `{"type": "embedded", "cut": "6000 mm", "finned": "5900 mm", "finished": "6006 mm"}`
	case "fin_height_by_od":
		return `{"od": "25.4 mm", "low": "6.35 mm", "high": "15.875 mm"}`
	case "fin_count_by_od":
		return `{"od": "25.4 mm", "low": "5 fpi", "high": "11 fpi"}`
	case "tools":
		return `{"height": "5/8 in", "strip": "0.4 mm", "count": {"low": "7 fpi", "high": "11 fpi"}}`
	case "quotes":
		return `{"metal": "cs", "bought": "cut", "od": "25.4 mm", "wall": "2.11 mm", "up_to": "6.5 m", "quoted": "2.75 per m", "dated": "undated"}`
	case "edge":
		return `{"metal": "cs1010", "strip": "1.2 mm", "speed": "1.6 m/s"}`
	case "steps":
		return `{"name": "Step", "kind": "other_step", "used": true, "when": "after", "fin_types": [], "tube_families": [], "of_tubes": "any_tubes", "who": "crew_does", "time_tube": "1 min", "time_order": "10 min", "cost_tube": "0", "cost_order": "0", "lead_days": 0, "step_mark_up": "0 %"}`
	case "checks":
		return `{"looked_at": "count_short", "fin_types": [], "fins_out": "1"}`
	case "tubes_on_hand":
		return `{"metal": "cs", "od": "25.4 mm", "wall": "2.11 mm", "each_long": "6.4 m", "pieces": 12, "heat_number": "H1", "worth": "15 each"}`
	case "bought_in":
		return `{"finned_type": "extruded", "lead_od": {"low": "16 mm", "high": "32 mm"}, "per_metre": "30 per m", "days": 40, "dated": "undated"}`
	case "holidays":
		return `"2026-12-24"`
	case "tube_leads":
		return `{"metal": "cs", "bought": "cut", "lead_od": {"low": "16 mm", "high": "50.8 mm"}, "days": 28}`
	case "strip_leads":
		return `{"metal": "al1060", "form": "pancake", "days": 14}`
	case "fin_types":
		return `"footed"`
	case "tube_families":
		return `"carbon_steel"`
	case "securing":
		return `{"way": "band", "secure_time": "15 s"}`
	case "strip_demands":
		return `"soft"`
	case "breaks":
		return "100"
	case "tube_sizes":
		return `"25.4 mm"`
	case "stock":
		return `"6.5 m"`
	case "fin_metals":
		return `"al1060"`
	case "tube_metals":
		return `"cs"`
	}
	return ""
}

// More returns the capability with one more item in the list at path: a copy of
// its last one, to be changed, or a first one. Where that is a line's way of making, it
// is of a type that the line does not make yet, as is usual of it.
func (c Capability) More(path string) (Capability, []Fault) {
	steps := strings.Split(path, "/")
	item := blank(steps[len(steps)-1])
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
