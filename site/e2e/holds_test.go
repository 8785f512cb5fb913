//go:build browser

package e2e

import (
	"testing"

	"finwright/site/browser"
)

// What a change takes along is said under the figures that decide, and what stands still along a curve under the curve.
func TestWhatIsHeldAndWhatFollowed(t *testing.T) {
	for name, view := range map[string]browser.View{
		"held":       {Width: 1440, Height: 900},
		"held-phone": {Width: 390, Height: 844, Scale: 2, Mobile: true},
	} {
		t.Run(name, func(t *testing.T) {
			page := chromium.Page(t, view)
			page.Open("")
			waitState(page, "answered")
			page.Click(id("section-heat"))
			enter(page, "fin_height", "16 mm")
			page.Wait(element(id("followed")) + ".textContent.match(/Face area [0-9.]+ → [0-9.]+ m²/)")
			waitState(page, "answered")
			page.Screenshot(shots, name+"-followed")
			choose(page, entry("hold_space"), "face")
			choose(page, entry("hold_air"), "mass_flow")
			choose(page, entry("hold_process"), "outlet")
			page.Wait(`/Held: Face and tip clearance; Mass flow; Inlet and outlet; \d+ to \d+ whole tubes in a row/.test(document.querySelector("[data-plot=yield_height] .held").textContent)`)
			page.Wait("!" + element(id("followed")) + ".textContent")
			waitState(page, "answered")
			browser.Eval[any](page, `document.querySelector("[data-plot=yield_height]").scrollIntoView({block: "end"})`)
			page.Screenshot(shots, name)
			quiet(t, page)
		})
	}
}

// A retube is held to what stands: another length is refused at its field, and the question that it is asked is answered.
func TestRetubeOnThePage(t *testing.T) {
	for name, view := range map[string]browser.View{
		"retube":       {Width: 1440, Height: 900},
		"retube-phone": {Width: 390, Height: 844, Scale: 2, Mobile: true},
	} {
		t.Run(name, func(t *testing.T) {
			page := chromium.Page(t, view)
			page.Open("")
			page.WaitMark("finwright:drawn") // until then the page grows
			waitState(page, "answered")
			page.Click(id("section-heat"))
			page.Wait(element(id("section-heat")) + `.ariaPressed === "true"`)
			choose(page, entry("job_kind"), "retube")
			page.Wait(element(entry("old_pitch")) + ".checkVisibility()")
			enter(page, "old_ua", "35 kW/K")
			enter(page, "drop_allowed", "90 Pa")
			enter(page, "old_pitch", "63.5 mm")
			enter(page, "old_length", "6 m")
			page.Wait(`/5600 mm long/.test(document.querySelector("#watch-tube_length").textContent)`)
			page.Wait(`["ua", "air_drop"].every((figure) => document.querySelector("#pairs").textContent.includes(figure === "ua" ? "35.00" : "90.00"))`)
			page.Wait(`/Tube pitch and tubes; Pressure drop/.test(document.querySelector("[data-plot=yield_height] .held").textContent)`)
			waitState(page, "answered")
			browser.Eval[any](page, `document.querySelector("#field-old_length").scrollIntoView({block: "center"})`)
			page.Screenshot(shots, name)
			browser.Eval[any](page, `document.querySelector("#pairs").scrollIntoView({block: "center"})`)
			page.Screenshot(shots, name+"-asked")
			quiet(t, page)
		})
	}
}
