//go:build browser

package e2e

import (
	"fmt"
	"strings"
	"testing"

	"finwright/core/field"
	"finwright/core/lesson"
	"finwright/core/shop"
	"finwright/core/units"
	"finwright/site/browser"
)

// openLearn opens the panel, whose script and style come when it is first wanted.
func openLearn(page *browser.Page) {
	page.Wait(element(id("learn-open")) + ".click() ?? true")
	page.Wait(element(id("learn")) + `?.hidden === false && document.querySelectorAll("#learn .list button").length > 0`)
}

// press presses what is in sight of the panel, wherever it is scrolled to.
func press(page *browser.Page, name string) {
	page.Wait(fmt.Sprintf("((press) => press?.checkVisibility() && !press.disabled && (press.click(), true))(%s)", element(id(name))))
}

// put types an entry of an exercise into the page, as a trainee would.
func put(page *browser.Page, e lesson.Entry) {
	if span, ok := strings.CutPrefix(e.Field, "span "); ok {
		part, number, _ := strings.Cut(span, " ")
		at := id("span-" + number + "-" + part)
		if !browser.Eval[bool](page, element(at)+" !== null") {
			press(page, "add-span")
			page.Wait(element(at))
		}
		page.Type(at, e.Text)
		page.Wait(fmt.Sprintf("%s?.spans[%s].%s.text === %s", kept, number, part, js(e.Text)))
		return
	}
	selector := entry(e.Field)
	if field.Must(e.Field).Choice != nil {
		choose(page, selector, e.Text)
	} else {
		browser.Eval[bool](page, element(selector)+`.closest(".group .in[hidden]")?.dispatchEvent(new Event("beforematch", {bubbles: true})) ?? true`)
		page.Type(selector, e.Text)
	}
	waitTyped(page, e.Field, e.Text)
}

// tried checks what is typed, and says whether the page took it as right.
func tried(page *browser.Page, typed string) bool {
	browser.Eval[bool](page, fmt.Sprintf(`((typed) => { typed.value = %s; document.querySelector("[data-testid=lesson-verdict]").textContent = ""; return true })(%s)`, js(typed), element(id("lesson-typed"))))
	press(page, "lesson-check")
	page.Wait(element(id("lesson-verdict")) + ".textContent !== ''")
	return browser.Eval[bool](page, fmt.Sprintf(`((checked) => checked.length > 1 && checked.every((row) => row.querySelector(".state").dataset.state === "good"))([...%s.children])`, element(id("lesson-checked"))))
}

// Each exercise is guessed, begun, not solved by a wrong answer and solved by the right one, all in the page; what was worked on waits, and
// what is solved stays so.
func TestExercisesInThePage(t *testing.T) {
	page := opened(t, browser.Desk, "")
	enter(page, "fin_height", "13 mm")
	house := shop.House()
	openLearn(page)
	for _, x := range lesson.Exercises {
		press(page, "lesson-"+x.ID)
		press(page, "guess-0")
		press(page, "lesson-tell")
		page.Wait(element(id("lesson-told")) + ".innerText !== ''")
		press(page, "lesson-begin")
		start := x.Document(page.Text("#learn h3"), units.SI)
		waitKept(page, start)
		typed := ""
		if x.Asked.Of != nil {
			solved := lesson.Read(x.Solved("", units.SI), &house)
			si, _ := x.Asked.Of(&lesson.Case{Start: lesson.Read(start, &house), Now: solved})
			style := units.Style{}
			typed = style.Figure(x.Asked.Kind, si, units.SI).String()
		}
		if tried(page, typed) {
			t.Errorf("%s: solved by the tube that it starts with", x.ID)
		}
		for _, e := range x.Solution {
			put(page, e)
		}
		if typed != "" && tried(page, "1") {
			t.Errorf("%s: solved with another number", x.ID)
		}
		if !tried(page, typed) {
			t.Errorf("%s: not solved with %q: %s", x.ID, typed, page.Text(id("lesson-checked")))
		}
		press(page, "lesson-back")
	}
	done := fmt.Sprintf("%d of %[1]d solved", len(lesson.Exercises))
	if got := page.Text(id("learn-progress")); got != done {
		t.Errorf("after all: %q, want %q", got, done)
	}
	press(page, "learn-own")
	waitEntry(page, "fin_height", "13 mm")
	page.Reload()
	page.WaitMark("finwright:drawn")
	openLearn(page)
	page.WaitText(id("learn-progress"), done)
}
