//go:build browser

package e2e

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"finwright/site/browser"
	"finwright/site/static"
)

// local are addresses of what is asked of nobody.
var local = regexp.MustCompile("^(data|blob|file|about):")

// quiet fails when the page complained, or when anything asked another origin for anything.
func quiet(t *testing.T, page *browser.Page) {
	t.Helper()
	b := page.Browser()
	for _, complaint := range page.Complaints() {
		t.Errorf("complaint: %s", complaint)
	}
	for _, address := range page.Requests() {
		if !strings.HasPrefix(address, b.Base) && !local.MatchString(address) {
			t.Errorf("asked for %s", address)
		}
	}
	for _, request := range b.Foreign() {
		t.Errorf("another origin was asked: %s", request)
	}
}

func TestPageLoadsFromASubPath(t *testing.T) {
	page := chromium.Page(t, browser.Desk)
	page.Open("")
	page.WaitMark("finwright:painted")
	quiet(t, page)
	// A tab without a profile of its own is never offered it; nothing else may be in the way.
	if why := slices.DeleteFunc(page.NotInstallable(), func(why string) bool { return why == "in-incognito" }); len(why) > 0 {
		t.Errorf("the page cannot be installed: %q", why)
	}
	for _, part := range []string{"first.", "canvas."} {
		if !strings.Contains(strings.Join(page.Requests(), " "), chromium.Base+part) {
			t.Errorf("%s was not asked for: %q", part, page.Requests())
		}
	}
}

func TestPageLoadsFromAHostThatUnpacks(t *testing.T) {
	unpacking, err := browser.Start(dist, static.Host{Unpack: true}, browser.Unhurried)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if err := unpacking.Close(); err != nil {
			t.Error(err)
		}
	})
	page := unpacking.Page(t, browser.Desk)
	page.Open("")
	page.WaitMark("finwright:painted")
	quiet(t, page)
}
