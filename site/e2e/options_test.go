//go:build browser

package e2e

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"finwright/core/document"
	"finwright/site/browser"
	"finwright/testdata/cases"
)

// cell is the JavaScript expression for what a line of the table of options says in a column; that in hand is 0.
func cell(line string, column int) string {
	return fmt.Sprintf("(%s?.cells[%d]?.innerText ?? \"\")", element(id("compared-"+line)), column+1)
}

// waitCell waits until a cell says a text.
func waitCell(page *browser.Page, line string, column int, text string) {
	page.Wait(cell(line, column) + ".includes(" + js(text) + ")")
}

func waitKeptCount(page *browser.Page, n int) {
	page.Wait(fmt.Sprintf("(%s?.kept?.length ?? 0) === %d && Number(%s.textContent) === %d", storedItem, n, element(id("options-count")), n))
	waitState(page, "answered")
}

// compare opens the table with designs kept at 10 and 11 fins to the inch, and 12 in hand.
func compare(page *browser.Page) {
	for i, count := range []string{"10 fpi", "11 fpi"} {
		enter(page, "fin_pitch", count)
		waitState(page, "answered")
		browser.Eval[any](page, "document.activeElement.blur()") // on a phone the curve of the entry goes
		page.Wait("!document.querySelector(\".near\")")
		page.Click(id("keep"))
		waitKeptCount(page, i+1)
	}
	enter(page, "fin_pitch", "12 fpi")
	page.Click(id("section-options"))
	waitCell(page, "fin_pitch", 2, "11 fpi")
}

// waitFins waits until the browser keeps these fin counts, of the design in hand and of those beside it.
func waitFins(t *testing.T, page *browser.Page, want string) {
	t.Helper()
	page.Wait(`((base, item) => [item, ...item.kept ?? []].map(({design}) => (design.fields?.fin_pitch ?? base.fields.fin_pitch).text).join(", "))(` + slot + ".base, " + storedItem + ") === " + js(want))
	waitState(page, "answered")
}

// One press keeps the design in hand; in the table it is taken, swapped, moved, named and removed, and undo takes each back.
func TestOptionsByPointer(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Click(id("section-options"))
	page.Wait(element(id("options-none")) + ".checkVisibility() && " + cell("fin_od", 0) + ".length > 0")
	compare(page)
	waitCell(page, "duty", 1, "%")
	page.Screenshot(shots, "options-desk")

	// What the others stand against is chosen, and is not measured against itself.
	page.Click(id("option-base-1"))
	page.Wait(cell("duty", 0) + `.includes("%") && !` + cell("duty", 1) + `.includes("%")`)
	page.Wait(element(id("options-said")) + `.textContent.includes("11 fpi against 10 fpi: ")`)

	// What it does in the place of the other is a sentence to send.
	browser.Eval[bool](page, `(globalThis.copied = "", navigator.clipboard.writeText = async (text) => { copied = text; }, true)`)
	page.Click("#options-said > li:nth-of-type(2) button")
	page.Wait(`copied.startsWith("11 fpi 0.4 mm for 10 fpi 0.4 mm: U × A up ")`)

	page.Click(id("option-take-2"))
	waitFins(t, page, "11 fpi, 10 fpi, 11 fpi")
	page.Click(id("option-swap-1"))
	waitFins(t, page, "10 fpi, 11 fpi, 11 fpi")
	page.Click(id("undo"))
	waitFins(t, page, "11 fpi, 10 fpi, 11 fpi")
	page.Click(id("option-right-1"))
	waitFins(t, page, "11 fpi, 11 fpi, 10 fpi")
	page.Type(id("option-name-2"), "as asked")
	page.Wait(storedItem + `.kept[1].name === "as asked"`)
	page.Wait(element(id("options-said")) + `.textContent.includes("as asked") || ` + element(id("option-base-2")) + `.ariaPressed === "true"`)
	page.Click(id("option-remove-1"))
	waitKeptCount(page, 1)
	waitFins(t, page, "11 fpi, 10 fpi")
	page.Click(id("undo"))
	waitFins(t, page, "11 fpi, 11 fpi, 10 fpi")

	// Kept once, a design is not kept again; five are as many as there can be.
	page.Click(id("keep"))
	for _, count := range []string{"7 fpi", "8 fpi", "9 fpi"} {
		enter(page, "fin_pitch", count)
		waitState(page, "answered")
		page.Click(id("keep"))
		page.Wait(`((item, base) => item.kept.at(-1).design.fields?.fin_pitch.text === ` + js(count) + `)(` + storedItem + `)`)
	}
	waitKeptCount(page, 5)
	page.Wait(element(id("keep")) + ".disabled")
	quiet(t, page)
}

