//go:build browser

package e2e

import (
	"net/http"
	"strings"
	"testing"
	"time"

	"finwright/site/browser"
)

// onPicture waits until the picture stands in for the painter, and checks that it follows an entry.
func onPicture(page *browser.Page) {
	const picture = `document.querySelector(".drawing.as-picture svg.picture")`
	page.Wait(`!document.querySelector("iframe.paint") && ` + picture)
	before := browser.Eval[string](page, picture+".outerHTML")
	page.Type(entry("fin_height"), "11 mm")
	page.WaitText(figureOf("fin_od"), "47.40")
	page.Wait(picture + ".outerHTML !== " + js(before))
}

// A drawing whose painter dies goes on as a picture.
func TestPictureStandsInForADeadPainter(t *testing.T) {
	const frame = `document.querySelector("iframe.paint")`
	for name, kill := range map[string]string{
		"the graphics card is lost":  frame + `.contentDocument.querySelector("canvas").getContext("webgl2").getExtension("WEBGL_lose_context").loseContext()`,
		"the program breaks":         frame + `.contentWindow.reportError(new Error("made by the test"))`,
		"the program takes no scene": frame + `.contentWindow.take = () => { throw new Error("made by the test") }; document.querySelector('[data-zoom="zoomIn"]').click()`,
	} {
		t.Run(name, func(t *testing.T) {
			page := painted(t, browser.Desk, "")
			browser.Eval[bool](page, kill+", true")
			onPicture(page)
		})
	}
}

func TestPictureStandsInForAMissingPainter(t *testing.T) {
	address := host(t, func(w http.ResponseWriter, r *http.Request) bool {
		if !strings.HasPrefix(r.URL.Path, "/canvas.") {
			return false
		}
		http.NotFound(w, r)
		return true
	})
	page := chromium.Page(t, browser.Desk)
	page.Go(address)
	page.WaitMark("finwright:drawn")
	onPicture(page)
}

// A painter has its time from when there is something to paint: while an entry cannot be used, none passes.
func TestPainterIsWaitedForFromWhenItIsAsked(t *testing.T) {
	come := make(chan struct{})
	address := host(t, func(_ http.ResponseWriter, r *http.Request) bool {
		if strings.HasPrefix(r.URL.Path, "/canvas.") {
			select {
			case <-come:
			case <-r.Context().Done(): // the test has failed
			}
		}
		return false
	})
	page := chromium.Page(t, browser.Desk)
	page.Before(`const plain = setTimeout; globalThis.setTimeout = (act, time, ...rest) => plain(act, time === 30000 ? 3000 : time, ...rest);
		Object.defineProperty(globalThis, "isSecureContext", {value: false});`)
	page.Go(address)
	page.WaitMark("finwright:figures")
	page.Type(entry("fin_height"), "high")
	waitState(page, "refused")
	page.Reload()
	page.Wait(`document.querySelector("iframe.paint")`)
	waitState(page, "refused")
	time.Sleep(3500 * time.Millisecond)
	if !browser.Eval[bool](page, `document.querySelector("iframe.paint") !== null`) {
		t.Fatal("the painter was given up while there was nothing to paint")
	}
	insert(page, entry("fin_height"), "11 mm")
	page.Wait(`!document.querySelector("iframe.paint") && document.querySelector(".drawing.as-picture svg.picture")`)
	close(come)
}
