//go:build browser

package e2e

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

// band is the JavaScript expression for what a row of the tolerances says.
func band(name string) string { return element(id("band-"+name)) + ".innerText" }

// drawSure presses Draw and waits until all is told.
func drawSure(page *browser.Page, press func()) {
	press()
	page.Wait(element(id("sure-told")) + ".checkVisibility() && !document.querySelector(\".sure progress\").checkVisibility()")
}

// What may be off is entered and felt at once; draws are made in the pool, tell how wide the figures come, and say when they are of
// before the last change. The same seed draws the same.
func TestHowSureByPointer(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Click(id("section-heat"))
	enter(page, "duty_wanted", "770 kW")
	waitState(page, "answered")
	page.Click(id("keep"))
	waitKeptCount(page, 1)
	enter(page, "fin_pitch", "11 fpi")
	page.Click(id("section-options"))
	page.Wait(band("film") + ".includes(\"%\")")
	first := browser.Eval[string](page, element(id("sure-bands"))+".tBodies[0].rows[0].dataset.testid")
	if first != "band-film" {
		t.Errorf("%s does most to the duty", first)
	}
	was := browser.Eval[string](page, band("film"))
	page.Type(id("band-limit-film"), "30")
	page.Wait(band("film") + " !== " + js(was))
	page.Type(id("band-limit-wall"), "lots")
	page.Wait(band("wall") + ".includes(\"lots\") && !" + element(id("sure-draw")) + ".checkVisibility()")
	page.Type(id("band-limit-wall"), "10 %")
	page.Wait("!" + band("wall") + ".includes(\"lots\")")
	page.Focus(id("sure-figure"))
	choose(page, id("sure-figure"), "price_tube")
	page.Wait(element(id("sure-bands")) + ".tBodies[0].rows[0].dataset.testid === \"band-strip_price\" || " + element(id("sure-bands")) + ".tBodies[0].rows[0].dataset.testid === \"band-tube_price\"")
	choose(page, id("sure-figure"), "duty")

	drawSure(page, func() { page.Click(id("sure-draw")) })
	told := func() string { return browser.Eval[string](page, element(id("sure-told"))+".innerText") }
	once := told()
	for _, want := range []string{"draws the bank carries the 770 kW wanted", "no guarantee", "In hand", "Kept 1", "One in twenty below"} {
		if !strings.Contains(once, want) {
			t.Errorf("%q is not in %s", want, once)
		}
	}
	drawSure(page, func() { page.Click(id("sure-draw")) })
	if again := told(); again != once {
		t.Errorf("the same seed draws otherwise: %s", again)
	}
	page.Screenshot(shots, "sure-desk")
	enter(page, "fin_height", "14 mm")
	page.Wait(element(id("sure-older")) + ".checkVisibility()")
	page.Click(id("undo"))
	page.Wait("!" + element(id("sure-older")) + ".checkVisibility()")
	quiet(t, page)
}

// The same by keys, on a phone's width; a design that cannot be rated says why and offers no draws.
func TestHowSureByKeys(t *testing.T) {
	page := opened(t, browser.View{Width: 390, Height: 844, Scale: 2, Mobile: true}, "")
	page.Focus(id("section-options"))
	page.Press(kb.Enter)
	page.Wait(band("film") + ".includes(\"%\")")
	page.Focus(id("sure-seed"))
	page.Press(kb.ArrowUp)
	page.Press(kb.Tab)
	page.Wait("document.activeElement.dataset.testid === \"sure-draw\"")
	drawSure(page, func() { page.Press(kb.Enter) })
	page.Wait(element(id("sure-said")) + ".innerText.includes(\"Seed 2\")")
	if wide := browser.Eval[bool](page, "document.documentElement.scrollWidth > innerWidth"); wide {
		t.Error("the page is wider than the phone")
	}
	quiet(t, page)
}

// A figure that somebody printed is read by its conventions as it is typed; what is no such figure says so at its entry.
func TestSomebodyElsesFigure(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Click(id("section-options"))
	page.Wait(element(id("theirs-quantity")) + ".options.length === 4")
	page.Type(id("theirs-text"), "1.701 m2/m")
	page.Wait(element(id("reading-0")) + "?.innerText.includes(\"as this page counts\")")
	page.Type(id("theirs-text"), "1.701 bar")
	page.Wait(element(id("theirs-wrong")) + ".innerText.length > 0 && !" + element(id("theirs-readings")) + ".checkVisibility()")
	choose(page, id("theirs-quantity"), "ratio")
	page.Type(id("theirs-text"), "99.9")
	page.Wait(element(id("theirs-said")) + ".innerText.includes(\"No convention gives 99.9\")")
	page.Screenshot(shots, "theirs-desk")
	quiet(t, page)
}
