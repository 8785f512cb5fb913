//go:build browser

package e2e

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

// alone works in the page by keys, and never puts the focus anywhere by another way.
type alone struct {
	*browser.Page
	t *testing.T
}

const mostStops = 90 // of Tab on the way to anything

// to goes by Tab to what is wanted, or to the stop of the presses that it belongs to and then by arrows; back goes the other way.
func (a alone) to(selector string, back ...chromedp.Modifier) {
	a.t.Helper()
	at := func(within string) bool {
		return browser.Eval[bool](a.Page, fmt.Sprintf("%s?.contains(document.activeElement) ?? false", element(selector)+within))
	}
	for range mostStops {
		if at("") {
			return
		}
		if at(`?.closest("#tools, #sections, #headline")`) {
			a.Press(kb.Home)
			for range 30 {
				if at("") {
					return
				}
				a.Press(kb.ArrowRight)
			}
			break
		}
		a.Press(kb.Tab, back...)
	}
	a.t.Fatalf("%s is not reached; the focus is on %s", selector, browser.Eval[string](a.Page, "document.activeElement.outerHTML.slice(0, 200)"))
}

// press goes to it and presses it.
func (a alone) press(selector string, back ...chromedp.Modifier) {
	a.t.Helper()
	a.to(selector, back...)
	a.Press(kb.Enter)
}

// types goes to an entry and types over what it says.
func (a alone) types(selector, text string, back ...chromedp.Modifier) {
	a.t.Helper()
	a.to(selector, back...)
	a.Press("a", chromedp.ModifierCtrl)
	a.Press(text)
	a.Press(kb.Enter)
}

// By keys alone, from the first press on: a tube is entered that the line refuses, what is proposed is done, the price read with its working,
// the design saved and printed; then an exercise is guessed, begun, tried wrong, solved, and the own work taken up again.
func TestMainJobAndExerciseByKeysAlone(t *testing.T) {
	page := opened(t, browser.Desk, "")
	a := alone{page, t}
	browser.Eval[any](page, `void (globalThis.printed = globalThis.saved = "", window.print = () => { printed = document.querySelector("#paper svg").textContent; }, HTMLAnchorElement.prototype.click = function () { saved = this.download; })`)
	rest := func() { page.Wait(`document.body.dataset.answer === "answered"`) }

	whole := `performance.getEntriesByType("resource").some(({name}) => /\/engine\..*wasm/.test(name))` // what the page itself asked for
	a.to(id("section-surface"))
	if browser.Eval[bool](page, whole) {
		t.Error("the whole engine comes without need")
	}
	a.to(id("section-making"))
	page.Wait(whole)
	page.Press(kb.Enter)
	page.Wait(element("#verdicts tbody tr") + " !== null")
	a.types(entry("quantity"), "80", chromedp.ModifierShift)
	waitTyped(page, "quantity", "80")
	a.types(entry("fin_height"), "20 mm", chromedp.ModifierShift)
	page.Wait(element(id("making-answer")) + `.textContent.includes("cannot make it")`)
	rest()
	price := id("figure-price_tube")
	if state := browser.Eval[string](page, element(price+" .state")+".dataset.state"); state != "no" {
		t.Errorf("the price of a tube that cannot be made bears %q", state)
	}
	a.press(id("apply-fin_height"))
	waitTyped(page, "fin_height", "15.875 mm")
	rest()
	a.to(price + " .name")
	if amount := page.Text(price + " .amount"); !strings.ContainsAny(amount, "123456789") || browser.Eval[string](page, element(price+" .state")+".dataset.state") == "no" {
		t.Errorf("the price reads %q", amount)
	}
	page.Press(kb.Enter)
	page.Wait(element(id("working")) + ".open && " + element(id("working-result")) + `.textContent.includes("EUR")`)
	page.Press(kb.Escape)
	page.Wait("!" + element(id("working")) + ".open && " + element(price) + ".contains(document.activeElement)")
	a.press(id("save"))
	page.Wait(`saved.endsWith(".json")`)
	a.press(id("print"))
	page.Wait(`printed.includes("57.15")`)

	a.press(id("learn-open"))
	page.Wait(`document.activeElement.id === "learn-title"`)
	a.press(id("lesson-double"))
	page.Wait(`document.activeElement.matches("#learn h3")`)
	a.to(id("guess-0"))
	page.Press(kb.ArrowDown)
	a.press(id("lesson-tell"))
	page.Wait(`document.activeElement === ` + element(id("lesson-told")) + ` && document.activeElement.textContent !== ""`)
	a.press(id("lesson-begin"))
	waitEntry(page, "fin_height", "7.938 mm")
	rest()
	a.types(id("lesson-typed"), "1.46 m2/m")
	page.Wait(element(id("lesson-verdict")) + `.textContent !== ""`)
	if done := page.Text(id("lesson-checked")); strings.Count(done, "Holds") == len(strings.Split(done, "\n")) {
		t.Errorf("solved before the fins are higher: %s", done)
	}
	a.types(entry("fin_height"), "5/8 in", chromedp.ModifierShift)
	waitTyped(page, "fin_height", "5/8 in")
	rest()
	a.to(id("lesson-typed"))
	page.Press(kb.Enter)
	page.Wait(`[...` + element(id("lesson-checked")) + `.children].every((row) => row.querySelector(".state").dataset.state === "good")`)
	a.press(id("learn-own"), chromedp.ModifierShift)
	waitEntry(page, "fin_height", "15.875 mm")
	a.press(id("learn-close"), chromedp.ModifierShift)
	page.Wait("document.activeElement === " + element(id("learn-open")))
	if n := browser.Eval[int](page, `JSON.parse(localStorage.getItem("finwright.learn") ?? "{}").solved?.length ?? 0`); n != 1 {
		t.Errorf("%d exercises are kept as solved", n)
	}
}
