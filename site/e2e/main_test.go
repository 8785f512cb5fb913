//go:build browser

// Package e2e tests the built page in a browser. `make browser` builds the page and runs it.
package e2e

import (
	"fmt"
	"os"
	"testing"

	"finwright/site/browser"
	"finwright/site/static"
)

const (
	site  = ".."
	dist  = "../dist"
	shots = "../shots"
)

// Shared by all tests; each test opens tabs of its own. A plain one has no WebGL.
var chromium, plain *browser.Browser

func TestMain(m *testing.M) {
	code := 1
	if started() {
		code = m.Run()
	}
	for _, b := range []*browser.Browser{chromium, plain} {
		if b != nil && failed(b.Close()) {
			code = 1
		}
	}
	if failed(os.RemoveAll(tongues.folder)) {
		code = 1
	}
	os.Exit(code)
}

func started() bool {
	var err error
	if chromium, err = browser.Start(dist, static.Host{}, browser.Unhurried); err == nil {
		plain, err = browser.StartPlain(dist, static.Host{}, browser.Unhurried)
	}
	return !failed(err)
}

func failed(err error) bool {
	if err != nil {
		fmt.Fprintln(os.Stderr, "browser:", err)
	}
	return err != nil
}
