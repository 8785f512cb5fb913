package outgoing

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"finwright/core/compare"
	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// secret is a shop whose names, remarks and mark-up are found again wherever they go.
func secret() shop.Capability {
	c := shop.House()
	c.Name = "Quillon Works"
	c.Lines = slices.Clone(c.Lines)
	for i := range c.Lines {
		c.Lines[i].Name = fmt.Sprintf("Xylo%d", i)
	}
	c.Rates.MarkUp = 0.2371
	return c
}

func with(d document.Document, pairs ...string) document.Document {
	d = d.With(document.Differences{})
	for i := 0; i < len(pairs); i += 2 {
		d.Fields[pairs[i]] = document.Entry{Text: pairs[i+1], Origin: document.Customer}
	}
	return d
}

func writer(d document.Document) report.Writer {
	return report.Writer{Texts: message.English(), System: d.Units}
}

// sent is what goes to a customer of the first example, with all that must not.
func sent(t *testing.T, p Picked, d document.Document, kept ...document.Document) (text []byte, told Told) {
	t.Helper()
	c := secret()
	told, err := Tell(writer(d), d, kept, &c, p)
	if err != nil {
		t.Fatal(err)
	}
	if text, err = Send(d, told); err != nil {
		t.Fatal(err)
	}
	return text, told
}

var picked = Picked{Figures: []string{"tube_weight", "duty"}, Entries: []string{"fin_pitch", "rows"}, Held: compare.Box, Price: true, Day: "2026-11-28", Until: "2026-12-28"}

func inHand() document.Document {
	return with(cases.First(), "line", "Xylo0", "margin", "19.73 %", "joints_allowed", "7", "ordered", "2026-10-31", "drawing_approved", "2026-11-11", "own_fin_name", "Scrapyard alloy")
}

// Unpacked, what is sent has none of what stays in the house: whatever the shop is called and has on file, what is not in use, who answers
// for an entry, how it is made, what it costs, and what whoever kept an alternative thought of it.
func TestNothingOfTheHouseLeaves(t *testing.T) {
	d := inHand()
	kept := []document.Document{with(d, "fin_pitch", "11 fpi", "margin", "31.9 %", "line", "Xylo1"), with(d, "margin", "44.4 %")}
	text, told := sent(t, picked, d, kept...)
	c := secret()
	for _, never := range []string{
		"Quillon", "Xylo", "19.73", "31.9", "44.4", "23.71", "0.2371", "2026-10-31", "2026-11-11", "Scrapyard", c.Fingerprint(),
		`"origin"`, `"house"`, `"customer"`, `"assumed"`, `"line"`, `"margin"`, `"kept"`, `"name"`, `"note"`, `"shop":`, `"cost`, `"rate`, "mark-up", "Mark-up", "Line ",
	} {
		if strings.Contains(string(text), never) {
			t.Errorf("%s is in what leaves: %s", never, text)
		}
	}
	in, h, err := design.ReadAndRate(d, &c)
	if err != nil {
		t.Fatal(err)
	}
	res := design.Evaluate(in, h)
	m := design.Make(in, h)
	res.AddMaking(&m)
	numbers := message.English().Numbers
	looked := 0
	for _, g := range res.Groups {
		for _, f := range g.Figures {
			if !f.Kind.Money() || slices.Contains(prices, f.ID) || !f.Absent.None() || f.SI == 0 {
				continue
			}
			looked++
			for _, said := range []string{numbers.Figure(f.Kind, f.SI, units.SI).Value, numbers.Full(f.Kind, f.SI, units.SI)} {
				if len(said) > 3 && strings.Contains(string(text), said) {
					t.Errorf("%s, %s, is in what leaves", f.ID, said)
				}
			}
		}
	}
	if looked < 8 {
		t.Errorf("only %d costs were looked for", looked)
	}
	if len(told.Price) != 2 || told.Term != "Price of 2026-11-28, holds until 2026-12-28." {
		t.Errorf("%+v %q", told.Price, told.Term)
	}
	if len(told.Beside) != 2 || !strings.HasPrefix(told.Beside[0].Said, "11 fpi against 10 fpi: ") || told.Beside[0].FinOD != 57.15 || len(told.Beside[0].Values) != 2 || told.Beside[0].Values[0] == told.Figures[0].Value || told.Held == "" {
		t.Errorf("%+v", told.Beside)
	}
}

