package report

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/paper"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// MostItems of a job are on one paper.
const MostItems = 200

// lined is an item of a paper of several: what may be told of it, and why its price does not count, if it does not.
type lined struct {
	offered
	name, quantity string
	why            string
	asksHeat       bool // its customer says something of the bank
	untold         bool // nothing of it holds: it is refused, or its figures are of other entries
	provisional    bool // it has a price, of which not all is settled
	tally          design.Tally
	papering       *papering
}

// ofSeveral makes a paper of several items: a line each, and what they have in common once.
func (p *papering) ofSeveral() {
	items := make([]lined, len(p.Items))
	p.unpriced = true
	for i, open := range p.Items {
		items[i] = p.line(open())
		if items[i].why == "" || items[i].provisional {
			p.unpriced = false
		}
	}
	switch p.Kind {
	case paper.Offer:
		p.offerSeveral(items)
	case paper.Accepted:
		columns, rows := p.orderedSeveral(items)
		p.accept(columns, rows)
	case paper.Packing:
		p.packSeveral(items)
	}
}

// line gathers what may be told of one item.
func (p *papering) line(w *Papers) lined {
	one := papering{w, paper.Paper{Kind: p.Kind}}
	out := lined{name: w.itemName(), papering: &one}
	if w.Result == nil {
		out.why = w.t("paper.line.unusable")
		out.untold, out.quantity = true, w.shownEntry(field.Must("quantity"), w.Document)
		return out
	}
	if p.Currency == "" {
		p.Currency = w.Currency
	}
	out.offered, out.quantity = one.toOffer(), one.entry0("quantity")
	out.asksHeat = w.In.Bank.DutyWanted != 0 || asksHeat(w.Document)
	out.untold = w.Stale || w.refused()
	switch {
	case w.Stale:
		out.why = w.t("paper.line.stale")
	case w.refused():
		out.why = w.say(message.New("paper.line.refused", "why", strings.Join(w.Refusals(w.Result), " ")))
	case w.Made.Plan.Cost == nil:
		out.why = w.say(message.New("paper.line.no_price", "why", out.offered.why))
	case w.answer("standing") == paper.Provisional:
		out.why, out.provisional = w.t("paper.line.provisional"), true
		if p.Kind == paper.Offer && out.prices != nil {
			out.why = w.say(message.New("paper.line.provisional_at", "each", out.prices[0][3], "total", out.prices[0][4], "currency", out.currency))
		}
	}
	if out.why == "" && p.Kind == paper.Offer {
		_, out.tally = design.LineAndTally(*w.In)
		out.tally.AddWork(*w.In, w.Made.Day)
	} else {
		out.tally.Refused = true
	}
	return out
}

// asksHeat reports whether the customer says something of the bank and its streams.
func asksHeat(d document.Document) bool {
	for i := range field.Fields {
		f := &field.Fields[i]
		if e := d.Fields[f.ID]; f.OfHeat() && e.Origin == document.Customer && e.Text != "" && f.Used(d.Text) {
			return true
		}
	}
	return false
}

// cents are an amount as it is printed, in hundredths: what is added up is what stands in the column.
func cents(m units.Money) int64 {
	printed, _ := strconv.ParseFloat(strconv.FormatFloat(float64(m), 'f', 2, 64), 64)
	return int64(math.Round(printed * 100))
}

// sumOf adds up the items that count, as they are printed.
func (p *papering) sumOf(items []lined, of func(*lined) units.Money) string {
	var all int64
	for i := range items {
		if items[i].why == "" {
			all += cents(of(&items[i]))
		}
	}
	return p.Texts.Numbers.Figure(units.Cost, float64(all)/100, p.System).Value
}

