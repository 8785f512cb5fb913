//go:build browser

package e2e

import (
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/core/proof/tongue"
	"finwright/core/shop"
	"finwright/site/browser"
	"finwright/site/static"
	"finwright/testdata/cases"
)

// tongues is where the page with a made-up language is built, once for all tests that look at it.
var tongues struct {
	sync.Once
	folder string
	err    error
}

// inTongue is the page with a made-up language beside English.
func inTongue(t *testing.T) build {
	t.Helper()
	tongues.Do(func() { tongues.folder, tongues.err = buildInTongue() })
	if tongues.err != nil {
		t.Fatal(tongues.err)
	}
	return build{tongues.folder, tongue.Say("Finwright")}
}

func buildInTongue() (string, error) {
	texts, err := os.MkdirTemp("", "finwright-tongue-")
	if err != nil {
		return "", err
	}
	defer os.RemoveAll(texts)
	file := filepath.Join(texts, tongue.Code+".txt")
	if err := os.WriteFile(file, []byte(tongue.File()), 0o600); err != nil {
		return "", err
	}
	folder, err := os.MkdirTemp(site, "dist-"+tongue.Code+"-")
	if err != nil {
		return "", err
	}
	command := exec.Command("go", "run", "./site/build", "-languages", file, "-into", filepath.Join("site", filepath.Base(folder)))
	command.Dir = filepath.Join(site, "..")
	if said, err := command.CombinedOutput(); err != nil {
		return folder, fmt.Errorf("%w\n%s", err, said)
	}
	return folder, nil
}

// toldInSight is the JavaScript for all that the page tells in sight: its texts, and what it says of things to those who point at them or
// listen. Formulas and the names of symbols are the same in every language, as are the choices' own names.
const toldInSight = `(() => {
	const told = [];
	const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
	for (let node = texts.nextNode(); node; node = texts.nextNode()) {
		if (node.parentElement.checkVisibility() && !node.parentElement.closest("script, style, template, noscript, .formula, .unit, #working th")) told.push(node.data);
	}
	for (const element of document.querySelectorAll("[title], [aria-label], [placeholder], [alt]")) {
		if (element.checkVisibility()) told.push(...["title", "aria-label", "placeholder", "alt"].map((name) => element.getAttribute(name) ?? ""));
	}
	return told.map((text) => text.trim()).filter((text) => text);
})()`

// clipped is the JavaScript for what has not enough room for its text.
const clipped = `[...document.querySelectorAll("button, h1, h2, h3, legend, label, summary, th, td, figcaption, .answer, .figure .name, .figure .amount, .status .line, nav, .switch p, .tools, .foot")]
	.filter((element) => element.checkVisibility() && element.clientWidth > 0 && !element.closest(".unseen, .skip"))
	.filter((element) => element.scrollWidth > element.clientWidth + 1 || (getComputedStyle(element).overflowY === "hidden" && element.scrollHeight > element.clientHeight + 2))
	.map((element) => element.tagName + " " + (element.id || element.dataset.testid || element.className) + ": " + element.textContent.trim().slice(0, 60))`

