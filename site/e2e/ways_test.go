//go:build browser

package e2e

import (
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

func inWay(page *browser.Page, way string) {
	page.Wait(`document.body.dataset.way === ` + js(way))
}

// Another way of looking is entered and left by a press, by its key and by Escape. The section in sight, how far it was scrolled, what had
// the focus and what was chosen stay, and an open list takes Escape before the way does.
func TestWaysOfLooking(t *testing.T) {
	page := atDesk(t)
	page.Click(id("section-heat"))
	page.Wait(element(id("methods")) + ".rows.length > 0")
	browser.Eval[bool](page, `(document.querySelector("#entries").scrollTop = 120, true)`)
	page.Focus(entry("tube_od"))
	const stands = `document.body.dataset.section + " " + Math.round(document.querySelector("#entries").scrollTop) + " " + document.activeElement.id`
	before := browser.Eval[string](page, stands)

	back := func(how string) {
		t.Helper()
		inWay(page, "work")
		if got := browser.Eval[string](page, stands); got != before {
			t.Errorf("%s: back at %s, left %s", how, got, before)
		}
	}
	page.Press(kb.F9)
	inWay(page, "show")
	if browser.Eval[bool](page, `document.querySelector("#entries").checkVisibility() || !document.querySelector("#drawing").checkVisibility()`) {
		t.Error("in show the entries are in sight, or the drawing is not")
	}
	page.Press(kb.F9)
	back("by its key")
	page.Press(kb.F9)
	inWay(page, "show")
	page.Press(kb.Escape)
	back("by Escape")
	page.Press(kb.F9)
	inWay(page, "show")
	page.Click(id("show-leave"))
	back("by a press")

	page.Click(id("way-show"))
	inWay(page, "show")
	if !browser.Eval[bool](page, element(id("way-show"))+`.ariaPressed === "true" && `+element(id("way-work"))+`.ariaPressed === "false"`) {
		t.Error("the press of the way that is on does not say so")
	}
	page.Press(kb.Escape)
	inWay(page, "work")
	page.Click(id("examples"))
	page.Press(kb.Escape)
	inWay(page, "work")
}
