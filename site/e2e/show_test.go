//go:build browser

package e2e

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

// inShow waits until Show is on, answered and told, with its sliders.
func inShow(page *browser.Page) {
	inWay(page, "show")
	page.Wait(`document.querySelectorAll(".tile .value").length >= 4 && document.querySelector(".slide input") && document.querySelector("#leave dl")`)
	waitState(page, "answered")
}

// places is the JavaScript for where everything of Show stands, rounded to a pixel.
const places = `[...document.querySelectorAll(".show .bar, .tile, .tile > *, .slide, .slide > input, .saying, #show-said, #show-held, #sheet, #drawing")].map((e) => [e.className || e.id, ...["left", "top", "width", "height"].map((of) => Math.round(e.getBoundingClientRect()[of]))].join(" ")).filter((of) => !of.startsWith("amount"))`

// squeezed is the JavaScript for what of Show is cut off or lies outside the window.
const squeezed = `[...document.querySelectorAll(".show :is(h2, button, label, output, .name, .amount, .under, #show-said, #show-held, .saying, .readings)")].filter((e) => e.checkVisibility() && e.textContent.trim())
	.filter((e) => { const {left, right, top, bottom} = e.getBoundingClientRect(); return e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0 || e.matches(".saying, .readings") && e.scrollHeight > e.clientHeight + 1 || left < -1 || right > innerWidth + 1 || top < -1 || bottom > innerHeight + 1; })
	.map((e) => (e.dataset.testid || e.id || e.className || e.tagName) + ": " + e.textContent.trim().slice(0, 60))`

// Show fills the screen at every size: its figures are a twentieth of it and more high, nothing is cut off, and while a slider is pulled
// over the standard steps nothing moves and one announcement is made.
func TestShowAtEverySize(t *testing.T) {
	page := atDesk(t)
	t.Cleanup(func() { page.Resize(browser.Desk) })
	page.Press(kb.F9)
	inShow(page)
	t.Cleanup(func() {
		page.Click(id("show-leave"))
		inWay(page, "work")
	})
	page.Click(id("show-keep"))
	page.Wait(element(id("show-which")) + `.textContent === "Kept 1 of 1"`)
	for i, view := range []browser.View{{Width: 1280, Height: 720}, {Width: 820, Height: 1180}, {Width: 390, Height: 844}, {Width: 1920, Height: 1080, Dark: true}, {Width: 1180, Height: 820}} {
		step(t, fmt.Sprintf("%dx%d", view.Width, view.Height), func(t *testing.T) {
			page.Resize(view)
			page.Wait(fmt.Sprintf("innerWidth === %d", view.Width))
			waitState(page, "answered")
			page.Wait("new Promise((resolve) => setTimeout(resolve, 900)).then(() => true)") // the scales hold from then on
			// A digit of this family is seven tenths of its letters high; in the hand the letters are a twentieth.
			share := browser.Eval[float64](page, `Math.min(...[...document.querySelectorAll(".tile .value")].map((e) => parseFloat(getComputedStyle(e).fontSize))) / innerHeight`)
			if digit := share * 0.7; view.Width > 500 && digit < 0.05 || share < 0.05 {
				t.Errorf("letters %g of the height", share)
			}
			if browser.Eval[bool](page, `document.documentElement.scrollWidth > innerWidth || document.documentElement.scrollHeight > innerHeight`) {
				t.Error("the screen does not hold it")
			}
			for _, cut := range browser.Eval[[]string](page, squeezed) {
				t.Errorf("cut off: %s", cut)
			}
			before := browser.Eval[[]string](page, places)
			browser.Eval[bool](page, `(globalThis.said = [], new MutationObserver((list) => said.push(...list.map(({target}) => (target.parentElement ?? target).textContent))).observe(document.querySelector("#summary"), {subtree: true, childList: true, characterData: true}), true)`)
			slider := id("slide-fin_pitch")
			at := browser.Eval[browser.Point](page, `(() => { const e = `+element(slider)+`, {left, top, width, height} = e.getBoundingClientRect(), thumb = 24; return {x: left + thumb / 2 + (width - thumb) * e.value / e.max, y: top + height / 2}; })()`)
			by := float64(view.Width) / 8
			if i%2 == 1 {
				by = -by
			}
			page.Grab(at)
			for _, share := range []float64{0.3, 0.7, 1, 1.4} {
				page.Pull(at, browser.Point{X: at.X + share*by, Y: at.Y}, 3)
				if after := browser.Eval[[]string](page, places); strings.Join(after, "\n") != strings.Join(before, "\n") {
					t.Fatalf("pulled, it moves: %v", different(before, after))
				}
			}
			page.Drop(browser.Point{X: at.X + 1.4*by, Y: at.Y})
			waitState(page, "answered")
			page.Wait(`said.length > 0`)
			if after := browser.Eval[[]string](page, places); strings.Join(after, "\n") != strings.Join(before, "\n") {
				t.Errorf("let go, it moves: %v", different(before, after))
			}
			page.Wait(`!document.querySelector("#show").matches(".asking")`)
			count := browser.Eval[string](page, element(slider)+`.parentElement.querySelector("output").textContent.split(", ").at(-1)`)
			if said := page.Text(id("show-said")); count != "10 fpi" && !strings.Contains(said, count) {
				t.Errorf("of %s it is said: %s", count, said)
			}
			if n := browser.Eval[int](page, "new Set(said).size"); n != 1 {
				t.Errorf("%d announcements", n)
			}
			page.Screenshot(shots, fmt.Sprintf("show-%d", view.Width))
			if i == 0 || view.Dark {
				audit(t, page)
			}
		})
	}
}