// It has the members that are written here and no others, however deep: what is added to a design, a figure or an entry stays in the house
// until somebody lets it out.
func TestMembersOfWhatLeaves(t *testing.T) {
	text, _ := sent(t, picked, inHand(), with(inHand(), "rows", "5"))
	var all map[string]any
	if err := json.Unmarshal(text, &all); err != nil {
		t.Fatal(err)
	}
	seen := map[string]bool{}
	var walk func(at string, v any)
	walk = func(at string, v any) {
		switch v := v.(type) {
		case map[string]any:
			for k, inner := range v {
				if at == ".design.fields" {
					continue
				}
				seen[at+"."+k] = true
				walk(at+"."+k, inner)
			}
		case []any:
			for _, inner := range v {
				walk(at, inner)
			}
		}
	}
	walk("", all)
	may := []string{
		".format", ".version", ".design", ".design.version", ".design.title", ".design.units", ".design.fields", ".design.spans", ".design.spans.centre", ".design.spans.width",
		".told", ".told.day", ".told.tube", ".told.term", ".told.refused", ".told.held", ".told.entries", ".told.beside", ".told.beside.said", ".told.beside.values", ".told.beside.od", ".told.beside.fin_od",
	}
	for _, list := range []string{".told.figures", ".told.price"} {
		may = append(may, list)
		for _, of := range []string{"id", "label", "value", "unit", "state", "mark"} {
			may = append(may, list+"."+of)
		}
	}
	for member := range seen {
		if !slices.Contains(may, member) {
			t.Errorf("%s leaves the house", member)
		}
	}
	for i := range field.Fields {
		f := &field.Fields[i]
		if _, there := all["design"].(map[string]any)["fields"].(map[string]any)[f.ID]; there == (f.Group == "making") {
			t.Errorf("%s of %s: leaves %v", f.ID, f.Group, there)
		}
	}
}

// Every figure that a user can decide by may leave, is a price or stays.
func TestEveryFigureIsPlaced(t *testing.T) {
	for _, id := range report.Deciding {
		if places := []bool{slices.Contains(Figures, id), slices.Contains(prices, id), slices.Contains(stays, id)}; count(places) != 1 {
			t.Errorf("%s: may leave, is a price, stays: %v", id, places)
		}
	}
	for _, id := range Usual {
		if !slices.Contains(Figures, id) {
			t.Errorf("%s is usual and may not leave", id)
		}
	}
	_, told := sent(t, Picked{Figures: []string{"line", "price", "line_hours", "cost_strip"}, Entries: []string{"margin"}}, cases.First())
	if len(told.Figures) != len(Usual) || told.Figures[0].ID != Usual[0] || len(told.Entries) > 0 || len(told.Price) > 0 || told.Term != "" {
		t.Errorf("%+v", told)
	}
}

func count(list []bool) (n int) {
	for _, yes := range list {
		if yes {
			n++
		}
	}
	return n
}

// A price is told only where it was asked for and there is one to quote; what refuses the tube always is, without the shop's reasons.
func TestRefusalsLeaveAndTheirPricesDoNot(t *testing.T) {
	for name, c := range map[string]struct {
		d    document.Document
		said string
	}{
		"heat":   {with(cases.First(), "upset", "500 °C"), "500"},
		"making": {with(cases.First(), "fin_height", "30 mm"), "It cannot be made as it is here."},
	} {
		text, told := sent(t, picked, c.d)
		if len(told.Refused) == 0 || !strings.Contains(strings.Join(told.Refused, " "), c.said) {
			t.Errorf("%s: refused for %q, want %q", name, told.Refused, c.said)
		}
		if len(told.Price) > 0 || told.Term != "" || strings.Contains(string(text), "Xylo") {
			t.Errorf("%s: %s", name, text)
		}
	}
	without := picked
	without.Price = false
	if text, told := sent(t, without, cases.First(), with(cases.First(), "rows", "5")); len(told.Price) > 0 || strings.Contains(strings.ToLower(string(text)), "price\":\"") || strings.Contains(told.Beside[0].Said, "EUR") || strings.Contains(told.Beside[0].Said, "price") {
		t.Errorf("%+v", told)
	}
	undated := picked
	undated.Until = "soon"
	if _, told := sent(t, undated, cases.First()); told.Term != "Price of 2026-11-28. Until when it holds is not stated." {
		t.Errorf("%q", told.Term)
	}
}

