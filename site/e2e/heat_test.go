//go:build browser

package e2e

import (
	"fmt"
	"math"
	"testing"

	"finwright/site/browser"
)

func TestHeat(t *testing.T) {
	page := atDesk(t)
	page.Click(id("section-heat"))
	step(t, "figures", func(t *testing.T) {
		for _, figure := range []string{"listed-duty", "listed-u_bare", "listed-air_drop", "figure-air_out", "figure-film", "figure-inside_film", "figure-hottest_root", "figure-free_ratio", "figure-root_constriction"} {
			page.Wait(fmt.Sprintf("/^-?[0-9.]+$/.test(%s?.textContent) && %s.checkVisibility()", element(id(figure+"-value")), element(id(figure+"-value"))))
		}
		page.Wait(element(id("resistances")) + `.querySelectorAll("button").length >= 4`)
		page.Wait("!" + element(id("plot-height")) + ".checkVisibility()")
	})
	step(t, "a case above the limit", func(t *testing.T) {
		enter(page, "upset", "300 °C")
		page.Wait(element(id("status")) + ".querySelector('[data-state=no]')")
		page.Wait(`[...document.querySelectorAll("#remarks li")].some((item) => item.querySelector("[data-state=no]:not([hidden])") && /300 °C .*upset.* is above .*limit of \d+ °C/i.test(item.textContent))`)
		page.Wait(`[...document.querySelectorAll("#groups .figure")].some((figure) => figure.checkVisibility() && figure.querySelector(".state[data-state=no]:not([hidden])"))`)
		page.Screenshot(shots, "heat-limit")
		enter(page, "upset", "115 °C")
		page.Wait("!" + element(id("status")) + ".querySelector('[data-state=no]:not([hidden])')")
	})
	step(t, "a correlation out of its range", func(t *testing.T) {
		rows := `[...document.querySelectorAll("#methods tr")]`
		out := rows + `.filter((row) => row.querySelector("[data-state=outside]:not([hidden])") && /out of range/.test(row.textContent) && row.nextElementSibling?.querySelector(".why")?.textContent)`
		page.Wait(rows + ".length > 3")
		before := browser.Eval[int](page, out+".length")
		enter(page, "face_velocity", "29 m/s")
		page.Wait(fmt.Sprintf("%s.length > %d", out, before))
		enter(page, "face_velocity", "3 m/s")
		page.Wait(fmt.Sprintf("%s.length === %d", out, before))
	})
	step(t, "film computed or given", func(t *testing.T) {
		computed := page.Text(id("figure-film-value"))
		page.Click(head("film")) // folded here
		page.Wait(element(entry("film_source")) + ".checkVisibility()")
		page.Wait("!" + element(entry("film_coefficient")) + ".checkVisibility()")
		choose(page, entry("film_source"), "given")
		waitTyped(page, "film_source", "given")
		page.Wait(element(entry("film_coefficient")) + ".checkVisibility()")
		enter(page, "film_coefficient", "37.5 W/m²K")
		page.WaitText(id("figure-film-value"), "37.50")
		choose(page, entry("film_source"), "computed")
		page.WaitText(id("figure-film-value"), computed)
		page.Click(head("film"))
	})
	page.Click(id("section-surface"))
}

// Every state of the plant stands in a table, with what differs and what the bank then does; one that nobody told says so. A case
// that was stated for another inlet is remarked on.
func TestCasesOfThePlant(t *testing.T) {
	for name, view := range map[string]browser.View{
		"cases":       {Width: 1440, Height: 900},
		"cases-phone": {Width: 390, Height: 844, Scale: 2, Mobile: true},
	} {
		page := opened(t, view, "")
		page.Click(id("section-heat"))
		row := func(c string) string { return element(id("case-" + c)) }
		number := func(c string, cell int) string {
			return fmt.Sprintf(`(%s ? Number(%s.cells[%d].textContent.replaceAll(",", "")) : NaN)`, row(c), row(c), cell)
		}
		page.Wait(row("upset") + ` && document.querySelectorAll("#cases tbody tr").length === 8`)
		page.Wait("/not stated/.test(" + row("summer") + ".textContent)")
		enter(page, "air_summer", "41 °C")
		enter(page, "air_winter", "-12 °C")
		enter(page, "turndown", "40 %")
		page.Wait(number("summer", 1) + " < " + number("normal", 1) + " && " + number("winter", 3) + " < " + number("normal", 3))
		page.Wait(number("clean", 1) + " > " + number("fouled", 1) + " && " + number("fouled", 1) + " === " + number("normal", 1))
		page.Wait("/gas 41/.test(" + row("summer") + ".textContent) && /40/.test(" + row("turndown") + ".textContent)")
		enter(page, "inside_in", "91 °C")
		page.Wait(`[...document.querySelectorAll("#remarks li")].some((item) => /stated for another value/.test(item.textContent))`)
		page.Wait("document.documentElement.scrollWidth <= innerWidth")
		browser.Eval[bool](page, `(`+element(id("cases"))+`.scrollIntoView({block: "center"}), true)`)
		page.Screenshot(shots, name)
	}
}

