//go:build browser

package e2e

import (
	"bytes"
	"compress/flate"
	"encoding/base64"
	"fmt"
	"math"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/site/browser"
	"finwright/testdata/cases"
)

// linkOf presses the button and returns what the clipboard got.
func linkOf(t *testing.T, page *browser.Page) string {
	t.Helper()
	browser.Eval[bool](page, `(globalThis.copied = "", navigator.clipboard.writeText = async (text) => { copied = text; }, true)`)
	page.Click(id("links-open"))
	page.Click(id("link"))
	page.Wait(`copied.includes("#l=")`)
	_, fragment, _ := strings.Cut(browser.Eval[string](page, "copied"), "#")
	return "#" + fragment
}

func TestLinkOpensInAnotherProfile(t *testing.T) {
	page := atDesk(t)
	enter(page, "fin_height", "7/16 in")
	page.Type(id("design-title"), "Ünusual <b>tube</b>")
	page.Wait(kept + `.title === "Ünusual <b>tube</b>"`)
	sent := browser.Eval[string](page, "JSON.stringify("+kept+")")
	link := linkOf(t, page)
	if len(link) > 1900 {
		t.Errorf("a link of %d letters is cut by some mails", len(link))
	}

	other := opened(t, browser.Desk, link)
	other.Wait("JSON.stringify(" + kept + ") === " + js(sent))
	if title := other.Value(id("design-title")); title != "Ünusual <b>tube</b>" {
		t.Errorf("title %q", title)
	}
	other.Wait(`location.hash === ""`)

	// It was opened over the first example, which undo brings back.
	other.Click(id("undo"))
	waitKept(other, cases.First())
	quiet(t, other)

	// What is kept outlasts the page, and a link over it does not lose it, also when the tab goes on with the link.
	enter(other, "fin_height", "13 mm")
	other.Reload()
	other.WaitMark("finwright:figures")
	waitEntry(other, "fin_height", "13 mm")
	other.Wait(element(id("undo")) + ".disabled")
	other.WaitMark("finwright:drawn")
	browser.Eval[bool](other, "(location.hash = "+js(link)+", true)")
	waitTyped(other, "fin_height", "7/16 in")
	other.Reload()
	other.WaitMark("finwright:drawn")
	if got := number(t, other, "fin_height"); math.Abs(got-11.1125) > 0.01 {
		t.Errorf("after a reload the fin of the link is %g mm high", got)
	}
	next := other.Beside()
	next.Open("")
	waitEntry(next, "fin_height", "13 mm")

	// Where the clipboard is barred, the address line has the link.
	browser.Eval[bool](other, `(navigator.clipboard.writeText = () => Promise.reject(new Error("barred")), true)`)
	other.Click(id("links-open"))
	other.Click(id("link"))
	other.Wait(`location.hash.startsWith("#l=")`)
}

