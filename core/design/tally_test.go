package design

import (
	"testing"

	"finwright/core/document"
	"finwright/core/figure"
	"finwright/core/shop"
)

// A tally is what the row and the full plan say of the order, and a sum is theirs added up.
func TestTalliesAddUp(t *testing.T) {
	c := shop.House()
	var sum Sum
	var price, strip float64
	for _, text := range []string{"10", "40", "40"} {
		d := document.New()
		d.Fields["quantity"] = document.Entry{Text: text, Origin: document.Customer}
		if text == "10" {
			d.Fields["fin_pitch"] = document.Entry{Text: "11 fpi", Origin: document.Customer}
		}
		in, err := Read(d)
		if err != nil {
			t.Fatal(err)
		}
		in.MadeBy(&c)
		row, tally, err := RowAndTally(in)
		if err != nil {
			t.Fatal(err)
		}
		whole, err := RowOf(in)
		if err != nil || len(whole.Cells) != len(row.Cells) || whole.Cells[len(row.Cells)-1].SI != tally.Price {
			t.Errorf("the tally's price is %g", tally.Price)
		}
		if row.State != figure.Good && row.Why.Key == "" || whole.State == figure.No {
			t.Errorf("%s: %s %s", text, row.State, row.Why.Key)
		}
		price, strip = price+tally.Price, strip+tally.Strip.Length
		sum.Add(tally)
	}
	sum.Add(Tally{Refused: true, Price: 1e9})
	if sum.Tubes != 90 || sum.Orders != 4 || sum.Refused != 1 || len(sum.Strips) != 2 || sum.Price != price {
		t.Errorf("%+v", sum)
	}
	if got := sum.Strips[0].Length + sum.Strips[1].Length; got-strip > 1e-9*strip || strip-got > 1e-9*strip {
		t.Errorf("%g m of strip, want %g", got, strip)
	}
}

// Of an order that says nothing of heat the line alone judges: its plan and price are those of the whole row, and what the line refuses is refused.
func TestLineAloneJudgesAsTheRow(t *testing.T) {
	c := shop.House()
	refused := 0
	for _, entries := range []map[string]string{
		{},
		{"quantity": "450", "fin_pitch": "11 fpi", "tube_length": "7 m"},
		{"fin_type": "embedded", "tube_wall": "12 BWG"},
		{"fin_height": "60 mm"},
		{"tube_length": "24 m"},
		{"fin_type": "welded", "fin_metal": "al1060"},
	} {
		d := document.New()
		for id, text := range entries {
			d.Fields[id] = document.Entry{Text: text, Origin: document.Customer}
		}
		in, err := Read(d)
		if err != nil {
			t.Fatal(err)
		}
		in.MadeBy(&c)
		want, whole, err := RowAndTally(in)
		if err != nil {
			t.Fatal(err)
		}
		row, tally := LineAndTally(in)
		if want.Why.Key == "notice.order_differs" {
			want.State = figure.Good // by the base's bank, of which nothing was said
		}
		if row.State != want.State || row.Line != want.Line || tally.Price != whole.Price || tally.Hours != whole.Hours || tally.Tubes != whole.Tubes || tally.Unpriced != whole.Unpriced {
			t.Errorf("%v: %s %s %g, want %s %s %g", entries, row.State, row.Line, tally.Price, want.State, want.Line, whole.Price)
		}
		if row.State == figure.No {
			refused++
		}
	}
	if refused == 0 || refused == 6 {
		t.Errorf("%d of 6 are refused", refused)
	}
}
