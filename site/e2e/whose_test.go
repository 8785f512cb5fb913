//go:build browser

package e2e

import (
	"os"
	"testing"

	"finwright/core/shop"
	"finwright/site/browser"
)

// A link that is opened beside another shop says whose prices were sent and whose stand there.
func TestLinkSaysWhosePricesItBears(t *testing.T) {
	text, err := os.ReadFile("../../testdata/samples/shop-2-edited.json")
	if err != nil {
		t.Fatal(err)
	}
	page := atDesk(t)
	link := linkOf(t, page)
	page = opened(t, browser.Desk, "")
	browser.Eval[bool](page, `(localStorage.setItem("finwright.shop", `+js(string(text))+`), true)`)
	page.Reload()
	page.WaitMark("finwright:drawn")
	browser.Eval[bool](page, "(location.hash = "+js(link)+", true)")
	page.Wait(`document.querySelector("#changed").checkVisibility()`)
	house := shop.House()
	for _, name := range []string{house.Name, house.PricesOf(), "Edited (invented)"} {
		page.Wait(`document.querySelector("#changed").textContent.includes(` + js(name) + `)`)
	}
	quiet(t, page)
}