// offerSeveral is one offer with a line per item.
func (p *papering) offerSeveral(items []lined) {
	p.Pairs(p.answered("valid", "delivery_term", "payment", "promise_from")...)
	p.Heading(p.t("paper.part.price"))
	p.priceSeveral(items)
	p.Text(p.t("paper.total_holds"), p.t("paper.tax."+p.answer("taxes")), p.readyAll(items))
	p.part("extras", p.lines("extras"))
	p.part("metal_basis", p.lines("metal_basis"))
	p.part("free_issue", sent(items, p.named))
	p.doSeveral(items)
	p.heldSeveral(items)
	p.part("deviations", p.lines("deviations"))
	p.part("open_questions", append(p.sharedLines(items, func(x *lined) []string { return x.asks }), p.lines("open_questions")...))
	p.part("cautions", p.sharedLines(items, func(x *lined) []string { return x.cautions }))
	p.part("not_included", append(p.lines("not_included"), p.t("paper.not_included_pressure")))
	p.Table(p.t("paper.part.assumptions"), p.columns("entry", "value", "whose", "items"), p.shared(items, func(x *lined) [][]string {
		quantity := p.Texts.Text(field.Must("quantity").Label()) // stands on each line
		return slices.DeleteFunc(slices.Clone(x.assumed), func(row []string) bool { return row[0] == quantity })
	}))
	p.part("terms", p.lines("terms"))
	p.Blanks(p.t("paper.blank.for_us"), p.t("paper.blank.day"))
}

// priceSeveral is the lines with their prices, what others cost, and the sum of those that count.
func (p *papering) priceSeveral(items []lined) {
	in, budget := p.inMoneyOf(p.Currency), p.answer("form") == "budget"
	counted, remarked := 0, false
	for i := range items {
		if remarked = remarked || items[i].why != ""; items[i].why == "" {
			counted++
		}
	}
	columns := append(p.columns("item", "tube_line", "quantity:n"), in("each"), in("total"))
	if budget {
		columns = append(columns[:3], in("low"), in("high"))
	}
	if remarked {
		columns = append(columns, p.columns("remark")...)
	}
	var rows [][]string
	var others []alternative
	for i := range items {
		x := &items[i]
		row := []string{x.name, x.line, x.quantity, "", ""}
		if x.why == "" && budget {
			copy(row[3:], x.span[:])
		} else if x.why == "" {
			copy(row[3:], x.prices[0][3:])
			others = append(others, x.others...)
		}
		if remarked {
			row = append(row, x.why)
		}
		rows = append(rows, row)
	}
	said := message.New("paper.total", "count", counted)
	if counted < len(items) {
		said = message.New("paper.total_of", "count", counted, "all", len(items))
	}
	sum := make([]string, len(columns))
	sum[1] = p.say(said)
	switch {
	case budget:
		band := func(side int) func(*lined) units.Money { return func(x *lined) units.Money { return x.spanned[side] } }
		sum[3], sum[4] = p.sumOf(items, band(0)), p.sumOf(items, band(1))
	default:
		sum[4] = p.sumOf(items, func(x *lined) units.Money { return x.sum })
	}
	if counted == 0 {
		p.Table("", columns, rows)
		return
	}
	p.Summed("", columns, rows, sum)
	if budget {
		if first := slices.IndexFunc(items, func(x lined) bool { return len(x.budget) > 1 }); first >= 0 {
			p.Text(items[first].budget[1])
		}
	}
	if !budget {
		p.breaksSeveral(items)
	}
	p.offerOthers(others, in)
}

// breaksSeveral is the price of a tube in other quantities, a column a quantity.
func (p *papering) breaksSeveral(items []lined) {
	var quantities []int
	for i := range items {
		if items[i].why != "" {
			continue
		}
		for _, b := range items[i].papering.Made.Breaks {
			if !b.Ordered && b.Cost != nil && !slices.Contains(quantities, b.Quantity) {
				quantities = append(quantities, b.Quantity)
			}
		}
	}
	slices.Sort(quantities)
	columns := p.columns("item")
	for _, n := range quantities {
		columns = append(columns, paper.Column{Label: p.say(message.New("paper.at", "count", n)), Number: true})
	}
	var rows [][]string
	for i := range items {
		if items[i].why != "" || len(quantities) == 0 {
			continue
		}
		row := make([]string, len(columns))
		row[0] = items[i].name
		for _, b := range items[i].papering.Made.Breaks {
			if at := slices.Index(quantities, b.Quantity); at >= 0 && b.Cost != nil {
				row[at+1] = p.number(units.Cost, float64(b.Cost.PerTube))
			}
		}
		rows = append(rows, row)
	}
	p.Table(p.say(message.New("paper.breaks_each", "currency", p.Currency)), columns, rows)
}

