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
		page.Click(id("shop-open"))
		page.Wait(`document.querySelector("#shop").open`)
	}
	again()
	page.Wait(`document.querySelector("#notes").textContent.includes("earlier version")`)
	page.Wait(`!document.querySelector("#shop-lifted").hidden`)
	if said := page.Text("#shop-lifted"); !strings.Contains(said, "21") || !strings.Contains(said, "17.4") {
		t.Errorf("mark-up and margin are not told: %q", said)
	}
	page.Click(id("shop-confirm"))
	page.Wait(`document.querySelector("#shop-lifted").hidden && localStorage.getItem("finwright.shop").includes("mark_up")`)
	again()
	if browser.Eval[bool](page, `!document.querySelector("#shop-lifted").hidden || document.querySelector("#notes").textContent.includes("earlier version")`) {
		t.Error("what was confirmed is told again")
	}
	quiet(t, page)
}
