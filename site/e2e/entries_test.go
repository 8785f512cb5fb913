//go:build browser

package e2e

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/core/tube"
	"finwright/core/units"
	"finwright/site/browser"
)

func figureOf(name string) string { return id("figure-" + name + "-value") }

func TestTypedTubeIsMeasured(t *testing.T) {
	page := atDesk(t)
	page.Click(id("units-us"))
	for field, text := range map[string]string{"tube_od": "1.00 in", "strip_thickness": "0.016 in", "fin_height": "1/2 in", "fin_pitch": "9 fpi"} {
		enter(page, field, text)
	}
	// Area ratio of 1/2 in x 9 fpi on 1 in: GPSA data book, from memory, as printed.
	ratio := browser.Eval[float64](page, "Number("+element(figureOf("area_ratio"))+".textContent)")
	if math.Abs(ratio-14.5) > 0.1 {
		t.Errorf("area ratio %g, want 14.5 within 0.1", ratio)
	}

	page.Click(id("units-si"))
	enter(page, "tube_od", "1 1/4 in")
	enter(page, "tube_wall", "12 BWG")
	wall, _ := units.BWG(12)
	want := tube.Tube{
		OD: 0.03175, Wall: wall, Basis: tube.AverageWall,
		Fin: tube.Fin{Type: tube.Footed, Height: 0.0127, Strip: 0.016 * 0.0254, Count: units.PerLength(9 / 0.0254), Profile: tube.AsMade, Root: tube.FromTube},
	}
	for figure, text := range map[string]units.Text{
		"fin_od":      units.Plain.Figure(units.Diameter, float64(want.FinOD()), units.SI),
		"area_ratio":  units.Plain.Figure(units.Factor, want.Areas().Ratio(), units.SI),
		"total_area":  units.Plain.Figure(units.SurfacePerMetre, float64(want.Areas().Total()), units.SI),
		"inside_area": units.Plain.Figure(units.SurfacePerMetre, float64(want.InsideArea()), units.SI),
		"gap":         units.Plain.Figure(units.Gap, float64(want.Gap()), units.SI),
	} {
		page.WaitText(figureOf(figure), text.Value)
	}
	page.WaitText(id("dim-fin_od"), "Ø57.15")
}

func TestEnterAndLeavingCommit(t *testing.T) {
	page := atDesk(t)
	page.Type(entry("fin_height"), "12 mm")
	waitTyped(page, "fin_height", "12 mm")
	page.Focus(entry("fin_height"))
	browser.Eval[bool](page, "("+element(entry("fin_height"))+".select(), true)")
	page.Press("14 mm")
	page.Press(kb.Tab)
	waitTyped(page, "fin_height", "14 mm")
	page.Click(id("undo"))
	waitTyped(page, "fin_height", "12 mm")
	page.Click(id("undo"))
	waitTyped(page, "fin_height", "5/8 in")
}

// An answer that comes between marking a text and typing over it changes the text, not the marking.
func TestMarkedTextStaysMarkedUnderAnAnswer(t *testing.T) {
	page := atDesk(t)
	enter(page, "fin_height", "12 mm")
	page.Focus(entry("fin_height"))
	browser.Eval[bool](page, "("+element(entry("fin_height"))+".select(), "+element(id("undo"))+".click(), true)")
	waitTyped(page, "fin_height", "5/8 in")
	page.Press("14 mm")
	page.Press(kb.Enter)
	waitTyped(page, "fin_height", "14 mm")
}

// While a text is being typed, what it means is shown as soon as it can be read, and nothing changes before.
func TestHalfTypedTextChangesNothing(t *testing.T) {
	page := atDesk(t)
	before := page.Text(figureOf("fin_od"))
	page.Focus(entry("fin_height"))
	browser.Eval[bool](page, "("+element(entry("fin_height"))+".select(), true)")
	page.Press("1/")
	// The texts are tried in order: once the next one is answered, so was this one.
	page.Wait("new Promise((resolve) => setTimeout(() => resolve(true), 400))")
	if got := page.Text(figureOf("fin_od")); got != before {
		t.Errorf("half a text changed the fin OD from %s to %s", before, got)
	}
	if got := page.Text(id("error-fin_height")); got != "" {
		t.Errorf("half a text is called wrong: %s", got)
	}
	page.Press("2 in")
	page.WaitText(figureOf("fin_od"), "50.80")
	waitTyped(page, "fin_height", "5/8 in") // not yet committed
	page.Press(kb.Escape)
	page.WaitText(figureOf("fin_od"), before)
	waitEntry(page, "fin_height", "15.875 mm")
}

