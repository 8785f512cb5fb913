package bridge

import (
	"errors"
	"slices"
	"strconv"
	"sync/atomic"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/enquiry"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/units"
)

// enquiryArgs is a text as the customer sent it, and what was settled since it was read first.
type enquiryArgs struct {
	Text    string               `json:"text"`
	Units   units.System         `json:"units"`
	Columns []enquiry.HeadColumn `json:"columns,omitempty"` // of the table, as told
	Decided []enquiry.Decision   `json:"decided,omitempty"`
	Edits   []enquiry.Edit       `json:"edits,omitempty"`
}

// readEnquiry reads an enquiry. A text that is none is refused with its reason.
func readEnquiry(a enquiryArgs) (report.ShownEnquiry, error) {
	if a.Units != units.SI && a.Units != units.US {
		return report.ShownEnquiry{}, errors.New("bridge: no such units")
	}
	e, err := readOnce(a.Text, a.Columns)
	if refused := (*enquiry.Refusal)(nil); errors.As(err, &refused) {
		return report.ShownEnquiry{}, told{Message: message.New(refused.Key, "most", refused.Most)}
	}
	if err != nil {
		return report.ShownEnquiry{}, err
	}
	e.Decide(a.Decided)
	edits := a.Edits
	for i := range edits {
		edits[i].Text = texts().Numbers.Typed(edits[i].Text)
	}
	wrong := e.Enter(edits, a.Units)
	base := document.New()
	base.Units = a.Units
	return writerIn(a.Units).Enquiry(&e, wrong, base), nil
}

// readText is an enquiry as it was read, before anything of it was settled.
type readText struct {
	text    string
	columns []enquiry.HeadColumn
	enquiry enquiry.Enquiry
}

// readLast is what was read last: what is settled and typed comes with the same text again.
var readLast atomic.Pointer[readText]

// readOnce reads a text, unless it was the last to be read.
func readOnce(text string, columns []enquiry.HeadColumn) (enquiry.Enquiry, error) {
	if last := readLast.Load(); last != nil && last.text == text && slices.EqualFunc(last.columns, columns, sameHead) {
		return last.enquiry.Clone(), nil
	}
	readLast.Store(nil) // two would take twice the room
	e, err := enquiry.Text(text, columns, Done)
	if err == nil {
		readLast.Store(&readText{text, columns, e})
		e = e.Clone()
	}
	return e, err
}

// sameHead reports whether columns are taken for the same.
func sameHead(a, b enquiry.HeadColumn) bool {
	return a.Head == b.Head && a.Column == b.Column && a.Skipped == b.Skipped && a.Guessed == b.Guessed
}

// enquiryRowsArgs are some items' designs, as differences from one base.
type enquiryRowsArgs struct {
	Base    document.Document     `json:"base"`
	Entries []report.EnquiryEntry `json:"entries"` // of all designs, each once
	Designs []enquiryDesign       `json:"designs"`
	Day     string                `json:"day,omitempty"` // the page's: then the tallies tell what the items have in common
	Shop    string                `json:"shop,omitempty"`
}

// enquiryDesign is what a design says otherwise than the base.
type enquiryDesign struct {
	Entries []int            `json:"entries"` // by their places
	Units   *units.System    `json:"units,omitempty"`
	Spans   *[]document.Span `json:"spans,omitempty"`
}

// differences lays the designs out.
func (a *enquiryRowsArgs) differences() ([]document.Differences, error) {
	out := make([]document.Differences, len(a.Designs))
	for i, d := range a.Designs {
		out[i] = document.Differences{Units: d.Units, Spans: d.Spans, Fields: make(map[string]document.Entry, len(d.Entries))}
		for _, at := range d.Entries {
			if at < 0 || at >= len(a.Entries) {
				return nil, errors.New("bridge: no such entry")
			}
			e := &a.Entries[at]
			out[i].Fields[e.Field] = document.Entry{Text: e.Text, Origin: e.Origin}
		}
	}
	return out, nil
}

// enquiryRows is a row of each, and what it adds to the totals.
type enquiryRows struct {
	Rows     []report.ShownPriced `json:"rows"`
	Tallies  []design.Tally       `json:"tallies"`
	Currency string               `json:"currency"`
}

