package browser

import (
	"net/http"
	"net/http/httptest"
	"slices"
	"sync"
)

// proxy stands between the browser and the world: Chromium goes straight to this machine only, so whatever comes by here
// was meant for another origin. Pages, frames, workers and the browser itself all pass. It answers none of them.
type proxy struct {
	server *httptest.Server

	mutex sync.Mutex
	list  []string
}

func startProxy() *proxy {
	p := &proxy{}
	p.server = httptest.NewServer(p)
	return p
}

func (p *proxy) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	p.mutex.Lock()
	defer p.mutex.Unlock()
	p.list = append(p.list, r.Method+" "+r.Host+r.URL.Path)
	http.Error(w, "no way out", http.StatusForbidden)
}

func (p *proxy) address() string { return p.server.Listener.Addr().String() }

func (p *proxy) close() { p.server.Close() }

func (p *proxy) asked() []string {
	p.mutex.Lock()
	defer p.mutex.Unlock()
	return slices.Clone(p.list)
}
