//go:build browser

package e2e

import (
	"fmt"
	"image"
	"image/png"
	"math"
	"os"
	"testing"

	"finwright/site/browser"
)

func scaleText(page *browser.Page, view string) string { return page.Text(id("scale-" + view)) }

// lineAt returns how far from a place the nearest level line lies of which the picture shows something to both sides of it
// [px], looking no farther than that.
func lineAt(picture image.Image, at browser.Point, aside, far int) (off float64, found bool) {
	dark := func(x, y int) float64 {
		r, g, b, _ := picture.At(x, y).RGBA()
		return max(0, 1-float64(r+g+b)/(3*0xe000)) // paper is no ink
	}
	x0, y0 := int(math.Round(at.X)), int(math.Floor(at.Y))
	sum, moment := 0.0, 0.0
	for y := y0 - far; y <= y0+far; y++ {
		ink := dark(x0-aside, y) + dark(x0+aside, y)
		sum += ink
		moment += ink * (float64(y) + 0.5)
	}
	if sum < 0.5 {
		return 0, false
	}
	return moment/sum - at.Y, true
}

// A pull in ten frames: in each the grip lies on the line that it pulls and the scales are those at which it took hold,
// also where the tube outgrows its place.
func TestScaleHoldsWhileAGripIsPulled(t *testing.T) {
	page := painted(t, browser.Desk, "")
	across, detail := scaleText(page, "across"), scaleText(page, "detail")
	at := page.Centre(grip("tip") + " .reach")
	page.Grab(at)
	last := at
	heights := map[string]bool{}
	for frame := range 10 {
		next := moved(at, 0, -4*float64(frame+1))
		page.Pull(last, next, 1)
		last = next
		var file string
		middle := grip("tip") + " .reach"
		hand := page.Centre(middle)
		for range 20 { // until no answer came while the picture was taken
			before := hand
			file = page.Screenshot(shots, fmt.Sprintf("pull-%d", frame))
			if hand = page.Centre(middle); hand == before {
				break
			}
		}
		if a, d := scaleText(page, "across"), scaleText(page, "detail"); a != across || d != detail {
			t.Errorf("frame %d: scales %s and %s, they were %s and %s", frame, a, d, across, detail)
		}
		off, found := lineAt(read(t, file), hand, 10, 9)
		if !found || math.Abs(off) > 1.5 { // half a pixel of it is the disc's own bend, ten pixels aside
			t.Errorf("frame %d: the grip's line lies %.2f px from it (found: %v)", frame, off, found)
		}
		heights[page.Text(figureOf("fin_od"))] = true
		t.Logf("frame %d: grip %.1f px above its start, line %.2f px off", frame, at.Y-hand.Y, off)
	}
	page.Drop(last)
	if len(heights) < 3 {
		t.Errorf("the design followed in %d steps only", len(heights))
	}
	page.Wait(element(id("scale-across")) + ".textContent !== " + js(across)) // let go, it may show the whole tube again
	page.Click(id("undo"))
	waitTyped(page, "fin_height", "5/8 in")
	quiet(t, page)
}

// A scale that is held by a press stays whatever comes, until the next press.
func TestScaleIsHeldByAPress(t *testing.T) {
	page := atDesk(t)
	before := scaleText(page, "across")
	page.Click(id("hold-scale"))
	page.Type(entry("fin_height"), "40 mm")
	page.Press("\r")
	page.WaitText(figureOf("fin_od"), "105.40")
	if got := scaleText(page, "across"); got != before {
		t.Errorf("held at %s, it is %s", before, got)
	}
	page.Click(id("hold-scale"))
	page.Wait(element(id("scale-across")) + ".textContent !== " + js(before))
	page.Click(id("undo"))
	waitTyped(page, "fin_height", "5/8 in")
}

func read(t *testing.T, file string) image.Image {
	t.Helper()
	f, err := os.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	picture, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	return picture
}
