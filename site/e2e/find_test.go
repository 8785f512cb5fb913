//go:build browser

package e2e

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

// vary ticks the entries that are to vary, and no others.
func vary(page *browser.Page, fields string) {
	browser.Eval[any](page, `document.querySelectorAll("#find-axes > div").forEach((row) => {
		const tick = row.querySelector("input");
		if (tick.checked !== `+js(fields)+`.split(" ").includes(row.dataset.field)) tick.click();
	})`)
}

// openFind opens the search, with fins, rows and lengths to vary.
func openFind(page *browser.Page) {
	page.Click(id("section-options"))
	page.Wait(cell("fin_od", 0) + ".length > 0 && " + band("film") + ".includes(\"%\")") // what stands above it has come in
	page.Click(id("find-open"))
	page.Wait(element(id("find-axis-fin_pitch")) + " && " + element(id("find-count")) + ".textContent.includes(\"designs\")")
	vary(page, "fin_pitch fin_height rows tube_length")
}

// search presses Search and waits until it has ended.
func search(page *browser.Page, press func()) {
	press()
	page.Wait("!" + element(id("find-answer")) + ".hidden && document.querySelector(\"#find-progress\").hidden && " + element(id("find-go")) + ".textContent === \"Search\"")
}

func row(n string) string { return element(id("find-table")) + ".tBodies[0].rows[" + n + "]" }

// What varies and must hold is entered, how many that makes is said, and what is found is taken, kept and read off the picture; an
// answer to another question says so.
func TestFindByPointer(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openFind(page)
	before := page.Text(id("find-count"))
	page.Type(id("find-axis-fin_pitch"), "9 fpi .. 11 fpi; 1 fpi")
	page.Wait(element(id("find-count")) + ".textContent !== " + js(before))
	page.Type(id("find-axis-fin_height"), "12.7 mm; many")
	page.Wait(element("#find-wrong-fin_height") + ".textContent.includes(\"many\") && " + element(id("find-go")) + ".disabled")
	page.Type(id("find-axis-fin_height"), "12.7 mm; 15.875 mm")
	page.Type(id("find-must-duty"), "900 kW")
	page.Type(id("find-must-tube_length"), "9 m")
	choose(page, id("find-wanted-2"), "fan_power")
	page.Wait(element("#find-wrong-fin_height") + ".textContent === \"\" && !" + element(id("find-go")) + ".disabled")

	search(page, func() { page.Click(id("find-go")) })
	said := page.Text(id("find-said"))
	for _, want := range []string{"designs seen", "found to hold", "Left out by", "Duty"} {
		if !strings.Contains(said, want) {
			t.Errorf("%q is not in %q", want, said)
		}
	}
	if lie := browser.Eval[bool](page, element(id("find-table"))+".tHead.rows[0].cells.length !== "+row("0")+".cells.length"); lie {
		t.Error("cells and heads are not as many")
	}
	page.Screenshot(shots, "find-desk")

	// The picture tells a design that is pointed at; the axes are chosen.
	choose(page, id("find-x"), "duty")
	page.Wait(element(id("find-chart")) + ".textContent.includes(\"Duty kW\")")
	page.Hover(page.Centre("[data-testid=find-chart] .mark.front"))
	page.Wait(element(id("find-point")) + ".textContent.includes(\"kW\")")

	// Kept, it stands beside the design in hand; taken, it is that. Undo takes both back.
	page.Click("[data-testid=find-table] tbody tr:nth-child(1) [data-testid^=found-keep]")
	waitKeptCount(page, 1)
	length := browser.Eval[string](page, row("0")+".cells[3].textContent")
	page.Click("[data-testid=find-table] tbody tr:nth-child(1) [data-testid^=found-take]")
	page.Wait(element(entry("tube_length")) + "?.value === " + js(length))
	waitState(page, "answered")
	page.Wait(element(id("find-older")) + ".checkVisibility()")
	page.Click(id("undo"))
	page.Click(id("undo"))
	waitKeptCount(page, 0)
	page.Wait("!" + element(id("find-older")) + ".checkVisibility()")
	quiet(t, page)
}

// The same by keys: the form is gone through, the search pressed, and a design of the picture taken.
func TestFindByKeys(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openFind(page)
	page.Focus(id("find-go"))
	search(page, func() { page.Press(kb.Enter) })
	page.Focus(id("find-chart"))
	page.Press(kb.Home)
	page.Press(kb.ArrowRight)
	page.Press(kb.ArrowRight)
	page.Wait(element(id("find-point")) + ".textContent.includes(\"EUR\")")
	page.Focus(id("find-table") + " tbody tr button")
	page.Press(kb.ArrowRight)
	page.Press(kb.Enter)
	waitKeptCount(page, 1)
	quiet(t, page)
}

// Where nothing holds it is said, and what would have to give is told: which things alone, by how much, and the nearest design.
func TestFindSaysWhatMustGive(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openFind(page)
	vary(page, "fin_pitch rows")
	page.Type(id("find-must-duty"), "3 MW")
	page.Type(id("find-must-air_drop"), "20 Pa")
	search(page, func() { page.Click(id("find-go")) })
	page.Wait(element(id("find-said")) + ".textContent.includes(\"Nothing holds all of it.\")")
	page.Click(id("find-binds"))
	page.Wait(element(id("find-bound")) + ".textContent.includes(\"Duty\") && " + element(id("find-go")) + ".textContent === \"Search\" && " + row("0"))
	bound := page.Text(id("find-bound"))
	for _, want := range []string{"Duty: ", "Pressure drop as judged: "} {
		if !strings.Contains(bound, want) {
			t.Errorf("%q is not in %q", want, bound)
		}
	}
	page.Screenshot(shots, "find-nothing")
	quiet(t, page)
}
