//go:build browser

package e2e

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"slices"
	"sync"
	"testing"

	"finwright/site/browser"
)

// stranger is a host of another origin that would answer anybody, and writes down who asked for what.
type stranger struct {
	*httptest.Server
	mutex sync.Mutex
	asked []string
}

func newStranger(t *testing.T) *stranger {
	t.Helper()
	s := &stranger{}
	s.Server = httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		s.mutex.Lock()
		defer s.mutex.Unlock()
		s.asked = append(s.asked, r.URL.Path)
		w.Header().Set("Access-Control-Allow-Origin", "*")
		w.Header().Set("Content-Type", "text/javascript")
	}))
	t.Cleanup(s.Close)
	return s
}

// paths lists what was asked for, each once.
func (s *stranger) paths() []string {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	return slices.Compact(slices.Sorted(slices.Values(s.asked)))
}

// ways are what a worker can ask another origin by.
var ways = []string{"/fetch", "/import", "/script", "/socket"}

// attempts is the end of a worker's script: it tries every way out to the other origin and tells the page how each ended.
func attempts(other string) string {
	return fmt.Sprintf(`;(async (other) => {
		const ways = {
			"/fetch": () => fetch(other + "/fetch"),
			"/socket": () => new Promise((resolve, reject) => {
				const socket = new WebSocket(other.replace("http", "ws") + "/socket");
				socket.onopen = resolve;
				socket.onerror = () => reject(new Error("no connection"));
			}),
			"/import": () => import(other + "/import"),
			"/script": () => importScripts(other + "/script"),
		};
		const told = {};
		for (const [name, way] of Object.entries(ways)) {
			try { await way(); told[name] = "reached"; } catch (error) { told[name] = "refused"; }
		}
		new BroadcastChannel("tried").postMessage(told);
	})(%q);`, other)
}

// tempted is a script for the page: every worker that it starts from a blob makes the attempts, and the page has what
// they came to as `tried`.
func tempted(other string) string {
	return fmt.Sprintf(`(() => {
		new BroadcastChannel("tried").onmessage = ({data}) => (globalThis.tried = data);
		const Plain = Blob;
		globalThis.Blob = class extends Plain {
			constructor(parts, options) { super(options?.type === "text/javascript" ? [...parts, %s] : parts, options); }
		};
	})()`, js(attempts(other)))
}

// bare is a page without a policy that starts a worker from a blob, as ours does.
const bare = `new Worker(URL.createObjectURL(new Blob([""], {type: "text/javascript"}))), true`

// The host of the tests sends no policy, as a plain host does: what keeps the worker at home is the page's own.
func TestWorkerReachesNoOtherOrigin(t *testing.T) {
	other := newStranger(t)
	page := chromium.Page(t, browser.Desk)
	page.Before(tempted(other.URL))
	page.Open("")
	page.WaitMark("finwright:figures")
	page.Wait("globalThis.tried")
	for _, way := range ways {
		if got := browser.Eval[string](page, "tried["+js(way)+"]"); got != "refused" {
			t.Errorf("%s: %s", way, got)
		}
	}
	if asked := other.paths(); len(asked) > 0 {
		t.Errorf("the worker asked another origin for %q", asked)
	}
}

// Without a policy each of the attempts arrives, so that the test above means something.
func TestWorkerWithoutPolicyReachesOtherOrigins(t *testing.T) {
	other, plain := newStranger(t), newStranger(t)
	page := chromium.Page(t, browser.Desk)
	page.Before(tempted(other.URL))
	page.Go(plain.URL)
	browser.Eval[bool](page, bare)
	page.Wait("globalThis.tried")
	if got := other.paths(); !slices.Equal(got, ways) {
		t.Errorf("asked for %q, want %q", got, ways)
	}
}
