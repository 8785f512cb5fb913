//go:build browser

package e2e

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"unicode"

	"finwright/site/browser"
)

var pdfSize = regexp.MustCompile(`/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)`)

// sheetSays is the JavaScript expression for the text of the paper in sight.
const sheetSays = `document.getElementById("papers-sheet").innerText`

// markSaid is the fingerprint on it.
const markSaid = `[...document.querySelectorAll("#papers-sheet dd")].map((one) => one.textContent).find((text) => /^[0-9a-f]{12}-/.test(text))`

// showPaper waits until a paper is laid out.
func showPaper(page *browser.Page, kind, units, size string) {
	choose(page, id("papers-kind"), kind)
	choose(page, id("papers-units"), units)
	choose(page, id("papers-size"), size)
	unit := map[string]string{"": "", "si": "SI: mm", "us": "US customary"}[units]
	page.Wait(fmt.Sprintf(`document.getElementById("papers-sheet").dataset.kind === %s && %s.includes(%s)`, js(kind), sheetSays, js(unit)))
	waitState(page, "answered")
}

// printed prints the paper in sight and returns its text and how many sheets it takes, which are of a size [points].
func printed(t *testing.T, page *browser.Page, name, size string) (text string, sheets int) {
	t.Helper()
	browser.Eval[any](page, `void dispatchEvent(new Event("beforeprint"))`)
	file := page.PDF(shots, name)
	content, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	want := map[string]string{"a4": "59", "letter": "612"}[size]
	for _, box := range pdfSize.FindAllSubmatch(content, -1) {
		if !strings.HasPrefix(string(box[1]), want) {
			t.Errorf("%s: a sheet %s wide", name, box[1])
		}
	}
	said, err := exec.Command("pdftotext", "-layout", file, "-").Output()
	if err != nil {
		t.Fatalf("pdftotext: %v", err)
	}
	return string(said), len(pdfPage.FindAll(content, -1))
}

// letters are a text without its spaces: a line that breaks is found too.
func letters(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsSpace(r) {
			return -1
		}
		return r
	}, text)
}

// A paper prints on few sheets of the size that was chosen, each with its number, and says what the page shows, in either system.
func TestPapersPrint(t *testing.T) {
	page := atDesk(t)
	page.Click(id("section-papers"))
	page.Wait(sheetSays + `.length > 500`)
	for _, c := range []struct {
		kind, units, size string
		most              int
	}{{"datasheet", "si", "a4", 1}, {"datasheet", "us", "letter", 1}, {"traveller", "us", "a4", 4}, {"offer", "si", "letter", 3}} {
		name := c.kind + "-" + c.size + "-" + c.units
		step(t, name, func(t *testing.T) {
			showPaper(page, c.kind, c.units, c.size)
			text, sheets := printed(t, page, "paper-"+name, c.size)
			if sheets < 1 || sheets > c.most {
				t.Errorf("%d sheets", sheets)
			}
			plain := letters(text)
			mark := browser.Eval[string](page, markSaid)
			for n := 1; n <= sheets; n++ {
				if number := fmt.Sprintf("%s%d/%d", mark, n, sheets); !strings.Contains(plain, number) {
					t.Errorf("no sheet is numbered %s", number)
				}
			}
			told := browser.Eval[[]string](page, `[...document.querySelectorAll("#papers-sheet [data-tells] dd:not(.note)")].map((one) => one.textContent)`)
			if len(told) < 8 {
				t.Errorf("only %d figures", len(told))
			}
			for _, value := range told {
				if !strings.Contains(plain, letters(value)) {
					t.Errorf("on paper there is no %q", value)
				}
			}
			if strings.Contains(plain, "Undo") || strings.Contains(plain, "Whatgoesoutofthedoor") {
				t.Error("the page is printed with it")
			}
		})
	}
	step(t, "accessible", func(t *testing.T) {
		audit(t, page)
		page.Screenshot(shots, "papers-desk")
		page.Resize(browser.View{Width: 390, Height: 844})
		t.Cleanup(func() { page.Resize(browser.Desk) })
		showPaper(page, "traveller", "si", "a4")
		page.Wait("innerWidth === 390 && document.documentElement.scrollWidth <= 390")
		browser.Eval[any](page, `document.querySelector("#entries").scrollIntoView({block: "start", behavior: "instant"})`)
		page.Wait("new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))).then(() => true)")
		audit(t, page)
		page.Screenshot(shots, "papers-phone")
	})
	quiet(t, page)
}

