//go:build browser

package e2e

import (
	"os"
	"strings"
	"testing"

	"finwright/site/browser"
)

// A shop that version 1 kept opens as it was; what has another meaning now is told until it is confirmed, and then no more.
func TestEarlierShopIsConfirmedOnce(t *testing.T) {
	text, err := os.ReadFile("../../testdata/samples/shop-1-edited.json")
	if err != nil {
		t.Fatal(err)
	}
	page := opened(t, browser.Desk, "")
	browser.Eval[bool](page, `(localStorage.setItem("finwright.shop", `+js(string(text))+`), true)`)
	again := func() {
		page.Reload()
		page.WaitMark("finwright:drawn")
		page.Click(id("section-making"))
		page.Wait(`document.querySelectorAll("#verdicts tr").length > 0`)
	}
	again()
	page.Wait(`document.querySelector("#notes").textContent.includes("earlier version")`)
	page.Click(`#notes [data-note="shop shopLifted"] button`)
	page.Wait(`document.querySelector("#shop").open`)
	page.Wait(`!document.querySelector("#shop-lifted").hidden`)
	if said := page.Text("#shop-lifted"); !strings.Contains(said, "21") || !strings.Contains(said, "17.4") {
		t.Errorf("mark-up and margin are not told: %q", said)
	}
	page.Click(id("shop-confirm"))
	page.Wait(`!document.querySelector("#notes").textContent.includes("earlier version")`)
	page.Wait(`document.querySelector("#shop-lifted").hidden && localStorage.getItem("finwright.shop").includes("mark_up")`)
	again()
	if browser.Eval[bool](page, `!document.querySelector("#shop-lifted").hidden || document.querySelector("#notes").textContent.includes("earlier version")`) {
		t.Error("what was confirmed is told again")
	}
	quiet(t, page)
}

// On a phone what is to be confirmed leaves its button in sight.
func TestEarlierShopIsConfirmedOnAPhone(t *testing.T) {
	text, err := os.ReadFile("../../testdata/samples/shop-1-edited.json")
	if err != nil {
		t.Fatal(err)
	}
	page := opened(t, browser.View{Width: 390, Height: 844, Scale: 2, Mobile: true}, "")
	browser.Eval[bool](page, `(localStorage.setItem("finwright.shop", `+js(string(text))+`), true)`)
	page.Reload()
	page.WaitMark("finwright:drawn")
	page.Click(`#notes [data-note="shop shopLifted"] button`)
	page.Wait(`((button) => { const { left, right, top, bottom } = button.getBoundingClientRect(); return bottom <= innerHeight && document.elementFromPoint((left + right) / 2, (top + bottom) / 2) === button; })(document.getElementById("shop-confirm"))`)
	audit(t, page)
	page.Screenshot(shots, "lifted-phone")
	quiet(t, page)
}
