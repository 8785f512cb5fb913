//go:build browser

package e2e

import (
	"image"
	_ "image/png"
	"os"
	"testing"

	"finwright/site/browser"
)

// While a grip is held the drawing is a few paths; what is painted when it is let go is the same drawing.
func TestPulledDrawingIsThePaintedOne(t *testing.T) {
	page := painted(t, browser.Desk, "")
	const down = 4 // a lower fin: neither scale nor remarks change, so the drawing keeps its room
	for _, section := range []string{"surface", "heat"} {
		step(t, section, func(t *testing.T) {
			page.Click(id("section-" + section))
			waitState(page, "answered")
			scales := `[...document.querySelectorAll("#drawing text.scale")].map((text) => text.textContent).filter((text) => text.includes(" : ")).join()`
			before := browser.Eval[string](page, scales)
			at := page.Centre(grip("tip"))
			to := moved(at, 0, down)
			page.Grab(at)
			page.Pull(at, to, 2)
			page.Wait(`document.querySelector("#drawing.pulled .traced") && document.querySelector("#drawing .paint").checkVisibility({visibilityProperty: true}) === false`)
			waitState(page, "answered")
			hide := func(how string) {
				browser.Eval[bool](page, `(document.querySelector("#drawing .overlay").style.visibility = "`+how+`", new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(true), 100))))`)
			}
			hide("hidden")
			traced := pictureOf(t, page, "traced-"+section)
			page.Drop(to)
			page.Wait(`!document.querySelector("#drawing").classList.contains("pulled")`)
			waitState(page, "answered")
			if after := browser.Eval[string](page, scales); after != before {
				t.Errorf("scales %q were %q: not the same drawing", after, before)
			}
			hide("hidden")
			painted := pictureOf(t, page, "painted-"+section)
			hide("")
			if off, dark := unlike(traced, painted); dark < 2000 || off > dark/25 {
				t.Errorf("%d pixels differ, of %d that are inked", off, dark)
			}
			page.Click(id("undo"))
			waitTyped(page, "fin_height", "5/8 in")
		})
		page.Resize(browser.View{Width: 1920, Height: 1080}) // where texts are larger, and lines of the page no whole pixels high
		page.Wait(`innerWidth === 1920`)
		page.Wait("new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))).then(() => true)")
	}
}

// pictureOf is what is on the screen of the drawing.
func pictureOf(t *testing.T, page *browser.Page, name string) *image.Gray {
	t.Helper()
	file, err := os.Open(page.Screenshot(t.TempDir(), name))
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	whole, _, err := image.Decode(file)
	if err != nil {
		t.Fatal(err)
	}
	box := browser.Eval[[4]float64](page, `(({left, top, right, bottom}) => [left, top, right, bottom])(document.querySelector("#drawing").getBoundingClientRect())`)
	out := image.NewGray(image.Rect(int(box[0])+2, int(box[1])+2, int(box[2])-2, int(box[3])-2))
	for y := out.Rect.Min.Y; y < out.Rect.Max.Y; y++ {
		for x := out.Rect.Min.X; x < out.Rect.Max.X; x++ {
			out.Set(x, y, whole.At(x, y))
		}
	}
	return out
}

// unlike counts the pixels of two pictures that differ by more than the smoothing of an edge, and those that are not paper.
func unlike(a, b *image.Gray) (off, dark int) {
	for i := range a.Pix {
		if d := int(a.Pix[i]) - int(b.Pix[i]); d > 90 || d < -90 {
			off++
		}
		if b.Pix[i] < 200 {
			dark++
		}
	}
	return off, dark
}
