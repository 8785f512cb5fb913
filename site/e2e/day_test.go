//go:build browser

package e2e

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
	"finwright/testdata/cases"
)

// A day's work, down to a reload without a network: nothing on the console, nothing asked of another origin.
func TestWorkingDay(t *testing.T) {
	page := painted(t, browser.Desk, "")
	browser.Eval[bool](page, `(globalThis.saved = [], URL.createObjectURL = ((make) => (file) => (file.text().then((text) => saved.push(text)), make(file)))(URL.createObjectURL), true)`)
	for index := range cases.List() {
		loadExample(page, index)
		for _, section := range []string{"heat", "surface"} {
			page.Click(id("section-" + section))
			page.Wait(element(id("section-"+section)) + `.ariaPressed === "true"`)
		}
	}
	loadExample(page, 0)
	enter(page, "fin_height", "14 mm")
	at := page.Centre(grip("pitch"))
	page.Drag(at, moved(at, 10, 0), 4)
	page.Wait(kept + `.fields.fin_pitch.text !== "10 fpi"`)
	choose(page, id("map-quantity"), "used_area")
	choose(page, id("theme"), "dark")
	page.Wait(`document.documentElement.dataset.theme === "dark"`)
	page.Click(id("add-span"))
	page.Wait(element(id("span-0-centre")) + " !== null")
	page.Click(id("save"))
	page.Wait("saved.length === 1 && JSON.parse(saved[0]).base.fields.fin_height.text === '14 mm'")

	for _, name := range workings(page) {
		browser.Eval[bool](page, "("+element(name)+".click(), true)")
		page.Wait(element(id("working")) + ".open && " + element(id("working-result")) + ".textContent !== ''")
		page.Press(kb.Escape)
		page.Wait("!" + element(id("working")) + ".open")
		page.Wait("document.activeElement === " + element(name))
	}

	page.Wait(`navigator.serviceWorker.getRegistration().then((found) => found?.active?.state === "activated")`)
	chromium.Offline(true)
	t.Cleanup(func() { chromium.Offline(false) })
	page.Reload()
	page.WaitMark("finwright:painted")
	waitEntry(page, "fin_height", "14 mm")
	if strings.TrimSpace(page.Text(figureOf("fin_od"))) == "" {
		t.Error("no figures without a network")
	}
	for _, complaint := range page.Complaints() {
		// The browser itself notes that the page came from the service worker because the server hung up.
		if !strings.Contains(complaint, "ERR_EMPTY_RESPONSE") {
			t.Errorf("complaint: %s", complaint)
		}
	}
	for _, request := range chromium.Foreign() {
		t.Errorf("another origin was asked: %s", request)
	}
}

// workings names the button of a working for a figure of each group in view.
func workings(page *browser.Page) []string {
	return browser.Eval[[]string](page, `[...document.querySelectorAll("#headline .figure, #groups section:not([hidden]) .figure:first-of-type")]
		.map((figure) => "[data-testid=" + figure.dataset.testid + "] .name")`)
}
