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

// chromium is shared by all tests; each test opens tabs of its own.
var chromium *browser.Browser

func TestMain(m *testing.M) {
	var err error
	if chromium, err = browser.Start(dist, static.Host{}); err != nil {
		fmt.Fprintln(os.Stderr, "browser:", err)
		os.Exit(1)
	}
	code := m.Run()
	if err := chromium.Close(); err != nil {
		fmt.Fprintln(os.Stderr, "browser:", err)
		code = 1
	}
	os.Exit(code)
}
