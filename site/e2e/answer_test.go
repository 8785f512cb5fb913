//go:build browser

package e2e

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

// hurried makes the page's watch over the engine, which counts ticks, run twenty times as fast while a worker is deaf.
const hurried = `globalThis.setInterval = ((set) => (act, ms) => set(() => {
	for (let i = 0; i < (globalThis.deafened ? 20 : 1); i++) act();
}, ms))(setInterval);`

// deaf loses each message to an engine that holds the word, so that the call is never answered.
const deaf = `(() => {
	const {postMessage, terminate} = Worker.prototype;
	Worker.prototype.postMessage = function (message, ...rest) {
		if (globalThis.deafTo && JSON.stringify(message.args ?? "").includes(deafTo)) {
			globalThis.unheard = (globalThis.unheard ?? 0) + 1;
			globalThis.deafened = true;
			return;
		}
		return postMessage.call(this, message, ...rest);
	};
	Worker.prototype.terminate = function () {
		globalThis.deafened = false;
		terminate.call(this);
	};
})();`

// faulty is a tab whose engine can be made deaf to a word, with a hurried watch.
func faulty(t *testing.T) *browser.Page {
	t.Helper()
	page := plain.Page(t, browser.Desk)
	page.Before(hurried + deaf)
	page.Open("")
	page.WaitMark("finwright:drawn")
	return page
}

func deafTo(page *browser.Page, word string) {
	browser.Eval[bool](page, "(globalThis.unheard = 0, globalThis.deafTo = "+js(word)+", true)")
}

func waitState(page *browser.Page, state string) {
	page.Wait("document.body.dataset.answer === " + js(state))
}

// A worker that dies without a word is noticed, and what was asked of it is asked again.
func TestDeadWorkerIsReplaced(t *testing.T) {
	page := faulty(t)
	if page.InWorkers("close()") == 0 {
		t.Fatal("no worker was reached")
	}
	browser.Eval[bool](page, "(globalThis.deafened = true)")
	page.Type(entry("fin_height"), "11 mm")
	page.WaitText(figureOf("fin_od"), "47.40")
	waitState(page, "answered")
}

// What stops the engine twice is set aside where it was typed; the rest can still be computed, and nothing in sight is
// false: figures are greyed, copies and paper say so, and nothing takes the entry back without a word.
func TestEntryThatStopsTheEngineIsSetAside(t *testing.T) {
	page := faulty(t)
	before := page.Text(figureOf("fin_od"))
	deafTo(page, "13.13")
	insert(page, entry("fin_height"), "13.13 mm") // at once: "13" would be answered
	page.Wait("document.body.matches('.stale')")
	page.Wait("!" + element(id("busy")) + ".hidden")
	waitState(page, "lost")
	if asked := browser.Eval[int](page, "unheard"); asked != 2 {
		t.Errorf("asked %d times, want twice", asked)
	}
	page.Wait(element(id("busy")) + ".hidden")
	page.Wait(element(id("error-fin_height")) + ".textContent !== ''")
	waitEntry(page, "fin_height", "13.13 mm")
	if got := page.Text(figureOf("fin_od")); got != before {
		t.Errorf("fin OD %s, want the last answered %s", got, before)
	}
	if status := page.Text(id("status")); strings.Contains(status, "usual range") || !strings.Contains(status, "cannot be used") {
		t.Errorf("status: %s", status)
	}

	// Another entry is answered; the first stays as it was typed, and with it the mark.
	enter(page, "tube_od", "30 mm")
	page.WaitText(figureOf("fin_od"), "61.75")
	waitEntry(page, "fin_height", "13.13 mm")
	page.Wait("document.body.matches('.stale') && document.body.dataset.answer === 'lost'")
	copied := browser.Eval[string](page, `(() => {
		const value = `+element(figureOf("fin_od"))+`;
		getSelection().selectAllChildren(value);
		const event = new ClipboardEvent("copy", {clipboardData: new DataTransfer(), bubbles: true, cancelable: true});
		value.dispatchEvent(event);
		return event.clipboardData.getData("text/plain");
	})()`)
	if !strings.Contains(copied, "do not belong") {
		t.Errorf("copied %q", copied)
	}
	if !unansweredOnPaper(page) {
		t.Error("the paper does not say that its figures are of other entries")
	}

	// It is there after a reload too, without being asked again.
	page.Reload()
	page.WaitMark("finwright:figures")
	waitEntry(page, "fin_height", "13.13 mm")
	waitState(page, "lost")
	page.WaitText(figureOf("fin_od"), "61.75")

	// Typed anew it is asked anew.
	enter(page, "fin_height", "12 mm")
	page.WaitText(figureOf("fin_od"), "54.00")
	waitState(page, "answered")
	page.Wait("!document.body.matches('.stale')")
	if unansweredOnPaper(page) {
		t.Error("the paper of an answered design says that it is none")
	}
}

