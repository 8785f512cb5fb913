package bridge

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/paper"
	"finwright/core/proof/tongue"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// paperOf asks for a paper of a design.
func paperOf(t *testing.T, d document.Document, kind paper.Kind, more map[string]any) papered {
	t.Helper()
	args := map[string]any{"document": d, "kind": kind, "units": d.Units, "answers": map[string]string{}, "day": "2026-11-28", "program": "1", "beside": []any{}, "names": []string{}}
	for key, value := range more {
		args[key] = value
	}
	var got papered
	if e := ask(t, "paper", args, &got); e != "" {
		t.Fatalf("%s: %s", kind, e)
	}
	return got
}

// texts of a paper, in its order.
func wordsOf(p paper.Paper) []string {
	out := []string{p.Title, p.Status, p.Across, p.Foot}
	pairs := func(list []paper.Pair) {
		for _, one := range list {
			out = append(out, one.Label, one.Value, one.Note)
		}
	}
	pairs(p.Head)
	for _, b := range p.Blocks {
		out = append(append(out, b.Text), b.Lines...)
		pairs(b.Pairs)
		if b.Table != nil {
			for _, c := range b.Table.Columns {
				out = append(out, c.Label)
			}
			for _, row := range b.Table.Rows {
				out = append(out, row...)
			}
		}
		if b.Drawing != nil {
			out = append(out, b.Drawing.Text)
		}
	}
	return slices.DeleteFunc(out, func(s string) bool { return s == "" })
}

// Every paper of every example has its texts in both systems of units, its rows are as long as its heads, and no list is null.
func TestEveryPaperIsWhole(t *testing.T) {
	other := other(cases.First())
	for _, c := range cases.List() {
		for _, s := range []units.System{units.SI, units.US} {
			for _, kind := range paper.Kinds {
				got := paperOf(t, c.Document(), kind, map[string]any{"units": s, "beside": []any{other}, "names": []string{"other"}})
				wholeLists(t, string(kind), reflect.ValueOf(got))
				if len(got.Paper.Blocks) < 3 || got.Paper.Title == "" || got.Paper.Foot == "" || len(got.Asks) < 10 {
					t.Errorf("%s of %s: %d blocks, %d questions", kind, c.ID, len(got.Paper.Blocks), len(got.Asks))
				}
				for _, b := range got.Paper.Tables() {
					for _, row := range b.Table.Rows {
						if len(row) != len(b.Table.Columns) {
							t.Errorf("%s of %s: %q has %d cells of %d", kind, c.ID, b.Text, len(row), len(b.Table.Columns))
						}
					}
				}
			}
		}
	}
}

// What a paper says is what the page shows, to the digit, in either system: whatever figure of the page a datasheet names, it says so.
func TestPaperSaysWhatThePageShows(t *testing.T) {
	for _, c := range cases.List() {
		for _, s := range []units.System{units.SI, units.US} {
			d, err := document.Edit(c.Document(), document.Command{Op: "units", System: s})
			if err != nil {
				t.Fatal(err)
			}
			shown := map[string]string{} // by the figure
			for _, section := range []string{"surface", "heat", "making"} {
				var got reply
				if e := ask(t, "edit", map[string]any{"document": d, "commands": nil, "section": section, "sheet": nil}, &got); e != "" {
					t.Fatal(e)
				}
				for _, g := range got.View.Groups {
					for _, f := range g.Figures {
						shown[f.ID] = units.Text{Value: f.Value + f.Absent, Unit: f.Unit}.String()
					}
				}
			}
			for kind, least := range map[paper.Kind]int{paper.Datasheet: 25, paper.Traveller: 30, paper.Packing: 12} {
				same := 0
				for _, b := range paperOf(t, c.Document(), kind, map[string]any{"units": s}).Paper.Blocks {
					for _, one := range b.Pairs {
						if one.Figure == "" {
							continue
						}
						if want := shown[one.Figure]; one.Value == want {
							same++
						} else {
							t.Errorf("%s of %s in %s: %s is %q, on the page %q", kind, c.ID, s, one.Figure, one.Value, want)
						}
					}
				}
				if same < least {
					t.Errorf("%s of %s in %s: only %d figures of the page", kind, c.ID, s, same)
				}
			}
		}
	}
}

