package browser

import (
	"context"
	"os"
	"path/filepath"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// patience is how long a page may take to do what a test waits for. It is no budget (the bench has those): it only tells
// slow from never on a busy machine.
const patience = 60 * time.Second

// View is a window: its size [CSS px], device pixels per CSS pixel (1 when 0), and what the user prefers.
type View struct {
	Width, Height int64
	Scale         float64
	Mobile        bool
	Dark          bool
	CalmMotion    bool
	Forced        bool // colours are forced
}

// Desk is the window the page is designed for.
var Desk = View{Width: 1440, Height: 900}

// Page is one tab, with its own empty storage unless it was opened beside another.
type Page struct {
	// Close closes the tab, which its test's end does too.
	Close func()

	tb      TB
	browser *Browser
	context context.Context
	*record
}

// Browser is the one that the tab is in.
func (p *Page) Browser() *Browser { return p.browser }

// Page opens an empty tab, which closes when tb ends.
func (b *Browser) Page(tb TB, view View) *Page {
	tb.Helper()
	return b.tab(tb, view, chromedp.WithNewBrowserContext())
}

// Beside opens another empty tab that shares the storage of this one and does not outlive it.
func (p *Page) Beside() *Page {
	p.tb.Helper()
	return p.browser.tab(p.tb, Desk, chromedp.WithExistingBrowserContext(chromedp.FromContext(p.context).BrowserContextID))
}

// Front brings the tab before the others of its window: one in the background gets no clicks.
func (p *Page) Front() {
	p.tb.Helper()
	if _, err := chromedp.Call(p.context, page.BringToFront, cdp.Empty{}); err != nil {
		p.tb.Fatalf("front: %v", err)
	}
}

func (b *Browser) tab(tb TB, view View, where chromedp.ContextOption) *Page {
	tb.Helper()
	p := &Page{tb: tb, browser: b, record: &record{}}
	ctx, cancel := chromedp.NewContext(b.context, where, chromedp.WithListener(func(event any) { p.note(p.context, event) }))
	p.context, p.Close = ctx, cancel
	tb.Cleanup(cancel)
	// The first action ties the tab's life to its context, so it has no limit of time.
	if err := chromedp.Do(ctx); err != nil {
		tb.Fatalf("%v", err)
	}
	p.Resize(view)
	return p
}

// Resize changes the window.
func (p *Page) Resize(view View) {
	p.tb.Helper()
	options := []chromedp.EmulateViewportOption{chromedp.EmulateScale(max(view.Scale, 1))}
	if view.Mobile {
		options = append(options, chromedp.EmulateMobile, chromedp.EmulateTouch)
	}
	p.do(chromedp.EmulateViewport(view.Width, view.Height, options...))
	features := []*emulation.MediaFeature{
		{Name: "prefers-color-scheme", Value: choose(view.Dark, "dark", "light")},
		{Name: "prefers-reduced-motion", Value: choose(view.CalmMotion, "reduce", "no-preference")},
		{Name: "forced-colors", Value: choose(view.Forced, "active", "none")},
	}
	p.media(emulation.SetEmulatedMediaParams{Features: features})
}

func choose(yes bool, one, other string) string {
	if yes {
		return one
	}
	return other
}

// Paper shows the page as it prints, until the next Resize.
func (p *Page) Paper() {
	p.tb.Helper()
	p.media(emulation.SetEmulatedMediaParams{Media: "print"})
}

func (p *Page) media(params emulation.SetEmulatedMediaParams) {
	p.tb.Helper()
	if _, err := chromedp.Call(p.context, emulation.SetEmulatedMedia, params); err != nil {
		p.tb.Fatalf("media: %v", err)
	}
}

// Open goes to the page; rest is what follows its address, such as "#…".
func (p *Page) Open(rest string) {
	p.tb.Helper()
	p.Go(p.browser.Base + rest)
}

// Go goes to any address.
func (p *Page) Go(address string) {
	p.tb.Helper()
	p.do(chromedp.Navigate(address))
}

// Before runs a script in every document that is opened from now on, frames too, before the document's own scripts.
func (p *Page) Before(script string) {
	p.tb.Helper()
	if _, err := chromedp.Call(p.context, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: script}); err != nil {
		p.tb.Fatalf("before: %v", err)
	}
}

