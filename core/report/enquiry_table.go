package report

import (
	"math"
	"slices"
	"strconv"

	"finwright/core/csv"
	"finwright/core/enquiry"
	"finwright/core/message"
	"finwright/core/units"
)

// TableCell is a cell of a table for a spreadsheet: a number, or a text that no spreadsheet takes for a formula.
type TableCell struct {
	Text   string   `json:"text"`
	Number *float64 `json:"number,omitempty"`
}

// EnquiryTable is the items of an enquiry for a spreadsheet: the unit in the head of each column, the cells as numbers in it.
type EnquiryTable struct {
	Heads []string    `json:"heads"`
	Cells []TableCell `json:"cells"` // each once
	Rows  [][]int     `json:"rows"`  // of their places
}

// TableItem is an item as the page shows it, edited or not.
type TableItem struct {
	Mark        string   `json:"mark"`
	Verdict     string   `json:"verdict"`
	Price       *float64 `json:"price,omitempty"` // [money]
	Provisional bool     `json:"provisional,omitempty"`
	Breaks      string   `json:"breaks,omitempty"`
	Cells       []int    `json:"cells"` // their places
}

// EnquiryTable prints items, whose cells are of the columns named.
func (w Writer) EnquiryTable(columns []string, cells []EnquiryCell, items []TableItem) EnquiryTable {
	out := EnquiryTable{Cells: []TableCell{{}}, Rows: make([][]int, len(items))}
	out.Heads = append(out.Heads, w.Texts.Text("page.mark"), w.Texts.Text("page.enquiry_verdict"), w.Texts.Text("page.enquiry_price")+" ["+w.Currency+"]", w.Texts.Text("page.enquiry_provisional"))
	broken := slices.ContainsFunc(items, func(x TableItem) bool { return x.Breaks != "" })
	if broken {
		out.Heads = append(out.Heads, w.Texts.Text("page.enquiry_breaks"))
	}
	for _, name := range columns {
		head := w.say(message.New(enquiry.Label(name)))
		if kind, ok := enquiry.KindOf(name); ok && kind.Unit(w.System) != "" {
			head += " [" + kind.Unit(w.System) + "]"
		}
		out.Heads = append(out.Heads, head)
	}
	for i, head := range out.Heads {
		out.Heads[i] = csv.Harmless(head)
	}
	add := func(c TableCell) int {
		if c == (TableCell{}) {
			return 0
		}
		out.Cells = append(out.Cells, c)
		return len(out.Cells) - 1
	}
	said := make([]int, len(cells))
	for i, c := range cells {
		said[i] = add(w.tableCell(c))
	}
	provisional := add(TableCell{Text: w.Texts.Text("page.enquiry_provisional")})
	verdicts := map[string]int{}
	for i, x := range items {
		if _, ok := verdicts[x.Verdict]; !ok {
			verdicts[x.Verdict] = add(TableCell{Text: csv.Harmless(x.Verdict)})
		}
		row := []int{add(TableCell{Text: csv.Harmless(x.Mark)}), verdicts[x.Verdict], add(priceCell(x.Price)), 0}
		if x.Provisional && x.Price != nil {
			row[3] = provisional
		}
		if broken {
			row = append(row, add(TableCell{Text: csv.Harmless(x.Breaks)}))
		}
		for _, at := range x.Cells {
			row = append(row, said[at])
		}
		out.Rows[i] = row
	}
	return out
}

// priceCell is a price to the hundredth.
func priceCell(price *float64) TableCell {
	if price == nil {
		return TableCell{}
	}
	x := math.Round(*price*100) / 100
	return TableCell{Number: &x}
}

// tableCell is what an item says as a number in the unit of its column, or else in words.
func (w Writer) tableCell(c EnquiryCell) TableCell {
	if kind, ok := enquiry.KindOf(c.Field); ok && c.Text != "" {
		if p, err := units.Parse(kind, c.Text, w.System); err == nil {
			// Nine digits hold what is written, and nothing of what a conversion leaves.
			if x, err := strconv.ParseFloat(strconv.FormatFloat(units.In(kind, p.SI, w.System), 'g', 9, 64), 64); err == nil {
				return TableCell{Number: &x}
			}
		}
	}
	return TableCell{Text: csv.Harmless(c.Shown)}
}

// CSV is the table as a file that spreadsheets open.
func (t *EnquiryTable) CSV() string {
	rows := make([][]string, 0, len(t.Rows)+1)
	rows = append(rows, t.Heads)
	for _, row := range t.Rows {
		texts := make([]string, len(row))
		for i, at := range row {
			texts[i] = t.Cells[at].Text
			if n := t.Cells[at].Number; n != nil {
				texts[i] = strconv.FormatFloat(*n, 'f', -1, 64)
			}
		}
		rows = append(rows, texts)
	}
	return csv.Mark + csv.Write(rows...)
}
