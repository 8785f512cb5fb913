package bridge

import (
	"strconv"
	"strings"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/report"
)

const sheetOfTwo = "Item\tQty\tTube OD (mm)\tWall (mm)\tTube material\tLength overall (mm)\tFin type\tFin material\tFin height (mm)\tFPI\n" +
	"A\t40\t25.4\t2.11\tSA-179\t6000\tL\tAl\t15.8\t10\n" +
	"B\t60\t31.75\t2.77\tSA-179\t7000\tG\tAl\t15.8\t11\n"

// designOf is the design of an item, put together as the page does it.
func designOf(e *report.ShownEnquiry, i int) document.Differences {
	item := e.Items[i]
	out := document.Differences{Mark: &item.Mark, Fields: map[string]document.Entry{}}
	if item.Title != "" {
		out.Title = &item.Title
	}
	for _, at := range e.Designs[item.Design] {
		one := e.Entries[at]
		out.Fields[one.Field] = document.Entry{Text: one.Text, Origin: one.Origin}
	}
	return out
}

// rowsOf asks for rows of items, as the page does.
func rowsOf(e *report.ShownEnquiry, items ...int) enquiryRowsArgs {
	a := enquiryRowsArgs{Base: e.Base}
	for _, i := range items {
		var d enquiryDesign
		for _, at := range e.Designs[e.Items[i].Design] {
			d.Entries = append(d.Entries, len(a.Entries))
			a.Entries = append(a.Entries, e.Entries[at])
		}
		a.Designs = append(a.Designs, d)
	}
	return a
}

// The whole way: a text is read, its doubts are settled, its items rated, summed and made a job that opens.
func TestEnquiryGoesAllTheWay(t *testing.T) {
	var e report.ShownEnquiry
	if why := ask(t, "enquiry_read", enquiryArgs{Text: sheetOfTwo, Units: "si"}, &e); why != "" {
		t.Fatal(why)
	}
	if len(e.Items) != 2 || len(e.Columns) != 10 || e.Items[0].Open != 1 || len(e.Doubts) != 1 || e.Doubts[0].Kind != "basis" {
		t.Fatalf("%d items, %d columns, %v", len(e.Items), len(e.Columns), e.Doubts)
	}
	d := e.Doubts[0]
	decided := []map[string]any{{"items": d.Items, "field": d.Field, "kind": d.Kind, "second": true}}
	edits := []map[string]any{{"item": 1, "field": "quantity", "text": "80"}, {"item": 0, "field": "tube_od", "text": "wide"}}
	if why := ask(t, "enquiry_read", map[string]any{"text": sheetOfTwo, "units": "si", "decided": decided, "edits": edits}, &e); why != "" {
		t.Fatal(why)
	}
	if len(e.Doubts) != 0 || designOf(&e, 1).Fields["wall_basis"].Text != "minimum" || designOf(&e, 1).Fields["quantity"].Text != "80" {
		t.Errorf("%v %v", e.Doubts, designOf(&e, 1))
	}
	if at := e.Cells[e.Items[0].Cells[2]]; at.Field != "tube_od" || at.Shown != "wide" || at.Why == "" {
		t.Errorf("what cannot be used is shown as %v", at)
	}
	if why := ask(t, "enquiry_read", map[string]any{"text": sheetOfTwo, "units": "si"}, &e); why != "" {
		t.Fatal(why)
	}
	designs := []document.Differences{designOf(&e, 0), designOf(&e, 1)}
	var rated enquiryRows
	if why := ask(t, "enquiry_rows", rowsOf(&e, 0, 1), &rated); why != "" {
		t.Fatal(why)
	}
	var alone listed
	if why := ask(t, "rows", rowsArgs{Documents: []document.Document{e.Base.With(designs[0]), e.Base.With(designs[1])}}, &alone); why != "" {
		t.Fatal(why)
	}
	var price float64
	for i, row := range rated.Rows {
		cells := alone.Rows[i].Cells
		if last := cells[len(cells)-1]; row.Price != last.SI || row.Shown != last.Value+" "+last.Unit {
			t.Errorf("item %d is priced at %s, its design at %s", i, row.Shown, last.Value)
		}
		price += row.Price
	}
	var totals enquiryTotals
	if why := ask(t, "enquiry_totals", enquiryTotalsArgs{Tallies: rated.Tallies, Counts: []int{1, 1}, Provisional: 2, Units: "si"}, &totals); why != "" {
		t.Fatal(why)
	}
	told := map[string]report.ShownTotal{}
	for _, one := range totals.Totals {
		told[one.ID] = one
	}
	if told["tubes"].Value != "100" || !strings.Contains(told["price"].Note, "2 items rest") {
		t.Errorf("%v", totals)
	}
	var sum design.Sum
	for _, one := range rated.Tallies {
		sum.Add(one)
	}
	if diff := sum.Price - price; diff > 1e-6*price || -diff > 1e-6*price || price == 0 {
		t.Errorf("the price is %g, of the rows %g", sum.Price, price)
	}
	var beside enquiryBeside
	if why := ask(t, "enquiry_beside", rowsOf(&e, 0), &beside); why != "" || !strings.Contains(strings.Join(beside.Said, " "), "40, as ordered, at ") {
		t.Errorf("%s %q", why, beside.Said)
	}
	var breaks enquiryBreaks
	if why := ask(t, "enquiry_breaks", rowsOf(&e, 0, 1), &breaks); why != "" || len(breaks.Breaks) != 2 || !strings.Contains(beside.Said[0], breaks.Breaks[0]) || strings.Count(breaks.Breaks[1], " at ") < 2 {
		t.Errorf("%s %q, beside %q", why, breaks.Breaks, beside.Said)
	}
	asked := rowsOf(&e, 0, 1)
	asked.Day = "2026-11-27"
	if why := ask(t, "enquiry_rows", asked, &rated); why != "" {
		t.Fatal(why)
	}
	var groups report.ShownGroups
	if why := ask(t, "enquiry_group", enquiryGroupArgs{Tallies: rated.Tallies, Items: []int{0, 1, 0, -1}, Marks: []string{"A", "B", "C", "D"}, Day: "2026-11-27", Units: "si"}, &groups); why != "" {
		t.Fatal(why)
	}
	if len(groups.Batches) != 2 || !strings.Contains(groups.Batches[0].Items+groups.Batches[1].Items, "A, C") || groups.Adds[0] == "" || groups.Adds[3] != "" || !strings.Contains(strings.Join(groups.Said, " "), "3 items in 2 batches") {
		t.Errorf("%+v", groups)
	}
	var text saved
	if why := ask(t, "enquiry_job", map[string]any{"base": e.Base, "designs": designs, "head": document.Head{Reference: "4711"}}, &text); why != "" {
		t.Fatal(why)
	}
	var got answered
	if why := ask(t, "open", map[string]any{"text": text.Text, "sheet": area}, &got); why != "" {
		t.Fatal(why)
	}
	if len(got.Job.Items) != 2 || got.Job.Head.Reference != "4711" || got.Document.Mark != "A" || got.Document.Fields["tube_od"].Text != "25.4 mm" {
		t.Errorf("%v", got.Job.Head)
	}
}