// NotInstallable says what keeps the browser from keeping the page as a program of its own.
func (p *Page) NotInstallable() []string {
	p.tb.Helper()
	found, err := chromedp.Call(p.context, page.GetInstallabilityErrors, cdp.Empty{})
	if err != nil {
		p.tb.Fatalf("installable: %v", err)
	}
	var out []string
	for _, one := range found.InstallabilityErrors {
		out = append(out, one.ErrorID)
	}
	return out
}

// Reload loads the page again.
func (p *Page) Reload() {
	p.tb.Helper()
	p.do(chromedp.Reload())
}

// Wait waits until a JavaScript expression, or the promise it makes, is true.
func (p *Page) Wait(expression string) {
	p.tb.Helper()
	for deadline := time.Now().Add(patience); ; time.Sleep(20 * time.Millisecond) {
		// While a page is being replaced there is nothing to ask: ask again.
		yes, err := run(p.context, chromedp.Evaluate[bool]("(async () => Boolean(await ("+expression+")))()", chromedp.EvalAwaitPromise))
		if yes {
			return
		}
		if time.Now().After(deadline) {
			p.tb.Fatalf("waited %v in vain for %s (last error: %v; console: %q)", patience, expression, err, p.Complaints())
		}
	}
}

// WaitMark waits for one of the page's performance marks, such as "finwright:drawn", and returns its time since
// navigation [ms].
func (p *Page) WaitMark(name string) float64 {
	p.tb.Helper()
	entry := "performance.getEntriesByName(" + quote(name) + ")"
	p.Wait(entry + ".length > 0")
	return Eval[float64](p, entry+"[0].startTime")
}

// Eval evaluates a JavaScript expression; a promise is awaited.
func Eval[T any](p *Page, expression string) T {
	p.tb.Helper()
	value, err := run(p.context, chromedp.Evaluate[T](expression, chromedp.EvalAwaitPromise))
	if err != nil {
		p.tb.Fatalf("%s: %v", expression, err)
	}
	return value
}

// Screenshot saves the window as a PNG file in folder and returns its path.
func (p *Page) Screenshot(folder, name string) string {
	p.tb.Helper()
	picture, err := run(p.context, chromedp.CaptureScreenshot())
	if err != nil {
		p.tb.Fatalf("screenshot: %v", err)
	}
	return p.save(folder, name+".png", picture)
}

// PDF prints the page, saves it in folder and returns its path.
func (p *Page) PDF(folder, name string) string {
	p.tb.Helper()
	document, err := run(p.context, chromedp.PrintToPDF(chromedp.PDFPaper(chromedp.PaperA4), chromedp.PDFPreferCSSPageSize()))
	if err != nil {
		p.tb.Fatalf("pdf: %v", err)
	}
	return p.save(folder, name+".pdf", document)
}

func (p *Page) save(folder, name string, content []byte) string {
	p.tb.Helper()
	if err := os.MkdirAll(folder, 0o755); err != nil {
		p.tb.Fatalf("%v", err)
	}
	file := filepath.Join(folder, name)
	if err := os.WriteFile(file, content, 0o644); err != nil {
		p.tb.Fatalf("%v", err)
	}
	return file
}

func (p *Page) do(steps ...chromedp.Action[chromedp.Void]) {
	p.tb.Helper()
	if _, err := run(p.context, chromedp.Steps(steps...)); err != nil {
		p.tb.Fatalf("%v", err)
	}
}

// run runs an action with a limit of time.
func run[T any](ctx context.Context, action chromedp.Action[T]) (T, error) {
	limited, cancel := context.WithTimeout(ctx, patience)
	defer cancel()
	return chromedp.Run(limited, action)
}