// What is set aside goes with undo, which takes back nothing else.
func TestUndoTakesWhatWasSetAside(t *testing.T) {
	page := faulty(t)
	enter(page, "tube_od", "30 mm")
	page.WaitText(figureOf("fin_od"), "61.75")
	deafTo(page, "13.13")
	page.Type(entry("fin_height"), "13.13 mm")
	waitState(page, "lost")
	page.Click(id("undo"))
	waitState(page, "answered")
	waitTyped(page, "fin_height", "5/8 in")
	page.Wait(element(entry("fin_height")) + `.value !== "13.13 mm"`)
	page.WaitText(figureOf("fin_od"), "61.75")
	page.WaitText(id("error-fin_height"), "")
}

// Of several entries on their way the one at fault is found; the others count.
func TestFaultAmongSeveralIsFound(t *testing.T) {
	page := faulty(t)
	deafTo(page, "13.13")
	browser.Eval[bool](page, `(() => {
		for (const [field, text] of [["tube_od", "30 mm"], ["fin_height", "13.13 mm"], ["fin_pitch", "3 mm"]]) {
			const input = document.querySelector("[data-testid=field-" + field + "]");
			input.value = text;
			input.dispatchEvent(new Event("change", {bubbles: true}));
		}
		return true;
	})()`)
	waitTyped(page, "tube_od", "30 mm")
	waitTyped(page, "fin_pitch", "3 mm")
	waitState(page, "lost")
	waitEntry(page, "fin_height", "13.13 mm")
	page.WaitText(figureOf("fin_od"), "61.75")
	page.WaitText(id("error-tube_od"), "")
}

// A long answer can be given up.
func TestLongAnswerCanBeStopped(t *testing.T) {
	page := plain.Page(t, browser.Desk)
	page.Before(deaf)
	page.Open("")
	page.WaitMark("finwright:drawn")
	deafTo(page, "13.13")
	page.Type(entry("fin_height"), "13.13 mm")
	page.Wait("!" + element(id("busy")) + ".hidden")
	browser.Eval[bool](page, "(globalThis.unheard = 0, "+element(id("busy-stop"))+".click(), true)")
	waitState(page, "lost")
	waitEntry(page, "fin_height", "13.13 mm")
	enter(page, "tube_od", "30 mm")
	page.WaitText(figureOf("fin_od"), "61.75")
	if asked := browser.Eval[int](page, "unheard"); asked != 0 {
		t.Errorf("asked %d times after it was stopped", asked)
	}
}

// A text that is being typed is not answered yet, and says so at once.
func TestTypingIsNotAnswered(t *testing.T) {
	page := atDesk(t)
	waitState(page, "answered")
	page.Focus(entry("fin_height"))
	states := browser.Eval[string](page, `(() => {
		const input = `+element(entry("fin_height"))+`;
		input.value = "high";
		input.dispatchEvent(new Event("input", {bubbles: true}));
		return document.body.dataset.answer + " " + document.body.matches(".stale");
	})()`)
	same(t, "while typing", states, "entered false")
	page.Wait("document.body.matches('.stale')")
	if browser.Eval[bool](page, element("#status .line")+".checkVisibility({visibilityProperty: true})") {
		t.Errorf("what was said of the last tube still stands: %s", page.Text(id("status")))
	}
	page.Press(kb.Escape)
	waitState(page, "answered")
}