// A bond that an upset opens lowers the duty of normal running, and the headline says so: what the closed bond would carry, and
// what little and much winding strain would.
func TestOpenBondInTheHeadline(t *testing.T) {
	for name, view := range map[string]browser.View{
		"bond-open":       {Width: 1440, Height: 900},
		"bond-open-phone": {Width: 390, Height: 844, Scale: 2, Mobile: true},
	} {
		page := opened(t, view, "")
		page.Click(id("section-heat"))
		kilowatts := `Number(` + element(id("figure-duty-value")) + `.textContent.replaceAll(",", ""))`
		rests := element(id("figure-duty")) + `.querySelector(".rests")`
		page.Wait(kilowatts + ` > 0 && !/bond/.test(` + rests + `.textContent)`)
		before := browser.Eval[float64](page, kilowatts)
		enter(page, "upset", "180 °C")
		page.Wait(fmt.Sprintf(`%s < %g && /^bond open after upset, closed [0-9,.]+ kW; by strain [0-9,.]+ to [0-9,.]+ kW/.test(%s.textContent) && %s.checkVisibility()`, kilowatts, before, rests, rests))
		page.Wait("/bond open/.test(" + element(id("case-normal")) + ".textContent)")
		page.Wait(`[...document.querySelectorAll("#remarks li")].some((item) => /bond loosens at about/.test(item.textContent))`)
		page.Wait("document.documentElement.scrollWidth <= innerWidth")
		waitState(page, "answered")
		page.Screenshot(shots, name)
		browser.Eval[bool](page, `(`+element(id("figure-bond_open"))+`.scrollIntoView({block: "center"}), true)`)
		page.Screenshot(shots, name+"-figures")
	}
}

// Nothing takes over: a correlation that leaves its range stays, the headline says what it then rests on, and another is a
// press away, at the remark and in the list.
func TestMethodIsChosen(t *testing.T) {
	page := atDesk(t)
	page.Click(id("section-heat"))
	rests := element(id("figure-air_drop")) + `.querySelector(".rests")`
	page.WaitText(id("methods-used"), "ESDU 86022")
	enter(page, "face_velocity", "1.3 m/s")
	page.Wait(rests + `.checkVisibility() && /^out of range; in range [0-9.]+ Pa/.test(` + rests + `.textContent)`)
	page.WaitText(id("methods-used"), "ESDU 86022")
	page.Screenshot(shots, "method-out-of-range")
	page.Click("#status .more")
	apply := `#remarks [data-testid="remark-apply"]:not([hidden])`
	page.Wait(element(apply) + "?.checkVisibility()")
	page.Click(apply)
	waitTyped(page, "film_method", "ganguli_1985")
	page.Wait(`/Ganguli 1985/.test(` + element(id("methods-used")) + `.textContent)`)
	page.Click(id("take-ganguli_1985_drop"))
	waitTyped(page, "drop_method", "ganguli_1985_drop")
	page.WaitText(id("methods-used"), "Ganguli 1985")
	choose(page, entry("film_method"), "rule")
	page.WaitText(id("methods-used"), "ESDU 86022, Ganguli 1985")
}

// On a phone a section's own entries come in above its button, which stays where it was pressed.
func TestSectionStaysUnderTheFinger(t *testing.T) {
	page := opened(t, browser.View{Width: 390, Height: 844, Scale: 2, Mobile: true}, "")
	button := id("section-heat")
	before := page.Centre(button)
	page.Click(button)
	page.Wait(element(button) + `.ariaPressed === "true"`)
	page.WaitText(id("methods-used"), "ESDU 86022")
	after := browser.Eval[float64](page, "(({top, height}) => top + height / 2)("+element(button)+".getBoundingClientRect())")
	if math.Abs(after-before.Y) > 2 {
		t.Errorf("the button went from %g to %g", before.Y, after)
	}
}
