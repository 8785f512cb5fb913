package bridge

import (
	"encoding/json"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode"

	"finwright/core/document"
	"finwright/core/paper"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// job is n items, each another quantity and count of fins; every one bears a mark.
func jobItems(n int) []document.Document {
	out := make([]document.Document, n)
	for i := range out {
		d := saying(cases.List()[i%2].Document(), "quantity", strconv.Itoa(7+13*i))
		d = saying(d, "fin_pitch", []string{"10 fpi", "9 fpi", "8 fpi"}[i%3])
		d.Mark = fmt.Sprintf("E-%02d", i+1)
		out[i] = d
	}
	return out
}

// several asks for a paper of all items; more changes an item as it is sent.
func several(t *testing.T, list []document.Document, kind paper.Kind, answers map[string]string, more map[int]map[string]any, args map[string]any) (papered, string) {
	t.Helper()
	items := make([]map[string]any, len(list))
	for i, d := range list {
		items[i] = map[string]any{"design": d.From(list[0]), "kept": []any{}, "answers": map[string]string{}}
		for key, value := range more[i] {
			items[i][key] = value
		}
	}
	if answers == nil {
		answers = map[string]string{}
	}
	all := map[string]any{
		"document": list[0], "kind": kind, "units": units.SI, "answers": answers, "day": "2026-11-28", "program": "1", "beside": []any{}, "names": []string{},
		"several": map[string]any{"base": list[0], "items": items},
	}
	for key, value := range args {
		all[key] = value
	}
	var got papered
	e := ask(t, "paper", all, &got)
	return got, e
}

// changedShop is the house's file with something otherwise.
func changedShop(t *testing.T, change func(tree map[string]any)) string {
	t.Helper()
	var tree map[string]any
	if err := json.Unmarshal(house().Save(), &tree); err != nil {
		t.Fatal(err)
	}
	change(tree)
	text, err := json.Marshal(tree)
	if _, faults := shop.Open(text); err != nil || faults != nil {
		t.Fatal(err, faults)
	}
	return string(text)
}

// shownPrices are what the page shows of a design, in Making.
func shownPrices(t *testing.T, d document.Document, s units.System) (each, total string) {
	t.Helper()
	d, err := document.Edit(d, document.Command{Op: "units", System: s})
	if err != nil {
		t.Fatal(err)
	}
	var got reply
	if e := ask(t, "edit", map[string]any{"document": d, "commands": nil, "section": "making", "sheet": nil}, &got); e != "" {
		t.Fatal(e)
	}
	for _, g := range got.View.Groups {
		for _, f := range g.Figures {
			switch f.ID {
			case "price_tube":
				each = f.Value
			case "price":
				total = f.Value
			}
		}
	}
	return each, total
}

// hundredths reads a printed amount digit by digit.
func hundredths(t *testing.T, text string) int {
	t.Helper()
	whole, part, ok := strings.Cut(text, ".")
	digits := strings.Map(func(r rune) rune {
		if unicode.IsDigit(r) {
			return r
		}
		return -1
	}, whole)
	n, err := strconv.Atoi(digits + part)
	if !ok || len(part) != 2 || err != nil {
		t.Fatalf("%q is no amount to the hundredth", text)
	}
	return n
}

// An offer of several items has a line for each, with the price that the page shows, and a total that is theirs added up.
func TestOfferOfSeveralAddsUp(t *testing.T) {
	for _, n := range []int{1, 3, 40} {
		for _, s := range []units.System{units.SI, units.US} {
			list := jobItems(n)
			got, e := several(t, list, paper.Offer, nil, nil, map[string]any{"units": s})
			if e != "" {
				t.Fatal(e)
			}
			table := got.Paper.Tables()[0].Table
			if len(table.Rows) != n+1 || !table.Sum || got.Paper.Across != "" {
				t.Fatalf("%d items: %d rows, summed %v, across %q", n, len(table.Rows), table.Sum, got.Paper.Across)
			}
			sum := 0
			for i, row := range table.Rows[:n] {
				sum += hundredths(t, row[4])
				if row[0] != list[i].Mark || row[2] != list[i].Text("quantity") || !strings.Contains(row[1], "×") && len(row[1]) < 40 {
					t.Errorf("%q", row)
				}
				if s == units.US && i > 2 {
					continue // money hangs on no units
				}
				if each, total := shownPrices(t, list[i], s); row[3] != each || row[4] != total {
					t.Errorf("%s: %s each, %s in all; the page shows %s and %s", row[0], row[3], row[4], each, total)
				}
			}
			if last := table.Rows[n]; hundredths(t, last[4]) != sum {
				t.Errorf("%d items: the total is %s, added up %d", n, last[4], sum)
			}
		}
	}
}

// An item that is refused, stale, provisional, unreadable or without a price says so on its line and is in no total.
func TestOfferOfSeveralCountsWhatHolds(t *testing.T) {
	list := jobItems(7)
	list[1] = saying(list[1], "fin_height", "30 mm") // no line makes it
	list[2] = saying(list[2], "inside_in", "300 °C")
	list[6] = saying(list[6], "tube_od", "wide")
	more := map[int]map[string]any{3: {"stale": true}, 4: {"answers": map[string]string{"standing": "provisional"}}}
	list[5] = saying(list[5], "fin_metal", "al1050a")
	unpriced := changedShop(t, func(tree map[string]any) {
		rates := tree["rates"].(map[string]any)
		rates["fin_metals"] = slices.DeleteFunc(rates["fin_metals"].([]any), func(p any) bool { return p.(map[string]any)["metal"] == "al1050a" })
	})
	got, e := several(t, list, paper.Offer, nil, more, map[string]any{"shop": unpriced})
	if e != "" {
		t.Fatal(e)
	}
	table := got.Paper.Tables()[0].Table
	for i, begins := range map[int]string{1: "Refused: It cannot be made as it is here.", 2: "Refused: ", 3: "Not of what is entered.", 4: "Provisional, not in the total: ", 6: "Its entries cannot be used", 5: "No price: "} {
		if row := table.Rows[i]; !strings.HasPrefix(row[5], begins) || row[3] != "" || row[4] != "" {
			t.Errorf("%q does not say %q", row, begins)
		}
	}
	last := table.Rows[len(list)]
	if _, total := shownPrices(t, list[0], units.SI); last[4] != total || last[1] != "Total of the item priced, of 7" {
		t.Errorf("%q, with %s alone", last, total)
	}
	if words := strings.Join(wordsOf(got.Paper), "\n"); strings.Contains(words, house().Lines[0].Name) {
		t.Error("the offer names a line")
	} else if strings.Count(words, "E-02") != 1 {
		t.Error("of what is refused more is told than that it is")
	}
	none, _ := several(t, list[1:2], paper.Offer, nil, nil, nil)
	if none.Paper.Across == "" || none.NotYet == "" {
		t.Errorf("of what is refused alone: across %q, not yet %q", none.Paper.Across, none.NotYet)
	}
}

// Alternatives are priced as if they were in hand, under what they say otherwise; the name that one was kept under and all that is the house's
// stays.
func TestOfferTellsAlternatives(t *testing.T) {
	list := jobItems(3)
	kept := []document.Document{saying(saying(list[1], "fin_pitch", "11 fpi"), "margin", "41.3 %"), saying(list[1], "fin_height", "30 mm")}
	keeps := []any{map[string]any{"name": "sly one", "design": kept[0].From(list[0])}, map[string]any{"name": "fool’s", "design": kept[1].From(list[0])}}
	more := map[int]map[string]any{1: {"kept": keeps}}
	shop := map[string]any{"shop": changedShop(t, func(tree map[string]any) {
		tree["name"] = "Quillon Works"
		for i, l := range tree["lines"].([]any) {
			l.(map[string]any)["name"] = fmt.Sprintf("Xylo%d", i)
		}
		tree["rates"].(map[string]any)["mark_up"] = "23.71 %"
	})}
	without, _ := several(t, list, paper.Offer, nil, more, shop)
	if strings.Contains(strings.Join(wordsOf(without.Paper), "\n"), "alternative") {
		t.Error("alternatives are offered though nobody asked")
	}
	got, e := several(t, list, paper.Offer, map[string]string{"alternatives": "with_alternatives"}, more, shop)
	if e != "" {
		t.Fatal(e)
	}
	at := slices.IndexFunc(got.Paper.Tables(), func(b paper.Block) bool { return strings.HasPrefix(b.Text, "Alternatives") })
	if at < 0 {
		t.Fatal("no alternatives")
	}
	rows := got.Paper.Tables()[at].Table.Rows
	var now reply
	if e := ask(t, "edit", map[string]any{"document": kept[0], "commands": nil, "section": "making", "sheet": nil, "shop": shop["shop"]}, &now); e != "" {
		t.Fatal(e)
	}
	total, secrets := "", []string{"Xylo", "Quillon", "sly one", "fool", "41.3", "0.2371", "23.71", "ark-up", "margin", "Margin", "cost"}
	for _, g := range now.View.Groups {
		for _, f := range g.Figures {
			switch secret := strings.HasPrefix(f.ID, "cost_") || f.ID == "price_margin" || strings.HasSuffix(f.ID, "_hours"); {
			case f.ID == "price":
				total = f.Value
			case secret && len(f.Value) > 4:
				secrets = append(secrets, f.Value)
			}
		}
	}
	if len(secrets) < 15 {
		t.Errorf("only %q are kept", secrets)
	}
	if len(rows) != 2 || rows[0][0] != "E-02, alternative A" || rows[0][1] != "11 fpi" || rows[0][4] != total || !strings.Contains(rows[1][1], "Refused: It cannot be made") || rows[1][4] != "" {
		t.Errorf("%q, on the page %s", rows, total)
	}
	for _, kind := range []paper.Kind{paper.Offer, paper.Accepted, paper.Packing} {
		p, e := several(t, list, kind, map[string]string{"alternatives": "with_alternatives"}, more, shop)
		words := strings.Join(wordsOf(p.Paper), "\n")
		for _, secret := range secrets {
			if e != "" || strings.Contains(words, secret) {
				t.Errorf("%s%s tells %q", e, kind, secret)
			}
		}
	}
}

// A paper of several is found by its fingerprint, in whatever order the items stand, and takes no more than it can.
func TestPaperOfSeveralIsBounded(t *testing.T) {
	list := jobItems(3)
	a, _ := several(t, list, paper.Packing, nil, nil, nil)
	b, _ := several(t, []document.Document{list[2], list[0], list[1]}, paper.Packing, nil, nil, nil)
	one := paperOf(t, list[0], paper.Packing, nil)
	if a.Mark != b.Mark || a.Mark == one.Mark {
		t.Errorf("%s, %s, of one %s", a.Mark, b.Mark, one.Mark)
	}
	if crates := a.Paper.Tables()[0].Table.Rows; crates[0][0] != "E-01" || crates[len(crates)-1][1] != strconv.Itoa(len(crates)) {
		t.Errorf("%q", crates)
	}
	if _, e := several(t, list, paper.Traveller, nil, nil, nil); e == "" {
		t.Error("a traveller of several")
	}
	many := slices.Repeat(list[:1], report.MostItems+1)
	if _, e := several(t, many, paper.Offer, nil, nil, nil); !strings.HasPrefix(e, "A paper is of at most 200 items") {
		t.Errorf("%q", e)
	}
}

func BenchmarkOfferOfForty(b *testing.B) {
	list := jobItems(40)
	items := make([]paperItem, len(list))
	for i, d := range list {
		items[i] = paperItem{Design: d.From(list[0])}
	}
	for b.Loop() {
		if _, err := makePaper(paperArgs{Document: list[0], Kind: paper.Offer, Units: units.SI, Day: "2026-11-28", Several: &severalArgs{list[0], items}}); err != nil {
			b.Fatal(err)
		}
	}
}
