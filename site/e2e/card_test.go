//go:build browser

package e2e

import (
	"testing"

	"finwright/site/browser"
)

// The tube in hand in both systems, and in one line that leaves by a press.
func TestCardOfBothUnits(t *testing.T) {
	page := atDesk(t)
	browser.Eval[bool](page, `(globalThis.copied = "", navigator.clipboard.writeText = async (text) => { copied = text; }, true)`)
	page.Click(id("card"))
	page.Wait(`[...document.querySelectorAll("#card tbody tr")].some((row) => row.innerText.replace(/\s+/g, " ").trim() === "Wall 2.108 mm 0.083 in 14 BWG")`)
	page.Screenshot(shots, "card")
	page.Click(id("card-copy"))
	page.Wait(`copied.startsWith("25.4 mm × 2.108 mm, fins 15.875 mm × 0.4 mm")`)
	page.Press("\x1b")
	page.Wait(`!document.querySelector("#card").matches(":popover-open")`)
	enter(page, "tube_wall", "2 mm")
	page.Click(id("card"))
	page.Wait(`document.querySelector("#card .line:last-of-type").textContent.includes("× 2 mm")`)
	page.Press("\x1b")
}
