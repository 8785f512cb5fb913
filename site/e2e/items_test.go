//go:build browser

package e2e

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/core/document"
	"finwright/core/shop"
	"finwright/site/browser"
	"finwright/testdata/cases"
)

// itemRow is the selector of a row of the list of items, counted from one.
func itemRow(place int) string { return fmt.Sprintf(`#items-list [aria-posinset="%d"]`, place) }

// takeItem takes an item in hand by its row.
func takeItem(page *browser.Page, place int) {
	page.Click(itemRow(place))
	waitInHand(page, place)
}

func waitInHand(page *browser.Page, place int) {
	page.Wait(element(itemRow(place)) + `?.getAttribute("aria-selected") === "true"`)
}

// manyItems is a file of a job of n items that differ in height and mark.
func manyItems(t *testing.T, n int) string {
	t.Helper()
	job := document.JobOf([]document.Document{cases.First()})
	job.Items = job.Items[:0]
	for i := range n {
		d, err := document.Edit(job.Base, document.Command{Op: "all", Commands: []document.Command{
			{Op: "mark", Text: fmt.Sprintf("E-%05d", i+1)},
			{Op: "set", Values: []document.Value{{Field: "quantity", Steps: 1 + i%90}}},
		}})
		if err != nil {
			t.Fatal(err)
		}
		job.Items = append(job.Items, document.Item{ID: fmt.Sprintf("i%d", i+1), Design: d.From(job.Base)})
	}
	text, err := json.Marshal(map[string]any{"format": document.Format, "version": document.Version, "head": job.Head, "base": job.Base, "items": job.Items})
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// The items of a job: one more, one like it, its mark, one less; undo takes each back and brings the item in hand.
func TestItems(t *testing.T) {
	page := opened(t, browser.Desk, "")
	if !browser.Eval[bool](page, element(id("items"))+".hidden") {
		t.Error("a job of one item shows a list")
	}
	enter(page, "fin_height", "12 mm")
	page.Click(id("items-open"))
	page.Click(id("items-copy"))
	waitInHand(page, 2)
	waitEntry(page, "fin_height", "12 mm")
	page.Type(id("items-mark"), "E-102")
	page.WaitText(itemRow(2)+" [data-part=mark]", "E-102")
	enter(page, "fin_height", "13 mm")
	page.Click(id("items-add"))
	waitInHand(page, 3)
	waitTyped(page, "fin_height", cases.First().Fields["fin_height"].Text)
	takeItem(page, 1)
	waitEntry(page, "fin_height", "12 mm")
	page.Click(id("items-remove"))
	page.Wait(element(id("items-count")) + `.textContent === "2"`)
	waitInHand(page, 1)
	waitEntry(page, "fin_height", "13 mm")
	page.Reload()
	page.WaitMark("finwright:drawn")
	page.WaitText(itemRow(1)+" [data-part=mark]", "E-102")
	page.Wait(element(id("items-count")) + `.textContent === "2"`)

	// By keys: the second row in hand, changed, then the first; undo goes back to the second.
	page.Focus(id("items-list"))
	page.Press(kb.End)
	page.Press(kb.Enter)
	waitInHand(page, 2)
	was := page.Value(entry("fin_height"))
	enter(page, "fin_height", "11 mm")
	takeItem(page, 1)
	page.Click(id("undo"))
	waitInHand(page, 2)
	waitEntry(page, "fin_height", was)
	page.Click(id("items-remove"))
	waitInHand(page, 1)
	page.Click(id("undo"))
	waitInHand(page, 2)
	waitEntry(page, "fin_height", was)
	quiet(t, page)
}

// spent counts what the page asks of the store and of the engine.
const spent = `globalThis.spent = {writes: 0, written: 0, sent: 0};
	{
		const {setItem} = Storage.prototype, {postMessage} = Worker.prototype;
		Storage.prototype.setItem = function (key, text) { if (this === localStorage) { spent.writes++; spent.written += text.length; } return setItem.call(this, key, text); };
		Worker.prototype.postMessage = function (data, ...rest) { if (data.method === "edit") spent.sent += data.args.length; return postMessage.call(this, data, ...rest); };
	}`

// In a job of ten thousand items an edit, an undo and what is written of them are as much as in a job of one, and the list
// has no more rows than are in sight.
func TestTenThousandItemsCostWhatOneDoes(t *testing.T) {
	type cost struct{ Writes, Written, Sent int }
	var costs [][]cost
	for _, n := range []int{1, 10_000} {
		page := plain.Page(t, browser.Desk)
		page.Before(spent)
		page.Open("")
		page.WaitMark("finwright:drawn")
		openFile(page, js(manyItems(t, n)))
		page.Wait(slot + ".count === " + fmt.Sprint(n) + " && " + kept + `.mark === "E-00001"`)
		waitState(page, "answered")
		page.Focus(entry("fin_height"))
		var of []cost
		for _, act := range []func(){
			func() { insert(page, entry("fin_height"), "12 mm"); waitTyped(page, "fin_height", "12 mm") },
			func() { page.Click(id("undo")); page.Wait(kept + `.fields.fin_height.text !== "12 mm"`) },
		} {
			waitState(page, "answered")
			page.Wait(storedItem + "?.shown")
			browser.Eval[bool](page, "(Object.assign(spent, {writes: 0, written: 0, sent: 0}), true)")
			act()
			waitState(page, "answered")
			page.Wait(storedItem + "?.shown")
			of = append(of, browser.Eval[cost](page, "spent"))
		}
		costs = append(costs, of)
		page.Reload()
		page.Wait(slot + ".count === " + fmt.Sprint(n) + " && document.body.dataset.answer === 'answered'")
		if again := browser.Eval[cost](page, "spent"); again.Writes > 10 {
			t.Errorf("of %d items a reload writes %d texts", n, again.Writes)
		}
		if made := browser.Eval[int](page, `document.querySelectorAll("#items-space > *").length`); made > 20 {
			t.Errorf("%d rows are made of %d items", made, n)
		}
	}
	for i, of := range []string{"an edit", "an undo"} {
		one, many := costs[0][i], costs[1][i]
		t.Logf("%s of one item: %+v, of ten thousand: %+v", of, one, many)
		if many.Writes > one.Writes || many.Written > one.Written+200 || many.Sent > one.Sent+200 {
			t.Errorf("%s costs %+v, in a job of one %+v", of, many, one)
		}
	}
}

// What an item answered is kept with it, by the day, the program and the shop. Opened by another shop, what is answered
// otherwise is told with its cause, until it is read.
func TestChangedAnswersAreTold(t *testing.T) {
	page := opened(t, browser.Desk, "")
	enter(page, "fin_height", "12 mm")
	page.Wait(storedItem + "?.shown?.cells.length > 10")
	if day := browser.Eval[string](page, storedItem+".shown.day"); len(day) != len("2026-11-27") {
		t.Errorf("shown on %q", day)
	}
	page.Reload()
	page.WaitMark("finwright:drawn")
	waitState(page, "answered")
	if !browser.Eval[bool](page, element(id("changed"))+".hidden") {
		t.Error("the same program and shop are said to answer otherwise")
	}
	other := string(shop.House().Save())
	other = strings.Replace(other, `"line": "`, `"line": "1`, 1)
	browser.Eval[bool](page, `(localStorage.setItem("finwright.shop", `+js(other)+`), true)`)
	page.Reload()
	page.Wait(element(id("changed")) + `.checkVisibility() && ` + element(id("changed")) + `.textContent.includes("The shop is another.")`)
	page.Click(id("changed-read"))
	page.Wait(element(id("changed")) + ".hidden")
	page.Wait(slot + ".by.length === 2")
	page.Reload()
	page.WaitMark("finwright:drawn")
	waitState(page, "answered")
	if !browser.Eval[bool](page, element(id("changed"))+".hidden") {
		t.Error("what was read is told again")
	}
	quiet(t, page)
}

// A long job that a file takes the place of is left as it lies in the store, goes to Earlier work whole, and comes back; of
// its items nothing is left behind in the store then.
func TestLongJobIsLeftWhole(t *testing.T) {
	const n = 300
	page := opened(t, browser.Desk, "")
	openFile(page, js(manyItems(t, n)))
	page.Wait(kept + `?.mark === "E-00001"`)
	enter(page, "fin_height", "12 mm")
	set := browser.Eval[string](page, slot+".set")
	loadExample(page, 1)
	enter(page, "fin_height", "11 mm") // the last that was worked on stays for the next tab
	page.Wait(`!Object.keys(localStorage).some((key) => key.startsWith("finwright.item." + ` + js(set) + `))`)
	texts := slices.DeleteFunc(earlierTexts(page, "design"), func(text string) bool { return !strings.Contains(text, "E-00300") })
	if len(texts) != 1 {
		t.Fatalf("%d pieces of earlier work", len(texts))
	}
	f, err := document.OpenFile([]byte(texts[0]))
	if err != nil || len(f.Job.Items) != n || f.Job.Design(0).Fields["fin_height"].Text != "12 mm" || f.Job.Items[n-1].ID != "i300" {
		t.Fatalf("%d items were left, %v", len(f.Job.Items), err)
	}
	openEarlier(page, "earlier-open", 2)
	browser.Eval[bool](page, `(`+rows+`[1].querySelector("[data-part=take]").click(), true)`)
	page.Wait(slot + ".count === " + fmt.Sprint(n))
	waitEntry(page, "fin_height", "12 mm")
	quiet(t, page)
}

// What is set aside stays with its item, through another in hand and a reload.
func TestWhatIsSetAsideStaysWithItsItem(t *testing.T) {
	page := faulty(t)
	page.Click(id("items-open"))
	page.Click(id("items-copy"))
	waitInHand(page, 2)
	waitState(page, "answered")
	deafTo(page, "77.7")
	page.Type(entry("fin_height"), "77.7 mm")
	waitState(page, "lost")
	takeItem(page, 1)
	waitState(page, "answered")
	page.Reload()
	page.WaitMark("finwright:figures")
	waitInHand(page, 1)
	waitState(page, "answered")
	takeItem(page, 2)
	waitEntry(page, "fin_height", "77.7 mm")
	waitState(page, "lost")
}

// An undo may bring another item in hand: what is entered behind it is that one's, also after a reload before the answer.
func TestEntryBehindAnUndoIsOfItsItem(t *testing.T) {
	page := faulty(t)
	page.Click(id("items-open"))
	page.Click(id("items-copy"))
	waitInHand(page, 2)
	enter(page, "fin_height", "13 mm")
	takeItem(page, 1)
	waitState(page, "answered")
	page.Wait(storedItem + "?.shown") // at rest, so that nothing is asked beside the undo
	deafTo(page, "document")
	page.Click(id("undo"))
	insert(page, entry("tube_od"), "30 mm")
	page.Wait(slot + ".pending.length === 1")
	if browser.Eval[bool](page, slot+".pending[0].item !== "+slot+".item") {
		t.Error("it waits for the item that was in hand before")
	}
	page.Reload()
	page.WaitMark("finwright:drawn")
	waitInHand(page, 2)
	waitTyped(page, "tube_od", "30 mm")
}

// Of what is said of a job one part does not take back another that waits.
func TestPartsOfTheHeadAreApart(t *testing.T) {
	page := opened(t, browser.Desk, "")
	browser.Eval[bool](page, `(() => {
		for (const [id, text] of [["field-fin_height", "11 mm"], ["head-reference", "Q-7"], ["head-revision", "B"]]) {
			const input = document.querySelector("[data-testid=" + id + "]");
			input.value = text;
			input.dispatchEvent(new Event("change", {bubbles: true}));
		}
		return true;
	})()`)
	page.Wait(slot + `.head.revision === "B"`)
	if got := browser.Eval[string](page, slot+".head.reference"); got != "Q-7" {
		t.Errorf("the reference is %q", got)
	}
}
