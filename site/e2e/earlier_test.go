//go:build browser

package e2e

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/site/browser"
	"finwright/testdata/cases"
)

// rows is the JavaScript expression for the rows of the open list of earlier work.
const rows = `[...document.querySelectorAll("#earlier[open] #earlier-list > li")]`

// openEarlier opens a list of earlier work and waits until it holds at least so many.
func openEarlier(page *browser.Page, button string, least int) {
	page.Click(id(button))
	page.Wait(fmt.Sprintf("%s.length >= %d", rows, least))
}

// kept in Earlier work: the texts of a kind, the latest first.
func earlierTexts(page *browser.Page, kind string) []string {
	return browser.Eval[[]string](page, `new Promise((resolve, reject) => {
		const opening = indexedDB.open("finwright");
		opening.onerror = reject;
		opening.onsuccess = () => {
			const db = opening.result, transaction = db.transaction(["heads", "texts"]);
			const heads = transaction.objectStore("heads").index("dated").getAllKeys(IDBKeyRange.bound([`+js(kind)+`], [`+js(kind)+`, []]));
			const found = [];
			heads.onsuccess = () => { for (const key of heads.result.reverse()) { const text = transaction.objectStore("texts").get(key); text.onsuccess = () => found.push(text.result); } };
			transaction.oncomplete = () => { db.close(); resolve(found); };
		};
	})`)
}

