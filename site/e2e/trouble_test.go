//go:build browser

package e2e

import (
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"

	"finwright/core/message"
	"finwright/site/browser"
	"finwright/site/static"
)

// told waits until the page says what keeps it from loading.
func told(page *browser.Page, part, reason, words string) {
	page.Wait(element(`#trouble [data-part="`+part+`"][data-reason="`+reason+`"]`) + `?.textContent.includes(` + js(words) + `)`)
}

func untroubled(page *browser.Page) {
	page.Wait(element("#trouble") + ".innerText.trim() === ''")
}

// host serves the built page and lets a test stand in the way of a request; stop says whether it has been answered.
func host(t testing.TB, stop func(w http.ResponseWriter, r *http.Request) bool) string {
	t.Helper()
	files := static.Host{Base: "/"}.Handler(os.DirFS(dist))
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if !stop(w, r) {
			files.ServeHTTP(w, r)
		}
	}))
	t.Cleanup(server.Close)
	return server.URL + "/"
}

func hangUp() { panic(http.ErrAbortHandler) }

// A failure that no part of the page waits for is told as any other.
func TestUnhandledRejectionIsTold(t *testing.T) {
	page := plain.Page(t, browser.Desk)
	page.Open("")
	page.WaitMark("finwright:drawn")
	browser.Eval[bool](page, `(setTimeout(() => Promise.reject(new Error("made by the test"))), true)`)
	page.Wait(element("#said") + ".textContent === " + js(message.English().Text("page.crashed")))
	page.Click("[data-testid=units-us]")
	page.Wait(element("[data-testid=units-us]") + `.getAttribute("aria-pressed") === "true"`)
}

// What keeps the engine from loading is told by name and stays, and the next change loads it after all.
func TestEngineThatDoesNotLoadIsTold(t *testing.T) {
	engine := func(r *http.Request) bool { return strings.HasPrefix(r.URL.Path, "/first.") }
	for _, c := range []struct {
		name, reason, words string
		stop                func(w http.ResponseWriter, r *http.Request) bool
	}{
		{"no network", "network", "no connection", func(_ http.ResponseWriter, r *http.Request) bool {
			if r.Header.Get("Cache-Control") != "" || engine(r) { // asked for past all copies, as the page does to find out
				hangUp()
			}
			return false
		}},
		{"the file is not there", "missing", "is missing", func(w http.ResponseWriter, r *http.Request) bool {
			if engine(r) {
				http.NotFound(w, r)
			}
			return engine(r)
		}},
		{"the file is another", "damaged", "damaged", func(w http.ResponseWriter, r *http.Request) bool {
			if engine(r) {
				w.Write([]byte("a page of the host about nothing"))
			}
			return engine(r)
		}},
		{"the file breaks off", "network", "no connection", func(w http.ResponseWriter, r *http.Request) bool {
			if engine(r) {
				content, _ := os.ReadFile(filepath.Join(dist, r.URL.Path))
				w.Header().Set("Content-Length", "9999999")
				w.Write(content[:100000])
				hangUp()
			}
			return false
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var mended atomic.Bool
			address := host(t, func(w http.ResponseWriter, r *http.Request) bool { return !mended.Load() && c.stop(w, r) })
			page := plain.Page(t, browser.Desk)
			page.Go(address)
			told(page, "engine", c.reason, c.words)
			page.Type(entry("fin_height"), "11 mm")
			told(page, "engine", c.reason, "next change")
			mended.Store(true)
			page.Type(entry("fin_pitch"), "3 mm")
			page.WaitMark("finwright:drawn")
			untroubled(page)
		})
	}
}

// Where a script of the page itself is missing, the head's script tells.
func TestMissingScriptIsTold(t *testing.T) {
	for _, c := range []struct{ name, file, part, words string }{
		{"the page's script", "/js/main.", "page", "is missing"},
		{"the drawing's script", "/js/drawing.", "part", "is missing"},
		{"the style sheet", "/css/page.", "part", "is missing"},
		{"the options of the charts", "/charts.", "part", "is missing"},
	} {
		t.Run(c.name, func(t *testing.T) {
			address := host(t, func(w http.ResponseWriter, r *http.Request) bool {
				if strings.HasPrefix(r.URL.Path, c.file) {
					http.Error(w, "kept back", http.StatusForbidden)
					return true
				}
				return false
			})
			page := plain.Page(t, browser.Desk)
			page.Go(address)
			told(page, c.part, "missing", c.words)
			if c.part == "page" {
				return
			}
			// Without pictures the figures are whole all the same: with the line and its price, and in each section.
			page.Wait(`/^[0-9]/.test(` + element(figureOf("price_tube")) + `?.textContent)`)
			page.WaitMark("finwright:drawn")
			// Until then the page grows, and without a style sheet for a while longer.
			page.Wait(`((at) => new Promise((resolve) => setTimeout(() => resolve(at === document.documentElement.scrollHeight), 500)))(document.documentElement.scrollHeight)`)
			page.Click(id("section-heat"))
			page.WaitText(id("methods-used"), "ESDU 86022")
			page.Type(entry("fin_height"), "11 mm")
			page.WaitText(figureOf("fin_od"), "47.40")
		})
	}
}

