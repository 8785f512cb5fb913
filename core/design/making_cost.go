package design

import (
	"finwright/core/figure"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/units"
)

func money(symbol string, x units.Money) figure.Arg { return arg(symbol, units.Cost, float64(x)) }

// prices are what every section may tell of the cost.
func (k maker) prices() []figure.Figure {
	c := k.p.Cost
	return []figure.Figure{
		fig("price_tube", units.Cost, float64(c.PerTube), figure.PerTube, "price_tube", money("P_o", c.Price), k.asked()),
		fig("price_metre", units.CostPerRun, float64(c.PerMetre), figure.TubeMetre, "price_metre", money("P_t", c.PerTube), along("L", k.Order.Tube.Length)),
		fig("price", units.Cost, float64(c.Price), figure.WholeOrder, "price", money("K", c.Total), money("m_K", c.Margin)),
	}
}

func (k maker) cost() []figure.Figure {
	c := k.p.Cost
	var parts []figure.Figure
	for _, item := range c.Items {
		parts = append(parts, fig("cost_"+item.ID, units.Cost, float64(item.Amount), figure.WholeOrder, "cost_"+item.ID, k.costArgs(item.ID)...))
	}
	total := money("K", c.Total)
	list := append(k.prices(),
		fig("cost_total", units.Cost, float64(c.Total), figure.WholeOrder, "cost_total", k.totalArgs()...),
		fig("cost_margin", units.Cost, float64(c.Margin), figure.WholeOrder, "cost_margin", total, share("x_m", k.Shop.Rates.Margin)))
	list = append(list, parts...)
	list = append(list,
		fig("cost_fixed", units.Cost, float64(c.Fixed), figure.WholeOrder, "cost_fixed", money("K_u", k.amount("set_up")), number("N_f", k.p.Winding.FirstOff), total, k.made()),
		fig("cost_variable", units.Cost, float64(c.Variable), figure.PerTube, "cost_variable", total, money("K_x", c.Fixed), k.asked()))
	if c.BreakEven == 0 {
		return append(list, absent("break_even", units.Count, "", "making.never_even"))
	}
	return append(list, fig("break_even", units.Count, float64(c.BreakEven), "", "break_even", money("K_x", c.Fixed), money("P_t", c.PerTube), money("K_v", c.Variable)))
}

func (k maker) amount(id string) units.Money {
	for _, item := range k.p.Cost.Items {
		if item.ID == id {
			return item.Amount
		}
	}
	return 0
}

// costSymbol names each part of the cost in the formula of the total.
var costSymbol = map[string]string{
	"tube": "K_t", "strip": "K_s", "scrap": "K_w", "set_up": "K_u", "finning": "K_n", "saw": "K_c", "packing": "K_p",
}

func (k maker) totalArgs() []figure.Arg {
	var args []figure.Arg
	if k.Order.FreeIssue {
		args = append(args, money(costSymbol["tube"], 0))
	}
	for _, item := range k.p.Cost.Items {
		args = append(args, money(costSymbol[item.ID], item.Amount))
	}
	return args
}

// costArgs gives each part of the cost the numbers that its formula names.
func (k maker) costArgs(id string) []figure.Arg {
	r, crew, o := &k.Shop.Rates, &k.Shop.Crew, k.p.Time
	hour := func(symbol string, x units.MoneyPerTime) figure.Arg {
		return arg(symbol, units.CostPerTime, float64(x))
	}
	rates := []figure.Arg{hour("r_l", r.Line), hour("r_p", r.Person), number("n_crew", crew.People), share("ε", crew.Efficiency)}
	alone := []figure.Arg{hour("r_p", r.Person), share("ε", crew.Efficiency)}
	switch id {
	case "tube":
		return []figure.Arg{
			run("L_t", k.p.Sawing.Bought()), arg("m_t", units.WeightPerMetre, float64(k.Order.Tube.TubeMass())),
			arg("p_t", units.CostPerWeight, k.price(r.TubeMetals, k.Order.TubeMetal.ID)),
		}
	case "strip":
		return []figure.Arg{run("L_b", k.p.Ledger.Bought), run("L_r", k.p.Ledger.Remainder), k.slit(), k.thick(), k.density(), k.finPrice()}
	case "scrap":
		return []figure.Arg{run("S", k.p.Ledger.Scrap()), k.slit(), k.thick(), k.density(), k.finPrice(), share("x_w", r.ScrapShare)}
	case "set_up":
		return append(rates, took("τ_u", o.OnLine[making.SettingUp]), took("τ_c", o.OnLine[making.Checking]))
	case "finning":
		return append(rates, took("τ_R", o.Productive()-o.OnLine[making.SettingUp]-o.OnLine[making.Checking]))
	case "saw":
		return append(alone, took("τ_saw", o.Saw))
	}
	return append(alone, took("τ_p", o.Pack), number("N_c", k.p.Packing.Crates), money("p_c", k.Shop.Crate.Cost))
}

func (k maker) finPrice() figure.Arg {
	return arg("p_f", units.CostPerWeight, k.price(k.Shop.Rates.FinMetals, k.Order.FinMetal.ID))
}

func (k maker) price(list []shop.Price, metal string) float64 {
	for _, p := range list {
		if p.Metal == metal {
			return float64(p.Price)
		}
	}
	return 0
}
