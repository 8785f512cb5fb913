//go:build browser

package e2e

import (
	"testing"

	"finwright/site/browser"
)

// What the shop did not take stays where it was typed, with its reason, when rows come and go: those behind one that goes
// move up.
func TestRefusedTextOfTheShopOutlastsItsRows(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openShop(page)
	stands := func(path, text string) {
		t.Helper()
		page.Wait(shopRefuses(path, text))
	}
	setInShop(page, `set("rates/line", "dear"); set("cutting/stock/2", "long"); set("cutting/stock/0", "short");`)
	stands("rates/line", "dear")
	stands("cutting/stock/2", "long")
	stands("cutting/stock/0", "short")
	setInShop(page, `add("cutting/stock")`)
	page.Wait(inRoom(`room.find("cutting/stock/5")`))
	stands("rates/line", "dear")
	stands("cutting/stock/2", "long")
	setInShop(page, `remove("cutting/stock", 0)`)
	page.Wait("!" + inRoom(`room.find("cutting/stock/5")`))
	stands("rates/line", "dear")
	stands("cutting/stock/1", "long")
	if got := browser.Eval[string](page, inRoom(`room.value("cutting/stock/0")`)); got == "short" {
		t.Error("the text of the row that is gone stands at the next")
	}
	enterInShop(page, "rates/line", "91 /h")
	page.Wait(shopIs("rates/line", "91 /h"))
}

// A text that is entered while a row before its own goes is taken for its own row.
func TestEntryOfTheShopFollowsItsRow(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openShop(page)
	second := browser.Eval[string](page, inRoom(`room.value("cutting/stock/1")`))
	setInShop(page, `remove("cutting/stock", 0); set("cutting/stock/2", "7.5 m");`)
	page.Wait(`(localStorage.getItem("finwright.shop") ?? "").includes("7.5")`)
	page.Wait(shopIs("cutting/stock/1", "7.5 m"))
	if got := browser.Eval[string](page, inRoom(`room.value("cutting/stock/0")`)); got != second {
		t.Errorf("the row before has %q, want %q", got, second)
	}
}

// A text that is being typed while the rows are made anew is handed over when its field is left.
func TestTypingInTheShopOutlastsItsRows(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openShop(page)
	setInShop(page, `add("cutting/stock"); room.edit("cutting/stock/1").select(); document.execCommand("insertText", false, "917.31 mm")`)
	page.Wait(`document.querySelector('#shop-grid [data-key="cutting/stock/5"]') !== null`)
	page.Wait(element("#shop-grid .editor") + `.value === "917.31 mm"`)
	page.Focus(id("shop-close"))
	page.Wait(`(localStorage.getItem("finwright.shop") ?? "").includes("917.31")`)
	page.Wait(shopIs("cutting/stock/1", "917.31 mm"))
}

// An undo of the shop takes back the change before it, also one that is on its way.
func TestUndoOfTheShopTakesItsTurn(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openShop(page)
	enterInShop(page, "currency", "CHF")
	page.Wait(`(localStorage.getItem("finwright.shop") ?? "").includes("CHF")`)
	setInShop(page, `set("rates/line", "917.31 /h"); document.getElementById("shop-undo").click();`)
	page.Wait(inRoom(`room.value("rates/line") !== "917.31 /h"`))
	page.Wait(`!localStorage.getItem("finwright.shop").includes("917.31")`)
	if !browser.Eval[bool](page, `localStorage.getItem("finwright.shop").includes("CHF")`) {
		t.Error("it took back more than the last change")
	}
}
