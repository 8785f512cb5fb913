//go:build browser

package e2e

import (
	"fmt"
	"math/rand/v2"
	"os"
	"strings"
	"testing"
	"time"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/proof"
	"finwright/core/proof/tongue"
	"finwright/core/tube"
	"finwright/site/browser"
	"finwright/site/static"
)

// labelsApart is the JavaScript for what is wrong with the texts over the drawing: one leaves the frame, two lie on one another, or one
// takes more room than it was laid out with. A text's box is as wide as the browser sets it, and as high as a figure.
const labelsApart = `(() => {
	const frame = document.querySelector("#drawing .overlay").getBoundingClientRect();
	const wrong = [], boxes = [];
	for (const text of document.querySelectorAll("#drawing .words text")) {
		if (text.getAttribute("display") === "none") continue;
		const long = text.getComputedTextLength(), matrix = text.getScreenCTM();
		const from = { start: 0, middle: -long / 2, end: -long }[text.getAttribute("text-anchor")];
		const corners = [[from, -9.2], [from + long, 0]].map(([x, y]) => new DOMPoint(x, y).matrixTransform(matrix));
		const [left, right] = corners.map(({ x }) => x).sort((a, b) => a - b), [top, bottom] = corners.map(({ y }) => y).sort((a, b) => a - b);
		const name = text.dataset.testid + " " + text.textContent;
		if (!(long > 0)) wrong.push(name + " is not set");
		if (left < frame.left - 0.5 || right > frame.right + 0.5 || top < frame.top - 0.5 || bottom > frame.bottom + 0.5) wrong.push(name + " leaves the frame");
		for (const other of boxes) {
			if (left < other.right && other.left < right && top < other.bottom && other.top < bottom) wrong.push(name + " lies on " + other.name);
		}
		for (const press of document.querySelectorAll("#zoom button")) {
			const on = press.getBoundingClientRect();
			if (left < on.right && on.left < right && top < on.bottom - 4 && on.top + 4 < bottom) wrong.push(name + " lies under " + press.textContent);
		}
		boxes.push({ name, left, right, top, bottom });
	}
	return wrong;
})()`

const labelSeed = 7

// labelTubes are tubes that a shop could be asked for, drawn from a seed: entries of a design.
func labelTubes(n int) []map[string]string {
	r := rand.New(rand.NewPCG(labelSeed, 0))
	between := func(low, high float64) float64 { return low + (high-low)*r.Float64() }
	var out []map[string]string
	for range n {
		od := between(12, 170)
		height := between(4, 32)
		out = append(out, map[string]string{
			"fin_type":   string(tube.FinTypes()[r.IntN(len(tube.FinTypes()))]),
			"tube_od":    fmt.Sprintf("%.2f mm", od),
			"tube_wall":  fmt.Sprintf("%.2f mm", max(1, od*between(0.04, 0.12))),
			"fin_height": fmt.Sprintf("%.1f mm", height),
			"fin_pitch":  fmt.Sprintf("%.1f fpi", between(3, 12)),
		})
	}
	return out
}

// showTubes puts one tube after the other in the entries, and looks at the labels, at rest and closer to.
func showTubes(t *testing.T, page *browser.Page, tubes []map[string]string) {
	t.Helper()
	for i, entries := range tubes {
		for field, text := range entries {
			browser.Eval[bool](page, fmt.Sprintf(`(() => { const e = %s; e.value = %s; e.dispatchEvent(new Event("input", {bubbles: true})); e.dispatchEvent(new Event("change", {bubbles: true})); return true })()`,
				element(entry(field)), js(text)))
		}
		page.Wait(`document.body.dataset.answer !== "asked" && document.body.dataset.answer !== "entered"`)
		for _, zoom := range []string{"", "zoom-in", "zoom-in", "zoom-in", "zoom-fit"} {
			if zoom != "" {
				page.Click(id(zoom))
			}
			wrong := browser.Eval[[]string](page, labelsApart)
			for tries := 0; len(wrong) > 0 && tries < 20; tries++ { // the lines above may have changed its room: the drawing follows
				time.Sleep(100 * time.Millisecond)
				wrong = browser.Eval[[]string](page, labelsApart)
			}
			if len(wrong) > 0 {
				t.Errorf("tube %d %v, %s: %s", i, entries, zoom, strings.Join(wrong, "; "))
			}
		}
	}
}

