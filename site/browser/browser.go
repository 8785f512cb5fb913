// Package browser serves the built page under a sub-path and drives it in headless Chromium, for the browser tests and
// the browser bench. Whatever fails ends the run of its TB, so that a test reads as what a person does.
package browser

import (
	"context"
	"net/http"
	"net/http/httptest"
	"os"
	"sync/atomic"

	"github.com/chromedp/chromedp"

	"finwright/site/static"
)

// TB is the part of testing.TB that the package needs; the bench, which is no test, brings its own.
type TB interface {
	Helper()
	Fatalf(format string, args ...any)
	Cleanup(func())
}

// Browser is a running Chromium and the server of the page.
type Browser struct {
	// Base is the address of the page.
	Base string

	context context.Context
	proxy   *proxy
	offline atomic.Bool
}

// Start serves dist under a sub-path as host says (its Base is set here) and starts Chromium. Close ends both.
func Start(dist string, host static.Host, options ...chromedp.ExecAllocatorOption) (*Browser, error) {
	return start(dist, host, append(options, chromedp.Flag("use-angle", "swiftshader"), chromedp.Flag("enable-unsafe-swiftshader", true))...)
}

// StartPlain starts one that has no WebGL, where a page shows the picture of its drawing. It takes a third less of the
// processor, which in software paints every frame of every page.
func StartPlain(dist string, host static.Host, options ...chromedp.ExecAllocatorOption) (*Browser, error) {
	return start(dist, host, append(options, chromedp.DisableGPU, chromedp.Flag("disable-software-rasterizer", true))...)
}

// Unhurried has a browser compile a function of a program anew for speed only after a hundred times the usual use. A test
// opens a page and leaves it before that would pay, and it is a sixth and more of what opening costs.
var Unhurried = chromedp.Flag("js-flags", "--wasm-tiering-budget=200000000")

func start(dist string, host static.Host, options ...chromedp.ExecAllocatorOption) (*Browser, error) {
	host.Base = "/some/where/"
	b := &Browser{proxy: startProxy()}
	files := host.Handler(os.DirFS(dist))
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if b.offline.Load() {
			panic(http.ErrAbortHandler)
		}
		files.ServeHTTP(w, r)
	}))
	b.Base = server.URL + host.Base

	allocator, stopAllocator := chromedp.NewExecAllocator(context.Background(), append(options,
		chromedp.Headless, chromedp.NoSandbox, chromedp.NoFirstRun,
		chromedp.Flag("disable-background-networking", true),
		chromedp.Flag("disable-component-update", true),
		chromedp.Flag("disable-sync", true),
		chromedp.Flag("disable-extensions", true),
		// Tabs side by side are each at work as if somebody looked at them.
		chromedp.Flag("disable-background-timer-throttling", true),
		chromedp.Flag("disable-backgrounding-occluded-windows", true),
		chromedp.Flag("disable-renderer-backgrounding", true),
		chromedp.Flag("disable-default-apps", true),
		chromedp.Flag("disable-features", "AutofillServerCommunication,NetworkTimeServiceQuerying,OptimizationHints,Translate"),
		// What the browser would ask on its own account, it asks of this machine, where nothing answers.
		chromedp.Flag("component-updater", "url-source=http://127.0.0.1:9/"),
		chromedp.Flag("gaia-url", "http://127.0.0.1:9/"),
		chromedp.Flag("disable-quic", true),
		chromedp.Flag("disable-dev-shm-usage", true),
		chromedp.Flag("force-color-profile", "srgb"),
		chromedp.Flag("proxy-server", b.proxy.address()),
	)...)
	running, stopBrowser := chromedp.NewContext(allocator)
	b.context = running
	context.AfterFunc(running, func() {
		server.Close()
		b.proxy.close()
	})
	if err := chromedp.Do(running); err != nil {
		stopBrowser()
		stopAllocator()
		return nil, err
	}
	return b, nil
}

// Close ends the browser and the server.
func (b *Browser) Close() error { return chromedp.Cancel(b.context) }

// Process is the id of the browser's first process.
func (b *Browser) Process() int { return chromedp.FromContext(b.context).Browser.Process().Pid }

// Offline makes the server hang up on every request, or serve again.
func (b *Browser) Offline(cut bool) { b.offline.Store(cut) }

// Foreign lists what any part of the browser asked of any host but this machine. Nothing of it left the machine.
func (b *Browser) Foreign() []string { return b.proxy.asked() }
