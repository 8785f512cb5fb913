//go:build browser

package e2e

import (
	"fmt"
	"math"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

func canvas(plot string) string { return id("plot-"+plot) + " .canvas" }

// within is a place in a plot, in shares of its width and height.
func within(page *browser.Page, plot string, right, down float64) browser.Point {
	page.Centre(canvas(plot))
	return browser.Eval[browser.Point](page, fmt.Sprintf(`(({x, y, width, height}) => ({X: x + %g * width, Y: y + %g * height}))(%s.getBoundingClientRect())`,
		right, down, element(canvas(plot))))
}

// The axis is even, so the middle of two places is the middle of their values, but for the pixel and the digits that a click is rounded to.
func TestClickOnACurveMovesTheDesign(t *testing.T) {
	page := atDesk(t)
	for plot, axis := range map[string]struct {
		field string
		digit float64
	}{"height": {"fin_height", 0.1}, "pitch": {"fin_pitch", 1}} {
		step(t, plot, func(t *testing.T) {
			text, before := typed(page, axis.field), page.Value(entry(axis.field))
			label := browser.Eval[string](page, element(canvas(plot))+".ariaLabel")
			at := func(right float64) float64 {
				page.ClickAt(within(page, plot, right, 0.3))
				changed(page, axis.field, before)
				got := number(t, page, axis.field)
				page.Click(id("undo"))
				waitTyped(page, axis.field, text)
				page.Wait(element(canvas(plot)) + ".ariaLabel === " + js(label))
				page.Wait("new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))).then(() => true)") // the axes follow in the next frame
				return got
			}
			low, middle, high := at(0.2), at(0.3), at(0.4) // beside the ring, which is pulled
			if low >= high || math.Abs(middle-(low+high)/2) > axis.digit+0.01*(high-low) {
				t.Errorf("at 0.2, 0.3 and 0.4 of the width %s is %g, %g and %g", axis.field, low, middle, high)
			}
		})
	}
}

// In a low window charts keep the height that their texts need, and the section scrolls to what does not fit.
func TestChartsInALowWindow(t *testing.T) {
	page := atDesk(t)
	defer page.Resize(browser.Desk)
	page.Resize(browser.View{Width: 1280, Height: 720})
	for _, section := range []string{"heat", "surface"} {
		page.Click(id("section-" + section))
		page.Wait(`[...document.querySelectorAll(".plot")].every((plot) => !plot.offsetParent || plot.querySelector(".answer")?.textContent)`)
		low := browser.Eval[[]string](page, `[...document.querySelectorAll(".plot .canvas")].filter((canvas) => canvas.offsetParent &&
			(canvas.offsetHeight < 184 || canvas.getBoundingClientRect().bottom > document.querySelector(".below").getBoundingClientRect().top + document.querySelector(".below").scrollHeight))
			.map((canvas) => canvas.parentElement.dataset.plot)`)
		if len(low) > 0 {
			t.Errorf("%s: %q are too low or cut", section, low)
		}
		page.Screenshot(shots, "low-"+section)
	}
}

// In a laptop's window Heat shows its charts whole, and Making what the order costs, without a scroll.
func TestLowWindowShowsWhatIsLookedFor(t *testing.T) {
	page := atDesk(t)
	defer page.Resize(browser.Desk)
	page.Resize(browser.View{Width: 1280, Height: 720})
	seen := func(selector string) string {
		return `[...document.querySelectorAll(` + js(selector) + `)].filter((e) => e.offsetParent && e.getBoundingClientRect().bottom > document.querySelector(".below").getBoundingClientRect().bottom + 1).map((e) => e.outerHTML.slice(0, 80))`
	}
	for section, want := range map[string]string{"heat": ".plot .canvas", "making": `#cards [data-home="cost"] .figure:nth-of-type(-n+4)`} {
		page.Click(id("section-" + section))
		page.Wait(`document.body.dataset.answer === "answered" && [...document.querySelectorAll(` + js(want) + `)].some((e) => e.offsetParent)`)
		page.Wait(seen(want) + ".length === 0")
		page.Screenshot(shots, "laptop-"+section)
	}
}

// The coloured bands of the map are still there after a look at another section.
func TestMapKeepsItsBands(t *testing.T) {
	page := atDesk(t)
	// The printer's drawing comes last of all: a new one says that the section has been shown to its end.
	turn := func(section string) {
		page.Wait(`document.querySelector("#paper svg") !== null`)
		browser.Eval[bool](page, `(globalThis.earlier = document.querySelector("#paper svg"), true)`)
		page.Click(id("section-" + section))
		page.Wait(`![null, earlier].includes(document.querySelector("#paper svg"))`)
	}
	turn("heat")
	turn("surface")
	if !browser.Eval[bool](page, `((sheet) => sheet.width > 0 && sheet.getContext("2d").getImageData(0, 0, sheet.width, sheet.height).data.some((x) => x > 0))(document.querySelector("[data-plot=map] .bands"))`) {
		t.Error("the map is blank")
	}
}

func TestClickOnTheMapSetsBoth(t *testing.T) {
	page := atDesk(t)
	height, count := number(t, page, "fin_height"), number(t, page, "fin_pitch")
	page.ClickAt(within(page, "map", 0.4, 0.6))
	page.Wait(kept + `.fields.fin_height.text !== "5/8 in"`)
	if h, n := number(t, page, "fin_height"), number(t, page, "fin_pitch"); h >= height || n >= count {
		t.Errorf("left of and below the design, height went from %g to %g and count from %g to %g", height, h, count, n)
	}
	page.Click(id("undo"))
	waitTyped(page, "fin_height", "5/8 in")
	waitTyped(page, "fin_pitch", "10 fpi")
}

func TestArrowKeysOnPlots(t *testing.T) {
	page := atDesk(t)
	for _, move := range []struct {
		plot, key, field string
		sign             float64
	}{
		{"height", kb.ArrowRight, "fin_height", 1},
		{"height", kb.ArrowLeft, "fin_height", -1},
		{"pitch", kb.ArrowRight, "fin_pitch", 1},
		{"map", kb.ArrowRight, "fin_height", 1},
		{"map", kb.ArrowDown, "fin_pitch", -1},
	} {
		page.Focus(canvas(move.plot))
		label := browser.Eval[string](page, element(canvas(move.plot))+".ariaLabel")
		before, text := number(t, page, move.field), page.Value(entry(move.field))
		page.Press(move.key)
		changed(page, move.field, text)
		if after := number(t, page, move.field); (after-before)*move.sign <= 0 {
			t.Errorf("%s, key %q: %s went from %g to %g", move.plot, move.key, move.field, before, after)
		}
		page.Wait(element(canvas(move.plot)) + ".ariaLabel !== " + js(label))
	}
}

// Axes hold while designs are compared, till somebody has them fitted.
func TestAxesHoldUntilFitted(t *testing.T) {
	page := atDesk(t)
	most := func() float64 {
		return browser.Eval[float64](page, "parseFloat("+element(canvas("height"))+".ariaValueMax)")
	}
	enter(page, "fin_height", "24 mm")
	page.Wait(element(canvas("height")) + `.ariaValueText.includes("24")`)
	wide := most()
	enter(page, "fin_height", "10 mm")
	page.Wait(element(canvas("height")) + `.ariaValueText.includes("10") && ` + element(id("fit-axes")) + ".checkVisibility()")
	if got := most(); got != wide {
		t.Errorf("the axis went from %g to %g", wide, got)
	}
	page.Screenshot(shots, "axes-held")
	page.Click(id("fit-axes"))
	page.Wait("!" + element(id("fit-axes")) + ".checkVisibility()")
	if got := most(); got >= wide {
		t.Errorf("fitted, the axis still ends at %g", got)
	}
	enter(page, "fin_height", "5/8 in")
}

// A ring is pulled to where the design shall go: it stays under the pointer, and the pull is one step.
func TestRingIsPulled(t *testing.T) {
	page := atDesk(t)
	ring := id("plot-height") + " .ring"
	before := number(t, page, "fin_height")
	from := page.Centre(ring)
	page.Grab(from)
	page.Pull(from, moved(from, 40, 0), 8)
	page.Wait("Math.abs((({x, width}) => x + width / 2)(" + element(ring) + ".getBoundingClientRect()) - " + fmt.Sprint(from.X+40) + ") < 3")
	page.Drop(moved(from, 40, 0))
	page.Wait(kept + `.fields.fin_height.text !== "5/8 in" && document.body.dataset.answer === "answered"`)
	if after := number(t, page, "fin_height"); after <= before {
		t.Errorf("pulled to the right, the height went from %g to %g", before, after)
	}
	page.Click(id("undo"))
	waitTyped(page, "fin_height", "5/8 in")
}

// What the curves say under the pointer stands where it covers none of them, and goes with the pointer.
func TestReadingCoversNoCurve(t *testing.T) {
	page := atDesk(t)
	reading := id("plot-height") + " .reading"
	page.Hover(within(page, "height", 0.4, 0.3))
	page.Wait(element(reading) + ".checkVisibility()")
	if !browser.Eval[bool](page, fmt.Sprintf("%s.getBoundingClientRect().bottom <= %s.getBoundingClientRect().top + 18", element(reading), element(canvas("height")))) {
		t.Error("the reading lies over the curves")
	}
	page.Screenshot(shots, "reading")
	page.Hover(page.Centre("h1"))
	page.Wait("!" + element(reading) + ".checkVisibility()")
}

// A plot is a control that has a name, says where it is set and by which keys it moves.
func TestPlotsAreNamedControls(t *testing.T) {
	page := atDesk(t)
	for plot, role := range map[string]string{"height": "slider", "pitch": "slider", "map": "application"} {
		got := browser.Eval[[]string](page, `(({role, ariaLabel, ariaValueNow, ariaValueText, ariaDescribedByElements: [told]}) => [role, ariaLabel, ariaValueNow ?? "", ariaValueText ?? "", told.textContent])(`+element(canvas(plot))+")")
		if got[0] != role || got[1] == "" || got[4] == "" || (role == "slider") != (got[2] != "" && got[3] != "") {
			t.Errorf("%s: %q", plot, got)
		}
	}
	page.Focus(canvas("pitch"))
	page.Press(kb.Shift)
	page.Press(kb.Tab)
	page.Press(kb.Tab, chromedp.ModifierShift)
	page.Wait(element("#keys-pitch") + ".checkVisibility()")
}
