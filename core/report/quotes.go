package report

import (
	"strings"

	"finwright/core/enquiry"
	"finwright/core/message"
	"finwright/core/quotes"
	"finwright/core/units"
)

// ShownListed is a line of the list of enquiries.
type ShownListed struct {
	ID        string `json:"id"`
	Of        string `json:"of"`
	Name      string `json:"name"` // by which it is told from others
	Customer  string `json:"customer"`
	Reference string `json:"reference"`
	Revision  string `json:"revision"`
	Due       string `json:"due"`
	State     string `json:"state"`
	Items     string `json:"items"`
	Price     string `json:"price"`
	Day       string `json:"day"` // of the prices
}

// Listed prints enquiries of a list.
func (w Writer) Listed(list []quotes.Summary) []ShownListed {
	out := make([]ShownListed, len(list))
	for i := range list {
		l := &list[i]
		out[i] = ShownListed{
			ID: l.ID, Of: l.Of, Name: w.recordName(&l.Letterhead), Customer: l.Customer, Reference: l.Reference, Revision: l.Revision, Due: l.Due, State: w.state(l.State), Day: l.Day,
			Items: w.say(message.New("quoted.items", "count", l.Items)),
		}
		if strings.TrimSpace(l.Customer+l.Reference) == "" {
			out[i].Customer = w.Texts.Text("quoted.unnamed")
		}
		if l.Items > l.Unpriced && l.Day != "" {
			out[i].Price = w.sure(w.money(l.Price, l.Currency), l.Provisional > 0)
		}
	}
	return out
}

// recordName is what an enquiry is called in a line: by its customer, reference and revision, as far as they are told.
func (w Writer) recordName(h *quotes.Letterhead) string {
	var parts []string
	for _, text := range []string{h.Customer, h.Reference} {
		if text = strings.TrimSpace(text); text != "" {
			parts = append(parts, text)
		}
	}
	if len(parts) == 0 {
		parts = append(parts, w.Texts.Text("quoted.unnamed"))
	}
	if revision := strings.TrimSpace(h.Revision); revision != "" {
		parts = append(parts, w.say(message.New("quoted.revision", "revision", revision)))
	}
	return strings.Join(parts, ", ")
}

func (w Writer) state(s quotes.State) string { return w.Texts.Text("quoted.state." + string(s)) }

// money prints a price in its own currency, which need not be that of the shop in hand.
func (w Writer) money(x float64, currency string) string {
	return strings.TrimSpace(w.Texts.Numbers.Figure(units.Cost, x, w.System).Value + " " + currency)
}

// sure prints a price with what it rests on.
func (w Writer) sure(price string, provisional bool) string {
	if provisional {
		return price + " (" + w.Texts.Text("page.enquiry_provisional") + ")"
	}
	return price
}

// ShownChange is a line of what two revisions say otherwise: an item's first line says what it does to quantity and price.
type ShownChange struct {
	Kind     string `json:"kind"` // "changed", "added", "removed", "price" or "total"
	Item     string `json:"item"`
	What     string `json:"what"`
	Before   string `json:"before"`
	After    string `json:"after"`
	Quantity string `json:"quantity"`
	Price    string `json:"price"`
}

// ShownComparison is what two revisions say otherwise.
type ShownComparison struct {
	Said   string        `json:"said"`
	Before string        `json:"before"` // what each is called
	After  string        `json:"after"`
	Rows   []ShownChange `json:"rows"`
}

