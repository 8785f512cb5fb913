//go:build browser

package e2e

import (
	"fmt"
	"math"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"finwright/site/browser"
)

func grip(name string) string { return id("grip-" + name) }

// moved is a place beside another.
func moved(at browser.Point, x, y float64) browser.Point {
	return browser.Point{X: at.X + x, Y: at.Y + y}
}

// changed waits until a field shows something else than before.
func changed(page *browser.Page, field, before string) {
	page.Wait(element(entry(field)) + ".value !== " + js(before))
}

func TestTipFollowsThePointer(t *testing.T) {
	page := atDesk(t)
	at := page.Centre(grip("tip"))
	top := moved(at, 0, -20)
	page.Grab(at)
	page.Pull(at, top, 5)
	changed(page, "fin_height", "15.875 mm")
	if number(t, page, "fin_height") <= 15.875 {
		t.Errorf("pulled outwards, the fin is %s high", page.Value(entry("fin_height")))
	}
	waitTyped(page, "fin_height", "5/8 in") // nothing is kept before it is let go
	page.Wait(fmt.Sprintf("Math.abs(%s.getBoundingClientRect().y - (%v - 14)) < 20", element(grip("tip")), top.Y))
	page.Drop(top)
	page.Wait(kept + `.fields.fin_height.text !== "5/8 in"`)
	page.Click(id("undo"))
	waitTyped(page, "fin_height", "5/8 in")
	page.Click(id("redo"))
	page.Wait(kept + `.fields.fin_height.text !== "5/8 in"`)
}

// Each grip moves its own field by what it is pulled, and one undo brings back the text as it was typed.
func TestEveryGripByPointer(t *testing.T) {
	page := atDesk(t)
	for _, g := range []struct {
		grip, field string
		x, y        float64
	}{
		{"tip", "fin_height", 0, -16},
		{"tube", "tube_od", -8, 0},
		{"wall", "tube_wall", -6, 0},
		{"pitch", "fin_pitch", 12, 0},
		{"strip", "strip_thickness", 5, 0},
	} {
		step(t, g.grip, func(t *testing.T) {
			asTyped, before := typed(page, g.field), page.Value(entry(g.field))
			at := page.Centre(grip(g.grip))
			page.Drag(at, moved(at, g.x, g.y), 4)
			changed(page, g.field, before)
			page.Wait(fmt.Sprintf("%s.fields.%s.text !== %s", kept, g.field, js(asTyped)))
			page.Click(id("undo"))
			waitTyped(page, g.field, asTyped)
			waitEntry(page, g.field, before)
		})
	}
}

// A grip tells how many units a pixel is worth by where it stands: pulled by as much again, it adds as much again.
func TestFastDragEndsWhereItIsLetGo(t *testing.T) {
	page := atDesk(t)
	at := page.Centre(grip("tip"))
	end := moved(at, 0, -12)
	page.Drag(at, end, 1)
	changed(page, "fin_height", "15.875 mm")
	want := number(t, page, "fin_height")
	page.Click(id("undo"))
	waitEntry(page, "fin_height", "15.875 mm")

	at = page.Centre(grip("tip"))
	end = moved(at, 0, -12)
	page.Grab(at)
	for range 10 {
		page.Pull(at, moved(at, 0, -40), 2)
		page.Pull(moved(at, 0, -40), moved(at, 0, 25), 2)
	}
	page.Pull(moved(at, 0, 25), end, 2)
	page.Drop(end)
	page.Wait(kept + `.fields.fin_height.text !== "5/8 in"`)
	if got := number(t, page, "fin_height"); math.Abs(got-want) > 1e-9 {
		t.Errorf("after a wild pull the fin is %g mm high, straight there %g", got, want)
	}
	page.Click(id("undo"))
	waitTyped(page, "fin_height", "5/8 in") // one step
}

func TestAbandonedPullLeavesTheOldDesign(t *testing.T) {
	page := atDesk(t)
	for _, abandon := range []struct {
		name string
		how  func()
	}{
		{"Escape", func() { page.Press(kb.Escape) }},
		// What a cancelled pointer does last; the mouse's id is 1. The page hears of it with the pointer's next event.
		{"lost pointer", func() {
			browser.Eval[bool](page, "("+element(grip("tip"))+".releasePointerCapture(1), true)")
			at := page.Centre(grip("tip"))
			page.Pull(at, moved(at, 1, 0), 1)
		}},
	} {
		step(t, abandon.name, func(t *testing.T) {
			at := page.Centre(grip("tip"))
			away := moved(at, 0, -20)
			page.Grab(at)
			page.Pull(at, away, 3)
			changed(page, "fin_height", "15.875 mm")
			abandon.how()
			waitEntry(page, "fin_height", "15.875 mm")
			page.Pull(away, at, 3)
			page.Drop(away)
			page.WaitText(figureOf("fin_od"), "57.15")
			waitTyped(page, "fin_height", "5/8 in")
		})
	}
}