// offerOthers is what else is offered, beside what was asked for.
func (p *papering) offerOthers(list []alternative, in func(string) paper.Column) {
	var rows [][]string
	for _, a := range list {
		rows = append(rows, []string{a.name, strings.Join(present(a.differs, a.why), ". "), a.quantity, a.each, a.total})
	}
	p.Table(p.t("paper.others"), append(p.columns("item", "differs_by", "quantity:n"), in("each"), in("total")), rows)
}

// readyAll is the day on which all that count are ready, made together on the shop's lines.
func (p *papering) readyAll(items []lined) string {
	tallies := make([]design.Tally, len(items))
	for i := range items {
		tallies[i] = items[i].tally
	}
	today, ok := shop.ParseDay(p.Day)
	if p.Shop == nil || !ok {
		return ""
	}
	g := design.Group(tallies, p.Shop, today)
	if g.Ready == 0 {
		return ""
	}
	return p.say(message.New("paper.ready_all", "count", g.Together, "day", g.Ready.String(), "ordered", today.String()))
}

// doSeveral is what the tubes do and the temperatures that they stand, of those items of which the customer says something of heat; what a tube weighs, of all.
func (p *papering) doSeveral(items []lined) {
	var columns []paper.Column
	at := map[string]int{}
	tell := func(x *lined) []paper.Pair {
		if x.asksHeat {
			return append(slices.Clone(x.duties), x.does...)
		}
		return slices.DeleteFunc(slices.Clone(x.does), func(a paper.Pair) bool { return a.Figure != "tube_weight" && a.Figure != "tube_surface" })
	}
	for i := range items {
		if items[i].untold {
			continue
		}
		for _, one := range tell(&items[i]) {
			if _, there := at[one.Label]; !there {
				at[one.Label] = len(columns)
				columns = append(columns, paper.Column{Label: one.Label})
			}
		}
	}
	heat := false
	rows := p.shared(items, func(x *lined) [][]string {
		heat = heat || x.asksHeat
		row := make([]string, len(columns))
		for _, one := range tell(x) {
			row[at[one.Label]] = one.Value
			if slices.ContainsFunc(x.duties, func(a paper.Pair) bool { return a.Label == one.Label }) && one.Note != "" {
				row[at[one.Label]] += " (" + one.Note + ")"
			}
		}
		return [][]string{row}
	})
	if rows == nil {
		return
	}
	p.Heading(p.t("paper.part.does"))
	p.Table("", append(columns, p.columns("items")...), rows)
	if !heat {
		return
	}
	p.Text(p.t("paper.calculated"), p.t("paper.guarantee."+p.answer("guarantee")))
	p.Table(p.t("paper.part.limits"), p.columns("case", "metal_at", "judged", "items"), p.shared(items, func(x *lined) (list [][]string) {
		for _, one := range x.limits {
			if x.asksHeat {
				list = append(list, []string{one.Label, one.Value, one.Note})
			}
		}
		return list
	}))
}

// heldSeveral is what the tubes are held to.
func (p *papering) heldSeveral(items []lined) {
	p.Heading(p.t("paper.part.tolerances"))
	p.Table("", p.columns("check", "find", "items"), p.shared(items, func(x *lined) (rows [][]string) {
		for _, one := range x.held {
			rows = append(rows, []string{one.Label, one.Value})
		}
		return rows
	}))
	p.Pairs(p.answered("quantity_tolerance")...)
}