// Revisions prints what two revisions say otherwise, and what that does to quantity and price.
func (w Writer) Revisions(before, after *quotes.Record) ShownComparison {
	out := ShownComparison{Before: w.dated(before), After: w.dated(after), Rows: []ShownChange{}}
	changes := quotes.Compare(before, after)
	one := before.Currency == after.Currency || before.Day == "" || after.Day == ""
	count := map[string]int{}
	for i := range changes {
		c := &changes[i]
		row := ShownChange{Kind: "changed", Item: c.Mark, Quantity: w.moreTubes(c.Before, c.After)}
		if one {
			row.Price = w.moreMoney(c.Before, c.After, after.Currency)
		}
		switch {
		case c.Before == nil:
			row.Kind, row.After = "added", w.quote(after, c.After)
		case c.After == nil:
			row.Kind, row.Before = "removed", w.quote(before, c.Before)
		case c.Repriced():
			row.Kind, row.Before, row.After = "price", w.priceOf(before, c.Before), w.priceOf(after, c.After)
		}
		count[row.Kind]++
		if row.Kind != "changed" {
			row.What = w.Texts.Text("quoted.kind." + row.Kind)
			out.Rows = append(out.Rows, row)
			continue
		}
		for k, d := range c.Cells {
			if k > 0 {
				row = ShownChange{Kind: "changed"}
			}
			row.What, row.Before, row.After = w.what(d.Field), w.cellText(d.Field, d.Before, c.Before), w.cellText(d.Field, d.After, c.After)
			out.Rows = append(out.Rows, row)
		}
	}
	out.Said = w.say(message.New("quoted.compared", "changed", count["changed"], "added", count["added"], "removed", count["removed"], "price", count["price"]))
	out.Rows = append(out.Rows, w.totalChange(before, after, one))
	return out
}

// totalChange is what all items come to in two revisions.
func (w Writer) totalChange(before, after *quotes.Record, one bool) ShownChange {
	row := ShownChange{Kind: "total", Item: w.Texts.Text("quoted.total")}
	was, tubesWas, _ := before.Total()
	now, tubesNow, _ := after.Total()
	row.Before, row.After = w.total(before), w.total(after)
	row.Quantity = w.signed(units.Count, float64(tubesNow-tubesWas), "")
	switch {
	case !one:
		row.Price = w.Texts.Text("quoted.other_currency")
	case before.Day != "" && after.Day != "":
		row.Price = w.signed(units.Cost, now-was, after.Currency)
	}
	return row
}

// total is what the items of a revision come to.
func (w Writer) total(r *quotes.Record) string {
	price, tubes, unpriced := r.Total()
	if r.Day == "" || unpriced == len(r.Quotes) {
		return w.Texts.Text("quoted.no_prices")
	}
	out := w.say(message.New("quoted.tubes", "count", tubes)) + ", " + w.money(price, r.Currency)
	if unpriced > 0 {
		out += "; " + w.say(message.New("enquiry.total.unpriced", "count", unpriced))
	}
	return out
}

// dated is what a revision is called, with its state and the day of its prices.
func (w Writer) dated(r *quotes.Record) string {
	out := w.recordName(&r.Letterhead) + " (" + w.state(r.State)
	if r.Day != "" {
		out += ", " + r.Day
	}
	return out + ")"
}

// what names a cell.
func (w Writer) what(name string) string {
	if name == "" {
		return w.Texts.Text("page.bare_span")
	}
	return w.Texts.Text(enquiry.Label(name))
}

// cellText prints what a quote says of a field.
func (w Writer) cellText(name, text string, q *quotes.Quote) string {
	switch {
	case name == "" && len(q.Bare) == 0:
		return w.Texts.Text("enquiry.nothing")
	case name == "":
		var list []string
		for _, b := range q.Bare {
			list = append(list, w.say(message.New("quoted.bare", "centre", message.Typed(b.Centre), "width", message.Typed(b.Width))))
		}
		return strings.Join(list, ", ")
	case text == "":
		return w.Texts.Text("enquiry.nothing")
	}
	return w.reading(name, text)
}

// quote prints an item in a line: its tube by what its fields say, and its price.
func (w Writer) quote(r *quotes.Record, q *quotes.Quote) string {
	var list []string
	for _, name := range []string{"quantity", "tube_od", "tube_wall", "tube_length", "fin_type", "fin_height", "fin_pitch"} {
		if text := r.Quoted.Text(q, name); name != "quantity" {
			list = append(list, w.reading(name, text))
		} else {
			list = append(list, w.say(message.New("quoted.tubes", "count", q.Tubes)))
		}
	}
	return strings.Join(append(list, w.priceOf(r, q)), ", ")
}

func (w Writer) priceOf(r *quotes.Record, q *quotes.Quote) string {
	if q.Price == nil {
		return w.Texts.Text("quoted.no_price")
	}
	return w.sure(w.money(*q.Price, r.Currency), q.Provisional)
}

