//go:build browser

package e2e

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

const twoTubes = "Item\tQty\tTube OD (mm)\tWall avg (mm)\tTube material\tLength overall (mm)\tFin type\tFin material\tFin height (mm)\tFPI\n" +
	"A\t40\t25.4\t2.11\tSA-179\t6000\tL\tAl\t15.8\t10\n" +
	"B\t60\t31.75\t2.77\tSA-179\t7000\tL\tAl\t15.8\t11\n"

// The same enquiry a week later: more of the first, other fins on the second, and a third.
var threeTubes = strings.NewReplacer("A\t40", "A\t45", "15.8\t11", "12.7\t11").Replace(twoTubes) + "C\t12\t25.4\t2.11\tSA-179\t6000\tL\tAl\t15.8\t9\n"

// intoEnquiry reads a text as that of the enquiry that is open.
func intoEnquiry(page *browser.Page, text string) {
	choose(page, id("enquiry-as"), "open")
	page.Focus(id("enquiry-text"))
	browser.Eval[any](page, element(id("enquiry-text"))+`.value = `+js(text))
	page.Press(kb.Enter, chromedp.ModifierCtrl)
	waitRated(page)
}

// fillIn puts a text into an entry of the enquiry's heading by the keyboard.
func fillIn(page *browser.Page, name, text string) {
	page.Focus(id("enquiry-" + name))
	page.Press("a", chromedp.ModifierCtrl)
	page.Press(text)
	page.Press(kb.Tab)
}

// waitListed waits until the list of enquiries says so of its lines.
func waitListed(page *browser.Page, condition string) {
	page.Wait(`((list) => ` + condition + `)([...` + element(id("enquiry-list")) + `.tBodies[0].rows].map((row) => row.innerText))`)
}

// cellsOf are the cells of a table, a line each.
func cellsOf(page *browser.Page, table string) string {
	return browser.Eval[string](page, `[...`+element(id(table))+`.tBodies[0].rows].map((row) => [...row.cells].map((cell) => cell.textContent).join("|")).join("\n")`)
}

// catchDownloads keeps what the page saves as a file, as text.
func catchDownloads(page *browser.Page) {
	browser.Eval[any](page, `(() => {
		const made = new Map(), make = URL.createObjectURL;
		URL.createObjectURL = (blob) => { const url = make.call(URL, blob); made.set(url, blob); return url; };
		HTMLAnchorElement.prototype.click = function () { made.get(this.href).text().then((text) => { globalThis.savedFile = text; }); };
	})()`)
}

// sendTo opens a file of a text in an input.
func sendTo(page *browser.Page, input, text string) {
	browser.Eval[any](page, `((input) => {
		const files = new DataTransfer();
		files.items.add(new File([`+js(text)+`], "enquiries.json"));
		input.files = files.files;
		input.dispatchEvent(new Event("change", {bubbles: true}));
	})(`+element(id(input))+`)`)
}

