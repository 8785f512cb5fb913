//go:build browser

package e2e

import (
	"bytes"
	"compress/flate"
	"encoding/base64"
	"encoding/json"
	"io"
	"os"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"finwright/core/outgoing"
	"finwright/core/shop"
	"finwright/site/browser"
)

// customersLink presses the button and returns what the clipboard got, unpacked too.
func customersLink(t *testing.T, page *browser.Page, button string) (link, unpacked string) {
	t.Helper()
	browser.Eval[bool](page, `(globalThis.copied = "", navigator.clipboard.writeText = async (text) => { copied = text; }, true)`)
	page.Click(id(button))
	page.Wait(`copied.includes("#c=")`)
	_, packed, _ := strings.Cut(browser.Eval[string](page, "copied"), "#c=")
	deflated, err := base64.RawURLEncoding.DecodeString(packed)
	if err != nil {
		t.Fatal(err)
	}
	text, err := io.ReadAll(flate.NewReaderDict(bytes.NewReader(deflated), usual(t)))
	if err != nil {
		t.Fatal(err)
	}
	return "#c=" + packed, string(text)
}

// usual is what links take as read.
func usual(t *testing.T) []byte {
	t.Helper()
	script, err := os.ReadFile("../js/usual.js")
	if err != nil {
		t.Fatal(err)
	}
	return bytes.Split(script, []byte("`"))[1]
}

// ofTheHouse are texts that no outgoing form may have: the shop, its line, mark-up and file, who answers for entries, and its other money.
func ofTheHouse(t *testing.T, page *browser.Page) []string {
	t.Helper()
	house := shop.House()
	never := []string{house.Name, house.Fingerprint(), "19.73", "Secret thought", `"origin"`, `"margin"`, `"line"`, "ark-up", "Line 1", "EUR/h"}
	page.Click(id("section-making"))
	page.Wait(`document.querySelector('[data-home="cost"] .value')`)
	waitState(page, "answered")
	costs := browser.Eval[[]string](page, `[...document.querySelectorAll('[data-home="cost"] .figure')].filter((f) => !["price", "price_tube"].includes(f.dataset.figure)).map((f) => f.querySelector(".value").textContent).filter((text) => /\d\.\d/.test(text) && text.length > 3)`)
	if len(costs) < 5 {
		t.Fatalf("only %d costs to look for", len(costs))
	}
	page.Click(id("section-surface"))
	return append(never, costs...)
}

