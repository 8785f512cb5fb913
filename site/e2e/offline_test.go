//go:build browser

package e2e

import (
	"io/fs"
	"net/http"
	"net/http/httptest"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"finwright/site/browser"
	"finwright/site/static"
)

// build is a folder as the build makes it, with a title that tells it from others.
type build struct {
	folder, title string
}

var served = regexp.MustCompile(`\.([A-Z0-9]{8})\.`)

// anotherBuild copies the built folder as if all of it had changed: another title, and another name for every file that
// is named by its content. Its files look a year old, so that a browser which judges by that keeps them long.
func anotherBuild(t *testing.T, mark string) build {
	t.Helper()
	b := build{t.TempDir(), "Finwright " + mark}
	// A hash has eight letters; the build's own name is one too.
	page, err := os.ReadFile(filepath.Join(dist, "index.html"))
	if err != nil {
		t.Fatal(err)
	}
	name := regexp.MustCompile(`"finwright-build" content="([A-Z0-9]{8})"`).FindSubmatch(page)
	if name == nil {
		t.Fatal("the page does not bear the name of its build")
	}
	renamed := []string{string(name[1]), mark + string(name[1][1:]), "<h1>Finwright</h1>", "<h1>" + b.title + "</h1>"}
	err = fs.WalkDir(os.DirFS(dist), ".", func(name string, _ fs.DirEntry, err error) error {
		if found := served.FindStringSubmatch(name); found != nil {
			renamed = append(renamed, "."+found[1]+".", "."+mark+found[1][1:]+".")
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	rename := strings.NewReplacer(renamed...)
	err = fs.WalkDir(os.DirFS(dist), ".", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		content, err := os.ReadFile(filepath.Join(dist, name))
		if err != nil {
			return err
		}
		if kind := path.Ext(name); kind == ".html" || kind == ".js" || kind == ".css" {
			content = []byte(rename.Replace(string(content)))
		}
		to := filepath.Join(b.folder, rename.Replace(name))
		if err := os.MkdirAll(filepath.Dir(to), 0o755); err != nil {
			return err
		}
		if err := os.WriteFile(to, content, 0o644); err != nil {
			return err
		}
		old := time.Now().AddDate(-1, 0, int(mark[0]-'A')) // a host tells builds apart by this
		return os.Chtimes(to, old, old)
	})
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// changingHost serves one build after another from the same address; while it has none, it hangs up.
type changingHost struct {
	address string
	handler atomic.Pointer[http.Handler]
	caching static.Caching
}

func newChangingHost(t *testing.T, caching static.Caching) *changingHost {
	t.Helper()
	h := &changingHost{caching: caching}
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		handler := h.handler.Load()
		if handler == nil {
			hangUp()
		}
		(*handler).ServeHTTP(w, r)
	}))
	t.Cleanup(server.Close)
	h.address = server.URL + "/"
	return h
}

func (h *changingHost) serve(b build) {
	handler := static.Host{Base: "/", Caching: h.caching}.Handler(os.DirFS(b.folder))
	h.handler.Store(&handler)
}

func (h *changingHost) hangUp() { h.handler.Store(nil) }

// showsBuild waits until the whole of a build is there, the program that paints too.
func showsBuild(t *testing.T, page *browser.Page, b build) {
	t.Helper()
	page.WaitText("h1", b.title)
	page.WaitMark("finwright:painted")
}

const copies = `caches.keys().then((names) => names.length)`

func TestOneBuildToTheNext(t *testing.T) {
	for name, caching := range map[string]static.Caching{"cached by name": static.ByName, "no word of caching": static.Silent, "all cached for an hour": static.AnHour} {
		t.Run(name, func(t *testing.T) { oneBuildToTheNext(t, caching) })
	}
}

func oneBuildToTheNext(t *testing.T, caching static.Caching) {
	first, second := anotherBuild(t, "A"), anotherBuild(t, "B")
	host := newChangingHost(t, caching)
	host.serve(first)
	page := chromium.Page(t, browser.Desk)
	page.Go(host.address)
	showsBuild(t, page, first)
	page.Wait(`navigator.serviceWorker.controller !== null`)
	enter(page, "fin_height", "14 mm")

	// From now on the page is its own copy, whatever the host has; the newer build is offered and not forced.
	host.serve(second)
	page.Reload()
	showsBuild(t, page, first)
	page.Wait(element(id("newer")) + ".checkVisibility()")
	host.hangUp()
	page.Reload()
	showsBuild(t, page, first)
	waitEntry(page, "fin_height", "14 mm")
	late := browser.Eval[string](page, `Object.values(JSON.parse(document.querySelector('[name="finwright-assets"]').content)).find((name) => name.startsWith("charts."))`)

	// It is all there already: no host is asked. What was entered stays, and another tab is still of one piece.
	other := page.Beside()
	other.Go(host.address)
	showsBuild(t, other, first)
	page.Front()
	page.Wait(element(id("newer")) + ".checkVisibility()")
	page.Click(id("newer-reload"))
	showsBuild(t, page, second)
	waitEntry(page, "fin_height", "14 mm")
	page.Wait(element(id("newer")) + ".hidden")
	if !browser.Eval[bool](other, "fetch("+js(late)+").then((reply) => reply.ok, () => false)") {
		t.Errorf("the page of the first build has lost %s", late)
	}
	other.WaitText("h1", first.title)

	// The other follows when it is loaded again, and then the old copy goes.
	other.Front()
	other.Wait(element(id("newer")) + ".checkVisibility()")
	other.Click(id("newer-reload"))
	showsBuild(t, other, second)
	other.Reload()
	showsBuild(t, other, second)
	other.Wait(copies + ".then((number) => number === 1)")
}

