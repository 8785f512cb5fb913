//go:build browser

package e2e

import (
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

func audit(t *testing.T, page *browser.Page) {
	t.Helper()
	for _, found := range page.Audit(site) {
		for _, node := range found.Nodes {
			t.Errorf("%s (%s): %s\n%s\n%s", found.ID, found.Impact, found.Help, node.HTML, node.FailureSummary)
		}
	}
}

func TestAccessibilityRules(t *testing.T) {
	page := atDesk(t)
	step(t, "light", func(t *testing.T) { audit(t, page) })
	step(t, "heat", func(t *testing.T) {
		page.Click(id("section-heat"))
		page.Wait(element(id("methods")) + ".rows.length > 0 && " + element(canvas("film")) + ".ariaLabel && " + element(canvas("yield_pitch")) + ".ariaLabel")
		audit(t, page)
		page.Screenshot(shots, "heat")
		page.Click(id("section-surface"))
	})
	step(t, "invalid entry", func(t *testing.T) {
		page.Type(entry("fin_height"), "tall")
		page.Wait(element(id("error-fin_height")) + ".textContent !== ''")
		audit(t, page)
		page.Screenshot(shots, "invalid")
		enter(page, "fin_height", "15 mm")
	})
	step(t, "working", func(t *testing.T) {
		page.Click(id("figure-fin_efficiency") + " .name")
		page.Wait(element(id("working")) + ".open")
		audit(t, page)
		page.Screenshot(shots, "working")
		page.Click(id("working-close"))
	})
	step(t, "items", func(t *testing.T) {
		page.Click(id("items-open"))
		page.Click(id("items-copy"))
		waitInHand(page, 2)
		audit(t, page)
		page.Screenshot(shots, "items")
		page.Resize(browser.View{Width: 390, Height: 844})
		t.Cleanup(func() { page.Resize(browser.Desk) })
		page.Wait("innerWidth === 390 && document.documentElement.scrollWidth <= 390")
		audit(t, page)
		page.Screenshot(shots, "items-phone")
		page.Click(id("items-remove"))
		page.Wait(element(id("items-count")) + `.textContent === ""`)
		page.Click(id("items-open"))
	})
	step(t, "dark", func(t *testing.T) {
		page.Resize(browser.View{Width: 1440, Height: 900, Dark: true})
		t.Cleanup(func() { page.Resize(browser.Desk) })
		audit(t, page)
		page.Click(id("section-heat"))
		audit(t, page)
		page.Screenshot(shots, "heat-dark")
		page.Click(id("section-surface"))
	})
	step(t, "phone", func(t *testing.T) {
		page.Resize(browser.View{Width: 390, Height: 844})
		t.Cleanup(func() { page.Resize(browser.Desk) })
		page.Wait("innerWidth === 390 && document.documentElement.scrollWidth <= 390")
		audit(t, page)
	})
}

// Tab goes through everything that can be worked with, shows where it is, and comes out at the end.
func TestTabReachesEverything(t *testing.T) {
	page := atDesk(t)
	for _, section := range []string{"heat", "surface"} {
		page.Click(id("section-" + section))
		page.Wait(element(id("section-"+section)) + `.ariaPressed === "true"`)
		browser.Eval[bool](page, `(document.activeElement.blur(), getSelection().removeAllRanges(), document.querySelector("h1").tabIndex = -1, document.querySelector("h1").focus(), globalThis.reached = new Set(), globalThis.dim = new Set(), true)`)
		const look = `(() => {
			const at = document.activeElement;
			if (at === document.body || reached.has(at)) return false;
			reached.add(at);
			const seen = [at, at.closest(".origin"), at.querySelector(".reach")].filter(Boolean).map((e) => getComputedStyle(e))
				.some(({outlineStyle, outlineWidth, stroke}) => (outlineStyle !== "none" && parseFloat(outlineWidth) > 0) || (stroke !== "none" && at.matches(".grip")));
			if (!seen) dim.add(at);
			return true;
		})()`
		for page.Press(kb.Tab); browser.Eval[bool](page, look); page.Press(kb.Tab) {
		}
		page.Press(kb.Tab)
		browser.Eval[bool](page, look)
		missed := browser.Eval[[]string](page, `[...document.querySelectorAll("a[href], button, input, select, summary, [tabindex]:not([tabindex='-1'])")]
			.filter((e) => e.checkVisibility({visibilityProperty: true}) && !e.disabled && !reached.has(e)).map((e) => e.outerHTML.slice(0, 160))`)
		for _, element := range missed {
			t.Errorf("%s: Tab misses %s", section, element)
		}
		for _, element := range browser.Eval[[]string](page, "[...dim].map((e) => e.outerHTML.slice(0, 160))") {
			t.Errorf("%s: focus cannot be seen on %s", section, element)
		}
		if n := browser.Eval[int](page, "reached.size"); n < 60 {
			t.Errorf("%s: only %d places", section, n)
		}
	}
	for _, name := range []string{grip("tip"), grip("tube"), grip("wall"), grip("pitch"), grip("strip"), canvas("height"), canvas("pitch"), canvas("map"), entry("fin_height"), id("save")} {
		if !browser.Eval[bool](page, "reached.has("+element(name)+")") {
			t.Errorf("Tab misses %s", name)
		}
	}
}