// A working stays with its figure, whatever section is in view, and never shows an older design's numbers as this one's.
func TestWorkingOutlastsItsSection(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Click(id("section-heat"))
	page.Wait(element(id("listed-duty-value")) + "?.checkVisibility()")
	page.Click(id("listed-duty") + " .name")
	page.Wait(element(id("working")) + ".open && " + element(id("working-result")) + ".textContent !== ''")
	before := page.Text(id("working-result"))
	page.Click(id("section-making"))
	page.Wait(element(id("verdicts")) + ".checkVisibility()")
	enter(page, "fin_height", "8 mm")
	page.Wait(element(id("working-result")) + ".textContent !== " + js(before))
	page.Type(entry("tube_od"), "wide")
	page.Wait("document.body.matches('.stale')")
	grey := browser.Eval[bool](page, "getComputedStyle("+element(id("working-result"))+").color === getComputedStyle(document.querySelector('.working dt')).color")
	if !grey {
		t.Error("the working of a stale figure is not greyed")
	}
	quiet(t, page)
}

// A key held down makes no queue: what comes faster than it can be answered is answered together.
func TestHeldKeyLeavesNoQueue(t *testing.T) {
	page := plain.Page(t, browser.Desk)
	page.Before(`(() => {
		const post = Worker.prototype.postMessage;
		Worker.prototype.postMessage = function (message, ...rest) { globalThis.edits = (globalThis.edits ?? 0) + (message.method === "edit"); return post.call(this, message, ...rest); };
	})();`)
	page.Open("")
	page.WaitMark("finwright:drawn")
	enter(page, "fin_height", "10 mm")
	waitState(page, "answered")
	const steps = 105
	browser.Eval[bool](page, fmt.Sprintf(`(async () => {
		globalThis.edits = 0;
		const input = %s;
		input.focus();
		for (let i = 0; i < %d; i++) {
			input.dispatchEvent(new KeyboardEvent("keydown", {key: "ArrowUp", bubbles: true, cancelable: true}));
			if (i %% 20 === 0) await new Promise((resolve) => setTimeout(resolve));
		}
		return true;
	})()`, element(entry("fin_height")), steps))
	waitState(page, "answered")
	waitTyped(page, "fin_height", "20.5 mm")
	if edits := browser.Eval[int](page, "edits"); edits > 20 {
		t.Errorf("%d steps cost %d answers", steps, edits)
	}
}

// What can be pressed is the same element after an answer, so that no press is lost to one that comes between.
func TestRowsOutlastAnAnswer(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Click(id("section-making"))
	page.Wait(element(id("rule-wall_left")) + " !== null")
	browser.Eval[bool](page, `(globalThis.rows = [...document.querySelectorAll("#verdicts tbody, #making-lines > div")], globalThis.first = rows[0], true)`)
	enter(page, "fin_height", "14 mm")
	waitState(page, "answered")
	if lost := browser.Eval[int](page, "rows.filter((row) => !row.isConnected).length"); lost > 0 {
		t.Errorf("%d rows were made anew", lost)
	}
	page.Click(id("section-heat"))
	page.Wait(`document.querySelectorAll("#methods tbody").length > 2`)
	browser.Eval[bool](page, `(globalThis.rows = [...document.querySelectorAll("#methods tbody, #resistances button")], true)`)
	enter(page, "fin_height", "13 mm")
	waitState(page, "answered")
	if lost := browser.Eval[int](page, "rows.filter((row) => !row.isConnected).length"); lost > 0 {
		t.Errorf("%d correlations or resistances were made anew", lost)
	}
}