// A build of which a file is missing is not taken, nor offered, until it is whole.
func TestHalfABuildIsNotTaken(t *testing.T) {
	first, second := anotherBuild(t, "A"), anotherBuild(t, "B")
	host := newChangingHost(t, static.ByName)
	host.serve(first)
	page := chromium.Page(t, browser.Desk)
	page.Go(host.address)
	showsBuild(t, page, first)
	page.Wait(`navigator.serviceWorker.controller !== null`)

	charts, err := filepath.Glob(filepath.Join(second.folder, "charts.*.json"))
	if err != nil || len(charts) != 1 {
		t.Fatal(charts, err)
	}
	if err := os.Rename(charts[0], charts[0]+".late"); err != nil {
		t.Fatal(err)
	}
	host.serve(second)
	page.Reload()
	showsBuild(t, page, first)
	refused := browser.Eval[string](page, `navigator.serviceWorker.ready.then(async (registration) => {
		await registration.update().catch(() => {});
		const next = registration.installing;
		if (next) await new Promise((resolve) => next.addEventListener("statechange", resolve, {once: true}));
		return String(registration.waiting === null);
	})`)
	if refused != "true" {
		t.Error("half a build waits to be used")
	}
	if browser.Eval[bool](page, element(id("newer"))+".checkVisibility()") {
		t.Error("half a build is offered")
	}

	if err := os.Rename(charts[0]+".late", charts[0]); err != nil {
		t.Fatal(err)
	}
	page.Reload()
	showsBuild(t, page, first)
	page.Wait(element(id("newer")) + ".checkVisibility()")
	page.Click(id("newer-reload"))
	showsBuild(t, page, second)
}

// Where there is no service worker, a page may ask late for a file that the host has replaced meanwhile.
func TestReplacedFileIsTold(t *testing.T) {
	first, second := anotherBuild(t, "A"), anotherBuild(t, "B")
	host := newChangingHost(t, static.ByName)
	host.serve(first)
	old := *host.handler.Load()
	held := http.Handler(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if strings.HasPrefix(r.URL.Path, "/charts.") {
			host.serve(second)
			(*host.handler.Load()).ServeHTTP(w, r)
			return
		}
		old.ServeHTTP(w, r)
	}))
	host.handler.Store(&held)
	page := chromium.Page(t, browser.Desk)
	page.Before(`Object.defineProperty(globalThis, "isSecureContext", {value: false})`) // as over plain http
	page.Go(host.address)
	told(page, "part", "renewed", "newer version")
	page.Wait(`performance.getEntriesByName("finwright:figures").length > 0`)
	enter(page, "fin_height", "14 mm")
	page.Reload()
	showsBuild(t, page, second)
	waitEntry(page, "fin_height", "14 mm")
	if browser.Eval[int](page, `navigator.serviceWorker.getRegistrations().then((all) => all.length)`) != 0 {
		t.Error("there is a service worker after all")
	}
}

// A tab of which the scripts have not come yet holds nothing: what it is being loaded from stays all the same.
func TestLoadingTabKeepsItsBuild(t *testing.T) {
	first, second := anotherBuild(t, "A"), anotherBuild(t, "B")
	host := newChangingHost(t, static.ByName)
	host.serve(first)
	page := chromium.Page(t, browser.Desk)
	page.Go(host.address)
	showsBuild(t, page, first)
	page.Wait(`navigator.serviceWorker.controller !== null`)
	loading := page.Beside()
	loading.Before(`navigator.locks.request = () => new Promise(() => {})`) // as if it had not come so far
	loading.Go(host.address)
	loading.WaitText("h1", first.title)
	late := browser.Eval[string](loading, `Object.values(JSON.parse(document.querySelector('[name="finwright-assets"]').content)).find((name) => name.startsWith("charts."))`)

	page.Front()
	host.serve(second)
	page.Reload()
	page.Wait(element(id("newer")) + ".checkVisibility()")
	page.Click(id("newer-reload"))
	showsBuild(t, page, second)
	page.Reload()
	showsBuild(t, page, second)
	if !browser.Eval[bool](loading, "fetch("+js(late)+").then((reply) => reply.ok, () => false)") {
		t.Errorf("the page that is loading has lost %s", late)
	}
	loading.Close()
	page.Reload()
	page.Wait(copies + ".then((number) => number === 1)")
}
