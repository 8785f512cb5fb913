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
	quiet(t, page)
}

// A low window leaves little room: what is drawn still lies on its sheet, in each section.
func TestDrawingKeepsToALowSheet(t *testing.T) {
	page := chromium.Page(t, browser.View{Width: 1280, Height: 720})
	page.Open("")
	page.WaitMark("finwright:drawn")
	for _, section := range []string{"heat", "making", "surface"} {
		page.Click(`[data-testid="section-` + section + `"]`)
		page.Wait(`document.body.dataset.section === "` + section + `"`)
		const within = `(() => {
			const sheet = document.querySelector("#drawing").getBoundingClientRect();
			const words = [...document.querySelectorAll("#drawing .words text")];
			return words.length > 5 && words.every((word) => word.getBoundingClientRect().bottom <= sheet.bottom + 1);
		})()`
		page.Wait(within)
		waitState(page, "answered")
		page.Wait(`new Promise((done) => setTimeout(() => done(true), 500))`) // a sheet that has another size now is drawn again
		if !browser.Eval[bool](page, within) {
			t.Errorf("%s: texts are below the sheet", section)
		}
	}
}
