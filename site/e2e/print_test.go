//go:build browser

package e2e

import (
	"bytes"
	"compress/zlib"
	"fmt"
	"io"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"finwright/core/shop"
	"finwright/site/browser"
)

var (
	pdfPicture = regexp.MustCompile(`/SMask \d+ 0 R`)
	pdfPage    = regexp.MustCompile(`/Type\s*/Page\b`)
	pdfStream  = regexp.MustCompile(`(?s)/FlateDecode.*?stream\r?\n(.*?)endstream`)
	pdfText    = regexp.MustCompile(`T[jJ]\b`)
	pdfStroke  = regexp.MustCompile(`(?m)^[SfB]\*?$`)
)

// onPaper is true when the drawing for the printer shows a dimension.
func onPaper(dimension string) string {
	return `[...document.querySelectorAll("#paper svg text")].some((text) => text.textContent.includes(` + js(dimension) + "))"
}

// The page has a command that prints. It waits until the drawing is ready, paper says the day, and no words of what is pressed.
func TestPrint(t *testing.T) {
	page := atDesk(t)
	browser.Eval[any](page, `void (window.print = () => (document.body.dataset.printed = document.querySelector("#paper svg").textContent))`)
	enter(page, "fin_pitch", "9 fpi")
	page.Click(id("print"))
	page.Wait(`document.body.dataset.printed?.includes("2.82")`)
	house := shop.House()
	whose := "Shop " + house.Name + ", prices of " + house.PricesOf() + ", file " + house.Fingerprint()
	for _, section := range []string{"making", "heat"} {
		page.Click(id("section-" + section))
		page.Wait(`document.body.dataset.section === ` + js(section) + ` && document.body.dataset.answer === "answered"`)
		page.Paper()
		words := browser.Eval[[]string](page, `(dispatchEvent(new Event("beforeprint")), [...document.querySelectorAll(".tools button, .status button.moves, .verdict button.moves, .methods button.moves")]
			.filter((button) => button.checkVisibility()).map((button) => button.textContent))`)
		if len(words) > 0 {
			t.Errorf("%s prints %q", section, words)
		}
		want, day := "Printed "+time.Now().Format(time.DateOnly), browser.Eval[string](page, element(id("printed"))+".innerText")
		if day != want {
			t.Errorf("%s says %q, not %q", section, day, want)
		}
		if got := browser.Eval[string](page, element(id("whose"))+".innerText"); got != whose {
			t.Errorf("%s says %q, not %q", section, got, whose)
		}
		for place, want := range map[string]string{"name": "Oil cooler, footed aluminium", "made": day + " by Finwright "} {
			foot := browser.Eval[string](page, `getComputedStyle(document.documentElement).getPropertyValue("--foot-`+place+`")`)
			if !strings.HasPrefix(strings.Trim(foot, `"`), want) {
				t.Errorf("%s: the foot of a sheet says %s", section, foot)
			}
		}
		page.Resize(browser.Desk)
	}
	if !browser.Eval[bool](page, `!`+element(id("printed"))+`.checkVisibility()`) {
		t.Error("the day stands on the screen")
	}
}

func TestPaperIsAFewSheets(t *testing.T) {
	page := atDesk(t)
	for _, sheet := range []struct {
		section      string
		charts, most int // pages
	}{{"options", 0, 1}, {"making", 0, 3}, {"heat", 4, 3}, {"surface", 3, 2}} {
		step(t, sheet.section, func(t *testing.T) {
			page.Click(id("section-" + sheet.section))
			page.Wait(onPaper("2.54"))
			page.Wait(fmt.Sprintf(`[...document.querySelectorAll(".plot")].filter((plot) => plot.offsetParent && plot.querySelector(".answer")?.textContent).length === %d`, sheet.charts))
			text, err := os.ReadFile(page.PDF(shots, "paper-"+sheet.section))
			if err != nil {
				t.Fatal(err)
			}
			if n := len(pdfPage.FindAll(text, -1)); n < 1 || n > sheet.most {
				t.Errorf("%d pages", n)
			}
			if n := len(pdfPicture.FindAll(text, -1)); n < sheet.charts {
				t.Errorf("%d pictures of %d charts", n, sheet.charts)
			}
			var words, lines int
			for _, stream := range pdfStream.FindAllSubmatch(text, -1) {
				plain, err := zlib.NewReader(bytes.NewReader(stream[1]))
				if err != nil {
					continue // a picture or a font of another kind
				}
				content, _ := io.ReadAll(plain)
				words += len(pdfText.FindAll(content, -1))
				lines += len(pdfStroke.FindAll(content, -1))
			}
			if words < 100 || lines < 100 {
				t.Errorf("%d texts and %d lines: is it blank?", words, lines)
			}
		})
	}
	enter(page, "fin_pitch", "9 fpi")
	if browser.Eval[bool](page, onPaper("2.54")) {
		t.Error("the printer would draw a tube that is no longer there")
	}
	page.Wait(onPaper("2.82"))
	page.Paper()
	inked := browser.Eval[[]int](page, `(dispatchEvent(new Event("beforeprint")), [...document.querySelectorAll(".plot .paper")].map((sheet) => {
		const {data} = sheet.getContext("2d").getImageData(0, 0, sheet.width, sheet.height);
		let inked = 0;
		for (let i = 3; i < data.length; i += 4) inked += data[i] > 0;
		return inked;
	}))`)
	if len(inked) != 3 || slices.Min(inked) < 10000 {
		t.Errorf("pixels with ink on the charts for the printer: %v", inked)
	}
	defer page.Resize(browser.Desk)
	page.Wait(`document.querySelector("#paper svg").getBoundingClientRect().height > 100`)
	page.Screenshot(shots, "paper")
}
