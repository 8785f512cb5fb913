//go:build browser

package e2e

import (
	"strings"
	"testing"

	"finwright/site/browser"
)

// One verdict: the same words in every section, which lead to the entry that they hang on.
func TestOneVerdict(t *testing.T) {
	page := atDesk(t)
	line := id("status") + " .line"
	page.Click(id("section-heat"))
	enter(page, "upset", "230 °C")
	page.Wait(element(line) + `.querySelector("[data-state=no]:not([hidden])")`)
	var said string
	for _, section := range []string{"surface", "heat", "making"} {
		page.Click(id("section-" + section))
		page.Wait(`document.body.dataset.section === "` + section + `" && document.body.dataset.answer === "answered"`)
		now := page.Text(line)
		if said == "" {
			said = now
		}
		if now != said || !strings.Contains(now, "Heat refuses it") || !strings.Contains(now, "not to be quoted") {
			t.Errorf("%s says %q, the first %q", section, now, said)
		}
	}
	page.Wait(element(id("making-answer")) + `.textContent.includes("must not be quoted")`)
	page.Wait(element(id("figure-price_tube")) + `.querySelector(".state[data-state=no]:not([hidden])")`)
	page.Screenshot(shots, "verdict-refused")
	page.Click(id("section-heat"))
	page.Wait(`/kW.*EUR/.test(` + element(id("survivors")) + `.textContent)`)
	page.Screenshot(shots, "verdict-survivors")
	page.Click(id("section-surface"))
	page.Click(id("jump"))
	page.Wait(`document.activeElement?.id === "field-upset"`)
	page.Click(id("survivor-embedded"))
	page.Wait(element(id("survivors")) + ".hidden && !" + element(line) + `.querySelector("[data-state=no]:not([hidden])")`)
	page.Click(id("section-making"))
	enter(page, "fin_height", "13.5 mm")
	page.Wait(`/duty .* to .*; price .* to /.test(` + element(id("apply-tool")) + `.parentElement.textContent)`)
	page.Screenshot(shots, "verdict-offer")
}

// What a remark offers says beside the button what it does to duty and price, in the status line and in the list of remarks, and
// comes to that when it is pressed. While the temperature refuses the tube nothing is offered.
func TestRemarksSayWhatTheirChangeDoes(t *testing.T) {
	for name, view := range map[string]browser.View{"desk": {Width: 1440, Height: 900}, "phone": {Width: 390, Height: 844, Scale: 2, Mobile: true}} {
		page := opened(t, view, "")
		page.Click(id("section-heat"))
		enter(page, "face_velocity", "1.3 m/s")
		offers := `[...document.querySelectorAll('[data-testid="remark-apply"]:not([hidden])')]`
		says := ".nextElementSibling.textContent"
		page.Wait(`/^duty .* kW(; price .* EUR)/.test(` + offers + `.map((apply) => apply` + says + `)[0] ?? "")`)
		line := element(id("status")) + `.querySelector('.line [data-testid="remark-apply"]')`
		page.Wait(line + ".checkVisibility() && " + line + ".nextElementSibling.checkVisibility()")
		browser.Eval[bool](page, `(document.querySelector("#status").scrollIntoView({block: "center"}), true)`)
		page.Screenshot(shots, "offers-line-"+name)
		browser.Eval[bool](page, `(document.querySelector("#status").scrollIntoView({block: "center"}), document.querySelector("#status .more").click(), true)`)
		page.Wait(`document.querySelector("#remarks").matches(":popover-open")`)
		page.Screenshot(shots, "offers-remarks-"+name)
		then := browser.Eval[string](page, `/ to (.*? kW)/.exec(`+line+says+`)[1]`)
		browser.Eval[bool](page, `(`+line+`.click(), true)`)
		waitTyped(page, "film_method", "ganguli_1985")
		page.Wait(element(id("figure-duty-value")) + `.textContent === ` + js(strings.TrimSuffix(then, " kW")))
		enter(page, "upset", "230 °C")
		page.Wait(element(id("status")) + `.querySelector(".line [data-state=no]:not([hidden])")`)
		page.Wait(offers + `.length === 0`)
	}
}

// What stays in sight on a phone leaves three quarters of it to the rest, and a figure is pressed anywhere.
func TestHeadlineIsLowOnAPhone(t *testing.T) {
	page := opened(t, browser.View{Width: 390, Height: 844, Scale: 2, Mobile: true}, "")
	for part, most := range map[string]float64{"#headline": 120, ".decides": 844.0 / 4} {
		if high := browser.Eval[float64](page, `document.querySelector("`+part+`").getBoundingClientRect().height`); high > most {
			t.Errorf("%s is %.0f px high", part, high)
		}
	}
	page.Screenshot(shots, "headline-phone")
	page.Click(id("figure-duty-value"))
	page.Wait(`document.querySelector("#working").open`)
}

// choosing presses in the menu of figures. It takes its place after it has opened, so the pointer may be too early.
func choosing(page *browser.Page, name string) {
	page.Wait(element(id(name)) + ".checkVisibility()")
	page.Wait(element(id(name)) + ".click() ?? true")
}

// Which figures decide is kept in the browser.
func TestChosenFiguresStay(t *testing.T) {
	page := atDesk(t)
	ids := `[...document.querySelectorAll("#headline .figure")].map(({ dataset }) => dataset.figure).join()`
	page.Wait(ids + ` === "fin_od,area_ratio,fin_efficiency,u_bare,duty,air_drop,price_tube,line"`)
	page.Wait(`/\d/.test(` + element(id("figure-price_tube-value")) + `.textContent)`)
	page.Click(id("deciding-open"))
	page.Wait(element(id("decide-air_out")) + ".disabled") // there is room for eight
	choosing(page, "decide-area_ratio")
	choosing(page, "decide-air_out")
	want := ids + ` === "fin_od,fin_efficiency,u_bare,duty,air_out,air_drop,price_tube,line"`
	page.Wait(want)
	page.Screenshot(shots, "verdict-choose")
	page.Reload()
	page.Wait(want)
	page.Click(id("deciding-open"))
	choosing(page, "deciding-house")
	page.Wait(ids + ` === "fin_od,area_ratio,fin_efficiency,u_bare,duty,air_drop,price_tube,line"`)
}

// A laptop and a phone have room for the verdict and for the figures that decide.
func TestVerdictOnSmallScreens(t *testing.T) {
	for name, view := range map[string]browser.View{
		"laptop": {Width: 1280, Height: 720},
		"phone":  {Width: 390, Height: 844, Scale: 2, Mobile: true, Dark: true},
	} {
		page := opened(t, view, "")
		page.Click(id("section-heat"))
		enter(page, "upset", "230 °C")
		page.Wait(element(id("status")+" .line") + `.querySelector("[data-state=no]:not([hidden])")`)
		page.Wait(`document.documentElement.scrollWidth <= innerWidth`)
		page.Screenshot(shots, "verdict-"+name)
		quiet(t, page)
	}
}