func rateEnquiry(a enquiryRowsArgs) (enquiryRows, error) {
	out := enquiryRows{Rows: make([]report.ShownPriced, len(a.Designs)), Tallies: make([]design.Tally, len(a.Designs))}
	c, err := openShop(a.Shop)
	if err != nil {
		return out, err
	}
	out.Currency = c.Currency
	if len(a.Designs) == 0 {
		return out, nil
	}
	designs, err := a.differences()
	if err == nil {
		err = document.CheckJob(jobWith(a.Base, designs, document.Head{}))
	}
	if err != nil {
		return out, err
	}
	w := writer(a.Base)
	w.Currency = c.Currency
	base := design.ReadBase(a.Base)
	today, grouped := shop.ParseDay(a.Day)
	for i, x := range designs {
		in, err := base.Read(x)
		if err == nil {
			in.MadeBy(&c)
			var row design.Row
			if row, out.Tallies[i], err = itemRow(in, x); err == nil {
				out.Rows[i] = w.Priced(row, &out.Tallies[i])
				out.Tallies[i].Refused = row.State == figure.No
				if grouped {
					out.Tallies[i].AddWork(in, today)
				}
				continue
			}
		}
		var wrong design.FieldErrors
		if !errors.As(err, &wrong) {
			return out, err
		}
		out.Rows[i], out.Tallies[i] = w.Unrated(wrong), design.Tally{Refused: true}
	}
	return out, nil
}

// itemRow judges and plans an item. Heat is looked at where the customer says something of it.
func itemRow(in field.Input, x document.Differences) (design.Row, design.Tally, error) {
	for id := range x.Fields {
		if f, ok := field.Find(id); ok && f.OfHeat() {
			return design.RowAndTally(in)
		}
	}
	row, tally := design.LineAndTally(in)
	return row, tally, nil
}

// opened are the shop and the designs, of which there is at least one.
func (a *enquiryRowsArgs) opened() (c shop.Capability, designs []document.Differences, err error) {
	if c, err = openShop(a.Shop); err != nil {
		return c, nil, err
	}
	if designs, err = a.differences(); err == nil {
		err = document.CheckJob(jobWith(a.Base, designs, document.Head{})) // which refuses none at all
	}
	return c, designs, err
}

// ratedFor reads an item's design and rates it, as the shop makes it.
func ratedFor(d document.Document, c *shop.Capability) (in field.Input, h design.Heat, err error) {
	if in, err = design.Read(d); err == nil {
		in.MadeBy(c)
		h, err = design.RateBriefly(&in)
	}
	return in, h, err
}

// enquiryBeside is what is said of one item when it is asked for.
type enquiryBeside struct {
	Said []string `json:"said"`
}

// besideItem says of the first of the designs what its row does not: breaks, and the nearest changes that would be good.
func besideItem(a enquiryRowsArgs) (enquiryBeside, error) {
	c, designs, err := a.opened()
	if err != nil {
		return enquiryBeside{}, err
	}
	d := a.Base.With(designs[0])
	w := writer(d)
	w.Currency = c.Currency
	in, h, err := ratedFor(d, &c)
	var wrong design.FieldErrors
	if errors.As(err, &wrong) {
		return enquiryBeside{[]string{w.Unrated(wrong).Refused}}, nil
	}
	if err != nil {
		return enquiryBeside{}, err
	}
	m := design.Make(in, h)
	m.TryChanges(d)
	return enquiryBeside{w.Beside(&m)}, nil
}

// enquiryBreaks is of each item what a tube costs in other quantities, empty where it has no price.
type enquiryBreaks struct {
	Breaks []string `json:"breaks"`
}

// breaksOfItems prices each of the designs in the quantities that the shop prices besides.
func breaksOfItems(a enquiryRowsArgs) (enquiryBreaks, error) {
	c, designs, err := a.opened()
	if err != nil {
		return enquiryBreaks{}, err
	}
	out := enquiryBreaks{make([]string, len(designs))}
	for i, x := range designs {
		d := a.Base.With(x)
		in, h, err := ratedFor(d, &c)
		var wrong design.FieldErrors
		switch {
		case errors.As(err, &wrong):
			continue
		case err != nil:
			return enquiryBreaks{}, err
		}
		w := writer(d)
		w.Currency = c.Currency
		m := design.InQuantities(&in, &h)
		out.Breaks[i] = w.Breaks(&m)
	}
	return out, nil
}

type enquiryTotalsArgs struct {
	Tallies     []design.Tally `json:"tallies"`
	Counts      []int          `json:"counts"`      // of each: items that are so
	Refused     int            `json:"refused"`     // items that are not made here
	Provisional int            `json:"provisional"` // items whose price rests on a reading that is not settled
	Units       units.System   `json:"units"`
	Shop        string         `json:"shop,omitempty"`
}

type enquiryTotals struct {
	Totals []report.ShownTotal `json:"totals"`
}

func sumEnquiry(a enquiryTotalsArgs) (enquiryTotals, error) {
	c, err := openShop(a.Shop)
	if err != nil {
		return enquiryTotals{}, err
	}
	var sum design.Sum
	if len(a.Counts) != len(a.Tallies) {
		return enquiryTotals{}, errors.New("bridge: a tally without its count")
	}
	for i, t := range a.Tallies {
		for range min(a.Counts[i], enquiry.MostRows) {
			sum.Add(t)
		}
	}
	for range min(a.Refused, enquiry.MostRows) {
		sum.Add(design.Tally{Refused: true})
	}
	w := writerIn(a.Units)
	w.Currency = c.Currency
	return enquiryTotals{w.Totals(&sum, a.Provisional)}, nil
}

