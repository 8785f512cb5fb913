package paper

import (
	"encoding/csv"
	"slices"
	"strings"
	"testing"
)

// A reader that is not ours finds in the file what stands in the table; what a spreadsheet would compute is told apart.
func TestTableIsReadByAnother(t *testing.T) {
	table := Table{
		Columns: []Column{{Label: "Name"}, {Label: "Value, mm", Number: true}},
		Rows:    [][]string{{"Fins, 10 to the inch", "25.4"}, {"said \"so\"", "-19.00"}, {"=1+1", "+5"}, {"@sum", "-a"}, {" loose ", "5/8 in"}, {"one\ntwo", "–"}, {"\u00a0=2", "1 234,5"}},
	}
	file := table.CSV()
	text, marked := strings.CutPrefix(file, "\ufeff")
	if !marked {
		t.Error("no mark by which letters are known")
	}
	rows, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	want := [][]string{{"Name", "Value, mm"}, table.Rows[0], table.Rows[1], {"'=1+1", "+5"}, {"'@sum", "'-a"}, table.Rows[4], table.Rows[5], {"'\u00a0=2", "1 234,5"}}
	if !slices.EqualFunc(rows, want, slices.Equal[[]string]) {
		t.Errorf("%q", rows)
	}
}

func TestMarkIsReadAsPrinted(t *testing.T) {
	m := MarkOf("1b26e9df5de5f00d", "ab", "engine 1")
	if m.Design != "e9df5de5f00d" || m.Shop != "000000ab" || len(m.Program) != 8 {
		t.Errorf("%+v", m)
	}
	for _, text := range []string{m.String(), strings.ToUpper(m.String()), " " + strings.ReplaceAll(m.String(), "-", " ") + "\n"} {
		if got, ok := ReadMark(text); !ok || got != m || got.Differs(m) != nil {
			t.Errorf("%q: %+v", text, got)
		}
	}
	for _, text := range []string{"", "12", m.String() + "-1", m.String()[1:]} {
		if _, ok := ReadMark(text); ok {
			t.Errorf("%q is read", text)
		}
	}
	other := MarkOf("0", "ab", "engine 2")
	if got := m.Differs(other); !slices.Equal(got, []string{ItsDesign, ItsProgram}) {
		t.Errorf("%q", got)
	}
}

// Each paper asks for what stands on all of them, and no question is asked twice.
func TestPapersAsk(t *testing.T) {
	for _, kind := range Kinds {
		var ids []string
		for _, q := range kind.Asks(false) {
			if slices.Contains(ids, q.ID) {
				t.Errorf("%s asks twice for %s", kind, q.ID)
			}
			ids = append(ids, q.ID)
		}
		for _, id := range []string{"number", "revision", "date", "customer", "reference", "item", "prepared", "checked", "approved", "status"} {
			if !slices.Contains(ids, id) {
				t.Errorf("%s does not ask for %s", kind, id)
			}
		}
	}
}

// A code holds what fits, in whole letters.
func TestCodeHoldsWhatFits(t *testing.T) {
	var p Paper
	p.Code(strings.Repeat("ø", 80))
	if got := p.Blocks[0].Text; got != strings.Repeat("ø", 50) {
		t.Errorf("%d bytes: %q", len(got), got)
	}
}