// The same by keys: the presses of the table are one stop, through which the arrows go.
func TestOptionsByKeys(t *testing.T) {
	page := opened(t, browser.Desk, "")
	enter(page, "fin_pitch", "10 fpi")
	waitState(page, "answered")
	page.Focus(id("keep"))
	page.Press(kb.Enter)
	waitKeptCount(page, 1)
	enter(page, "fin_pitch", "11 fpi")
	page.Focus(id("section-options"))
	page.Press(kb.Enter)
	waitCell(page, "fin_pitch", 1, "10 fpi")
	waitState(page, "answered")
	page.Focus(id("option-base-0"))
	page.Press(kb.ArrowRight)
	page.Press(kb.ArrowRight)
	page.Press(kb.ArrowRight)
	page.Wait("document.activeElement.dataset.testid === \"option-swap-1\"")
	page.Press(kb.Enter)
	waitFins(t, page, "10 fpi, 11 fpi")
	page.Press("z", chromedp.ModifierCtrl)
	waitFins(t, page, "11 fpi, 10 fpi")
	page.Focus(id("options-held"))
	page.Press("n") // Nothing held
	page.Wait(element(id("options-holds")) + `.textContent.startsWith("Nothing is held")`)
	page.Focus(id("option-name-1"))
	page.Press("customer")
	page.Press(kb.Enter)
	page.Wait(storedItem + `.kept[0].name === "customer"`)

	// A value opens its working, of its own column, and gets the focus back.
	page.Wait(element(id("compared-duty")+" td:nth-of-type(2) button") + `?.ariaLabel.includes("customer")`)
	page.Focus(id("compared-duty") + " td:nth-of-type(2) button")
	page.Press(kb.Enter)
	page.Wait(element(id("working")) + `.open && document.getElementById("working-of").textContent === "customer"`)
	value := browser.Eval[string](page, element(id("compared-duty")+" td:nth-of-type(2) button")+".textContent")
	page.Wait(element(id("working-result")) + `.textContent.includes(` + js(value) + `)`)
	page.Press(kb.Escape)
	page.Wait(`document.activeElement.textContent === ` + js(value))
	quiet(t, page)
}

// What is held is made to hold, in whole tubes, and what followed is told; the other holds answer too.
func TestOptionsHold(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Click(id("keep"))
	waitKeptCount(page, 1)
	enter(page, "fin_height", "12 mm")
	page.Click(id("section-options"))
	page.Click(id("option-base-1"))
	waitCell(page, "tubes_per_row", 0, "follows")
	page.Wait(element(id("options-said")) + `.textContent.includes("tubes in a row, ")`)
	for held, line := range map[string]string{"tubes": "face_velocity", "job": "tubes_per_row", "length": "tube_length", "fan": "face_velocity"} {
		choose(page, id("options-held"), held)
		waitCell(page, line, 0, "follows")
	}
	choose(page, id("options-held"), "nothing")
	page.Wait("!" + element(id("options-table")) + `.textContent.includes("follows")`)
	waitCell(page, "duty", 0, "%")

	// What cannot be held is refused with its reason, and has no figures.
	choose(page, id("options-held"), "tubes")
	enter(page, "tube_od", "60 mm")
	page.Wait(cell("duty", 0) + `.trim() === "" && ` + cell("remarks", 0) + `.length > 20`)
	if got := browser.Eval[string](page, element(`#options-table thead th:nth-of-type(1) .state`)+".dataset.state"); got != "no" {
		t.Errorf("it is %s", got)
	}
	quiet(t, page)
}