// enquiryGroupArgs are the items to be made together, each by its place among the tallies, which tell what they have in common.
type enquiryGroupArgs struct {
	Tallies []design.Tally `json:"tallies"`
	Items   []int          `json:"items"` // -1: it is not made
	Marks   []string       `json:"marks"`
	Day     string         `json:"day"` // the page's
	Units   units.System   `json:"units"`
	Shop    string         `json:"shop,omitempty"`
}

// groupEnquiry says how items are made together.
func groupEnquiry(a enquiryGroupArgs) (report.ShownGroups, error) {
	c, err := openShop(a.Shop)
	if err != nil {
		return report.ShownGroups{}, err
	}
	today, ok := shop.ParseDay(a.Day)
	if !ok || len(a.Items) != len(a.Marks) || slices.ContainsFunc(a.Items, func(at int) bool { return at < -1 || at >= len(a.Tallies) }) {
		return report.ShownGroups{}, errors.New("bridge: items without day, name or tally")
	}
	list := make([]design.Tally, len(a.Items))
	for i, at := range a.Items {
		if at >= 0 {
			list[i] = a.Tallies[at]
		}
	}
	g := design.Group(list, &c, today)
	w := writerIn(a.Units)
	w.Currency = c.Currency
	return w.Groups(&g, a.Marks), nil
}

// enquiryJobArgs are all items' designs, and what the job is called.
type enquiryJobArgs struct {
	Base    document.Document      `json:"base"`
	Designs []document.Differences `json:"designs"`
	Head    document.Head          `json:"head"`
}

// jobOfEnquiry writes the items as a job, as a file would hold it.
func jobOfEnquiry(a enquiryJobArgs) (saved, error) {
	job := jobWith(a.Base, a.Designs, a.Head)
	if err := document.CheckJob(job); err != nil {
		return saved{}, err
	}
	text, err := document.SaveJob(job)
	return saved{string(text) + "\n"}, err
}

// jobWith is a job of designs, named by their places.
func jobWith(base document.Document, designs []document.Differences, head document.Head) document.Job {
	job := document.Job{Head: head, Base: base, Items: make([]document.Item, len(designs))}
	for i, x := range designs {
		job.Items[i] = document.Item{ID: strconv.Itoa(i + 1), Design: x}
	}
	return job
}

// enquiryTableArgs are items as the page shows them.
type enquiryTableArgs struct {
	Columns []string             `json:"columns"`
	Cells   []report.EnquiryCell `json:"cells"` // each once
	Items   []report.TableItem   `json:"items"`
	Units   units.System         `json:"units"`
	Shop    string               `json:"shop,omitempty"`
}

// tableOfEnquiry is the items as a table for a spreadsheet.
func tableOfEnquiry(a enquiryTableArgs) (report.EnquiryTable, error) {
	c, err := openShop(a.Shop)
	if err != nil {
		return report.EnquiryTable{}, err
	}
	for _, x := range a.Items {
		if len(x.Cells) != len(a.Columns) || slices.ContainsFunc(x.Cells, func(at int) bool { return at < 0 || at >= len(a.Cells) }) {
			return report.EnquiryTable{}, errors.New("bridge: a row without its cells")
		}
	}
	w := writerIn(a.Units)
	w.Currency = c.Currency
	return w.EnquiryTable(a.Columns, a.Cells, a.Items), nil
}

func csvOfEnquiry(a enquiryTableArgs) (saved, error) {
	t, err := tableOfEnquiry(a)
	return saved{t.CSV()}, err
}

// enquirySheetArgs are parts of a workbook, unpacked.
type enquirySheetArgs struct {
	Sheet  string `json:"sheet"`
	Texts  string `json:"texts"`
	Styles string `json:"styles"`
}

// enquirySheet is its sheet as text, and what a reader of it may not see.
type enquirySheet struct {
	Text  string   `json:"text"`
	Notes []string `json:"notes"`
}

func sheetOfEnquiry(a enquirySheetArgs) (enquirySheet, error) {
	s, err := enquiry.Workbook(a.Sheet, a.Texts, a.Styles)
	if refused := (*enquiry.Refusal)(nil); errors.As(err, &refused) {
		return enquirySheet{}, told{Message: message.New(refused.Key, "most", refused.Most)}
	}
	out := enquirySheet{s.Text, []string{}}
	for _, n := range []struct {
		key   string
		count int
	}{{"enquiry.hidden_rows", s.HiddenRows}, {"enquiry.hidden_columns", s.HiddenColumns}, {"enquiry.merged", s.Merged}, {"enquiry.formulas", s.Formulas}} {
		if n.count > 0 {
			out.Notes = append(out.Notes, texts().Render(message.New(n.key, "count", n.count), units.SI))
		}
	}
	return out, err
}
