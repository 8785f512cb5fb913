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
		// What lies half under the bar of sections would count as small: the page stands at its entries, which can be scrolled clear of it.
		browser.Eval[any](page, `document.querySelector("#entries").scrollIntoView({block: "start", behavior: "instant"})`)
		page.Wait("new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))).then(() => true)")
		audit(t, page)
	})
}

// Tab goes through everything that can be worked with, in fewer than sixty steps, shows where it is, and comes out at the end. What belongs
// to an entry is reached from it, and groups of presses are one step.
func TestTabReachesEverything(t *testing.T) {
	page := atDesk(t)
	for _, section := range []string{"enquiry", "options", "making", "heat", "surface"} {
		page.Click(id("section-" + section))
		page.Wait(js(section) + ` !== "enquiry" || !` + element(id("enquiry-read")) + ".disabled") // its script has come
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
		for range 2 { // the links past what comes first, which lie before where this began
			page.Press(kb.Tab)
			browser.Eval[bool](page, look)
		}
		missed := browser.Eval[[]string](page, `[...document.querySelectorAll("a[href], button, input, select, summary, [tabindex]:not([tabindex='-1'])")]
			.filter((e) => !(e.tabIndex < 0 && e.closest(".field, .header, #status, #tools, #zoom, #sections, #headline, #groups, #cards, #methods, #resistances, #making-lines, #options-table, #options-said"))).filter((e) => e.checkVisibility({visibilityProperty: true}) && !e.disabled && !reached.has(e)).map((e) => e.outerHTML.slice(0, 160))`)
		for _, element := range missed {
			t.Errorf("%s: Tab misses %s", section, element)
		}
		for _, element := range browser.Eval[[]string](page, "[...dim].map((e) => e.outerHTML.slice(0, 160))") {
			t.Errorf("%s: focus cannot be seen on %s", section, element)
		}
		if n := browser.Eval[int](page, "reached.size"); n < 30 || n >= 60 {
			t.Errorf("%s: %d places", section, n)
		} else {
			t.Logf("%s: %d places", section, n)
		}
	}
	for _, name := range []string{grip("tip"), grip("tube"), grip("wall"), grip("pitch"), grip("strip"), canvas("height"), canvas("pitch"), canvas("map"), entry("fin_height")} {
		if !browser.Eval[bool](page, "reached.has("+element(name)+")") {
			t.Errorf("Tab misses %s", name)
		}
	}
	for _, group := range []string{"#tools", "#zoom", "#sections", "#headline", "#groups"} {
		if !browser.Eval[bool](page, `[...reached].some((e) => e.closest(`+js(group)+`))`) {
			t.Errorf("Tab misses %s", group)
		}
	}
}

// Arrows go through presses that are one step of the Tab key, and an entry leads to its meaning and its origin.
func TestKeysReachWhatTabPasses(t *testing.T) {
	page := atDesk(t)
	at := func() string {
		return browser.Eval[string](page, "document.activeElement.dataset.testid ?? document.activeElement.textContent")
	}
	page.Focus(id("examples"))
	page.Press(kb.ArrowRight)
	if got := at(); got != "earlier-open" {
		t.Errorf("right of the examples is %s", got)
	}
	page.Press(kb.End)
	if got := at(); got != "print" {
		t.Errorf("the last tool is %s", got)
	}
	page.Press(kb.Home)
	if got := at(); got != "way-work" {
		t.Errorf("the first tool is %s", got)
	}
	browser.Eval[bool](page, `(document.querySelector("#groups .name[tabindex='0']").focus(), true)`)
	first := at()
	page.Press(kb.ArrowDown)
	if got := at(); got == first || !browser.Eval[bool](page, `document.activeElement.matches("#groups .name")`) {
		t.Errorf("below %s is %s", first, got)
	}
	page.Focus(entry("fin_height"))
	page.Press(kb.F1)
	page.Wait(`document.querySelector("#help-fin_height").matches(":popover-open")`)
	page.Press(kb.Escape)
	page.Focus(entry("fin_height"))
	page.Press(kb.F2)
	if got := at(); got != "origin-fin_height" {
		t.Errorf("F2 leads to %s", got)
	}
	page.Press(kb.F2)
	if got := at(); got != "field-fin_height" {
		t.Errorf("back leads to %s", got)
	}
	page.Focus(id("skip-drawing"))
	page.Press(kb.Enter)
	page.Press(kb.Tab)
	if !browser.Eval[bool](page, `document.activeElement.matches("#drawing .overlay")`) {
		t.Errorf("past the entries is %s", at())
	}
	browser.Eval[bool](page, `(history.replaceState(null, "", location.pathname), true)`)
}
