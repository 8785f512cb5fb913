package bridge

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/paper"
	"finwright/core/shop"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// typedTubes are n tubes as somebody measured them, beside what the record itself says was wanted: longer by turns [mm], slower by late [s].
func typedTubes(t *testing.T, d document.Document, n int, turns, late float64) string {
	t.Helper()
	want := wantedOf(t, d)
	number := func(name string) (x float64) {
		if _, err := fmt.Sscan(strings.ReplaceAll(want[name], "\u202f", ""), &x); err != nil {
			t.Fatalf("%s is %q", name, want[name])
		}
		return x
	}
	cut, finished, took := number("Cut length"), number("Length as wound"), 60*number("Time on the line")
	list := ""
	for i := range n {
		list += fmt.Sprintf("%g; %g; %g; %g; %g\n", number("Fins over 1 m"), number("Fin outside diameter"), cut, finished+turns*float64(i%2), took+late+float64(i%2))
	}
	return list
}

// wantedOf is what the record says was asked of a tube, by the value's name, in metric units.
func wantedOf(t *testing.T, d document.Document) map[string]string {
	t.Helper()
	p := recordOf(t, d, map[string]string{"measured": "394"}).Paper
	out := map[string]string{}
	for _, row := range p.Tables()[0].Table.Rows {
		out[row[0]] = row[1]
	}
	return out
}

func recordOf(t *testing.T, d document.Document, answers map[string]string) papered {
	t.Helper()
	return paperOf(t, d, paper.Record, map[string]any{"units": units.SI, "answers": answers})
}

// leaves are all values of a shop's file, by their paths.
func leaves(c shop.Capability) map[string]string {
	out := map[string]string{}
	for _, l := range c.Places() {
		if !l.Missing {
			out[l.Path] = l.Text
		}
	}
	return out
}

// What came back from the floor is held against what was asked; from five tubes on the shop may learn of them, and what it learns changes that one
// value alone, with the old one kept and the name of who accepted it: no limit, no tolerance, no rule.
func TestShopLearnsOfTubesThatCameBack(t *testing.T) {
	d := cases.List()[1].Document() // embedded: it grows
	answers := map[string]string{"measured": typedTubes(t, d, 4, 0.1, 20), "good": "3"}
	if got := recordOf(t, d, answers); len(got.Proposals) != 0 {
		t.Errorf("four tubes propose %v", got.Proposals)
	}
	answers["measured"], answers["good"], answers["scrapped"], answers["rejected"] = typedTubes(t, d, 6, 0.1, 20), "94", "4", "2"
	got := recordOf(t, d, answers)
	if len(got.Proposals) != 3 {
		t.Fatalf("%v", got.Proposals)
	}
	args := map[string]any{"document": d, "kind": paper.Record, "units": units.SI, "answers": answers, "day": "2026-11-28", "program": "1", "beside": []any{}, "names": []string{}}
	was := leaves(house())
	for thing, may := range map[string][]string{"growth": nil, "loading": {"lines/1/times/load", "lines/1/note"}, "rejects": {"losses/rejects", "losses/note"}} {
		args["thing"] = thing
		delete(answers, "learned_by")
		if e := ask(t, "paper_learn", args, &learned{}); !strings.Contains(e, "Answers for what the shop learns") {
			t.Errorf("%s: nobody answers for it, and %q", thing, e)
		}
		answers["learned_by"] = "A. Turner"
		var reply learned
		if e := ask(t, "paper_learn", args, &reply); e != "" {
			t.Fatalf("%s: %s", thing, e)
		}
		c, faults := shop.Open([]byte(reply.Shop))
		if faults != nil {
			t.Fatal(faults)
		}
		now := leaves(c)
		var changed []string
		for _, path := range slices.Sorted(maps.Keys(now)) {
			if now[path] != was[path] && !(thing == "growth" && strings.HasPrefix(path, "measured/")) {
				changed = append(changed, path)
			}
		}
		slices.Sort(may)
		if !slices.Equal(changed, may) || len(now) < len(was) {
			t.Errorf("%s changes %v", thing, changed)
		}
		note := now[map[string]string{"growth": "measured/0/note", "loading": "lines/1/note", "rejects": "losses/note"}[thing]]
		if !strings.Contains(note, "A. Turner") || !strings.Contains(note, "2026-11-28") || thing == "loading" && !strings.Contains(note, was["lines/1/note"]) {
			t.Errorf("%s is remarked as %q", thing, note)
		}
	}
	if said := got.Proposals[2].Said; !strings.Contains(said, "6 % by") || !strings.Contains(said, "100 tubes") {
		t.Errorf("6 of 100 came to nothing: %s", said)
	}
}

// What scatters more than the check of growth allows is not learned, since that check would let more pass by it; nor a line that is faster than its own
// speeds.
func TestLearningLoosensNothing(t *testing.T) {
	got := recordOf(t, cases.List()[1].Document(), map[string]string{"measured": typedTubes(t, cases.List()[1].Document(), 6, 40, -300)})
	if len(got.Proposals) != 2 || !strings.Contains(got.Proposals[0].Why, "must not let more pass") || !strings.Contains(got.Proposals[1].Why, "look at these first") {
		t.Errorf("%+v", got.Proposals)
	}
}

// What cannot be read is told with its line; a concession that nobody accepted is none.
func TestRecordTellsWhatIsWrongInIt(t *testing.T) {
	p := paperOf(t, cases.First(), paper.Record, map[string]any{"answers": map[string]string{
		"measured": "394; wide\n394; 70", "good": "many", "concessions": "End B bare by 3 mm more; B. Quality\nScratches",
	}}).Paper
	words := strings.Join(wordsOf(p), "\n")
	for _, want := range []string{"line 1: Fin outside diameter", "“many” is no whole number", "line 2: what was out, a semicolon, and who accepted it", "End B bare by 3 mm more", "B. Quality", "1 of 1 out"} {
		if !strings.Contains(words, want) {
			t.Errorf("the record does not say %q: %s", want, words)
		}
	}
}
