package bridge

import (
	"strings"
	"testing"

	"finwright/core/compare"
	"finwright/core/document"
	"finwright/core/outgoing"
	"finwright/core/proof"
	"finwright/testdata/cases"
)

func sendIt(t testing.TB, d document.Document, kept ...document.Document) (out struct {
	Told outgoing.Told
	Text string
}, refused string,
) {
	t.Helper()
	picked := map[string]any{"figures": outgoing.Usual, "entries": []string{"fin_pitch"}, "held": "box", "price": true, "day": "2026-11-28", "until": "2026-12-28"}
	refused = ask(t, "send", map[string]any{"document": d, "kept": kept, "picked": picked}, &out)
	return out, refused
}

// Whatever design is sent opens at a customer's, where nothing has a price but what was told, and nothing is made.
func TestAnyDesignIsSentAndReceived(t *testing.T) {
	proof.Proof{Share: 20, Full: 3000, Seed: 31}.Run(t, func(c *proof.Case) {
		d := drawDocument(c.Rand)
		sent, refused := sendIt(c, d, drawDocument(c.Rand))
		if refused != "" {
			if answerableRow(c, d) {
				c.Errorf("not sent: %s", refused)
			}
			return
		}
		answerable(c, "receive", map[string]any{"text": sent.Text, "sheet": area, "section": "surface"})
		var got struct {
			answered
			Shop string
			Told outgoing.Told
		}
		if e := ask(c, "receive", map[string]any{"text": sent.Text, "sheet": area, "section": "surface", "headline": []string{"price_tube", "duty", "line"}}, &got); e != "" {
			c.Fatal(e)
		}
		for _, f := range got.View.Headline {
			if f.ID != "duty" && f.Value != "" {
				c.Errorf("a customer's page has computed %+v", f)
			}
		}
		if strings.Join(got.Told.Refused, " ") != strings.Join(sent.Told.Refused, " ") || len(got.Told.Price) > 0 && len(got.Told.Refused) > 0 {
			c.Errorf("%+v", got.Told)
		}
	})
}

// answerableRow reports whether a design has figures at all.
func answerableRow(t testing.TB, d document.Document) bool {
	t.Helper()
	row, wrong, err := rowIn(d, nil)
	return err == nil && wrong == nil && len(row.Cells) > 0
}

func TestWhatIsNoLetterIsRefused(t *testing.T) {
	for name, text := range map[string]string{"a design file": string(mustSave(t)), "nothing": "", "half of one": `{"format":"finwright-sent","version":1,`} {
		var got any
		if e := ask(t, "receive", map[string]any{"text": text}, &got); !strings.HasPrefix(e, "The link is damaged") {
			t.Errorf("%s: %q", name, e)
		}
	}
}

func mustSave(t *testing.T) []byte {
	t.Helper()
	text, err := document.Save([]document.Document{cases.First()})
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// The steps of each entry can be entered as they are, and the design's own is one of them.
func TestStepsCanBeEntered(t *testing.T) {
	var got stepped
	d := cases.First()
	if e := ask(t, "steps", map[string]any{"document": d, "entries": compare.Ladders}, &got); e != "" || len(got.Entries) != len(compare.Ladders) {
		t.Fatalf("%s: %d entries", e, len(got.Entries))
	}
	for _, s := range got.Entries {
		if s.Label == "" || s.At < 0 || s.Texts[s.At] != d.Text(s.ID) || len(s.Shown) != len(s.Texts) || len(s.Texts) < 2 {
			t.Errorf("%+v", s)
		}
		for i, text := range s.Texts {
			var next answered
			if e := ask(t, "edit", map[string]any{"document": d, "commands": []any{map[string]any{"op": "set", "values": []any{map[string]any{"field": s.ID, "text": text}}}}}, &next); e != "" || s.Shown[i] == "" {
				t.Errorf("%s %q: %s", s.ID, text, e)
			}
		}
	}
	var none any
	if e := ask(t, "steps", map[string]any{"document": d, "entries": []string{"margin"}}, &none); e == "" {
		t.Error("the mark-up can be slid over")
	}
}
