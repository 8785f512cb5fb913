//go:build browser

package e2e

import (
	"testing"

	"finwright/site/browser"
)

func TestDrawingWithoutWebGL(t *testing.T) {
	page := chromium.Page(t, browser.Desk)
	page.Before(`{
		const getContext = HTMLCanvasElement.prototype.getContext;
		HTMLCanvasElement.prototype.getContext = function (kind, ...rest) {
			return String(kind).includes("webgl") ? null : getContext.call(this, kind, ...rest);
		};
	}`)
	page.Open("")
	page.WaitMark("finwright:drawn")
	page.Wait(`document.querySelector("#drawing svg.picture")?.getBoundingClientRect().width > 400`)
	page.Wait(`document.querySelectorAll("#drawing svg.picture path").length > 10`)
	page.Wait(`document.querySelector("#drawing iframe") === null`)
	browser.Eval[bool](page, `(globalThis.first = document.querySelector("#drawing svg.picture").outerHTML, true)`)
	at := page.Centre(grip("tip"))
	page.Drag(at, moved(at, 0, -20), 4)
	page.Wait(`document.querySelector("#drawing svg.picture").outerHTML !== first`)
	page.Screenshot(shots, "picture")
	quiet(t, chromium, page)
}
