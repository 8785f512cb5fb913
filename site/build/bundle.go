package main

import (
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
)

const (
	firstScript  = "js/first.js"
	workerScript = "js/engine.worker.js"
)

var entryTag = regexp.MustCompile(`<(?:script|link)\b[^>]*\b(?:src|href)="((?:js|css)/[^"]+)"`)

// entryPoints lists the scripts and styles that the pages load.
func entryPoints(pages []string) ([]string, error) {
	var entries []string
	for _, page := range pages {
		text, err := os.ReadFile(page)
		if err != nil {
			return nil, err
		}
		for _, match := range entryTag.FindAllStringSubmatch(string(text), -1) {
			if !slices.Contains(entries, match[1]) {
				entries = append(entries, match[1])
			}
		}
	}
	return entries, nil
}

// bundle packs each entry point on its own, so that a page starts with one script; only what a script imports later is
// apart. It returns the folders of the npm packages that went in.
func bundle(built *assets, entries []string) ([]string, error) {
	worker, err := bundleWorker(built)
	if err != nil {
		return nil, err
	}
	var packages []string
	for _, entry := range entries {
		meta, err := esbuild(built, append(kind(entry, worker), entry,
			"--entry-names=[dir]/[name].[hash]", "--chunk-names=js/[name].[hash]", "--asset-names=fonts/[name].[hash]",
			"--loader:.woff2=file", "--loader:.woff=file")...)
		if err != nil {
			return nil, err
		}
		for output, made := range meta.Outputs {
			served := strings.TrimPrefix(output, filepath.Base(built.folder)+"/")
			name := served
			switch {
			case made.EntryPoint != "":
				name = made.EntryPoint
			case strings.HasPrefix(served, "fonts/"):
				for input := range made.Inputs { // the one file that was copied
					name = input
				}
			}
			built.record(name, served)
		}
		packages = append(packages, meta.npmPackages()...)
	}
	slices.Sort(packages)
	return slices.Compact(packages), nil
}

// kind says as what an entry point is written: a module, except where it is loaded as a plain script. The page's first script
// is read by browsers that are too old for the rest, so that it can say so; it holds the worker's.
func kind(entry, worker string) []string {
	if entry == firstScript {
		return []string{"--format=iife", "--target=es2017", "--define:WORKER=" + worker}
	}
	return []string{"--format=esm", "--splitting", "--target=es2022"}
}

// bundleWorker returns the worker's script as a JSON string: workers start from a blob, and at once, without a file to wait for.
func bundleWorker(built *assets) (string, error) {
	text, err := bundleText(built, workerScript)
	if err != nil {
		return "", err
	}
	literal, err := json.Marshal(text)
	return string(literal), err
}

// bundleText packs an entry point as a plain script, with all that it imports, and returns its text.
func bundleText(built *assets, entry string) (string, error) {
	if _, err := esbuild(built, "--format=iife", "--target=es2022", entry, "--entry-names=[name]"); err != nil {
		return "", err
	}
	file := filepath.Join(built.folder, path.Base(entry))
	text, err := os.ReadFile(file)
	if err != nil {
		return "", err
	}
	return string(text), os.Remove(file)
}

// bundleServiceWorker comes last, since the service worker holds the build's name and the list of all files. Its own name
// is fixed: the browser looks there for a newer one.
func bundleServiceWorker(built *assets, name string, languages []language) error {
	pages := []string{"./"}
	files := built.names()
	for _, l := range languages[1:] {
		pages = append(pages, l.code+"/")
		for _, name := range l.built.names() {
			files = append(files, l.code+"/"+name)
		}
	}
	files = slices.DeleteFunc(files, func(name string) bool {
		// The page is asked for as "./": hosts redirect from the longer name, and a redirected copy cannot be shown. Every
		// browser with WebAssembly takes .woff2.
		return path.Base(name) == index || name == headersExample || path.Ext(name) == ".woff"
	})
	list, err := json.Marshal(files)
	if err != nil {
		return err
	}
	folders, err := json.Marshal(pages)
	if err != nil {
		return err
	}
	_, err = esbuild(built, "js/sw.js", "--format=iife", "--target=es2022", "--entry-names=[name]",
		"--define:FILES="+string(list), "--define:PAGES="+string(folders), fmt.Sprintf("--define:BUILD=%q", name))
	return err
}

// metafile is the part of esbuild's report that the build needs.
type metafile struct {
	Inputs  map[string]struct{}
	Outputs map[string]struct {
		EntryPoint string
		Inputs     map[string]struct{}
	}
}

func (m metafile) npmPackages() []string {
	var found []string
	for input := range m.Inputs {
		_, inside, ok := strings.Cut(input, "node_modules/")
		if !ok {
			continue
		}
		parts := strings.Split(inside, "/")
		name := parts[0]
		if strings.HasPrefix(name, "@") {
			name = path.Join(parts[0], parts[1])
		}
		if !slices.Contains(found, name) {
			found = append(found, name)
		}
	}
	return found
}

// esbuild runs the bundler in the site folder. wasm_exec.js comes from the Go that compiled the programs: a copy kept
// here would fail to load with the next Go.
func esbuild(built *assets, arguments ...string) (metafile, error) {
	var meta metafile
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		return meta, err
	}
	report, err := os.CreateTemp("", "finwright-esbuild-*.json")
	if err != nil {
		return meta, err
	}
	defer os.Remove(report.Name())
	defer report.Close()
	arguments = append(arguments,
		"--bundle", "--minify", "--outdir="+filepath.Base(built.folder), "--outbase=.", "--legal-comments=none", "--log-level=warning",
		"--alias:wasm_exec="+filepath.Join(strings.TrimSpace(string(root)), "lib", "wasm", "wasm_exec.js"),
		"--metafile="+report.Name())
	command := exec.Command(filepath.Join("node_modules", ".bin", "esbuild"), arguments...)
	command.Dir = source
	if output, err := command.CombinedOutput(); err != nil {
		return meta, fmt.Errorf("esbuild: %w\n%s", err, output)
	}
	return meta, json.NewDecoder(report).Decode(&meta)
}
