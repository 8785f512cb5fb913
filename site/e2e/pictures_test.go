//go:build browser

package e2e

import (
	"encoding/xml"
	"fmt"
	"io"
	"strings"
	"testing"

	"finwright/site/browser"
)

// The drawing and each plot in sight are copied and saved as pictures that stand alone: points of a fineness for paper, or lines and
// letters without a style of the page.
func TestPictures(t *testing.T) {
	page := atDesk(t)
	browser.Eval[bool](page, `(() => {
		globalThis.taken = [];
		navigator.clipboard.write = async ([item]) => { taken.push({name: "copied", blob: await item.getType("image/png")}); };
		const made = new Map(), make = URL.createObjectURL;
		URL.createObjectURL = (blob) => { const url = make.call(URL, blob); made.set(url, blob); return url; };
		HTMLAnchorElement.prototype.click = function () { taken.push({name: this.download, blob: made.get(this.href)}); };
		return true;
	})()`)
	take := func(of, act string) string {
		t.Helper()
		before := browser.Eval[int](page, "taken.length")
		page.Click(id("pictures-open"))
		page.Wait(`document.querySelectorAll("#pictures option").length === 4`)
		browser.Eval[bool](page, `(`+element(id("picture-of"))+`.value = `+js(of)+`, true)`)
		page.Click(id("picture-" + act))
		page.Wait(fmt.Sprintf("taken.length > %d", before))
		return browser.Eval[string](page, "taken.at(-1).name")
	}
	points := func(name string) {
		t.Helper()
		size := browser.Eval[[]int](page, `createImageBitmap(taken.at(-1).blob).then((image) => {
			const canvas = Object.assign(document.createElement("canvas"), {width: image.width, height: image.height}), pen = canvas.getContext("2d");
			pen.drawImage(image, 0, 0);
			const inks = new Set(new Uint32Array(pen.getImageData(0, 0, image.width, image.height).data.buffer));
			return [image.width, image.height, inks.size, pen.getImageData(0, 0, 1, 1).data[0]];
		})`)
		if size[0] < 900 || size[1] < 500 || size[2] < 20 || size[3] != 255 {
			t.Errorf("%s: %d by %d points of %d inks, the first %d", name, size[0], size[1], size[2], size[3])
		}
	}
	if name := take("", "copy"); name != "copied" {
		t.Errorf("copied as %s", name)
	}
	points("the drawing")
	if name := take("map", "png"); !strings.HasPrefix(name, "Oil-cooler-footed-aluminium-Area-ratio-21-31-") || !strings.HasSuffix(name, ".png") {
		t.Errorf("the map is saved as %s", name)
	}
	points("the map")
	for of, says := range map[string]string{"": "57.15", "height": "Efficiency falls below 0.8 at"} {
		if name := take(of, "svg"); !strings.HasSuffix(name, ".svg") {
			t.Errorf("saved as %s", name)
		}
		text := browser.Eval[string](page, "taken.at(-1).blob.text()")
		if !strings.Contains(text, says) || strings.Contains(text, "currentColor") || !strings.Contains(text, "Barlow Semi Condensed") {
			t.Errorf("%q: %.300s", of, text)
		}
		d := xml.NewDecoder(strings.NewReader(text))
		for {
			if _, err := d.Token(); err == io.EOF {
				break
			} else if err != nil {
				t.Fatalf("%q: %v", of, err)
			}
		}
	}
	if n := browser.Eval[int](page, `document.querySelectorAll("#plots .paper").length`); n > 0 {
		t.Errorf("%d pictures are left in the page", n)
	}
}
