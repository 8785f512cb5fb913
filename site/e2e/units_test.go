//go:build browser

package e2e

import (
	"regexp"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/core/shop"
	"finwright/site/browser"
)

// shown lists every quantity in view: entries, figures, drawing, plots' answers, bars, correlations. Prose is not among them.
func shown(page *browser.Page) []string {
	return browser.Eval[[]string](page, `[...document.querySelectorAll(
		"#entries input.moves, .amount, #drawing svg.overlay text, #paper text, .answer, #resistances b, #methods td:nth-child(2), #status .line, #remarks li, #verdicts td, #cards text")]
		.filter((e) => e.checkVisibility()).map((e) => (e.value ?? e.textContent).trim()).filter(Boolean)`)
}

var (
	metric    = regexp.MustCompile(`\bmm\b|\d\s*(m|m/m|m²|m²/m|kg|kg/m|fins/m|/m|°C|W|kW|W/m·K|W/m²K|kW/m²|W/kg|kW/kg|m/s|kg/s|Pa|kPa|MPa|m²K/W)($|[\s,.;])`)
	customary = regexp.MustCompile(`\d\s*(in|ft|yd|lb|lb/ft|fpi|fins/in|°F|MMBtu/h|BWG|psi|inH₂O|ft²|ft²/ft|ft/ft|ft/min|ft/s|lb/h|Btu\S*)($|[\s,.;])`)
)

func TestUnitsNeverMix(t *testing.T) {
	page := atDesk(t)
	page.Click(id("section-surface"))
	for _, section := range []string{"surface", "heat", "making"} {
		page.Click(id("section-" + section))
		for _, system := range []struct {
			name    string
			foreign *regexp.Regexp
		}{{"us", metric}, {"si", customary}} {
			step(t, section+" "+system.name, func(t *testing.T) {
				page.Click(id("units-" + system.name))
				page.Wait(kept + ".units === " + js(system.name))
				page.Wait(element(id("units-"+system.name)) + `.ariaPressed === "true"`)
				texts := shown(page)
				if len(texts) < 50 {
					t.Fatalf("only %d quantities in view", len(texts))
				}
				native := 0
				for _, text := range texts {
					if system.foreign.MatchString(text) {
						t.Errorf("%q in view", text)
					}
					if other := map[string]*regexp.Regexp{"us": customary, "si": metric}[system.name]; other.MatchString(text) {
						native++
					}
				}
				if native < 20 {
					t.Errorf("only %d quantities carry a unit of the system: %q", native, texts)
				}
			})
		}
	}
	page.Click(id("section-surface"))
}

// Each figure and dimension with a unit changes with the system.
func TestUnitSwitchChangesEveryFigure(t *testing.T) {
	page := atDesk(t)
	for _, section := range []string{"surface", "heat"} {
		page.Click(id("section-" + section))
		step(t, section, func(t *testing.T) { switchUnits(t, page) })
		page.Click(id("units-si"))
		page.WaitText(id("figure-fin_od")+" .unit", "mm")
	}
	page.Click(id("section-surface"))
}

func switchUnits(t *testing.T, page *browser.Page) {
	read := func() map[string]string {
		return browser.Eval[map[string]string](page, `Object.fromEntries([
			...[...document.querySelectorAll(".figure")].filter((e) => e.checkVisibility()).map((e) => [e.dataset.testid, e.querySelector(".unit").textContent]),
			...[...document.querySelectorAll("#drawing svg.overlay text[data-testid^=dim-]")].map((e) => [e.dataset.testid, e.textContent]),
		])`)
	}
	si := read()
	page.Click(id("units-us"))
	page.WaitText(id("figure-fin_od")+" .unit", "in")
	same := 0
	for name, text := range read() {
		if text == "" || text == "%" || text == "°" || text == shop.House().Currency {
			continue
		}
		if si[name] == text {
			t.Errorf("%s stays %q", name, text)
		}
		same++
	}
	if same < 20 {
		t.Errorf("only %d figures have a unit", same)
	}
}

func TestTypedTextComesBackWithItsUnits(t *testing.T) {
	page := atDesk(t)
	page.Click(id("units-us"))
	for field, text := range map[string]string{"fin_height": `5/8"`, "tube_wall": "12 BWG", "tube_od": "1 1/4 in", "fin_pitch": "11 fpi"} {
		enter(page, field, text)
	}
	page.Click(id("units-si"))
	waitEntry(page, "fin_height", "15.875 mm")
	page.Click(id("units-us"))
	waitEntry(page, "fin_height", `5/8"`)
	waitEntry(page, "tube_wall", "12 BWG")
	waitEntry(page, "tube_od", "1 1/4 in")
	waitEntry(page, "fin_pitch", "11 fpi")
	if strings.Contains(strings.Join(shown(page), " "), "15.875") {
		t.Error("millimetres stay in view")
	}
}

