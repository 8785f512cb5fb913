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
		k.orderPrice(),
	}
}

// orderPrice is the price of the order, raised where a least one is charged.
func (k maker) orderPrice() figure.Figure {
	c := k.p.Cost
	total, markUp := money("K", c.Total), money("m_K", c.MarkUp)
	if c.Raised > 0 {
		return fig("price", units.Cost, float64(c.Price), figure.WholeOrder, "price_raised", total, markUp, money("P_min", k.Shop.Rates.Least))
	}
	return fig("price", units.Cost, float64(c.Price), figure.WholeOrder, "price", total, markUp)
}

func (k maker) cost() []figure.Figure {
	c := k.p.Cost
	var parts []figure.Figure
	for _, item := range c.Items {
		parts = append(parts, k.costOf(item))
	}
	total := money("K", c.Total)
	list := append(k.prices(),
		fig("cost_total", units.Cost, float64(c.Total), figure.WholeOrder, "cost_total", k.totalArgs()...),
		k.markUp(),
		fig("price_margin", units.Percent, c.Margin, figure.WholeOrder, "price_margin", money("P_o", c.Price), total))
	list = append(append(list, k.budget()...), parts...)
	list = append(list, k.fixed(),
		fig("cost_variable", units.Cost, float64(c.Variable), figure.PerTube, "cost_variable", total, money("K_x", c.Fixed), k.asked()))
	if c.BreakEven == 0 {
		return append(list, absent("break_even", units.Count, "", "making.never_even"))
	}
	return append(list, fig("break_even", units.Count, float64(c.BreakEven), "", "break_even", money("K_x", c.Fixed), money("P_t", c.PerTube), money("K_v", c.Variable)))
}

// fixed is what is the same for any quantity; of what is bought in nothing is set up.
func (k maker) fixed() figure.Figure {
	c := k.p.Cost
	if k.p.BoughtIn != nil {
		return fig("cost_fixed", units.Cost, float64(c.Fixed), figure.WholeOrder, "cost_fixed_bought", money("K_0", c.Once))
	}
	return fig("cost_fixed", units.Cost, float64(c.Fixed), figure.WholeOrder, "cost_fixed", money("K_u", k.amount("set_up")), money("K_0", c.Once), number("N_f", k.p.Winding.FirstOff),
		money("K", c.Total), k.made())
}

// budget is the price with the shop's band, for one who asks early: it is no offer.
func (k maker) budget() []figure.Figure {
	band := k.Shop.Rates.Band
	if band == 0 {
		return nil
	}
	order, by := money("P_o", k.p.Cost.Price), share("x_d", band)
	return []figure.Figure{
		fig("budget_low", units.Cost, float64(k.p.Cost.Price)*(1-band), figure.WholeOrder, "budget_low", order, by),
		fig("budget_high", units.Cost, float64(k.p.Cost.Price)*(1+band), figure.WholeOrder, "budget_high", order, by),
	}
}

// markUp is on the cost; what suppliers ask for steps has a mark-up of its own.
func (k maker) markUp() figure.Figure {
	c, total, usual := k.p.Cost, money("K", k.p.Cost.Total), share("x_m", k.Shop.Rates.MarkUp)
	if c.SubLet == 0 {
		return fig("cost_mark_up", units.Cost, float64(c.MarkUp), figure.WholeOrder, "cost_mark_up", total, usual)
	}
	return fig("cost_mark_up", units.Cost, float64(c.MarkUp), figure.WholeOrder, "cost_mark_up_sub", total, money("K_j", c.SubLet), usual, money("m_j", k.p.StepSums().MarkUp))
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
	"bought_in": "K_i", "tube": "K_t", "on_hand": "K_k", "offcut": "K_b", "spoilt": "K_q", "overhead": "K_o", "freight": "K_h", "strip": "K_s", "strip_on_hand": "K_l", "scrap": "K_w", "set_up": "K_u", "finning": "K_n", "preheat": "K_ph", "saw": "K_c", "surcharge": "K_f", "steps": "K_g", "sub_let": "K_j", "tooling": "K_d", "packing": "K_p",
}

// totalArgs gives every part that a total may have; what this one lacks is nought.
func (k maker) totalArgs() []figure.Arg {
	args := make([]figure.Arg, 0, len(costParts))
	for _, id := range costParts {
		args = append(args, money(costSymbol[id], k.amount(id)))
	}
	return args
}

// costParts lists the parts in the order of that formula.
var costParts = []string{"bought_in", "tube", "on_hand", "offcut", "spoilt", "strip", "strip_on_hand", "scrap", "surcharge", "set_up", "finning", "preheat", "saw", "steps", "sub_let", "tooling", "packing", "overhead", "freight"}

// costOf makes the figure of one part.
func (k maker) costOf(item making.CostItem) figure.Figure {
	formula, args := "cost_"+item.ID, []figure.Arg(nil)
	if item.ID == "tube" {
		formula, args = k.tubeCost()
	} else {
		args = k.costArgs(item.ID)
	}
	return fig("cost_"+item.ID, units.Cost, float64(item.Amount), figure.WholeOrder, formula, args...)
}