// moreTubes is what a change does to the quantity; nothing where it does nothing.
func (w Writer) moreTubes(before, after *quotes.Quote) string {
	n := 0
	if after != nil {
		n += after.Tubes
	}
	if before != nil {
		n -= before.Tubes
	}
	return w.signed(units.Count, float64(n), "")
}

// moreMoney is what a change does to the price, where both are known.
func (w Writer) moreMoney(before, after *quotes.Quote, currency string) string {
	x := 0.0
	for q, sign := range map[*quotes.Quote]float64{before: -1, after: 1} {
		switch {
		case q == nil:
		case q.Price == nil:
			return ""
		default:
			x += sign * *q.Price
		}
	}
	return w.signed(units.Cost, x, currency)
}

// signed prints a difference with its sign; nothing of none.
func (w Writer) signed(kind units.Kind, x float64, unit string) string {
	sign := "+"
	if x < 0 {
		sign, x = "−", -x
	}
	text := w.Texts.Numbers.Figure(kind, x, w.System).Value
	if text == w.Texts.Numbers.Figure(kind, 0, w.System).Value {
		return ""
	}
	return strings.TrimSpace(sign + text + " " + unit)
}

// ShownBefore is a quote beside others of its tube.
type ShownBefore struct {
	ID       string `json:"id"`   // of the enquiry; empty: the item in hand
	Kind     string `json:"kind"` // "now", "same" or "near"
	Enquiry  string `json:"enquiry"`
	Item     string `json:"item"`
	State    string `json:"state"`
	Day      string `json:"day"`
	Quantity string `json:"quantity"`
	Price    string `json:"price"`
	Each     string `json:"each"`
	Differs  string `json:"differs"` // in what it is another tube
}

// ShownQuotes is what was quoted before for a tube, the new price first.
type ShownQuotes struct {
	Said string        `json:"said"`
	Rows []ShownBefore `json:"rows"`
}

// Before prints what was quoted before for the first item of a record.
func (w Writer) Before(records []*quotes.Record, now *quotes.Record) ShownQuotes {
	same, near := quotes.Before(records, now)
	out := ShownQuotes{Rows: []ShownBefore{}, Said: w.say(message.New("quoted.found", "same", len(same), "near", len(near)))}
	if len(same)+len(near) == 0 {
		return out
	}
	row := w.before(now, &now.Quotes[0], "now")
	row.ID, row.Enquiry, row.State = "", w.Texts.Text("quoted.now"), ""
	out.Rows = append(out.Rows, row)
	for kind, list := range [][]quotes.Found{same, near} {
		for _, f := range list[:min(len(list), quotes.MostFound)] {
			row := w.before(f.Record, f.Quote, []string{"same", "near"}[kind])
			var differs []string
			for _, d := range f.Differs {
				differs = append(differs, w.say(message.New("quoted.differs", "what", w.what(d.Field), "there", w.cellText(d.Field, d.Before, f.Quote), "here", w.cellText(d.Field, d.After, &now.Quotes[0]))))
			}
			if row.Differs = strings.Join(differs, "; "); kind == 0 {
				row.Differs = w.Texts.Text("quoted.same")
			}
			out.Rows = append(out.Rows, row)
		}
	}
	return out
}

func (w Writer) before(r *quotes.Record, q *quotes.Quote, kind string) ShownBefore {
	out := ShownBefore{
		ID: r.ID, Kind: kind, Enquiry: w.recordName(&r.Letterhead), Item: q.Mark, State: w.state(r.State), Day: r.Day,
		Quantity: w.Texts.Numbers.Figure(units.Count, float64(q.Tubes), w.System).Value, Price: w.priceOf(r, q),
	}
	if q.Price != nil && q.Tubes > 0 {
		out.Each = w.money(*q.Price/float64(q.Tubes), r.Currency)
	}
	return out
}

// Came says what came of a file of enquiries.
func (w Writer) Came(m *quotes.Merged) string {
	return w.say(message.New("quoted.came", "added", len(m.Added)-m.Both, "equal", m.Equal, "both", m.Both))
}
