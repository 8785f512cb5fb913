//go:build browser

package e2e

import (
	_ "embed"
	"fmt"
	"strings"
	"testing"
	"time"

	"finwright/core/drawing/ink"
	"finwright/site/browser"
)

// looks is the script that finds texts that are cut.
//
//go:embed cut.js
var looks string

// looking is a tab whose texts can be looked at.
func looking(t *testing.T, view browser.View) *browser.Page {
	t.Helper()
	page := plain.Page(t, view)
	page.Before(looks)
	page.Open("")
	page.WaitMark("finwright:drawn")
	return page
}

// waitWhole waits until no text is cut or lies on another, and says which do.
func waitWhole(t *testing.T, page *browser.Page, where string) {
	t.Helper()
	var wrong []string
	for range 30 { // charts and lines settle
		if wrong = browser.Eval[[]string](page, "texts.wrong()"); len(wrong) == 0 {
			return
		}
		time.Sleep(100 * time.Millisecond)
	}
	t.Errorf("%s:\n\t%s", where, strings.Join(wrong, "\n\t"))
}

var windows = []browser.View{{Width: 1440, Height: 900}, {Width: 1280, Height: 720}, {Width: 820, Height: 1180}, {Width: 390, Height: 844, Scale: 2, Mobile: true}}

// In no section and no usual window is a label cut, a choice longer than its list, or a text of a chart over another.
func TestNoTextIsCut(t *testing.T) {
	for _, view := range windows {
		page := looking(t, view)
		for _, section := range []string{"surface", "heat", "making"} {
			page.Click(id("section-" + section))
			waitState(page, "answered")
			where := fmt.Sprintf("%s at %d", section, view.Width)
			waitWhole(t, page, where)
			if view.Width >= 1280 {
				if small := browser.Eval[[]string](page, "texts.small(12)"); len(small) > 0 {
					t.Errorf("%s:\n\t%s", where, strings.Join(small, "\n\t"))
				}
			}
			page.Screenshot(shots, fmt.Sprintf("cut-%s-%d", section, view.Width))
		}
	}
}

// Texts grow with a window that is larger than the one that the page was made for.
func TestTextsGrowWithTheWindow(t *testing.T) {
	page := opened(t, browser.Desk, "")
	size := func() float64 {
		return browser.Eval[float64](page, `parseFloat(getComputedStyle(document.querySelector("#headline .unit")).fontSize)`)
	}
	at := size()
	page.Resize(browser.View{Width: 1920, Height: 1080})
	page.Wait("innerWidth === 1920")
	if got := size(); at < 12 || got < 1.05*at {
		t.Errorf("a unit has %g px at 1440 and %g at 1920", at, got)
	}
}

// A reader who sets lines, letters and words apart (WCAG 2.2, 1.4.12) loses no text: none is cut, and none lies on another.
func TestTextSpacing(t *testing.T) {
	for _, view := range windows[:1] {
		page := looking(t, view)
		browser.Eval[bool](page, `(() => {
			const style = new CSSStyleSheet();
			style.replaceSync("* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }");
			document.adoptedStyleSheets.push(style);
			return true;
		})()`)
		for _, section := range []string{"surface", "heat", "making"} {
			page.Click(id("section-" + section))
			waitState(page, "answered")
			waitWhole(t, page, fmt.Sprintf("%s at %d", section, view.Width))
			var wrong []string
			for range 20 {
				if wrong = browser.Eval[[]string](page, labelsApart); len(wrong) == 0 {
					break
				}
				time.Sleep(100 * time.Millisecond)
			}
			if len(wrong) > 0 {
				t.Errorf("%s, the drawing: %s", section, strings.Join(wrong, "; "))
			}
			page.Screenshot(shots, "spaced-"+section)
		}
	}
}

// luminance is the JavaScript for that of WCAG of a computed colour, and contrast for that of two.
const contrast = `globalThis.luminance = (colour) => {
	const [r, g, b] = colour.match(/[\d.]+/g).map((x) => Number(x) / (colour.startsWith("color(") ? 1 : 255)).map((x) => (x <= 0.03928 ? x / 12.92 : ((x + 0.055) / 1.055) ** 2.4));
	return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
globalThis.contrast = (a, b) => { const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y); return (high + 0.05) / (low + 0.05); };`