// An offer tells the price, and neither what it comes of nor who sells what it is made of; no traveller tells money.
func TestOfferTellsNoCost(t *testing.T) {
	d := cases.First()
	text := func(kind paper.Kind, answers map[string]string) string {
		return strings.Join(wordsOf(paperOf(t, d, kind, map[string]any{"answers": answers}).Paper), "\n")
	}
	var got reply
	if e := ask(t, "edit", map[string]any{"document": d, "commands": nil, "section": "making", "sheet": nil}, &got); e != "" {
		t.Fatal(e)
	}
	figures := map[string]string{}
	for _, g := range got.View.Groups {
		for _, f := range g.Figures {
			figures[f.ID] = f.Value
		}
	}
	offer := text(paper.Offer, nil)
	for _, id := range []string{"price", "price_tube"} {
		if !strings.Contains(offer, figures[id]) {
			t.Errorf("the offer does not tell %s, %s", id, figures[id])
		}
	}
	house := house()
	for _, kind := range []paper.Kind{paper.Offer, paper.Accepted, paper.Packing, paper.Datasheet, paper.Note, paper.Inspection, paper.Traveller} {
		words := text(kind, nil)
		for id, value := range figures {
			secret := strings.HasPrefix(id, "cost_") || id == "price_margin" || strings.HasSuffix(id, "_hours") && kind != paper.Traveller || kind != paper.Offer && strings.HasPrefix(id, "price")
			if secret && len(value) > 4 && strings.Contains(words, value) {
				t.Errorf("%s tells %s, %s", kind, id, value)
			}
		}
		for _, secret := range []string{"mark-up", "Mark-up", "margin", house.Name, "cost"} {
			if strings.Contains(words, secret) {
				t.Errorf("%s says %q", kind, secret)
			}
		}
		if line := house.Lines[0].Name; kind != paper.Traveller && strings.Contains(words, line) {
			t.Errorf("%s names the line %q", kind, line)
		}
	}
	if budget := text(paper.Offer, map[string]string{"form": "budget"}); strings.Contains(budget, figures["price"]) || !strings.Contains(budget, figures["budget_low"]) {
		t.Error("a budget price is not a span alone")
	}
}

// A paper of what is refused, of figures that are not of its entries, or of entries that do not go together says so across it, and a
// traveller has no steps then.
func TestPaperSaysThatItIsNotToBeUsed(t *testing.T) {
	hot, wrong := saying(cases.First(), "inside_in", "300 °C"), saying(cases.First(), "tube_od", "wide")
	for _, c := range []struct {
		d       document.Document
		stale   bool
		answers map[string]string
		across  string
		steps   bool
	}{
		{cases.First(), false, nil, "", true},
		{cases.First(), false, map[string]string{"status": "void"}, "Void", true},
		{cases.First(), true, nil, "Not of what is entered: not to be used", false},
		{hot, false, nil, "Refused: not to be used", false},
		{wrong, false, nil, "Entries to mend: not to be used", false},
	} {
		for _, kind := range paper.Kinds {
			p := paperOf(t, c.d, kind, map[string]any{"stale": c.stale, "answers": c.answers}).Paper
			if p.Across != c.across {
				t.Errorf("%s: across it stands %q, not %q", kind, p.Across, c.across)
			}
			if kind != paper.Traveller {
				continue
			}
			steps := slices.ContainsFunc(p.Tables(), func(b paper.Block) bool { return b.Text == "Work steps" })
			holds := slices.ContainsFunc(p.Blocks, func(b paper.Block) bool { return b.Form == paper.Hold })
			if steps != c.steps || holds != c.steps {
				t.Errorf("%q: steps %v, holds %v", c.across, steps, holds)
			}
		}
	}
}