// Figures do not wait for pictures: a chart that fails takes nothing with it.
func TestFiguresOutlastADeadPicture(t *testing.T) {
	page := opened(t, browser.Desk, "")
	browser.Eval[bool](page, `(CanvasRenderingContext2D.prototype.setTransform = CanvasRenderingContext2D.prototype.fillRect = () => { throw new Error("made by the test"); },
		DOMParser.prototype.parseFromString = () => { throw new Error("made by the test"); }, true)`)
	enter(page, "fin_height", "11 mm")
	page.WaitText(figureOf("fin_od"), "47.40")
	page.Click(id("section-making"))
	page.Wait(element(id("verdicts")) + ".checkVisibility()")
	enter(page, "fin_height", "12 mm")
	page.WaitText(figureOf("fin_od"), "49.40")
	waitState(page, "answered")
}

// While an entry cannot be used, the last tube is drawn for the room that there is.
func TestRefusedDrawingFollowsTheWindow(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Type(entry("fin_height"), "high")
	waitState(page, "refused")
	defer page.Resize(browser.Desk)
	page.Resize(browser.View{Width: 1200, Height: 800})
	page.Wait(`(() => {
		const sheet = document.querySelector(".drawing").getBoundingClientRect();
		return [...document.querySelectorAll(".drawing text")].every((text) => text.getBoundingClientRect().right <= sheet.right);
	})()`)
	waitState(page, "refused")
}

// unansweredOnPaper is whether a sheet printed now says that its figures are not of its entries.
func unansweredOnPaper(page *browser.Page) bool {
	page.Paper()
	defer page.Resize(browser.Desk)
	return browser.Eval[bool](page, `document.querySelector(".unanswered").checkVisibility()`)
}

// Whatever stops the engine at the start, a change, the shop or the design, is put aside, and the page comes up with the rest.
func TestWhatStopsTheEngineStopsNoReload(t *testing.T) {
	page := faulty(t)
	enter(page, "fin_height", "11 mm")
	openShop(page)
	enterInShop(page, "rates/line", "917.31 /h")
	page.Wait(`Object.values(localStorage).some((text) => text.includes("917.31"))`)
	page.Click(id("shop-close"))
	page.Click(id("section-surface"))
	enter(page, "tube_od", "30 mm")

	page.Before(`globalThis.deafTo = "917.31";`)
	page.Reload()
	page.WaitMark("finwright:drawn")
	waitEntry(page, "tube_od", "30 mm")
	page.WaitText(figureOf("fin_od"), "52.00")

	page.Before(`globalThis.deafTo = "11 mm";`)
	page.Reload()
	page.WaitMark("finwright:drawn")
	waitState(page, "answered")
	page.Wait(element(entry("tube_od")) + `.value !== "30 mm"`)
	enter(page, "tube_od", "31 mm")
	waitState(page, "answered")
}

// A text that is typed once more as it stood is being typed all the same: an answer that comes between does not take it.
func TestTypingTheSameAgainLosesNothing(t *testing.T) {
	page := plain.Page(t, browser.Desk)
	page.Before(`(() => {
		const post = Worker.prototype.postMessage;
		Worker.prototype.postMessage = function (message, ...rest) {
			post.call(this, message, ...rest);
			if (message.method === "edit" && message.args.includes('"text":"9 mm"')) globalThis.onAsk?.();
		};
	})();`)
	page.Open("")
	page.WaitMark("finwright:drawn")
	enter(page, "fin_height", "12 mm")
	waitState(page, "answered")
	browser.Eval[bool](page, `(() => {
		const input = `+element(entry("fin_height"))+`;
		const type = (text) => { input.value = text; input.dispatchEvent(new Event("input", {bubbles: true})); };
		input.focus();
		globalThis.onAsk = () => { globalThis.onAsk = null; type("12 mm"); };
		type("9 mm");
		return true;
	})()`)
	page.Wait("globalThis.onAsk === null")
	waitState(page, "answered")
	page.WaitText(figureOf("fin_od"), "49.40")
	waitEntry(page, "fin_height", "12 mm")
	// What was handed over gives way to an undo, also where the cursor is still in the field.
	page.Press(kb.Enter)
	waitState(page, "answered")
	page.Press("z", chromedp.ModifierCtrl)
	page.WaitText(figureOf("fin_od"), "57.15")
	waitEntry(page, "fin_height", "15.875 mm")
}