// What was sent opens to the same tube, with nobody answering for its entries and nothing said of how it is made; sent on, it is the same.
func TestWhatWasSentOpens(t *testing.T) {
	for _, example := range cases.List() {
		d := example.Document()
		text, told := sent(t, picked, with(d, "margin", "19.73 %"))
		back, again, err := Open(text)
		if err != nil {
			t.Fatal(err)
		}
		for id, entry := range back.Fields {
			f := field.Must(id)
			if f.Used(d.Text) && leaves(f) && entry.Text != d.Text(id) || !leaves(f) && entry.Text != "" || entry.Origin != document.Assumed {
				t.Errorf("%s: %s is %+v, was %q", example.ID, id, entry, d.Text(id))
			}
		}
		if a, b := fmt.Sprint(told), fmt.Sprint(again); a != b {
			t.Errorf("told %s, read %s", a, b)
		}
		if next, err := Send(back, again); err != nil || string(next) != string(text) {
			t.Errorf("%v: sent on, it is %s, was %s", err, next, text)
		}
	}
}

// An older design in it is lifted as any other; what is damaged, foreign, flooding or of a newer page is refused.
func TestOpenRefuses(t *testing.T) {
	text, _ := sent(t, picked, cases.First())
	var s Sent
	if err := json.Unmarshal(text, &s); err != nil {
		t.Fatal(err)
	}
	change := func(alter func(*Sent)) []byte {
		other := s
		other.Design.Fields = map[string]string{}
		for id, text := range s.Design.Fields {
			other.Design.Fields[id] = text
		}
		alter(&other)
		out, err := json.Marshal(other)
		if err != nil {
			t.Fatal(err)
		}
		return out
	}
	older := change(func(s *Sent) {
		s.Design.Version = 5
		for id := range s.Design.Fields {
			if field.Must(id).Since > 5 {
				delete(s.Design.Fields, id)
			}
		}
	})
	if d, _, err := Open(older); err != nil || d.Text("end_security") != "shop" {
		t.Errorf("%v, ends %q", err, d.Text("end_security"))
	}
	for name, text := range map[string][]byte{
		"empty":           nil,
		"a design file":   []byte(`{"format":"finwright-design","version":6}`),
		"more members":    []byte(strings.Replace(string(text), `"told":{`, `"told":{"cost":"1",`, 1)),
		"a newer page":    change(func(s *Sent) { s.Version++ }),
		"a newer design":  change(func(s *Sent) { s.Design.Version++ }),
		"a field short":   change(func(s *Sent) { delete(s.Design.Fields, "tube_od") }),
		"a field more":    change(func(s *Sent) { s.Design.Fields["rate"] = "1" }),
		"a field too old": change(func(s *Sent) { s.Design.Version = 0 }),
		"a flood":         change(func(s *Sent) { s.Told.Held = strings.Repeat("a", mostLetters+1) }),
	} {
		var oe *document.OpenError
		if _, _, err := Open(text); err == nil {
			t.Errorf("%s opens", name)
		} else if oe, _ = err.(*document.OpenError); oe == nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// Whatever a customer's link carries, it opens as a design that checks, or is refused.
func TestAnySentIsOpenedOrRefused(t *testing.T) {
	text, _ := sent(t, picked, inHand(), with(inHand(), "rows", "5"))
	proof.Proof{Share: 200, Full: 1_000_000, Seed: 53}.Run(t, func(c *proof.Case) {
		d, _, err := Open([]byte(proof.Text(c.Rand, string(text))))
		if err == nil {
			err = document.Check(d)
		}
		if oe := (*document.OpenError)(nil); err != nil && !errors.As(err, &oe) {
			c.Errorf("%v", err)
		}
	})
}