// Whatever tube comes, the labels as the browser sets them keep apart and in the frame: in English and a longer language, on a wide
// window and a phone, and where the page's own letters do not come and others take their place.
func TestLabelsKeepApartInTheBrowser(t *testing.T) {
	count := 6
	if proof.Long() {
		count = 40
		start := time.Now()
		t.Cleanup(func() {
			failures := 0
			if t.Failed() {
				failures = 1
			}
			proof.Report(t.Name(), count, labelSeed, failures, time.Since(start))
		})
	}
	tubes := labelTubes(count)
	t.Run("wide", func(t *testing.T) { showTubes(t, opened(t, browser.Desk, ""), tubes) })
	t.Run("phone", func(t *testing.T) {
		showTubes(t, opened(t, browser.View{Width: 390, Height: 844, Scale: 2, Mobile: true}, ""), tubes[:count/2])
	})
	t.Run("a longer language", func(t *testing.T) {
		b, err := browser.StartPlain(inTongue(t).folder, static.Host{}, browser.Unhurried)
		if err != nil {
			t.Fatal(err)
		}
		defer b.Close()
		page := b.Page(t, browser.Desk)
		page.Open(tongue.Code + "/")
		page.WaitMark("finwright:drawn")
		showTubes(t, page, tubes)
	})
	t.Run("other letters", func(t *testing.T) {
		folder := t.TempDir()
		if err := os.CopyFS(folder, os.DirFS(dist)); err != nil {
			t.Fatal(err)
		}
		if err := os.RemoveAll(folder + "/fonts"); err != nil {
			t.Fatal(err)
		}
		b, err := browser.StartPlain(folder, static.Host{}, browser.Unhurried)
		if err != nil {
			t.Fatal(err)
		}
		defer b.Close()
		page := b.Page(t, browser.Desk)
		page.Open("")
		page.WaitMark("finwright:drawn")
		showTubes(t, page, tubes[:count/2])
	})
}

// Core lays texts out by a table of how wide the page's letters are: no letter is set wider, in either weight, and of figures and
// capitals one of the weights is as wide.
func TestLettersAreAsWideAsLaidOut(t *testing.T) {
	const times = 20
	page := atDesk(t)
	letters := " !\"#$%&'()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[\\]^_`abcdefghijklmnopqrstuvwxyz{|}~Ø–×°é"
	long := browser.Eval[[]float64](page, fmt.Sprintf(`(() => {
		const words = document.querySelector("#drawing .words"), text = document.createElementNS("http://www.w3.org/2000/svg", "text");
		text.style.whiteSpace = "pre";
		words.append(text);
		const long = [...%s].map((letter) => Math.max(...[400, 600].map((weight) => {
			text.style.fontWeight = String(weight);
			text.textContent = letter.repeat(%d);
			return text.getComputedTextLength();
		})));
		text.remove();
		return long;
	})()`, js(letters), times))
	for i, letter := range []rune(letters) {
		laid := sheet.TextWidth(strings.Repeat(string(letter), times)) * ink.PxPerMM / 1.1
		if long[i] > 1.03*laid { // a pair may be set a little wider than its letters
			t.Errorf("%q is %.2f px wide, laid out with %.2f", letter, long[i]/times, laid/times)
		}
		if strings.ContainsRune("02468AEØR", letter) && long[i] < 0.9*laid {
			t.Errorf("%q is %.2f px wide, laid out with %.2f: too much", letter, long[i]/times, laid/times)
		}
	}
}
