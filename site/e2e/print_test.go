//go:build browser

package e2e

import (
	"bytes"
	"compress/zlib"
	"io"
	"os"
	"regexp"
	"testing"

	"finwright/site/browser"
)

var (
	pdfPage   = regexp.MustCompile(`/Type\s*/Page\b`)
	pdfStream = regexp.MustCompile(`(?s)/FlateDecode.*?stream\r?\n(.*?)endstream`)
	pdfText   = regexp.MustCompile(`T[jJ]\b`)
	pdfStroke = regexp.MustCompile(`(?m)^[SfB]\*?$`)
)

// onPaper is true when the drawing for the printer shows a dimension.
func onPaper(dimension string) string {
	return `[...document.querySelectorAll("#paper svg text")].some((text) => text.textContent.includes(` + js(dimension) + "))"
}

func TestPaperIsOneSheetOrTwo(t *testing.T) {
	page := atDesk(t)
	for _, section := range []string{"heat", "surface"} {
		step(t, section, func(t *testing.T) {
			page.Click(id("section-" + section))
			page.Wait(onPaper("2.540"))
			text, err := os.ReadFile(page.PDF(shots, "paper-"+section))
			if err != nil {
				t.Fatal(err)
			}
			if n := len(pdfPage.FindAll(text, -1)); n < 1 || n > 2 {
				t.Errorf("%d pages", n)
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
	if browser.Eval[bool](page, onPaper("2.540")) {
		t.Error("the printer would draw a tube that is no longer there")
	}
	page.Wait(onPaper("2.822"))
	page.Paper()
	defer page.Resize(browser.Desk)
	page.Wait(`document.querySelector("#paper svg").getBoundingClientRect().height > 100`)
	page.Screenshot(shots, "paper")
}
