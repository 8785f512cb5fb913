//go:build browser

package e2e

import (
	"testing"

	"finwright/site/browser"
)

// Beside a figure's working stands what moves it, the largest first, and it follows the design.
func TestWhatMovesAFigure(t *testing.T) {
	page := atDesk(t)
	page.Click(id("figure-fin_od") + ` .name`)
	page.Wait(`document.querySelector("#working").open`)
	browser.Eval[bool](page, `(document.querySelector("#working summary").click(), true)`)
	said := `[...document.querySelectorAll("#working .moved tr")].map((row) => row.innerText.replace(/\s+/g, " ").trim()).join("|")`
	page.Wait(said + ` === "Fin height 1 % more 0.556 % more|Outside diameter 1 % more 0.444 % more"`)
	page.Screenshot(shots, "moves")
	enter(page, "fin_height", "6 mm")
	page.Wait(said + `.startsWith("Outside diameter 1 % more 0.679 % more|")`) // 25.4 of 37.4 mm
	page.Click(id("working-close"))
}