func TestEnquiryIsRefusedInWords(t *testing.T) {
	var e report.ShownEnquiry
	if why := ask(t, "enquiry_read", enquiryArgs{Text: "PK\x03\x04\x00", Units: "si"}, &e); !strings.Contains(why, "no text") {
		t.Errorf("binary is refused with %q", why)
	}
}

// A table for a spreadsheet has numbers in the unit of their head, and no text in it is computed.
func TestEnquiryTableForSpreadsheets(t *testing.T) {
	price := 1234.5
	a := enquiryTableArgs{
		Columns: []string{"quantity", "tube_od", "fin_type", "tube_wall", "fin_height"},
		Cells: []report.EnquiryCell{
			{Field: "quantity", Text: "40", Shown: "40"},
			{Field: "tube_od", Text: "1 in", Shown: "1 in"},
			{Field: "fin_type", Text: "footed", Shown: "L-footed"},
			{Field: "tube_wall", Text: "14 BWG", Shown: "14 BWG"},
			{Field: "fin_height", Text: "=1+1", Shown: "=1+1"},
		},
		Items: []report.TableItem{{Mark: "=cmd()", Verdict: "good", Price: &price, Provisional: true, Cells: []int{0, 1, 2, 3, 4}}, {Mark: "-B", Verdict: "no", Cells: []int{0, 1, 2, 3, 4}}},
		Units: "si",
	}
	var got report.EnquiryTable
	if why := ask(t, "enquiry_table", a, &got); why != "" {
		t.Fatal(why)
	}
	if heads := strings.Join(got.Heads, "|"); heads != "Mark|Verdict|Price [EUR]|provisional|Quantity|Outside diameter [mm]|Fin type|Wall [mm]|Fin height [mm]" {
		t.Errorf("heads %s", heads)
	}
	var row []string
	for _, at := range got.Rows[0] {
		c := got.Cells[at]
		if c.Number != nil {
			c.Text = strconv.FormatFloat(*c.Number, 'g', -1, 64)
		}
		row = append(row, c.Text)
	}
	if cells := strings.Join(row, "|"); cells != "'=cmd()|good|1234.5|provisional|40|25.4|L-footed|2.1082|'=1+1" {
		t.Errorf("cells %s", cells)
	}
	var text saved
	if why := ask(t, "enquiry_csv", a, &text); why != "" {
		t.Fatal(why)
	}
	if lines := strings.Split(text.Text, "\r\n"); lines[1] != "'=cmd(),good,1234.5,provisional,40,25.4,L-footed,2.1082,'=1+1" || lines[2] != "'-B,no,,,40,25.4,L-footed,2.1082,'=1+1" {
		t.Errorf("%q", lines)
	}
	a.Items[0].Breaks = "=9 at 5.10 EUR"
	if why := ask(t, "enquiry_csv", a, &text); why != "" {
		t.Fatal(why)
	}
	if lines := strings.Split(text.Text, "\r\n"); !strings.Contains(lines[0], ",In other quantities,") || !strings.Contains(lines[1], ",provisional,'=9 at 5.10 EUR,40,") || !strings.HasPrefix(lines[2], "'-B,no,,,,40,") {
		t.Errorf("%q", lines)
	}
	a.Items[0].Cells[1] = 9
	if why := ask(t, "enquiry_table", a, &got); why == "" {
		t.Error("a cell that is not there is taken")
	}
}