// What a camera reads off a printed traveller is its fingerprint and its item; a square of the code is half a millimetre and more.
func TestTravellerIsReadByACamera(t *testing.T) {
	page := atDesk(t)
	page.Click(id("section-papers"))
	showPaper(page, "traveller", "si", "a4")
	want := browser.Eval[string](page, markSaid) + " Oil cooler, footed aluminium"
	printed(t, page, "paper-code", "a4")
	picture := filepath.Join(t.TempDir(), "sheet")
	if out, err := exec.Command("pdftoppm", "-r", "150", "-f", "1", "-l", "1", "-singlefile", filepath.Join(shots, "paper-code.pdf"), picture).CombinedOutput(); err != nil {
		t.Fatalf("pdftoppm: %v %s", err, out)
	}
	read, err := exec.Command("node", "decode.js", picture+".ppm").CombinedOutput()
	if got := strings.TrimSpace(string(read)); err != nil || got != want {
		t.Errorf("read %q, want %q: %v", got, want, err)
	}
	page.Paper()
	defer page.Resize(browser.Desk)
	if mm := browser.Eval[float64](page, `(({width}, svg) => width / svg.viewBox.baseVal.width * 25.4 / 96)(document.querySelector("#papers-sheet .code svg").getBoundingClientRect(), document.querySelector("#papers-sheet .code svg"))`); mm < 0.5 {
		t.Errorf("a square is %.2f mm", mm)
	}
}

// An issued paper is kept as it went out: whatever becomes of the design, and when the page comes again, it prints the same. It is issued
// once; what changed since needs a new revision.
func TestPapersAreIssued(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Click(id("section-papers"))
	page.Wait(element(id("papers-number")))
	page.Click(id("papers-issue"))
	page.Wait(element(id("papers-said")) + `.textContent.startsWith("Not issued: give it a number")`)
	page.Type(id("papers-number"), "D-17")
	page.Type(id("papers-revision"), "A")
	page.Wait(sheetSays + `.includes("D-17") && document.querySelectorAll("#papers-sheet .head-of div").length > 3`)
	page.Click(id("papers-issue"))
	page.Wait(element(id("papers-said")) + `.textContent.startsWith("Issued and kept as it is: Datasheet · D-17 · A")`)
	issued := browser.Eval[string](page, `document.getElementById("papers-sheet").innerHTML`)
	before, sheets := printed(t, page, "paper-issued", "a4")

	enter(page, "fin_pitch", "9 fpi")
	page.Wait(sheetSays + `.includes("354.3 fins/m, 9 fpi")`)
	page.Click(id("papers-issue"))
	page.Wait(element(id("papers-said")) + `.textContent.startsWith("Issued already")`)
	page.Open("")
	page.WaitMark("finwright:drawn")
	page.Click(id("section-papers"))
	page.Wait(element(id("papers-issued")) + `.length === 2 && ` + sheetSays + `.includes("9 fpi")`)
	choose(page, id("papers-issued"), browser.Eval[string](page, element(id("papers-issued"))+`.options[1].value`))
	page.Wait(element(id("papers-said")) + `.textContent.startsWith("As issued ")`)
	if again := browser.Eval[string](page, `document.getElementById("papers-sheet").innerHTML`); again != issued {
		t.Error("the issued paper is another than it was")
	}
	if after, n := printed(t, page, "paper-issued-again", "a4"); after != before || n != sheets {
		t.Errorf("it prints otherwise:\n%s\nand was\n%s", after, before)
	}
	mark := browser.Eval[string](page, markSaid)
	choose(page, id("papers-issued"), "")
	page.Wait(sheetSays + `.includes("354.3 fins/m, 9 fpi")`)
	page.Type(id("papers-mark"), mark)
	page.Wait(element(id("papers-found")) + `.textContent.includes("It stands on a paper that was issued: Datasheet · D-17 · A")`)
}

