//go:build browser

package e2e

import (
	"testing"

	"finwright/site/browser"
)

// The section passes the rules of accessibility, and so does the shop's file.
func TestMakingIsAccessible(t *testing.T) {
	page := making(t, browser.Desk, "2-gas-cooler")
	for _, v := range page.Audit(site) {
		t.Errorf("section: %+v", v)
	}
	openRoom(page)
	page.Wait(`document.querySelectorAll("#shop-tabs [role=tab]").length > 20`)
	for _, v := range page.Audit(site) {
		t.Errorf("shop: %+v", v)
	}
	page.Screenshot(shots, "making-shop")
	quiet(t, page)
}

// The steps, the checks and the day stand beside the pictures, with what must be heeded; cautions stand by their figures.
func TestStepsChecksAndPromiseAreListed(t *testing.T) {
	page := making(t, browser.Desk, "2-gas-cooler")
	page.Wait(`document.querySelectorAll("#steps tbody").length > 5 && document.querySelectorAll("#checks tbody").length > 4`)
	page.Wait(`/Ready on 20[0-9-]{8}/.test(document.querySelector("#promise caption").textContent) && document.querySelectorAll("#promise tbody").length > 3`)
	page.Wait(`document.querySelector("#checks").textContent.includes("90° sector") && document.querySelector("#steps").textContent.includes("Drain and dry")`)
	page.Wait(`document.querySelector('[data-group="speeds"] .cautions')?.textContent.includes("gloves")`)
	page.Wait(`document.querySelector("#budget").textContent.includes("not an offer")`)
	page.Screenshot(shots, "making-desk")
	page.Wait(`(document.querySelector("#steps").scrollIntoView(), true)`)
	page.Screenshot(shots, "making-steps")
	page.Wait(`(document.querySelector("#budget").scrollIntoView(), true)`)
	page.Screenshot(shots, "making-price")
	quiet(t, page)
}

// The nearest change is one press away, and one undo takes it back.
func TestNearestChangeIsApplied(t *testing.T) {
	page := making(t, browser.Desk, "2-gas-cooler")
	page.Click(`[data-testid="apply-spares"]`)
	page.Wait(`document.querySelector('[data-testid="rule-spares"]').dataset.state === "good"`)
	if got := page.Value(`[data-testid="field-spares"]`); got != "6" {
		t.Errorf("%s spares", got)
	}
	page.Click(`[data-testid="undo"]`)
	page.Wait(`document.querySelector('[data-testid="rule-spares"]').dataset.state === "watch"`)
	quiet(t, page)
}

// A value of the shop changes what the order costs, is refused with its reason where
// it is wrong, outlives a reload, and gives way to the shipped shop.
func TestShopIsEditedAndKept(t *testing.T) {
	page := making(t, browser.Desk, "")
	price := page.Text(`[data-testid="figure-price_tube-value"]`)
	openRoom(page)
	enterInShop(page, "rates/line", "cheap")
	page.Wait(shopRefuses("rates/line", "cheap"))
	enterInShop(page, "rates/line", "900 /h")
	page.Wait(shopIs("rates/line", "900 /h") + ` && localStorage.getItem("finwright.shop").includes("900 /h")`)
	page.Wait(`document.querySelector('[data-testid="figure-price_tube-value"]').textContent !== "` + price + `"`)
	page.Reload()
	page.WaitMark("finwright:drawn")
	page.Click(`[data-testid="section-making"]`)
	page.Wait(`(document.querySelector('[data-testid="figure-price_tube-value"]')?.textContent ?? "` + price + `") !== "` + price + `"`)
	openRoom(page)
	page.Click(`[data-testid="shop-reset"]`)
	page.WaitText(`[data-testid="figure-price_tube-value"]`, price)
	page.Click(`[data-testid="shop-undo"]`)
	page.Wait(`localStorage.getItem("finwright.shop").includes("900 /h")`)
	enterInShop(page, "rates/line", "cheap")
	page.Wait(shopRefuses("rates/line", "cheap"))
	page.Click(`[data-testid="shop-close"]`)
	openRoom(page)
	if got := browser.Eval[string](page, inRoom(`room.value("rates/line")`)); got != "cheap" {
		t.Errorf("what could not be read has become %q", got)
	}
	quiet(t, page)
}

// making opens the section Making with an example.
func making(t *testing.T, view browser.View, example string) *browser.Page {
	t.Helper()
	page := plain.Page(t, view)
	page.Open("")
	page.WaitMark("finwright:drawn")
	if example != "" {
		first := page.Value("#design-title")
		page.Click("#examples-button")
		// The menu takes its place after it has opened, so the pointer may be too early.
		page.Wait(`document.querySelector('[data-testid="example-` + example + `"]').click() ?? true`)
		page.Wait(`document.querySelector("#design-title").value !== "` + first + `"`)
	}
	page.Click(`[data-testid="section-making"]`)
	page.Wait(`document.querySelectorAll("#verdicts tbody").length > 0`)
	waitState(page, "answered")
	return page
}

// Other quantities stand in a table of their own; the one ordered costs what the figure says.
func TestPriceByQuantity(t *testing.T) {
	page := making(t, browser.Desk, "2-gas-cooler")
	page.Wait(`document.querySelectorAll("#breaks tbody").length >= 5`)
	each := page.Text(`#breaks .used td`)
	page.WaitText(`[data-testid="figure-price_tube-value"]`, each)
	page.Wait(`document.querySelector("#breaks caption").textContent.includes("EUR")`)
	quiet(t, page)
}

func TestShotsOfMaking(t *testing.T) {
	for name, view := range map[string]browser.View{
		"making-desk":   browser.Desk,
		"making-dark":   {Width: 1440, Height: 900, Dark: true},
		"making-laptop": {Width: 1280, Height: 720},
		"making-phone":  {Width: 390, Height: 844, Scale: 2, Mobile: true},
	} {
		t.Run(name, func(t *testing.T) {
			page := making(t, view, "2-gas-cooler")
			page.Screenshot(shots, name)
			page.Wait(`document.querySelector('[data-testid="picture-swings"] svg') !== null`)
			page.Wait(`document.querySelector('[data-testid="picture-swings"]').scrollIntoView({ block: "end" }) ?? true`)
			page.Screenshot(shots, name+"-below")
			quiet(t, page)
		})
	}
}

// One entry spaces bare spans evenly: what makes sense by a press, what is typed by Enter; what cannot be read stays, with its reason.
func TestBareSpansAreSpacedEvenly(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Wait(element(id("even-spans")) + `.placeholder !== ""`)
	page.Click(id("space-evenly"))
	page.Wait(`document.querySelectorAll("#spans .span").length > 1`)
	waitState(page, "answered")
	page.Type(id("even-spans"), "two")
	page.Wait(element("#even-spans-error") + `.textContent !== ""`)
	if got := page.Value(id("even-spans")); got != "two" {
		t.Errorf("the text became %q", got)
	}
	page.Type(id("even-spans"), "3 x 70 mm")
	page.Wait(`document.querySelectorAll("#spans .span").length === 3 && ` + element(id("span-2-width")) + `.value === "70 mm"`)
	waitState(page, "answered")
	if got := page.Value(id("even-spans")) + page.Text("#even-spans-error"); got != "" {
		t.Errorf("%q stays in the entry", got)
	}
	page.Click(id("undo"))
	page.Wait(element(id("span-0-width")) + `.value !== "70 mm"`)
}