// The fingerprint of a design is the same however it is read, and another where it, the shop or the program is.
func TestPaperIsFoundByItsMark(t *testing.T) {
	d := cases.First()
	mark := paperOf(t, d, paper.Datasheet, nil).Mark
	if got := paperOf(t, d, paper.Offer, map[string]any{"units": units.US}).Mark; got != mark {
		t.Errorf("in other units it is %s, not %s", got, mark)
	}
	inches, err := document.Edit(d, document.Command{Op: "units", System: units.US})
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		text    string
		designs []document.Document
		program string
		at      int
		said    string
	}{
		{mark, []document.Document{other(d), inches}, "1", 1, "It is of this design, by the same shop’s file and program."},
		{strings.ToUpper(mark), []document.Document{d}, "2", 0, "It is of this design. Otherwise than then: program."},
		{mark, []document.Document{other(d)}, "1", -1, "It is of no design here. Otherwise than the one in hand: design."},
		{"12 34", []document.Document{d}, "1", -1, "That is no fingerprint: three groups of digits and letters a to f, as on the paper."},
	} {
		var got markedAt
		if e := ask(t, "paper_find", map[string]any{"text": c.text, "designs": c.designs, "program": c.program}, &got); e != "" {
			t.Fatal(e)
		}
		if got.At != c.at || got.Said != c.said {
			t.Errorf("%s: %+v", c.text, got)
		}
	}
}

func other(d document.Document) document.Document { return saying(d, "fin_pitch", "9 fpi") }

// saying is a design with one entry otherwise.
func saying(d document.Document, field, text string) document.Document {
	d, err := document.Edit(d, document.Command{Op: "set", Values: []document.Value{{Field: field, Text: &text}}})
	if err != nil {
		panic(err)
	}
	return d
}

// A table leaves as a file with as many cells in each line.
func TestPaperTableIsAFile(t *testing.T) {
	d := cases.First()
	args := map[string]any{"document": d, "kind": paper.Traveller, "units": "si", "answers": map[string]string{}, "day": "2026-11-28", "program": "1", "beside": []any{}, "names": []string{}, "table": 0}
	var got tabled
	if e := ask(t, "paper_table", args, &got); e != "" {
		t.Fatal(e)
	}
	if !strings.HasSuffix(got.Name, "-2026-11-28.csv") || strings.Count(got.CSV, "\r\n") != 5+1 {
		t.Errorf("%q:\n%s", got.Name, got.CSV)
	}
}

// Papers are in the page's language.
func TestPapersAreInTheLanguage(t *testing.T) {
	speak(t, tongue.File())
	d := cases.First()
	given := map[string]bool{"SI": true, "fpi": true, "kPa": true, "mPa": true}
	for _, text := range []string{d.Title, house().Name, "EUR", "fins", "min", "Btu", paperOf(t, d, paper.Datasheet, nil).Mark} {
		for _, word := range tongue.English(text) {
			given[word] = true
		}
	}
	for _, s := range house().Steps {
		for _, word := range tongue.English(s.Name) {
			given[word] = true
		}
	}
	for _, l := range house().Lines {
		for _, word := range tongue.English(l.Name) {
			given[word] = true
		}
	}
	for _, kind := range paper.Kinds {
		got := paperOf(t, d, kind, nil)
		for _, b := range got.Paper.Tables() {
			if b.Table.Columns[1].Formula {
				for _, row := range b.Table.Rows {
					row[1], row[2] = "", "" // symbols and numbers
				}
			}
		}
		for _, text := range wordsOf(got.Paper) {
			for _, word := range tongue.English(text) {
				if !given[word] {
					t.Errorf("%s: %q in %q", kind, word, text)
				}
			}
		}
	}
}