// shared are rows of all items, each once, with the items that it is of.
func (p *papering) shared(items []lined, of func(*lined) [][]string) [][]string {
	var rows [][]string
	at, whose := map[string]int{}, [][]string{}
	usable := 0
	for i := range items {
		if items[i].untold {
			continue
		}
		usable++
		seen := map[string]bool{}
		for _, row := range of(&items[i]) {
			key := strings.Join(row, "\x00")
			k, there := at[key]
			if !there {
				k = len(rows)
				at[key], rows, whose = k, append(rows, row), append(whose, nil)
			}
			if !seen[key] {
				seen[key], whose[k] = true, append(whose[k], items[i].name)
			}
		}
	}
	for k := range rows {
		names := p.t("paper.all_items")
		if len(whose[k]) < usable {
			names = strings.Join(whose[k], ", ")
		}
		rows[k] = append(slices.Clone(rows[k]), names)
	}
	return rows
}

// sharedLines are lines of all items, each once, behind the items that it is of.
func (p *papering) sharedLines(items []lined, of func(*lined) []string) []string {
	var out []string
	for _, row := range p.shared(items, func(x *lined) (rows [][]string) {
		for _, text := range of(x) {
			rows = append(rows, []string{text})
		}
		return rows
	}) {
		out = append(out, p.named(row[1], row[0]))
	}
	return out
}

// named is a text of an item, or of some.
func (p *papering) named(item, text string) string {
	return p.say(message.New("paper.of_item", "item", item, "text", text))
}

// sent says of which items the customer sends tubes, and how many.
func sent(items []lined, named func(item, text string) string) []string {
	var out []string
	for i := range items {
		if x := &items[i]; x.send != "" && !x.untold {
			out = append(out, named(x.name, x.send))
		}
	}
	return out
}

// orderedSeveral is what was ordered, a line each.
func (p *papering) orderedSeveral(items []lined) (columns []paper.Column, rows [][]string) {
	columns = p.columns("item", "tube_line", "quantity:n", "remark")
	for i := range items {
		x := &items[i]
		rows = append(rows, []string{x.name, x.line, x.quantity, x.why})
	}
	if !slices.ContainsFunc(items, func(x lined) bool { return x.why != "" }) {
		columns = columns[:3]
		for i := range rows {
			rows[i] = rows[i][:3]
		}
	}
	return columns, rows
}

// packSeveral lists the crates of all items, numbered through.
func (p *papering) packSeveral(items []lined) {
	p.Pairs(p.answered("order", "due", "marking", "tube_heats", "coil_numbers")...)
	p.Text(p.lines("address")...)
	columns := append(p.columns("item"), p.crateColumns()...)
	var rows, lifts [][]string
	var warnings []message.Message
	crates := 0
	for i := range items {
		x := &items[i]
		q := x.papering
		if q.Result == nil || q.Made.Plan.Packing == nil || x.why != "" && x.why != q.t("paper.line.provisional") {
			why := x.why
			if why == "" {
				why = q.say(q.Made.Why(making.ThePacking))
			}
			p.Caution(p.named(x.name, why))
			continue
		}
		for _, row := range q.crateRows(crates) {
			rows = append(rows, append([]string{x.name}, row...))
		}
		k := q.Made.Plan.Packing
		crates += k.Crates
		warnings = append(warnings, k.Warnings...)
		lift := []string{x.name, x.line}
		for _, id := range liftedEach {
			lift = append(lift, q.value(id))
		}
		lifts = append(lifts, lift)
	}
	p.Table(p.t("paper.crates"), columns, rows)
	p.Text(p.t("paper.heavy_side"))
	p.Heading(p.t("paper.part.lifting"))
	heads := p.columns("item", "tube_line")
	for _, id := range liftedEach {
		heads = append(heads, paper.Column{Label: p.Texts.Text("figure." + id), Number: true})
	}
	p.Table("", heads, lifts)
	p.lifting(warnings)
}

// liftedEach are the figures by which the crates of an item are moved.
var liftedEach = []string{"crates", "crate_length", "crate_mass", "order_gross", "sling_from", "sling_to", "sling_leg"}