func different(a, b []string) (out []string) {
	for i := range min(len(a), len(b)) {
		if a[i] != b[i] {
			out = append(out, a[i]+" -> "+b[i])
		}
	}
	return out
}

// With keys alone: entered, two entries slid, a design kept, kept ones gone through by a presenter's keys, a price turned on, and left.
func TestShowByKeys(t *testing.T) {
	page := atDesk(t)
	page.Press(kb.F9)
	inShow(page)
	if browser.Eval[bool](page, `document.body.innerText.includes("EUR")`) {
		t.Error("a price is shown that nobody turned on")
	}
	page.Focus(id("slide-fin_height"))
	page.Press(kb.ArrowLeft)
	page.Wait(kept + `.fields.fin_height.text !== "5/8 in" && ` + element(id("show-duty")) + `.textContent !== ""`)
	page.Focus(id("show-keep"))
	page.Press(kb.Enter)
	page.Wait(element(id("show-which")) + `.textContent === "Kept 1 of 1"`)
	page.Focus(id("slide-fin_pitch"))
	page.Press(kb.ArrowRight)
	page.Wait(element(id("show-said")) + `.textContent.startsWith("10 fpi against 11 fpi: ") && ` + element(id("show-held-said")) + `.textContent.startsWith("Held: ")`)
	page.Focus(id("show-keep"))
	page.Press(kb.Enter)
	page.Wait(element(id("show-which")) + `.textContent === "Kept 2 of 2"`)
	page.Press(kb.PageDown)
	page.Wait(element(id("show-which")) + `.textContent === "Kept 1 of 2"`)
	page.Press(kb.PageUp)
	page.Wait(element(id("show-which")) + `.textContent === "Kept 2 of 2"`)
	page.Focus(id("show-choose-open"))
	page.Press(kb.Enter)
	page.Wait(element("#show-choose") + `.matches(":popover-open")`)
	page.Focus(id("show-price"))
	page.Press(" ")
	page.Press(kb.Escape)
	inWay(page, "show") // the list alone was shut
	page.Wait(element(id("show-price_tube")) + `?.textContent.includes("EUR") && ` + element(id("show-term")) + `.textContent.startsWith("Price of ")`)
	for _, word := range []string{"mark-up", "Mark-up", "Line 1", "cost"} {
		if browser.Eval[bool](page, `document.body.innerText.includes(`+js(word)+`)`) {
			t.Errorf("%s is shown", word)
		}
	}
	page.Press(kb.Escape)
	inWay(page, "work")
	if browser.Eval[bool](page, `document.querySelector(".tile")?.checkVisibility() === true`) {
		t.Error("figures of Show stand in the way of work")
	}
}
