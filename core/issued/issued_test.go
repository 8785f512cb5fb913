package issued

import (
	"encoding/json"
	"encoding/xml"
	"errors"
	"io"
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/drawing/svg"
	"finwright/core/message"
	"finwright/core/paper"
	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/core/units"
	"finwright/testdata/cases"
)

const program = "engine.1234.wasm"

// drawing has all that a drawing of ours can have.
func drawing() string {
	return svg.Write(sheet.Scene{
		Width: 100, Height: 40,
		Artwork: ink.Artwork{Lines: []ink.Polyline{{Stroke: ink.Thin, Points: []ink.Point{ink.At(0, 0), ink.At(10, 5)}}}},
		Texts:   []sheet.Text{{ID: "a", Class: "dim", X: 5, Y: 5, Anchor: sheet.Start, Text: `15 mm <"&'> url(x): 1`, Rotate: 90}},
	}, svg.Style{})
}

// record is a paper with a block of each form.
func record(designs ...document.Document) Record {
	p := paper.Paper{Kind: paper.Offer, Title: "Offer", Status: "approved", Foot: "Offer · 17"}
	p.Say("Number", "17")
	p.Heading("Price")
	p.Text("one", "two")
	p.Caution("heed")
	p.Pairs(paper.Pair{Label: "Total", Value: "1 234.50", Figure: "price"})
	p.Table("Prices", []paper.Column{{Label: "Item"}, {Label: "Total", Number: true}}, [][]string{{"A", "1.00"}, {"=1+1", "2.00"}})
	p.Blanks("Signed")
	p.Hold("HOLD")
	p.Draw(drawing(), "not for pressure")
	p.Code("abc")
	p.NewSheet()
	c := shop.House()
	r := Record{
		Item: "1", Name: "Offer · 17 · A", Time: "2026-11-28T08:00:00.000Z", Program: program, Answers: map[string]string{"number": "17"}, Shop: string(c.Save()), Paper: p,
		Job:  document.JobOf(designs),
		Mark: paper.MarkOf(document.FingerprintOf(designs), c.Fingerprint(), program).String(),
	}
	if len(designs) > 1 {
		r.Each = make([]map[string]string, len(designs))
	}
	return r
}

