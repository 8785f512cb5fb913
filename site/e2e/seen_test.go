//go:build browser

package e2e

import (
	"testing"

	"finwright/site/browser"
)

// seen waits for the figures and the drawing that stand before the engine answers, and holds that they are marked as not of it.
func seen(t *testing.T, page *browser.Page, figure, text string) {
	t.Helper()
	page.WaitText(figureOf(figure), text)
	page.Wait(`document.querySelector("#drawing.pulled .traced")?.width > 0`)
	page.Wait(`document.body.dataset.answer === "asked" && document.body.classList.contains("stale")`)
	if browser.Eval[bool](page, `document.querySelector("#plots canvas") !== null`) {
		t.Error("an answer has come")
	}
}

// unseen holds that nothing stands that the engine has not said.
func unseen(t *testing.T, page *browser.Page, why string) {
	t.Helper()
	page.Wait(`document.body.classList.contains("stale")`) // by then it would stand
	if text := browser.Eval[string](page, `document.querySelector("#headline").textContent`); text != "" {
		t.Errorf("%s, and the page shows %q", why, text)
	}
}

// noted waits until what is seen is noted of the work as that is kept.
func noted(page *browser.Page) {
	page.Wait(`JSON.parse(JSON.parse(localStorage.getItem("finwright.seen") ?? "{}").of ?? "[\"\"]")[0].endsWith(" " + ` + slot + `.revision)`)
}

// held opens the page anew, and answers nothing.
func held(page *browser.Page) {
	stillNextTime(page, "yes")
	page.Reload()
}

// goesOn lets the engine answer.
func goesOn(page *browser.Page) {
	browser.Eval[bool](page, "go()")
	page.WaitMark("finwright:drawn")
	waitState(page, "answered")
}

// What the page showed last stands before its engine answers, and on a first visit the first example.
func TestLastViewStandsBeforeTheFirstAnswer(t *testing.T) {
	page := plain.Page(t, browser.Desk)
	page.Before(still)
	page.Open("")
	seen(t, page, "fin_od", "57.15")
	all := `JSON.stringify([...document.querySelectorAll(":is(#headline, #groups) .figure:not([hidden])")].map((one) => one.textContent))`
	entries := `JSON.stringify([...document.querySelectorAll("#entries .field:not([hidden]) .moves")].map((one) => one.value))`
	page.Wait(`document.querySelectorAll("#groups .figure").length > 20`)
	early, typed := browser.Eval[string](page, all), browser.Eval[string](page, entries)
	page.Click(id("figure-area_ratio") + " .name")
	goesOn(page)
	page.Wait(`document.querySelector("#working").open && document.querySelector("[data-testid=working-result]").textContent.includes("21.31")`)
	page.Click("#working-close")
	if late := browser.Eval[string](page, all); late != early {
		t.Errorf("the build's view says\n%s, the engine\n%s", early, late)
	}
	if late := browser.Eval[string](page, entries); late != typed {
		t.Errorf("the build's entries are\n%s, the engine's\n%s", typed, late)
	}

	kept := `JSON.parse(localStorage.getItem("finwright.seen") ?? "{}").view?.fields.find(({id}) => id === "fin_height")?.text`
	enter(page, "fin_height", "12 mm")
	waitState(page, "answered")
	page.Wait(kept + ` === "12 mm"`)
	held(page)
	seen(t, page, "fin_od", "49.40")
	waitTyped(page, "fin_height", "12 mm")
	goesOn(page)
	quiet(t, page)
}

// On a phone what stands early is no wider than the window, and the answer moves nothing that is reached for.
func TestFirstViewOnAPhone(t *testing.T) {
	page := plain.Page(t, browser.View{Width: 390, Height: 844, Scale: 2, Mobile: true})
	page.Before(still)
	page.Open("")
	seen(t, page, "fin_od", "57.15")
	page.Wait(`document.querySelectorAll("#groups .figure").length > 20`)
	if wide := browser.Eval[[]string](page, `[document.documentElement, ...document.querySelectorAll("#headline .figure, #groups .figure, #sheet, .switch")]
		.filter((e) => Math.max(e.scrollWidth, e.getBoundingClientRect().right) > 390).map((e) => e.cloneNode().outerHTML + e.scrollWidth)`); len(wide) > 0 {
		t.Errorf("wider than the window: %q", wide)
	}
	press := `Math.round(` + element(id("section-heat")) + `.getBoundingClientRect().y)`
	early := browser.Eval[int](page, press)
	goesOn(page)
	if late := browser.Eval[int](page, press); late != early {
		t.Errorf("the sections move from %d to %d px with the answer", early, late)
	}
	quiet(t, page)
}

