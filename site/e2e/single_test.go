//go:build browser

package e2e

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"finwright/core/shop"
	"finwright/site/browser"
)

// catchFiles has what a page saves as text in `saved`, and not as a file.
const catchFiles = `(globalThis.saved = [], HTMLAnchorElement.prototype.click = function () {}, URL.createObjectURL = ((make) => (file) => (file.text().then((text) => saved.push(text)), make(file)))(URL.createObjectURL), true)`

var carriedBlock = regexp.MustCompile(`(<script type="text/plain" data-part="carried">)([^<]*)`)

// fromDisk opens a file as a double click does.
func fromDisk(t *testing.T, page *browser.Page, file string) {
	t.Helper()
	whole, err := filepath.Abs(file)
	if err != nil {
		t.Fatal(err)
	}
	page.Go("file://" + filepath.ToSlash(whole))
}

// The page as one file does the main job from a disk: an entry, a grip, a click in a plot, the whole engine and the shop, a file saved and a reload. What
// the page saves for a customer is that file with what the customer's link has, to the letter; opened, it tells that and no more.
func TestPageInOneFile(t *testing.T) {
	page := chromium.Page(t, browser.Desk)
	t.Run("from the build", func(t *testing.T) {
		fromDisk(t, page, filepath.Join(dist, "finwright.html"))
		page.WaitMark("finwright:painted")
		enter(page, "fin_height", "14 mm")
		waitTyped(page, "fin_height", "14 mm")
		at := page.Centre(grip("tip"))
		page.Grab(at)
		page.Pull(at, moved(at, 0, -20), 5)
		page.Drop(moved(at, 0, -20))
		page.Wait(kept + `.fields.fin_height.text !== "14 mm"`)
		pulled := typed(page, "fin_height")
		page.ClickAt(within(page, "height", 0.3, 0.3))
		changed(page, "fin_height", pulled)
		clicked := typed(page, "fin_height")
		page.Click(id("section-papers"))
		page.Wait(markSaid) // what the whole engine alone answers
		browser.Eval[bool](page, catchFiles)
		page.Click(id("save"))
		page.Wait(`globalThis.saved.length === 1`)
		if text := browser.Eval[string](page, "saved[0]"); !strings.Contains(text, `"`+clicked+`"`) {
			t.Errorf("saved without %q: %s", clicked, text)
		}
		page.Reload()
		waitEntry(page, "fin_height", clicked)
		page.WaitMark("finwright:painted")
		page.Screenshot(shots, "single")
	})

	t.Run("for a customer", func(t *testing.T) {
		desk := atDesk(t)
		desk.Click(id("keep"))
		desk.Wait(element(id("options-count")) + `.textContent === "1"`)
		enter(desk, "fin_pitch", "11 fpi")
		browser.Eval[bool](desk, catchFiles)
		desk.Click(id("links-open"))
		desk.Click(id("customer-file"))
		desk.Wait(`globalThis.saved.length === 1`)
		text := browser.Eval[string](desk, "saved[0]")
		built, err := os.ReadFile(filepath.Join(dist, "finwright.html"))
		if err != nil {
			t.Fatal(err)
		}
		carried := carriedBlock.FindStringSubmatch(text)
		if carried == nil || !strings.HasPrefix(carried[2], "c=") {
			t.Fatal("the file carries nothing")
		}
		if carriedBlock.ReplaceAllString(text, "$1") != string(built) {
			t.Error("besides what it carries, the file is not the one of the build")
		}
		file := filepath.Join(t.TempDir(), "for-a-customer.html")
		if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		fromDisk(t, page, file)
		page.Wait(`document.body.dataset.way === "show" && document.body.hasAttribute("data-received")`)
		page.Wait(element(id("show-said")) + `.textContent !== ""`)
		page.WaitMark("finwright:painted")
		page.Screenshot(shots, "single-sent")
		page.Wait(element(entry("fin_pitch")) + `.value.startsWith("433.1")`)
		if said := browser.Eval[string](page, "document.body.innerText"); strings.Contains(said, shop.House().Name) || strings.Contains(said, "EUR") {
			t.Errorf("a customer sees %s", said)
		}
	})
	quiet(t, page)
}