func TestJunkIsToldAtItsField(t *testing.T) {
	page := atDesk(t)
	before := page.Text(figureOf("fin_od"))
	for _, junk := range []struct{ field, text, want string }{
		{"tube_od", "abc", "25.4 mm"},
		{"tube_od", "1e999", "25.4 mm"},
		{"tube_od", "25.4 kg", "25.4 mm"},
		{"tube_od", "<img src=x onerror=alert(1)>", "25.4 mm"},
		{"tube_wall", "2,108", "2.108"},
		{"fin_pitch", "", "10 fpi"},
		{"fin_height", strings.Repeat("fin ", 25_000), "15.9 mm"},
		{"fin_height", "100 m", "60"},
	} {
		name := junk.text[:min(len(junk.text), 30)]
		original := typed(page, junk.field)
		paste(page, junk.field, junk.text)
		if junk.text == "" {
			browser.Eval[bool](page, `document.execCommand("delete")`)
		}
		page.Press(kb.Enter)
		page.Wait(fmt.Sprintf("%s.textContent.includes(%s)", element(id("error-"+junk.field)), js(junk.want)))
		page.Wait(element(entry(junk.field)) + `.ariaInvalid === "true"`)
		page.Wait("document.body.matches('.stale')")
		if got := page.Text(figureOf("fin_od")); got != before {
			t.Errorf("%q: fin OD %s, want the last good %s", name, got, before)
		}
		if got := len(page.Text(id("error-" + junk.field))); got > 400 {
			t.Errorf("%q: an error of %d letters", name, got)
		}
		enter(page, junk.field, original)
		page.WaitText(id("error-"+junk.field), "")
		page.Wait("!document.body.matches('.stale')")
	}
	if browser.Eval[int](page, `document.querySelectorAll("img").length`) != 0 {
		t.Error("a typed text became an element")
	}
}

func TestTwoErrorsAtOnce(t *testing.T) {
	page := atDesk(t)
	page.Type(entry("tube_od"), "wide")
	page.Type(entry("fin_height"), "tall")
	for _, field := range []string{"tube_od", "fin_height"} {
		page.Wait(element(id("error-"+field)) + ".textContent !== ''")
	}
	page.Wait(element(id("status")) + `.textContent.includes("2 entries")`)
	page.Click(id("jump"))
	page.Wait("document.activeElement === " + element(entry("tube_od")))
	enter(page, "tube_od", "25.4 mm")
	page.Wait(element(id("status")) + `.textContent.includes("One entry")`)
	page.Click(id("jump"))
	page.Wait("document.activeElement === " + element(entry("fin_height")))
	enter(page, "fin_height", "15 mm")
	page.WaitText(figureOf("fin_od"), "55.40")
}

// What is greyed belongs to the last tube that could be measured in every section, whichever was in view then.
func TestStaleFiguresOfAnotherSection(t *testing.T) {
	page := atDesk(t)
	duty := id("listed-duty-value")
	page.Click(id("section-heat"))
	page.Wait(element(duty) + "?.checkVisibility()")
	before := page.Text(duty)
	page.Click(id("section-surface"))
	enter(page, "fin_height", "8 mm")
	page.WaitText(figureOf("fin_od"), "41.40")
	page.Type(entry("tube_od"), "wide")
	page.Wait(element(id("error-tube_od")) + ".textContent !== ''")
	page.Click(id("section-heat"))
	page.Wait(element(duty) + ".textContent !== " + js(before))
	page.Wait("document.body.matches('.stale')")
	page.Click(id("section-surface"))
}

// A choice that is longer than a number takes the room that its label leaves: what the shop's usual design says is not cut.
func TestChoicesAreReadable(t *testing.T) {
	page := atDesk(t)
	cut := browser.Eval[[]string](page, `(() => {
		const pen = document.createElement("canvas").getContext("2d");
		return [...document.querySelectorAll("#entries select.moves")].filter((select) => select.checkVisibility() && select.name !== "tube_metal").filter((select) => {
			const style = getComputedStyle(select);
			pen.font = style.font;
			return pen.measureText(select.selectedOptions[0].text).width > select.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
		}).map(({ name }) => name);
	})()`)
	if len(cut) > 0 {
		t.Errorf("%q are cut", cut)
	}
}
