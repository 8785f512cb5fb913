//go:build browser

package e2e

import (
	"archive/zip"
	"bytes"
	"encoding/base64"
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

// readEnquiry opens the section and reads a text by the keyboard.
func readEnquiry(page *browser.Page, text string) {
	page.Focus(id("section-enquiry"))
	page.Press(kb.Enter)
	page.Wait("!" + element(id("enquiry-read")) + ".disabled")
	page.Focus(id("enquiry-text"))
	browser.Eval[any](page, element(id("enquiry-text"))+`.value = `+js(text))
	page.Press(kb.Enter, chromedp.ModifierCtrl)
	waitRated(page)
}

// waitRated waits until nothing of an enquiry is under way and its totals stand.
func waitRated(page *browser.Page) {
	page.Wait(element(id("enquiry-totals")) + `.tBodies[0].rows.length > 3 && document.querySelector("#enquiry-progress").hidden`)
}

func inEnquiry(row, column int) string {
	return fmt.Sprintf(`document.getElementById("enquiry-grid-%d-%d").firstElementChild.textContent`, row, column)
}

func total(name string) string {
	return element(id("enquiry-totals")+` [data-total="`+name+`"] .value`) + ".firstChild.data"
}

// amount reads a number as the page prints it.
func amount(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(strings.NewReplacer(",", "", "\u202f", "", "\u00a0", "", " ", "").Replace(text), 64)
	if err != nil {
		t.Errorf("%q is no number", text)
	}
	return x
}

// packed is a workbook of one sheet, as a script's bytes.
func packed(t *testing.T, sheet string) string {
	t.Helper()
	var file bytes.Buffer
	w := zip.NewWriter(&file)
	for name, text := range map[string]string{"xl/workbook.xml": `<workbook><sheets><sheet name="A" r:id="rId1"/></sheets></workbook>`, "xl/worksheets/sheet1.xml": sheet} {
		part, err := w.Create(name)
		if err == nil {
			_, err = io.WriteString(part, text)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return `Uint8Array.from(atob("` + base64.StdEncoding.EncodeToString(file.Bytes()) + `"), (c) => c.charCodeAt(0))`
}

// sendFile opens a file of a script's bytes.
func sendFile(page *browser.Page, name, bytes string) {
	browser.Eval[any](page, fmt.Sprintf(`(() => {
		const files = new DataTransfer();
		files.items.add(new File([%s], %s));
		const input = %s;
		input.files = files.files;
		input.dispatchEvent(new Event("change", {bubbles: true}));
	})()`, bytes, js(name), element(id("enquiry-file-input"))))
}

// Forty items with ten faults of a customer's kind are worked from end to end by the keyboard: read, each guess settled, a quantity entered,
// summed and made the items of the job, which undo takes back.
func TestFortyItemsByKeys(t *testing.T) {
	sheet, err := os.ReadFile("../../testdata/enquiry/forty.tsv")
	if err != nil {
		t.Fatal(err)
	}
	page := opened(t, browser.Desk, "")
	readEnquiry(page, string(sheet))
	if said := page.Text(id("enquiry-said")); !strings.Contains(said, "40 items. 5 rest on a guess") {
		t.Errorf("it is said: %s", said)
	}
	for _, kind := range []string{"over_fins", "not_made", "finned_longer", "type_metal", "missing"} {
		page.Wait(element(id("enquiry-asks") + ` [data-kind="` + kind + `"]`))
	}
	page.Wait(element(id("enquiry-totals")+` [data-total="price"] td:last-child`) + `.textContent.startsWith("Provisional: 5")`)

	// Each guess has its two readings; the first is taken, but for the fraction's and the grade's neighbour.
	for open := 5; open > 0; open-- {
		page.Focus(id("enquiry-doubts") + " li:first-child button")
		if browser.Eval[string](page, element(id("enquiry-doubts")+" li:first-child")+`.dataset.kind`) == "one_of" {
			page.Press(kb.ArrowRight)
		}
		page.Press(kb.Enter)
		page.Wait(element(id("enquiry-doubts")) + fmt.Sprintf(`.children.length === %d`, open-1))
	}
	waitRated(page)
	page.Wait(element(id("enquiry-said")) + `.textContent.includes("0 rest on a guess")`)
	page.Wait(inEnquiry(8, 3) + `.includes("TP316")`)

	// The quantity that was not stated is typed into its cell.
	page.Focus(id("enquiry-grid"))
	for range 29 {
		page.Press(kb.ArrowDown)
	}
	page.Press(kb.ArrowRight)
	page.Press(kb.ArrowRight)
	page.Press("10")
	page.Press(kb.Enter)
	page.Wait(element(id("enquiry-asks")) + `.textContent.indexOf("Quantity is not stated") < 0`)
	waitRated(page)
	if now := browser.Eval[string](page, inEnquiry(29, 2)); now != "10" {
		t.Errorf("the quantity is %s", now)
	}

	// The total is that of the cells, added up one by one.
	var price, tubes float64
	page.Press(kb.Home, chromedp.ModifierCtrl)
	for row := range 40 {
		page.Wait(fmt.Sprintf(`document.getElementById("enquiry-grid").getAttribute("aria-activedescendant") === "enquiry-grid-%d-0"`, row))
		money, _, _ := strings.Cut(browser.Eval[string](page, inEnquiry(row, 1)), " EUR")
		if money != "–" {
			price += amount(t, money)
			tubes += amount(t, browser.Eval[string](page, inEnquiry(row, 2)))
		}
		page.Press(kb.ArrowDown)
	}
	told := amount(t, browser.Eval[string](page, total("price")))
	if math.Abs(told-price) > 0.4 || price < 1000 { // 40 roundings to a hundredth
		t.Errorf("the total is %.2f, the rows add up to %.2f", told, price)
	}
	if said := amount(t, browser.Eval[string](page, total("tubes"))); said != tubes {
		t.Errorf("%v tubes are told, the rows have %v", said, tubes)
	}
	if made := browser.Eval[string](page, total("tubes")); made == "" || browser.Eval[string](page, element(id("enquiry-totals")+` [data-total="tubes"] td:last-child`)+".textContent") == "" {
		t.Error("it is not said that refused items are left out")
	}
	page.Focus(id("enquiry-group"))
	page.Press(kb.Enter)
	page.Wait(element(id("enquiry-group-said")) + `.textContent.includes("batches") && ` + element(id("enquiry-batches")) + `.tBodies[0].rows.length > 3`)
	page.Screenshot(shots, "enquiry-desk")
	page.Focus(id("enquiry-breaks"))
	page.Press(kb.Enter)
	page.Focus(id("enquiry-grid"))
	page.Press(kb.Home, chromedp.ModifierCtrl)
	page.Wait(`document.querySelector("#enquiry-progress").hidden && document.getElementById("enquiry-grid-0-2") && ` + inEnquiry(0, 2) + `.includes(" at ")`)
	for row := range 5 {
		money, breaks := browser.Eval[string](page, inEnquiry(row, 1)), browser.Eval[string](page, inEnquiry(row, 2))
		if (money == "–") != (breaks == "–") {
			t.Errorf("item %d costs %s and in other quantities %s", row+1, money, breaks)
		}
	}

	page.Focus(id("enquiry-make"))
	page.Press(kb.Enter)
	page.WaitText(id("items-count"), "40")
	waitState(page, "answered")
	open := browser.Eval[bool](page, element(id("enquiry-totals")+` [data-total="price"] td:last-child`)+`.textContent.includes("Provisional")`)
	if kept := browser.Eval[bool](page, `(localStorage.getItem("finwright.papers") ?? "").includes('"standing":"provisional"')`); kept != open {
		t.Errorf("prices rest on what is not settled: %v; their papers know of it: %v", open, kept)
	}
	page.Focus(id("enquiry-take"))
	page.Press(kb.Enter)
	waitState(page, "answered")
	page.Focus(id("undo"))
	page.Press(kb.Enter)
	page.WaitText(id("items-count"), "")
	for _, v := range page.Audit(site) {
		t.Errorf("%v", v)
	}
	quiet(t, page)
}

// A column that is taken for something else is read anew; a file that is no text is refused in words, and the section goes on.
func TestEnquiryColumnsAndHostileFiles(t *testing.T) {
	page := opened(t, browser.Desk, "")
	readEnquiry(page, "Item\tQty\tTube OD (mm)\tSpacing\n1\t40\t25.4\t2.5\n")
	page.Wait(element(id("enquiry-doubts") + ` [data-kind="gap"]`))
	page.Click(id("enquiry-mapping"))
	choose(page, id("enquiry-field-3"), "fin_gap")
	page.Wait(element(id("enquiry-columns")) + ` && !` + element(id("enquiry-doubts")+` [data-kind="gap"]`) + ` || ` + element(id("enquiry-said")) + `.textContent !== ""`)
	for name, content := range map[string]string{
		"binary.csv":  `new Uint8Array([1, 2, 0, 0, 255, 7])`,
		"broken.xlsx": `new Uint8Array([0x50, 0x4b, 3, 4, 9, 9, 9, 9, 9])`,
		"wide.csv":    `"Item\tQty" + "\tx".repeat(1000000) + "\n1\t2\n"`,
		"bomb.xlsx":   packed(t, strings.Repeat("<c/>", 15_000_000)),
		"large.csv":   `new Uint8Array(25_000_000).fill(65)`,
	} {
		sendFile(page, name, content)
		page.Wait(element(id("enquiry-wrong")) + `.textContent !== "" && document.querySelector("#enquiry-progress").hidden`)
		if why := page.Text(id("enquiry-wrong")); !strings.Contains(why, "no text") && !strings.Contains(why, "columns") && !strings.Contains(why, "too large") {
			t.Errorf("%s: it is said %q", name, why)
		}
		browser.Eval[any](page, element(id("enquiry-wrong"))+`.textContent = ""`)
	}
	sendFile(page, "book.xlsx", packed(t, `<worksheet><sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>Item</t></is></c><c r="B1" t="inlineStr"><is><t>Qty</t></is></c></row>
		<row r="2" hidden="1"><c r="A2"><v>1</v></c><c r="B2"><f>20*2</f><v>40</v></c></row><row r="3"><c r="A3"><v>2</v></c><c r="B3"><v>9</v></c></row></sheetData></worksheet>`))
	page.Wait(element(id("enquiry-notes")) + `.textContent.includes("1 row is hidden") && ` + element(id("enquiry-said")) + `.textContent.startsWith("2 items.")`)
	sendFile(page, "old.csv", `new Uint8Array([...new TextEncoder().encode("Pos.;St"), 0xfc, ...new TextEncoder().encode("ck;L"), 0xe4, ...new TextEncoder().encode("nge gesamt (m)\n7;12;6,5\n")])`)
	page.Wait(element(id("enquiry-said")) + `.textContent.startsWith("1 item.") && ` + inEnquiry(0, 2) + ` === "12"`)
	readEnquiry(page, "1) 12 off 1 in OD x 14 BWG MW, 20 ft overall, L fins Al 10 fpi 5/8 in high")
	page.Wait(element(id("enquiry-said")) + `.textContent.startsWith("1 item.")`)
	lookAndSave(t, page)
	quiet(t, page)
}

// lookAndSave orders and picks items, fills a column down, and saves a workbook, which is read by the standard library's readers of archives and XML.
func lookAndSave(t *testing.T, page *browser.Page) {
	t.Helper()
	readEnquiry(page, "Item\tQty\tTube OD (mm)\tFin type\n-A\t9\t25.4\tL\nB\t40\t31.75\tG\nC\t20\t25.4\tL\n")
	choose(page, id("enquiry-sort"), "quantity")
	page.Click(id("enquiry-turned"))
	page.Wait(inEnquiry(0, 2) + ` === "40" && ` + inEnquiry(2, 2) + ` === "9"`)
	browser.Eval[any](page, `(() => { const find = `+element(id("enquiry-find"))+`; find.value = "25.4"; find.dispatchEvent(new Event("input")); })()`)
	page.WaitText(id("enquiry-count"), "2 of 3 items")
	page.Focus(id("enquiry-grid"))
	page.Press(kb.Home, chromedp.ModifierCtrl)
	page.Press(kb.ArrowRight)
	page.Press(kb.ArrowRight)
	page.Press(kb.ArrowDown, chromedp.ModifierShift)
	page.Press("d", chromedp.ModifierCtrl)
	page.Wait(inEnquiry(0, 2) + ` === "20" && ` + inEnquiry(1, 2) + ` === "20"`)
	waitRated(page)
	browser.Eval[any](page, `(() => {
		const made = new Map(), make = URL.createObjectURL;
		URL.createObjectURL = (blob) => { const url = make.call(URL, blob); made.set(url, blob); return url; };
		HTMLAnchorElement.prototype.click = function () { made.get(this.href).arrayBuffer().then((bytes) => { globalThis.book = btoa(String.fromCharCode(...new Uint8Array(bytes))); }); };
	})()`)
	page.Click(id("enquiry-xlsx"))
	page.Wait(`globalThis.book`)
	packed, err := base64.StdEncoding.DecodeString(browser.Eval[string](page, `globalThis.book`))
	if err != nil {
		t.Fatal(err)
	}
	rows := bookRows(t, packed)
	if len(rows) != 3 || !strings.Contains(strings.Join(rows[0], "|"), "Outside diameter [mm]") {
		t.Fatalf("the workbook has %q", rows)
	}
	if row := strings.Join(rows[1], "|"); !strings.HasPrefix(row, "'-A|") || !strings.Contains(row, "|n20|n25.4|") {
		t.Errorf("a row has %s", row)
	}
}

// bookRows reads the first sheet of a workbook: texts as they are, numbers behind an n.
func bookRows(t *testing.T, packed []byte) (rows [][]string) {
	t.Helper()
	files, err := zip.NewReader(bytes.NewReader(packed), int64(len(packed)))
	if err != nil {
		t.Fatal(err)
	}
	part := func(name string, into any) {
		f, err := files.Open(name)
		if err == nil {
			defer f.Close()
			err = xml.NewDecoder(f).Decode(into)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	var texts struct {
		List []string `xml:"si>t"`
	}
	part("xl/sharedStrings.xml", &texts)
	var sheet struct {
		Rows []struct {
			Cells []struct {
				Type    string `xml:"t,attr"`
				Value   string `xml:"v"`
				Formula string `xml:"f"`
			} `xml:"c"`
		} `xml:"sheetData>row"`
	}
	part("xl/worksheets/sheet1.xml", &sheet)
	for _, r := range sheet.Rows {
		var row []string
		for _, c := range r.Cells {
			at, err := strconv.Atoi(c.Value)
			switch {
			case c.Formula != "":
				t.Errorf("there is a formula, %s", c.Formula)
			case c.Type == "s" && err == nil:
				row = append(row, texts.List[at])
			default:
				row = append(row, "n"+c.Value)
			}
		}
		rows = append(rows, row)
	}
	return rows
}
