//go:build browser

package e2e

import (
	"bytes"
	"compress/zlib"
	"fmt"
	"io"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
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

// row is a row of the grid of what was found, and foundCell a cell of it.
func row(n string) string { return "document.querySelector(\"#find-grid .body\").children[" + n + "]" }

func foundCell(row, column int) string { return fmt.Sprintf("#find-grid-%d-%d", row, column) }

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
	if lie := browser.Eval[bool](page, "document.querySelector(\"#find-grid .head\").children.length !== "+row("0")+".children.length"); lie {
		t.Error("cells and heads are not as many")
	}
	page.Screenshot(shots, "find-desk")

	// The picture tells a design that is pointed at; the axes are chosen.
	choose(page, id("find-x"), "duty")
	page.Wait(element(id("find-chart")) + ".textContent.includes(\"Duty kW\")")
	page.Hover(page.Centre("[data-testid=find-chart] .mark.front"))
	page.Wait(element(id("find-point")) + ".textContent.includes(\"kW\")")

	// Kept, it stands beside the design in hand; taken, it is that. Undo takes both back.
	page.Click(foundCell(0, 0))
	page.Click(id("find-keep"))
	waitKeptCount(page, 1)
	length := page.Text(foundCell(0, 3))
	page.Click(id("find-take"))
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
	page.Focus(id("find-grid"))
	page.Press(kb.Tab)
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

// The grid of what was found is gone through by keys, ordered, looked through and narrowed, and copied as it stands.
func TestFindGridIsWorkedWith(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openFind(page)
	choose(page, id("find-wanted-2"), "mass_dry")
	search(page, func() { page.Click(id("find-go")) })
	names := func() []string {
		return browser.Eval[[]string](page, `[...document.querySelectorAll("#find-grid .body [role=rowheader]")].map((cell) => cell.textContent)`)
	}
	if first := names(); first[0] != "1 ◇" || !strings.HasPrefix(first[1], "2") {
		t.Errorf("the rows are called %q", first)
	}
	heads := browser.Eval[[]string](page, `[...document.querySelectorAll("#find-grid .head > *")].map((cell) => cell.textContent)`)
	at := func(name string) int {
		for i, head := range heads {
			if strings.HasPrefix(head, name) {
				return i - 1
			}
		}
		t.Fatalf("no %s in %q", name, heads)
		return -1
	}
	column := func(i int) (out []float64) {
		for _, text := range browser.Eval[[]string](page, fmt.Sprintf(`[...document.querySelectorAll("#find-grid .body > *")].map((row) => row.children[%d].textContent)`, i+1)) {
			x, err := strconv.ParseFloat(strings.ReplaceAll(text, ",", ""), 64)
			if err != nil {
				t.Fatal(err)
			}
			out = append(out, x)
		}
		return out
	}

	// Ordered by mass, the heaviest first.
	choose(page, id("find-sort"), "mass_dry")
	page.Click(id("find-turned"))
	masses := column(at("Tubes of a bundle"))
	for i := 1; i < len(masses); i++ {
		if masses[i] > masses[i-1] {
			t.Errorf("by mass from the heaviest on: %v", masses)
			break
		}
	}
	page.Click(id("find-turned"))
	choose(page, id("find-sort"), "")

	// The front alone, and what says a word.
	all := browser.Eval[int](page, `Number(document.querySelector("#find-grid").getAttribute("aria-rowcount"))`)
	choose(page, id("find-only"), "front")
	page.Wait(element(id("find-shown")) + `.textContent.includes(" of ")`)
	for _, name := range names() {
		if !strings.HasSuffix(name, "◇") {
			t.Errorf("%q is not on the front", name)
		}
	}
	if n := browser.Eval[int](page, `Number(document.querySelector("#find-grid").getAttribute("aria-rowcount"))`); n >= all {
		t.Errorf("%d rows of %d", n, all)
	}
	choose(page, id("find-only"), "")

	// A column is put away, and comes again.
	page.Click(id("find-picking"))
	page.Click(`#find-picked input[value="rows"]`)
	page.Wait(fmt.Sprintf(`document.querySelector("#find-grid .head").children.length === %d`, len(heads)-1))
	page.Click(`#find-picked input[value="rows"]`)
	page.Wait(fmt.Sprintf(`document.querySelector("#find-grid .head").children.length === %d`, len(heads)))
	page.Click(id("find-picking"))

	// By keys to the end and back; a block is copied as it is shown.
	page.Click(foundCell(0, 0))
	page.Press(kb.End)
	page.Wait(fmt.Sprintf(`document.querySelector("#find-grid").getAttribute("aria-activedescendant") === "find-grid-0-%d"`, len(heads)-2))
	page.Press(kb.Home)
	page.Press(kb.ArrowDown)
	page.Press(kb.ArrowRight, chromedp.ModifierShift)
	copied := browser.Eval[string](page, `(() => { const data = new DataTransfer(); document.querySelector("#find-grid").dispatchEvent(new ClipboardEvent("copy", {clipboardData: data, bubbles: true, cancelable: true})); return data.getData("text/plain"); })()`)
	if want := page.Text(foundCell(1, 0)) + "\t" + page.Text(foundCell(1, 1)); copied != want {
		t.Errorf("copied %q, not %q", copied, want)
	}

	// Enter looks at the design of the row: it is told against that in hand, and not taken.
	page.Press(kb.Enter)
	page.Wait(element(id("find-told")) + `.textContent.length > 20`)
	if browser.Eval[bool](page, element(id("find-older"))+`.checkVisibility()`) {
		t.Error("to look has changed the design")
	}
	page.Screenshot(shots, "find-grid")
	page.Press(kb.Enter)
	page.Wait(element(id("find-told")) + `.textContent === ""`)
	quiet(t, page)
}

// A search prints as one thing: question, what was left out by what, the picture, the best, on two sheets at most.
func TestFindPrints(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openFind(page)
	page.Type(id("find-must-duty"), "900 kW")
	choose(page, id("find-wanted-2"), "fan_power")
	search(page, func() { page.Click(id("find-go")) })
	browser.Eval[any](page, `void (window.print = () => (document.body.dataset.asked = "yes"))`)
	page.Click(id("find-print"))
	page.Wait(`document.body.dataset.asked && document.body.dataset.printing === "find"`)
	text := browser.Eval[string](page, element(id("find-paper"))+`.textContent`)
	for _, want := range []string{"What varies", "Fin height", "What must hold", "900 kW", "What was found", "Left out by", "The best ", "Price of all tubes"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q does not print", want)
		}
	}
	if n := browser.Eval[int](page, element(id("find-paper"))+`.querySelectorAll("figure .mark").length`); n < 10 {
		t.Errorf("%d marks in the picture", n)
	}
	sheets, err := os.ReadFile(page.PDF(shots, "paper-find"))
	if err != nil {
		t.Fatal(err)
	}
	if n := len(pdfPage.FindAll(sheets, -1)); n < 1 || n > 2 {
		t.Errorf("%d pages", n)
	}
	words := 0
	for _, stream := range pdfStream.FindAllSubmatch(sheets, -1) {
		if plain, err := zlib.NewReader(bytes.NewReader(stream[1])); err == nil {
			content, _ := io.ReadAll(plain)
			words += len(pdfText.FindAll(content, -1))
		}
	}
	if words < 100 {
		t.Errorf("%d texts: is it blank?", words)
	}
	page.Wait(`!("printing" in document.body.dataset) && document.querySelector("#find-paper").childElementCount === 0`)
	quiet(t, page)
}
