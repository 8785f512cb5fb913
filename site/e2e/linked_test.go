//go:build browser

package e2e

import (
	"testing"

	"finwright/site/browser"
)

// What the pointer or the focus is on is lit wherever else it stands, and nothing else is.
func TestSameThingsAreLit(t *testing.T) {
	page := atDesk(t)
	lit := func(selector string) string {
		return `document.querySelector('` + selector + `').hasAttribute("data-lit")`
	}
	none := `document.querySelector("[data-lit]") === null`
	page.Focus(entry("fin_height"))
	for _, place := range []string{`[data-field="fin_height"]`, `[data-testid="dim-fin_height"]`, `[data-testid="grip-tip"]`, `[data-plot="height"]`, `[data-plot="map"]`} {
		page.Wait(lit(place))
	}
	if browser.Eval[bool](page, lit(`[data-field="fin_pitch"]`)+"||"+lit(`[data-plot="pitch"]`)) {
		t.Error("another entry is lit")
	}
	browser.Eval[bool](page, `(document.activeElement.blur(), true)`)
	page.Wait(none)
	browser.Eval[bool](page, `(document.querySelector('#groups [data-figure="fin_efficiency"]').dispatchEvent(new PointerEvent("pointerover", {bubbles: true})), true)`)
	page.Wait(lit(`#headline [data-figure="fin_efficiency"]`))
	browser.Eval[bool](page, `(document.querySelector("#status").dispatchEvent(new PointerEvent("pointerover", {bubbles: true})), true)`)
	page.Wait(none)
}
