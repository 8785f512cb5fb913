//go:build browser

package e2e

import (
	"net/http"
	"strings"
	"testing"

	"finwright/site/browser"
)

// still makes the engine's first answer wait until the page is told `go()`, or is loaded again without the word for it.
const still = `(() => {
	const {postMessage} = Worker.prototype, held = [];
	let stands = (sessionStorage.getItem("still") ?? "yes") === "yes";
	Worker.prototype.postMessage = function (message, ...rest) {
		if (stands && message.method === "start") return void held.push(() => postMessage.call(this, message, ...rest));
		return postMessage.call(this, message, ...rest);
	};
	globalThis.go = () => { stands = false; for (const one of held.splice(0)) one(); return true; };
})();`

func stillNextTime(page *browser.Page, yes string) {
	browser.Eval[bool](page, `(sessionStorage.setItem("still", `+js(yes)+`), true)`)
}

// What is entered before the first answer is kept like all else: on a first visit, beside a working copy, and through a
// reload that is not answered either.
func TestEntryBeforeTheFirstAnswerOutlastsAReload(t *testing.T) {
	page := plain.Page(t, browser.Desk)
	page.Before(still)
	page.Open("")
	page.Type(entry("fin_height"), "11 mm")
	halfType(page, entry("fin_pitch"), "3 mm")
	page.Wait(slot + ".pending?.length === 2")
	stillNextTime(page, "no")
	page.Reload()
	page.WaitMark("finwright:drawn")
	page.WaitText(figureOf("fin_od"), "47.40")
	waitTyped(page, "fin_pitch", "3 mm")
	waitState(page, "answered")

	stillNextTime(page, "yes")
	page.Reload()
	page.Type(entry("tube_od"), "30 mm")
	page.Wait(slot + ".pending?.length === 1")
	page.Reload()
	page.Type(entry("fin_height"), "10 mm")
	page.Wait(slot + ".pending?.length === 2")
	stillNextTime(page, "no")
	page.Reload()
	page.WaitText(figureOf("fin_od"), "50.00")
	waitEntry(page, "fin_height", "10 mm")
	waitTyped(page, "tube_od", "30 mm")
	waitTyped(page, "fin_pitch", "3 mm")
	waitState(page, "answered")
	quiet(t, page)
}

// An entry that is made while a link opens is of the link's design, whose address stays until it is there; the working
// copy is as it was.
func TestEntryWhileALinkOpensIsOfIt(t *testing.T) {
	page := opened(t, browser.Desk, "")
	enter(page, "fin_height", "12 mm")
	waitState(page, "answered")
	link := linkOf(t, page)
	enter(page, "fin_height", "13 mm")
	first := typed(page, "tube_od")

	other := page.Beside()
	other.Before(still)
	other.Open(link)
	other.Type(entry("tube_od"), "30 mm")
	other.Wait(`location.hash !== ""`)
	browser.Eval[bool](other, "go()")
	other.WaitText(figureOf("fin_od"), "54.00")
	waitEntry(other, "fin_height", "12 mm")
	other.Wait(`location.hash === ""`)
	for range 2 {
		waitState(other, "answered")
		other.Click(id("undo"))
	}
	waitTyped(other, "fin_height", "13 mm")
	waitTyped(other, "tube_od", first)
}

// What is typed into the page before its script has come is typed all the same.
func TestTypingBeforeTheScriptIsHeard(t *testing.T) {
	come := make(chan struct{})
	address := host(t, func(_ http.ResponseWriter, r *http.Request) bool {
		if strings.HasPrefix(r.URL.Path, "/js/main.") {
			select {
			case <-come:
			case <-r.Context().Done(): // the test has failed
			}
		}
		return false
	})
	page := plain.Page(t, browser.Desk)
	browser.Eval[bool](page, "(location.href = "+js(address)+", true)") // to go there would wait for the script
	page.Wait(`location.href === ` + js(address) + ` && document.readyState === "interactive"`)
	halfType(page, entry("tube_od"), "30 mm")
	halfType(page, entry("fin_height"), "11 mm")
	chosen := browser.Eval[string](page, element(entry("tube_metal"))+`.value = `+element(entry("tube_metal"))+`.options[2].value`)
	close(come)
	page.WaitMark("finwright:figures")
	page.WaitText(figureOf("fin_od"), "52.00")
	waitTyped(page, "tube_od", "30 mm")
	waitEntry(page, "fin_height", "11 mm")
	page.Wait(element(entry("tube_metal")) + `.value === ` + js(chosen) + ` && document.body.dataset.answer === "answered"`)
	if now := browser.Eval[string](page, element(entry("tube_metal"))+`.value`); now != chosen {
		t.Errorf("the tube metal chosen was %s and is %s", chosen, now)
	}
}

// What had been set aside is kept from the first answer on: it outlasts a second reload with nothing between.
func TestWhatIsSetAsideOutlastsTwoReloads(t *testing.T) {
	page := faulty(t)
	deafTo(page, "13.13")
	insert(page, entry("fin_height"), "13.13 mm")
	waitState(page, "lost")
	for range 2 {
		page.Reload()
		page.WaitMark("finwright:drawn")
		waitEntry(page, "fin_height", "13.13 mm")
		waitState(page, "lost")
	}
}

// Entered anew before it is told what had been set aside, a text takes its place.
func TestEntryTakesThePlaceOfWhatWasSetAside(t *testing.T) {
	page := faulty(t)
	page.Before(still)
	deafTo(page, "13.13")
	insert(page, entry("fin_height"), "13.13 mm")
	waitState(page, "lost")
	for _, reloaded := range []bool{false, true} {
		stillNextTime(page, "yes")
		page.Reload()
		page.Type(entry("fin_height"), "11 mm")
		page.Wait(slot + `.pending?.at(-1).command.values[0].text === "11 mm"`)
		if reloaded {
			stillNextTime(page, "no")
			page.Reload()
		} else {
			browser.Eval[bool](page, "go()")
		}
		page.WaitText(figureOf("fin_od"), "47.40")
		waitState(page, "answered")
		waitEntry(page, "fin_height", "11 mm")
		if reloaded {
			break
		}
		deafTo(page, "13.13")
		insert(page, entry("fin_height"), "13.13 mm")
		waitState(page, "lost")
	}
}

// A worker that breaks before the program has come is told at once.
func TestWorkerThatBreaksEarlyIsTold(t *testing.T) {
	come := make(chan struct{})
	address := host(t, func(_ http.ResponseWriter, r *http.Request) bool {
		if strings.HasPrefix(r.URL.Path, "/first.") {
			select {
			case <-come:
			case <-r.Context().Done(): // the test has failed
			}
		}
		return false
	})
	page := plain.Page(t, browser.Desk)
	page.Before(`globalThis.Worker = class extends Worker {
		constructor(script) {
			super(globalThis.mended ? script : URL.createObjectURL(new Blob(["throw new Error('made by the test')"])));
		}
	};`)
	browser.Eval[bool](page, "(location.href = "+js(address)+", true)")
	told(page, "engine", "damaged", "next change")
	close(come)
	browser.Eval[bool](page, "(globalThis.mended = true)")
	page.Type(entry("fin_height"), "11 mm")
	page.WaitText(figureOf("fin_od"), "47.40")
	untroubled(page)
}