// readings is the JavaScript for what a field offers of a number that was typed alone.
func readings(field string) string {
	return "[..." + element(`[data-field="`+field+`"]`) + `.querySelectorAll(".readings button")].map(({ textContent }) => textContent)`
}

// A number alone that makes nothing usual in the unit in sight is not taken: it stays where it was typed, with a press for each unit that it may
// be meant in, also after a reload; and nobody is asked while he types.
func TestNumberAloneIsAskedAbout(t *testing.T) {
	page := opened(t, browser.Desk, "")
	before := page.Text(figureOf("fin_od"))
	if got := page.Text(id("other-fin_pitch")); got != "10 fpi" {
		t.Errorf("beside the fin count stands %q", got)
	}
	if got := browser.Eval[string](page, element(id("alone-fin_pitch"))+".textContent"); !strings.Contains(got, "fins/m") {
		t.Errorf("of a number alone it is said %q", got)
	}
	page.Focus(entry("fin_pitch"))
	browser.Eval[bool](page, "("+element(entry("fin_pitch"))+".select(), true)")
	page.Press("10")
	page.Wait("new Promise((resolve) => setTimeout(() => resolve(true), 500))")
	if got := browser.Eval[[]string](page, readings("fin_pitch")); len(got) > 0 || page.Text(id("error-fin_pitch")) != "" {
		t.Errorf("while it is typed, %q are asked", got)
	}
	page.Press(kb.Enter)
	asked := func() {
		t.Helper()
		page.Wait(readings("fin_pitch") + `.join() === "10 fins/m,10 fpi"`)
		waitEntry(page, "fin_pitch", "10")
		waitState(page, "refused")
		page.Wait("document.body.matches('.stale')")
		same(t, "fin OD", page.Text(figureOf("fin_od")), before)
		same(t, "what is kept", typed(page, "fin_pitch"), "10 fpi")
	}
	asked()
	if edge := func(part string) float64 {
		return browser.Eval[float64](page, element("#entries [data-field=fin_pitch] "+part)+".getBoundingClientRect().right")
	}; edge(".origin") < edge(".moves") {
		t.Error("the entry lies over where its text comes from")
	}
	audit(t, page)
	page.Screenshot(shots, "asked")
	page.Reload()
	page.WaitMark("finwright:drawn")
	asked()
	page.Focus(entry("fin_pitch"))
	page.Press(kb.Tab)
	page.Press(kb.Tab)
	page.Press(kb.Enter)
	waitState(page, "answered")
	waitEntry(page, "fin_pitch", "393.7 fins/m")
	page.WaitText(id("error-fin_pitch"), "")
	page.Wait("document.activeElement === " + element(entry("fin_pitch")))
	if got := browser.Eval[[]string](page, readings("fin_pitch")); len(got) > 0 {
		t.Errorf("answered, %q still stand", got)
	}
	page.Type(entry("tube_wall"), "12")
	page.Wait(readings("tube_wall") + `.join() === "12 mm,12 BWG"`)
	page.Click(`[data-field="tube_wall"] .readings button:last-child`)
	waitTyped(page, "tube_wall", "12 BWG")
	quiet(t, page)
}

// An entry in millimetres reads in inches as long as nothing else is typed, and typing what stands there changes nothing.
func TestEditThatChangesNothingChangesNothing(t *testing.T) {
	page := opened(t, browser.Desk, "")
	enter(page, "fin_height", "40 mm")
	page.Click(id("units-us"))
	waitEntry(page, "fin_height", "1.575 in")
	before := browser.Eval[string](page, "JSON.stringify("+kept+")")
	for _, text := range []string{"1.575 in", "1.575"} {
		page.Type(entry("fin_height"), text)
		page.Press(kb.Tab)
		waitState(page, "answered")
		waitEntry(page, "fin_height", "1.575 in")
		same(t, "the design after "+text, browser.Eval[string](page, "JSON.stringify("+kept+")"), before)
	}
	page.Click(id("undo")) // of the units, and nothing else
	page.Wait(kept + `.units === "si"`)
	waitEntry(page, "fin_height", "40 mm")
	page.Click(id("units-us"))
	enter(page, "fin_height", "1.576 in")
	quiet(t, page)
}