// Each form that goes out is unpacked, and has nothing of the house: a customer's link out of work and out of Show, and the sheet to leave
// behind. What the link opens to has the price that was sent as long as it is the design that was sent, and computes none.
func TestWhatLeavesTheHouse(t *testing.T) {
	page := atDesk(t)
	page.Click(id("section-making"))
	enter(page, "margin", "19.73 %")
	page.Click(id("keep"))
	page.Wait(element(id("options-count")) + `.textContent === "1"`)
	enter(page, "fin_pitch", "11 fpi")
	never := ofTheHouse(t, page)
	clean := func(form, text string) {
		t.Helper()
		for _, secret := range never {
			if strings.Contains(text, secret) {
				t.Errorf("%s has %q", form, secret)
			}
		}
	}
	page.Click(id("links-open"))
	_, plainLink := customersLink(t, page, "customer-link")
	clean("the link out of work", plainLink)
	if strings.Contains(plainLink, "EUR") {
		t.Error("the link out of work has a price")
	}
	page.Press(kb.F9)
	inShow(page)
	page.Click(id("show-choose-open"))
	page.Click(id("show-price"))
	page.Click(id("show-choose-open"))
	page.Wait(element(id("leave")) + `.textContent.includes("Price of ")`)
	link, text := customersLink(t, page, "show-link")
	clean("the link out of Show", text)
	var sent outgoing.Sent
	if err := json.Unmarshal([]byte(text), &sent); err != nil || len(sent.Told.Price) != 2 || len(sent.Told.Beside) != 1 {
		t.Fatalf("%v: %s", err, text)
	}
	browser.Eval[any](page, `void (window.print = () => (document.body.dataset.printed = document.querySelector("#paper svg").textContent))`)
	page.Click(id("show-sheet"))
	page.Wait(`document.body.dataset.printed?.includes("2.31")`)
	page.Paper()
	sheet := browser.Eval[string](page, "document.body.innerText")
	clean("the sheet", sheet)
	for _, f := range append(sent.Told.Figures, sent.Told.Price...) {
		if !strings.Contains(sheet, f.Value+" "+f.Unit) {
			t.Errorf("the sheet lacks %s %s, which the link has", f.Value, f.Unit)
		}
	}
	if !strings.Contains(sheet, sent.Told.Beside[0].Said) || !strings.Contains(sheet, sent.Told.Term) || strings.Contains(sheet, "Choose") {
		t.Errorf("the sheet says %s", sheet)
	}
	page.PDF(shots, "leave")
	page.Resize(browser.Desk)
	page.Press(kb.Escape)
	inWay(page, "work")

	other := opened(t, browser.Desk, "")
	enter(other, "fin_height", "12 mm")
	browser.Eval[string](other, "location.hash = "+js(link))
	inShow(other)
	price := sent.Told.Price[0].Value
	stands := element(id("show-price_tube")) + `?.querySelector(".value").textContent === ` + js(price) + ` && ` + element(id("show-term")) + `.textContent.includes(` + js(sent.Told.Term) + `)`
	other.Wait(stands)
	if got := browser.Eval[string](other, `document.body.innerText`); strings.Contains(got, shop.House().Name) || !strings.Contains(got, sent.Told.Beside[0].Said) {
		t.Errorf("a customer sees %s", got)
	}
	slide := func(entry string) {
		other.Focus(id("slide-" + entry))
		other.Press(kb.ArrowLeft)
		other.Wait(`!` + element(id("show-price_tube")) + ` && ` + element(id("show-term")) + `.textContent.includes("The price is of the design as it was sent.")`)
	}
	slide("fin_pitch")
	other.Press(kb.ArrowRight) // back where it was
	other.Wait(stands)
	slide("fin_pitch")
	other.Reload()
	other.WaitMark("finwright:drawn")
	inShow(other)
	other.Wait(stands)
	slide("fin_height")
	other.Press("z", chromedp.ModifierCtrl)
	other.Wait(stands)

	// Undo goes on to the work that the link came over, whole and with its shop, and redo back to what was sent.
	own := `!document.body.hasAttribute("data-received") && location.hash === "" && ` + element(entry("fin_height")) + `.value === "12 mm"`
	other.Press("z", chromedp.ModifierCtrl)
	other.Wait(own)
	waitTyped(other, "fin_height", "12 mm")
	other.Press("y", chromedp.ModifierCtrl)
	other.Wait(`document.body.hasAttribute("data-received") && ` + stands)
	other.Press(kb.Escape)
	inWay(other, "work")
	waitState(other, "answered")
	if got := browser.Eval[string](other, "document.body.innerText"); strings.Contains(got, "EUR") || browser.Eval[bool](other, element(id("section-making"))+".checkVisibility()") {
		t.Errorf("a customer's page computes a price: %s", got)
	}
	other.Click(`[data-note="received received"] button`)
	other.Wait(`!document.body.hasAttribute("data-received") && location.hash === "" && ` + element(id("section-making")) + `.checkVisibility()`)
	waitState(other, "answered")
	waitTyped(other, "fin_pitch", "11 fpi")
	other.Click(id("undo"))
	other.Wait(own)
	waitTyped(other, "fin_height", "12 mm")
	other.Click(id("redo"))
	waitTyped(other, "fin_height", "5/8 in")
	other.Reload()
	waitTyped(other, "fin_pitch", "11 fpi")

	damaged := opened(t, browser.Desk, link[:len(link)/2])
	damaged.Wait(`document.querySelector("#notes").textContent.includes("The link is damaged")`)
}
