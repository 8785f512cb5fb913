package bridge

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/paper"
	"finwright/core/report"
)

// smallAnswer is the whole answer of the small search.
func smallAnswer(t *testing.T) foundPart {
	t.Helper()
	var started searchStarted
	var part foundPart
	if e := ask(t, "search_start", askedFor(nil), &started); e != "" {
		t.Fatal(e)
	}
	if e := ask(t, "search_chunk", askedFor(map[string]any{"hurdle": started.Hurdle, "from": 0, "to": 4 * 4 * 7}), &part); e != "" {
		t.Fatal(e)
	}
	return part
}

// Rows say by what each cell is ordered: what was tried by its place in what was entered, a measure as the numbers behind it, which the
// texts show rounded.
func TestSearchRowsSayTheirOrder(t *testing.T) {
	part := smallAnswer(t)
	var told report.SearchTold
	if e := ask(t, "search_told", askedFor(map[string]any{"part": part, "marks": []document.Document{}}), &told); e != "" {
		t.Fatal(e)
	}
	tried := []string{"8 fpi", "9 fpi", "10 fpi", "11 fpi"}
	best, front := 0, 0
	for i, row := range slices.Concat(told.Rows, told.Beyond) {
		if len(row.Orders) != len(row.Cells) || tried[row.Orders[0]] != row.Cells[0] {
			t.Fatalf("%+v", row)
		}
		if row.Front != strings.HasSuffix(row.Name, "◇") || i < len(told.Rows) != strings.HasPrefix(row.Name, strconv.Itoa(i+1)) {
			t.Errorf("row %d is called %q", i, row.Name)
		}
		if row.Front {
			front++
		}
		if i < len(told.Rows) {
			best++
		}
	}
	if best != len(part.Best) || front != len(part.Front) {
		t.Errorf("%d best and %d in front, not %d and %d", best, front, len(part.Best), len(part.Front))
	}
	for column, at := range map[int]int{3: 11, 4: 0} { // price and duty
		rows := slices.Clone(told.Rows)
		slices.SortStableFunc(rows, func(a, b report.SearchRow) int { return a.Orders[column] - b.Orders[column] })
		last := 0.0
		for _, row := range rows {
			i := slices.IndexFunc(part.Best, func(f foundDesign) bool { return f.Place == row.Place })
			if x := *part.Best[i].Values[at]; x < last {
				t.Errorf("column %d: %g after %g", column, x, last)
			} else {
				last = x
			}
		}
	}
}

// On paper a search says what was asked as it was asked, of all designs why they are not there, and lists the best as the page does.
func TestSearchOnPaper(t *testing.T) {
	part := smallAnswer(t)
	var told report.SearchTold
	var p paper.Paper
	if e := ask(t, "search_told", askedFor(map[string]any{"part": part, "marks": []document.Document{}}), &told); e != "" {
		t.Fatal(e)
	}
	if e := ask(t, "search_paper", askedFor(map[string]any{"part": part, "older": true}), &p); e != "" {
		t.Fatal(e)
	}
	pairs, left := map[string]string{}, 0
	var tables []*paper.Table
	pictures := 0
	for _, b := range p.Blocks {
		for _, one := range b.Pairs {
			pairs[one.Label] = one.Value
		}
		if b.Table != nil {
			tables = append(tables, b.Table)
		}
		if b.Form == paper.Picture {
			pictures++
		}
	}
	for label, want := range map[string]string{"Fin count": "8 fpi .. 11 fpi; 1 fpi", "Tubes per row": "20; 25; 30; 35", "Least: Duty": "900 kW", "Verdict of the line": "can be made", "Designs of the grid": "112"} {
		if pairs[label] != want {
			t.Errorf("%s: %q, not %q", label, pairs[label], want)
		}
	}
	if p.Status == "" || pictures != 1 || len(tables) != 2 {
		t.Fatalf("%q, %d pictures, %d tables", p.Status, pictures, len(tables))
	}
	for _, row := range tables[0].Rows {
		n, err := strconv.Atoi(row[1])
		if err != nil {
			t.Fatal(err)
		}
		left += n
	}
	if left+part.Passed != 112 {
		t.Errorf("%d left out and %d that hold", left, part.Passed)
	}
	for i, row := range tables[1].Rows {
		if want := append([]string{told.Rows[i].Name}, told.Rows[i].Cells...); !slices.Equal(row, want) {
			t.Errorf("%q, not %q", row, want)
		}
	}
	if n := len(tables[1].Rows); n != min(60, len(told.Rows)) {
		t.Errorf("%d are listed", n)
	}
}