// tubeCost returns the formula of what the tubes cost and its numbers: by mass, by length or each.
func (k maker) tubeCost() (formula string, args []figure.Arg) {
	s := k.p.Supply
	at := arg(map[units.Kind]string{units.CostPerWeight: "p_t", units.CostPerRun: "p_l", units.CostEach: "p_e"}[s.Price.Per], s.Price.Per, s.Price.Price)
	bought := run("L_t", s.Bought())
	switch {
	case s.Price.Per == units.CostPerRun:
		return "cost_tube_run", []figure.Arg{bought, at}
	case s.Price.Per == units.CostEach:
		return "cost_tube_each", []figure.Arg{number("N_b", s.Tubes), at}
	}
	args = []figure.Arg{bought, arg("m_t", units.WeightPerMetre, float64(k.Order.Tube.TubeMass())), at}
	if s.Price.Extra == 0 {
		return "cost_tube", args
	}
	return "cost_tube_cut", append(args, share("x_l", s.Price.Extra))
}

// costArgs gives each other part of the cost the numbers that its formula names.
func (k maker) costArgs(id string) []figure.Arg {
	r, crew, o := &k.Shop.Rates, &k.Shop.Crew, k.p.Time
	hour := func(symbol string, x units.MoneyPerTime) figure.Arg {
		return arg(symbol, units.CostPerTime, float64(x))
	}
	rates := []figure.Arg{hour("r_l", r.Line), hour("r_p", r.Person), number("n_crew", crew.People), share("ε", crew.Efficiency)}
	alone := []figure.Arg{hour("r_p", r.Person), share("ε", crew.Efficiency)}
	switch id {
	case "offcut":
		s := k.p.Supply
		return []figure.Arg{share("x_b", k.Shop.Buying.Offcuts), money("K_t", s.Paid), run("O", s.Offcut), run("L_t", s.Bought())}
	case "spoilt":
		w := k.p.Winding
		spoilt := w.FirstOff + w.Rejected
		return []figure.Arg{number("N_f", w.FirstOff), number("N_j", w.Rejected), money("p_q", k.amount("spoilt")/units.Money(spoilt))}
	case "strip":
		return []figure.Arg{run("L_b", k.p.Ledger.Bought), run("L_r", k.p.Ledger.Remainder), k.slit(), k.thick(), k.density(), k.finPrice()}
	case "strip_on_hand":
		l, s := k.p.Ledger, &k.p.Winding.Strip
		length := l.Drawn - l.Returned
		return []figure.Arg{
			run("L_z", l.Drawn), run("L_y", l.Returned), k.slit(), k.thick(), k.density(), arg("p_a", units.CostPerWeight, float64(k.p.Winding.HandWorth(l))/float64(s.Mass(length))),
		}
	case "scrap":
		return []figure.Arg{run("S", k.p.Ledger.Scrap()), k.slit(), k.thick(), k.density(), k.finPrice(), share("x_w", k.fin().Scrap)}
	case "set_up":
		return append(rates, took("τ_u", o.OnLine.Of(making.SettingUp)), took("τ_c", o.OnLine.Of(making.Checking)))
	case "finning":
		return append(rates, took("τ_R", o.Productive()-o.OnLine.Of(making.SettingUp)-o.OnLine.Of(making.Checking)))
	case "preheat":
		return []figure.Arg{k.made(), money("p_ph", k.amount("preheat")/units.Money(k.p.Winding.Made()))}
	case "saw":
		return append(alone, took("τ_saw", o.Saw))
	case "on_hand":
		s := k.p.DrawnSums()
		return []figure.Arg{number("N_h", s.Tubes), money("p_u", s.Worth/units.Money(s.Tubes))}
	case "bought_in":
		return []figure.Arg{k.asked(), along("L", k.Order.Tube.Length), arg("p_i", units.CostPerRun, float64(k.p.BoughtIn.PerMetre))}
	case "surcharge":
		var bought units.Length
		var over units.MoneyPerMass
		if s := k.p.Supply; s != nil {
			bought, over = s.Bought(), s.Price.Surcharge
		}
		return []figure.Arg{
			run("L_t", bought), arg("m_t", units.WeightPerMetre, float64(k.Order.Tube.TubeMass())), arg("f_t", units.CostPerWeight, float64(over)),
			run("L_b", k.p.Ledger.Bought), run("L_r", k.p.Ledger.Remainder), k.slit(), k.thick(), k.density(), arg("f_s", units.CostPerWeight, float64(k.fin().Surcharge)),
		}
	case "tooling":
		return []figure.Arg{money("K_r", k.p.ToBuy.Rolls), money("K_e", k.p.ToBuy.Size)}
	case "steps":
		return append(alone, took("τ_g", o.Steps), money("K_m", k.p.StepSums().UsedUp))
	case "sub_let":
		s := k.p.StepSums()
		return []figure.Arg{k.made(), money("y_b", s.PriceBefore), k.asked(), money("y_a", s.PriceAfter), money("y_o", s.PriceOrder)}
	case "overhead":
		return append(alone, share("x_o", r.Overhead), money("K_u", k.amount("set_up")), money("K_n", k.amount("finning")), money("K_c", k.amount("saw")), took("τ_p", o.Pack), took("τ_g", o.Steps))
	case "freight":
		return []figure.Arg{arg("M_o", units.Weight, float64(k.p.Packing.Order)), arg("p_h", units.CostPerWeight, float64(r.Freight))}
	}
	c := &k.Shop.Crate
	return append(alone, took("τ_p", o.Pack), number("N_c", k.p.Packing.Crates), money("p_c", c.Cost), along("L_k", k.p.Packing.Length), arg("p_k", units.CostPerRun, float64(c.PerMetre)))
}

func (k maker) finPrice() figure.Arg {
	return arg("p_f", units.CostPerWeight, float64(k.fin().Price))
}

// fin is the price of the order's strip.
func (k maker) fin() shop.StripPrice {
	for _, p := range k.Shop.Rates.FinMetals {
		if p.Metal == k.Order.FinMetal.ID {
			return p
		}
	}
	return shop.StripPrice{}
}