// What is no longer of the work, the shop or the choices in hand is not shown, nor what somebody else put there as more than text.
func TestLastViewOfSomethingElseIsNotShown(t *testing.T) {
	page := plain.Page(t, browser.Desk)
	page.Before(still)
	page.Open("")
	goesOn(page)
	fresh := func() {
		t.Helper()
		browser.Eval[bool](page, `(localStorage.removeItem("finwright.seen"), true)`)
		enter(page, "fin_height", "12 mm")
		waitState(page, "answered")
		noted(page)
	}
	fresh()

	held(page)
	seen(t, page, "fin_od", "49.40")
	page.Type(entry("fin_height"), "11 mm\r")
	page.Wait(slot + ".pending?.length === 1")
	held(page)
	unseen(t, page, "an entry waits")
	goesOn(page)
	page.WaitText(figureOf("fin_od"), "47.40")

	fresh()
	browser.Eval[bool](page, `(localStorage.setItem("finwright.shop", JSON.stringify({shop: "", id: "another", revision: 1})), true)`)
	held(page)
	unseen(t, page, "the shop is another")
	goesOn(page)

	fresh()
	browser.Eval[bool](page, `(addEventListener("pagehide", () => localStorage.setItem("finwright.seen", localStorage.getItem("finwright.seen").replaceAll("49.40", "<img src=x onerror=alert(1)>"))), true)`)
	held(page)
	seen(t, page, "fin_od", "<img src=x onerror=alert(1)>")
	if browser.Eval[bool](page, `document.querySelector("img[src=x]") !== null`) {
		t.Error("a stored text has become a part of the page")
	}
	goesOn(page)
	page.WaitText(figureOf("fin_od"), "49.40")

	link := linkOf(t, page)
	other := page.Beside()
	other.Before(still)
	other.Open(link)
	unseen(t, other, "a link opens")
}

// Where the store is full, what was last seen makes room for what is entered.
func TestLastViewMakesRoom(t *testing.T) {
	page := opened(t, browser.Desk, "")
	enter(page, "fin_height", "12 mm")
	waitState(page, "answered")
	noted(page)
	browser.Eval[bool](page, `(() => {
		const {setItem} = Storage.prototype;
		Storage.prototype.setItem = function (key, text) {
			if (this === localStorage && this.getItem("finwright.seen") !== null) throw new DOMException("full", "QuotaExceededError");
			return setItem.call(this, key, text);
		};
		return true;
	})()`)
	enter(page, "fin_height", "11 mm")
	waitState(page, "answered")
	page.Reload()
	page.WaitText(figureOf("fin_od"), "47.40")
	waitEntry(page, "fin_height", "11 mm")
	quiet(t, page)
}

// While the charts are on their way, the drawing that was last seen goes with the first change: it is of another tube.
func TestDrawingLastSeenGoesWithAChange(t *testing.T) {
	page := plain.Page(t, browser.Desk)
	page.Before(`{
		const {fetch} = globalThis;
		globalThis.fetch = (what, ...more) => (String(what).includes("/charts.") ? new Promise(() => {}) : fetch(what, ...more));
	}` + still)
	page.Open("")
	seen(t, page, "fin_od", "57.15")
	browser.Eval[bool](page, "go()")
	waitState(page, "answered")
	page.Wait(`document.querySelector("#drawing").matches(".pulled") && document.querySelector("#drawing .words").childElementCount > 5`)
	enter(page, "fin_height", "12 mm")
	page.WaitText(figureOf("fin_od"), "49.40")
	waitState(page, "answered")
	page.Wait(`!document.querySelector("#drawing").matches(".pulled") && document.querySelector("#drawing .words").childElementCount === 0`)
}
