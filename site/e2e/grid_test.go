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

// inGrid opens the room at a subject, with the keyboard in its table.
func inGrid(t *testing.T, table string) keyboard {
	t.Helper()
	page := opened(t, browser.Desk, "")
	openShop(page)
	k := keyboard{page, t}
	k.turnTo(table)
	return k
}

func (k keyboard) waitAt(row, column int) {
	k.t.Helper()
	k.Wait(fmt.Sprintf(`document.getElementById("shop-grid").getAttribute("aria-activedescendant") === "shop-grid-%d-%d"`, row, column))
}

func cellText(row, column int) string {
	return fmt.Sprintf(`document.getElementById("shop-grid-%d-%d").firstElementChild.textContent`, row, column)
}

func toldInGrid(text string) string {
	return `document.querySelector("#shop-grid + [role=status]").textContent.includes(` + js(text) + `)`
}

// clip pastes a text into the grid, or copies from it, as the browser's own keys do.
func clip(page *browser.Page, event, text string) string {
	return browser.Eval[string](page, fmt.Sprintf(`(() => {
		const data = new DataTransfer();
		data.setData("text/plain", %s);
		document.activeElement.dispatchEvent(new ClipboardEvent(%s, {clipboardData: data, bubbles: true, cancelable: true}));
		return data.getData("text/plain");
	})()`, js(text), js(event)))
}

// Arrows, Home, End and their like go through the cells and stop at the edges; the whole grid is one stop for Tab.
func TestKeysGoThroughTheGrid(t *testing.T) {
	k := inGrid(t, "forming")
	k.waitAt(0, 0)
	for _, step := range []struct {
		key         string
		with        []chromedp.Modifier
		row, column int
	}{
		{kb.ArrowUp, nil, 0, 0},
		{kb.ArrowDown, nil, 1, 0},
		{kb.ArrowRight, nil, 1, 1},
		{kb.End, nil, 1, 5},
		{kb.ArrowRight, nil, 1, 5},
		{kb.Home, nil, 1, 0},
		{kb.End, []chromedp.Modifier{chromedp.ModifierCtrl}, 3, 5},
		{kb.ArrowUp, []chromedp.Modifier{chromedp.ModifierCtrl}, 0, 5},
		{kb.PageDown, nil, 3, 5},
		{kb.Home, []chromedp.Modifier{chromedp.ModifierCtrl}, 0, 0},
	} {
		k.Press(step.key, step.with...)
		k.waitAt(step.row, step.column)
	}
	k.Press(kb.Tab)
	k.Wait(`!document.getElementById("shop-grid").contains(document.activeElement)`)
	k.Press(kb.Tab, chromedp.ModifierShift)
	k.Wait(`document.activeElement.id === "shop-grid"`)
	k.Press(kb.Tab, chromedp.ModifierShift)
	k.Wait(`document.activeElement.matches('[role="tab"][aria-selected="true"]')`)
	if tree := browser.Eval[string](k.Page, `((grid) => [grid.role ?? grid.getAttribute("role"), grid.getAttribute("aria-rowcount"), grid.getAttribute("aria-colcount")].join(" "))(document.getElementById("shop-grid"))`); tree != "grid 5 7" {
		t.Errorf("told is %s", tree)
	}
}

// Typing begins an edit, Enter and F2 too; Escape leaves what was there; what is refused is marked and told with its reason.
func TestCellsAreEditedAndErrorsTold(t *testing.T) {
	k := inGrid(t, "forming")
	before := browser.Eval[string](k.Page, cellText(0, 1))
	k.goTo(0, 1)
	k.Press("9")
	k.Wait(`document.activeElement.matches(".editor") && document.activeElement.value === "9"`)
	k.Press(kb.Escape)
	k.Wait(`document.activeElement.id === "shop-grid" && ` + cellText(0, 1) + " === " + js(before))
	k.Press(kb.F2)
	k.Wait(`document.activeElement.value === ` + js(before))
	k.Press(kb.Escape)
	k.Press("2.31")
	k.Press(kb.Enter)
	k.waitAt(1, 1)
	k.Wait(`(localStorage.getItem("finwright.shop") ?? "").includes("2.31")`)
	k.Press("much")
	k.Press(kb.Tab)
	k.waitAt(1, 2)
	k.Wait(`document.getElementById("shop-grid-1-1").ariaInvalid === "true" && ` + cellText(1, 1) + ` === "much"`)
	k.Wait(toldInGrid("Cells not taken: 1. 2, Greatest usual fin OD over tube OD: "))
	k.Press(kb.ArrowLeft)
	k.Wait(`document.getElementById("shop-error").textContent !== ""`)
	k.Press("z", chromedp.ModifierCtrl)
	k.Wait(`document.getElementById("shop-grid-1-1").ariaInvalid !== "true"`)
	k.Press("z", chromedp.ModifierCtrl)
	k.Wait(cellText(0, 1) + " === " + js(before))
	k.Press("y", chromedp.ModifierCtrl)
	k.Wait(cellText(0, 1) + ` === "2.31"`)
}

