package bridge

import (
	"strconv"
	"testing"

	"finwright/core/glossary"
	"finwright/core/lesson"
	"finwright/core/proof"
	"finwright/core/units"
)

var anyTry = proof.Proof{Share: 60, Full: 20_000, Seed: 41}

// Whatever tube is on the page and whatever the shop is, a try is judged, a guess is told, an answer is worked out and an explanation is given.
func TestAnyTryIsJudged(t *testing.T) {
	anyTry.Run(t, func(c *proof.Case) {
		x := lesson.Exercises[c.Rand.IntN(len(lesson.Exercises))]
		shop := ""
		if c.Rand.IntN(2) == 0 {
			text, _, _ := drawShop(c, c.Rand)
			shop = string(text)
		}
		d := drawDocument(c.Rand)
		if c.Rand.IntN(3) == 0 {
			d = x.Solved("", units.US)
		}
		args := map[string]any{"lesson": x.ID, "units": d.Units, "shop": shop}
		switch c.Rand.IntN(4) {
		case 0:
			answerable(c, "lesson_check", map[string]any{"lesson": x.ID, "document": d, "typed": strconv.Itoa(c.Rand.IntN(2000)), "shop": shop})
		case 1:
			args["guess"] = c.Rand.IntN(9) - 2
			answerable(c, "lesson_guess", args)
		case 2:
			answerable(c, "lesson_answer", args)
		default:
			answerable(c, "stories", map[string]any{"document": d, "story": lesson.Stories[c.Rand.IntN(len(lesson.Stories))].ID, "shop": shop})
		}
	})
}

// What is unknown is refused, and each term's picture is drawn.
func TestLearnIsAsked(t *testing.T) {
	for method, args := range map[string]map[string]any{
		"lesson_begin":  {"lesson": "none", "units": "si"},
		"lesson_answer": {"lesson": "double", "units": "ells"},
		"term_picture":  {"term": "none", "units": "si"},
		"lessons":       {"units": ""},
	} {
		if e := ask(t, method, args, nil); e == "" {
			t.Errorf("%s takes %v", method, args)
		}
	}
	for _, term := range glossary.Terms {
		var got struct{ SVG string }
		if e := ask(t, "term_picture", map[string]any{"term": term.ID, "units": "us", "dark": true}, &got); (e == "") != (term.Picture != "") || (got.SVG == "") != (term.Picture == "") {
			t.Errorf("%s: %q, %d bytes", term.ID, e, len(got.SVG))
		}
	}
	var begun struct{ Document struct{ Title string } }
	if e := ask(t, "lesson_begin", map[string]any{"lesson": "slip", "units": "us", "solved": true}, &begun); e != "" || begun.Document.Title == "" {
		t.Errorf("%s %+v", e, begun)
	}
}
