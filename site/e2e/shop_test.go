//go:build browser

package e2e

import (
	"testing"

	"finwright/site/browser"
)

func shopValue(path string) string { return id("shop-" + path) }

// press presses a button of the open shop: "/+" adds to a list, "/-2" takes its third item out.
func pressInShop(path string) string {
	return `document.querySelector('#shop-form button[data-path="` + path + `"]').click();`
}

// What the shop did not take stays where it was typed, with its reason, when rows come and go: those behind one that goes
// move up.
func TestRefusedTextOfTheShopOutlastsItsRows(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openShop(page)
	stands := func(path, text string) {
		t.Helper()
		page.Wait(element(shopValue(path)) + "?.value === " + js(text))
		page.Wait(`document.getElementById("shop-error-` + path + `").textContent !== "" && ` + element(shopValue(path)) + `.ariaInvalid === "true"`)
	}
	setInShop(page, `set("rates/line", "dear"); set("cutting/stock/2", "long"); set("cutting/stock/0", "short");`)
	stands("rates/line", "dear")
	stands("cutting/stock/2", "long")
	stands("cutting/stock/0", "short")
	setInShop(page, pressInShop("cutting/stock/+"))
	page.Wait(element(shopValue("cutting/stock/4")))
	stands("rates/line", "dear")
	stands("cutting/stock/2", "long")
	setInShop(page, pressInShop("cutting/stock/-0"))
	page.Wait("!" + element(shopValue("cutting/stock/4")))
	stands("rates/line", "dear")
	stands("cutting/stock/1", "long")
	if got := page.Value(shopValue("cutting/stock/0")); got == "short" {
		t.Error("the text of the row that is gone stands at the next")
	}
	setInShop(page, `set("rates/line", "91 /h");`)
	page.Wait(`document.getElementById("shop-error-rates/line").textContent === "" && ` + element(shopValue("rates/line")) + `.ariaInvalid === null`)
}

// A text that is entered while a row before its own goes is taken for its own row.
func TestEntryOfTheShopFollowsItsRow(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openShop(page)
	second := page.Value(shopValue("cutting/stock/1"))
	setInShop(page, pressInShop("cutting/stock/-0")+`set("cutting/stock/2", "7.5 m");`)
	page.Wait(`(localStorage.getItem("finwright.shop") ?? "").includes("7.5")`)
	page.Wait(element(shopValue("cutting/stock/1")) + `.value === "7.5 m"`)
	if got := page.Value(shopValue("cutting/stock/0")); got != second {
		t.Errorf("the row before has %q, want %q", got, second)
	}
}

// A text that is being typed while the rows are made anew is handed over when its field is left.
func TestTypingInTheShopOutlastsItsRows(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openShop(page)
	browser.Eval[bool](page, `(() => { for (const part of document.querySelectorAll("#shop details")) part.open = true; return true; })()`)
	page.Wait(element(shopValue("rates/line")) + ".checkVisibility()")
	page.Focus(shopValue("rates/line"))
	browser.Eval[bool](page, "("+element(shopValue("rates/line"))+".select(), document.execCommand('insertText', false, '917.31 /h'))")
	setInShop(page, pressInShop("cutting/stock/+"))
	page.Wait(element(shopValue("cutting/stock/4")))
	page.Wait(element(shopValue("rates/line")) + `.value === "917.31 /h"`)
	page.Focus(id("shop-close"))
	page.Wait(`(localStorage.getItem("finwright.shop") ?? "").includes("917.31")`)
}

// An undo of the shop takes back the change before it, also one that is on its way.
func TestUndoOfTheShopTakesItsTurn(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openShop(page)
	setInShop(page, `set("currency", "CHF");`)
	page.Wait(`(localStorage.getItem("finwright.shop") ?? "").includes("CHF")`)
	setInShop(page, `set("rates/line", "917.31 /h"); document.getElementById("shop-undo").click();`)
	page.Wait(element(shopValue("rates/line")) + `.value !== "917.31 /h"`)
	page.Wait(`!localStorage.getItem("finwright.shop").includes("917.31")`)
	if !browser.Eval[bool](page, `localStorage.getItem("finwright.shop").includes("CHF")`) {
		t.Error("it took back more than the last change")
	}
}
