package bridge

import (
	"bytes"
	"encoding/json"
	"math/rand/v2"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/rating"
)

// figures are the ids of all figures that there are.
var figures = func() (ids []string) {
	for _, key := range message.English().Keys() {
		if id, ok := strings.CutPrefix(key, "figure."); ok {
			ids = append(ids, id)
		}
	}
	return ids
}()

// question draws what a page could ask of a drawn design after a few commands.
func question(r *rand.Rand) (method string, args map[string]any) {
	d := drawDocument(r)
	commands := make([]document.Command, r.IntN(4))
	for i := range commands {
		commands[i] = drawCommand(r)
	}
	section := []string{"", "surface", "heat", "making"}[r.IntN(4)]
	args = map[string]any{"document": d, "section": section}
	which := r.IntN(1000)
	switch {
	case which < 500:
		args["commands"], args["room"] = commands, map[string]any{"wide": between(r, 0, 2000), "card": between(r, 0, 900)}
		if r.IntN(10) > 0 {
			args["sheet"] = drawSheet(r)
		}
		if section == "surface" {
			args["quantity"] = rating.OfSurface[r.IntN(len(rating.OfSurface))]
		}
		return "edit", args
	}
	for _, c := range commands {
		if next, err := document.Edit(d, c); err == nil {
			d = next
		}
	}
	args["document"] = d
	switch {
	case which < 700:
		args["figure"] = figures[r.IntN(len(figures))]
		return "working", args
	case which < 900:
		args["sheet"] = drawSheet(r)
		return "svg", args
	case which < 950:
		return "save", map[string]any{"job": document.JobOf([]document.Document{d, d}[:1+r.IntN(2)])}
	case which < 999:
		text, _ := document.Save([]document.Document{d})
		return "open", map[string]any{"text": string(text), "sheet": drawSheet(r), "section": section}
	}
	return "map", map[string]any{"document": d, "quantity": rating.OfSurface[r.IntN(len(rating.OfSurface))]}
}

// answerable holds a reply to what every reply must be: JSON, no fault of the engine, no figure that is none. A text that is
// missing is a fault here.
func answerable(t testing.TB, method string, args any) {
	t.Helper()
	text, err := json.Marshal(args)
	if err != nil {
		t.Fatal(err)
	}
	reply := Call(method, text)
	switch {
	case !json.Valid(reply):
		t.Fatalf("%s: not JSON", method)
	case bytes.Contains(reply, []byte(`"key":"error.fault"`)):
		_, _ = methods[method].answer(text) // again, for the place where it panics
		t.Fatalf("%s: %s\n%s", method, reply, text)
	}
	for _, packed := range []string{`"ink":"`, `"bands":"`} {
		if before, after, found := bytes.Cut(reply, []byte(packed)); found {
			reply = append(before, after[max(0, bytes.IndexByte(after, '"')):]...)
		}
	}
	for _, none := range []string{"NaN", "Inf"} {
		if bytes.Contains(text, []byte(none)) {
			continue // what was typed is shown as it was typed
		}
		if i := bytes.Index(reply, []byte(none)); i >= 0 {
			t.Fatalf("%s: …%s…\n%s", method, reply[max(0, i-80):min(len(reply), i+20)], text)
		}
	}
}

var anyDesign = proof.Proof{Share: 60, Full: 500_000, Seed: 8}

// Whatever design is on the page and whatever is asked of it, there is an answer.
func TestAnyDesignIsAnswered(t *testing.T) {
	anyDesign.Run(t, func(c *proof.Case) {
		method, args := question(c.Rand)
		answerable(c, method, args)
	})
}

func FuzzDesign(f *testing.F) {
	f.Add([]byte("one design"))
	f.Fuzz(func(t *testing.T, data []byte) {
		method, args := question(proof.FromBytes(data))
		answerable(t, method, args)
	})
}

// links are texts that a link could carry, for a fuzzer to change.
var links = func() (texts []string) {
	for _, d := range examples {
		text, err := document.Save([]document.Document{d})
		if err != nil {
			panic(err)
		}
		texts = append(texts, string(text))
	}
	text, err := document.Save(examples)
	if err != nil {
		panic(err)
	}
	return append(texts, string(text), "{}", "", "?", `{"format":"finwright-shop"}`)
}()

// followed holds a link's text to this: it is read or refused in a text, and what it brings is answered; the whole answer is asked
// for where shown says so, since it takes a hundred times as long as reading.
func followed(t testing.TB, text string, shown bool) {
	t.Helper()
	f, err := document.OpenFile([]byte(text))
	if err != nil {
		if said(cut(err)) == "" { // a place left open is a fault of its own
			t.Errorf("nothing is said of %q", text)
		}
		return
	}
	if shown {
		answerable(t, "open", map[string]any{"text": text, "link": true, "sheet": area})
		answerable(t, "edit", map[string]any{"document": f.Job.Design(f.Hand), "commands": nil, "section": "heat"})
	}
}

func TestAnyLinkIsFollowed(t *testing.T) {
	proof.Proof{Share: 300, Full: 2_000_000, Seed: 10}.Run(t, func(c *proof.Case) {
		followed(c, proof.Text(c.Rand, links...), c.Index%100 == 0)
	})
}

func FuzzLink(f *testing.F) {
	for _, text := range links {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) { followed(t, text, true) })
}
