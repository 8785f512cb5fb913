//go:build browser

package e2e

import (
	"encoding/json"
	"fmt"
	"strconv"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/site/browser"
	"finwright/testdata/cases"
)

// lent is the test that drives the shared tab now; the tab outlives it and closes with the browser.
type lent struct{ testing.TB }

func (*lent) Cleanup(func()) {}

var (
	desk     *browser.Page
	deskLent = &lent{}
)

// atDesk lends the shared tab to a test, with the first example on it. A test that leaves more behind than a design, or
// that needs storage of its own, opens a tab instead. What earlier tests made it complain of is forgotten, but no test may leave an
// exception that nothing caught.
func atDesk(t *testing.T) *browser.Page {
	t.Helper()
	deskLent.TB = t
	if desk == nil {
		desk = plain.Page(deskLent, browser.Desk)
		desk.Open("")
		desk.WaitMark("finwright:drawn")
	}
	if browser.Eval[bool](desk, element(id("section-surface"))+`.ariaPressed !== "true"`) {
		desk.Click(id("section-surface")) // a test that failed may have left another one
	}
	browser.Eval[any](desk, `document.querySelectorAll("#notes button").forEach((read) => read.click())`) // what a test was told
	loadExample(desk, 0)
	desk.Wait("new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))).then(() => true)")
	waitState(desk, "answered") // in a window that a test left in another size, too
	desk.Forget()
	t.Cleanup(func() {
		for _, complaint := range desk.Complaints() {
			if strings.HasPrefix(complaint, "exception:") {
				t.Error(complaint)
			}
		}
	})
	return desk
}

// step is a part of a test that has the shared tab on loan.
func step(t *testing.T, name string, do func(t *testing.T)) {
	t.Helper()
	t.Run(name, func(t *testing.T) {
		outer := deskLent.TB
		deskLent.TB = t
		defer func() { deskLent.TB = outer }()
		do(t)
	})
}

// opened is a tab of its own with the page drawn in it, as a picture; rest follows the address.
func opened(t *testing.T, view browser.View, rest string) *browser.Page {
	t.Helper()
	page := plain.Page(t, view)
	page.Open(rest)
	page.WaitMark("finwright:drawn")
	return page
}

// painted is one whose drawing is painted.
func painted(t *testing.T, view browser.View, rest string) *browser.Page {
	t.Helper()
	page := chromium.Page(t, view)
	page.Open(rest)
	page.WaitMark("finwright:painted")
	return page
}

// loadExample presses the button of an example and waits until the page keeps it.
func loadExample(page *browser.Page, index int) {
	example := cases.List()[index]
	page.Click(id("examples"))
	// The menu takes its place after it has opened, so the pointer may be too early.
	page.Wait(element(id("example-"+example.ID)) + ".click() ?? true")
	d, ok := cases.Find(example.ID)
	if !ok {
		panic("e2e: no example " + example.ID)
	}
	waitKept(page, d)
}

// waitKept waits until the browser keeps a design, which it does last of all.
func waitKept(page *browser.Page, d document.Document) {
	text, err := json.Marshal(d)
	if err != nil {
		panic(err)
	}
	page.Wait(fmt.Sprintf("JSON.stringify(%s) === JSON.stringify(%s)", kept, text))
}

// slot is the JavaScript expression for the working copy that the browser keeps of this tab, without its items.
const slot = `JSON.parse(localStorage.getItem("finwright.slot." + sessionStorage.getItem("finwright.slot")) ?? "{}")`

// storedItem is the JavaScript expression for what the browser keeps of the item in hand.
const storedItem = `(({set, item}) => JSON.parse((localStorage.getItem("finwright.item." + set + "." + item) ?? "0 null").replace(/^\S+ /, "")))(` + slot + ")"

// kept is the JavaScript expression for the design in hand that the browser keeps of this tab, laid out whole.
const kept = "(({base}, item) => base && item && {...base, ...item.design, fields: {...base.fields, ...item.design.fields}})(" + slot + ", " + storedItem + ")"

// waitTyped waits until a field holds a text, as typed, in the design that the browser keeps.
func waitTyped(page *browser.Page, field, text string) {
	page.Wait(fmt.Sprintf("%s?.fields.%s.text === %s", kept, field, js(text)))
}

// js is a JavaScript string literal.
func js(text string) string { return strconv.Quote(text) }

// id is the selector of a test id.
func id(name string) string { return `[data-testid="` + name + `"]` }

func entry(field string) string { return id("field-" + field) }

// element is the JavaScript expression for the first element of a selector.
func element(selector string) string { return "document.querySelector(" + js(selector) + ")" }

// typed is a field's text in the design that the browser keeps.
func typed(page *browser.Page, field string) string {
	return browser.Eval[string](page, kept+".fields."+field+".text")
}

// waitEntry waits until a field shows a text.
func waitEntry(page *browser.Page, field, text string) {
	page.Wait(element(entry(field)) + "?.value === " + js(text))
}

// enter types into a field, leaves it with Enter, and waits until the page keeps that.
func enter(page *browser.Page, field, text string) {
	page.Type(entry(field), text)
	waitTyped(page, field, text)
}

// choose takes one of a list, in a group that is opened for it.
func choose(page *browser.Page, selector, value string) {
	page.Wait(element(selector))
	browser.Eval[bool](page, element(selector)+`.closest(".group .in[hidden]")?.dispatchEvent(new Event("beforematch", {bubbles: true})) ?? true`)
	browser.Eval[bool](page, fmt.Sprintf(`((list) => { list.value = %s; return list.dispatchEvent(new Event("change", {bubbles: true})); })(%s)`, js(value), element(selector)))
}

// paste puts a text into a field in one piece, as the clipboard does.
func paste(page *browser.Page, field, text string) {
	page.Focus(entry(field))
	browser.Eval[bool](page, fmt.Sprintf(`(%s.select(), document.execCommand("insertText", false, %s))`, element(entry(field)), js(text)))
}

// number reads the number at the start of what a field shows.
func number(t *testing.T, page *browser.Page, field string) float64 {
	t.Helper()
	text := page.Value(entry(field))
	var x float64
	if _, err := fmt.Sscan(text, &x); err != nil {
		t.Fatalf("%s shows %q: %v", field, text, err)
	}
	return x
}
