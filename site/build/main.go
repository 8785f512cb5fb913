// Command build makes the static folder site/dist: the two WebAssembly programs, the bundled scripts and styles,
// the options of the charts, the rendered pages, the service worker and the licence texts. Run it from the top of the repository.
package main

import (
	"fmt"
	"os"
	"path/filepath"
	"sync"
	"time"

	"finwright/site/charts"
)

const (
	source = "site"
	dist   = "site/dist"
)

func main() {
	began := time.Now()
	if err := build(); err != nil {
		fmt.Fprintln(os.Stderr, "build:", err)
		os.Exit(1)
	}
	fmt.Printf("built %s in %.1f s\n", dist, time.Since(began).Seconds())
}

// build makes the folder apart and swaps it in when it is whole, so that what is served is never half built.
func build() error {
	folder, err := os.MkdirTemp(source, "dist-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	if err := fill(newAssets(folder)); err != nil {
		return err
	}
	if err := os.Chmod(folder, 0o755); err != nil {
		return err
	}
	if err := os.RemoveAll(dist); err != nil {
		return err
	}
	return os.Rename(folder, dist)
}

func fill(built *assets) error {
	if err := buildPrograms(built, "engine", "canvas"); err != nil {
		return err
	}
	pages, err := filepath.Glob(filepath.Join(source, "*.html"))
	if err != nil {
		return err
	}
	entries, err := entryPoints(pages)
	if err != nil {
		return err
	}
	packages, err := bundle(built, entries)
	if err != nil {
		return err
	}
	if err := writeLicences(built, packages); err != nil {
		return err
	}
	if err := built.copyHashed("icon.svg"); err != nil {
		return err
	}
	options, err := charts.JSON()
	if err != nil {
		return err
	}
	if err := built.addHashed("charts.json", options); err != nil {
		return err
	}
	for _, page := range pages { // in order of the alphabet: index.html, which names the others, comes last
		if err := renderPage(built, page); err != nil {
			return err
		}
	}
	if err := writeHeadersExample(built); err != nil {
		return err
	}
	return bundleServiceWorker(built)
}

// buildPrograms compiles the WebAssembly programs side by side.
func buildPrograms(built *assets, names ...string) error {
	errs := make([]error, len(names))
	var group sync.WaitGroup
	for i, name := range names {
		group.Go(func() { errs[i] = buildProgram(built, name) })
	}
	group.Wait()
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}