// A page in another language is built from its file alone: nothing in it is English, its numbers are its own, and it works and
// keeps as the English one does, beside it.
func TestPageInAnotherLanguage(t *testing.T) {
	made := inTongue(t)
	host := newChangingHost(t, static.ByName)
	host.serve(made)
	page := chromium.Page(t, browser.Desk)
	page.Go(host.address + tongue.Code + "/")
	showsBuild(t, page, made)

	names := map[string]bool{"fins": true, "min": true, "per": true, "mPa": true, "kPa": true, "psi": true, "fpi": true, "inH": true} // units
	given := func(text string) {
		for _, word := range tongue.English(text) {
			names[word] = true
		}
	}
	for _, c := range cases.List() {
		given(c.Title)
	}
	house := shop.House()
	var file struct{ Note string }
	if err := json.Unmarshal(house.Save(), &file); err != nil {
		t.Fatal(err)
	}
	given(house.Name + " " + house.Currency + " " + file.Note)
	for _, l := range house.Lines {
		given(l.Name)
	}
	for _, one := range house.Steps { // the shop's own words
		given(one.Name)
	}
	look := func(where string) {
		t.Helper()
		for _, text := range browser.Eval[[]string](page, toldInSight) {
			for _, word := range tongue.English(text) {
				if !names[word] {
					t.Errorf("%s: %q in %q", where, word, text)
				}
			}
		}
		for _, what := range browser.Eval[[]string](page, clipped) {
			t.Errorf("%s: no room for %s", where, what)
		}
		if wide := browser.Eval[int](page, "document.documentElement.scrollWidth - innerWidth"); wide > 0 {
			t.Errorf("%s: %d px wider than the window", where, wide)
		}
	}

	// The main job, typed as people there write.
	page.Type(entry("fin_height"), "12,708 mm")
	waitTyped(page, "fin_height", "12.708 mm")
	waitEntry(page, "fin_height", "12,708 mm")
	page.Wait(`/^\d+,\d+$/.test(` + element(figureOf("fin_od")) + `.textContent)`)
	page.Type(entry("tube_wall"), "2.108 mm")
	page.Wait(element(id("error-tube_wall")) + `.textContent.includes("2,108")`)
	page.Wait(element(id("status")) + ".classList.contains('wrong')")
	look("an entry that reads two ways")
	page.Type(entry("tube_wall"), "2,108 mm")
	waitTyped(page, "tube_wall", "2.108 mm")
	page.Wait("document.body.dataset.answer === 'answered'")
	page.Click(id("add-span"))
	page.Wait(element(id("span-0-centre")) + " !== null")
	page.Click(id("keep"))
	page.Wait(element(id("options-count")) + `.textContent === "1"`)
	page.Type(entry("fin_pitch"), "11 fpi")
	for _, section := range []string{"surface", "heat", "making", "options", "enquiry"} {
		page.Click(id("section-" + section))
		page.Wait("document.body.dataset.answer === 'answered'")
		look(section)
		page.Screenshot(shots, "tongue-"+section)
	}
	page.Press(kb.F9)
	inShow(page)
	browser.Eval[bool](page, element(id("show-price"))+".click() ?? true")
	page.Wait(element(id("show-price_tube")) + " && " + element(id("show-held-said")) + `.textContent !== "" && ` + element(id("show-term")) + `.textContent !== ""`)
	for _, view := range []browser.View{{Width: 390, Height: 844}, {Width: 820, Height: 1180}, {Width: 1280, Height: 720}} {
		page.Resize(view)
		page.Wait(fmt.Sprintf("innerWidth === %d && document.body.dataset.answer === 'answered'", view.Width))
		look(fmt.Sprintf("show, %d px wide", view.Width))
		for _, cut := range browser.Eval[[]string](page, squeezed) {
			t.Errorf("show, %d px wide: cut off: %s", view.Width, cut)
		}
		page.Screenshot(shots, fmt.Sprintf("tongue-show-%d", view.Width))
	}
	page.Resize(browser.Desk)
	page.Press(kb.F9)
	inWay(page, "work")
	page.Click(id("section-surface"))
	page.Click(id("figure-area_ratio") + " .name")
	page.Wait(element(id("working")) + ".open && " + element(id("working-result")) + ".textContent !== ''")
	look("a working")
	page.Click(id("working-close"))
	page.Click(id("section-making"))
	page.Click(id("shop-open"))
	page.Wait(element(id("shop")) + ".open")
	look("the shop")
	page.Click(id("shop-close"))

	openLearn(page)
	look("the exercises")
	helped(page, "double")
	look("an exercise")
	page.Resize(browser.View{Width: 390, Height: 844})
	look("an exercise on a phone")
	page.Resize(browser.Desk)
	press(page, "learn-own")
	waitEntry(page, "fin_height", "12,708 mm")
	press(page, "learn-stories")
	page.Wait(element(id("story-text")) + "?.childElementCount > 0")
	look("an explanation")
	page.Screenshot(shots, "tongue-learn")
	press(page, "story-winding")
	page.Wait(element(id("winding")) + ".checkVisibility()")
	look("the winding")
	press(page, "learn-glossary")
	page.Wait(element(id("glossary-list")+" button") + "?.checkVisibility()")
	look("the glossary")
	press(page, "glossary-close")
	press(page, "learn-close")

	// One worker keeps the pages of all languages, and one store the work.
	page.Wait(`navigator.serviceWorker.controller !== null`)
	host.hangUp()
	page.Reload()
	showsBuild(t, page, made)
	waitEntry(page, "fin_height", "12,708 mm")
	page.Go(host.address)
	showsBuild(t, page, build{made.folder, "Finwright"})
	waitEntry(page, "fin_height", "12.708 mm")
	for _, complaint := range page.Complaints() {
		if !strings.Contains(complaint, "ERR_EMPTY_RESPONSE") {
			t.Errorf("complaint: %s", complaint)
		}
	}
}