// bomb is a small link that inflates without end.
func bomb(t *testing.T) string {
	t.Helper()
	var packed bytes.Buffer
	w, err := flate.NewWriter(&packed, flate.BestCompression)
	if err != nil {
		t.Fatal(err)
	}
	for range 256 {
		if _, err := w.Write(bytes.Repeat([]byte(" "), 1<<20)); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return "#d=" + base64.RawURLEncoding.EncodeToString(packed.Bytes())
}

func TestHostileLinks(t *testing.T) {
	page := atDesk(t)
	enter(page, "fin_height", "12 mm")
	for name, link := range map[string]string{
		"empty":    "#d=",
		"garbage":  "#d=%00<script>alert(1)</script>",
		"base64":   "#d=" + base64.RawURLEncoding.EncodeToString([]byte("no deflate")),
		"megabyte": "#d=" + strings.Repeat("A", 1<<20),
		"bomb":     bomb(t),
	} {
		step(t, name, func(t *testing.T) {
			browser.Eval[bool](page, "(location.hash = "+js(link)+", true)")
			page.Wait(`location.hash === ""`)
			page.Wait(fmt.Sprintf("/damaged|not a design/.test(%s.textContent)", element(id("status"))))
			waitTyped(page, "fin_height", "12 mm")
			// The page goes on: what is wrong and what is measured takes the place of the message.
			page.Type(entry("fin_height"), "high")
			page.Wait(element(id("status")) + `.textContent.includes("One entry")`)
			enter(page, "fin_height", "11 mm")
			page.WaitText(figureOf("fin_od"), "47.40")
			enter(page, "fin_height", "12 mm")
		})
	}
}

// openFile gives the page a file as the chooser does.
func openFile(page *browser.Page, expression string) {
	page.Wait(element(id("open-file")))
	browser.Eval[bool](page, fmt.Sprintf(`(() => {
		const files = new DataTransfer();
		files.items.add(new File([%s], "some.json"));
		const input = %s;
		input.files = files.files;
		return input.dispatchEvent(new Event("change"));
	})()`, expression, element(id("open-file"))))
}

func TestFiles(t *testing.T) {
	page := atDesk(t)
	second := cases.List()[1]
	d, _ := cases.Find(second.ID)
	text, err := document.Save([]document.Document{d})
	if err != nil {
		t.Fatal(err)
	}
	openFile(page, js(string(text)))
	waitKept(page, d)
	page.Click(id("undo"))
	waitKept(page, cases.First())

	newer := strings.Replace(string(text), fmt.Sprintf(`"version": %d`, document.Version), `"version": 99`, 1)
	for name, file := range map[string]struct{ content, told string }{
		"page":        {js("<!doctype html><script>alert(1)</script>"), "not a design file"},
		"huge":        {`'{"format":"finwright-design","version":2,"designs":[' + "9,".repeat(1 << 21) + '9]}'`, "between 1 and 20"},
		"newer":       {js(newer), "newer version"},
		"binary":      {"new Uint8Array(4096).map((_, i) => i)", "not a design file"},
		"field gone":  {js(strings.Replace(string(text), `"fin_height"`, `"fin_depth"`, 1)), "damaged"},
		"outsized":    {js(strings.Replace(string(text), d.Title, strings.Repeat("x", 1<<20), 1)), "damaged"},
		"other thing": {js(`{"format":"recipe","version":1}`), "not a design of this program"},
	} {
		step(t, name, func(t *testing.T) {
			openFile(page, file.content)
			page.Wait(fmt.Sprintf("%s.textContent.includes(%s)", element(id("status")), js(file.told)))
			waitKept(page, cases.First())
			enter(page, "fin_height", "11 mm")
			page.WaitText(figureOf("fin_od"), "47.40")
			page.Click(id("undo"))
			waitKept(page, cases.First())
		})
	}
}

// What was wrong with a file is not said of the next.
func TestGoodFileEndsAnOldError(t *testing.T) {
	page := atDesk(t)
	text, err := document.Save([]document.Document{cases.First()})
	if err != nil {
		t.Fatal(err)
	}
	openFile(page, js("od;wall"))
	page.Wait(element(id("status")) + `.textContent.includes("not a design file")`)
	openFile(page, js(string(text)))
	page.Wait("!" + element(id("status")) + `.textContent.includes("not a design file")`)
}

// Where storage is barred the page works, and says that nothing is kept.
func TestNothingIsKeptWhereStorageIsBarred(t *testing.T) {
	page := plain.Page(t, browser.Desk)
	page.Before(`Storage.prototype.setItem = Storage.prototype.getItem = () => { throw new DOMException("barred", "SecurityError"); }`)
	page.Open("")
	page.WaitMark("finwright:drawn")
	page.Type(entry("fin_height"), "11 mm")
	page.WaitText(figureOf("fin_od"), "47.40")
	page.Wait(`document.querySelector("#notes").textContent.includes("Save it as a file")`)
	quiet(t, page)
}

// What storage takes after a time of taking nothing is found again: the tab has a name for it by then.
func TestStorageThatRecoversIsGoneOnWith(t *testing.T) {
	page := plain.Page(t, browser.Desk)
	page.Before(`const {setItem} = Storage.prototype;
		Storage.prototype.setItem = function (...args) { if (globalThis.full ??= performance.navigation.type === 0) throw new DOMException("full", "QuotaExceededError"); return setItem.apply(this, args); }`)
	page.Open("")
	page.WaitMark("finwright:drawn")
	page.Wait(`document.querySelector("#notes").textContent.includes("store is full")`)
	browser.Eval[bool](page, "(globalThis.full = false, true)")
	enter(page, "fin_height", "13 mm") // waits for it in the slot that the tab has the name of
	page.Wait(`!document.querySelector("#notes").textContent.includes("store is full")`)
	page.Reload()
	page.WaitMark("finwright:figures")
	waitEntry(page, "fin_height", "13 mm")
}

// Each tab has a working copy of its own, also a tab that is a copy of another.
func TestTabsKeepTheirOwnDesigns(t *testing.T) {
	page := opened(t, browser.Desk, "")
	enter(page, "fin_height", "13 mm")
	copied := page.Beside()
	copied.Before(`if (!sessionStorage.getItem("finwright.slot")) sessionStorage.setItem("finwright.slot", ` + js(browser.Eval[string](page, `sessionStorage.getItem("finwright.slot")`)) + `)`)
	copied.Open("")
	copied.WaitMark("finwright:drawn")
	waitEntry(copied, "fin_height", "13 mm")
	enter(copied, "fin_height", "14 mm")
	enter(page, "fin_height", "12 mm")
	for tab, want := range map[*browser.Page]string{page: "12 mm", copied: "14 mm"} {
		tab.Reload()
		tab.WaitMark("finwright:drawn")
		waitEntry(tab, "fin_height", want)
	}
	// A new tab goes on with what was worked on last, in the same slot once that is nobody's.
	const mine = `sessionStorage.getItem("finwright.slot")`
	enter(copied, "fin_height", "11 mm")
	left := browser.Eval[string](copied, mine)
	for _, closed := range []bool{false, true} {
		if closed {
			copied.Close()
			page.Wait(`navigator.locks.query().then(({ held }) => !held.some(({ name }) => name === "finwright.slot " + ` + js(left) + `))`)
		}
		next := page.Beside()
		next.Open("")
		next.WaitMark("finwright:drawn")
		waitEntry(next, "fin_height", "11 mm")
		if taken := browser.Eval[string](next, mine) == left; taken != closed {
			t.Errorf("closed: %v, slot taken up: %v", closed, taken)
		}
		next.Close()
	}
}

// What was entered is kept before the engine is asked: a reload right after Enter loses nothing.
func TestReloadAfterEnterLosesNothing(t *testing.T) {
	page := opened(t, browser.Desk, "")
	browser.Eval[bool](page, `(() => {
		const field = document.querySelector("[data-testid=field-fin_height]");
		field.focus();
		field.value = "13 mm";
		field.dispatchEvent(new Event("input", { bubbles: true }));
		field.dispatchEvent(new Event("change", { bubbles: true }));
		globalThis.gone = true;
		location.reload();
		return true;
	})()`)
	page.Wait("globalThis.gone === undefined")
	page.WaitMark("finwright:drawn")
	waitEntry(page, "fin_height", "13 mm")
	waitTyped(page, "fin_height", "13 mm")
}

// What earlier versions of the page kept is taken over once.
func TestOldKeysAreTakenOver(t *testing.T) {
	page := opened(t, browser.Desk, "")
	second := cases.List()[1].Document()
	saved := func(d document.Document) string {
		text, err := document.Save([]document.Document{d})
		if err != nil {
			t.Fatal(err)
		}
		return js(string(text))
	}
	waitRested(page, "") // else it writes again what is cleared
	browser.Eval[bool](page, `(sessionStorage.clear(), localStorage.clear(), localStorage.setItem("finwright.design", `+saved(second)+`), localStorage.setItem("finwright.design.unreadable", "{half a"), true)`)
	page.Reload()
	page.WaitMark("finwright:drawn")
	waitKept(page, second)
	page.Wait(`localStorage.getItem("finwright.design") === null && localStorage.getItem("finwright.design.unreadable") === null`)
	third := cases.List()[2].Document()
	waitRested(page, "")
	browser.Eval[bool](page, `(sessionStorage.clear(), sessionStorage.setItem("finwright.design", `+saved(third)+`), true)`)
	page.Reload()
	page.WaitMark("finwright:drawn")
	waitKept(page, third)
}