// Kept designs go with the file and with the link, stay over a reload, and belong to their item.
func TestOptionsTravel(t *testing.T) {
	page := opened(t, browser.Desk, "")
	compare(page)
	page.Type(id("option-name-1"), "as asked")
	page.Wait(storedItem + `.kept[0].name === "as asked"`)
	link := linkOf(t, page)
	page.Reload()
	page.WaitMark("finwright:drawn")
	waitKeptCount(page, 2)
	waitFins(t, page, "12 fpi, 10 fpi, 11 fpi")
	other := opened(t, browser.Desk, link)
	waitState(other, "answered")
	other.Wait(element(id("options-count")) + `.textContent === "2"`)
	other.Click(id("section-options"))
	other.Wait(element(id("option-name-1")) + `.value === "as asked" && ` + cell("fin_pitch", 2) + `.includes("11 fpi")`)
	quiet(t, other)
	page.Click(id("items-open"))
	page.Click(id("items-add"))
	waitInHand(page, 2)
	waitKeptCount(page, 0)
	takeItem(page, 1)
	waitKeptCount(page, 2)
	quiet(t, page)

	job := document.JobOf([]document.Document{cases.First()})
	lower, err := document.Edit(job.Base, document.Command{Op: "set", Values: []document.Value{{Field: "fin_pitch", Steps: -20}}})
	if err != nil {
		t.Fatal(err)
	}
	job.Items[0].Kept = []document.Kept{{Name: "fewer", Design: lower.From(job.Base)}}
	text, err := document.SaveJob(job)
	if err != nil {
		t.Fatal(err)
	}
	openFile(page, js(string(text)))
	waitKeptCount(page, 1)
	page.Wait(storedItem + `.kept[0].name === "fewer"`)
}

// The lines are those that decide and those that are picked; what is the same in all is folded.
func TestOptionsRows(t *testing.T) {
	page := opened(t, browser.Desk, "")
	compare(page)
	page.Wait("!" + element(id("compared-strip_width")) + " && " + element(id("compared-ua")) + " && " + element(id("options-same")) + ".checkVisibility()")
	page.Click(id("options-pick-open"))
	page.Wait(element(id("pick-strip_width")) + ".checkVisibility()")
	page.Click(id("pick-strip_width"))
	page.Wait(element(id("compared-strip_width")))
	page.Press(kb.Escape)
	if browser.Eval[bool](page, "Boolean("+element(id("compared-bank_tubes"))+")") {
		t.Error("what is the same in all is not folded")
	}
	page.Click(id("options-same"))
	page.Wait(element(id("compared-bank_tubes")))
	page.Click(id("options-money"))
	page.Wait("!" + element(id("compared-price_tube")) + " && !" + element(id("options-said")) + `.textContent.includes("price")`)
	page.Reload()
	page.WaitMark("finwright:drawn")
	page.Click(id("section-options"))
	page.Wait(element(id("compared-strip_width")))
	quiet(t, page)
}

// What is kept shows as an outline behind the drawing, in every section and on paper, and goes with what is removed.
func TestKeptIsOutlined(t *testing.T) {
	page := opened(t, browser.Desk, "")
	outlines := "document.querySelectorAll('#drawing .ghost').length"
	page.Click(id("keep"))
	waitKeptCount(page, 1)
	enter(page, "fin_height", "10 mm")
	page.Wait(outlines + " > 0")
	page.Screenshot(shots, "options-ghost")
	page.Wait(`document.querySelectorAll("#paper .ghost").length > 0`)
	kept := func(plot, what string) string {
		return `document.querySelectorAll('[data-plot="` + plot + `"] .kept ` + what + `').length`
	}
	page.Wait(kept("height", "rect") + " === 2 && " + kept("height", "path") + " === 2 && " + kept("map", "rect") + " === 1")
	page.Screenshot(shots, "options-plots")
	page.Click(id("section-heat"))
	page.Wait(kept("film", "rect") + " === 2 && " + kept("film", "path") + " === 2")
	page.Screenshot(shots, "options-plots-heat")
	page.Wait(`document.body.dataset.section === "heat" && document.body.dataset.answer === "answered" && ` + outlines + " > 0")
	page.Click(id("undo"))
	page.Click(id("undo"))
	waitKeptCount(page, 0)
	page.Wait(outlines + " === 0 && " + kept("film", "rect") + " === 0")
	quiet(t, page)
}

