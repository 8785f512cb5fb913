//go:build browser

package e2e

import (
	"testing"

	"finwright/site/browser"
)

// The help of the fin type shows how each holds, wide or narrow, light or dark.
func TestFinTypesAreShown(t *testing.T) {
	for name, view := range map[string]browser.View{
		"desk":       browser.Desk,
		"phone-dark": {Width: 390, Height: 844, Scale: 2, Mobile: true, Dark: true},
	} {
		page := opened(t, view, "")
		page.Click("#label-fin_type")
		page.Wait(`[...document.querySelectorAll("#help-fin_type figure svg")].filter((svg) => svg.checkVisibility() && svg.getBoundingClientRect().width > 60).length === 8`)
		page.Wait(`document.documentElement.scrollWidth <= innerWidth`)
		page.Screenshot(shots, "types-"+name)
		quiet(t, page)
	}
}
