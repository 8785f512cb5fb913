//go:build browser

package e2e

import (
	"encoding/base64"
	"encoding/json"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/core/document"
	"finwright/site/browser"
	"finwright/testdata/cases"
)

// jobFile is a file of n items in turn of three sizes; the second keeps an alternative and the third cannot be made.
func jobFile(t *testing.T, n int) string {
	t.Helper()
	base := cases.First()
	job := document.JobOf([]document.Document{base})
	job.Items = job.Items[:0]
	saying := func(d document.Document, values ...document.Value) document.Differences {
		d, err := document.Edit(d, document.Command{Op: "set", Values: values})
		if err != nil {
			t.Fatal(err)
		}
		return d.From(base)
	}
	to := func(field, text string) document.Value { return document.Value{Field: field, Text: &text} }
	for i := range n {
		item := document.Item{ID: fmt.Sprintf("i%d", i+1), Design: saying(base, to("quantity", fmt.Sprint(10+i)), to("fin_pitch", []string{"10 fpi", "9 fpi", "8 fpi"}[i%3]))}
		mark := fmt.Sprintf("E-%03d", i+1)
		item.Design.Mark = &mark
		switch i {
		case 1:
			item.Kept = []document.Kept{{Name: "secretly cheap", Design: saying(base, to("quantity", "11"), to("fin_pitch", "7 fpi"))}}
		case 2:
			item.Design.Fields["fin_height"] = document.Entry{Text: "30 mm", Origin: document.Customer}
		}
		job.Items = append(job.Items, item)
	}
	text, err := json.Marshal(map[string]any{"format": document.Format, "version": document.Version, "head": job.Head, "base": job.Base, "items": job.Items})
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// One offer answers all items of a job: on A4 and Letter each line stands whole on one sheet, under a head that each sheet has, and each sheet bears
// its number of how many. What is kept beside an item is priced under another name.
func TestOfferOfAllItemsPrints(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openFile(page, js(jobFile(t, 60)))
	page.WaitText(id("items-count"), "60")
	waitState(page, "answered")
	page.Click(id("section-papers"))
	page.Wait(sheetSays + `.length > 500`)
	if !browser.Eval[bool](page, element(id("papers-extent"))+`.closest("label").hidden`) {
		t.Error("a datasheet asks of how many items it is")
	}
	choose(page, id("papers-kind"), "offer")
	page.Wait(`document.getElementById("papers-sheet").dataset.kind === "offer"`)
	choose(page, id("papers-extent"), "all")
	page.Wait(sheetSays + `.includes("E-060")`)
	choose(page, id("papers-alternatives"), "with_alternatives")
	page.Wait(sheetSays + `.includes("E-002, alternative A")`)
	if browser.Eval[bool](page, sheetSays+`.includes("secretly cheap")`) {
		t.Error("the name that it was kept under leaves")
	}
	for _, c := range []struct{ units, size string }{{"si", "a4"}, {"us", "letter"}} {
		name := "offer-all-" + c.size + "-" + c.units
		step(t, name, func(t *testing.T) {
			showPaper(page, "offer", c.units, c.size)
			rows := browser.Eval[[][]string](page, `[...document.querySelector("#papers-sheet table").tBodies[0].rows].map((row) => [...row.cells].map((cell) => cell.textContent))`)
			if len(rows) != 61 || rows[60][1] != "Total of the 59 items priced, of 60" || !strings.HasPrefix(rows[2][5], "Refused: ") {
				t.Fatalf("%q", rows)
			}
			text, sheets := printed(t, page, "paper-"+name, c.size)
			pages := strings.Split(text, "\f")
			mark := browser.Eval[string](page, markSaid)
			for n := 1; n <= sheets; n++ {
				if number := fmt.Sprintf("%s%d/%d", mark, n, sheets); !strings.Contains(letters(text), number) {
					t.Errorf("no sheet is numbered %s", number)
				}
			}
			heads, at := 0, -1
			for _, row := range rows {
				whole := -1
				for n, one := range pages {
					plain := letters(one)
					if strings.Contains(plain, letters(row[4])) && (row[0] == "" || strings.Contains(plain, row[0])) && allIn(plain, row[1]) {
						whole = n
						break
					}
				}
				if whole < at {
					t.Errorf("%q is on no sheet whole", row)
				}
				if whole > at {
					at = whole
					if heads++; !strings.Contains(letters(pages[whole]), "ItemFinnedtubeQuantity") {
						t.Errorf("sheet %d has no head", whole+1)
					}
				}
			}
			if heads < 2 {
				t.Errorf("sixty items on %d sheets", heads)
			}
		})
	}
	step(t, "an item that waits", func(t *testing.T) {
		enter(page, "tube_od", "wide")
		waitState(page, "refused")
		page.Wait(sheetSays + `.includes("Its entries cannot be used as they stand.") && ` + sheetSays + `.includes("Total of the 58 items priced, of 60")`)
		page.Screenshot(shots, "papers-all-items")
	})
	step(t, "a workbook", func(t *testing.T) {
		shown := browser.Eval[[][]string](page, `[...document.querySelector("#papers-sheet table").rows].map((row) => [...row.cells].map((cell) => cell.textContent))`)
		choose(page, id("papers-units"), "si")
		browser.Eval[any](page, catchDownload)
		choose(page, id("papers-table"), "xlsx 0")
		page.Wait(`globalThis.book`)
		packed, err := base64.StdEncoding.DecodeString(browser.Eval[string](page, `globalThis.book`))
		if err != nil {
			t.Fatal(err)
		}
		rows := bookRows(t, packed)
		if len(rows) != len(shown) {
			t.Fatalf("%d rows of %d", len(rows), len(shown))
		}
		amount := func(text string) float64 {
			x, err := strconv.ParseFloat(strings.ReplaceAll(strings.TrimPrefix(text, "n"), "\u202f", ""), 64)
			if err != nil {
				t.Fatal(err)
			}
			return x
		}
		for i, row := range shown[1:] {
			got := rows[i+1]
			if row[4] == "" {
				continue
			}
			if !slices.ContainsFunc(got, func(cell string) bool { return strings.HasPrefix(cell, "n") && amount(cell) == amount(row[4]) }) {
				t.Errorf("%q is %q", row, got)
			}
		}
	})
	step(t, "accessible", func(t *testing.T) { audit(t, page) })
	quiet(t, page)
}

// An item of an enquiry that became the job with a doubt open has a provisional price: its offer says so on its line and in no total.
func TestOfferOfAnEnquirySaysWhatIsProvisional(t *testing.T) {
	page := opened(t, browser.Desk, "")
	readEnquiry(page, "40 pcs 25.4 x 2.11 x 5600, L-foot, 57 OD 10 fpi\n20 pcs 1 in 14 BWG x 20, embedded 1/2 high 11 fpi")
	page.Focus(id("enquiry-make"))
	page.Press(kb.Enter)
	page.WaitText(id("items-count"), "2")
	waitState(page, "answered")
	page.Click(id("section-papers"))
	page.Wait(sheetSays + `.length > 300`)
	choose(page, id("papers-kind"), "offer")
	page.Wait(`document.getElementById("papers-sheet").dataset.kind === "offer"`)
	choose(page, id("papers-extent"), "all")
	page.Wait(`document.querySelectorAll("#papers-sheet table")[0]?.tBodies[0].rows.length >= 2 && /Provisional|Refused|No price/.test(` + sheetSays + `)`)
	if said := browser.Eval[string](page, sheetSays); strings.Contains(said, "not to be used") {
		t.Errorf("what is only provisional is stamped: %q", said)
	}
	if said := browser.Eval[string](page, `document.querySelector("#papers-sheet table").innerText`); !strings.Contains(said, "Provisional, not in the total") || strings.Contains(said, "Total of") {
		t.Errorf("the offer says %q", said)
	}
}

// catchDownload keeps what is saved as a file for a look, in base 64.
const catchDownload = `(() => {
	const made = new Map(), make = URL.createObjectURL;
	URL.createObjectURL = (blob) => { const url = make.call(URL, blob); made.set(url, blob); return url; };
	HTMLAnchorElement.prototype.click = function () {
		globalThis.fileName = this.download;
		made.get(this.href).arrayBuffer().then((bytes) => { let text = ""; for (const byte of new Uint8Array(bytes)) text += String.fromCharCode(byte); globalThis.book = btoa(text); });
	};
})()`

// An issued paper leaves as a file and prints the same in another browser, whatever is in hand there; a file that was altered is refused and
// leaves what is shown. Its fingerprint finds the job in earlier work.
func TestIssuedPaperPrintsTheSameElsewhere(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openFile(page, js(jobFile(t, 3)))
	page.WaitText(id("items-count"), "3")
	waitState(page, "answered")
	page.Click(id("section-papers"))
	page.Wait(sheetSays + `.length > 500`)
	choose(page, id("papers-kind"), "offer")
	page.Wait(`document.getElementById("papers-sheet").dataset.kind === "offer"`)
	choose(page, id("papers-extent"), "all")
	page.Wait(sheetSays + `.includes("Total of the 2 items priced, of 3")`)
	page.Type(id("papers-number"), "O-17")
	page.Type(id("papers-revision"), "A")
	page.Wait(sheetSays + `.includes("O-17") && document.querySelectorAll("#papers-sheet .head-of div").length > 3`)
	page.Click(id("papers-issue"))
	page.Wait(element(id("papers-said")) + `.textContent.startsWith("Issued and kept as it is: Offer · O-17 · A")`)
	choose(page, id("papers-issued"), browser.Eval[string](page, element(id("papers-issued"))+`.options[1].value`))
	page.Wait(element(id("papers-said")) + `.textContent.startsWith("As issued ")`)
	issued := browser.Eval[string](page, `document.getElementById("papers-sheet").innerHTML`)
	before, sheets := printed(t, page, "paper-file", "a4")
	mark := browser.Eval[string](page, markSaid)
	browser.Eval[any](page, catchDownload)
	page.Click(id("papers-save"))
	page.Wait(`globalThis.book`)
	if name := browser.Eval[string](page, `globalThis.fileName`); !strings.HasPrefix(name, "Offer-O-17-A-") || !strings.HasSuffix(name, ".paper.json") {
		t.Errorf("it is called %s", name)
	}
	bytes, err := base64.StdEncoding.DecodeString(browser.Eval[string](page, `globalThis.book`))
	if err != nil {
		t.Fatal(err)
	}
	file := string(bytes)
	give := func(page *browser.Page, text string) {
		browser.Eval[bool](page, fmt.Sprintf(`(() => {
			const files = new DataTransfer();
			files.items.add(new File([%s], "some.json"));
			const input = %s;
			input.files = files.files;
			return input.dispatchEvent(new Event("change"));
		})()`, js(text), element(id("papers-open-file"))))
	}

	// An item that was looked for in earlier work is taken from there.
	openFile(page, js(jobFile(t, 1)))
	page.WaitText(id("items-count"), "")
	waitState(page, "answered")
	page.Type(id("papers-mark"), mark)
	page.Wait(element(id("papers-found")) + `.textContent.includes("It is of all items of this job together")`)
	if !browser.Eval[bool](page, element(id("papers-found"))+`.textContent.includes("In earlier work, “") && !`+element(id("papers-take"))+`.hidden`) {
		t.Errorf("found %q", page.Text(id("papers-found")))
	}
	page.Click(id("papers-take"))
	page.WaitText(id("items-count"), "3")
	waitState(page, "answered")

	other := opened(t, browser.Desk, "")
	other.Click(id("section-papers"))
	other.Wait(sheetSays + `.length > 500`)
	give(other, strings.Replace(file, "O-17", "O-18", 1))
	other.Wait(element(id("papers-said")) + `.textContent.startsWith("This paper was changed or damaged")`)
	if browser.Eval[bool](other, `document.getElementById("papers-sheet").hasAttribute("data-issued")`) {
		t.Error("it is shown all the same")
	}
	give(other, file)
	other.Wait(element(id("papers-said")) + `.textContent.startsWith("Opened and kept: Offer · O-17 · A")`)
	if again := browser.Eval[string](other, `document.getElementById("papers-sheet").innerHTML`); again != issued {
		t.Error("it is another than it was")
	}
	if after, n := printed(t, other, "paper-file-elsewhere", "a4"); after != before || n != sheets {
		t.Errorf("it prints otherwise:\n%s\nand was\n%s", after, before)
	}
	other.Screenshot(shots, "papers-opened")
	other.Open("")
	other.WaitMark("finwright:drawn")
	other.Click(id("section-papers"))
	other.Wait(element(id("papers-issued")) + `.length === 2`)
	quiet(t, other)
	quiet(t, page)
}

// allIn reports whether all words of a text stand somewhere.
func allIn(plain, text string) bool {
	for _, word := range strings.Fields(text) {
		if !strings.Contains(plain, letters(word)) {
			return false
		}
	}
	return true
}
