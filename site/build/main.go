// Command build makes the static folder site/dist: the WebAssembly programs, the bundled scripts and styles,
// the options of the charts, the rendered pages, the service worker and the licence texts. Run it from the top of the repository.
package main

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"sync"
	"time"

	"finwright/core/document"
	"finwright/core/shop"
)

const source = "site"

func main() {
	into := flag.String("into", "site/dist", "the `folder` to make")
	files := flag.String("languages", "core/message/*.txt", "the `files` of the languages other than English, each named by its code")
	flag.Parse()
	began := time.Now()
	if err := build(*into, *files); err != nil {
		fmt.Fprintln(os.Stderr, "build:", err)
		os.Exit(1)
	}
	fmt.Printf("built %s in %.1f s\n", *into, time.Since(began).Seconds())
}

// build makes the folder apart and swaps it in when it is whole, so that what is served is never half built.
func build(into, files string) error {
	languages, err := readLanguages(files)
	if err != nil {
		return err
	}
	folder, err := os.MkdirTemp(source, "dist-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	if err := fill(newAssets(folder), languages); err != nil {
		return err
	}
	if err := os.Chmod(folder, 0o755); err != nil {
		return err
	}
	if err := os.RemoveAll(into); err != nil {
		return err
	}
	return os.Rename(folder, into)
}

func fill(built *assets, languages []language) error {
	if err := buildPrograms(built, "first", "engine", "canvas"); err != nil {
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
	// Under names of their own: other programs look for them there.
	for name, schema := range map[string][]byte{"design.schema.json": document.Schema(), "shop.schema.json": shop.Schema()} {
		if err := built.add(name, name, schema); err != nil {
			return err
		}
	}
	if err := built.copyHashed("icon.svg"); err != nil {
		return err
	}
	if err := writeHeadersExample(built); err != nil {
		return err
	}
	scripts, err := bundleSingle(built)
	if err != nil {
		return err
	}
	name, err := renderLanguages(built, languages, pages, scripts)
	if err != nil {
		return err
	}
	return bundleServiceWorker(built, name, languages)
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
