package report

import (
	"slices"

	"finwright/core/design"
	"finwright/core/figure"
	"finwright/core/shop/making"
	"finwright/core/shop/verdict"
	"finwright/core/units"
)

// ShopEffect says what a change of a shop does to the order in hand: figures, a row each, by shop, a column each.
type ShopEffect struct {
	Columns []string        `json:"columns"`
	Rows    []ShopEffectRow `json:"rows"`
	Note    string          `json:"note"`
}

// ShopEffectRow is one figure by each shop.
type ShopEffectRow struct {
	Label string           `json:"label"`
	Unit  string           `json:"unit"`
	Cells []ShopEffectCell `json:"cells"`
}

// ShopEffectCell is a figure by one shop; State is that of a verdict, "none" of a figure.
type ShopEffectCell struct {
	Text  string       `json:"text"`
	State figure.State `json:"state"`
	Moved bool         `json:"moved"` // it is not what it is by the shop in use
}

// ShopMade is an order as one shop makes it.
type ShopMade struct {
	Column string // key of its name
	Made   design.Production
}

// ShopEffect compares an order by several shops, of which the one at inUse counts.
func (w Writer) ShopEffect(list []ShopMade, inUse int) ShopEffect {
	out := ShopEffect{Columns: []string{}, Rows: []ShopEffectRow{}}
	for _, m := range list {
		out.Columns = append(out.Columns, w.Texts.Text(m.Column))
	}
	row := func(label, unit string, cell func(*design.Production) (string, figure.State)) {
		r := ShopEffectRow{Label: w.Texts.Text(label), Unit: unit}
		for i := range list {
			text, state := cell(&list[i].Made)
			r.Cells = append(r.Cells, ShopEffectCell{Text: text, State: state})
		}
		for i := range r.Cells {
			r.Cells[i].Moved = r.Cells[i] != r.Cells[inUse]
		}
		out.Rows = append(out.Rows, r)
	}
	number := func(k units.Kind, part making.Part, of func(*design.Production) (si float64, ok bool)) func(*design.Production) (string, figure.State) {
		return func(m *design.Production) (string, figure.State) {
			if si, ok := of(m); ok {
				return w.Texts.Numbers.Figure(k, si, w.System).Value, figure.Plain
			}
			return w.say(m.Why(part)), figure.Plain
		}
	}
	row("figure.price_tube", w.Currency, number(units.Cost, making.TheCost, func(m *design.Production) (float64, bool) {
		if m.Plan.Cost == nil {
			return 0, false
		}
		return float64(m.Plan.Cost.PerTube), true
	}))
	row("figure.line_hours", units.Hours.Unit(w.System), number(units.Hours, making.TheStrip, func(m *design.Production) (float64, bool) {
		if m.Plan.Ledger == nil {
			return 0, false
		}
		return float64(m.Plan.Time.Clock), true
	}))
	ordered := list[inUse].Made.Order.Ordered != 0
	if ordered || list[inUse].Made.Day > 0 {
		label := "shop.effect.promise"
		if ordered {
			label = "shop.effect.promise_ordered"
		}
		row(label, "", func(m *design.Production) (string, figure.State) {
			p, why := m.Plan.Promise(m.Shop, m.Day)
			if !why.None() {
				return w.Texts.Text("shop.effect.no_day"), figure.Plain
			}
			return p.Day.String(), figure.Plain
		})
	}
	line := list[inUse].Made.Line.Name
	if slices.ContainsFunc(list, func(m ShopMade) bool { return m.Made.Line.Name != line }) {
		row("figure."+LineFigure, "", func(m *design.Production) (string, figure.State) { return m.Line.Name, figure.Plain })
		line = ""
	}
	label := "shop.effect.verdict"
	if line != "" {
		label = "shop.effect.verdict_by"
	}
	row(label, line, func(m *design.Production) (string, figure.State) {
		state := verdict.Worst(m.Verdicts)
		return w.mark(state), state
	})
	return out
}