// The first script that a browser does not get leaves the page as it came: with what may be the matter.
func TestPageSaysByItselfThatNothingHasBegun(t *testing.T) {
	address := host(t, func(w http.ResponseWriter, r *http.Request) bool {
		if strings.HasPrefix(r.URL.Path, "/js/first.") {
			http.NotFound(w, r)
			return true
		}
		return false
	})
	page := plain.Page(t, browser.Desk)
	page.Go(address)
	page.Wait(element("#trouble") + `.innerText.includes("not started")`)
}

func TestOldBrowserIsTold(t *testing.T) {
	for _, c := range []struct{ name, without string }{
		{"no WebAssembly", "delete globalThis.WebAssembly"},
		{"nothing that unpacks", "delete globalThis.DecompressionStream"},
		{"a language it cannot read", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			address := host(t, func(w http.ResponseWriter, r *http.Request) bool {
				if c.without == "" && strings.HasPrefix(r.URL.Path, "/js/main.") {
					w.Header().Set("Content-Type", "text/javascript")
					w.Write([]byte("what is this language;"))
					return true
				}
				return false
			})
			page := plain.Page(t, browser.Desk)
			page.Before(c.without)
			page.Go(address)
			if c.without == "" {
				told(page, "page", "old", "too old")
			} else {
				told(page, "engine", "old", "too old")
			}
		})
	}
}

// A browser that cannot compile what is still arriving compiles it afterwards.
func TestCompilesWithoutStreaming(t *testing.T) {
	page := plain.Page(t, browser.Desk)
	page.Before("delete WebAssembly.compileStreaming")
	page.Open("")
	page.WaitMark("finwright:figures")
	untroubled(page)
}

func TestPageFromADiskSaysSo(t *testing.T) {
	folder, err := filepath.Abs(dist)
	if err != nil {
		t.Fatal(err)
	}
	page := plain.Page(t, browser.Desk)
	page.Go("file://" + folder + "/index.html")
	page.Wait(element("#trouble") + `.innerText.includes("opened as a file")`)
}

// A start that stands still for a minute is given up; until then the page shows how far it has come.
func TestStandstillIsTold(t *testing.T) {
	var mended atomic.Bool
	address := host(t, func(w http.ResponseWriter, r *http.Request) bool {
		if mended.Load() || !strings.HasPrefix(r.URL.Path, "/first.") {
			return false
		}
		content, _ := os.ReadFile(filepath.Join(dist, r.URL.Path))
		w.Write(content[:100000])
		w.(http.Flusher).Flush()
		<-r.Context().Done()
		return true
	})
	page := plain.Page(t, browser.Desk)
	// A minute of waiting passes at once where the page asks for one.
	page.Before(`const plain = setTimeout; globalThis.setTimeout = (act, time, ...rest) => plain(act, time === 60000 ? 4000 : time, ...rest);`)
	page.Go(address)
	page.Wait(`getComputedStyle(` + element("#loading") + `).opacity === "1" && ` + element("#loading") + `.checkVisibility()`)
	told(page, "engine", "stalled", "nothing has come")
	page.Wait(element("#loading") + ".hidden")
	mended.Store(true)
	page.Type(entry("fin_height"), "11 mm")
	page.WaitMark("finwright:drawn")
	untroubled(page)
}

// The whole engine comes when it is first wanted. Where it does not, that is told, what the first program can goes on, and it is fetched with
// the next press.
func TestWholeEngineComesWhenItIsWanted(t *testing.T) {
	var asked atomic.Int32
	var mended atomic.Bool
	address := host(t, func(w http.ResponseWriter, r *http.Request) bool {
		if r.URL.Path == "/sw.js" { // else it fetches all
			http.NotFound(w, r)
			return true
		}
		if !strings.HasPrefix(r.URL.Path, "/engine.") {
			return false
		}
		asked.Add(1)
		if !mended.Load() {
			http.NotFound(w, r)
		}
		return !mended.Load()
	})
	page := plain.Page(t, browser.Desk)
	page.Go(address)
	page.WaitMark("finwright:drawn")
	waitState(page, "answered")
	if asked.Load() > 0 {
		t.Error("the whole engine is fetched though nobody wants it")
	}
	page.Click(id("section-making"))
	told(page, "engine", "missing", "is missing")
	page.Click(id("section-heat"))
	page.WaitText(id("methods-used"), "ESDU 86022")
	mended.Store(true)
	page.Click(id("section-making"))
	page.Wait(element("#verdicts") + ".rows.length > 20")
	waitState(page, "answered")
	untroubled(page)
}
