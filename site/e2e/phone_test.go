//go:build browser

package e2e

import (
	"testing"

	"finwright/site/browser"
)

// On a phone the figures that decide stay in sight in a low strip, the sections are reached from everywhere, and an entry and its curve
// are seen together.
func TestPhoneBringsTogether(t *testing.T) {
	page := opened(t, browser.View{Width: 390, Height: 844, Scale: 2, Mobile: true}, "")
	page.WaitMark("finwright:drawn") // until then the page grows
	if high := browser.Eval[float64](page, `document.querySelector("#decides").offsetHeight`); high >= 120 {
		t.Errorf("the figures that decide take %g px", high)
	}
	for _, at := range []string{"0", "document.documentElement.scrollHeight / 2", "document.documentElement.scrollHeight"} {
		missing := browser.Eval[[]string](page, `(scrollTo({top: `+at+`, behavior: "instant"}), [...document.querySelectorAll("#sections button")].filter((press) => {
			const {x, y, width, height} = press.getBoundingClientRect();
			return !press.contains(document.elementFromPoint(x + width / 2, y + height / 2));
		}).map((press) => press.textContent))`)
		if len(missing) > 0 {
			t.Errorf("scrolled to %s, one cannot press %q", at, missing)
		}
	}

	box := func(selector string) map[string]float64 {
		return browser.Eval[map[string]float64](page, `(({top, bottom}) => ({top, bottom}))(document.querySelector(`+js(selector)+`).getBoundingClientRect())`)
	}
	together := func(field, plot string) {
		t.Helper()
		page.Click(entry(field))
		page.Wait(element(`[data-plot="`+plot+`"]`) + `.matches(".near")`)
		page.Wait("new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))).then(() => true)")
		strip, curve, at := box("#decides"), box(`[data-plot="`+plot+`"] .canvas`), box(entry(field))
		if curve["top"] < strip["bottom"] || at["top"] < curve["bottom"] || at["bottom"] > 844 {
			t.Errorf("%s: the strip ends at %g, the curve goes from %g to %g, the entry from %g to %g", field, strip["bottom"], curve["top"], curve["bottom"], at["top"], at["bottom"])
		}
	}
	together("fin_height", "height")
	label := browser.Eval[string](page, element(canvas("height"))+".ariaLabel")
	enter(page, "fin_height", "12 mm")
	page.Wait(element(canvas("height")) + `.ariaLabel !== ` + js(label))
	page.Screenshot(shots, "phone-near")
	together("fin_pitch", "pitch")
	together("fin_height", "height")
	page.Click(id("section-heat"))
	page.Wait(`document.querySelector("#figures").getBoundingClientRect().top < 400 && document.querySelector(".near") === null`)
	page.WaitText(id("methods-used"), "ESDU 86022")
	page.Screenshot(shots, "phone-heat")

	// The entries that Making has of its own come in above its answer, which stays what one has gone to.
	page.Click(id("section-making"))
	page.Wait(element(id("making-answer")) + ".textContent !== \"\"")
	waitState(page, "answered")
	page.Wait(`(({top}, strip) => top >= strip - 1 && top < 400)(document.querySelector("#figures").getBoundingClientRect(), document.querySelector("#decides").getBoundingClientRect().bottom)`)
	quiet(t, page)
}

// What a finger points at is read over the curves, and goes with the finger.
func TestReadingGoesWithTheFinger(t *testing.T) {
	page := opened(t, browser.View{Width: 390, Height: 844, Scale: 2, Mobile: true}, "")
	page.WaitMark("finwright:drawn")
	reading := element(id("plot-height") + " .reading")
	from, to := within(page, "height", 0.25, 0.3), within(page, "height", 0.4, 0.3)
	page.Touch(from, to, 6)
	page.Wait(reading + ".checkVisibility() && " + reading + ".textContent")
	// Of the canvas it may take the line of the axis' name, as high as the room over the first panel.
	if !browser.Eval[bool](page, reading+".getBoundingClientRect().bottom <= "+element(canvas("height"))+".getBoundingClientRect().top + 26") {
		t.Error("the reading lies over the curves")
	}
	page.Lift()
	page.Wait("!" + reading + ".checkVisibility()")
	quiet(t, page)
}
