//go:build browser

package e2e

import (
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

// The meaning of an entry, a figure's working, a correlation, a fin type, what papers ask for, a rule and a cell of the shop's file each lead to
// their term; Escape leads back.
func TestLabelsLeadToTheGlossary(t *testing.T) {
	page := atDesk(t)
	term := element(id("glossary-term")) + "?.checkVisibility() && " + element(id("glossary-term")+" h3") + ".textContent"
	shut := "!" + element(id("glossary")) + ".open"
	lead := func(press string) { page.Wait(element(press) + ".click() ?? true") }

	page.Focus(entry("fin_height"))
	page.Press(kb.F1)
	page.Wait(element("#help-fin_height > .term") + "?.checkVisibility()")
	page.Focus("#help-fin_height > .term")
	page.Press(kb.Enter)
	page.Wait(term + ` === "Fin height"`)
	page.Wait(element(id("glossary-term")+" svg") + "?.querySelectorAll('path').length > 10")
	page.Screenshot(shots, "glossary")
	audit(t, page)
	page.Press(kb.Escape)
	page.Wait(shut)

	page.Click(id("figure-fin_parameter") + " .name")
	page.Wait(element(id("working")) + ".open")
	lead(`#working [data-term="symbol k"]`)
	page.Wait(term + ` === "Conductivity"`)
	page.Click(id("glossary-close"))
	lead(id("working-term"))
	page.Wait(term + ` === "mL"`)
	lead(id("glossary-term") + " .letters " + id("term-film"))
	page.Wait(term + ` === "Film coefficient"`)
	page.Type(id("glossary-search"), "hysteria")
	page.Wait(`!` + element(id("glossary-list")+" button"))
	page.Click(id("glossary-close"))
	page.Wait(shut)
	page.Click(id("working-close"))

	lead("#label-fin_type")
	lead(`#help-fin_type [data-term="type embedded"]`)
	page.Wait(term + ` === "Embedded (G)"`)
	page.Click(id("glossary-close"))
	page.Click(id("section-heat"))
	lead(id("name-ganguli_1985"))
	page.Wait(term + ` === "Ganguli"`)
	page.Resize(browser.View{Width: 390, Height: 844})
	page.Wait("document.documentElement.scrollWidth <= innerWidth")
	for _, what := range browser.Eval[[]string](page, clipped) {
		t.Errorf("no room for %s", what)
	}
	page.Screenshot(shots, "glossary-phone")
	page.Click(id("glossary-close"))
	page.Resize(browser.Desk)

	// The labels of other sections lead there when their words are pressed, and by F1 from what they label; so do the tables of the shop.
	page.Click(id("section-papers"))
	page.Wait(element(id("papers-customer")) + " !== null")
	page.Focus(id("papers-customer"))
	page.Press(kb.F1)
	page.Wait(term + ` === "Job and item"`)
	page.Press(kb.Escape)
	page.Wait(shut + ` && document.activeElement === ` + element(id("papers-customer")))
	page.Click(id("section-options"))
	page.Click(`#options [data-means="text page.options_held"] > span`)
	page.Wait(term + ` === "Held"`)
	page.Click(id("glossary-close"))
	lead(id("compared-duty") + " th > span")
	page.Wait(term + ` === "Duty"`)
	page.Press(kb.Escape)
	page.Wait(shut)
	page.Focus(id("compared-air_drop") + " button")
	page.Press(kb.F1)
	page.Wait(term + ` === "Pressure drop"`)
	page.Click(id("glossary-close"))
	page.Click(id("section-making"))
	page.Wait(element("#verdicts tbody tr") + " !== null")
	lead(id("rule-tip") + " th")
	page.Wait(term + ` === "Tip thickness"`)
	page.Click(id("glossary-close"))
	openShop(page)
	page.Press(kb.F1)
	page.Wait(term + ` === "The shop’s file"`)
	page.Press(kb.Escape)
	page.Wait(shut + ` && ` + element(id("shop")) + `.open`)
	page.Click(id("shop-close"))
	page.Click(id("section-surface"))
}
