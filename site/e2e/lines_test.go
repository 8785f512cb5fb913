//go:build browser

package e2e

import (
	"testing"

	"github.com/chromedp/chromedp"

	"finwright/site/browser"
)

const tubeInALine = "25.4 mm × 2.108 mm, fins 15.875 mm × 0.4 mm, 393.7 fins/m"

// A figure, a chart's answer and a remark leave as one line, by a press where they are open and by a key where they are not; no press of
// these waits on the way of the Tab key.
func TestFigureAndSentenceLeaveAsALine(t *testing.T) {
	page := atDesk(t)
	browser.Eval[bool](page, `(globalThis.copied = "", navigator.clipboard.writeText = async (text) => { copied = text; }, true)`)
	left := func(want string) {
		t.Helper()
		page.Wait("copied === " + js(want))
		browser.Eval[bool](page, `(globalThis.copied = "", true)`)
	}
	ratio := "Area ratio (on bare tube area) " + page.Text(figureOf("area_ratio")) + ", at " + tubeInALine
	page.Focus(id("figure-area_ratio") + " .name")
	page.Press("c", chromedp.ModifierCtrl)
	left(ratio)

	page.Click(id("figure-area_ratio") + " .name")
	page.Wait(element(id("working")) + ".open")
	page.Click(id("working-line"))
	left(ratio)
	page.Click(id("working-close"))

	page.Focus(id("plot-height") + " .canvas")
	page.Press("c", chromedp.ModifierCtrl)
	left(page.Text(id("plot-height")+" .answer") + " (" + tubeInALine + ")")

	enter(page, "fin_height", "21 mm") // something to remark
	waitState(page, "answered")
	if browser.Eval[bool](page, `[...document.querySelectorAll("#remarks .copy")].some((press) => press.checkVisibility())`) {
		t.Error("the presses of closed remarks are in sight")
	}
	page.Click("#status .more[popovertarget=remarks]")
	page.Wait(`document.querySelector("#remarks").matches(":popover-open")`)
	said := browser.Eval[string](page, `document.querySelector("#remarks li").dataset.said`)
	page.Screenshot(shots, "remarks")
	page.Click("#remarks li:first-child .copy")
	left(said + " (25.4 mm × 2.108 mm, fins 21 mm × 0.4 mm, 393.7 fins/m)")
	page.Press("\x1b")
}
