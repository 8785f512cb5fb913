//go:build browser

package e2e

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

// head is the head of a group of entries.
func head(group string) string { return id("group-" + group) }

// isOpen is whether a group shows its entries.
func isOpen(group string) string {
	return "(" + element(head(group)) + `.ariaExpanded === "true" && ` + element("#in-"+group) + `.hidden === false)`
}

// What is rarely changed is folded to a line that says what is in it. What somebody opens stays open, in every section and when the page
// comes again; what he leaves alone is as the section has it.
func TestGroupsFold(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Wait("!" + isOpen("job") + " && " + isOpen("lengths"))
	if says := browser.Eval[string](page, element(id("says-job"))+".textContent"); !strings.Contains(says, browser.Eval[string](page, element(entry("quantity"))+".value")) {
		t.Errorf("the job says %q", says)
	}
	page.Screenshot(shots, "folds")
	page.Click(id("section-heat"))
	page.Wait("!" + isOpen("lengths") + " && !" + isOpen("fan") + " && " + isOpen("bank"))
	page.Screenshot(shots, "folds-heat")
	page.Click(head("fan"))
	page.Wait(isOpen("fan") + " && " + element(id("says-fan")) + ".hidden")
	page.Click(head("bank"))
	page.Wait("!" + isOpen("bank"))
	page.Click(head("job"))
	page.Wait(isOpen("job"))
	page.Click(id("section-surface"))
	page.Wait(isOpen("job") + " && " + isOpen("lengths"))
	page.Reload()
	page.WaitMark("finwright:drawn")
	page.Click(id("section-heat"))
	page.Wait(isOpen("job") + " && " + isOpen("fan") + " && !" + isOpen("bank") + " && !" + isOpen("lengths"))
}

// By keys: Tab goes to the heads of what is folded, arrows go from head to head, and Enter opens.
func TestGroupsFoldByKeys(t *testing.T) {
	page := opened(t, browser.Desk, "")
	at := func() string { return browser.Eval[string](page, "document.activeElement.dataset.testid ?? ''") }
	page.Focus(head("job"))
	page.Press(kb.Tab)
	if got := at(); got != "field-tube_metal" {
		t.Errorf("after what is folded comes %s", got)
	}
	page.Focus(head("job"))
	page.Press(kb.ArrowDown)
	if got := at(); got != "group-tube" {
		t.Errorf("below the job is %s", got)
	}
	page.Press(kb.Enter)
	page.Wait("!" + isOpen("tube"))
	page.Press(kb.End)
	if got := at(); got != "group-film" {
		t.Errorf("the last head is %s", got)
	}
	page.Press(kb.Home)
	page.Press(kb.Enter)
	page.Wait(isOpen("job"))
	page.Press(kb.Tab)
	if got := at(); got != "field-quantity" {
		t.Errorf("in what was opened Tab goes to %s", got)
	}
}

// What is folded opens by itself for what is wrong in it, for a jump to it, when it comes into use, and when the browser finds a text there.
func TestFoldedGroupsOpenWhenWanted(t *testing.T) {
	page := opened(t, browser.Desk, "")
	page.Click(id("section-heat"))
	page.Wait("!" + isOpen("cases"))
	enter(page, "start_up", "90 C")
	page.Wait(isOpen("cases"))
	page.Click(head("cases"))
	page.Wait("!" + isOpen("cases"))
	choose(page, entry("fin_profile"), "linear")
	enter(page, "tip_thickness", "0.3 mm")
	page.Click(head("fin_detail"))
	page.Wait("!" + isOpen("fin_detail"))
	page.Type(entry("strip_thickness"), "0.2 mm") // thinner than the tip
	page.Wait(isOpen("fin_detail") + " && " + element(id("error-tip_thickness")) + ".checkVisibility()")
	page.Click(head("fin_detail")) // told once, it stays folded, and the status line leads to it
	page.Wait("!" + isOpen("fin_detail"))
	page.Click(id("jump"))
	page.Wait(isOpen("fin_detail") + " && document.activeElement === " + element(entry("tip_thickness")))
	enter(page, "strip_thickness", "0.4 mm")

	page.Wait(element("[data-group=gas]") + ".checkVisibility() === false")
	choose(page, entry("gas"), "flue")
	page.Wait(isOpen("gas") + " && " + element(entry("flue_by")) + ".checkVisibility()")

	page.Wait("!" + isOpen("stream"))
	browser.Eval[bool](page, "(location.hash = '#field-own_fluid_pour', true)")
	page.Wait(isOpen("stream"))
}