// Where the system forces its colours, entries keep an edge, marks are seen, and the drawing takes the same paper and ink.
func TestForcedColours(t *testing.T) {
	for _, dark := range []bool{false, true} {
		page := plain.Page(t, browser.View{Width: 1440, Height: 900, Dark: dark, Forced: true})
		page.Before(contrast)
		page.Open("")
		page.WaitMark("finwright:drawn")
		enter(page, "fin_height", "21 mm")
		page.Click(id("section-making"))
		waitState(page, "answered")
		faint := browser.Eval[[]string](page, `(() => {
			const wrong = [], paper = getComputedStyle(document.body).backgroundColor;
			if (!matchMedia("(forced-colors: active)").matches) wrong.push("colours are not forced");
			for (const e of document.querySelectorAll("input.moves, select.moves")) {
				if (!e.checkVisibility()) continue;
				const { borderBottomWidth, borderBottomStyle, borderBottomColor } = getComputedStyle(e);
				if (parseFloat(borderBottomWidth) < 1 || borderBottomStyle === "none" || contrast(borderBottomColor, paper) < 3) wrong.push(e.id + " has no edge");
			}
			let marks = 0;
			for (const e of document.querySelectorAll(".state svg")) {
				if (!e.checkVisibility()) continue;
				marks++;
				if (contrast(getComputedStyle(e).fill, paper) < 3) wrong.push("a mark is not seen: " + getComputedStyle(e).fill);
			}
			if (marks < 5) wrong.push("only " + marks + " marks");
			for (const name of ["--paper", "--ink"]) {
				const at = getComputedStyle(document.querySelector("#drawing")).getPropertyValue(name), as = getComputedStyle(document.body)[name === "--paper" ? "backgroundColor" : "color"];
				if (contrast(at, as) > 1.05) wrong.push("the drawing has " + name + " " + at + ", the page " + as);
			}
			return wrong;
		})()`)
		if len(faint) > 0 {
			t.Errorf("dark %v: %s", dark, strings.Join(faint, "; "))
		}
		page.Screenshot(shots, fmt.Sprintf("forced-%v", dark))
	}
}

// On dark paper the coolest metal of the drawing is still seen against it, in the picture too that stands in for what is painted.
func TestColdMetalIsSeenOnDarkPaper(t *testing.T) {
	page := plain.Page(t, browser.View{Width: 1440, Height: 900, Dark: true})
	page.Before(contrast)
	page.Open("")
	page.WaitMark("finwright:drawn")
	page.Click(id("section-heat"))
	page.Wait(`document.querySelectorAll(".picture .heat").length > 0`)
	seen := func(dark bool) {
		t.Helper()
		page.Wait(fmt.Sprintf(`[...document.querySelectorAll(".picture .heat")].some((e) => e.getAttribute("fill") === %s)`, js(ink.HeatColour(0, dark).Hex())))
	}
	seen(true)
	least := browser.Eval[float64](page, `Math.min(...[...document.querySelectorAll(".picture .heat")].map((e) => contrast(getComputedStyle(e).fill, getComputedStyle(document.body).backgroundColor)))`)
	if least < 3 {
		t.Errorf("the coolest metal has a contrast of %.2f", least)
	}
	page.Screenshot(shots, "heat-dark-picture")
	choose(page, id("theme"), "light")
	seen(false)
}

// Texts of the drawing and the charts grow with those of the page: 12 px at least in the window of a desk, and more in a larger one.
func TestDrawingAndChartsGrowWithTheTexts(t *testing.T) {
	page := atDesk(t)
	defer page.Resize(browser.Desk)
	size := func(view browser.View) (drawn, margin float64) {
		page.Resize(view)
		page.Wait(`parseFloat(getComputedStyle(document.querySelector("#drawing .words text")).fontSize) >= 0.77 * parseFloat(getComputedStyle(document.documentElement).fontSize)`)
		waitState(page, "answered")
		page.Wait(`document.querySelector("[data-plot=map] .bands")?.width > 0`)
		drawn = browser.Eval[float64](page, `parseFloat(getComputedStyle(document.querySelector("#drawing .words text")).fontSize)`)
		page.Wait("new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))).then(() => true)")
		margin = browser.Eval[float64](page, `((map) => map.querySelector(".bands").getBoundingClientRect().x - map.querySelector(".canvas").getBoundingClientRect().x)(document.querySelector("[data-plot=map]"))`)
		return drawn, margin
	}
	drawn, margin := size(browser.Desk)
	wide, wideMargin := size(browser.View{Width: 2560, Height: 1440})
	if drawn < 12 || wide < 1.2*drawn || wideMargin < 1.15*margin {
		t.Errorf("texts of the drawing grow from %.2f to %.2f px, what holds those of the map from %.1f to %.1f", drawn, wide, margin, wideMargin)
	}
}