func envelopeOf(t *testing.T, designs ...document.Document) string {
	t.Helper()
	text, err := document.Save(designs)
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// A link that comes while the working copy is written is opened: only one that the page put there itself is taken out.
func TestLinkIsNotLostToAnEntry(t *testing.T) {
	page := opened(t, browser.Desk, "")
	link := linkOf(t, page) // of the first example
	enter(page, "fin_height", "12 mm")
	browser.Eval[bool](page, fmt.Sprintf(`((field) => (location.hash = %s, field.value = "13 mm", field.dispatchEvent(new Event("change", {bubbles: true})), true))(%s)`,
		js(link), element(entry("fin_height"))))
	waitKept(page, cases.First())
	page.Wait(`location.hash === ""`)
}

// What takes the place of work never replaces it for good, also when the page goes right after it.
func TestWhatComesReplacesNoWork(t *testing.T) {
	page := opened(t, browser.Desk, "")
	second := cases.List()[1].Document()
	link := linkOf(t, page) // of the first example
	for i, c := range []struct {
		name string
		come func()
	}{
		{"an example", func() { loadExample(page, 1) }},
		{"a link", func() {
			browser.Eval[bool](page, "(location.hash = "+js(link)+", true)")
			waitKept(page, cases.First())
		}},
		{"a file", func() { openFile(page, js(envelopeOf(t, second))); waitKept(page, second) }},
	} {
		height := fmt.Sprintf("%d mm", 11+i)
		enter(page, "fin_height", height)
		c.come()
		page.Reload()
		page.WaitMark("finwright:drawn")
		came := page.Value(entry("fin_height"))
		openEarlier(page, "earlier-open", 1)
		at := slices.IndexFunc(earlierTexts(page, "design"), func(text string) bool { return strings.Contains(text, js(height)) })
		if at < 0 {
			t.Fatalf("%s took the place of %s for good", c.name, height)
		}
		browser.Eval[bool](page, fmt.Sprintf(`(%s[%d].querySelector("[data-part=take]").click(), true)`, rows, at))
		page.Wait(element("#earlier") + ".open === false")
		waitEntry(page, "fin_height", height)
		page.Click(id("undo"))
		waitEntry(page, "fin_height", came)
		// The next is worked on again.
		loadExample(page, 0)
	}
	quiet(t, page)
}

// A link that was only looked at is no work, and one that was changed is other work.
func TestUnitSwitchAfterLinkKeepsTheDesign(t *testing.T) {
	page := opened(t, browser.Desk, "")
	link := linkOf(t, page)
	enter(page, "fin_height", "13 mm")
	browser.Eval[bool](page, "(location.hash = "+js(link)+", true)")
	waitKept(page, cases.First())
	page.Click(id("units-us"))
	page.Wait(kept + `.units === "us"`)
	page.Reload()
	page.WaitMark("finwright:drawn")
	openEarlier(page, "earlier-open", 2)
	texts := earlierTexts(page, "design")
	if len(texts) != 2 || !strings.Contains(texts[0], `"us"`) || !strings.Contains(texts[1], `"13 mm"`) {
		t.Errorf("kept are %.300q", texts)
	}
	if pictures := browser.Eval[int](page, rows+`.filter((row) => row.querySelector("img")?.src.startsWith("data:image/svg")).length`); pictures == 0 {
		t.Error("the list shows no picture")
	}
}

// Of two tabs that change the shop, none overwrites the other: the second is told, and both are kept.
func TestTwoTabsKeepTheirShops(t *testing.T) {
	page := making(t, browser.Desk, "")
	other := page.Beside()
	other.Open("")
	other.WaitMark("finwright:drawn")
	other.Click(id("section-making"))
	for tab, rate := range map[*browser.Page]string{page: "900 /h", other: "800 /h"} {
		openRoom(tab)
		enterInShop(tab, "rates/line", rate)
		tab.Wait(fmt.Sprintf(`[localStorage.getItem("finwright.shop"), ...Object.keys(localStorage).filter((key) => key.startsWith("finwright.left.")).map((key) => localStorage.getItem(key))].some((text) => text?.includes(%s))`, js(rate)))
	}
	for _, rate := range []string{"900 /h", "800 /h"} {
		found := browser.Eval[bool](page, `Object.values(localStorage).some((text) => text.includes(`+js(rate)+`))`)
		if !found && !strings.Contains(strings.Join(earlierTexts(page, "shop"), ""), rate) {
			t.Errorf("the shop with %s is lost", rate)
		}
	}
	told := page.Text("#notes") + other.Text("#notes")
	if !strings.Contains(told, "another tab") {
		t.Errorf("nobody was told: %q", told)
	}
	openEarlier(other, "shop-earlier", 1)
}

// newerShop is a capability file of a version that this page does not know.
func newerShop(t *testing.T) string {
	t.Helper()
	text := string(shop.House().Save())
	newer := strings.Replace(text, fmt.Sprintf(`"version": %d`, shop.Version), `"version": 99`, 1)
	if newer == text {
		t.Fatal("the shop has no version")
	}
	return newer
}

// A kept shop that cannot be read is never deleted: it is told, kept as it is, and another takes its place.
func TestNewerShopIsKept(t *testing.T) {
	page := opened(t, browser.Desk, "")
	newer := newerShop(t)
	browser.Eval[bool](page, `(localStorage.setItem("finwright.shop", `+js(newer)+`), true)`)
	page.Reload()
	page.WaitMark("finwright:drawn")
	page.Wait(`document.querySelector("#notes").textContent.includes("Earlier shops")`)
	page.Click(id("section-making"))
	page.Wait(`document.querySelectorAll("#verdicts tr").length > 0`)
	page.Click(id("shop-open"))
	page.Wait(`document.querySelector("#shop").open`)
	openEarlier(page, "shop-earlier", 1)
	if texts := earlierTexts(page, "shop"); len(texts) != 1 || texts[0] != newer {
		t.Errorf("kept is %.200q", texts)
	}
	if !browser.Eval[bool](page, rows+`[0].querySelector("[data-part=unread]").checkVisibility()`) {
		t.Error("the list does not say that it could not be read")
	}
	browser.Eval[bool](page, `(`+rows+`[0].querySelector("[data-part=take]").click(), true)`)
	page.Wait(`document.querySelector("#earlier-said").textContent.includes("version")`)
}

// waitRested waits until an item with a text in it has been kept with the row that it showed: from then on the page writes no more.
func waitRested(page *browser.Page, text string) {
	page.Wait(`Object.entries(localStorage).some(([key, kept]) => key.startsWith("finwright.item.") && kept.includes(` + js(text) + `) && kept.includes("shown"))`)
}

// A working copy that cannot be read goes to Earlier work as it is, is told, and is never overwritten.
func TestUnreadableDesignsAreKept(t *testing.T) {
	page := opened(t, browser.Desk, "")
	newer := strings.Replace(envelopeOf(t, cases.First()), fmt.Sprintf(`"version": %d`, document.Version), `"version": 99`, 1)
	want := map[string]bool{}
	for text, told := range map[string]string{newer: "newer version", "{half a": "not a design file", `{"format":"recipe","version":1}`: "not a design of this program"} {
		want[text] = true
		waitRested(page, "") // else it writes over what is put there
		browser.Eval[bool](page, `(localStorage.setItem("finwright.slot." + sessionStorage.getItem("finwright.slot"), `+js(text)+`), true)`)
		page.Reload()
		page.WaitMark("finwright:drawn")
		page.Wait(fmt.Sprintf("%s.textContent.includes(%s)", element(id("notes")), js(told)))
		waitKept(page, cases.First())
		enter(page, "fin_height", "11 mm")
		waitRested(page, "11 mm")
	}
	openEarlier(page, "earlier-open", len(want))
	for _, text := range earlierTexts(page, "design") {
		delete(want, text)
	}
	if len(want) > 0 {
		t.Errorf("lost: %v", want)
	}
}

// A command that makes no sense, or fails, does not stop the page from starting with the rest.
func TestWaitingCommandThatFailsDoesNotStopTheStart(t *testing.T) {
	page := opened(t, browser.Desk, "")
	enter(page, "fin_height", "11 mm")
	browser.Eval[bool](page, `(() => {
		const key = "finwright.slot." + sessionStorage.getItem("finwright.slot");
		localStorage.setItem(key, JSON.stringify({...JSON.parse(localStorage.getItem(key)), pending: [{op: "nonsense"}]}));
		globalThis.gone = true;
		location.reload();
		return true;
	})()`)
	page.Wait("globalThis.gone === undefined")
	page.WaitMark("finwright:drawn")
	waitEntry(page, "fin_height", "11 mm")
}

// fill leaves the browser's store as good as full, without what was last seen, which would make room.
const fill = `(() => {
	localStorage.removeItem("finwright.seen");
	for (let size = 1 << 22, n = 0; size >= 16; size >>= 1) {
		try { for (;;) localStorage.setItem("filler" + n++, "x".repeat(size)); } catch {}
	}
	return true;
})()`

// A store that is full is told, for the design and for the shop, and the page goes on.
func TestFullStorageIsTold(t *testing.T) {
	page := making(t, browser.Desk, "")
	openRoom(page)
	browser.Eval[bool](page, fill)
	enterInShop(page, "rates/line", "900 /h")
	page.Wait(`document.querySelector("#notes").textContent.includes("full")`)
	page.Click(id("shop-close"))
	page.Wait(`!document.querySelector("#shop").open`)
	browser.Eval[bool](page, `(document.querySelector("#notes").replaceChildren(), true)`)
	insert(page, entry("fin_height"), strings.Repeat(" ", 100)+"11 mm")
	page.Wait(`document.querySelector("#notes").textContent.includes("full")`)
	page.Click(id("section-surface"))
	page.WaitText(figureOf("fin_od"), "47.40")
}

// Where there is no database, that is told once, and the working copy is kept all the same.
func TestNoDatabaseIsTold(t *testing.T) {
	page := plain.Page(t, browser.Desk)
	page.Before(`IDBFactory.prototype.open = () => { throw new DOMException("barred", "SecurityError"); }`)
	page.Open("")
	page.WaitMark("finwright:drawn")
	enter(page, "fin_height", "11 mm")
	page.Wait(`document.querySelector("#notes").textContent.includes("no earlier work")`)
	page.Reload()
	page.WaitMark("finwright:drawn")
	waitEntry(page, "fin_height", "11 mm")
	page.Click(id("earlier-open"))
	page.Wait(`document.querySelector("#earlier-said").textContent.includes("cannot be used")`)
}

// Without locks, as on plain http, two tabs find that they write to one slot: both designs are kept, and it is told.
func TestWithoutLocksAConflictKeepsBoth(t *testing.T) {
	const noLocks = `Object.defineProperty(navigator, "locks", { value: undefined });`
	page := plain.Page(t, browser.Desk)
	page.Before(noLocks)
	page.Open("")
	page.WaitMark("finwright:drawn")
	enter(page, "fin_height", "13 mm")
	waitRested(page, "13 mm")
	copied := page.Beside()
	copied.Before(noLocks + `if (!sessionStorage.getItem("finwright.slot")) sessionStorage.setItem("finwright.slot", ` + js(browser.Eval[string](page, `sessionStorage.getItem("finwright.slot")`)) + `)`)
	copied.Open("")
	copied.WaitMark("finwright:drawn")
	enter(copied, "fin_height", "14 mm")
	enter(page, "fin_height", "12 mm")
	page.Wait(`document.querySelector("#notes").textContent.includes("Both are kept")`)
	for tab, want := range map[*browser.Page]string{page: "12 mm", copied: "14 mm"} {
		tab.Reload()
		tab.WaitMark("finwright:drawn")
		waitEntry(tab, "fin_height", want)
	}
}

// The list holds the last fifty; lasting storage is asked for once, when there is work to lose.
func TestEarlierWorkIsBounded(t *testing.T) {
	page := plain.Page(t, browser.Desk)
	page.Before(`navigator.storage.persist = () => { localStorage.setItem("asked", (localStorage.getItem("asked") ?? "") + "x"); return Promise.resolve(false); };`)
	page.Open("")
	page.WaitMark("finwright:drawn")
	if browser.Eval[bool](page, `localStorage.getItem("asked") !== null`) {
		t.Error("lasting storage is asked for before there is work")
	}
	// Sixty pieces of work that were put aside, as by sixty examples.
	envelope, err := json.Marshal(envelopeOf(t, cases.First()))
	if err != nil {
		t.Fatal(err)
	}
	browser.Eval[bool](page, fmt.Sprintf(`(() => {
		for (let i = 0; i < 60; i++) {
			const left = {id: "old" + i, kind: "design", name: "work " + i, time: new Date(1e12 + i * 1e6).toISOString(), version: 3, revision: 1, text: %s, unread: false};
			localStorage.setItem("finwright.left." + left.id, JSON.stringify(left));
		}
		return true;
	})()`, envelope))
	enter(page, "fin_height", "11 mm")
	page.Wait(`localStorage.getItem("asked") === "x"`)
	page.Wait(`!Object.keys(localStorage).some((key) => key.startsWith("finwright.left."))`)
	openEarlier(page, "earlier-open", 50)
	names := browser.Eval[[]string](page, rows+`.map((row) => row.querySelector("[data-part=name]").textContent)`)
	if len(names) != 50 || names[0] != cases.First().Title || names[1] != "work 59" || names[49] != "work 11" {
		t.Errorf("%d: %q", len(names), names)
	}
	page.Click(id("earlier-close"))
	page.Reload()
	page.WaitMark("finwright:drawn")
	enter(page, "fin_height", "12 mm")
	openEarlier(page, "earlier-open", 50)
	if asked := browser.Eval[string](page, `localStorage.getItem("asked")`); asked != "x" {
		t.Errorf("lasting storage was asked for %d times", len(asked))
	}
}

// A file of several designs is held whole: one is in hand, all are kept and saved.
func TestSeveralDesigns(t *testing.T) {
	page := opened(t, browser.Desk, "")
	browser.Eval[bool](page, `(globalThis.saved = [], globalThis.named = [], HTMLAnchorElement.prototype.click = function () { named.push(this.download); },
		URL.createObjectURL = ((make) => (file) => (file.text().then((text) => saved.push(text)), make(file)))(URL.createObjectURL), true)`)
	var all []document.Document
	for _, c := range cases.List() {
		all = append(all, c.Document())
	}
	openFile(page, js(envelopeOf(t, all...)))
	waitKept(page, all[0])
	waitInHand(page, 1)
	takeItem(page, 2)
	waitKept(page, all[1])
	enter(page, "fin_height", "11 mm")
	page.Type(id("design-title"), "Second / changed")
	page.Wait(kept + `.title === "Second / changed"`)
	page.WaitText(itemRow(2)+" [data-part=name]", "Second / changed")
	page.Click(id("save"))
	page.Wait("saved.length === 1")
	got, err := document.Open([]byte(browser.Eval[string](page, "saved[0]")))
	if err != nil || len(got) != 3 || got[0].Title != all[0].Title || got[1].Fields["fin_height"].Text != "11 mm" || got[2].Title != all[2].Title {
		t.Errorf("saved are %d designs, %v", len(got), err)
	}
	day := browser.Eval[string](page, `new Date(Date.now() - new Date().getTimezoneOffset() * 60000).toISOString().slice(0, 10)`)
	if name := browser.Eval[string](page, "named[0]"); name != "Second-changed-"+day+".design.json" {
		t.Errorf("the file is named %q", name)
	}
	page.Reload()
	page.WaitMark("finwright:drawn")
	waitInHand(page, 2)
	waitTyped(page, "fin_height", "11 mm")
	// Undo brings the item that it concerns into hand.
	enter(page, "fin_height", "12 mm")
	takeItem(page, 3)
	waitKept(page, all[2])
	page.Click(id("undo"))
	waitTyped(page, "fin_height", "11 mm")
	waitInHand(page, 2)
	quiet(t, page)
}

// Who was sent a design and opens a cut link is told that what stands there is another, until he has read it.
func TestDamagedLinkIsTold(t *testing.T) {
	page := opened(t, browser.Desk, "")
	link := linkOf(t, page)
	for _, damaged := range []string{link[:len(link)/2], link[:len(link)-6] + "AAAAAA"} {
		page.Go("about:blank")
		page.Open(damaged)
		page.WaitMark("finwright:drawn")
		page.WaitText(figureOf("fin_od"), "57.15")
		page.Wait(fmt.Sprintf("%s.innerText.includes(%s)", element(id("notes")), js(message.English().Text("page.link_left"))))
		page.Wait(fmt.Sprintf("%s.innerText.includes(%s)", element(id("notes")), js(message.English().Text("open.bad_link"))))
		page.Wait(`location.hash === ""`)
	}
	browser.Eval[bool](page, "(location.hash = "+js(link)+", true)")
	page.Wait(fmt.Sprintf("!%s.innerText.includes(%s)", element(id("notes")), js(message.English().Text("page.link_left"))))
}
