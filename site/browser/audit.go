package browser

import (
	"encoding/json"
	"os"

	"github.com/chromedp/chromedp"
)

// axeScript is the accessibility checker, as the package manager lays it down next to the pages.
const axeScript = "node_modules/axe-core/axe.min.js"

// Violation is one accessibility rule that the page breaks, and where.
type Violation struct {
	ID, Impact, Help string
	Nodes            []struct {
		HTML           string
		FailureSummary string
	}
}

// Audit runs the WCAG 2.0, 2.1 and 2.2 rules of levels A and AA over the page as it is. site is the path of the site folder.
func (p *Page) Audit(site string) []Violation {
	p.tb.Helper()
	if !Eval[bool](p, `"axe" in globalThis`) {
		script, err := os.ReadFile(site + "/" + axeScript)
		if err != nil {
			p.tb.Fatalf("%v", err)
		}
		// Evaluated through the debugger, the checker needs no leave of the page's policy.
		p.do(chromedp.Evaluate[chromedp.Void](string(script)))
	}
	// It need not read the style sheets and media files anew: only its rules of sound and of a locked orientation ask for them.
	found := Eval[string](p, `axe.run(document, {
		preload: false,
		runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"],
		resultTypes: ["violations"],
	}).then(({violations}) => JSON.stringify(violations))`)
	var violations []Violation
	if err := json.Unmarshal([]byte(found), &violations); err != nil {
		p.tb.Fatalf("axe: %v", err)
	}
	return violations
}