// What is answered stays with its job: on all papers, on those of the item, or on one paper alone. A paper of what is not answered yet,
// or of entries that cannot be used, says so across it.
func TestPapersAsk(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Click(id("section-papers"))
	page.Wait(element(id("papers-number")))
	page.Type(id("papers-number"), "D-17")
	page.Type(id("papers-customer"), "Works & sons <b>")
	page.Wait(sheetSays + `.includes("D-17") && ` + sheetSays + `.includes("Works & sons <b>")`)
	choose(page, id("papers-status"), "void")
	page.Wait(`document.querySelector("#papers-sheet .across")?.textContent === "Void"`)
	choose(page, id("papers-kind"), "traveller")
	page.Wait(`document.getElementById("papers-sheet").dataset.kind === "traveller" && ` + sheetSays + `.includes("Works & sons <b>") && !` + sheetSays + `.includes("D-17") && !document.querySelector("#papers-sheet .across")`)
	if !browser.Eval[bool](page, sheetSays+`.includes("HOLD: nothing is run before the first tubes are released")`) {
		t.Error("a traveller without a hold line")
	}

	quiet(t, page)

	// It is there again when the page comes again, and found by its fingerprint.
	page.Open("")
	page.WaitMark("finwright:drawn")
	page.Click(id("section-papers"))
	page.Wait(sheetSays + `.includes("D-17") && document.querySelector("#papers-sheet .across")?.textContent === "Void"`)
	mark := browser.Eval[string](page, markSaid)
	page.Type(id("papers-mark"), mark)
	page.Wait(element(id("papers-found")) + `.textContent.startsWith("It is of this design, by the same")`)
	choose(page, id("papers-kind"), "traveller")
	enter(page, "fin_pitch", "9 fpi")
	page.Wait(element(id("papers-found")) + `.textContent.startsWith("It is of no design here. Otherwise than the one in hand: design.")`)
	page.Wait(sheetSays + `.includes("354.3 fins/m, 9 fpi")`)

	// What came back from the floor is learned when somebody answers for it, and then the shop has it and says what was.
	choose(page, id("papers-kind"), "record")
	page.Wait(element(id("papers-measured")))
	browser.Eval[any](page, `void ((many) => { many.value = "354; 57.1; 5625; 5625; 190\n".repeat(5) + "354; wide"; many.dispatchEvent(new Event("change")); })(`+element(id("papers-measured"))+`)`)
	page.Wait(sheetSays + `.includes("line 6: Fin outside diameter")`)
	browser.Eval[any](page, `void ((many) => { many.value = "354; 57.1; 5625; 5625; 190\n".repeat(5); many.dispatchEvent(new Event("change")); })(`+element(id("papers-measured"))+`)`)
	page.Click(id("papers-accept-loading"))
	page.Wait(element(id("papers-learned")) + `.textContent.startsWith("Say at")`)
	page.Type(id("papers-learned_by"), "A. Turner")
	page.Wait(sheetSays + `.includes("A. Turner")`)
	page.Screenshot(shots, "papers-record")
	page.Click(id("papers-accept-loading"))
	page.Wait(element(id("papers-learned")) + `.textContent.startsWith("Accepted") && localStorage.getItem("finwright.shop").includes("Accepted by A. Turner")`)
	choose(page, id("papers-kind"), "traveller")
	page.Wait(`document.getElementById("papers-sheet").dataset.kind === "traveller"`)

	enter(page, "tube_od", "wide")
	waitState(page, "refused")
	page.Wait(`document.querySelector("#papers-sheet .across")?.textContent.startsWith("Entries to mend") && !` + sheetSays + `.includes("Work steps")`)
	page.Paper()
	if seen := browser.Eval[bool](page, `[...document.querySelectorAll("#papers-sheet > :not(header)")].some((part) => part.checkVisibility())`); seen {
		t.Error("a traveller of what cannot be used prints more than its head")
	}
}
