//go:build browser

package e2e

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"

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

// helped opens an exercise with all that it has to say.
func helped(page *browser.Page, exercise string) {
	press(page, "lesson-"+exercise)
	press(page, "guess-1")
	press(page, "lesson-tell")
	page.Wait(element(id("lesson-told")) + ".innerText !== ''")
	press(page, "lesson-begin")
	page.Wait(element(id("learn-own")) + ".checkVisibility() && document.body.dataset.answer === 'answered'")
	tried(page, "1")
	press(page, "lesson-hint")
	press(page, "lesson-hint")
	press(page, "lesson-answer")
	page.Wait(element(id("lesson-worked")) + ".checkVisibility()")
}

// Numbers of an explanation are pulled and stepped, and sentences, curve and entries follow, one step of undo each; the panel is sound to a screen
// reader and nothing in it lacks room, on a desk, in the dark and on a phone.
func TestExplanationsMove(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openLearn(page)
	page.Wait(element(id("learn-first")) + ".checkVisibility()")
	helped(page, "double")
	audit(t, page)
	page.Screenshot(shots, "learn")
	press(page, "worked-used_area")
	page.Wait(element(id("working")) + ".open && " + element(id("working-result")) + `.textContent.includes("1.462")`)
	page.Click(id("working-close"))
	press(page, "learn-own")
	waitEntry(page, "fin_height", "15.875 mm")

	press(page, "learn-stories")
	text := element(id("story-text")) + "?.innerText"
	page.Wait(text + `?.includes("15.875 mm")`)
	press(page, "story-efficiency")
	page.Wait("document.body.dataset.answer === 'answered' && document.body.dataset.section === 'heat'")
	was := browser.Eval[string](page, element("#learn .line")+`.getAttribute("d")`)
	page.Focus(id("pull-fin_height"))
	page.Press(kb.ArrowUp)
	waitTyped(page, "fin_height", "16 mm")
	page.Wait(text + `.includes("16 mm")`)
	page.Wait(element("#learn .line") + `.getAttribute("d") !== ` + js(was))
	from := page.Centre(id("pull-fin_height"))
	page.Drag(from, moved(from, -60, 0), 6)
	page.Wait(`parseFloat(` + kept + `.fields.fin_height.text) < 16`)
	page.Wait(text + `.includes(` + kept + `.fields.fin_height.text)`)
	page.Click(id("undo"))
	waitTyped(page, "fin_height", "16 mm")
	audit(t, page)
	page.Screenshot(shots, "learn-story")

	press(page, "story-winding")
	page.Wait(text + `.includes("120 times slower")`) // 1200 rpm, a turn in 6 s
	at := func() string {
		return browser.Eval[string](page, `[...`+element(id("winding"))+`.querySelectorAll("g[transform]")].map((part) => part.getAttribute("transform")).join()`)
	}
	still := at()
	page.Wait("new Promise((resolve) => setTimeout(() => resolve(true), 150))")
	if at() != still {
		t.Error("the winding runs by itself")
	}
	press(page, "winding-step")
	page.Wait(`[...` + element(id("winding")) + `.querySelectorAll("g[transform]")].some((part) => part.getAttribute("transform").startsWith("rotate(-90 "))`)
	press(page, "winding-run")
	page.Wait(`![...` + element(id("winding")) + `.querySelectorAll("g[transform]")].some((part) => part.getAttribute("transform").startsWith("rotate(-90 "))`)
	press(page, "winding-run")
	still = at()
	page.Wait("new Promise((resolve) => setTimeout(() => resolve(true), 150))")
	if at() != still {
		t.Error("the winding goes on when it is paused")
	}
	if browser.Eval[bool](page, element(id("growth"))+".checkVisibility()") {
		t.Error("growth is drawn of a tube that has none")
	}
	put(page, lesson.Entry{Field: "fin_type", Text: "embedded"})
	put(page, lesson.Entry{Field: "tube_wall", Text: "12 BWG"})
	page.Wait(element(id("growth")) + `.checkVisibility() && ` + element(id("growth")+" .finned") + " !== null")
	drawn := browser.Eval[string](page, element(id("growth"))+".innerHTML")
	press(page, "winding-step")
	page.Wait(element(id("growth")) + ".innerHTML !== " + js(drawn))
	page.Screenshot(shots, "learn-winding")
	page.Resize(browser.View{Width: 1440, Height: 900, CalmMotion: true})
	page.Wait("!" + element(id("winding-run")) + ".checkVisibility() && " + element(id("winding-step")) + ".checkVisibility()")

	for name, view := range map[string]browser.View{"dark": {Width: 1440, Height: 900, Dark: true}, "low": {Width: 1280, Height: 720}, "phone": {Width: 390, Height: 844, Dark: true}} {
		page.Resize(view)
		page.Wait("document.documentElement.scrollWidth <= innerWidth")
		for _, part := range []string{"learn-exercises", "learn-stories"} {
			press(page, part)
			page.Wait(element("#learn [data-tab='"+strings.TrimPrefix(part, "learn-")+"']") + `.ariaPressed === "true"`)
			for _, what := range browser.Eval[[]string](page, clipped) {
				t.Errorf("%s: no room for %s", name, what)
			}
			if view.Dark {
				audit(t, page)
			}
		}
		page.Screenshot(shots, "learn-"+name)
	}
	press(page, "learn-close")
	page.Wait("!(" + element(id("learn")) + ".checkVisibility()) && document.activeElement === " + element(id("learn-open")))
}