// An enquiry is kept as it stands, opens after a reload as it was left, becomes a revision that is compared with the one before, is found by
// what was quoted before, and goes to another browser by a file.
func TestEnquiryIsKept(t *testing.T) {
	page := opened(t, browser.Desk, "")
	readEnquiry(page, twoTubes)
	fillIn(page, "customer", "Northmoor Coolers")
	fillIn(page, "reference", "NC-77")
	fillIn(page, "revision", "A")
	// A cell is typed over, so that more than the text has to be kept.
	page.Focus(id("enquiry-grid"))
	page.Press(kb.Home, chromedp.ModifierCtrl)
	page.Press(kb.ArrowDown)
	page.Press(kb.ArrowRight)
	page.Press(kb.ArrowRight)
	page.Press("64")
	page.Press(kb.Enter)
	page.Wait(inEnquiry(1, 2) + ` === "64"`)
	waitRated(page)
	price := browser.Eval[string](page, total("price"))
	page.Focus(id("enquiry-kept"))
	page.Press(kb.Enter)
	waitListed(page, `list.length === 1 && list[0].includes("NC-77") && list[0].includes("2 items") && list[0].includes(`+js(price)+`)`)

	page.Reload()
	page.WaitMark("finwright:figures")
	page.Focus(id("section-enquiry"))
	page.Press(kb.Enter)
	page.Wait(element(id("enquiry-text")) + `.value.startsWith("Item")`)
	waitRated(page)
	page.Wait(inEnquiry(1, 2) + ` === "64" && ` + total("price") + ` === ` + js(price))
	if customer := page.Value(id("enquiry-customer")); customer != "Northmoor Coolers" {
		t.Errorf("the customer is %q", customer)
	}
	choose(page, id("enquiry-state"), "offered")
	page.Focus(id("enquiry-revise"))
	page.Press(kb.Enter)
	page.Wait(element(id("enquiry-revision")) + `.value === "B" && ` + element(id("enquiry-state")) + `.value === "asked"`)
	intoEnquiry(page, threeTubes)
	page.Wait(`!` + element("#enquiry-changes") + `.hidden`)
	page.Focus(id("enquiry-changes"))
	page.Press(kb.Enter)
	page.Wait(element(id("enquiry-changes-said")) + `.textContent.startsWith("2 items say something else, 1 is new, 0 are gone")`)
	changes := cellsOf(page, "enquiry-changes-table")
	for _, want := range []string{"A|Quantity|40|45|+5|+", "B|Quantity|64|60|−4|−", "|Fin height|15.8 mm|12.7 mm||", "C|new item||12 tubes, 25.4 mm", "All items|", "104 tubes", "117 tubes", "|+13|+"} {
		if !strings.Contains(changes, want) {
			t.Errorf("of the revisions it is not said %q:\n%s", want, changes)
		}
	}
	page.Screenshot(shots, "enquiry-revisions")

	// What was won is told beside the price of the same tube in the next enquiry.
	choose(page, id("enquiry-state"), "won")
	readEnquiry(page, "1) 500 off 1 in x 2.11 mm avg SA-179 x 6 m, L fins Al 15.8 mm x 10 fpi")
	page.Wait(element(id("enquiry-quotes")) + `.tBodies[0].rows.length >= 3`)
	quotes := cellsOf(page, "enquiry-quotes")
	for _, want := range []string{"This item, now|1||", "|500|", "Northmoor Coolers, NC-77, revision A|A|offered|", "Northmoor Coolers, NC-77, revision B|A|won|", "|40|", "|45|", "same tube", "Fin count 9 fpi, here 10 fpi"} {
		if !strings.Contains(quotes, want) {
			t.Errorf("of earlier quotes it is not said %q:\n%s", want, quotes)
		}
	}
	page.Screenshot(shots, "enquiry-quoted")
	for _, v := range page.Audit(site) {
		t.Errorf("%v", v)
	}

	// Search, remove and undo.
	page.Focus(id("enquiry-kept"))
	page.Press(kb.Enter)
	waitListed(page, `list.length === 3`)
	page.Type(id("enquiry-search"), "northmoor 1 1/4 in")
	waitListed(page, `list.length === 2`)
	page.Press("a", chromedp.ModifierCtrl)
	page.Press(kb.Backspace)
	waitListed(page, `list.length === 3`)
	page.Screenshot(shots, "enquiry-kept")
	page.Focus(id("enquiry-list") + ` tr:nth-child(2) ` + id("enquiry-remove"))
	page.Press(kb.Enter)
	waitListed(page, `list.length === 2`)
	page.Wait(`document.activeElement.id === "enquiry-kept-undo"`)
	page.Press(kb.Enter)
	waitListed(page, `list.length === 3`)

	// By a file into a browser that keeps nothing; brought again it adds nothing.
	catchDownloads(page)
	page.Click(id("enquiry-export"))
	page.Wait(`globalThis.savedFile`)
	file := browser.Eval[string](page, `globalThis.savedFile`)
	other := opened(t, browser.Desk, "")
	other.Click(id("section-enquiry"))
	other.Wait("!" + element(id("enquiry-read")) + ".disabled")
	other.Click(id("enquiry-kept"))
	sendTo(other, "enquiry-import-input", strings.Replace(file, `"version":1`, `"version":9`, 1))
	other.Wait(element(id("enquiry-kept-told")) + `.textContent.includes("newer version")`)
	sendTo(other, "enquiry-import-input", file)
	other.Wait(element(id("enquiry-kept-told")) + `.textContent.startsWith("3 enquiries are added")`)
	waitListed(other, `list.length === 3`)
	sendTo(other, "enquiry-import-input", file)
	other.Wait(element(id("enquiry-kept-told")) + `.textContent.includes("3 were here already")`)
	waitListed(other, `list.length === 3`)
	other.Focus(id("enquiry-list") + ` tr:last-child ` + id("enquiry-open"))
	other.Press(kb.Enter)
	waitRated(other)
	other.Wait(element(id("enquiry-reference")) + `.value === "NC-77"`)
	quiet(t, page)
	quiet(t, other)
}

// A store that takes nothing is told, what stands in the page stays and can be saved; two tabs that change one enquiry keep both.
func TestEnquiryNotKeptIsTold(t *testing.T) {
	page := opened(t, browser.Desk, "")
	readEnquiry(page, twoTubes)
	fillIn(page, "customer", "Northmoor Coolers")
	page.Click(id("enquiry-kept"))
	waitListed(page, `list.length === 1 && list[0].includes("Northmoor")`)
	browser.Eval[any](page, `(() => {
		const { put } = IDBObjectStore.prototype;
		globalThis.full = true;
		IDBObjectStore.prototype.put = function (...args) { if (globalThis.full) throw new DOMException("full", "QuotaExceededError"); return put.apply(this, args); };
	})()`)
	fillIn(page, "reference", "NC-78")
	page.Wait(`document.querySelector("#notes").textContent.includes("store is full")`)
	catchDownloads(page)
	page.Click(id("enquiry-export"))
	page.Wait(`globalThis.savedFile?.includes("NC-78")`)
	browser.Eval[any](page, `globalThis.full = false`)
	fillIn(page, "revision", "2")
	page.Wait(`!document.querySelector("#notes").textContent.includes("store is full")`)
	waitListed(page, `list.length === 1 && list[0].includes("NC-78")`)

	beside := page.Beside()
	beside.Open("")
	beside.WaitMark("finwright:drawn")
	beside.Front()
	beside.Click(id("section-enquiry"))
	beside.Wait("!" + element(id("enquiry-read")) + ".disabled")
	beside.Click(id("enquiry-kept"))
	waitListed(beside, `list.length === 1`)
	beside.Click(id("enquiry-list") + " " + id("enquiry-open"))
	waitRated(beside)
	fillIn(beside, "revision", "3")
	waitListed(beside, `list.length === 1 && list[0].includes("3")`)
	page.Front()
	fillIn(page, "revision", "4")
	page.Wait(`document.querySelector("#notes").textContent.includes("Another tab has changed the same enquiry")`)
	waitListed(page, `list.length === 2`)
}