func TestGripsByKey(t *testing.T) {
	page := atDesk(t)
	for _, g := range []struct{ grip, field string }{
		{"tip", "fin_height"}, {"tube", "tube_od"}, {"wall", "tube_wall"}, {"pitch", "fin_pitch"}, {"strip", "strip_thickness"},
	} {
		step(t, g.grip, func(t *testing.T) {
			page.Focus(grip(g.grip))
			state := func(name string) string {
				return browser.Eval[string](page, element(grip(g.grip))+".getAttribute("+js(name)+")")
			}
			if role := state("role"); role != "slider" {
				t.Errorf("its role is %q", role)
			}
			if state("aria-label") == "" {
				t.Error("it has no name")
			}
			text, before := state("aria-valuetext"), page.Value(entry(g.field))
			page.Press(kb.ArrowUp)
			changed(page, g.field, before)
			page.Wait(element(grip(g.grip)) + `.getAttribute("aria-valuetext") !== ` + js(text))
			up := page.Value(entry(g.field))
			page.Press(kb.ArrowUp)
			changed(page, g.field, up)
			page.Press(kb.ArrowDown)
			waitEntry(page, g.field, up)
			page.Wait("document.activeElement === " + element(grip(g.grip)))
		})
	}
}

// Home and End take a dimension to the ends of its range.
func TestGripsGoToTheirEnds(t *testing.T) {
	page := atDesk(t)
	page.Focus(grip("tip"))
	now := func(name string) string { return element(grip("tip")) + ".getAttribute(" + js("aria-value"+name) + ")" }
	for _, end := range []struct{ key, of string }{{kb.End, "max"}, {kb.Home, "min"}} {
		page.Press(end.key)
		page.Wait(fmt.Sprintf("Math.abs(%s - %s) < 0.01", now("now"), now(end.of)))
	}
	page.Click(id("undo"))
	page.Click(id("undo"))
	waitTyped(page, "fin_height", "5/8 in")
}

func TestTipFollowsTheFinger(t *testing.T) {
	page := painted(t, browser.View{Width: 390, Height: 844, Scale: 2, Mobile: true}, "")
	at := page.Centre(grip("tip"))
	page.Swipe(at, moved(at, 0, -48), 8) // far enough for a scroll to begin
	changed(page, "fin_height", "15.875 mm")
	if number(t, page, "fin_height") <= 15.875 {
		t.Errorf("pulled outwards, the fin is %s high", page.Value(entry("fin_height")))
	}
	page.Wait(kept + `.fields.fin_height.text !== "5/8 in"`)
	page.Click(id("undo"))
	waitTyped(page, "fin_height", "5/8 in")
	page.Screenshot(shots, "phone-pulled")
	quiet(t, page)
}

// While keys step a grip the drawing keeps its scales, and eases when they rest.
func TestScaleHoldsWhileKeysStep(t *testing.T) {
	page := atDesk(t)
	page.Focus(grip("tip"))
	browser.Eval[bool](page, `(() => {
		globalThis.scales = [];
		const words = document.querySelector("#drawing .words");
		globalThis.watch = new MutationObserver(() => scales.push([...words.querySelectorAll("text")].map(({textContent}) => textContent).join(" ")));
		watch.observe(words, {subtree: true, childList: true, characterData: true});
		return true;
	})()`)
	page.Press(kb.PageUp + kb.PageUp + kb.PageUp + kb.PageUp + kb.PageUp)
	page.Wait(`scales.at(-1)?.includes("1 : 2")`)
	browser.Eval[bool](page, "(watch.disconnect(), true)")
	if !browser.Eval[bool](page, `scales.some((said) => said.includes("1 : 1") && / 20\.\d+ /.test(said))`) {
		t.Errorf("the drawing was never higher at the scale that it had: %q", browser.Eval[[]string](page, "scales"))
	}
	loadExample(page, 0)
}