func written(t testing.TB, r Record) []byte {
	t.Helper()
	text, err := Save(r)
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// resealed is a file with something otherwise and a seal that holds: what somebody makes who means to.
func resealed(t testing.TB, text []byte, alter func(*file)) []byte {
	t.Helper()
	var f file
	if err := json.Unmarshal(text, &f); err != nil {
		t.Fatal(err)
	}
	alter(&f)
	var err error
	if f.Seal, err = f.sealed(); err != nil {
		t.Fatal(err)
	}
	out, err := json.Marshal(f)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// What was issued comes back as it was, of one design and of several, with its drawing to the letter.
func TestIssuedComesBack(t *testing.T) {
	for _, designs := range [][]document.Document{{cases.First()}, {cases.First(), cases.List()[1].Document(), cases.List()[2].Document()}} {
		r := record(designs...)
		got, err := Open(written(t, r))
		if err != nil {
			t.Fatal(err)
		}
		if !reflect.DeepEqual(got.Paper, r.Paper) || got.Mark != r.Mark || got.Name != r.Name || got.Time != r.Time || !reflect.DeepEqual(got.Answers, r.Answers) || len(got.Each) != len(r.Each) {
			t.Errorf("%+v\n%+v", got, r)
		}
		if !reflect.DeepEqual(got.Job.Designs(), r.Job.Designs()) {
			t.Error("another design")
		}
	}
}

// What is damaged, altered, hostile, foreign or of a newer page is refused in words.
func TestHostilePapersAreRefused(t *testing.T) {
	text := written(t, record(cases.First()))
	svgs := func(svg string) []byte {
		return resealed(t, text, func(f *file) {
			for i := range f.Paper.Blocks {
				if d := f.Paper.Blocks[i].Drawing; d != nil {
					d.SVG = svg
				}
			}
		})
	}
	head := `<svg xmlns="http://www.w3.org/2000/svg">`
	for name, c := range map[string]struct {
		text []byte
		key  string
	}{
		"empty":            {nil, "issued.none"},
		"a design":         {[]byte(`{"format":"finwright-design","version":6}`), "issued.none"},
		"no JSON":          {[]byte("<html>"), "issued.none"},
		"newer":            {resealed(t, text, func(f *file) { f.Version = 2 }), "open.newer"},
		"a figure altered": {[]byte(strings.Replace(string(text), "1 234.50", "1 134.50", 1)), "issued.altered"},
		"broken off":       {text[:len(text)-40], "issued.none"},
		"more members":     {[]byte(strings.Replace(string(text), `"seal":`, `"evil":1,"seal":`, 1)), "issued.damaged"},
		"another design":   {resealed(t, text, func(f *file) { f.Design = json.RawMessage(strings.Replace(string(f.Design), `"10 fpi"`, `"9 fpi"`, 1)) }), "issued.differs"},
		"another shop":     {resealed(t, text, func(f *file) { f.Shop = json.RawMessage(strings.Replace(string(f.Shop), `1.9 /kg`, `0.9 /kg`, 1)) }), "issued.differs"},
		"another program":  {resealed(t, text, func(f *file) { f.Program = "other" }), "issued.differs"},
		"no shop":          {resealed(t, text, func(f *file) { f.Shop = json.RawMessage(`{}`) }), "issued.shop"},
		"a newer design": {resealed(t, text, func(f *file) {
			f.Design = json.RawMessage(strings.Replace(string(f.Design), `"version":6`, `"version":7`, 1))
		}), "open.newer"},
		"no mark":           {resealed(t, text, func(f *file) { f.Mark = "12" }), "issued.damaged"},
		"a kind of none":    {resealed(t, text, func(f *file) { f.Paper.Kind = "evil" }), "issued.damaged"},
		"a row too long":    {resealed(t, text, func(f *file) { f.Paper.Tables()[0].Table.Rows[0] = []string{"1", "2", "3"} }), "issued.damaged"},
		"a table of none":   {resealed(t, text, func(f *file) { f.Paper.Blocks[4].Table = nil }), "issued.damaged"},
		"a form of none":    {resealed(t, text, func(f *file) { f.Paper.Blocks[0].Form = "script" }), "issued.damaged"},
		"items for one":     {resealed(t, text, func(f *file) { f.Each = make([]map[string]string, 2) }), "issued.damaged"},
		"too much to read":  {append(text, make([]byte, Longest)...), "issued.long"},
		"a script":          {svgs(head + `<script>alert(1)</script></svg>`), "issued.damaged"},
		"a handler":         {svgs(head + `<path onload="alert(1)" d="M0 0"/></svg>`), "issued.damaged"},
		"an address":        {svgs(head + `<path fill="url(https://x.example/)" d="M0 0"/></svg>`), "issued.damaged"},
		"an image":          {svgs(head + `<image href="https://x.example/"/></svg>`), "issued.damaged"},
		"a style":           {svgs(head + `<path style="x" d="M0 0"/></svg>`), "issued.damaged"},
		"another namespace": {svgs(`<svg xmlns="http://www.w3.org/1999/xhtml"><text></text></svg>`), "issued.damaged"},
		"two drawings":      {svgs(head + `</svg>` + head + `</svg>`), "issued.damaged"},
		"an entity":         {svgs(`<!DOCTYPE svg [<!ENTITY a "b">]>` + head + `</svg>`), "issued.damaged"},
		"an open end":       {svgs(head + `<text>`), "issued.damaged"},
	} {
		_, err := Open(c.text)
		var oe *document.OpenError
		if !errors.As(err, &oe) || oe.Key != c.key {
			t.Errorf("%s: %v, not %s", name, err, c.key)
			continue
		}
		message.English().Render(oe.Message, units.SI)
	}
}

// Whatever a file holds, it is opened as a paper that can be laid out, or refused; what opens is written again to the same.
func opens(t testing.TB, text string) {
	r, err := Open([]byte(text))
	if err != nil {
		var oe *document.OpenError
		if !errors.As(err, &oe) {
			t.Fatalf("%v: %s", err, text)
		}
		message.English().Render(oe.Message, units.SI)
		return
	}
	for i := range r.Paper.Blocks {
		if b := &r.Paper.Blocks[i]; !b.Whole() || b.Drawing != nil && strings.Contains(strings.ToLower(b.Drawing.SVG), "<script") {
			t.Errorf("opens %+v", b)
		}
	}
	again, err := Save(r)
	if err != nil {
		t.Fatal(err)
	}
	if same, err := Open(again); err != nil || !reflect.DeepEqual(same.Paper, r.Paper) {
		t.Errorf("saved and opened again it is another: %v", err)
	}
}

// mended gives a text that is altered a seal that holds, where it still is a file.
func mended(text string) string {
	var f file
	if json.Unmarshal([]byte(text), &f) != nil {
		return text
	}
	var err error
	if f.Seal, err = f.sealed(); err != nil {
		return text
	}
	out, err := json.Marshal(f)
	if err != nil {
		return text
	}
	return string(out)
}

// small is a file without the shop's, which would be most of it: few alterations would fall on anything else.
func small(t testing.TB) string {
	return string(resealed(t, written(t, record(cases.First())), func(f *file) { f.Shop = json.RawMessage(`{}`) }))
}

func TestAnyPaperIsOpenedOrRefused(t *testing.T) {
	samples := []string{string(written(t, record(cases.First()))), small(t)}
	proof.Proof{Share: 120, Full: 200_000, Seed: 51}.Run(t, func(c *proof.Case) { opens(c, altered(c.Rand, samples)) })
}

// altered is a sample with something otherwise, half the time with a seal that holds.
func altered(r *rand.Rand, samples []string) string {
	text := proof.Text(r, samples...)
	if r.IntN(2) == 0 {
		return mended(text)
	}
	return text
}

// Any text is a drawing of ours or none; one that is has nothing but what we draw.
func TestAnyDrawingIsOursOrNone(t *testing.T) {
	proof.Proof{Share: 2000, Full: 1_000_000, Seed: 52}.Run(t, func(c *proof.Case) {
		svg := proof.Text(c.Rand, drawing(), `<svg xmlns="http://www.w3.org/2000/svg"><script onload="x">javascript:1</script><a href="data:x"/></svg>`)
		if Drawn(svg) {
			ours(c, svg)
		}
	})
}

// ours holds a drawing against a reader of others: it is whole, and has nothing but what we draw.
func ours(t testing.TB, svg string) {
	names := map[string]bool{"svg": true, "path": true, "text": true}
	for d := xml.NewDecoder(strings.NewReader(svg)); ; {
		token, err := d.Token()
		if err == io.EOF {
			return
		}
		start, begins := token.(xml.StartElement)
		_, letters := token.(xml.CharData)
		_, ends := token.(xml.EndElement)
		if err != nil || !begins && !letters && !ends || begins && (!names[start.Name.Local] || start.Name.Space != "http://www.w3.org/2000/svg") {
			t.Fatalf("%v: %s is taken for a drawing", err, svg)
		}
		for _, a := range start.Attr {
			if name := strings.ToLower(a.Name.Local); a.Name.Space != "" || strings.HasPrefix(name, "on") || strings.Contains(name, "href") || name == "style" || name == "id" {
				t.Errorf("%s in %s", name, svg)
			}
		}
	}
}

func FuzzOpen(f *testing.F) {
	f.Add(string(written(f, record(cases.First()))))
	f.Add(small(f))
	f.Fuzz(func(t *testing.T, text string) {
		opens(t, text)
		opens(t, mended(text))
	})
}
