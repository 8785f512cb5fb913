//go:build browser

package e2e

import (
	"regexp"
	"strings"
	"testing"

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
