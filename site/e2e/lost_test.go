//go:build browser

package e2e

import (
	"fmt"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

// halfType types into a field and leaves the cursor there.
func halfType(page *browser.Page, selector, text string) {
	page.Focus(selector)
	browser.Eval[bool](page, "("+element(selector)+".select(), true)")
	page.Press(text)
}

// insert puts a whole text into a field, as pasting does, and leaves it with Enter.
func insert(page *browser.Page, selector, text string) {
	page.Focus(selector)
	browser.Eval[bool](page, "("+element(selector)+".select(), document.execCommand('insertText', false, "+js(text)+"))")
	page.Press(kb.Enter)
}

const slotText = `(localStorage.getItem("finwright.slot." + sessionStorage.getItem("finwright.slot")) ?? "")`

// A text that stopped the engine before it was handed over is kept with its reason, so that no reload asks for it again.
func TestHalfTypedTextIsKeptWithItsReason(t *testing.T) {
	page := faulty(t)
	deafTo(page, "13.13")
	halfType(page, entry("fin_height"), "13.13 mm")
	waitState(page, "lost")
	page.Wait(`JSON.parse(` + slotText + `).pending[0]?.reason`)
	page.Before(`globalThis.deafTo = "13.13";`)
	page.Reload()
	page.WaitMark("finwright:figures")
	waitEntry(page, "fin_height", "13.13 mm")
	waitState(page, "lost")
	if asked := browser.Eval[int](page, "globalThis.unheard ?? 0"); asked != 0 {
		t.Errorf("asked %d times again", asked)
	}
}

// A name that the engine fails on stays where it was typed, and is told.
func TestNameThatStopsTheEngineIsSetAside(t *testing.T) {
	page := faulty(t)
	deafTo(page, "Odd name")
	page.Type(id("design-title"), "Odd name")
	waitState(page, "lost")
	page.Wait(element(id("status")) + `.textContent.includes("One entry")`)
	enter(page, "fin_height", "11 mm")
	if got := page.Value(id("design-title")); got != "Odd name" {
		t.Errorf("the name shown is %q", got)
	}
	page.Type(id("design-title"), "Other name")
	waitState(page, "answered")
}

// What has been done is not done again by a page that goes on from the working copy.
func TestNothingIsDoneTwiceAfterAReload(t *testing.T) {
	page := faulty(t)
	browser.Eval[bool](page, `(() => {
		globalThis.deafTo = 'spans\\":[{'; // as it stands within the message
		for (let i = 0; i < 2; i++) document.querySelector("[data-testid=add-span]").click();
		return true;
	})()`)
	page.Wait("globalThis.unheard > 0")
	page.Reload()
	page.WaitMark("finwright:figures")
	page.Wait(`document.querySelectorAll("#spans .span").length === 2`)
	page.WaitMark("finwright:drawn")
	if n := browser.Eval[int](page, `document.querySelectorAll("#spans .span").length`); n != 2 {
		t.Errorf("%d bare spans, want 2", n)
	}
}

// What was set aside at a bare span goes with it, and stays with the one behind it.
func TestWhatIsSetAsideMovesWithItsSpan(t *testing.T) {
	page := faulty(t)
	for i := range 2 {
		page.Click(id("add-span"))
		page.Wait(`document.querySelectorAll("#spans .span").length === ` + string(rune('1'+i)))
		waitState(page, "answered")
	}
	deafTo(page, "77.7")
	page.Type(id("span-1-width"), "77.7 mm")
	waitState(page, "lost")
	page.Click(id("span-0-remove"))
	page.Wait(`document.querySelectorAll("#spans .span").length === 1`)
	page.Wait(element(id("span-0-width")) + `.value === "77.7 mm"`)
	page.Wait(element(id("span-0-width-error")) + `?.textContent !== ""`)
	page.Click(id("span-0-remove"))
	page.Wait(`document.querySelectorAll("#spans .span").length === 0`)
	waitState(page, "answered")
}

// An undo counts when it is pressed, as an entry does.
func TestUndoOutlastsAReload(t *testing.T) {
	page := faulty(t)
	first := page.Value(entry("fin_height"))
	deaf := typed(page, "fin_height")
	enter(page, "fin_height", "12 mm")
	waitState(page, "answered")
	deafTo(page, deaf)
	page.Click(id("undo"))
	page.Wait("globalThis.unheard > 0")
	page.Reload()
	page.WaitMark("finwright:figures")
	waitEntry(page, "fin_height", first)
}

// An engine that answers nothing at all, as a program out of memory does, is asked again on a new worker.
func TestAnswerThatIsNoneIsNoticed(t *testing.T) {
	page := faulty(t)
	if page.InWorkers("finwright.call = () => undefined") == 0 {
		t.Fatal("no worker was reached")
	}
	page.Type(entry("fin_height"), "11 mm")
	page.WaitText(figureOf("fin_od"), "47.40")
	waitState(page, "answered")
}

// Two changes of the shop, the second before the first is answered, are both taken.
func TestChangesOfTheShopTakeTurns(t *testing.T) {
	page := faulty(t)
	openShop(page)
	setInShop(page, `set("rates/line", "917.31 /h"); set("currency", "CHF");`)
	page.Wait(`(localStorage.getItem("finwright.shop") ?? "").includes("CHF")`)
	page.Wait(`localStorage.getItem("finwright.shop").includes("917.31")`)
}

// A change of the shop that the engine fails on is told at its field.
func TestChangeOfTheShopThatStopsTheEngineIsTold(t *testing.T) {
	page := faulty(t)
	openShop(page)
	deafTo(page, "917.31")
	setInShop(page, `set("rates/line", "917.31 /h");`)
	page.Wait(shopRefuses("rates/line", "917.31 /h"))
	page.Click(id("shop-close"))
	page.Click(id("section-surface"))
	enter(page, "fin_height", "11 mm")
	page.WaitText(figureOf("fin_od"), "47.40")
}

// The printer's drawing is of what is shown, also while a text has not been handed over.
func TestPaperFollowsAHalfTypedText(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Wait(`document.querySelector("#paper").textContent.includes("57.15")`)
	halfType(page, entry("fin_height"), "12 mm")
	page.WaitText(figureOf("fin_od"), "49.40")
	if browser.Eval[bool](page, `document.querySelector("#paper").textContent.includes("57.15")`) {
		t.Error("the printer's drawing is still of the earlier tube")
	}
	page.Wait(`document.querySelector("#paper").textContent.includes("49.40")`)
}

// The bands of the map are drawn anew after other units came and went in another section.
func TestMapKeepsItsBandsThroughUnits(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Click(id("section-heat"))
	for _, system := range []string{"us", "si"} {
		page.Click(id("units-" + system))
		page.Wait(element(id("units-"+system)) + `.getAttribute("aria-pressed") === "true"`)
		waitState(page, "answered")
	}
	page.Click(id("section-surface"))
	page.Wait(`((sheet) => sheet.width > 0 && sheet.getContext("2d").getImageData(0, 0, sheet.width, sheet.height).data.some((x) => x > 0))(document.querySelector("[data-plot=map] .bands"))`)
}

// A menu is not to be seen, and so not pressed, before it is in its place.
func TestMenuIsSeenInItsPlace(t *testing.T) {
	page := opened(t, browser.Desk, "")
	const menu = `document.querySelector("#examples")`
	if at := browser.Eval[string](page, element(id("examples"))+`.click() ?? getComputedStyle(`+menu+`).visibility`); at != "hidden" {
		t.Errorf("the menu that has just opened is %s", at)
	}
	page.Wait(`getComputedStyle(` + menu + `).visibility === "visible" && ` + menu + `.style.left !== ""`)
}

// A bare span is meant as it stands in sight, also while one before it is on its way out.
func TestSpansAreMeantAsTheyStand(t *testing.T) {
	page := opened(t, browser.Desk, "")
	for i := range 3 {
		page.Click(id("add-span"))
		page.Wait(element(id(fmt.Sprintf("span-%d-width", i))))
		page.Type(id(fmt.Sprintf("span-%d-width", i)), fmt.Sprintf("%d1 mm", i+2))
		page.Wait(kept + fmt.Sprintf(".spans[%d]?.width.text === '%d1 mm'", i, i+2))
		waitState(page, "answered")
	}
	browser.Eval[bool](page, `(() => {
		const at = (id) => document.querySelector("[data-testid=" + id + "]");
		at("span-0-remove").click();
		at("span-1-remove").click();
		at("span-2-width").value = "51 mm";
		at("span-2-width").dispatchEvent(new Event("change", {bubbles: true}));
		return true;
	})()`)
	waitState(page, "answered")
	page.Wait(kept + ".spans.length === 1 && " + kept + ".spans[0].width.text === '51 mm'")
	page.Wait(element(id("span-0-width")) + `.value === "51 mm"`)
}
