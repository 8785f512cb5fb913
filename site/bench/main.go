// Command bench measures the built page in headless Chromium against its budgets and prints a table. Run it on a machine
// with nothing else to do: the figures are of this machine, and of Chromium drawing without a graphics card. Arguments name
// the measurements to take: sizes, start, drag, idle. None means all.
package main

import (
	"compress/gzip"
	"fmt"
	"io/fs"
	"log"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"finwright/site/browser"
	"finwright/site/static"
)

const (
	dist       = "site/dist"
	coldStarts = 5
	idleTime   = 30 * time.Second
	settleTime = 5 * time.Second
)

func main() {
	log.SetFlags(0)
	for _, m := range []struct {
		name string
		take func() ([]row, error)
	}{{"sizes", sizes}, {"start", coldStart}, {"drag", drag}, {"idle", idle}} {
		if len(os.Args) > 1 && !slices.Contains(os.Args[1:], m.name) {
			continue
		}
		rows, err := m.take()
		if err != nil {
			log.Fatal(err)
		}
		for _, r := range rows {
			fmt.Println(r)
		}
	}
}

// row is one measured figure beside its budget.
type row struct {
	name          string
	value, budget float64
	unit          string
}

func (r row) String() string {
	word := "within"
	if r.value > r.budget {
		word = "OVER"
	}
	return fmt.Sprintf("%-46s %9.2f %-8s budget %7.2f  %s", r.name, r.value, r.unit, r.budget, word)
}

// sizes weighs what a first visit loads, as a host sends it compressed.
func sizes() ([]row, error) {
	var first, all, engine, single float64
	err := filepath.WalkDir(dist, func(file string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		name := entry.Name()
		// Texts that the page only links to, and the older font format that no browser with WebAssembly asks for.
		if strings.HasPrefix(name, "licences.") || strings.HasSuffix(name, ".schema.json") || name == "headers.example" || filepath.Ext(name) == ".woff" {
			return nil
		}
		size, err := compressed(file)
		if name == "finwright.html" {
			single = size // the whole page once more, to pass on
			return err
		}
		if strings.HasPrefix(name, "single.") {
			return err // its frame, asked for with it
		}
		if strings.HasPrefix(name, "engine.") && strings.HasSuffix(name, ".wasm.gz") {
			engine = size // comes when it is first wanted
			return err
		}
		if strings.HasPrefix(name, "first.") && strings.HasSuffix(name, ".wasm.gz") {
			first = size
		}
		all += size
		return err
	})
	const mega = 1e6
	return []row{
		{"first load, gzip: engine", first / mega, 2.1, "MB"},
		{"first load, gzip: everything", all / mega, 4.8, "MB"},
		{"the whole engine, when first wanted, gzip", engine / mega, 3.0, "MB"},
		{"the page as one file, gzip", single / mega, 7.0, "MB"},
	}, err
}

func compressed(file string) (float64, error) {
	content, err := os.ReadFile(file)
	if err != nil {
		return 0, err
	}
	if ending := filepath.Ext(file); ending == ".gz" || ending == ".woff2" {
		return float64(len(content)), nil
	}
	var size counter
	writer := gzip.NewWriter(&size)
	if _, err := writer.Write(content); err != nil {
		return 0, err
	}
	return float64(size), writer.Close()
}

type counter int

func (c *counter) Write(p []byte) (int, error) {
	*c += counter(len(p))
	return len(p), nil
}

// with runs a measurement in a browser of its own.
func with(measure func(*bench, *browser.Browser) ([]row, error)) (rows []row, err error) {
	chromium, err := browser.Start(dist, static.Host{})
	if err != nil {
		return nil, err
	}
	b := &bench{}
	defer func() {
		b.end()
		if closed := chromium.Close(); err == nil {
			err = closed
		}
	}()
	return measure(b, chromium)
}

// coldStart opens the page with nothing kept from before, in a window that has come to rest: a browser's own work on a
// new window takes both cores for seconds.
func coldStart() ([]row, error) {
	return with(func(b *bench, chromium *browser.Browser) ([]row, error) {
		var figures, drawn, painted []float64
		for range coldStarts {
			page := chromium.Page(b, browser.Desk)
			time.Sleep(settleTime)
			page.Open("")
			painted = append(painted, page.WaitMark("finwright:painted")/1000)
			drawn = append(drawn, page.WaitMark("finwright:drawn")/1000)
			figures = append(figures, page.WaitMark("finwright:figures")/1000)
			b.end()
		}
		return []row{
			{"cold start: first figures (median of 5)", quantile(figures, 0.5), 0.8, "s"},
			{"cold start: everything drawn (median of 5)", quantile(drawn, 0.5), 3, "s"},
			{"cold start: and painted by the canvas program", quantile(painted, 0.5), 3, "s"},
		}, nil
	})
}

// idle compares an open, untouched page with an empty tab of the same browser.
func idle() ([]row, error) {
	return with(func(b *bench, chromium *browser.Browser) ([]row, error) {
		page := chromium.Page(b, browser.Desk)
		time.Sleep(settleTime)
		empty, err := load(chromium)
		if err != nil {
			return nil, err
		}
		page.Open("")
		page.WaitMark("finwright:painted")
		time.Sleep(settleTime)
		open, err := load(chromium)
		return []row{{"idle, less an empty tab", open - empty, 3, "% core"}}, err
	})
}

// load is the processor use of all browser processes [% of one core] over the idle time.
func load(chromium *browser.Browser) (float64, error) {
	before, err := browser.CPU(chromium.Process())
	if err != nil {
		return 0, err
	}
	time.Sleep(idleTime)
	after, err := browser.CPU(chromium.Process())
	return 100 * (after - before).Seconds() / idleTime.Seconds(), err
}

// quantile returns the value below which part of the sorted values lie.
func quantile(values []float64, part float64) float64 {
	sorted := slices.Sorted(slices.Values(values))
	return sorted[min(int(part*float64(len(sorted))), len(sorted)-1)]
}

// bench stands in for a test: a failure ends the program.
type bench struct{ cleanups []func() }

func (b *bench) Helper() {}

func (b *bench) Fatalf(format string, args ...any) { log.Fatalf(format, args...) }

func (b *bench) Cleanup(f func()) { b.cleanups = append(b.cleanups, f) }

func (b *bench) end() {
	for _, f := range slices.Backward(b.cleanups) {
		f()
	}
	b.cleanups = nil
}
