package report

import (
	"slices"
	"strings"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/paper"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// offered is all that an offer tells of a design: texts that are finished, and of them only what a customer may read. What an offer
// is laid out of is this alone, so that it cannot tell more; whatever keeps back what is the house's stands in front of it.
type offered struct {
	letter   []string // what is offered in the place of what was asked for
	why      string   // there is no price
	line     string   // the tube
	prices   [][]string
	breaks   [][]string
	others   []alternative
	currency string
	sum      units.Money // of the order, where there is one
	budget   []string
	span     [2]string // of the order, of a budget
	spanned  [2]units.Money
	ready    string
	send     string // tubes that the customer sends
	duties   []paper.Pair
	does     []paper.Pair
	limits   []paper.Pair
	held     []paper.Pair // tolerances
	assumed  [][]string
	asks     []string
	cautions []string
}

// offer is a price with all that it hangs on: no cost, no mark-up, no hours, no supplier.
func (p *papering) offer() { p.layOffer(p.toOffer()) }

// toOffer gathers what may be told.
func (p *papering) toOffer() offered {
	m := p.Made
	o := offered{line: p.tubeLine(), currency: p.Currency, held: append(p.entries("position_tolerance"), p.found()...), limits: p.metal(), assumed: p.assumed(), cautions: p.cautionsTold()}
	o.duties, o.does = p.duties(), slices.Concat(p.figures("air_drop", "inside_loss", "tube_surface", "tube_weight"), p.method())
	switch {
	case p.refused() || p.Stale:
		o.why = p.t("paper.no_price")
	case m.Plan.Cost == nil:
		o.why = p.say(m.Why(making.TheCost))
	}
	if o.why == "" {
		o.price(p)
	}
	for _, v := range p.verdicts(m) {
		if v.Mark == p.Texts.Text("making.question") {
			o.asks = append(o.asks, v.Why)
		}
	}
	if k := m.Plan.Winding; k != nil && m.Order.FreeIssue {
		o.send = p.say(message.New("making.send."+string(m.Shop.Buying.Spoilt), "count", k.Made(), "quantity", k.Good, "first_off", k.FirstOff, "rejected", k.Rejected))
	}
	if p.answer("form") == "substitution" && p.Sides != nil {
		for _, c := range p.Sides(false).Columns {
			o.letter = append(o.letter, present(c.Instead)...)
		}
	}
	return o
}

// price is what a tube and the order come to, in this quantity and in others, or the span of a budget.
func (o *offered) price(p *papering) {
	m := p.Made
	o.sum = m.Plan.Cost.Price
	if p.answer("form") == "budget" {
		if low := p.value("budget_low"); low != "" {
			for i, id := range []string{"budget_low", "budget_high"} {
				f, _ := p.Result.Find(id)
				o.span[i], o.spanned[i] = p.Figure(f).Value, units.Money(f.SI)
			}
			o.budget = []string{p.say(message.New("paper.budget", "low", low, "high", p.value("budget_high"))), p.budget(m)}
			return
		}
	}
	o.others = p.othersPriced()
	money := func(id string) string {
		f, _ := p.Result.Find(id)
		return p.Figure(f).Value
	}
	o.prices = [][]string{{p.itemName(), o.line, p.entry0("quantity"), money("price_tube"), money("price")}}
	for _, b := range p.breaks(m).Rows {
		if !b.Ordered && b.Price != "" {
			o.breaks = append(o.breaks, []string{b.Tubes, b.PerTube, b.Price})
		}
	}
	if promise := p.released(); promise != nil {
		o.ready = p.say(message.New("paper.ready", "day", promise.Day.String(), "ordered", promise.Ordered.String()))
	}
}

// atHome are entries that stay in the house, and those that change no tube.
var atHome = []string{"margin", "line", "hold_space", "hold_air", "hold_process", "house_limit"}

// assumed lists the entries that are not the customer's, and whose they are.
func (p *papering) assumed() [][]string {
	var out [][]string
	for i := range field.Fields {
		f := &field.Fields[i]
		e := p.Document.Fields[f.ID]
		if e.Origin == document.Customer || e.Text == "" || slices.Contains(atHome, f.ID) {
			continue
		}
		if text := p.entry(f); text != "" {
			out = append(out, []string{p.Texts.Text(f.Label()), text, p.Texts.Text("origin." + string(e.Origin))})
		}
	}
	return out
}

// cautionsTold are what is remarked on the tube and its bank; of what the shop can do nothing is told.
func (p *papering) cautionsTold() []string {
	var out []string
	for _, n := range p.Result.Notices {
		if !strings.HasPrefix(n.Message.Key, "making.") && n.State.Graver(figure.Kept) {
			out = append(out, p.say(message.New("paper.remark", "mark", p.mark(n.State), "text", n.Message)))
		}
	}
	return out
}

// part is a part of a paper that is lines alone; none make none.
func (p *papering) part(id string, lines []string) {
	if len(lines) > 0 {
		p.Heading(p.t("paper.part." + id))
		p.Text(lines...)
	}
}

// inMoneyOf makes columns of money.
func (p *papering) inMoneyOf(currency string) func(key string) paper.Column {
	return func(key string) paper.Column {
		return paper.Column{Label: p.say(message.New("paper.in", "what", message.Key("paper.column."+key), "currency", currency)), Number: true}
	}
}

// layOffer lays it out.
func (p *papering) layOffer(o offered) {
	part := p.part
	if o.why != "" {
		p.Caution(o.why)
	}
	part("instead", o.letter)
	p.Pairs(p.answered("valid", "delivery_term", "payment", "promise_from")...)
	p.Heading(p.t("paper.part.price"))
	if o.prices == nil {
		p.Text(o.line)
	}
	in := p.inMoneyOf(o.currency)
	p.Table("", append(p.columns("item", "tube_line", "quantity:n"), in("each"), in("total")), o.prices)
	p.Table(p.t("paper.breaks"), append(p.columns("quantity:n"), in("each"), in("total")), o.breaks)
	p.offerOthers(o.others, in)
	p.Text(o.budget...)
	if o.prices != nil || o.budget != nil {
		p.Text(p.t("paper.total_holds"), p.t("paper.tax."+p.answer("taxes")))
	}
	if p.answer("standing") == paper.Provisional {
		p.Caution(p.t("paper.line.provisional"))
	}
	p.Text(o.ready)
	part("extras", p.lines("extras"))
	part("metal_basis", p.lines("metal_basis"))
	part("free_issue", present(o.send))
	p.Heading(p.t("paper.part.does"))
	p.Pairs(append(o.duties, o.does...)...)
	p.Text(p.t("paper.calculated"), p.t("paper.guarantee."+p.answer("guarantee")))
	if len(o.limits) > 0 {
		p.Heading(p.t("paper.part.limits"))
		p.Pairs(o.limits...)
	}
	p.Heading(p.t("paper.part.tolerances"))
	p.Pairs(append(o.held, p.answered("quantity_tolerance")...)...)
	part("deviations", p.lines("deviations"))
	part("open_questions", append(o.asks, p.lines("open_questions")...))
	part("cautions", o.cautions)
	part("not_included", append(p.lines("not_included"), p.t("paper.not_included_pressure")))
	p.Table(p.t("paper.part.assumptions"), p.columns("entry", "value", "whose"), o.assumed)
	part("terms", p.lines("terms"))
	p.Blanks(p.t("paper.blank.for_us"), p.t("paper.blank.day"))
}

// accepted says back what was ordered, and where that is otherwise than what was offered.
func (p *papering) accepted() {
	p.refusal()
	p.accept(p.columns("item", "tube_line", "quantity:n"), [][]string{{p.itemName(), p.tubeLine(), p.entry0("quantity")}})
}

// accept lays out what was ordered, a row an item, and all that is agreed of it.
func (p *papering) accept(columns []paper.Column, ordered [][]string) {
	p.Pairs(p.answered("order", "order_revision", "order_date", "offer", "drawing_revision", "delivery_term", "starts_when")...)
	p.Heading(p.t("paper.part.ordered"))
	p.Table("", columns, ordered)
	p.Heading(p.t("paper.part.differences"))
	var rows [][]string
	for _, line := range p.lines("differences") {
		row := make([]string, 5)
		for i, cell := range strings.SplitN(line, "|", 5) {
			row[i] = strings.TrimSpace(cell)
		}
		rows = append(rows, row)
	}
	if rows == nil {
		p.Text(p.t("paper.no_differences"))
	}
	p.Table("", p.columns("what", "old", "new", "effect_price", "effect_date"), rows)
	for _, id := range []string{"delivery", "hold_points", "documents", "address"} {
		if lines := p.lines(id); lines != nil {
			p.Heading(p.ask(id))
			p.Text(lines...)
		}
	}
	p.Pairs(p.answered("marking")...)
	if by := p.answer("object_by"); by != "" {
		p.Caution(p.say(message.New("paper.object_by", "day", by)))
	}
	p.Blanks(p.t("paper.blank.for_us"), p.t("paper.blank.for_customer"))
}

// inspection is what is held to what, by whom, and where that is written.
func (p *papering) inspection() {
	if why := p.unmakeable(); why != nil {
		p.Caution(why...)
		return
	}
	p.Pairs(slices.Concat(p.answered("order", "drawing_revision", "tube_standard"), p.entries("quantity"))...)
	p.Text(p.tubeLine())
	p.Heading(p.t("paper.part.plan"))
	var rows, results [][]string
	for _, c := range p.Made.Plan.Checks(p.Made.Shop) {
		kind := string(c.Check.Kind)
		rows = append(rows, []string{p.Texts.Text("check." + kind), p.say(c.Find), p.t("paper.from.order"), p.t("paper.by." + kind), p.t("paper.often.first"), p.t("paper.record.results"), "", "", ""})
		results = append(results, []string{p.Texts.Text("check." + kind), p.say(c.Find), "", "", "", "", ""})
	}
	for i := range p.Made.Plan.Steps {
		s := &p.Made.Plan.Steps[i]
		if !proves(s.Step.Kind) {
			continue
		}
		from := p.t("paper.from.shop")
		if s.Asked {
			from = p.t("paper.from.customer")
		}
		rows = append(rows, []string{s.Step.Name, p.t("paper.as_named"), from, p.Texts.Text("shop.choice." + string(s.Step.Who)), whole(s.Tubes), p.t("paper.record.certificate"), "", "", ""})
	}
	for _, id := range []string{"plain_end_a", "tube_length"} {
		if f := field.Must(id); f.Used(p.Document.Text) && id == "tube_length" {
			rows = append(rows, []string{p.Texts.Text(f.Label()), p.entry(f), p.t("paper.from.order"), p.t("paper.by.count_long"), p.t("paper.often.first"), p.t("paper.record.results"), "", "", ""})
			results = append(results, []string{p.Texts.Text(f.Label()), p.entry(f), "", "", "", "", ""})
		}
	}
	p.Table(p.t("paper.plan"), p.columns("check", "find", "source", "instrument", "sample", "record", "maker:o", "customer:o", "third:o"), rows)
	p.Text(p.t("paper.hold_words"), p.t("paper.reaction"))
	at := p.answer("test_pressure")
	if at == "" {
		at = p.t("paper.test_pressure_by_code")
	}
	p.Pairs(paper.Pair{Label: p.ask("test_pressure"), Value: at})
	for _, id := range []string{"hold_points", "documents"} {
		if lines := p.lines(id); lines != nil {
			p.Heading(p.ask(id))
			p.Text(lines...)
		}
	}
	p.Heading(p.t("paper.part.results"))
	p.Table(p.t("paper.results"), p.columns("check", "find", "tube_1:o", "tube_2:o", "tube_3:o", "tube_4:o", "tube_5:o"), results)
	p.Blanks(p.t("paper.blank.inspector"), p.t("paper.blank.customer_inspector"), p.t("paper.blank.day"))
}

// packing lists the crates, as they are weighed at the heavy side of the tubes' tolerances.
func (p *papering) packing() {
	if p.Made.Plan.Packing == nil {
		p.Caution(p.say(p.Made.Why(making.ThePacking)))
		return
	}
	p.refusal()
	p.Pairs(p.answered("order", "due", "marking", "tube_heats", "coil_numbers")...)
	p.Text(p.lines("address")...)
	p.Text(p.tubeLine())
	p.Table(p.t("paper.crates"), p.crateColumns(), p.crateRows(0))
	p.Text(p.t("paper.heavy_side"))
	p.Heading(p.t("paper.part.lifting"))
	p.Pairs(p.figures(lifted...)...)
	p.lifting(p.Made.Plan.Packing.Warnings)
}

// lifting says how crates are lifted, and leaves room for who does it.
func (p *papering) lifting(warnings []message.Message) {
	p.Text(p.t("paper.lifting"))
	for _, w := range warnings {
		p.Caution(p.say(w))
	}
	p.Blanks(p.t("paper.blank.packed"), p.t("paper.blank.weighed"), p.t("paper.blank.loaded"), p.t("paper.blank.day"))
}

// crateColumns are those of a list of crates.
func (p *papering) crateColumns() []paper.Column {
	columns := p.columns("crate", "tubes:n", "net:n", "gross:n", "inside", "heats:o")
	for _, i := range []int{2, 3} {
		columns[i].Label += ", " + units.Weight.Unit(p.System)
	}
	return columns
}

// crateRows are the crates of an order, numbered on from those before it.
func (p *papering) crateRows(before int) (rows [][]string) {
	m := p.Made
	k := m.Plan.Packing
	gross := func(tubes int) string {
		return p.number(units.Weight, float64(k.One)*float64(tubes)*(1+m.Shop.Crate.Tare))
	}
	net := func(tubes int) string { return p.number(units.Weight, float64(k.One)*float64(tubes)) }
	size := p.say(message.New("paper.crate_size", "length", message.Of(units.Distance, k.Length), "width", message.Of(units.Distance, m.Shop.Crate.Width), "height", message.Of(units.Distance, m.Shop.Crate.Height)))
	add := func(from, to, tubes int) {
		if to < from {
			return
		}
		name := whole(before + from)
		if to > from {
			name = p.say(message.New("paper.from_to", "from", before+from, "to", before+to))
		}
		rows = append(rows, []string{name, whole(tubes), net(tubes), gross(tubes), size, ""})
	}
	if k.Crates <= listed {
		for i := range k.Crates {
			tubes := k.PerCrate
			if i >= k.Fuller {
				tubes--
			}
			add(i+1, i+1, tubes)
		}
	} else {
		add(1, k.Fuller, k.PerCrate)
		add(k.Fuller+1, k.Crates, k.PerCrate-1)
	}
	return rows
}

// listed is how many crates are told one by one.
const listed = 60

// sides is the design beside others: what is held, what followed, what each does against the base.
func (p *papering) sides() {
	c := p.Sides(p.answer("money") == "money")
	p.Text(c.Held)
	if len(c.Columns) < 2 {
		p.Caution(p.t("paper.nothing_beside"))
	}
	columns := p.columns("entry")
	for _, one := range c.Columns {
		name := one.Name
		if one.Base {
			name = p.say(message.New("paper.base", "name", name))
		}
		columns = append(columns, paper.Column{Label: name})
	}
	cells := func(l ComparedLine) []string {
		row := []string{l.Label}
		if l.Unit != "" {
			row[0] += ", " + l.Unit
		}
		for _, cell := range l.Cells {
			text := cell.Value
			switch {
			case cell.Absent != "":
				text = cell.Absent
			case cell.Refused:
				text += " (" + p.mark(figure.No) + ")"
			}
			row = append(row, strings.Join(present(text, cell.Against), "  "))
		}
		return row
	}
	rows := func(list []ComparedLine) (out [][]string) {
		for _, l := range list {
			out = append(out, cells(l))
		}
		return out
	}
	p.Table(p.t("paper.differ"), columns, rows(c.Entries))
	p.Table(p.t("paper.figures"), columns, rows(c.Figures))
	said := [][]string{{p.t("paper.column.line")}, {p.t("paper.column.judged")}, {p.t("paper.column.followed")}, {p.t("paper.column.outside")}}
	for _, one := range c.Columns {
		said[0], said[1] = append(said[0], one.Line), append(said[1], strings.Join(present(one.Mark, one.Refused, one.Why), ": "))
		said[2], said[3] = append(said[2], strings.Join(one.Followed, " ")), append(said[3], one.Outside)
	}
	p.Table(p.t("paper.judged"), columns, said)
	for _, one := range c.Columns {
		p.Text(one.Said)
	}
	p.Text(p.t("paper.spread_note"))
}