// One entry is stepped over standard values, and what cannot be made stands refused. A rung is kept or taken, by pointer and by keys.
func TestOptionsLadder(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Click(id("section-options"))
	choose(page, id("options-ladder"), "fin_pitch")
	for i, count := range []string{"10 fpi", "7 fpi", "8 fpi", "9 fpi", "11 fpi", "12 fpi"} {
		waitCell(page, "fin_pitch", i, count)
	}
	page.Wait(element(`#options-table thead th:nth-of-type(6) .state`) + `.dataset.state === "no" && ` + cell("price", 5) + `.includes("✕")`)
	audit(t, page)
	page.Screenshot(shots, "options-ladder")
	page.Click(id("option-keep-rung-1"))
	waitKeptCount(page, 1)
	page.Click(id("option-take-rung-4"))
	waitFins(t, page, "11 fpi, 7 fpi")
	waitCell(page, "fin_pitch", 0, "11 fpi")

	page.Focus(id("options-ladder"))
	page.Press("t") // Tube metal
	page.Press("t")
	page.Wait(`!` + element(id("options-ladder")) + `.value.startsWith("fin")`)
	choose(page, id("options-ladder"), "rows")
	waitCell(page, "rows", 1, "2")
	page.Focus(id("option-base-0"))
	page.Press(kb.ArrowRight)
	page.Wait(`document.activeElement.dataset.testid === "option-take-rung-1"`)
	page.Press(kb.Enter)
	waitTyped(page, "rows", "2")
	choose(page, id("options-ladder"), "")
	waitCell(page, "fin_pitch", 1, "7 fpi")
	quiet(t, page)
}

// It has room and keeps the rules of access in a light and a dark window, on a laptop and on a phone.
func TestOptionsInEveryWindow(t *testing.T) {
	for name, view := range map[string]browser.View{
		"dark":   {Width: 1440, Height: 900, Dark: true},
		"laptop": {Width: 1280, Height: 720},
		"phone":  {Width: 390, Height: 844, Scale: 2, Mobile: true},
	} {
		t.Run(name, func(t *testing.T) {
			page := opened(t, view, "")
			fits := func() {
				if wide := browser.Eval[int64](page, "document.documentElement.scrollWidth"); wide > view.Width {
					t.Errorf("in %s the page is %d px wide", browser.Eval[string](page, "document.body.dataset.section ?? ''"), wide)
				}
			}
			for _, section := range []string{"heat", "making", "surface"} {
				page.Click(id("section-" + section))
				waitState(page, "answered")
				fits()
			}
			compare(page)
			browser.Eval[any](page, element(id("options"))+`.scrollIntoView()`)
			audit(t, page)
			fits()
			page.Screenshot(shots, "options-"+name)
			quiet(t, page)
		})
	}
}

// The table prints on one page, and nothing that is pressed.
func TestOptionsOnPaper(t *testing.T) {
	page := opened(t, browser.Desk, "")
	compare(page)
	page.Wait(onPaper("2.12"))
	text, err := os.ReadFile(page.PDF(shots, "paper-options"))
	if err != nil {
		t.Fatal(err)
	}
	if n := len(pdfPage.FindAll(text, -1)); n > 1 {
		t.Errorf("%d pages", n)
	}
	page.Resize(browser.View{Width: 703, Height: 1000}) // as wide as A4 leaves
	waitState(page, "answered")
	page.Paper()
	words := browser.Eval[string](page, `[...document.querySelectorAll("#options button, #options-said button")].filter((button) => button.checkVisibility()).map((button) => button.textContent).filter((text) => !/[0-9]/.test(text)).join(", ")`)
	if strings.TrimSpace(words) != "" {
		t.Errorf("printed are %s", words)
	}
	page.Screenshot(shots, "options-paper")
	money := func() bool {
		return browser.Eval[bool](page, `/EUR|prices of/.test([...document.querySelectorAll(".top, .decides, .status, .switch, .beside, .below")].map((part) => part.innerText).join())`)
	}
	if !money() {
		t.Error("with money none is printed")
	}
	browser.Eval[any](page, element(id("options-money"))+".click()")
	page.Wait("!" + element(id("compared-price_tube")))
	if money() {
		t.Error("without money some is printed")
	}
}