// A block is copied as text with tabs, and pasted as one change that one undo takes back; what of it is wrong is marked, and no more.
func TestBlocksAreCopiedAndPasted(t *testing.T) {
	k := inGrid(t, "forming")
	k.goTo(0, 1)
	k.Press(kb.ArrowRight, chromedp.ModifierShift)
	k.Press(kb.ArrowDown, chromedp.ModifierShift)
	k.Wait(toldInGrid("Cells in hand: 2 by 2."))
	row := func(n int) string { return browser.Eval[string](k.Page, cellText(n, 1)+` + "\t" + `+cellText(n, 2)) }
	first, second := row(0), row(1)
	if got := clip(k.Page, "copy", ""); got != first+"\n"+second {
		t.Errorf("copied is %q", got)
	}
	clip(k.Page, "paste", "2.4\t0.2 mm\n1.9\tthin\n")
	k.Wait(toldInGrid("Cells not taken: 1."))
	if a, b := row(0), row(1); a != "2.4\t0.2 mm" || b != "1.9\tthin" {
		t.Errorf("pasted are %q and %q", a, b)
	}
	kept := browser.Eval[string](k.Page, `localStorage.getItem("finwright.shop")`)
	if browser.Eval[int](k.Page, `document.querySelectorAll('#shop-grid [aria-invalid="true"]').length`) != 1 {
		t.Error("not the wrong cell alone is marked")
	}
	k.Press("z", chromedp.ModifierCtrl)
	k.Wait(fmt.Sprintf(`localStorage.getItem("finwright.shop") !== %s && %s === %s`, js(kept), cellText(1, 1)+` + "\t" + `+cellText(1, 2), js(second)))
	if got := row(0); got != first {
		t.Errorf("one undo leaves %q", got)
	}
	k.Press("y", chromedp.ModifierCtrl)
	k.Wait(cellText(1, 2) + ` === "thin"`)
}

// Below the last row what is pasted makes more of them; rows are added, duplicated and removed by keys.
func TestRowsComeAndGo(t *testing.T) {
	k := inGrid(t, "forming")
	rows := func(n int) {
		t.Helper()
		k.Wait(fmt.Sprintf(`document.getElementById("shop-grid").getAttribute("aria-rowcount") === "%d"`, n+1))
	}
	k.goTo(1, 0)
	k.Press(kb.Enter, chromedp.ModifierCtrl, chromedp.ModifierShift)
	rows(5)
	k.waitAt(2, 0)
	k.Press(kb.Delete, chromedp.ModifierCtrl)
	rows(4)
	k.Press(kb.Enter, chromedp.ModifierCtrl)
	rows(5)
	k.waitAt(4, 0)
	k.Press(kb.Delete, chromedp.ModifierCtrl)
	rows(4)
	k.goTo(3, 1)
	clip(k.Page, "paste", "2.01\n2.02\n2.03")
	rows(6)
	k.Wait(cellText(5, 1) + ` === "2.03"`)
	k.Press("z", chromedp.ModifierCtrl)
	rows(4)
}

// Of a long table the rows in sight are made, and the one in hand.
func TestRowsInSightAreMade(t *testing.T) {
	k := inGrid(t, "cutting/stock")
	k.Press(kb.End, chromedp.ModifierCtrl)
	clip(k.Page, "paste", strings.Repeat("7 m\n", 90))
	k.Wait(`document.getElementById("shop-grid").getAttribute("aria-rowcount") === "96"`)
	if n := browser.Eval[int](k.Page, `document.querySelectorAll("#shop-grid .body > [role=row]").length`); n < 20 || n > 60 {
		t.Errorf("%d rows are made", n)
	}
	k.Press(kb.Home, chromedp.ModifierCtrl)
	k.Press(kb.End, chromedp.ModifierCtrl)
	k.waitAt(94, 0)
	k.Wait(`document.getElementById("shop-grid-94-0").checkVisibility()`)
}

// A search leaves the subjects and rows that have its text: a label, a metal, a value.
func TestSearchFindsRows(t *testing.T) {
	k := inGrid(t, "")
	tabs := func() []string {
		return browser.Eval[[]string](k.Page, `[...document.querySelectorAll("#shop-tabs [role=tab]")].map((tab) => tab.textContent)`)
	}
	all := len(tabs())
	for query, want := range map[string]string{"spindle": "Fin types", "titanium": "Tube metals", "7 fpi": "Tools in stock"} {
		browser.Eval[bool](k.Page, fmt.Sprintf(`((search) => (search.value = %s, search.dispatchEvent(new Event("input", {bubbles: true}))))(document.getElementById("shop-search"))`, js(query)))
		found := tabs()
		has := false
		for _, tab := range found {
			has = has || tab == want
		}
		if !has || len(found) >= all/2 {
			t.Errorf("%s finds %q", query, found)
		}
	}
}
