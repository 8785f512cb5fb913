package report

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

var english = Writer{Texts: message.English(), System: units.SI}

func tableOf(t *testing.T, c shop.Capability, id string) ShopTable {
	t.Helper()
	tables := english.ShopTables(c).Tables
	i := slices.IndexFunc(tables, func(t ShopTable) bool { return t.ID == id })
	if i < 0 {
		t.Fatalf("no table %q", id)
	}
	return tables[i]
}

// Each value of a file stands in one cell, and each row and column has a name.
func TestTablesShowEveryValue(t *testing.T) {
	for _, c := range []shop.Capability{shop.House(), shop.Begin("Begun")} {
		seen := map[string]string{}
		for _, table := range english.ShopTables(c).Tables {
			if table.Label == "" || len(table.Columns) == 0 || len(table.Rows) == 0 {
				t.Errorf("%s: %q, %d columns, %d rows", table.ID, table.Label, len(table.Columns), len(table.Rows))
			}
			for _, column := range table.Columns {
				if len(column.Parts) == 0 || slices.Contains(column.Parts, "") || table.Across != (column.Record != nil) {
					t.Errorf("%s: column %+v", table.ID, column)
				}
			}
			for _, row := range table.Rows {
				if len(row.Parts) == 0 || slices.Contains(row.Parts, "") || len(row.Cells) != len(table.Columns) {
					t.Errorf("%s: row %+v", table.ID, row)
				}
				for _, cell := range row.Cells {
					if _, twice := seen[cell.Path]; cell.Path != "" && twice {
						t.Errorf("%s is shown twice", cell.Path)
					}
					seen[cell.Path] = cell.Text
				}
			}
		}
		leaves, _ := c.Contents()
		for _, l := range leaves {
			list, place, _ := cutLast(l.Path)
			text, shown := seen[l.Path]
			if !shown && isIndex(place) {
				if text, shown = seen[list+"/"+shop.Member+l.Text]; text == "true" {
					text = l.Text
				}
			}
			if !shown || text != l.Text {
				t.Errorf("%s is %q, shown as %q", l.Path, l.Text, text)
			}
		}
	}
}

func cutLast(path string) (before, last string, ok bool) {
	at := strings.LastIndex(path, "/")
	if at < 0 {
		return "", path, false
	}
	return path[:at], path[at+1:], true
}

// What is said of few things at length stands across, what of many in a row; names out of a list are ticked; lists of values stand side by
// side, with room behind the last.
func TestTablesAreLaidOutByWhatTheyHold(t *testing.T) {
	house := shop.House()
	lines := tableOf(t, house, "lines")
	if !lines.Across || len(lines.Columns) != len(house.Lines) || lines.Columns[1].Parts[0] != house.Lines[1].Name || *lines.Columns[1].Record != (ShopRecord{"lines", 1, false}) {
		t.Errorf("lines: %+v", lines.Columns)
	}
	types := tableOf(t, house, "lines/*/types")
	if !types.Across || types.Of == "" || !slices.Equal(types.Columns[0].Parts, []string{house.Lines[0].Name, "Footed (L)"}) {
		t.Errorf("types: %+v", types.Columns[0])
	}
	tools := tableOf(t, house, "lines/*/types/*/tools")
	if tools.Across || len(tools.Columns) != 4 || !slices.Equal(tools.Rows[0].Parts, []string{house.Lines[0].Name, "Footed (L)"}) {
		t.Errorf("tools: %+v", tools.Rows[0])
	}
	metals := tableOf(t, house, "lines/*/types/*/fin_metals")
	if first := metals.Rows[0]; len(metals.Columns) != len(types.Columns) || first.Cells[0].Path != "lines/0/types/0/fin_metals/=al1060" || first.Cells[0].Text != "true" || len(metals.Sorts[first.Cells[0].Sort].Choices) != 2 {
		t.Errorf("metals: %+v", first)
	}
	sizes := tableOf(t, house, "lines/*/tube_sizes")
	a, b := len(house.Lines[0].Sizes), len(house.Lines[1].Sizes)
	if len(sizes.Rows) != max(a, b)+1 || sizes.Rows[b].Cells[1] != (ShopCell{Path: "lines/1/tube_sizes/" + strconv.Itoa(b), Sort: sizes.Rows[0].Cells[1].Sort}) {
		t.Errorf("sizes: %+v", sizes.Rows)
	}
	if knurl := tableOf(t, house, "lines/*/types"); !slices.ContainsFunc(knurl.Rows, func(r ShopRow) bool {
		return r.Cells[0] == ShopCell{Path: "lines/0/types/0/knurl", Sort: r.Cells[2].Sort} && r.Cells[2].Text == "0.15 mm"
	}) {
		t.Error("a value that may be left out cannot be entered")
	}
	for _, id := range []string{"measured", "buying/quotes"} {
		table := tableOf(t, house, id)
		if r := table.Rows[0]; len(table.Rows) != 1 || !r.Record.New || r.Cells[0].Path != id+"/0/"+map[string]string{"measured": "type", "buying/quotes": "metal"}[id] {
			t.Errorf("%s: %+v", id, r)
		}
	}
	if r := lines.Rows[len(lines.Rows)-1]; !slices.Equal(r.Parts, []string{"Note"}) || !lines.Sorts[r.Cells[0].Sort].Long || r.Cells[0].Path != "lines/0/note" {
		t.Errorf("remarks of lines: %+v", r)
	}
	if steps := tableOf(t, house, "steps"); steps.Across || steps.Columns[len(steps.Columns)-1].Parts[0] != "Note" {
		t.Errorf("remarks of steps: %+v", steps.Columns)
	}
	order := []string{}
	for _, table := range english.ShopTables(house).Tables {
		order = append(order, table.ID)
	}
	if slices.Index(order, "cutting") > slices.Index(order, "cutting/stock") || slices.Index(order, "lines") > slices.Index(order, "lines/*/coils") {
		t.Errorf("parts stand before their subject: %v", order)
	}
}

// What is typed or pasted names choices in words, in any letters.
func TestEntriesInWords(t *testing.T) {
	got := english.ShopEntries(shop.House(), []shop.Entered{
		{Path: "lines/0/types/0/type", Text: " embedded (g) "},
		{Path: "buying/tubes_bought", Text: "In stock lengths"},
		{Path: "lines/0/types/0/oiler", Text: "No"},
		{Path: "lines/0/types/0/fin_metals/=al1060", Text: "yes"},
		{Path: "name", Text: "Yes"},
		{Path: "nothing", Text: "x"},
	})
	for i, want := range []string{"embedded", "stock", "false", "true", "Yes", "x"} {
		if got[i].Text != want {
			t.Errorf("%s: %q, want %q", got[i].Path, got[i].Text, want)
		}
	}
}

// What is tried of a number is a tenth of it to either side, or one of what is counted.
func TestTrials(t *testing.T) {
	for path, want := range map[string][2]string{"rates/line": {"58.5 /h", "71.5 /h"}, "crew/people": {"1", "3"}, "name": {}, "buying/offcut_share": {}, "cutting/stock/9": {}} {
		if less, more, ok := Trials(shop.House(), path); less != want[0] || more != want[1] || ok != (more != "") {
			t.Errorf("%s: %q and %q, %v", path, less, more, ok)
		}
	}
}
