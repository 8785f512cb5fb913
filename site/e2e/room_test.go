//go:build browser

package e2e

import (
	"fmt"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

// roomScript reaches the entries of the open room: the table of a path is turned to first.
const roomScript = `globalThis.room ??= (() => {
	const grid = () => document.getElementById("shop-grid");
	const look = (selector) => {
		const there = () => grid().querySelector(selector);
		const tables = [...document.querySelectorAll("#shop-tabs [data-table]")].map(({ dataset }) => dataset.table);
		for (const table of tables) {
			if (there()) break;
			[...document.querySelectorAll("#shop-tabs [data-table]")].find(({ dataset }) => dataset.table === table).click();
		}
		return there();
	};
	const find = (path) => look('[data-key="' + path + '"]');
	const hand = (cell) => cell.dispatchEvent(new PointerEvent("pointerdown", { bubbles: true, cancelable: true, pointerType: "mouse" }));
	const key = (target, name) => target.dispatchEvent(new KeyboardEvent("keydown", { key: name, bubbles: true, cancelable: true }));
	const edit = (path) => (hand(find(path)), key(grid(), "F2"), grid().querySelector(".editor"));
	const item = (list, n) => hand(look('[data-key="' + list + "/" + n + '"], [data-key^="' + list + "/" + n + '/"]'));
	return {
		find, edit, hand, key,
		set: (path, text) => { const editor = edit(path); editor.value = text; key(editor, "Enter"); return true; },
		value: (path) => find(path)?.firstElementChild.textContent,
		error: (path) => (find(path)?.ariaInvalid === "true" ? find(path).querySelector(".unseen").textContent : ""),
		add: (list, n = 0) => { item(list, n); document.getElementById("shop-add").click(); },
		remove: (list, n) => { item(list, n); document.getElementById("shop-remove").click(); },
	};
})()`

// inRoom is a JavaScript expression about the room.
func inRoom(expression string) string { return "((" + roomScript + "), " + expression + ")" }

func shopIs(path, text string) string {
	return inRoom("room.value(" + js(path) + ") === " + js(text) + " && !room.error(" + js(path) + ")")
}

func shopRefuses(path, text string) string {
	return inRoom("room.value(" + js(path) + ") === " + js(text) + " && room.error(" + js(path) + ") !== ''")
}

// openRoom opens the room of the shop from the section Making.
func openRoom(page *browser.Page) {
	page.Click(id("shop-open"))
	page.Wait(element("#shop") + ".open && " + element("#shop-grid [role=gridcell]") + " !== null")
}

func openShop(page *browser.Page) {
	page.Click(id("section-making"))
	openRoom(page)
}

// setInShop enters values in the open room without waiting between them.
func setInShop(page *browser.Page, script string) {
	browser.Eval[bool](page, fmt.Sprintf(`(() => { %s; const { set, add, remove } = room; %s; return true; })()`, roomScript, script))
}

func enterInShop(page *browser.Page, path, text string) {
	setInShop(page, fmt.Sprintf("set(%s, %s)", js(path), js(text)))
}

// The room passes the rules of accessibility in each size and theme, and what is in hand is told.
func TestRoomIsAccessible(t *testing.T) {
	for name, view := range map[string]browser.View{
		"room-desk":   browser.Desk,
		"room-dark":   {Width: 1440, Height: 900, Dark: true},
		"room-laptop": {Width: 1280, Height: 720},
		"room-phone":  {Width: 390, Height: 844, Scale: 2, Mobile: true},
	} {
		t.Run(name, func(t *testing.T) {
			page := making(t, view, "2-gas-cooler")
			openRoom(page)
			enterInShop(page, "rates/line", "cheap")
			page.Wait(shopRefuses("rates/line", "cheap"))
			page.Wait(element("#shop-effect") + ".rows.length > 3")
			audit(t, page)
			page.Screenshot(shots, name)
			for _, path := range []string{"lines/0/name", "lines/0/types/0/spindle", "lines/0/types/0/tools/0/height", "lines/0/types/0/fin_metals/=al1060"} {
				browser.Eval[bool](page, inRoom("(room.hand(room.find("+js(path)+")), true)"))
				audit(t, page)
				page.Screenshot(shots, name+"-"+map[string]string{"lines/0/name": "lines", "lines/0/types/0/spindle": "types", "lines/0/types/0/tools/0/height": "tools", "lines/0/types/0/fin_metals/=al1060": "metals"}[path])
			}
			page.Wait("document.documentElement.scrollWidth <= innerWidth")
			quiet(t, page)
		})
	}
}

// On a phone the head of the room takes two lines, within the window, and what is done to the file is a menu.
func TestHeadOfTheRoomOnAPhone(t *testing.T) {
	page := making(t, browser.View{Width: 390, Height: 844, Scale: 2, Mobile: true}, "")
	openRoom(page)
	page.Wait(`((parts) => parts.every((part) => { const { left, right } = part.getBoundingClientRect(); return left >= 0 && right <= innerWidth; })
		&& document.querySelector("#shop > .head").clientHeight < 90)(
		[...document.querySelectorAll("#shop > .head :is(button, h2, input)")].filter((part) => part.checkVisibility()))`)
	if browser.Eval[bool](page, element(id("shop-save"))+`.checkVisibility()`) {
		t.Error("the menu is open from the start")
	}
	page.Click(id("shop-files-open"))
	page.Wait(element(id("shop-save")) + `.checkVisibility()`)
	audit(t, page)
	page.Screenshot(shots, "room-phone-files")
	page.Click(id("shop-begin"))
	page.Wait(`document.getElementById("shop-title").textContent !== "" && !` + element(id("shop-save")) + `.checkVisibility()`)
	quiet(t, page)
}

// A remark is shown with its thing, and edited in lines by the keyboard; the day that is promised is among what an entry does.
func TestRemarksAreEditedInTheRoom(t *testing.T) {
	k := inGrid(t, "rates")
	k.Wait(`/20[0-9]{2}-[0-9]{2}-[0-9]{2}/.test(document.getElementById("shop-effect").textContent)`)
	k.Wait(`document.getElementById("shop-remark").hidden`)
	k.Press(kb.End, chromedp.ModifierCtrl)
	k.Press(kb.F2)
	k.Wait(`document.activeElement.matches("textarea.editor")`)
	k.Wait(`(document.activeElement.value = "A\nB") === "A\nB"`)
	k.Press(kb.Enter)
	k.Wait(`/A\\+nB/.test(localStorage.getItem("finwright.shop") ?? "")`)
	k.Press(kb.Home, chromedp.ModifierCtrl)
	k.Wait(`!document.getElementById("shop-remark").hidden && document.getElementById("shop-remark").textContent.includes("A\nB")`)
	k.Screenshot(shots, "room-remark")
	quiet(t, k.Page)
}
