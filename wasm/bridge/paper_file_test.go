package bridge

import (
	"encoding/json"
	"reflect"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/paper"
	"finwright/core/proof/tongue"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// keptAs is a paper as the page keeps it once it is issued.
func keptAs(d document.Document, kind paper.Kind, made papered, s *severalArgs) issuedPaper {
	return issuedPaper{
		Item: "1", Kind: kind, Name: made.Paper.Title + " · 17", Time: "2026-11-28T08:00:00.000Z", Mark: made.Mark, Program: "1", Paper: made.Paper, Document: d, Several: s,
		Answers: map[string]string{"number": "17"},
	}
}

// Every paper leaves as a file and comes back the same to the letter, drawings and figures among it, by the shipped shop and by one's own, and one of
// several items with its items. Other readers say where it belongs.
func TestIssuedPaperLeavesAndComesBack(t *testing.T) {
	own := changedShop(t, func(tree map[string]any) { tree["name"] = "Quillon Works" })
	check := func(name string, x issuedPaper) {
		var file paperSaved
		if e := ask(t, "paper_save", map[string]any{"issued": x, "day": "2026-11-28"}, &file); e != "" {
			t.Fatalf("%s: %s", name, e)
		}
		if !strings.HasSuffix(file.Name, "-17-2026-11-28.paper.json") {
			t.Errorf("%s is called %s", name, file.Name)
		}
		var back issuedPaper
		if e := ask(t, "paper_open", map[string]any{"text": file.Text}, &back); e != "" {
			t.Fatalf("%s: %s", name, e)
		}
		if !reflect.DeepEqual(back.Paper, x.Paper) || back.Mark != x.Mark || back.Name != x.Name || back.Document.Fingerprint() != x.Document.Fingerprint() {
			t.Errorf("%s comes back as another", name)
		}
		if (back.Several == nil) != (x.Several == nil) || x.Several != nil && len(back.Several.Items) != len(x.Several.Items) {
			t.Errorf("%s comes back of %+v", name, back.Several)
		}
		var again paperSaved
		if e := ask(t, "paper_save", map[string]any{"issued": back, "day": "2026-11-28"}, &again); e != "" || again.Text != file.Text {
			t.Errorf("%s is written otherwise: %s", name, e)
		}
		var opened any
		if e := ask(t, "open", map[string]any{"text": file.Text, "sheet": nil}, &opened); e != "This is an issued paper, not a design. Open it under Papers." {
			t.Errorf("%s opens as a design: %q", name, e)
		}
	}
	for _, one := range cases.List() {
		for _, kind := range paper.Kinds {
			d := one.Document()
			for _, shop := range []string{"", own} {
				made := paperOf(t, d, kind, map[string]any{"shop": shop})
				x := keptAs(d, kind, made, nil)
				x.Shop = shop
				check(string(kind)+" of "+one.ID, x)
			}
		}
	}
	list := jobItems(3)
	made, e := several(t, list, paper.Offer, nil, nil, nil)
	if e != "" {
		t.Fatal(e)
	}
	s := &severalArgs{Base: list[0]}
	for _, d := range list {
		s.Items = append(s.Items, paperItem{Design: d.From(list[0]), Answers: map[string]string{}})
	}
	check("an offer of several", keptAs(list[0], paper.Offer, made, s))
}

// A file whose design was changed is refused, kindly.
func TestAlteredPaperIsRefused(t *testing.T) {
	d := cases.First()
	x := keptAs(saying(d, "fin_pitch", "9 fpi"), paper.Offer, paperOf(t, d, paper.Offer, nil), nil)
	var file paperSaved
	if e := ask(t, "paper_save", map[string]any{"issued": x, "day": "2026-11-28"}, &file); e != "" {
		t.Fatal(e)
	}
	for text, begins := range map[string]string{
		file.Text: "This paper is not of what the file holds: its fingerprint is " + x.Mark,
		strings.Replace(file.Text, "· 17", "· 18", 1): "This paper was changed or damaged after it was issued",
		"{}": "This is no issued paper of this program.",
	} {
		if e := ask(t, "paper_open", map[string]any{"text": text}, &issuedPaper{}); !strings.HasPrefix(e, begins) {
			t.Errorf("%q, not %q", e, begins)
		}
	}
}

// A table leaves for a workbook with its numbers as numbers, in the unit of the head, as they are printed in any language; what a spreadsheet
// would compute stays text.
func TestPaperTableIsAWorkbook(t *testing.T) {
	sheet := func(table paper.Table, s units.System) map[string]any {
		p := paper.Paper{Kind: paper.Offer, Title: "Offer", Head: []paper.Pair{}, Blocks: []paper.Block{{Form: paper.Tabulated, Text: "Prices", Table: &table}}}
		args := map[string]any{"document": cases.First(), "kind": paper.Offer, "units": s, "answers": map[string]string{}, "day": "2026-11-28", "program": "1", "beside": []any{}, "names": []string{}, "table": 0, "format": "xlsx", "issued": p}
		var got map[string]any
		if e := ask(t, "paper_table", args, &got); e != "" {
			t.Fatal(e)
		}
		if got["name"] != "Offer-Prices-2026-11-28.xlsx" {
			t.Errorf("called %v", got["name"])
		}
		return got["sheet"].(map[string]any)
	}
	cells := func(sheet map[string]any) (out [][]any) {
		all := sheet["cells"].([]any)
		for _, row := range sheet["rows"].([]any) {
			var line []any
			for _, at := range row.([]any) {
				c := all[int(at.(float64))].(map[string]any)
				if n, ok := c["number"]; ok {
					line = append(line, n)
				} else {
					line = append(line, c["text"])
				}
			}
			out = append(out, line)
		}
		return out
	}
	table := paper.Table{
		Columns: []paper.Column{{Label: "=Item"}, {Label: "Total, EUR", Number: true}, {Label: "Length"}, {Label: "What"}, {Label: "Metal"}},
		Rows: [][]string{
			{"007", "12\u202f345.50", "5.600 m", "5 m", "95.0 °C"},
			{"=1+1", "", "12.5 m", "9 fpi", "-3.5 °C"},
			{"-A", "–", "", "=cmd()", "1\u202f115.0 °C"},
		},
	}
	got := sheet(table, units.SI)
	if heads := got["heads"]; !reflect.DeepEqual(heads, []any{"'=Item", "Total, EUR", "Length [m]", "What", "Metal [°C]"}) {
		t.Errorf("%q", heads)
	}
	want := [][]any{{"007", 12345.5, 5.6, "5 m", 95.0}, {"'=1+1", "", 12.5, "9 fpi", -3.5}, {"'-A", "–", "", "'=cmd()", 1115.0}}
	if rows := cells(got); !reflect.DeepEqual(rows, want) {
		t.Errorf("%v, not %v", rows, want)
	}

	speak(t, tongue.File())
	style := texts().Numbers
	other := paper.Table{Columns: []paper.Column{{Label: "x", Number: true}}, Rows: [][]string{{style.Write("12.5")}, {"12" + style.Group + style.Write("345.5")}}}
	if rows := cells(sheet(other, units.SI)); !reflect.DeepEqual(rows, [][]any{{12.5}, {12345.5}}) {
		t.Errorf("%v", rows)
	}
}

// Every table of every paper is a workbook with its texts or the numbers that they are.
func TestEveryTableIsAWorkbook(t *testing.T) {
	d := cases.First()
	numbers := 0
	for _, kind := range paper.Kinds {
		made := paperOf(t, d, kind, map[string]any{"beside": []any{other(d)}, "names": []string{""}})
		for i, b := range made.Paper.Tables() {
			args := map[string]any{"document": d, "kind": kind, "units": d.Units, "answers": map[string]string{}, "day": "2026-11-28", "program": "1", "beside": []any{}, "names": []string{}, "table": i, "format": "xlsx", "issued": made.Paper}
			var got tabled
			if e := ask(t, "paper_table", args, &got); e != "" {
				t.Fatal(e)
			}
			if len(got.Sheet.Rows) != len(b.Table.Rows) {
				t.Fatalf("%d rows of %d", len(got.Sheet.Rows), len(b.Table.Rows))
			}
			for r, row := range got.Sheet.Rows {
				for c, at := range row {
					text, cell := b.Table.Rows[r][c], got.Sheet.Cells[at]
					if cell.Number == nil && strings.TrimPrefix(cell.Text, "'") != strings.TrimPrefix(text, "'") {
						t.Errorf("%s is %q", text, cell.Text)
					}
					if cell.Number == nil {
						continue
					}
					numbers++
					plain, _ := json.Marshal(*cell.Number)
					digits := strings.NewReplacer("\u202f", "", "−", "-").Replace(text)
					if number, _, _ := strings.Cut(digits, " "); strings.TrimRight(strings.TrimRight(number, "0"), ".") != strings.TrimRight(strings.TrimRight(string(plain), "0"), ".") && number != string(plain) {
						t.Errorf("%s is %s", text, plain)
					}
				}
			}
		}
	}
	if numbers < 60 {
		t.Errorf("only %d numbers", numbers)
	}
}

// A fingerprint finds its design in earlier work of any kind, and says what differs; what cannot be read has none.
func TestPaperIsFoundInEarlierWork(t *testing.T) {
	list := jobItems(3)
	mark := paperOf(t, list[1], paper.Datasheet, nil).Mark
	all, _ := several(t, list, paper.Offer, nil, nil, nil)
	work := func(designs ...document.Document) string {
		text, err := document.Save(designs)
		if err != nil {
			t.Fatal(err)
		}
		return string(text)
	}
	older := work(list[1])
	for _, c := range []struct {
		text, work, program string
		at                  int
		said                string
	}{
		{mark, work(list...), "1", 1, "E-02: It is of this design, by the same shop’s file and program."},
		{mark, older, "2", 0, "E-02: It is of this design. Otherwise than then: program."},
		{mark, work(list[0], list[2]), "1", -1, ""},
		{all.Mark, work(list...), "1", -1, "It is of all items of this job together, by the same shop’s file and program."},
		{mark, "no file", "1", -1, ""},
		{"12", work(list...), "1", -1, ""},
	} {
		var got markedAt
		if e := ask(t, "paper_find_earlier", map[string]any{"text": c.text, "work": c.work, "program": c.program}, &got); e != "" || got.At != c.at || got.Said != c.said || got.Found != (c.said != "") {
			t.Errorf("%s%+v, not %d %q", e, got, c.at, c.said)
		}
	}
	var got markedAt
	if e := ask(t, "paper_find", map[string]any{"text": all.Mark, "designs": list, "program": "1"}, &got); e != "" || !got.Found || !strings.HasPrefix(got.Said, "It is of all items") {
		t.Errorf("%s%+v", e, got)
	}
}
