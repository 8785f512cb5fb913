//go:build browser

package e2e

import (
	"testing"

	"finwright/site/browser"
)

// The screenshots are for people to look at; what a machine can judge, no error and no other origin, it does.
func TestShots(t *testing.T) {
	for name, view := range map[string]browser.View{
		"desk":      browser.Desk,
		"desk-dark": {Width: 1440, Height: 900, Dark: true},
		"desk-fine": {Width: 1440, Height: 900, Scale: 2},
		"laptop":    {Width: 1280, Height: 720},
		"phone":     {Width: 390, Height: 844, Scale: 3, Mobile: true},
	} {
		t.Run(name, func(t *testing.T) {
			page := chromium.Page(t, view)
			page.Open("")
			page.WaitMark("finwright:painted")
			waitState(page, "answered")
			page.Screenshot(shots, name)
			quiet(t, page)
		})
	}
}
