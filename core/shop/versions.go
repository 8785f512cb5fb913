package shop

import (
	"finwright/core/message"
	"finwright/core/units"
)

// lifts change the tree of a file from version i+1 to i+2. What they put there is what the version before took for granted:
// they know nothing of the values that ship today.
var lifts = []func(tree map[string]any){addBuying, toThird}

// lift brings the tree of a file to this version. It returns the earlier one that it was saved by, if it was; ok is false if it
// is of no version that there has been.
func lift(tree map[string]any) (from int, ok bool) {
	version, _ := tree["version"].(float64)
	from = int(version)
	if float64(from) != version || from < 1 || from > Version {
		return 0, false
	}
	if from == Version {
		return 0, true
	}
	for _, l := range lifts[from-1:] {
		l(tree)
	}
	tree["version"] = float64(Version)
	return from, true
}

// addBuying gives a file of version 1 the buying that it took for granted, so that its prices stay: tubes out of stock lengths
// without credit for what is left, the first coil of the line's list, strip that is left stored for another order, spoilt tubes of the customer's no matter of the
// shop's, nothing charged besides. What it called margin was on cost; one share of the price was fetched by all scrap.
func addBuying(tree map[string]any) {
	tree["buying"] = map[string]any{
		"tubes_bought": "stock", "length_tolerance": "0 mm", "length_extra": "0 %", "offcut_share": "0 %", "quotes": []any{}, "coil_used": "first", "strip_left": "again", "spoilt": "customer",
	}
	if crate, ok := tree["crate"].(map[string]any); ok {
		crate["cost_metre"] = "0 per m"
	}
	rates, ok := tree["rates"].(map[string]any)
	if !ok {
		return
	}
	rates["overhead"], rates["freight"], rates["least_charge"] = "0 %", "0 /kg", "0"
	rates["breaks"] = []any{1.0, 10.0, 50.0, 100.0, 500.0}
	if margin, ok := rates["margin"]; ok {
		rates["mark_up"] = margin
		delete(rates, "margin")
	}
	if share, ok := rates["scrap_share"]; ok {
		metals, _ := rates["fin_metals"].([]any)
		for _, m := range metals {
			if metal, ok := m.(map[string]any); ok {
				metal["scrap"] = share
			}
		}
		delete(rates, "scrap_share")
	}
}

// toThird gives a file of version 2 what version 3 adds.
func toThird(tree map[string]any) {
	addRoom(tree)
	addSteps(tree)
	addDays(tree)
	addRules(tree)
	tree["bought_in"] = []any{}
}

// addRoom gives a file of version 2 the rule of thumb by which it cut strip for feet, what it does not use of the other being
// engineering judgement; and a crate and truck of which nothing more is asked.
func addRoom(tree map[string]any) {
	tree["foot"] = map[string]any{"cut_by": "fewer_fins", "bend": "0.5", "knurl_reach": "0.25 mm", "lap": "0.5 mm"}
	if crate, ok := tree["crate"].(map[string]any); ok {
		crate["tackle"], crate["layer_load"] = "0 kg", "0 kg/m"
		crate["bed_length"], crate["bed_width"], crate["stack"] = "0 mm", "0 mm", 1.0
	}
}

// addSteps gives a file no work steps and no list of first-off checks.
func addSteps(tree map[string]any) {
	tree["steps"], tree["checks"] = []any{}, []any{}
}

// addDays gives a file no surcharge and no day to any price, no price of tools, no band to a budget, and a calendar of working days
// without any time in which things come, so that nothing is promised by it.
func addDays(tree map[string]any) {
	tree["calendar"] = map[string]any{
		"work_days": []any{"mon", "tue", "wed", "thu", "fri"}, "shifts_a_day": 1.0, "holidays": []any{}, "approval_days": 0.0, "queue_days": 0.0, "tube_leads": []any{}, "strip_leads": []any{},
	}
	undated := func(m map[string]any) { m["dated"] = Undated }
	each(tree, "lines", func(l map[string]any) {
		l["new_tools"] = map[string]any{"rolls_cost": "0", "rolls_days": 0.0, "size_cost": "0", "size_days": 0.0}
	})
	if buying, ok := tree["buying"].(map[string]any); ok {
		buying["price_days"], buying["tubes_on_hand"], buying["strip_on_hand"] = 0.0, []any{}, []any{}
		each(buying, "quotes", undated)
	}
	if rates, ok := tree["rates"].(map[string]any); ok {
		rates["budget_band"], rates["budget_days"] = "0 %", 0.0
		for _, list := range []string{"tube_metals", "fin_metals"} {
			each(rates, list, func(m map[string]any) {
				m["surcharge"] = "0 /kg"
				undated(m)
			})
		}
	}
}

// addRules gives a file the limits of the rules that version 3 adds, each off.
func addRules(tree map[string]any) {
	under(tree, "placing", func(placing map[string]any) { placing["rolled_end"], placing["supports_apart"] = "0 mm", "0 mm" })
	each(tree, "lines", func(line map[string]any) {
		line["groover"] = map[string]any{"lifts": true, "run_out": "0 mm"}
		line["straightness"] = map[string]any{"bow": "0 mm", "bow_over": "1 m"}
		line["od_out"], line["securing"] = "0 mm", []any{}
		each(line, "types", func(way map[string]any) {
			way["tube_hardest"], way["weld_outside"], way["weld_inside"], way["strip_burr"], way["strip_demands"] = "0 HV", "0 mm", "0 mm", "0 mm", []any{}
			under(way, "joints", func(joints map[string]any) { joints["joint_clear"] = "0 mm" })
		})
	})
}

// under calls f with the object that a key leads to, each with each object of the list that it leads to, if they are there.
func under(tree map[string]any, key string, f func(map[string]any)) {
	if inner, ok := tree[key].(map[string]any); ok {
		f(inner)
	}
}

func each(tree map[string]any, key string, f func(map[string]any)) {
	list, _ := tree[key].([]any)
	for _, item := range list {
		if inner, ok := item.(map[string]any); ok {
			f(inner)
		}
	}
}

// Lifted says what has another meaning than in the version that the file was saved by, for its owner to confirm; nil if nothing.
func (c *Capability) Lifted() []message.Message {
	var told []message.Message
	switch c.from {
	case 1:
		told = c.liftedBuying()
		fallthrough
	case 2:
		told = append(told, message.New("shop.lifted.foot"))
	}
	return told
}

func (c *Capability) liftedBuying() []message.Message {
	markUp := c.Rates.MarkUp
	return []message.Message{
		message.New("shop.lifted.tubes"),
		message.New("shop.lifted.mark_up", "mark_up", message.Of(units.Percent, markUp), "margin", message.Of(units.Percent, MarginOf(markUp))),
		message.New("shop.lifted.scrap"),
		message.New("shop.lifted.coil"),
		message.New("shop.lifted.strip"),
		message.New("shop.lifted.spoilt"),
	}
}

// MarginOf returns the share of the price that a mark-up on cost comes to [-].
//
//	m = x / (1 + x)
//
// Valid: x >= 0 [-].
// Source: definition.
func MarginOf(markUp float64) float64 { return markUp / (1 + markUp) }
